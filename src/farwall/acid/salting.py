"""How much more hydrogen chloride stands over acid in which other chlorides are dissolved.

The acid's pressure goes with the molality of hydrogen ion times that of chloride times the mean
activity coefficient squared. Chlorides of iron, manganese, copper, calcium bring chloride, take
the place of water, and raise the coefficient, all of which press acid out; metals that bind
chloride hold some of it back. Nobody published it for stains: an estimate, a guess in rank, and a
wide one. Measured is only that calcium chloride raises it [dtic-a150889].
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

import numpy as np

from farwall.acid.activity import MOST_MOLAL, ln_activity_coefficient
from farwall.acid.masses import HCL_G_MOL, molar_mass_g_mol
from farwall.acid.solution import molality_from_percent
from farwall.errors import Mistake, Refused
from farwall.evidence import Rank, Span
from farwall.nouns import dataclass

RANK: Final = Rank.GUESS
MOST_PERCENT: Final = 38.0
LEAST_WATER: Final = 20.0


@dataclass(frozen=True)
class Chloride:
    """A chloride: g/mol, and the charge of its metal."""

    g_mol: float
    charge: int


CHLORIDES: Final[dict[str, Chloride]] = {
    "iron(II) chloride": Chloride(molar_mass_g_mol(Fe=1, Cl=2), 2),
    "iron(III) chloride": Chloride(molar_mass_g_mol(Fe=1, Cl=3), 3),
    "manganese(II) chloride": Chloride(molar_mass_g_mol(Mn=1, Cl=2), 2),
    "copper(II) chloride": Chloride(molar_mass_g_mol(Cu=1, Cl=2), 2),
    "chromium(III) chloride": Chloride(molar_mass_g_mol(Cr=1, Cl=3), 3),
    "calcium chloride": Chloride(molar_mass_g_mol(Ca=1, Cl=2), 2),
    "ammonium chloride": Chloride(molar_mass_g_mol(N=1, H=4, Cl=1), 1),
}
"""By the words of `facts.contents.Substance`."""


def pressed_out(*, hcl_percent: float, salt_percent: Mapping[str, float]) -> Span:
    """How many times the pressure over plain acid of the same % HCl of the whole, as a range.

    hcl_percent: of the whole, above 0, to 38. salt_percent: % by mass of each dissolved chloride,
    by the names of `CHLORIDES`; others are passed over. Acid and salts together below 80 %.
    Low: the salts only take the place of water. High: the whole chloride works as if all of it
    were acid. Likely: the geometric middle. [house-guess]
    """
    salts = {name: share for name, share in salt_percent.items() if name in CHLORIDES}
    water = 100 - hcl_percent - sum(salts.values())
    if not 0 < hcl_percent <= MOST_PERCENT or water < LEAST_WATER or min([0, *salts.values()]) < 0:
        what = f"{hcl_percent:g} % HCl with these salts is outside what can be guessed."
        raise Refused(Mistake("hcl_percent, salts", what, "Look at the shares on the sheet again."))
    acid = 1000 * hcl_percent / water / HCL_G_MOL
    brought = [
        CHLORIDES[name].charge * 1000 * share / water / CHLORIDES[name].g_mol
        for name, share in salts.items()
    ]
    chloride = acid + sum(brought)
    plain = molality_from_percent(hcl_percent)
    low = _product(acid, acid) / _product(plain, plain)
    high = _product(acid, chloride) / _product(plain, plain)
    return Span(low, (low * high) ** 0.5, high, RANK, "house-guess")


def _product(hydrogen: float, chloride: float) -> float:
    """Hydrogen times chloride times the coefficient squared, that of acid as rich in chloride."""
    coefficient = ln_activity_coefficient(np.asarray(min(chloride, MOST_MOLAL)))
    return hydrogen * chloride * float(np.exp(2 * coefficient))
