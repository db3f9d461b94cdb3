"""How much base takes how much acid, what gas and heat come of it, and what pH is left."""

from __future__ import annotations

from functools import lru_cache

from farwall.acid.bases import BASES, Base
from farwall.acid.equilibrium import AIR_CO2_PPM, MOST_MOLAL, Co2, Equilibrium, equilibrium
from farwall.acid.equilibrium_constants import GAS_J_MOL_K, KELVIN
from farwall.acid.equilibrium_species import Totals
from farwall.acid.root import root_between
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

ATM_KPA = 101.325
WATER_KJ_KG_K = 4.18
"""Heat that a kg of water takes for a kelvin, kJ; salts in it take next to none [nbs-1982]."""
BICARBONATE_G_L = 96.0
"""g of bicarbonate that a litre of water dissolves at 20 °C. **From memory** of handbook tables
(69 at 0 °C); less where salt is already in it."""
BICARBONATE_MOST_MOLAL = BICARBONATE_G_L / 84.006
AMMONIA_MOL_KG_ATM = 59.0
"""Ammonia in water at 25 °C for each atm over it, mol/kg [sander-2015], **from memory**."""
MOST_SHARE = 4.0
LEAST_READING, MOST_READING, MOST_READ_MOLAL = 0.0, 4.5, 3.0


@dataclass(frozen=True)
class Dose:
    """Base for an amount of acid, and what comes of it. heat_kj below nought: the tub cools."""

    base: str
    equivalents_mol: float
    base_kg: float
    co2_kg: float
    co2_l: float
    heat_kj: float


def dose(base: Base, equivalents_mol: float, *, temperature_c: float = 20.0) -> Dose:
    """The equivalent dose for so many moles of acid; the gas in litres at that temperature.

    Stoichiometry; an ideal gas at one atmosphere. What gas stays dissolved is left in: in a full
    pail some 0.8 L a litre of water.
    """
    gas_mol = equivalents_mol * base.gas / base.equivalents
    return Dose(
        base=base.formula,
        equivalents_mol=equivalents_mol,
        base_kg=equivalents_mol * base.equivalent_g / 1000,
        co2_kg=gas_mol * 44.009 / 1000,
        co2_l=gas_litres(gas_mol, temperature_c),
        heat_kj=equivalents_mol * base.heat_kj_equivalent,
    )


def gas_litres(gas_mol: float, temperature_c: float) -> float:
    """Litres of an ideal gas at one atmosphere."""
    return gas_mol * GAS_J_MOL_K * (temperature_c + KELVIN) / ATM_KPA


def warming_k(heat_kj: float, water_kg: float) -> float:
    """Kelvin that so much water warms when no heat leaves: the most that a tub can warm."""
    return heat_kj / (WATER_KJ_KG_K * water_kg)


def water_after(base: Base, acid_molal: float, share: float) -> Totals:
    """Acid and `share` equivalents of base for each of it, mol/kg of water.

    The water that the acid itself leaves behind, 1.8 % at 1 mol/kg, is not counted.
    """
    moles = acid_molal * share / base.equivalents
    return Totals(hcl=acid_molal, **{name: moles * each for name, each in base.gives.items()})


@lru_cache(maxsize=4096)
def ph_after(
    formula: str,
    acid_molal: float,
    share: float,
    co2: Co2,
    *,
    temperature_c: float = 25.0,
    air_ppm: float = AIR_CO2_PPM,
) -> Equilibrium:
    """Water at rest with that acid and that share of the equivalent dose of a base.

    Raises as `equilibrium` does, and KeyError for a formula that is none of `BASES`.
    """
    totals = water_after(BASES[formula], acid_molal, share)
    return equilibrium(totals, co2=co2, temperature_c=temperature_c, air_ppm=air_ppm)


def share_to_reach(
    base: Base, ph: float, *, acid_molal: float, co2: Co2, temperature_c: float = 25.0
) -> float | None:
    """Equivalents of base for each of acid that bring the water to this pH; None out of reach.

    Out of reach is what takes more than four times the acid, more than 6 mol/kg, or more
    bicarbonate than dissolves. pH rises with the dose over that range: the root is bracketed.
    """
    per_share = acid_molal / base.equivalents * max(base.gives.values())
    most = min(MOST_SHARE, MOST_MOLAL / per_share)
    if base.formula == "NaHCO3":
        most = min(most, 1 + BICARBONATE_MOST_MOLAL / acid_molal)

    def gap(share: float) -> float:
        return ph_after(base.formula, acid_molal, share, co2, temperature_c=temperature_c).ph - ph

    if gap(0.0) >= 0:
        return 0.0
    if gap(most) < 0:
        return None
    return root_between(gap, 0.0, most, width=1e-12)


def acid_of_reading(ph: float, *, temperature_c: float = 25.0) -> float:
    """Acid that water of this pH holds at least, mol/kg, when it is hydrochloric acid alone.

    Valid for pH 0 to 4.5; above it a reading tells of gas and metals rather than of acid, and
    `Refused` is raised. Salts hide acid: iron(III) keeps water near pH 2 to 3 until it has fallen.
    """
    if not LEAST_READING <= ph <= MOST_READING:
        raise Refused(
            Mistake("found_ph", f"pH {ph:g} does not tell how much acid there is.",
                    f"From pH {LEAST_READING:g} to {MOST_READING:g} it does; above, add and wait.")
        )  # fmt: skip

    def gap(molal: float) -> float:
        return equilibrium(Totals(hcl=molal), temperature_c=temperature_c).ph - ph

    return root_between(gap, 1e-6, MOST_READ_MOLAL, width=1e-9)


def ammonia_ppm(found: Equilibrium) -> float:
    """Ammonia in still air right over the water, ppm, at 25 °C: Henry's law [sander-2015]."""
    gamma = 10 ** (0.1 * found.ionic_strength)
    return found.ammonia * gamma / AMMONIA_MOL_KG_ATM * 1e6
