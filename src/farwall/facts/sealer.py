"""The sealer: its generic type and what its label says. The label wins over any default."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le

_SlabC = Annotated[float, Ge(-30), Le(70)]
_Hours = Annotated[float, Gt(0)]

SealerType = Literal[
    "water acrylic",
    "solvent acrylic",
    "water epoxy and urethane",
    "epoxy",
    "penetrating",
    "floor finish",
]


@dataclass(frozen=True)
class Sealer:
    """A sealer by its generic type; what is left out is taken from the table of its type.

    Slab in °C, humidity of the room in %, margin of the slab over the dew point
    in K, recoat window and waits in hours after a coat.
    """

    type: SealerType | None = None
    least_slab_c: _SlabC | None = None
    most_slab_c: _SlabC | None = None
    most_rh_percent: Annotated[float, Gt(0), Le(100)] | None = None
    least_margin_k: Annotated[float, Ge(0), Le(20)] | None = None
    coats: Annotated[int, Ge(1), Le(6)] | None = None
    recoat_from_h: _Hours | None = None
    recoat_to_h: _Hours | None = None
    walk_h: _Hours | None = None
    furniture_h: _Hours | None = None
