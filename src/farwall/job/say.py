"""A plan in a few calm lines."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta

from farwall.facts.numbered import numbered, stain_named
from farwall.facts.plan import Chances, Field, Plan, Remedy
from farwall.job.chances.words import share_words
from farwall.job.go.say import in_short
from farwall.job.way_words import way_words
from farwall.nouns import dataclass
from farwall.units import clock_words, counted, ft2_from_m2, volume_words

WORDS = {
    "fits": "fits",
    "helper": "fits with a helper",
    "two": "needs two sprayers",
    "stop-line": "needs one more stop line",
    "cannot": "CANNOT be done like this",
}

_ASKED = {
    "helper": frozenset({"helper"}),
    "two": frozenset({"two"}),
    "stop-line": frozenset({"stop-line", "stop-here"}),
}
"""The remedies that a verdict rests on, by their codes."""
_DEAD = re.compile(r"dead-edge: .*?\bband (\d+\.\d+)\.\d+")
_REPLAYED = "Replayed on the floor: nobody steps on wet stain, no edge outlives its time."
_REPLAYED_BUT = (
    "Replayed on the floor, but for what may not be sprayed: nobody steps on wet stain, no edge "
    "outlives its time."
)
_UNDER = " " * 9
_MOST_FAULTS = 12


@dataclass(frozen=True)
class Clock:
    """Minutes of a plan as the clock on the wall tells them in the job's manner."""

    start: datetime
    us: bool

    def at(self, minute: float) -> str:
        """`13:49`, or `1:49 pm`; with the day where it is not the first."""
        moment = self.start + timedelta(minutes=minute)
        day = (moment.date() - self.start.date()).days
        return clock_words(moment, us=self.us) + (f" (day {day + 1})" if day else "")


def said(plan: Plan, faults: Sequence[str], *, folder: str, us: bool) -> str:
    """What the plan found, what stands against it and what to open; `us`: feet first, am and pm."""
    clock = Clock(datetime.fromisoformat(plan.starts_at), us)
    lines = [f"{plan.job or 'The job'}: {_rooms(plan)}, {_floor(plan, us=us)}."]
    for coat in plan.inputs.coats:
        fields = [field for field in plan.fields if field.coat == coat.id]
        litres = sum(band.litres for field in fields for band in field.bands)
        lines.append(
            f"Coat {numbered(plan, coat.id)} ({stain_named(plan, coat.stain)} at {coat.cut}): "
            f"{counted(len(fields), 'field')}, "
            f"{volume_words(litres, us=us)} likely, "
            f"{clock.at(fields[0].start_min)} to {clock.at(fields[-1].end_min)}."
        )
        lines.extend(_fields(plan, fields, clock))
    if plan.go is not None:
        lines.insert(0 if plan.go.verdict == "no" else len(lines), in_short(plan.go))
    lines.extend(f"Mind: {warning}" for warning in plan.warnings)
    refused = all(field.verdict == "cannot" for field in plan.fields)
    may = all(field.verdict != "cannot" for field in plan.fields)
    if refused:
        lines.append("So nothing here may be sprayed as it stands.")
    elif faults:
        lines.extend(_replayed(plan, faults))
    else:
        lines.append(_REPLAYED if may else _REPLAYED_BUT)
    if plan.chances is not None and not refused:
        lines.append(_sure(plan.chances))
    lines.append(f"Open {folder}/run-sheet.pdf; floor.svg and moments.svg lie beside it.")
    lines.append(plan.cautions[0] if plan.cautions else "")
    return "\n".join(line for line in lines if line)


