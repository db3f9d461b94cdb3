"""The sealer: its generic type and what its label says. The label wins over any default."""

from __future__ import annotations

from dataclasses import field
from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le, MinLen

from farwall.facts.slab import Acidity
from farwall.nouns import dataclass

_SlabC = Annotated[float, Ge(-30), Le(70)]
_Hours = Annotated[float, Gt(0)]
_Positive = Annotated[float, Gt(0)]

SealerType = Literal[
    "water acrylic",
    "solvent acrylic",
    "water epoxy and urethane",
    "epoxy",
    "penetrating",
    "floor finish",
]


@dataclass(frozen=True)
class SealerContainer:
    """A size that the sealer is sold in, with its price as text."""

    size_l: _Positive
    price: Annotated[str, MinLen(1)]


@dataclass(frozen=True)
class SealTools:
    """What the sealer is laid with: litres, metres, minutes. None takes what is usual.

    `band_m`: how wide a strip is laid before stepping back, one or more widths of the applicator.
    """

    tray_l: _Positive | None = None
    band_m: Annotated[float, Ge(0.3), Le(3)] | None = None
    lay_m2_min: _Positive | None = None
    walk_m_min: _Positive | None = None
    refill_min: Annotated[float, Ge(0)] | None = None
    swap_min: Annotated[float, Ge(0)] | None = None
    overlap_m: Annotated[float, Ge(0), Le(0.305)] | None = None
    reach_m: Annotated[float, Ge(0.5), Le(4)] | None = None


@dataclass(frozen=True)
class Sealer:
    """A sealer by its generic type; what is left out is taken from the table of its type.

    Slab in °C, humidity of the room in %, margin of the slab over the dew point
    in K, recoat window and waits in hours after a coat. The rest is for the seal day:
    what its sheet says of the wet edge, coverage, solvent and hardeners, pH of the floor it bears,
    grams of solvent a litre, the limit in the air.
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
    name: str = ""
    solvent: bool | None = None
    isocyanate: bool | None = None
    epoxy_amine: bool | None = None
    wet_edge_min: _Positive | None = None
    m2_per_l: _Positive | None = None
    test_wait_h: _Hours | None = None
    least_ph: Acidity | None = None
    most_ph: Acidity | None = None
    solvent_g_l: Annotated[float, Ge(0), Le(1500)] | None = None
    solvent_limit_mg_m3: _Positive | None = None
    containers: tuple[SealerContainer, ...] = ()
    tools: SealTools = field(default_factory=SealTools)
