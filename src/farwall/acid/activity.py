"""How hydrochloric acid and its water act at 25 °C, by molality: the equation of Hamer and Wu.

Hamer and Wu, J. Phys. Chem. Ref. Data 1, 1047 (1972), equations for HCl to 16 mol/kg
[hamer-wu-1972]. Their constants stand here from memory; a published equation of other measurements
[hcl-emf] and printed values of the activity coefficient agree within 1.5 % (tests/published).
"""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from farwall.acid.masses import WATER_G_MOL

Floats = NDArray[np.float64]

SLOPE: Final = 0.5108
"""Debye-Hückel slope at 25 °C, (kg/mol)^½, base ten."""
SIZE: Final = 1.525
"""The constant under the slope, (kg/mol)^½."""
TERMS: Final = (1.0494e-1, 6.5360e-3, -4.2058e-4, -4.070e-6, 5.258e-7)
"""Of molality to the first power and up."""
MOST_MOLAL: Final = 16.0
"""To here the equation is given; the tool follows it to 38 % (16.8 mol/kg) and says so."""


def ln_activity_coefficient(molality: Floats) -> Floats:
    """Natural logarithm of the mean ionic activity coefficient at 25 °C; molality in mol/kg.

    0 to 16 mol/kg [hamer-wu-1972].
    """
    root = np.sqrt(molality)
    series = sum(term * molality ** (n + 1) for n, term in enumerate(TERMS))
    out: Floats = np.log(10) * (series - SLOPE * root / (1 + SIZE * root))
    return out


def ln_water_activity(molality: Floats) -> Floats:
    """Natural logarithm of the activity of the water at 25 °C; molality in mol/kg.

    The same equation carried through Gibbs and Duhem, so that both agree exactly. [derived here]
    """
    one = 1 + SIZE * np.sqrt(molality)
    series = sum((n + 1) / (n + 2) * t * molality ** (n + 2) for n, t in enumerate(TERMS))
    field = SLOPE / SIZE**3 * (one - 2 * np.log(one) - 1 / one)
    times_molality = molality + np.log(10) * (series - field)
    out: Floats = -2 * WATER_G_MOL / 1000 * times_molality
    return out
