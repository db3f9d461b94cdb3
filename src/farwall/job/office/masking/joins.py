"""Where film ends or meets film of another height: there it laps, and there tape goes up."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.floor.geometry import Point
from farwall.job.office.masking.nouns import FilmRun


def joins_of(hung: Sequence[FilmRun]) -> list[float]:
    """How tall each join of a room is [m]; around a corner film goes on without one.

    Where film of two heights meets, the join is as tall as the lower one.
    """
    begins = {place_of(one.line[0]): one for one in hung}
    ends = {place_of(one.line[-1]) for one in hung}
    found = []
    for one in hung:
        if place_of(one.line[0]) == place_of(one.line[-1]):
            found.append(one.film_m)
            continue
        after = begins.get(place_of(one.line[-1]))
        if after is None or after.film_m != one.film_m:
            found.append(one.film_m if after is None else min(one.film_m, after.film_m))
        if place_of(one.line[0]) not in ends:
            found.append(one.film_m)
    return found


def place_of(point: Point) -> Point:
    """A point as it is compared: runs that meet end in the same one."""
    return (round(point[0], 4), round(point[1], 4))
