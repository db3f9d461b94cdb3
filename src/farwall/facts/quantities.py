"""Quantities: how much of everything a job takes, each with the rule that says so."""

from __future__ import annotations

from typing import Literal

from farwall.facts.van import StockKind, Unit
from farwall.nouns import dataclass

Moment = Literal["stain", "mask", "wash", "seal", "wear", "tools"]
"""What a line is for."""


@dataclass(frozen=True)
class Share:
    """What of a line goes to one coat, field or room; `of` where it is for something else.

    `likely` and `ready` of all shares of a line sum to its own; `low` and `high` are this share's
    alone and sum to more spread than the line has.
    """

    low: float
    likely: float
    high: float
    ready: float
    coat: str = ""
    field: str = ""
    room: str = ""
    of: str = ""


@dataclass(frozen=True)
class Quantity:
    """One line: `likely` is what will most likely go, `ready` what to have in hand.

    rule: how it was reckoned, in words with its figures · of: the stain or sealer it is · coat,
    field, room: what it is for, where it is for one · on: False where it was switched off · told:
    the figure is the user's own · shares: by coat and field, by room · ruled: what the rule has
    ready, whatever the user's own figure is.
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
    moment: Moment = "tools"
    shares: tuple[Share, ...] = ()
    ruled: float | None = None


@dataclass(frozen=True)
class Quantities:
    """All lines in the order in which they are needed, and what stands against them.

    Amounts are SI; units: the user's, in which the rules are said.
    """

    lines: tuple[Quantity, ...]
    warnings: tuple[str, ...] = ()
    units: str = "us"

    @property
    def wanted(self) -> tuple[Quantity, ...]:
        """Those that are switched on."""
        return tuple(one for one in self.lines if one.on)
