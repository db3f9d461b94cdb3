"""The front page of the seal sheet: verdict, coats by the clock, waits, checks, log, cautions."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from farwall.evidence import rank_words
from farwall.facts.plan import Clock, Ground, Plan
from farwall.job.seal_day.noun import CoatHours, Sealing
from farwall.papers.grounds import ground_value
from farwall.papers.seal_words import cans, coat_fields, coat_named, coat_span, opened
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.words import area, length, listed, room_names, unbroken, volume

VERDICT_WORDS = {
    "no": "No: nothing is sealed as it stands.",
    "go with": "Go, once what is listed is done and looked at.",
    "go": "Go.",
}
BEFORE = (
    "Even light colour all over, no dark islands; meter back at its reading before the cleaning.",
    "pH of the rinsed floor and white rag in every room, as the sealer's sheet wants them.",
    "Test patch taped, torn and scratched: nothing lifted, nothing white.",
    (
        "Slab read at five spots, the coldest counts: within the sealer's "
        "limits, 3 K (5 °F) or more "
        "above the dew point, not falling."
    ),
    "Vacuumed, then a dry dark glove: no powder. Joints dry and empty.",
    "Roller or pad washed, spun and picked clean of lint; same one in every room.",
    "Sealer of one lot, or lots boxed; stirred, never shaken.",
    "Every way in barred and signed; pets, children and trades out.",
)
_LABEL, _USUAL = "the sealer's label", "its type's usual, until the label is read"
_SOLVENT = (
    "Solvent, or it may be: before a can is opened all flames and pilot lights are out, and no "
    "switch, plug or power tool is touched until the vapour is gone. All cautions follow."
)
_NOON_H = 12


def front_page(plan: Plan, sealing: Sealing, *, units: Units, notes: str) -> dict[str, Any]:
    """Verdict, coats by the clock, waits, patch, barriers, checks, the day's log, cautions."""
    clock = plan_clock(plan, units)
    facts = sealing.sealer
    return {
        "verdict": sealing.verdict,
        "danger": _SOLVENT if sealing.sealer.solvent else "",
        "words": VERDICT_WORDS[sealing.verdict],
        "under": _under(plan, sealing, units, clock),
        "against": [plain(one) for one in sealing.against],
        "reasons": [
            {"no": one.word == "no", "words": plain(f"{one.what} {one.change}".strip())}
            for one in sealing.reasons
        ],
        "coats": [_coat_row(plan, one, units, clock) for one in sealing.coats],
        "limits": plain(_limits(sealing)),
        "told_by": _LABEL if facts.told else _USUAL,
        "waits": [_wait_row(one, clock) for one in _after(plan, sealing)],
        "patch": [plain(unbroken(one)) for one in _patch(plan, sealing, units, clock)],
        "barriers": [
            plain(f"{one.exit}: barred from {_at(one.from_at, clock)}, socks "
                  f"{_at(one.socks_at, clock)}, shoes {_at(one.shoes_at, clock)}.")
            for one in sealing.barriers
        ],
        "how_barred": sealing.barriers[0].how if sealing.barriers else "",
        "before": list(BEFORE),
        "air": [plain(one) for one in _air(sealing)],
        "cautions": [plain(one) for one in plan.cautions],
        "rests": [
            {"name": plain(_ground_words(one.name)),
             "value": plain(_ground_value(one, units, clock)),
             "rank": plain(rank_words(one.rank, one.source))}
            for one in plan.grounds
            if one.name.startswith(("sealer", "wet edge", "dr", "container"))
        ],
        "log": [coat_named(one.coat) for one in sealing.coats],
        "notes": plain(notes),
        "slab_unit": "°F" if units == "us" else "°C",
    }  # fmt: skip


_GROUND_WORDS = {
    "sealer": "",
    "sealer.m2_per_l": "coverage",
    "sealer.tools.tray_l": "in a full tray",
    "sealer.tools.band_m": "wide bands",
    "sealer.tools.lay_m2_min": "laid by one",
    "sealer.tools.walk_m_min": "walked",
    "sealer.tools.refill_min": "to fill a tray",
    "sealer.tools.swap_min": "to swap trays",
    "sealer.tools.overlap_m": "laid into the last band",
    "sealer.tools.reach_m": "reached from where one stands",
}


def _ground_value(one: Ground, units: Units, clock: WallClock) -> str:
    if one.name in {"dried down", "dry from"}:
        return _at(one.value, clock)
    return ground_value(one, units)


def _ground_words(name: str) -> str:
    return _GROUND_WORDS.get(name, name.replace("seal-", "coat "))


