"""The bases of the trade against hydrochloric acid: equivalents, gas, heat. And what is no base."""

from __future__ import annotations

from collections.abc import Mapping

from farwall.acid.masses import HCL_G_MOL, molar_mass_g_mol
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

FORMED_KJ_MOL: dict[str, float] = {
    "H2O": -285.83, "CO2": -393.51, "Na+": -240.34, "Ca++": -543.0, "NH4+": -133.26,
    "NaHCO3": -950.81, "Na2CO3": -1130.68, "NaOH": -425.61, "CaCO3": -1206.92,
    "Ca(OH)2": -986.09, "NH3": -80.29,
}  # fmt: skip
"""Heats of formation at 25 °C: solids as powder, ammonia and ions in thin water, gas as gas.

Ions, water, gas [codata-1989]; solids and ammonia [nbs-1982]. **From memory**."""


@dataclass(frozen=True)
class Base:
    """One base: its formula, its plain word, and what a mole of it does.

    equivalents: moles of acid it takes. gas: moles of carbon dioxide it gives. gives: what it adds
    to the totals of `equilibrium_species.Totals`.
    """

    formula: str
    word: str
    g_mol: float
    equivalents: int
    gas: int
    ion: str
    gives: Mapping[str, float]

    @property
    def equivalent_g(self) -> float:
        """Grams that take one mole of acid."""
        return self.g_mol / self.equivalents

    @property
    def kg_per_kg_hcl(self) -> float:
        """kg of base for each kg of hydrogen chloride."""
        return self.equivalent_g / HCL_G_MOL

    @property
    def heat_kj_equivalent(self) -> float:
        """Heat given off for each mole of acid taken, kJ; below nought the tub cools.

        Hess's law over [codata-1989] and [nbs-1982], thin water at 25 °C, all gas gone.
        """
        ions = self.equivalents if self.ion == "Na+" else 1
        waters = self.equivalents if self.formula.endswith(("OH", "(OH)2")) else self.gas
        after = (
            ions * FORMED_KJ_MOL[self.ion]
            + self.gas * FORMED_KJ_MOL["CO2"]
            + waters * FORMED_KJ_MOL["H2O"]
        )
        return (FORMED_KJ_MOL[self.formula] - after) / self.equivalents


def _base(formula: str, word: str, equivalents: int, gas: int, ion: str, **atoms: int) -> Base:
    gives: dict[str, float] = {"carbon": float(gas)} if gas else {}
    total = {"Na+": "sodium", "Ca++": "calcium", "NH4+": "ammonia"}[ion]
    gives[total] = float(equivalents if ion == "Na+" else 1)
    return Base(formula, word, molar_mass_g_mol(**atoms), equivalents, gas, ion, gives)


BASES: dict[str, Base] = {
    one.formula: one
    for one in (
        _base("NaHCO3", "bicarbonate", 1, 1, "Na+", Na=1, H=1, C=1, O=3),
        _base("Na2CO3", "soda ash", 2, 1, "Na+", Na=2, C=1, O=3),
        _base("NH3", "ammonia water", 1, 0, "NH4+", N=1, H=3),
        _base("CaCO3", "ground limestone", 2, 1, "Ca++", Ca=1, C=1, O=3),
        _base("Ca(OH)2", "lime", 2, 0, "Ca++", Ca=1, O=2, H=2),
        _base("NaOH", "lye", 1, 0, "Na+", Na=1, O=1, H=1),
    )
}
"""By formula. Masses of ammonia are of ammonia itself, not of the water that it comes in."""

_BY_WORD = {
    **{one.word: one.formula for one in BASES.values()},
    "baking soda": "NaHCO3", "sodium bicarbonate": "NaHCO3", "sodium carbonate": "Na2CO3",
    "washing soda": "Na2CO3", "ammonia": "NH3", "limestone": "CaCO3", "hydrated lime": "Ca(OH)2",
    "calcium hydroxide": "Ca(OH)2", "sodium hydroxide": "NaOH",
}  # fmt: skip
_NO_BASE = {
    "vinegar": "Vinegar is an acid itself: with it the floor stays sour, and no residue goes.",
    "bleach": "Bleach and acid give chlorine gas. It never meets stain, muriatic acid or ammonia.",
    "water": "Water thins acid and neutralises none of it.",
    "trisodium phosphate": "It cleans, and is no measured base here.",
}
_ALSO = {
    "acetic acid": "vinegar", "citric acid": "vinegar", "lemon": "vinegar",
    "lemon juice": "vinegar", "pool chlorine": "bleach", "sodium hypochlorite": "bleach",
    "tsp": "trisodium phosphate",
}  # fmt: skip
_INSTEAD = "Take bicarbonate (NaHCO3); or soda ash (Na2CO3), ammonia (NH3), lime (Ca(OH)2)."


def base_of(said: str, *, where: str = "base") -> Base:
    """The base of a formula or plain word. Raises `Refused`, with the reason, for what is none."""
    told = said.strip()
    if told in BASES:
        return BASES[told]
    low = told.lower()
    for formula, base in BASES.items():
        if low == formula.lower():
            return base
    if low in _BY_WORD:
        return BASES[_BY_WORD[low]]
    reason = _NO_BASE.get(_ALSO.get(low, low), f'"{told[:40]}" is no base that is known here.')
    raise Refused(Mistake(where, reason, _INSTEAD))
