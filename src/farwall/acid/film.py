"""A film of acid on the slab: what it gives the air, what lime eats, what the slab drinks.

On each square metre stand water, acid and chloride of metals. The slab drinks all three alike; lime
turns acid into chloride of calcium; water and hydrogen chloride leave by the air. So the film
grows stronger while it dries, and gives off most near its end.

Strength as the vapour feels it: hydrogen chloride answers to H times Cl. At the same chloride its
activity coefficient is taken as that of pure acid (Harned's rule with no further term
[from-memory]), so p = p_pure(all chloride) · acid / all chloride. Water is taken as over pure acid
of that chloride.

Transfer: water by a coefficient that the caller gives; hydrogen chloride by the same times
(D_HCl/D_water)^(2/3), the analogy of heat and mass [chilton-colburn-1934]; diffusion as
[fuller-1966]. Against the air of the room: what hangs there holds back what comes.
"""

from __future__ import annotations

from math import cbrt

import numpy as np
import numpy.typing as npt

from farwall.acid.masses import HCL_G_MOL, WATER_G_MOL
from farwall.acid.vapours import Vapours, percent_of_molal
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]

AIR_G_MOL = 28.96
FULLER_VOLUMES = {"HCl": 2.31 + 21.0, "H2O": 13.1, "NH3": 20.7, "air": 19.7}
"""Diffusion volumes, cm³/mol, as tabulated after [fuller-1966]."""
LN2 = 0.6931471805599453
DRUNK_AT_SHEEN = 2.302585092994046
"""When the sheen is lost a tenth of the film is left: ln 10 over the open time, a guess."""


def diffusion_m2_s(gas: str, g_mol: float, *, temperature_c: float = 25.0) -> float:
    """Diffusion of a gas in air at one atmosphere. [m²/s] Source: [fuller-1966].

    0.00143·T^1.75 / (p·√M·(v_a^⅓ + v_b^⅓)²), M twice the harmonic mean of g/mol, p 1.013 bar: some
    5 to 10 % either way.
    """
    between = 2 / (1 / g_mol + 1 / AIR_G_MOL)
    wide = cbrt(FULLER_VOLUMES[gas]) + cbrt(FULLER_VOLUMES["air"])
    kelvin = temperature_c + 273.15
    cm2_s: float = 0.00143 * kelvin**1.75 / (1.01325 * between**0.5 * wide**2)
    return cm2_s * 1e-4


def beside_water(gas: str, g_mol: float) -> float:
    """How fast a gas leaves a surface against water at the same difference, in moles. [-]

    (D/D_water)^(2/3) [chilton-colburn-1934]: 0.78 for hydrogen chloride, 0.94 for ammonia.
    """
    share: float = (diffusion_m2_s(gas, g_mol) / diffusion_m2_s("H2O", WATER_G_MOL)) ** (2 / 3)
    return share


HCL_BESIDE_WATER = beside_water("HCl", HCL_G_MOL)


@dataclass(frozen=True)
class Standing:
    """What stands on a square metre: arrays of any one shape. kg water, mol acid, mol chloride.

    `chloride_mol` is that of metals and of eaten lime, not of the acid itself.
    """

    water_kg: Array
    acid_mol: Array
    chloride_mol: Array


@dataclass(frozen=True)
class Fate:
    """How a film fares, arrays that go with those of `Standing`.

    water_m_s: transfer of water vapour · open_min: minutes until the sheen is lost · lime_half_min:
    minutes in which lime eats half of the acid that stands · salts_count: share (0 to 1) of the
    metals' chloride that raises the vapour, the rest being bound to the metal.
    """

    water_m_s: Array
    open_min: Array
    lime_half_min: Array
    salts_count: Array


@dataclass(frozen=True)
class Gone:
    """What left a square metre in a step: mol to the air, mol eaten or drunk, kg of water."""

    to_air_mol: Array
    eaten_mol: Array
    water_kg: Array


@dataclass(frozen=True)
class _Rates:
    """How fast what stands leaves, of itself and a second: acid and water to the air."""

    acid_to_air: Array
    water_to_air: Array


def stepped(
    film: Standing, fate: Fate, vapours: Vapours, minutes: float, *,
    hcl_mol_m3: Array, water_mol_m3: Array,
) -> tuple[Standing, Gone]:  # fmt: skip
    """The film some minutes later, and what left it. Nothing is made and nothing lost.

    hcl_mol_m3, water_mol_m3: what the air over it holds. What leaves by several ways at once leaves
    in the proportion of their rates in the middle of the step, and never more than there is: of
    second order, and a minute serves. Air that holds more than the film would give takes nothing
    and gives nothing back: the safe side.
    """
    seconds = minutes * 60
    air = (hcl_mol_m3, water_mol_m3)
    half, _ = _moved(film, fate, _rates(film, fate, vapours, *air), seconds / 2)
    return _moved(film, fate, _rates(half, fate, vapours, *air), seconds)


def _rates(
    film: Standing, fate: Fate, vapours: Vapours, hcl_mol_m3: Array, water_mol_m3: Array
) -> _Rates:
    acid, water = np.maximum(film.acid_mol, 1e-12), np.maximum(film.water_kg, 1e-9)
    counted = acid + fate.salts_count * film.chloride_mol
    percent = percent_of_molal(counted / water)
    over = vapours.hcl_pa(percent) * (acid / counted) / vapours.rt_j_mol
    wet = vapours.water_pa(percent) / vapours.rt_j_mol
    moved = fate.water_m_s
    return _Rates(
        HCL_BESIDE_WATER * moved * np.maximum(over - hcl_mol_m3, 0.0) / acid,
        moved * np.maximum(wet - water_mol_m3, 0.0) * (WATER_G_MOL / 1000) / water,
    )


def _moved(film: Standing, fate: Fate, rates: _Rates, seconds: float) -> tuple[Standing, Gone]:
    drunk, lime = DRUNK_AT_SHEEN / (fate.open_min * 60), LN2 / (fate.lime_half_min * 60)
    acid_gone, acid_to_air = _leaving(film.acid_mol, rates.acid_to_air, lime + drunk, seconds)
    water_gone, water_to_air = _leaving(film.water_kg, rates.water_to_air, drunk, seconds)
    eaten = acid_gone - acid_to_air
    kept, sole = np.exp(-drunk * seconds), rates.acid_to_air + lime
    # What lime made of acid is drunk as well: C' = l·A - d·C with A falling by itself.
    made = film.acid_mol * (lime / sole) * kept * -np.expm1(-sole * seconds)
    chloride = film.chloride_mol * kept + made
    return (
        Standing(film.water_kg - water_gone, film.acid_mol - acid_gone, chloride),
        Gone(acid_to_air, eaten, water_to_air),
    )


def _leaving(stands: Array, to_air: Array, otherwise: Array, seconds: float) -> tuple[Array, Array]:
    """All that leaves in a step, and its share to the air, by rates [1/s]."""
    rate = to_air + otherwise
    gone = stands * -np.expm1(-rate * seconds)
    return gone, gone * (to_air / rate)
