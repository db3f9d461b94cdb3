"""Twenty invented houses of 4 to 14 rooms with one to three ways out, always the same."""

from __future__ import annotations

from farwall.bench.generator import house_of
from farwall.bench.nouns import Case

_ROOMS = (4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9, 10, 10, 11, 12, 12, 13, 14, 14)


def houses() -> tuple[Case, ...]:
    """The houses of the bench in the order of their size."""
    return tuple(
        house_of(rooms, 1000 + number, ways_out=1 + number % 3, name=f"house {number:02d}")
        for number, rooms in enumerate(_ROOMS, start=1)
    )
