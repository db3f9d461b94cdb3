"""What stays dissolved when rinse water is raised in pH and left to stand overnight.

Simple ideal sums with constants from memory: they say which metal falls out and which does not,
never what a drum holds. Real water keeps more than they say: against PHREEQC with its complexes
and activities manganese is told 2 to 4 times too low, and of bare copper up to 0.6 mg/L stays where
this sum says next to nothing (tests/acid/test_settling_phreeqc.py). Clear is not clean: only a test
tells.
"""

from __future__ import annotations

from collections.abc import Mapping

from farwall.acid.masses import molar_mass_g_mol
from farwall.acid.metals import Grams
from farwall.acid.waste_limits import Metal
from farwall.evidence import Rank
from farwall.nouns import dataclass

RANK = Rank.MEMORY
SOURCE = "hydroxides"
PKW, PKA_AMMONIUM = 14.0, 9.25
"""At 25 °C, no activity corrections: from memory."""


@dataclass(frozen=True)
class Hydroxide:
    """A hydroxide M(OH)n: its metal, n, Ksp at 25 °C, mass of a formula."""

    symbol: str
    hydroxyls: int
    ksp: float

    @property
    def metal_g_mol(self) -> float:
        """g of metal in a mole."""
        return molar_mass_g_mol(**{self.symbol: 1})

    @property
    def g_mol(self) -> float:
        """g of hydroxide in a mole."""
        return self.metal_g_mol + self.hydroxyls * molar_mass_g_mol(O=1, H=1)


HYDROXIDES: dict[str, Hydroxide] = {
    "iron": Hydroxide("Fe", 3, 2.79e-39),
    "iron(II)": Hydroxide("Fe", 2, 4.87e-17),
    "manganese": Hydroxide("Mn", 2, 2e-13),
    "copper": Hydroxide("Cu", 2, 2.2e-20),
    "chromium": Hydroxide("Cr", 3, 6.3e-31),
}
"""Solubility products, mol to the n+1 per litre: from memory, Handbook of Chemistry and Physics.
`chromium` is chromium(III); `iron` is iron(III), which iron(II) turns to in air."""

AMMINES = (10**4.04, 10**7.47, 10**10.27, 10**11.75)
"""Cumulative stability constants of Cu(NH3)1 to 4, L/mol to the n at 25 °C: from memory."""


def free_ammonia_mol_l(total_mol_l: float, ph: float) -> float:
    """NH3 of all ammonia and ammonium in the water, mol/L: the rest is ammonium, pKa 9.25.

    Raises ValueError for less than nothing.
    """
    if total_mol_l < 0:
        raise ValueError("no water holds less than nothing")
    return float(total_mol_l / (1 + 10.0 ** (PKA_AMMONIUM - ph)))


def holds_mg_l(what: str, ph: float, *, ammonia_mol_l: float = 0.0) -> float | None:
    """The most of a metal that water of this pH holds over its hydroxide, mg/L; None: no bound.

    [M] = Ksp / [OH]^n; for copper times 1 + sum of beta_i [NH3]^i, the free ammonia taken as not
    bound by copper (too much where copper is plenty). chromium(VI) has no hydroxide: None at every
    pH. Other complexes with hydroxide are left out, so above pH 10 copper and chromium(III) hold
    more than this. Raises KeyError for an unknown metal, ValueError outside pH 0 to 14.
    """
    if not 0 <= ph <= 14:
        raise ValueError("pH lies between 0 and 14")
    if what == "chromium(VI)":
        return None
    solid = HYDROXIDES[what]
    hydroxyl = 10.0 ** (ph - PKW)
    free = solid.ksp / hydroxyl**solid.hydroxyls
    if what == "copper" and ammonia_mol_l:
        ligand = free_ammonia_mol_l(ammonia_mol_l, ph)
        free *= 1 + sum(beta * ligand ** (n + 1) for n, beta in enumerate(AMMINES))
    return float(1000 * free * solid.metal_g_mol)


SLUDGE_SOLIDS = (0.01, 0.03)
"""Mass of solids in a mass of metal sludge that settled overnight and was not pressed: from
memory."""
_SLUDGE_KG_L = 1.02
"""Its density: from memory, a little above water."""


def sludge_l(grams: Mapping[Metal, Grams]) -> tuple[float, float | None]:
    """Litres of sludge from metals that fall out as hydroxides: low and high; None: no high end.

    Chromium(VI) stays in the water and is counted as falling out nowhere; `chromium` of every
    kind is counted less its chromium(VI). Cement fines come on top and are often more: look at the
    drum.
    """
    low_g, high_g, open_end = 0.0, 0.0, False
    for metal, one in grams.items():
        if metal == "chromium(VI)":
            continue
        factor = HYDROXIDES[metal].g_mol / HYDROXIDES[metal].metal_g_mol
        six = grams.get("chromium(VI)") if metal == "chromium" else None
        open_end = open_end or one.high_g is None
        low_g += factor * max(0.0, one.low_g - (six.low_g if six else 0.0))
        high_g += factor * max(0.0, (one.high_g or 0.0) - ((six.high_g or 0.0) if six else 0.0))
    thin, thick = SLUDGE_SOLIDS
    low = low_g / 1000 / thick / _SLUDGE_KG_L
    return low, None if open_end else high_g / 1000 / thin / _SLUDGE_KG_L
