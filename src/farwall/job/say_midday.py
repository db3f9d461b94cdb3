"""A day planned again, or a stop, in a few short words: what to do now comes first."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import datetime

from farwall.facts.numbered import numbered
from farwall.facts.plan import Band, Field, Plan
from farwall.facts.so_far import MoreMix, StopAt
from farwall.job.half_told import begun_together
from farwall.job.say import WORDS, Clock
from farwall.job.way_words import near_words, rooms_text, seam_words, way_words
from farwall.units import measures_own_first, volume_words

_IDS = re.compile(r"\b([Ff]ield|band) (\S+?)([:,.]?)(?= |$)")
STANDS_ON_WET = "Somebody is said to stand on wet floor"


def said_again(plan: Plan, faults: Sequence[str], *, folder: str, us: bool) -> str:
    """What to do now, what is lost, what is left, what to mix, then the rest of the day.

    us: hours by am and pm, and gallons before litres.
    """
    clock = Clock(datetime.fromisoformat(plan.starts_at), us)
    lines = [_now(plan, clock), *_seams(plan), *_mix(plan, plan.more_mix), *_left(plan)]
    lines += [f"Mind: {warning}" for warning in plan.warnings if warning.startswith(STANDS_ON_WET)]
    lines += _rest(plan, clock)
    if faults:
        lines.append("The replay on the floor found:")
        lines += [f"  {fault}" for fault in faults[:8]]
        lines += [f"  and {len(faults) - 8} more; `farwall check` lists all"] if faults[8:] else []
    else:
        lines.append("Replayed on the floor: nobody steps on wet stain, no edge outlives its time.")
    lines.append(f"Open {folder}/run-sheet.pdf; plan.json and floor.svg lie beside it.")
    return measures_own_first("\n".join(lines), us=us)


def said_stop(plan: Plan, found: StopAt, *, within_min: float) -> str:
    """Where to stop, in the order in which it is done."""
    remains = rooms_text(plan, found.remains)
    rest = f"Still to do: {remains}." if found.remains else "Nothing of this coat is left to do."
    if found.how == "nothing open":
        return f"STOP NOW. No edge is open: nothing will show.\n{rest}"
    work = _work(plan, found)
    if found.how == "line":
        return f"{work} STOP AT {seam_words(plan, found.line)}: it hides the seam.\n{rest}"
    near = near_words(plan, found.room, found.at) if found.at else ""
    feather = f"{work} Then FEATHER the edge out, {_length(found.seam_m)}, in "
    feather += f"{rooms_text(plan, (found.room,))}{f', its middle {near}' if near else ''}: "
    feather += "thin it over a foot, leave no puddle."
    none = f"NO line that hides a seam is reached in {within_min:g} min. A seam will show."
    lines = [none, feather]
    if found.then_line and found.then_min is not None:
        line = seam_words(plan, found.then_line)
        lines.append(f"With {found.then_min:.1f} min you reach {line}, which hides it.")
    return "\n".join([*lines, rest])


def _work(plan: Plan, found: StopAt) -> str:
    if not found.bands:
        if found.minutes <= 0.05:
            return "Spray no further."
        return f"Finish the band in your hand ({found.minutes:.1f} min)."
    first, last = numbered(plan, found.bands[0]), numbered(plan, found.bands[-1])
    bands = first if first == last else f"{first} to {last}"
    fill = ", one filling in it" if found.fills == 1 else ""
    fill = f", {found.fills} fillings in it" if found.fills > 1 else fill
    return f"Spray {bands}: {found.minutes:.1f} min, {volume_words(found.litres)}{fill}."


def _now(plan: Plan, clock: Clock) -> str:
    """The one thing to do now."""
    past = plan.so_far
    if past is None:
        return ""
    done = {one.id for one in past.done}
    hand = [one for one in past.done if one.end_min > past.at_min + 0.05]
    first = f"NOW {clock.at(past.at_min)}:"
    lasts = max((one.end_min - past.at_min for one in hand), default=0.0)
    names = " and ".join(numbered(plan, one.id) for one in hand)
    finish = f" finish {names} ({lasts:.1f} min), then" if hand else ""
    finish += _leaves(plan)
    to_do = [(b, f) for f in plan.fields for b in f.bands if b.id not in done]
    if not to_do:
        return f"{first} all that is planned is sprayed. Walk out on dry floor."
    band, field = min(to_do, key=lambda one: one[0].start_min)
    mix = plan.more_mix
    if mix is not None and mix.how == "no" and any(b.id in done for b in field.bands):
        where = "to the next line that hides a seam and stop there (`farwall stop` names it)."
        return f"{first}{finish} spray {where}"
    if field.coat != past.coat or not any(b.id in done for b in field.bands):
        return f"{first}{finish} {_begin(plan, band, field, clock)}"
    fill = _filling(field, past.at_min, band.start_min)
    wait = _waiting(plan, band, clock)
    if wait and field.verdict == "cannot":
        last = [b.id for b in field.bands if b.id in done][-1]
        wait = f" feather the edge of {numbered(plan, last)} now;{wait}"
    bands = _with_other_half(plan, band, field)
    return f"{first}{finish}{wait}{fill} go on with {bands} in {_room(plan, field, band)}."


def _with_other_half(plan: Plan, band: Band, field: Field) -> str:
    """The band, and the half that the other sprayer begins in the same minute."""
    other = next((b for b in field.bands if begun_together(band, b)), None)
    name = numbered(plan, band.id)
    return f"band {name}" if other is None else f"bands {name} and {numbered(plan, other.id)}"


def _leaves(plan: Plan) -> str:
    """Where the second of two walks out now."""
    past = plan.so_far
    if past is None or past.sprayers != 1:
        return ""
    walks = [w for f in plan.fields for w in f.walks if w.who == "sprayer 2"]
    out = any(walk.path[0][2] >= past.at_min - 0.01 for walk in walks)
    return " the second sprayer walks out while the first waits, then" if out else ""


def _begin(plan: Plan, band: Band, field: Field, clock: Clock) -> str:
    past = plan.so_far
    at = past.at_min if past is not None else 0.0
    room = _room(plan, field, band)
    name, number = numbered(plan, field.id), numbered(plan, band.id)
    if band.start_min - at > 3.0:
        when = clock.at(band.start_min)
        return f"wait. {when} begin field {name} in {room}, band {number}."
    fill = _filling(field, at, band.start_min)
    return f"{fill} begin field {name} in {room}, band {number}.".strip()


def _waiting(plan: Plan, band: Band, clock: Clock) -> str:
    past = plan.so_far
    late = past is not None and any(
        c.until_min is not None and abs(c.until_min - band.start_min) < 1.5 for c in past.closed
    )
    return f" wait until {clock.at(band.start_min)}, then" if late else ""


def _filling(field: Field, start: float, end: float) -> str:
    for refill in field.refills:
        if start - 0.01 <= refill.at_min <= end:
            if sum(start - 0.01 <= other.at_min <= end for other in field.refills) > 1:
                return " fill both tanks,"
            if refill.by == "sprayer":
                return f" walk out and fill {volume_words(refill.litres)},"
            return f" take the full tank ({volume_words(refill.litres)} more),"
    return ""


def _seams(plan: Plan) -> list[str]:
    return [
        f"NO: {_by_numbers(plan, remedy.what)}"
        for field in plan.fields
        if field.verdict == "cannot"
        for remedy in field.remedies[:1]
    ]


def _by_numbers(plan: Plan, words: str) -> str:
    """A reason that names a field or a band by its id, told by its numbers."""
    return _IDS.sub(lambda one: f"{one[1]} {numbered(plan, one[2])}{one[3]}", words)


def _left(plan: Plan) -> list[str]:
    """One line a reason; the second coat on the same floor goes without saying."""
    past = plan.so_far
    why = {one.field: one.why for one in past.left} if past is not None else {}
    return [
        f"LEFT FOR ANOTHER DAY: {rooms_text(plan, field.rooms)} ({numbered(plan, field.id)}): "
        f"{why.get(field.id, '')}"
        for field in plan.left
    ]


def _mix(plan: Plan, found: MoreMix | None) -> list[str]:
    if found is None or found.how == "nothing":
        return []
    if found.how == "no":
        return [f"MIX NOTHING NEW. {found.why}"]
    if found.how == "look":
        return [found.why]
    when = (
        f"before band {numbered(plan, found.before_band)}"
        if found.before_band
        else "at the stop line"
    )
    late = f", while {volume_words(found.latest_at_l)} or more is left" if found.latest_at_l else ""
    return [f"MIX {volume_words(found.litres)} {when}{late}. {found.why}"]


def _to_come(plan: Plan) -> list[Field]:
    past = plan.so_far
    done = {one.id for one in past.done} if past is not None else set()
    open_ = [f for f in plan.fields if any(b.id not in done for b in f.bands)]
    return sorted(open_, key=lambda field: field.order)


def _rest(plan: Plan, clock: Clock) -> list[str]:
    """A line a field of the coat that is next, a line for each coat after it."""
    fields = _to_come(plan)
    coats = list(dict.fromkeys(field.coat for field in fields))
    lines = [f"  {_line(plan, field, clock)}" for field in fields if field.coat == coats[0]]
    for coat in coats[1:]:
        own = [field for field in fields if field.coat == coat]
        span = f"{clock.at(own[0].start_min)} to {clock.at(own[-1].end_min)}"
        many = f"{len(own)} field" + ("s" if len(own) > 1 else "")
        lines.append(f"  then coat {numbered(plan, coat)}: {many}, {span}")
    return lines


def _line(plan: Plan, field: Field, clock: Clock) -> str:
    done = {one.id for one in plan.so_far.done} if plan.so_far is not None else set()
    first = next(band for band in field.bands if band.id not in done)
    begun = "goes on" if first is not field.bands[0] else "begins"
    word = "a seam shows" if field.verdict == "cannot" else WORDS[field.verdict]
    name = f"{numbered(plan, field.id)} {rooms_text(plan, field.rooms)}"
    return (
        f"{clock.at(first.start_min)} {name} {begun}: {word}; "
        f"oldest edge {field.peak_age_min:.1f} of {field.open_time_min.low:.1f} min, "
        f"out by {way_words(plan, field)}, done {clock.at(field.end_min)}"
    )


def _room(plan: Plan, field: Field, band: Band) -> str:
    rooms = [room for room in plan.inputs.floor.rooms if room.id in field.rooms]
    shape = band.polygon.shape
    return max(rooms, key=lambda room: room.polygon.shape.intersection(shape).area).label


def _length(metres: float) -> str:
    return f"{metres / 0.3048:.0f} ft ({metres:.1f} m)"
