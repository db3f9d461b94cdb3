"""What the wash day needs to know: water, pH of tap and bare slab, drums, machines, as told."""

from __future__ import annotations

from dataclasses import field
from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le, MaxLen

from farwall.facts.slab import Acidity
from farwall.nouns import dataclass

_Positive = Annotated[float, Gt(0)]
_Share = Annotated[float, Ge(0), Le(100)]
Base = Literal["bicarbonate", "soda ash", "ammonia water", "lime"]


@dataclass(frozen=True)
class Drums:
    """Drums for rinse water: what one holds, its own weight, how many there are, how full."""

    size_l: _Positive | None = None
    empty_kg: _Positive | None = None
    count: Annotated[int, Ge(0), Le(1000)] | None = None
    fill_percent: _Share | None = None
    at: Annotated[str, MaxLen(120)] = ""


@dataclass(frozen=True)
class Washing:
    """The wash day as told; None where nobody said.

    `unstained_ph`: the same rinse on a patch that was never stained, for new concrete is
    alkaline by itself. `floor_load_kg_m2`, `van_load_kg`: what may stand on a square metre
    there, what the van may carry. `water_from`: where clean water is drawn.
    """

    base: Base | None = None
    tap_ph: Acidity | None = None
    unstained_ph: Acidity | None = None
    water_l_per_m2: _Positive | None = None
    rinses: Annotated[int, Ge(1), Le(20)] | None = None
    vacuum_m2_min: _Positive | None = None
    scrub_m2_min: _Positive | None = None
    ground_fault: bool | None = None
    drums: Drums = field(default_factory=Drums)
    van_load_kg: _Positive | None = None
    floor_load_kg_m2: _Positive | None = None
    upstairs: bool | None = None
    water_from: Annotated[str, MaxLen(120)] = ""