def _replayed(plan: Plan, faults: Sequence[str]) -> Iterator[str]:
    """What the replay found: counted where the lines above say that edges die, else one by one."""
    late = [field for field in plan.fields if field.verdict != "fits" and _late(field)]
    told = {numbered(plan, field.id): 0 for field in late}
    news = []
    for fault in faults:
        dead = _DEAD.match(fault)
        if dead and dead[1] in told:
            told[dead[1]] += 1
        else:
            news.append(fault)
    known = [f"{number} ({count})" for number, count in told.items() if count]
    if news:
        yield "The replay on the floor found:"
        yield from (f"  {fault}" for fault in news[:_MOST_FAULTS])
        if len(news) > _MOST_FAULTS:
            yield f"  and {len(news) - _MOST_FAULTS} more; `farwall check` lists all"
    if known:
        no_more = "" if news else ", and nothing else"
        yield (
            f"Replayed on the floor: edges die in {', '.join(known)}, as told above{no_more}; "
            "`farwall check` lists each."
        )


def _late(field: Field) -> bool:
    """Whether an edge dies as the field is planned."""
    return field.peak_age_min > field.open_time_min.low


def _fields(plan: Plan, fields: Sequence[Field], clock: Clock) -> list[str]:
    """A line a field; one for all where the slab refuses them all for one reason."""
    first = fields[0].remedies
    refused = all(field.verdict == "cannot" and field.remedies == first for field in fields)
    if refused and first and first[0].code == "conditions":
        return ["  NO: " + " ".join(remedy.what for remedy in first)]
    return [line for field in fields for line in _field(plan, field, clock)]


def _rooms(plan: Plan) -> str:
    return counted(len(plan.inputs.floor.rooms), "room")


def _floor(plan: Plan, *, us: bool) -> str:
    first = plan.fields[0].coat
    area = sum(field.area_m2 for field in plan.fields if field.coat == first)
    feet, metres = f"{ft2_from_m2(area):.0f} ft²", f"{area:.1f} m²"
    return f"{feet} ({metres}) to stain" if us else f"{metres} ({feet}) to stain"


def _field(plan: Plan, field: Field, clock: Clock) -> list[str]:
    """The field in a line, and under it what would keep an edge that dies as it stands."""
    late = _late(field)
    word = "needs a helper" if field.verdict == "helper" and late else WORDS[field.verdict]
    line = (
        f"  {clock.at(field.start_min)} {numbered(plan, field.id)} "
        f"{', '.join(_label(plan, room) for room in field.rooms)}: "
        f"{word}; {_edge(plan, field)}, out by {way_words(plan, field)}"
    )
    return [line, *(f"{_UNDER}{_helps(one)}" for one in _first_remedies(field) if late)]


def _first_remedies(field: Field) -> list[Remedy]:
    """Two of them: what the verdict asks for first, what is not enough last, else by price."""
    asked = _ASKED.get(field.verdict, frozenset())
    return sorted(field.remedies, key=lambda one: (one.code not in asked, one.works is False))[:2]


def _helps(remedy: Remedy) -> str:
    if remedy.peak_age_min is None:
        return remedy.what
    then = f"{remedy.what.rstrip('.')}: oldest edge then {remedy.peak_age_min:.1f} min"
    if remedy.margin_min is None:
        return then
    word = "to spare" if remedy.margin_min >= 0 else "too old"
    return f"{then}, {abs(remedy.margin_min):.1f} min {word}"


def _sure(chances: Chances) -> str:
    """How often an edge dies and the mix runs short on drawn days, and what would help most."""
    line = (
        f"On {chances.days:,} drawn days an edge dies on {share_words(chances.any_edge_dies)}, the "
        f"mix runs short inside a field on {share_words(chances.mix_short)}."
    )
    most = chances.matters_most[0] if chances.matters_most else None
    return f"{line} {most.what_to_do}" if most and most.what_to_do else line


def _edge(plan: Plan, field: Field) -> str:
    """The oldest edge of how long it lives; the tightest and its room where rooms differ."""
    tight = field.tightest
    if tight is None or len({one.low for one in field.open_times}) == 1:
        return f"oldest edge {field.peak_age_min:.1f} of {field.open_time_min.low:.1f} min"
    room = _label(plan, tight.room)
    return f"tightest edge {tight.age_min:.1f} of {tight.low_min:.1f} min, in {room}"


def _label(plan: Plan, id_: str) -> str:
    """What people call a room."""
    return next((one.label for one in plan.inputs.floor.rooms if one.id == id_), id_)
