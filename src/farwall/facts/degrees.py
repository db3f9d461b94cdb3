"""How cold and how warm slab and air may be told to be: beyond it a reading is a slip."""

from __future__ import annotations

from typing import Annotated

from annotated_types import Ge, Le

COLDEST_C, HOTTEST_SLAB_C, HOTTEST_AIR_C = -17.0, 70.0, 60.0
"""No relation of the tool has a meaning outside (rank: guess); 0 °F, 158 °F and 140 °F or so."""
SlabC = Annotated[float, Ge(COLDEST_C), Le(HOTTEST_SLAB_C)]
AirC = Annotated[float, Ge(COLDEST_C), Le(HOTTEST_AIR_C)]


def air_like_slab(slab_c: float) -> float:
    """The air over a slab of which nothing else is known, °C: as warm, and no warmer than air
    gets."""
    return min(slab_c, HOTTEST_AIR_C)
