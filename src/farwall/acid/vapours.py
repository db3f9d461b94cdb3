"""Pressures over the film as tables that whole arrays can be looked up in.

The pressures themselves are asked for as functions of strength and temperature: what they rest on
stands where they are made.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import numpy.typing as npt

from farwall.acid.masses import HCL_G_MOL
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]
Pressure = Callable[[Array, float], Array]
"""Pascal over acids of so many % HCl by mass, all at so many °C."""

STRONGEST_PERCENT = 36.0
"""Beyond it a film is taken as this strong: the tables of pressure end there."""
R_J_MOL_K = 8.314462618
"""Gas constant, exact since 2019 [arithmetic of the SI]."""
_FINE = 361
_FAINT_PA = 1e-12


@dataclass(frozen=True)
class Vapours:
    """HCl and water over acid of 0 to 36 %, at one temperature: natural logarithms of pascals."""

    temperature_c: float
    hcl_ln_pa: Array
    water_ln_pa: Array

    @property
    def rt_j_mol(self) -> float:
        """R·T: a pressure over it is moles in a cubic metre."""
        return R_J_MOL_K * (self.temperature_c + 273.15)

    def hcl_pa(self, percent: Array) -> Array:
        """Pressure of hydrogen chloride over acid of this strength. [Pa]"""
        return _looked_up(self.hcl_ln_pa, percent)

    def water_pa(self, percent: Array) -> Array:
        """Pressure of water over acid of this strength. [Pa]"""
        return _looked_up(self.water_ln_pa, percent)


def vapours_at(temperature_c: float, *, hcl: Pressure, water: Pressure) -> Vapours:
    """The tables at one temperature [°C], from two functions of strength and temperature.

    Asked at every whole percent and bridged in the logarithm, which is nearly straight there.
    """
    whole = np.arange(STRONGEST_PERCENT + 1)
    fine = np.linspace(0.0, STRONGEST_PERCENT, _FINE)

    def table(pressure: Pressure) -> Array:
        asked = np.log(np.maximum(pressure(whole, temperature_c), _FAINT_PA))
        if asked[0] <= np.log(_FAINT_PA):  # nothing over pure water: as the next ones go on
            asked[0] = 2 * asked[1] - asked[2]
        bridged: Array = np.interp(fine, whole, asked)
        return bridged

    return Vapours(temperature_c, table(hcl), table(water))


def percent_of_molal(molal: Array) -> Array:
    """% HCl by mass of so many moles on a kilogram of water. Arithmetic."""
    grams = molal * HCL_G_MOL
    found: Array = 100 * grams / (1000 + grams)
    return found


def _looked_up(table: Array, percent: Array) -> Array:
    at = np.clip(percent, 0.0, STRONGEST_PERCENT) * ((_FINE - 1) / STRONGEST_PERCENT)
    low = np.minimum(at.astype(np.intp), _FINE - 2)
    share = at - low
    found: Array = np.exp(table[low] * (1 - share) + table[low + 1] * share)
    return found
