"""Hydrogen chloride and water vapour over hydrochloric acid, 0-38 % by mass, 0-40 °C.

Two ways that share nothing but the heat of nature:

- thermodynamics: p = (m·γ)²/K at 25 °C with γ of Hamer and Wu and K from Gibbs energies, carried
  to another temperature by the heat of solution, the relative enthalpy of Parker's table and the
  heat capacities (van 't Hoff); exact at 25 °C as far as γ is, and it cannot climb too steeply;
- the handbook's lines of Zeisberg, drawn through measured pressures.

The likely figure is the handbook's from 12 % up, for it was drawn through measured pressures: the
published totals at 20 °C, which neither way has seen, are met within 4 % by it and within 11 % by
the other. Up to 6 % it is their geometric middle, for there the lines climb more steeply than the
heat of solution allows; between, it goes over by degrees. Low and high hold both with a tenth to
spare (a guess for the error that both share). They part by up to 45 % below 8 % when cold, by 17 %
at 34 %. Salts dissolved in a stain press more out of it: `farwall.acid.salting`.
"""

from __future__ import annotations

from typing import Final, overload

import numpy as np
from numpy.typing import ArrayLike, NDArray

from farwall.acid import handbook_vapour
from farwall.acid.activity import Floats, ln_activity_coefficient, ln_water_activity
from farwall.acid.heat import (
    HEAT_OF_SOLUTION_KJ_MOL,
    partial_heat_capacities_j_mol_k,
    partial_heats_j_mol,
)
from farwall.acid.masses import HCL_G_MOL
from farwall.acid.water import saturation_pressure_pa
from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.nouns import dataclass

MOST_PERCENT: Final = 38.0
LEAST_C, MOST_C = 0.0, 40.0
GAS_J_MOL_K: Final = 8.314462618
WARM_K: Final = 298.15
ZERO_K: Final = 273.15

GIBBS_GAS_J_MOL: Final = -95_299.0
GIBBS_SOLVED_J_MOL: Final = -131_228.0
"""Standard Gibbs energies of formation at 25 °C, 1 bar [nbs-1982], from memory."""
BAR_PA: Final = 1e5
GAS_CP_J_MOL_K: Final = 29.1
"""Heat capacity of the gas at 25 °C (from memory)."""
SPARE: Final = 0.1
"""What both ways together may be out by beyond their own difference, a share: a guess."""

WEAK_PERCENT, STRONG_PERCENT = 6.0, 12.0
"""Between which the likely figure goes over from the middle to the handbook: a guess."""

RANK: Final = Rank.MEMORY
SOURCE: Final = "hamer-wu-1972, parker-1965, zeisberg-1925"


@dataclass(frozen=True)
class Pressure:
    """Partial pressure of hydrogen chloride, Pa: the range and its two ways."""

    low_pa: float
    likely_pa: float
    high_pa: float
    by_activity_pa: float
    by_handbook_pa: float


@overload
def hcl_pressure_pa(*, hcl_percent: float, temperature_c: float) -> float: ...
@overload
def hcl_pressure_pa(*, hcl_percent: ArrayLike, temperature_c: ArrayLike) -> Floats: ...
def hcl_pressure_pa(*, hcl_percent: ArrayLike, temperature_c: ArrayLike) -> float | Floats:
    """Likely partial pressure of hydrogen chloride over plain acid, Pa.

    Numbers give a number, arrays broadcast and give an array. 0 to 38 % by mass, 0 to 40 °C;
    outside, or not a number, raises `Refused`. From memory; see the module for its two ways.
    """
    percent, kelvin = _checked(hcl_percent, temperature_c)
    by_activity = _ln_by_activity(percent, kelvin)
    return _plain(np.exp(by_activity + _ln_ratio(percent, kelvin) * _leaning(percent)))


@overload
def water_pressure_pa(*, hcl_percent: float, temperature_c: float) -> float: ...
@overload
def water_pressure_pa(*, hcl_percent: ArrayLike, temperature_c: ArrayLike) -> Floats: ...
def water_pressure_pa(*, hcl_percent: ArrayLike, temperature_c: ArrayLike) -> float | Floats:
    """Partial pressure of water over plain acid, Pa; as `hcl_pressure_pa`.

    Water's activity from the same equation by Gibbs and Duhem, carried by the partial heats of
    the water, times the pressure over pure water [hamer-wu-1972, parker-1965].
    """
    percent, kelvin = _checked(hcl_percent, temperature_c)
    molality = _molality(percent)
    _, heat = partial_heats_j_mol(molality)
    _, bend = partial_heat_capacities_j_mol_k(molality)
    ln = ln_water_activity(molality) + _carried(-heat, -bend, kelvin)
    return _plain(np.exp(ln) * saturation_pressure_pa(kelvin))


