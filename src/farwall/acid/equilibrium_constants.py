"""What each reaction in acid or base water comes to at a temperature: logarithms of constants.

All on the molal scale, activities, 1 atm. Water and carbonate follow fitted published relations,
the rest van 't Hoff's from 25 °C. What was seen of each source stands in docs/sources.md: most are
quoted elsewhere; CaOH+, lime and the permittivity of water are **from memory**. Tests hold all of
them to a second opinion and to a published buffer.
"""

from __future__ import annotations

from functools import lru_cache
from math import log, log10

from farwall.acid.water import density_kg_l
from farwall.errors import Unanswerable
from farwall.nouns import dataclass

LEAST_C, MOST_C = 0.0, 50.0
GAS_J_MOL_K = 8.31446
KELVIN = 273.15


@dataclass(frozen=True)
class Constants:
    """log10 of equilibrium constants at `temperature_c`, and the two numbers of Debye and Hückel.

    water: H2O = H+ + OH-. carbonic: CO2 + H2O = H+ + HCO3-. bicarbonate: HCO3- = H+ + CO3--.
    henry: CO2(g) = CO2, mol/kg/atm. ammonium: NH4+ = NH3 + H+. ca_hydroxide: Ca++ + OH- = CaOH+.
    Pairs are formed from free ions. lime, calcite: solubility products of Ca(OH)2 and CaCO3.
    """

    temperature_c: float
    water: float
    carbonic: float
    bicarbonate: float
    henry: float
    ammonium: float
    na_bicarbonate: float
    na_carbonate: float
    ca_bicarbonate: float
    ca_carbonate: float
    ca_hydroxide: float
    lime: float
    calcite: float
    debye_a: float
    debye_b: float


@lru_cache(maxsize=64)
def constants(temperature_c: float) -> Constants:
    """The constants at a temperature, 0 to 50 °C. Raises `Unanswerable` outside.

    Sources: [marshall-franck-1981] equation 4 for water; [plummer-busenberg-1982] table 2 and
    equations 6, 9 for carbon dioxide, carbonate, calcite and the calcium pairs; [emerson-1975]
    for ammonium; [truesdell-jones-1974] for the sodium pairs; [baes-mesmer-1976] for CaOH+ and
    Ca(OH)2, its heat from [nbs-1982].
    """
    if not LEAST_C <= temperature_c <= MOST_C:
        raise Unanswerable(
            f"No constants are kept for water at {temperature_c:g} °C.",
            remedies=(f"Ask between {LEAST_C:g} and {MOST_C:g} °C.",),
        )
    t = temperature_c + KELVIN
    lg = log10(t)
    water = _water(t)
    a, b = _debye_huckel(temperature_c)
    return Constants(
        temperature_c=temperature_c,
        water=water,
        carbonic=-356.3094 - 0.06091964 * t + 21834.37 / t + 126.8339 * lg - 1684915 / t**2,
        bicarbonate=-107.8871 - 0.03252849 * t + 5151.79 / t + 38.92561 * lg - 563713.9 / t**2,
        henry=108.3865 + 0.01985076 * t - 6919.53 / t - 40.45154 * lg + 669365 / t**2,
        ammonium=-(0.09018 + 2729.92 / t),
        na_bicarbonate=_van_t_hoff(-0.25, -4.2, t),
        na_carbonate=_van_t_hoff(1.27, 37.3, t),
        ca_bicarbonate=1209.120 + 0.31294 * t - 34765.05 / t - 478.782 * lg,
        ca_carbonate=-1228.732 - 0.299444 * t + 35512.75 / t + 485.818 * lg,
        ca_hydroxide=_van_t_hoff(1.15, 8.3, t),
        lime=_van_t_hoff(22.80, -129.7, t) + 2 * water,
        calcite=-171.9065 - 0.077993 * t + 2839.319 / t + 71.595 * lg,
        debye_a=a,
        debye_b=b,
    )


def _van_t_hoff(log_k_25: float, heat_kj_mol: float, t: float) -> float:
    slope = heat_kj_mol * 1000 / (log(10) * GAS_J_MOL_K)
    return log_k_25 - slope * (1 / t - 1 / (25 + KELVIN))


def _water(t: float) -> float:
    """log10 of the ion product of water. [marshall-franck-1981], equation 4."""
    density = density_kg_l(t - KELVIN)
    return (
        -4.098 - 3245.2 / t + 2.2362e5 / t**2 - 3.984e7 / t**3
        + (13.957 - 1262.3 / t + 8.5641e5 / t**2) * log10(density)
    )  # fmt: skip


def _debye_huckel(temperature_c: float) -> tuple[float, float]:
    """A (kg/mol)^½ and B (kg/mol)^½/Å. [truesdell-jones-1974]; permittivity [malmberg-1956]."""
    c = temperature_c
    permittivity = 87.740 - 0.40008 * c + 9.398e-4 * c**2 - 1.410e-6 * c**3
    shield = permittivity * (c + KELVIN)
    root = density_kg_l(c) ** 0.5
    return 1.82483e6 * root / shield**1.5, 50.2916 * root / shield**0.5
