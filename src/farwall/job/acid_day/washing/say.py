"""The wash day in lines for a terminal, US units first."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from farwall.job.acid_day.washing.noun import Ends, WashDay, WashRoom
from farwall.units import KG_PER_LB, clock_words, ft2_from_m2, ft_from_m, gal_from_l


def washing_said(day: WashDay, *, us: bool) -> tuple[str, ...]:
    """The part in lines for a terminal; `us`: hours by am and pm."""
    return (*_said(day, us=us), *day.warnings)


def _said(day: WashDay, *, us: bool) -> Iterator[str]:
    if not day.rooms:
        return
    low, likely, high = (_at(one, us=us) if one else "not reached" for one in day.begins_at)
    yield f"Wash from {likely} (earliest {low}, at the late end {high}): dwell over, floor dry."
    yield (
        f"{_hours(day.work_h)} of work, {_hours(day.hours)} on the clock with "
        f"{day.people} {'person' if day.people == 1 else 'people'}."
    )
    yield f"Water: {_gal(day.rinses_l)} for rinses, {_gal(day.scrub_l)} for scrubbing."
    if day.drums is not None:
        drums = day.drums
        yield (
            f"Drums: {drums.full} full and {drums.spares} spare (up to {drums.full_high} full), "
            f"{drums.full_kg / KG_PER_LB:.0f} lb ({drums.full_kg:.0f} kg) each."
        )
    yield f"A rinsed floor reads pH {day.least_ph:g} to {day.most_ph:g} and its rag is clean."
    for room in day.rooms:
        yield _room(room)


def _room(room: WashRoom) -> str:
    so_far = room.so_far
    told = f" After rinse {so_far.rinses}: {so_far.why} {so_far.do}" if so_far.rinses else ""
    return (
        f"{room.order}. {room.name}, {ft2_from_m2(room.area_m2):.0f} ft², out by "
        f"{room.way_name or 'no way'}: wet at most {ft2_from_m2(room.wet_m2):.0f} ft² at once, "
        f"rinse {gal_from_l(room.rinse_l.likely or 0):.0f} gal, {_hours(room.work_h)}, "
        f"{ft_from_m(room.edge_m):.0f} ft of edge by hand, {room.strips} "
        f"strip{'s' * (room.strips != 1)}.{told}"
    )


def _at(moment: str, *, us: bool) -> str:
    told = datetime.fromisoformat(moment)
    return f"{told.date()} {clock_words(told, us=us)}"


def _gal(ends: Ends) -> str:
    low, likely, high = (gal_from_l(one or 0.0) for one in (ends.low, ends.likely, ends.high))
    return f"{likely:.0f} gal" if low == high else f"{likely:.0f} gal ({low:.0f} to {high:.0f})"


def _hours(ends: Ends) -> str:
    return f"{ends.likely or 0:.1f} h ({ends.low or 0:.1f} to {ends.high or 0:.1f})"
