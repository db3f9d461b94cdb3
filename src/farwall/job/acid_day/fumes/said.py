"""The fumes in lines for a terminal."""

from __future__ import annotations

from datetime import datetime, timedelta
from functools import partial

from farwall.job.acid_day.fumes.noun import Fumes, KeptOut, Range, RoomFumes, Way, worst_of
from farwall.units import clock_words

_WAYS = {
    "shut": "shut", "open": "doors and windows open", "open-fans": "open, {fans} blowing out",
    "shut-fans": "shut, {fans} blowing out",
}  # fmt: skip


def fumes_said(part: Fumes, *, us: bool) -> tuple[str, ...]:
    """The part in lines for a terminal; `us`: hours by am and pm."""
    if not part.rooms:
        return part.warnings
    worst = part.rooms[worst_of([one.peak_ppm for one in part.rooms])]
    changes = figure(part.air_changes_h or 0.0)
    head = (
        f"The house stands {part.standing}, about {changes} air changes an hour: the worst room is "
        f"{worst.name}, {ppm(worst.peak_ppm)} (a guess, and a wide one)."
    )
    return (
        head,
        *(_room(one, part.starts_at, us=us) for one in part.rooms),
        *_sprayer(part),
        *(_way(one) for one in part.ways),
        *_needed(part),
        *_out(part, us=us),
        *_chromate(part),
        *_ammonia(part),
        *part.warnings,
    )


def ppm(one: Range) -> str:
    """`about 8 ppm (1.2 to 40)`."""
    return f"about {figure(one.likely)} ppm ({figure(one.low)} to {figure(one.high)})"


def figure(value: float) -> str:
    """Two figures, plainly: `0.34`, `8.2`, `120`, `2,400`."""
    rounded = float(f"{value:.2g}")
    return f"{rounded:,.0f}" if rounded >= 10 else f"{rounded:g}"


def _room(one: RoomFumes, starts_at: str, *, us: bool) -> str:
    at = partial(clock, starts_at, us=us)
    clear = next(b for b in one.below if b.limit == "hcl-hygienists")
    return (
        f"{one.name}: peak {ppm(one.peak_ppm)} at {at(one.peak_at_min)}, mean over "
        f"15 min {ppm(one.mean_15_ppm)}; below 2 ppm from {at(clear.likely_min)}, at "
        f"the high end {at(clear.high_min)}."
    )


def clock(starts_at: str, at_min: float | None, *, us: bool) -> str:
    """`14:35`, `2:35 pm`; with the day where it is another; or that it is not within two days."""
    if at_min is None:
        return "not within two days"
    start = datetime.fromisoformat(starts_at)
    then = start + timedelta(minutes=at_min)
    later = (then.date() - start.date()).days
    told = clock_words(then, us=us)
    return told + (f" ({later} day{'s' if later > 1 else ''} later)" if later else "")


def _sprayer(part: Fumes) -> tuple[str, ...]:
    one = part.sprayer
    if one is None:
        return ()
    return (
        (
            f"Who sprays, over the fresh film: mean over 15 min {ppm(one.mean_15_ppm)}, over 8 "
            f"hours {ppm(one.mean_8_h_ppm)}, for {one.minutes:.0f} minutes of spraying."
        ),
    )


def _way(one: Way) -> str:
    fans = "1 fan" if one.fans == 1 else f"{one.fans} fans"
    stands = " (as it stands)" if one.stands else ""
    clear = (
        "not below 2 ppm within two days"
        if one.clear_min is None
        else f"below 2 ppm {one.clear_min:.0f} min after the last stroke"
    )
    return (
        f"House {_WAYS[one.key].format(fans=fans)}{stands}, {figure(one.air_changes_h)} changes an "
        f"hour: {ppm(one.peak_ppm)}, {clear}."
    )


def _needed(part: Fumes) -> tuple[str, ...]:
    one = part.needed
    if one is None:
        return ()
    flow = one.flow_m3_h
    told = (
        f"To hold 2 ppm: {figure(flow.likely)} m³/h ({figure(one.flow_cfm.likely)} cfm), range "
        f"{figure(flow.low)} to {figure(flow.high)} m³/h, {one.mixing:g} times that of a "
        "well-mixed house."
    )
    return (told,)


def _out(part: Fumes, *, us: bool) -> tuple[str, ...]:
    return tuple(_kept(n, one, part.starts_at, us=us) for n, one in enumerate(part.kept_out, 1))


def _kept(number: int, one: KeptOut, starts_at: str, *, us: bool) -> str:
    at = partial(clock, starts_at, us=us)

    def until(at_min: float | None) -> str:
        if at_min is None and one.next_min is not None:
            return "the next coat"
        return at(at_min)

    return (
        f"After coat {number} ({at(one.ends_min)}) the house is above 2 ppm until "
        f"{until(one.likely_min)}, at the high end until {until(one.high_min)}: nobody without a "
        "respirator goes in before, and then only after a reading."
    )


def _chromate(part: Fumes) -> tuple[str, ...]:
    one = part.chromate
    if one is None:
        return ()
    spraying, day = one.while_spraying_ug_m3, one.mean_8_h_ug_m3
    told = (
        f"Chromium VI in the mist while spraying: about {figure(spraying.likely)} µg/m³ "
        f"({figure(spraying.low)} to {figure(spraying.high)}); over 8 hours {figure(day.likely)} "
        f"({figure(day.low)} to {figure(day.high)}), against {one.limit_ug_m3:g} by law and an "
        f"action level of {one.action_ug_m3:g}."
    )
    return (told,)


def _ammonia(part: Fumes) -> tuple[str, ...]:
    one = part.ammonia
    if one is None:
        return ()
    told = (
        f"Ammonia: {ppm(one.over_liquid_ppm)} over its wash water, {ppm(one.in_house_ppm)} in the "
        f"house as it stands; {figure(one.flow_m3_h)} m³/h hold 25 ppm. "
        "Where it meets acid vapour it smokes white. Bicarbonate has no fume."
    )
    return (told,)
