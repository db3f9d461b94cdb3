"""Heats of hydrochloric acid at 25 °C: of dilution, of solution, and the heat capacity.

The table is that of Parker, Thermal Properties of Aqueous Uni-univalent Electrolytes, NSRDS-NBS 2
(1965), as printed in the Handbook of Chemistry and Physics, Enthalpy of Dilution of Acids
[parker-1965]: heat given off when a solution is diluted without end.
"""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Final

import numpy as np

from farwall.acid.activity import Floats
from farwall.acid.masses import HCL_G_MOL, WATER_G_MOL
from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from scipy.interpolate import PchipInterpolator

HEAT_OF_SOLUTION_KJ_MOL: Final = -74.84
"""Of the gas into endless water [parker-1965]; Gunn and Green measured -74.81."""

DEBYE_HUCKEL_KJ: Final = 1.986
"""kJ/mol for each (mol/kg)^½: the slope that every strong 1:1 acid has at first (from memory)."""

_MOLAL: Final = (
    0.0, 0.000111, 0.000555, 0.00111, 0.00278, 0.00555, 0.01110, 0.01388, 0.01850, 0.02775, 0.05,
    0.05551, 0.0617, 0.0694, 0.0793, 0.0925, 0.1, 0.2, 0.5, 0.5551, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5,
    5, 5.5506, 6, 7, 8, 9, 10, 15, 20, 55.506,
)  # fmt: skip
_GIVEN_OFF_KJ: Final = (
    0.0, 0.021, 0.042, 0.067, 0.105, 0.142, 0.197, 0.226, 0.251, 0.310, 0.406, 0.427, 0.448, 0.473,
    0.502, 0.540, 0.556, 0.761, 1.172, 1.234, 1.695, 2.167, 2.623, 3.063, 3.506, 3.958, 4.402,
    4.899, 5.318, 5.841, 6.268, 7.217, 8.201, 9.213, 10.24, 15.40, 19.87, 45.61,
)  # fmt: skip
MOST_MOLAL: Final = _MOLAL[-1]

_CP_PERCENT: Final = (10, 20, 30, 32, 34, 36, 38)
_CP_KJ_KG_K: Final = (3.47, 2.99, 2.60, 2.55, 2.50, 2.46, 2.43)
_WATER_KJ_KG_K: Final = 4.182
_CP_ENDLESS_J_MOL_K: Final = -130.0
"""Apparent heat capacity in endless water, 20-25 °C (from memory: -127 to -136)."""


def heat_of_dilution_kj_mol(molality: float) -> float:
    """kJ given off by a mole of HCl when the solution is diluted without end at 25 °C.

    0 to 55.5 mol/kg; the table itself at its points, a curve that keeps its rise in between
    (monotone cubic over the square root of molality) [parker-1965]. Outside raises `Refused`.
    """
    if not 0 <= molality <= MOST_MOLAL * (1 + 1e-9):
        what = f"{molality:g} mol/kg is outside the table of heats of dilution."
        raise Refused(Mistake("molality", what, f"0 to {MOST_MOLAL:g} mol/kg is known."))
    return float(_given_off()(np.sqrt(min(molality, MOST_MOLAL))))


@cache
def _given_off() -> PchipInterpolator:
    from scipy.interpolate import PchipInterpolator

    return PchipInterpolator(np.sqrt(np.array(_MOLAL)), np.array(_GIVEN_OFF_KJ), extrapolate=False)


def partial_heats_j_mol(molality: Floats) -> tuple[Floats, Floats]:
    """Relative partial molar enthalpies at 25 °C of the acid and of the water, J/mol.

    From a smooth curve through the table to 20 mol/kg: powers of the square root of molality, the
    first by Debye and Hückel, the others by least squares of relative error; it passes the table
    within 0.7 % from 1 mol/kg upward. 0 to 20 mol/kg [parker-1965].
    """
    root = np.sqrt(molality)
    curve = _smooth()
    powers = [root**n for n in range(1, len(curve) + 1)]
    pairs = list(zip(curve, powers, strict=True))
    apparent = np.sum([a * p for a, p in pairs], axis=0)
    rise = np.sum([n / 2 * a * p for n, (a, p) in enumerate(pairs, 1)], axis=0)
    acid: Floats = np.asarray(1000 * (apparent + rise))
    water: Floats = np.asarray(-WATER_G_MOL * molality * rise)
    return acid, water


@cache
def _smooth() -> tuple[float, ...]:
    molal = np.array(_MOLAL[1:-1])
    heat, root = np.array(_GIVEN_OFF_KJ[1:-1]), np.sqrt(molal)
    columns = np.stack([root**n for n in range(2, 7)], axis=1)
    weight = 1 / np.maximum(heat, 0.3)
    found = np.linalg.lstsq(columns * weight[:, None], (heat - DEBYE_HUCKEL_KJ * root) * weight)[0]
    return (DEBYE_HUCKEL_KJ, *(float(value) for value in found))


def partial_heat_capacities_j_mol_k(molality: Floats) -> tuple[Floats, Floats]:
    """Partial molar heat capacities of the acid and, beyond its own, of the water, J/(mol·K).

    A parabola over the square root of molality through the apparent heat capacities of the
    20 °C table [hcl-20c], 0 to 38 %; good to some 20 J/(mol·K), for it only bends a line.
    """
    level, slope, bend = _apparent_heat_capacity()
    root = np.sqrt(molality)
    rise = slope / 2 * root + bend * molality
    acid: Floats = level + slope * root + bend * molality + rise
    water: Floats = -WATER_G_MOL / 1000 * molality * rise
    return acid, water


@cache
def _apparent_heat_capacity() -> tuple[float, float, float]:
    share = np.array(_CP_PERCENT) / 100
    molal = share / (1 - share) / (HCL_G_MOL / 1000)
    apparent = (np.array(_CP_KJ_KG_K) / (1 - share) - _WATER_KJ_KG_K) / molal * 1000
    root = np.append(np.sqrt(molal), 0.0)
    columns = np.stack([np.ones_like(root), root, root**2], axis=1)
    a, b, c = np.linalg.lstsq(columns, np.append(apparent, _CP_ENDLESS_J_MOL_K))[0]
    return float(a), float(b), float(c)


def heat_capacity_kj_kg_k(hcl_percent: float) -> float:
    """Heat capacity of the solution near 20 °C, kJ/(kg·K), 0 to 38 % by mass, else `Refused`.

    The 20 °C table at its points [hcl-20c], a curve that keeps its fall in between.
    """
    if not 0 <= hcl_percent <= _CP_PERCENT[-1]:
        what = f"{hcl_percent:g} % HCl is outside the table of heat capacities."
        raise Refused(Mistake("hcl_percent", what, "0 to 38 % is known."))
    return float(_heat_capacity()(hcl_percent))


@cache
def _heat_capacity() -> PchipInterpolator:
    from scipy.interpolate import PchipInterpolator

    percents = np.array((0.0, *_CP_PERCENT))
    return PchipInterpolator(percents, np.array((_WATER_KJ_KG_K, *_CP_KJ_KG_K)), extrapolate=False)
