"""The simple check: a walk's misclosure as it stands, spread by the compass rule.

Bowditch's rule gives each leg a share of the misclosure by its length. Source: [bowditch-1808],
[wolf-ghilani].
"""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot

from farwall.floor.walk.lay import Lay, unit
from farwall.floor.walk.nouns import Walk
from farwall.nouns import dataclass

Leg = tuple[float, float]
"""Departure and latitude (x and y) of one side of a traverse [m, or any one unit]."""


@dataclass(frozen=True)
class Misclosure:
    """Where a closed traverse ends against where it began (x, y), and its length around."""

    x: float
    y: float
    around: float

    @property
    def far(self) -> float:
        """How far the end is from the beginning."""
        return hypot(self.x, self.y)

    @property
    def one_in(self) -> float:
        """The precision as surveyors tell it: one part in this many; infinite when it closes."""
        return self.around / self.far if self.far > 0 else float("inf")


def misclosure(legs: Sequence[Leg]) -> Misclosure:
    """The misclosure of legs that ought to come back to where they began."""
    return Misclosure(
        sum(x for x, _ in legs), sum(y for _, y in legs), sum(hypot(x, y) for x, y in legs)
    )


def bowditch(legs: Sequence[Leg]) -> tuple[Leg, ...]:
    """What is added to each leg so that all close: minus the misclosure by share of length.

    Raises ValueError for legs without any length.
    """
    miss = misclosure(legs)
    if not miss.around > 0:
        raise ValueError("legs without length have no shares")
    shares = [hypot(x, y) / miss.around for x, y in legs]
    return tuple((-miss.x * share, -miss.y * share) for share in shares)


def legs_of(walk: Walk, lay: Lay, room: int) -> tuple[Leg, ...] | None:
    """The walls of a room as legs, along the directions told; None when one was not measured."""
    legs = []
    for wall, heading in zip(walk.rooms[room].walls, lay.headings[room], strict=True):
        if wall.length_m is None:
            return None
        x, y = unit(heading)
        legs.append((wall.length_m * x, wall.length_m * y))
    return tuple(legs)