def _coat_row(plan: Plan, coat: CoatHours, units: Units, clock: WallClock) -> dict[str, Any]:
    begins = coat_fields(plan, coat.coat)[0].start_min
    ends = max(one.end_min for one in coat_fields(plan, coat.coat))
    after = []
    if coat.recoat is not None and coat.abrade is not None:
        high = coat.recoat.high_min
        sure = f", surely {clock.time(ends + high)}" if high is not None else ", no sure end"
        after.append(f"Next coat from {clock.time(ends + coat.recoat.low_min)}{sure}.")
        after.append(f"After {clock.time(begins + coat.abrade.low_min)} abrade first.")
    care = f"With care: {'; '.join(coat.reasons)}." if coat.word == "care" else ""
    hand = cans(coat.at_hand_containers, units)
    return {
        "name": coat_named(coat.coat),
        "span": coat_span(plan, coat.coat, clock),
        "litres": unbroken(
            f"{volume(coat.likely_l, units)} likely; {opened(coat.open_containers, units)}"
            + (f", {hand} in all at hand." if hand else ".")
        ),
        "after": " ".join(after),
        "care": plain(care),
    }


def _after(plan: Plan, sealing: Sealing) -> list[Clock]:
    last = sealing.coats[-1].coat
    return [
        one
        for one in plan.clocks
        if one.coat == last and one.begins_min is not None and one.name not in _OF_THE_DAY
    ]


_OF_THE_DAY = ("wet edge", "abrade after")


def _wait_row(one: Clock, clock: WallClock) -> dict[str, str]:
    begins = one.begins_min or 0.0
    late = one.high_min if one.high_min is not None else one.low_min
    ends = (begins + one.low_min, begins + late)
    # within four days the name of the day is enough, and two times fit beside each other
    low, high = (clock.time(at) if late < _DAYS_MIN else _day(clock, at, hour=False) for at in ends)
    return {
        "name": one.name,
        "low": low,
        "late": high,
        "rank": one.rank,
    }


_DAYS_MIN = 4 * 24 * 60.0
"""Beyond it the hour of a wait says nothing."""


def _day(clock: WallClock, minutes: float, *, hour: bool = True) -> str:
    """`Thu 21 May 9:00`: a moment days on."""
    moment = clock.at(minutes)
    if not hour:
        days = (moment.date() - clock.starts_at.date()).days
        return f"{moment:%a %-d %b}" if clock.day_told else f"day {days + 1}"
    if not clock.day_told:
        days = (moment.date() - clock.starts_at.date()).days
        return f"day {days + 1}, {clock.bare(minutes)}"
    half = "" if clock.units == "metric" else " am" if moment.hour < _NOON_H else " pm"
    return f"{moment:%a %-d %b} {clock.bare(minutes)}{half}"


def _at(moment: str, clock: WallClock) -> str:
    minutes = (datetime.fromisoformat(moment) - clock.starts_at).total_seconds() / 60
    return _day(clock, minutes)


def _patch(plan: Plan, sealing: Sealing, units: Units, clock: WallClock) -> list[str]:
    patch = sealing.test_patch
    room = listed(room_names(plan, (patch.room,)))
    side = length(patch.side_m, units)
    return [
        (
            f"{side} square in {room}, as far from its way in as it goes: laid by "
            f"{_at(patch.lay_by, clock)}, tried {_at(patch.try_at, clock)} "
            f"({patch.wait_low_h:g} to {patch.wait_high_h:g} h, {patch.rank})."
        ),
        patch.how,
    ]


def _limits(sealing: Sealing) -> str:
    one = sealing.sealer
    low_f, high_f = one.least_slab_c * 1.8 + 32, one.most_slab_c * 1.8 + 32
    return (
        f"Slab {low_f:.0f} to {high_f:.0f} °F ({one.least_slab_c:.0f} to "
        f"{one.most_slab_c:.0f} °C), "
        f"{one.least_margin_k * 1.8:.0f} °F ({one.least_margin_k:g} K) or more above the dew point "
        f"for six hours on, not falling, air at most {one.most_rh_percent:g} %."
    )


def _under(plan: Plan, sealing: Sealing, units: Units, clock: WallClock) -> str:
    first = coat_fields(plan, sealing.coats[0].coat)
    name = sealing.sealer.name or sealing.sealer.type or "a sealer nobody named"
    floor = area(sum(one.area_m2 for one in first), units)
    return plain(f"{clock.day()} · {name}, {len(sealing.coats)} coats, {floor}")


def _air(sealing: Sealing) -> list[str]:
    told = []
    for one in sealing.air:
        if one.air_changes_per_h is None:
            return list(one.warnings)
        told.append(
            f"{coat_named(one.coat)}: {one.air_changes_per_h:g} air changes an hour "
            f"({one.flow_m3_h:,.0f} m³/h, {(one.flow_m3_h or 0.0) / 1.699:,.0f} cfm) keep the mean "
            f"at the limit ({one.rank}; {one.release_g_min:g} g/min given off)."
        )
    return [*told, *(sealing.air[0].warnings if sealing.air else ())]
