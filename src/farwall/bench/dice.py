"""Chance that comes out the same in every version of Python, for invented houses.

Python promises the sequence of `Random(seed).random()` and of nothing else
that draws, so nothing else is drawn from.
"""

from __future__ import annotations

from collections.abc import Sequence
from random import Random
from typing import TypeVar

Thing = TypeVar("Thing")


class Dice:
    """Throws by a seed; whole numbers are used where a house is measured in centimetres."""

    def __init__(self, seed: int) -> None:
        self._next = Random(seed).random

    def between(self, low: int, high: int) -> int:
        """A whole number from `low` to `high`, both with it."""
        return low + int(self._next() * (high - low + 1))

    def happens(self, chance: float) -> bool:
        """True with this chance, 0 to 1."""
        return self._next() < chance

    def one_of(self, things: Sequence[Thing]) -> Thing:
        """One of a few things, each as likely."""
        return things[int(self._next() * len(things))]
