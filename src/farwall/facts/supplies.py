"""What is taken along besides stain, as the user wishes it; and what is to be masked.

Every line of the list of quantities has a switch: `left_out` takes it off, `amounts` puts the
user's own figure in the place of the rule's.
"""

from __future__ import annotations

from dataclasses import field
from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le, MaxLen, MinLen

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

Stage = Literal["before board", "before mud", "after paint"]
"""When in the build the floor is stained; it decides what stands to be masked."""
MaskKind = Literal[
    "drain", "register", "metal", "kick", "tub", "appliance", "stair", "post", "outside door",
    "other",
]  # fmt: skip
GapSeal = Literal["tape", "foam"]
"""What closes the gap between a door and its frame: one of the two, never both."""
KeptGearWay = Literal["share", "whole"]
_Id = Annotated[str, MinLen(1), MaxLen(100)]
"""Of a line: its kind, and the id of a stain behind it."""


@dataclass(frozen=True)
class MaskItem:
    """Something that is sealed, wrapped or taken out: where it is, how many, how long or high."""

    kind: MaskKind
    room: str = ""
    at: Point | None = None
    count: Annotated[int, Ge(1), Le(500)] = 1
    length_m: Annotated[float, Gt(0), Le(1000)] | None = None
    height_m: Annotated[float, Gt(0), Le(20)] | None = None
    take_out: bool = False
    note: Annotated[str, MaxLen(200)] = ""


@dataclass(frozen=True)
class Masking:
    """How the house is masked: stage of the build, film heights, what else stands in the way.

    gaps: what closes the gaps of doors; where it is not told, tape [common-practice].
    """

    stage: Stage | None = None
    film_m: Annotated[float, Gt(0), Le(20)] | None = None
    room_film_m: dict[str, Annotated[float, Gt(0), Le(20)]] = field(default_factory=dict)
    not_masked: tuple[str, ...] = ()
    items: tuple[MaskItem, ...] = ()
    gaps: GapSeal | None = None


@dataclass(frozen=True)
class Supplies:
    """Switches and own figures of the list of quantities, by the ids of its lines.

    person_days: how many people are on site on how many days, in all · sprayers: how many are
    bought new · spare_percent: more of everything that is bought · kept_gear: whether gear that
    serves many jobs is in the price by its share of the jobs it lasts (as where it is not told) or
    whole · lasts: jobs that a line lasts, the firm's own figure.
    """

    left_out: tuple[_Id, ...] = ()
    amounts: dict[str, Annotated[float, Ge(0)]] = field(default_factory=dict)
    person_days: Annotated[float, Gt(0), Le(400)] | None = None
    sprayers: Annotated[int, Ge(0), Le(20)] | None = None
    spare_percent: Annotated[float, Ge(0), Le(200)] | None = None
    kept_gear: KeptGearWay | None = None
    lasts: dict[_Id, Annotated[float, Ge(1), Le(1000)]] = field(default_factory=dict)
    masking: Masking = Masking()
