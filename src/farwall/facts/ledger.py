"""What each figure rests on, written down while the gaps of a job are filled."""

from __future__ import annotations

import math

from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.default_table import Default
from farwall.facts.plan import Ground


class Ledger:
    """Collects what each figure rests on while the gaps are being filled."""

    def __init__(self) -> None:
        self.grounds: list[Ground] = []
        self.warnings: list[str] = []

    def note(self, name: str, value: object, unit: str, rank: Rank, source: str) -> None:
        """Write down one figure or word, its rank and its source."""
        text = f"{value:g}" if isinstance(value, float) else str(value)
        self.grounds.append(Ground(name, text, unit, rank.value, source))

    def settle(self, told: float | None, default: Default) -> float:
        """The told value, or the default; either way it is noted.

        A told value that is the default's own gains no rank by being written down.
        """
        if told is not None and not is_default(told, default):
            self.note(default.name, told, default.unit, Rank.MEASURED, f"told as {default.name}")
            return told
        value = default.usual if told is None else told
        self.note(default.name, value, default.unit, default.rank, default.source)
        return value

    def settle_once(self, name: str, default: Default) -> None:
        """Note that a default was taken by that name, once however often it is taken."""
        if all(ground.name != name for ground in self.grounds):
            self.note(name, default.usual, default.unit, default.rank, default.source)


def is_default(told: float, default: Default) -> bool:
    """Whether a told value is the default's own, to the digits in which defaults are written."""
    return math.isclose(told, default.usual, rel_tol=table.WRITTEN_TO)
