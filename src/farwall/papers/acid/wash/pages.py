"""What the pages of the wash-day sheet say, in words ready to be set."""

from __future__ import annotations

import math
from typing import Any

from farwall.evidence import rank_words
from farwall.job.acid_day.washing.noun import DrumsTold, Ends, WashDay, WashRoom
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock
from farwall.papers.words import area, length, unbroken
from farwall.units import KG_PER_LB, ft_from_m, gal_from_l

ROUNDS_SHOWN = 6
BY_HAND_M2 = 3.5
"""A room below it takes no machine: a guess."""


def front(day: WashDay, units: Units, clock: WallClock) -> dict[str, Any]:
    """When, with whom, how much water, which drums, and what is still to be told."""
    ends = (day.begins.low, day.begins.likely, day.begins.high)
    in_words = iter(clock.times([one for one in ends if one is not None]))
    begins = [None if one is None else next(in_words) for one in ends]
    return {
        "begin": f"Begin {begins[1]}." if begins[1] else "No hour is sure: the floor stays damp.",
        "between": _between(begins),
        "hands": [_tied(one) for one in _hands(day)],
        "water": [_tied(plain(one)) for one in _water(day, units)],
        "drums": [] if day.drums is None else [
            _tied(plain(one)) for one in _drums(day.drums, units)
        ],
        "asks": [plain(one) for one in day.warnings],
        "passes": _passes(day),
        "day": clock.day(),
    }  # fmt: skip


def _between(begins: list[str | None]) -> str:
    if begins[2] is None:
        return f"Earliest {begins[0]}; no sure end: dwell over and the floor dry all over."
    if begins[0] == begins[2]:
        return "Before it: dwell over and the floor dry all over."
    return (
        f"Earliest {begins[0]}, at the late end {begins[2]}: dwell over and the floor dry all over."
    )


def _hands(day: WashDay) -> list[str]:
    people = "1 person" if day.people == 1 else f"{day.people} people"
    return [
        f"{_hours(day.work_h)} of work, likely {_h(day.work_h.likely)}.",
        f"On the clock likely {_h(day.hours.likely)} with {people}.",
    ]


def _water(day: WashDay, units: Units) -> list[str]:
    found = [
        f"All rinses: likely {_volume(day.rinses_l.likely, units)}{_from(day.rinses_l, units)}.",
        f"Scrubbing beside it: likely {_volume(day.scrub_l.likely, units)}.",
    ]
    if day.water_from:
        found.append(f"Drawn at: {day.water_from}.")
    return found


def _from(ends: Ends, units: Units) -> str:
    if ends.low == ends.high:
        return ""
    low, high = (_volume(one, units) for one in (ends.low, ends.high))
    return f", {low} to {high}"


def _drums(drums: DrumsTold, units: Units) -> list[str]:
    found = [
        f"{drums.full} full and {drums.spares} spare; at the high end {drums.full_high} full.",
        f"Each {_weight(drums.full_kg, units)} when full: never moved by one person.",
    ]
    if drums.at:
        found.append(f"They stand: {drums.at}.")
    if drums.floor == "spread" and drums.square_m is not None:
        side = length(drums.square_m, units)
        found.append(f"Each wants a square of {side} to itself on that floor.")
    if drums.van_full is not None:
        found.append(f"The van carries {drums.van_full} full ones at once.")
    return found


def _weight(weight_kg: float, units: Units) -> str:
    pounds, kilos = f"{round(weight_kg / KG_PER_LB, -1):.0f} lb", f"{weight_kg:.0f} kg"
    return f"{pounds} ({kilos})" if units == "us" else f"{kilos} ({pounds})"


def _passes(day: WashDay) -> str:
    tap = "" if day.tap_ph is None else f" The tap reads {day.tap_ph:g}."
    return f"A rinsed floor reads pH {day.least_ph:g} to {day.most_ph:g}, its rag is clean.{tap}"


def room_block(room: WashRoom, units: Units) -> dict[str, Any]:
    """One room: how it is washed, and as many boxes as rinses are likely at most."""
    return {
        "number": str(room.order),
        "name": plain(room.name),
        "under": _tied(plain(_under(room, units))),
        "lines": [_tied(plain(one)) for one in _lines(room, units)],
        "rounds": [str(n) for n in range(1, ROUNDS_SHOWN + 1)],
        "strips": _strips(room.strips),
    }


def _under(room: WashRoom, units: Units) -> str:
    way = f"back out by {room.way_name}" if room.way_name else "no way out is drawn"
    return f"{area(room.area_m2, units)}, {_hours(room.work_h)} of work, {way}"


def _lines(room: WashRoom, units: Units) -> list[str]:
    found = [_stretch(room, units)]
    if room.dries_min is not None:
        found.append(f"Take each up within {_round(room.dries_min / 2)} min.")
    found.append(f"Each rinse {_volume(room.rinse_l.likely, units)}.")
    found.append(_passes_of(room))
    found.append(f"Edge {_edge(room.edge_m, units)} by hand, about {_minutes(room.edge_h.likely)}.")
    return found


def _round(minutes: float) -> str:
    """Whole minutes, from ten on to the five below: the safe side."""
    return f"{minutes // 5 * 5:.0f}" if minutes >= 10 else f"{max(math.floor(minutes), 1)}"


def _passes_of(room: WashRoom) -> str:
    if room.area_m2 < BY_HAND_M2:
        return "By hand, twice over all of it, the second time across."
    first, second = _lanes(room.lanes_first), _lanes(room.lanes_second)
    return f"First pass {room.runs}, {first}; second across, {second}."


def _edge(edge_m: float, units: Units) -> str:
    return f"{ft_from_m(edge_m):.0f} ft" if units == "us" else f"{edge_m:.1f} m"


def _lanes(count: int) -> str:
    return "1 lane" if count == 1 else f"{count} lanes"


def _stretch(room: WashRoom, units: Units) -> str:
    stretches = math.ceil(room.area_m2 / max(room.wet_m2, 1e-6) - 1e-6)
    if stretches <= 1:
        return "Wet it whole."
    return f"Wet at most {area(room.wet_m2, units)} at once to scrub: {stretches} stretches."


def _strips(count: int) -> str:
    return "1 strip each time" if count == 1 else f"{count} strips each time"


def _minutes(hours: float | None) -> str:
    value = (hours or 0.0) * 60
    return f"{max(round(value / 5) * 5, 5):.0f} min" if value < 90 else f"{value / 60:.1f} h"


def _h(hours: float | None) -> str:
    return f"{hours or 0.0:.1f} h"


def _hours(ends: Ends) -> str:
    return f"{ends.low or 0.0:.1f} to {ends.high or 0.0:.1f} h"


def _volume(litres: float | None, units: Units) -> str:
    """Whole gallons from ten on, tenths below: nobody measures rinse water closer."""
    value = litres or 0.0
    first = gal_from_l(value) if units == "us" else value
    return f"{first:.{0 if first >= 10 else 1}f} {'gal' if units == 'us' else 'L'}"


def _tied(text: str) -> str:
    """The text with each number tied to its unit, hours too."""
    return unbroken(text)


def rests(day: WashDay) -> list[dict[str, str]]:
    """What it rests on."""
    return [
        {"name": name, "value": value, "rank": rank_words(rank, source)}
        for name, value, rank, source in day.grounds
    ]
