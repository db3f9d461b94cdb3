"""The strength of hydrochloric acid, said in the ways that sheets, jugs and chemists say it.

Percent is % HCl by mass, 0 to 100, in every name that ends so.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import Final

import numpy as np

from farwall.acid import density, water
from farwall.acid.masses import HCL_G_MOL
from farwall.acid.root import root_between
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

BAUME_MODULUS: Final = 145.0
"""Heavier than water: specific gravity = 145/(145 - °Bé), both at 60 °F [baume]."""
SIXTY_F_C: Final = (60 - 32) / 1.8
TRADE_PERCENT: Final = {18.0: 27.92, 20.0: 31.45, 22.0: 35.21}
"""% HCl by degree as the trade sells it [baume]: 20 quoted, 18 and 22 from memory."""


@dataclass(frozen=True)
class Solution:
    """A strength at a temperature: mol/kg of water, mol/L, kg/L.

    `baume` is what a hydrometer with the trade's scale reads in it at this temperature,
    `baume_60f` the trade's degree of this strength, read at 60 °F.
    """

    hcl_percent: float
    temperature_c: float
    density_kg_l: float
    molality: float
    molarity: float
    baume: float
    baume_60f: float


def solution(*, hcl_percent: float, temperature_c: float) -> Solution:
    """All ways of saying a strength. 0-38 %, 0-60 °C, else `Refused` [laliberte-2004, baume]."""
    kg_l = density.density_kg_l(hcl_percent=hcl_percent, temperature_c=temperature_c)
    return Solution(
        hcl_percent=hcl_percent,
        temperature_c=temperature_c,
        density_kg_l=kg_l,
        molality=molality_from_percent(hcl_percent),
        molarity=hcl_percent * 10 * kg_l / HCL_G_MOL,
        baume=_degrees(kg_l),
        baume_60f=baume_from_percent(hcl_percent),
    )


def molality_from_percent(hcl_percent: float) -> float:
    """Moles of HCl on a kilogram of water; 0 up to, not with, 100 %. [arithmetic]"""
    return hcl_percent / (100 - hcl_percent) / (HCL_G_MOL / 1000)


def percent_from_molality(molality: float) -> float:
    """% HCl by mass of so many moles on a kilogram of water. [arithmetic]"""
    kg = molality * HCL_G_MOL / 1000
    return 100 * kg / (1 + kg)


def baume_from_percent(hcl_percent: float) -> float:
    """The trade's degree, at 60 °F; 0 to 38 %, else `Refused` [laliberte-2004, baume]."""
    most = _baume_by_density(density.MOST_PERCENT)
    if not 0 <= hcl_percent <= density.MOST_PERCENT:
        what = f"{hcl_percent:g} % HCl is outside what is known."
        raise Refused(Mistake("hcl_percent", what, f"0 to {density.MOST_PERCENT:g} % is known."))
    return root_between(lambda b: percent_from_baume(b) - hcl_percent, 0.0, most, width=1e-11)


def percent_from_baume(baume: float) -> float:
    """% HCl by mass of an acid sold at this degree, read at 60 °F [laliberte-2004, baume].

    0 to 23.6 °Bé (38 %); beyond raises `Refused`. By density, and as the trade's own table says at
    its three strengths, with what density differs from it spread straight in between.
    """
    by_density = _sought(_baume_by_density, baume, "baume", "°Bé")
    return by_density + float(np.interp(baume, *_trade_differs()))


@cache
def _trade_differs() -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Degrees, and what the trade's table has more than density there, % HCl."""
    more = (
        percent - _sought(_baume_by_density, baume, "baume", "°Bé")
        for baume, percent in TRADE_PERCENT.items()
    )
    return (0.0, *TRADE_PERCENT), (0.0, *more)


def _baume_by_density(hcl_percent: float) -> float:
    return _degrees(density.density_kg_l(hcl_percent=hcl_percent, temperature_c=SIXTY_F_C))


def percent_from_molarity(molarity: float, *, temperature_c: float) -> float:
    """% HCl by mass of mol/L at this temperature; to 38 %, else `Refused` [laliberte-2004]."""

    def told(percent: float) -> float:
        return solution(hcl_percent=percent, temperature_c=temperature_c).molarity

    return _sought(told, molarity, "molarity", "mol/L")


def _degrees(kg_l: float) -> float:
    gravity = kg_l / water.density_kg_l(SIXTY_F_C)
    return BAUME_MODULUS - BAUME_MODULUS / gravity


def _sought(told: Callable[[float], float], value: float, where: str, unit: str) -> float:
    low, high = told(0.0), told(density.MOST_PERCENT)
    if not low <= value <= high:
        what = f"{value:g} {unit} is outside what is known of hydrochloric acid."
        raise Refused(Mistake(where, what, f"It goes from {max(low, 0):.2g} to {high:.4g}."))
    return root_between(lambda p: told(p) - value, 0.0, density.MOST_PERCENT, width=1e-10)
