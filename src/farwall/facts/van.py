"""The van: what is in it, and the state of its sprayers."""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Gt, MinLen

from farwall.nouns import dataclass

VAN_VERSION = 1

SprayerKind = Literal["cheap", "acid-proof"]
"""cheap: seals that the acid takes in a job or two · acid-proof: all plastic, seals made for it."""
StockKind = Literal[
    "stain", "sealer", "cleaner", "bicarbonate", "tape", "film", "gloves", "suit", "goggles",
    "cartridges", "pads", "rags", "ph-strips", "bags", "finish", "paper", "jamb-wrap", "boots",
    "mops", "drums", "sprayer", "spill-kit", "dams", "plugs", "water", "other",
]  # fmt: skip
Unit = Literal["l", "kg", "m", "count"]


@dataclass(frozen=True)
class Flow:
    """One minute into a jug, water, the usual strokes: litres a minute on a day, at a use."""

    on: Annotated[str, MinLen(1)]
    l_min: Annotated[float, Gt(0)]
    uses: Annotated[int, Ge(0)] = 0


@dataclass(frozen=True)
class VanSprayer:
    """A sprayer: how often it has sprayed stain, its tip's flow as measured, what is wrong with it.

    seals_at: its uses when its seals were last renewed.
    """

    id: Annotated[str, MinLen(1)]
    kind: SprayerKind
    tank_l: Annotated[float, Gt(0)]
    tip: str = ""
    uses: Annotated[int, Ge(0)] = 0
    seals_at: Annotated[int, Ge(0)] = 0
    flows: tuple[Flow, ...] = ()
    unsound: str = ""


@dataclass(frozen=True)
class Stock:
    """Something on the shelf. `of`: the stain or sealer it is · `good_until`: a day, as told."""

    id: Annotated[str, MinLen(1)]
    kind: StockKind
    amount: Annotated[float, Ge(0)]
    unit: Unit
    of: str = ""
    lot: str = ""
    good_until: str = ""
    opened: str = ""


@dataclass(frozen=True)
class Van:
    """What is in the van."""

    sprayers: tuple[VanSprayer, ...] = ()
    stock: tuple[Stock, ...] = ()
    version: int = VAN_VERSION


@dataclass(frozen=True)
class Need:
    """Something a job needs: litres, kilograms, metres or a count; stains also of which lots, and
    what the job calls them."""

    kind: StockKind
    amount: float
    unit: Unit
    of: str = ""
    lots: tuple[str, ...] = ()
    rank: str = ""
    source: str = ""
    name: str = ""


@dataclass(frozen=True)
class Shopping:
    """A need, what is there for it by stock id, what has to be bought; `mind`: to look at."""

    need: Need
    there: float
    from_stock: tuple[str, ...]
    buy: float
    mind: str = ""


@dataclass(frozen=True)
class Condition:
    """What a sprayer's state is: `sound`, `watch` (may be its last use), or `no`; and why.

    uses_left: low and high · flow_change: of its tip since it was first measured, as a share.
    """

    sprayer: str
    word: Literal["sound", "watch", "no"]
    why: tuple[str, ...]
    uses_left: tuple[int, int]
    flow_l_min: float | None = None
    flow_change: float | None = None


@dataclass(frozen=True)
class VanPlan:
    """What the van gives a plan: a sprayer, a spare, the state of all, what to buy and mind."""

    sprayer: str
    spare: str
    conditions: tuple[Condition, ...]
    shopping: tuple[Shopping, ...]
    mind: tuple[str, ...]


@dataclass(frozen=True)
class UsedUp:
    """What a closed job took: sprayers that sprayed, tips as measured that day, things by stock id.

    `stains`: litres by stain and lot; lot empty where it was not noted.
    """

    on: str
    sprayers: tuple[str, ...] = ()
    flows: tuple[tuple[str, float], ...] = ()
    stains: tuple[tuple[str, str, float], ...] = ()
    things: tuple[tuple[str, float], ...] = ()
