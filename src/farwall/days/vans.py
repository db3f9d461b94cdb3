"""What each van has taken on, as bits: half days at a house, fresh floors to guard, spray days."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import field

from farwall.days.columns import Column
from farwall.days.nouns import DayCrew
from farwall.nouns import dataclass


def bits(places: Iterable[int]) -> int:
    """Whole numbers as the bits of one."""
    mask = 0
    for place in places:
        mask |= 1 << place
    return mask


@dataclass(frozen=True)
class Way:
    """A column with its bits, made once."""

    column: Column
    at: int
    fresh: int
    sprays: int

    @staticmethod
    def of(column: Column) -> Way:
        """The bits of a column."""
        return Way(column, bits(column.at), bits(column.fresh), bits(column.sprays))


@dataclass
class Van:
    """One crew's load. `fresh[k]`: half days in which more than k floors are fresh."""

    crew: DayCrew
    at: int = 0
    sprays: int = 0
    fresh: list[int] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.fresh = [0] * guards(self.crew)

    def takes(self, way: Way) -> bool:
        """Whether the house fits in: one place at a time, one floor sprayed a day, all guarded."""
        if self.at & way.at or self.sprays & way.sprays or not self.fresh:
            return False
        return not self.fresh[-1] & way.fresh

    def load(self, way: Way) -> None:
        """Take the house on."""
        self.at |= way.at
        self.sprays |= way.sprays
        more = way.fresh
        for k, level in enumerate(self.fresh):
            self.fresh[k] |= more
            more &= level


def guards(crew: DayCrew) -> int:
    """Floors that a crew can have fresh at once: one person sprays, each other one guards."""
    return max(crew.people - 1, 0)
