"""How far a number can be trusted: its rank, and the source it leans on.

Every figure that a screen or a paper shows carries one of these ranks; a
figure with its rank and source is a `Known`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Rank(StrEnum):
    """Rank of evidence, strongest first."""

    PUBLISHED = "published"
    MEASURED = "measured here"
    LEARNED = "learned"
    PRACTICE = "common practice"
    MEMORY = "from memory"
    GUESS = "guess"

    @property
    def strength(self) -> int:
        """0 for the strongest rank, rising as trust falls."""
        return list(Rank).index(self)


def weakest(*ranks: Rank) -> Rank:
    """The rank a result may claim that leans on all of `ranks`."""
    return max(ranks, key=lambda rank: rank.strength)


@dataclass(frozen=True)
class Known:
    """A value with its unit in words, its rank and its source (a key of docs/sources.md)."""

    value: float
    unit: str
    rank: Rank
    source: str


@dataclass(frozen=True)
class Span:
    """A range: the low end, the likely value and the high end, in one unit.

    Decisions use the safe end; `likely` is what a person should expect. An
    end of `None` means that no such end exists (a film that does not dry).
    """

    low: float
    likely: float | None
    high: float | None
    rank: Rank
    source: str
