"""Pouring together by mass: what comes of it, how warm it gets, how much it shrinks.

Masses add, volumes do not. HCl, water and heat are kept: the enthalpy of each part is its moles
times the apparent relative enthalpy of Parker's table (nothing for endless dilution) and its mass
times its heat capacity times its distance from 25 °C [parker-1965, hcl-20c]. No heat is lost to
tub or air, so the temperature is the warmest that it can be.

The salts of a stain count as water here: their own heat of dilution is unknown.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from farwall.acid.density import density_kg_l
from farwall.acid.heat import heat_capacity_kj_kg_k, heat_of_dilution_kj_mol
from farwall.acid.masses import HCL_G_MOL
from farwall.acid.solution import molality_from_percent
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

MOST_PERCENT: Final = 38.0
TABLE_C: Final = 25.0


@dataclass(frozen=True)
class Poured:
    """Acid of one strength, in kilograms, % HCl by mass and °C."""

    mass_kg: float
    hcl_percent: float
    temperature_c: float

    @property
    def hcl_kg(self) -> float:
        """Hydrogen chloride in it, kg."""
        return self.mass_kg * self.hcl_percent / 100

    @property
    def hcl_mol(self) -> float:
        """Hydrogen chloride in it, mol."""
        return self.hcl_kg / (HCL_G_MOL / 1000)

    @property
    def volume_l(self) -> float:
        """Its volume as plain acid, L [laliberte-2004]; 0 to 60 °C, else `Refused`."""
        kg_l = density_kg_l(hcl_percent=self.hcl_percent, temperature_c=self.temperature_c)
        return self.mass_kg / kg_l

    @property
    def enthalpy_kj(self) -> float:
        """Heat in it, kJ: none at 25 °C in endless dilution."""
        diluting = self.hcl_mol * heat_of_dilution_kj_mol(molality_from_percent(self.hcl_percent))
        sensible = self.mass_kg * heat_capacity_kj_kg_k(self.hcl_percent)
        return diluting + sensible * (self.temperature_c - TABLE_C)


@dataclass(frozen=True)
class Mixed:
    """What stands in the tub: the whole, heat set free, and the litres lost against the parts."""

    whole: Poured
    heat_kj: float
    shrinks_l: float


def together(parts: Sequence[Poured]) -> Mixed:
    """Everything in one tub; the order of pouring does not change what comes of it.

    Each part 0-38 % and more than 0 kg, else `Refused`. `heat_kj` is what dilution sets free,
    at the parts' own temperatures taken as 25 °C.
    """
    _lawful(parts)
    mass = sum(part.mass_kg for part in parts)
    percent = 100 * sum(part.hcl_kg for part in parts) / mass
    # Float noise could make a tub of 38 % alone a hair stronger, beyond the tables.
    percent = min(percent, max(part.hcl_percent for part in parts))
    cold = Poured(mass, percent, TABLE_C)
    heat = sum(part.enthalpy_kj for part in parts) - cold.enthalpy_kj
    celsius = TABLE_C + heat / (mass * heat_capacity_kj_kg_k(percent))
    whole = Poured(mass, percent, celsius)
    freed = sum(Poured(p.mass_kg, p.hcl_percent, TABLE_C).enthalpy_kj for p in parts)
    shrinks = sum(part.volume_l for part in parts) - whole.volume_l
    return Mixed(whole, freed - cold.enthalpy_kj, shrinks)


def _lawful(parts: Sequence[Poured]) -> None:
    told = [] if parts else [Mistake("tub", "Nothing was poured.", "Name what goes in.")]
    for number, part in enumerate(parts, 1):
        if not 0 < part.mass_kg < float("inf"):
            what = f"{part.mass_kg:g} kg is no amount to pour."
            told.append(Mistake(f"part {number}", what, "Give more than 0."))
        if not 0 <= part.hcl_percent <= MOST_PERCENT:
            what = f"{part.hcl_percent:g} % HCl is outside what is known."
            told.append(Mistake(f"part {number}", what, f"0 to {MOST_PERCENT:g} % is known."))
    if told:
        raise Refused(*told, about="This cannot be poured together on paper.")
