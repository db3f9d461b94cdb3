"""Density of hydrochloric acid by strength and temperature.

Laliberté and Cooper, J. Chem. Eng. Data 49, 1141 (2004), equations 5 and 8, with the constants for
HCl of the later fit to 287 points, 5-99 °C, to 37.6 % [laliberte-2004].
"""

from __future__ import annotations

from math import exp
from typing import Final

from farwall.acid import water
from farwall.errors import Mistake, Refused

MOST_PERCENT: Final = 38.0
LEAST_C, MOST_C = 0.0, 60.0

_C0: Final = 0.000283872260482906
_C1: Final = 0.00394946957169882
_C2: Final = 2.85020047681807
_C3: Final = -0.0157747012568046
_C4: Final = -3766.20868665006


def density_kg_l(*, hcl_percent: float, temperature_c: float) -> float:
    """Density, kg/L. 0 to 38 % by mass, 0 to 60 °C; outside raises `Refused` [laliberte-2004].

    Measured values lie within 0.1 %; below 5 °C and from 37.6 to 38 % it is carried on a little.
    """
    if not (0 <= hcl_percent <= MOST_PERCENT and LEAST_C <= temperature_c <= MOST_C):
        what = f"{hcl_percent:g} % at {temperature_c:g} °C is outside what is known of its density."
        remedy = f"0 to {MOST_PERCENT:g} % by mass and {LEAST_C:g} to {MOST_C:g} °C are known."
        raise Refused(Mistake("hcl_percent, temperature_c", what, remedy))
    share = hcl_percent / 100
    pure = water.density_kg_l(temperature_c)
    return 1 / ((1 - share) / pure + share * _apparent_l_kg(share, temperature_c))


def _apparent_l_kg(share: float, temperature_c: float) -> float:
    """Apparent volume of the acid in it, L/kg."""
    top = share + _C2 + _C3 * temperature_c
    bottom = (_C0 * share + _C1) * exp(1e-6 * (temperature_c + _C4) ** 2)
    return top / bottom * 1000