def hcl_pressure(*, hcl_percent: float, temperature_c: float) -> Pressure:
    """The likely partial pressure with its range and both ways, Pa; limits as `hcl_pressure_pa`."""
    percent, kelvin = _checked(hcl_percent, temperature_c)
    by_activity = float(np.exp(_ln_by_activity(percent, kelvin)))
    ratio = float(np.exp(_ln_ratio(percent, kelvin)))
    ends = (by_activity, by_activity * ratio)
    return Pressure(
        low_pa=min(ends) * (1 - SPARE),
        likely_pa=by_activity * ratio ** float(_leaning(percent)),
        high_pa=max(ends) * (1 + SPARE),
        by_activity_pa=ends[0],
        by_handbook_pa=ends[1],
    )


def _leaning(percent: Floats) -> Floats:
    """How far the likely figure leans from the first way to the handbook, 0.5 to 1."""
    out: Floats = np.interp(percent, (WEAK_PERCENT, STRONG_PERCENT), (0.5, 1.0))
    return out


def _plain(values: Floats) -> float | Floats:
    return float(values) if np.ndim(values) == 0 else values


def _molality(percent: Floats) -> Floats:
    out: Floats = percent / ((100 - percent) * (HCL_G_MOL / 1000))
    return out


def _ln_by_activity(percent: Floats, kelvin: Floats) -> Floats:
    """Gibbs energies and activity at 25 °C, carried by heat of solution and heat capacities."""
    molality = _molality(percent)
    ln_constant = (GIBBS_GAS_J_MOL - GIBBS_SOLVED_J_MOL) / (GAS_J_MOL_K * WARM_K)
    with np.errstate(divide="ignore"):
        warm = 2 * (np.log(molality) + ln_activity_coefficient(molality)) - ln_constant
    heat = -1000 * HEAT_OF_SOLUTION_KJ_MOL - partial_heats_j_mol(molality)[0]
    bend = GAS_CP_J_MOL_K - partial_heat_capacities_j_mol_k(molality)[0]
    out: Floats = warm + np.log(BAR_PA) + _carried(heat, bend, kelvin)
    return out


def _carried(heat: Floats, bend: Floats, kelvin: Floats) -> Floats:
    """From 25 °C by d ln p/dT = Δh/(R·T²), Δh = `heat` + `bend`·(T - 298.15 K)."""
    far = 1 / WARM_K - 1 / kelvin
    out: Floats = ((heat - bend * WARM_K) * far + bend * np.log(kelvin / WARM_K)) / GAS_J_MOL_K
    return out


def _ln_ratio(percent: Floats, kelvin: Floats) -> Floats:
    """Handbook over activity: straight between the handbook's strengths, level beyond its ends."""
    nodes = handbook_vapour.PERCENTS
    strength, warmth = np.broadcast_arrays(percent, kelvin)
    right = np.clip(np.searchsorted(nodes, strength), 1, len(nodes) - 1)
    left = right - 1
    part = np.clip((strength - nodes[left]) / (nodes[right] - nodes[left]), 0.0, 1.0)
    out: Floats = (1 - part) * _at_node(left, warmth) + part * _at_node(right, warmth)
    return out


def _at_node(node: NDArray[np.intp], kelvin: Floats) -> Floats:
    """The same at one of the handbook's strengths."""
    a, b = handbook_vapour.LINE_A[node], handbook_vapour.LINE_B[node]
    by_activity = _ln_by_activity(handbook_vapour.PERCENTS[node], kelvin)
    out: Floats = handbook_vapour.ln_pressure_pa(a, b, kelvin) - by_activity
    return out


def _checked(hcl_percent: ArrayLike, temperature_c: ArrayLike) -> tuple[Floats, Floats]:
    percent = np.asarray(hcl_percent, dtype=np.float64)
    celsius = np.asarray(temperature_c, dtype=np.float64)
    told = [
        Mistake(where, f"{low:g} to {high:g} {unit} is known; this is outside.", "")
        for where, values, low, high, unit in (
            ("hcl_percent", percent, 0.0, MOST_PERCENT, "% HCl by mass"),
            ("temperature_c", celsius, LEAST_C, MOST_C, "°C"),
        )
        if not np.all((values >= low) & (values <= high))
    ]
    if told:
        raise Refused(*told, about="The vapour over this acid cannot be told.")
    return percent, celsius + ZERO_K
