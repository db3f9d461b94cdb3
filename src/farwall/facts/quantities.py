"""Quantities: how much of everything a job takes, each with the rule that says so."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.facts.van import StockKind, Unit


@dataclass(frozen=True)
class Quantity:
    """One line: `likely` is what will most likely go, `ready` what to have in hand.

    rule: how it was reckoned, in words with its figures · of: the stain or sealer it is · coat,
    field, room: what it is for, where it is for one · on: False where it was switched off · told:
    the figure is the user's own.
    """

    id: str
    kind: StockKind
    what: str
    unit: Unit
    low: float
    likely: float
    high: float
    ready: float
    rule: str
    rank: str
    source: str
    of: str = ""
    coat: str = ""
    field: str = ""
    room: str = ""
    lots: tuple[str, ...] = ()
    on: bool = True
    told: bool = False


@dataclass(frozen=True)
class Quantities:
    """All lines in the order in which they are needed, and what stands against them."""

    lines: tuple[Quantity, ...]
    warnings: tuple[str, ...] = ()

    @property
    def wanted(self) -> tuple[Quantity, ...]:
        """Those that are switched on."""
        return tuple(one for one in self.lines if one.on)
