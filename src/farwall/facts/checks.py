"""The call of the day before, the check of the morning, and what is seen while work goes on."""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le

from farwall.facts.degrees import SlabC
from farwall.facts.slab import Acidity
from farwall.nouns import dataclass

_Positive = Annotated[float, Gt(0)]
_NotNegative = Annotated[float, Ge(0)]
Poured = Literal["water", "bleach", "ammonia", "muriatic acid", "another stain", "unknown"]


@dataclass(frozen=True)
class Readiness:
    """What the builder or owner says the day before. None: not asked yet."""

    water: bool | None = None
    circuits: Annotated[int, Ge(0), Le(20)] | None = None
    heat: bool | None = None
    trades_out: bool | None = None
    drums_allowed: bool | None = None


@dataclass(frozen=True)
class Morning:
    """The check before the first stroke, sprayers with water only. None: not done yet.

    `tip_l_min` is one minute into a jug; slab readings are the coldest and the
    warmest of five spots [°C].
    """

    sprayer_tight: bool | None = None
    spare_tight: bool | None = None
    tip_l_min: _Positive | None = None
    eyewash: bool | None = None
    fan: bool | None = None
    slab_low_c: SlabC | None = None
    slab_high_c: SlabC | None = None


@dataclass(frozen=True)
class Watch:
    """What is seen on the floor while it is stained and cleaned. None: not looked at yet.

    `left_l` and `left_m2` are told at a stop line: cut mix in tanks and tub, and floor to go.
    """

    fizz: bool | None = None
    wet_look: Literal["lighter", "right", "darker"] | None = None
    coat: str | None = None
    left_l: _NotNegative | None = None
    left_m2: _NotNegative | None = None
    rinse_ph: Acidity | None = None
    rag: Literal["clean", "dirty"] | None = None
    poured: tuple[Poured, ...] = ()
