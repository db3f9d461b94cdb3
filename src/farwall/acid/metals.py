"""Metals of a stain: grams laid on a floor, the share that washes off, mg/L in the rinse water.

Ranges throughout. A sheet tells a substance by a range and not whether it means the dry salt or
the crystals with their water, so the low end takes the crystals and the high end the dry salt.
"""

from __future__ import annotations

from collections.abc import Iterable

from farwall.acid.masses import WATER_G_MOL, molar_mass_g_mol
from farwall.acid.waste_limits import METALS, Metal
from farwall.evidence import Rank
from farwall.facts.contents import Content, Substance
from farwall.nouns import dataclass

WASHED_OFF = (0.01, 0.30)
"""Share of the metal laid that the washing takes off again. A guess: test it once per stain."""
WASHED_RANK = Rank.GUESS
DENSITY_KG_L = (1.05, 1.33)
"""Where no sheet tells it: safety sheets of stains that were read say about 1.05 to 1.33
[stain-sheets]."""


@dataclass(frozen=True)
class _Salt:
    """A salt: its metal, atoms of it in a formula, mass of the dry formula, waters of the crystals.

    The waters are those of the salt as commonly sold: from memory.
    """

    metal: Metal
    atoms: int
    dry_g_mol: float
    waters: int

    def shares(self) -> tuple[float, float]:
        """Mass of metal in a mass of the crystals, and of the dry salt."""
        symbol = {"copper": "Cu", "manganese": "Mn", "iron": "Fe"}.get(self.metal, "Cr")
        mass = self.atoms * molar_mass_g_mol(**{symbol: 1})
        return mass / (self.dry_g_mol + self.waters * WATER_G_MOL), mass / self.dry_g_mol


_SALTS: dict[Substance, _Salt] = {
    "iron(II) chloride": _Salt("iron", 1, molar_mass_g_mol(Fe=1, Cl=2), 4),
    "iron(III) chloride": _Salt("iron", 1, molar_mass_g_mol(Fe=1, Cl=3), 6),
    "manganese(II) chloride": _Salt("manganese", 1, molar_mass_g_mol(Mn=1, Cl=2), 4),
    "copper(II) chloride": _Salt("copper", 1, molar_mass_g_mol(Cu=1, Cl=2), 2),
    "copper(II) sulfate": _Salt("copper", 1, molar_mass_g_mol(Cu=1, S=1, O=4), 5),
    "sodium dichromate": _Salt("chromium(VI)", 2, molar_mass_g_mol(Na=2, Cr=2, O=7), 2),
    "potassium dichromate": _Salt("chromium(VI)", 2, molar_mass_g_mol(K=2, Cr=2, O=7), 0),
    "chromium(III) chloride": _Salt("chromium", 1, molar_mass_g_mol(Cr=1, Cl=3), 6),
}


@dataclass(frozen=True)
class Grams:
    """A mass between two ends; `high_g` None where the sheet gives no high end."""

    low_g: float
    high_g: float | None

    def plus(self, other: Grams) -> Grams:
        """Both together."""
        open_end = self.high_g is None or other.high_g is None
        high = None if open_end else (self.high_g or 0.0) + (other.high_g or 0.0)
        return Grams(self.low_g + other.low_g, high)


@dataclass(frozen=True)
class StainLaid:
    """Litres of a stain as sold that lie on a floor, its density and what its sheet lists.

    `washed_off`: share of its metals that comes off again, low and high end.
    """

    litres: float
    contents: tuple[Content, ...]
    density_kg_l: float | None = None
    washed_off: tuple[float, float] = WASHED_OFF


def metal_share(substance: Substance) -> tuple[Metal, float, float] | None:
    """Metal of a substance, g per g as crystals and as the dry salt; None where it has none."""
    salt = _SALTS.get(substance)
    return None if salt is None else (salt.metal, *salt.shares())


def grams_laid(stain: StainLaid) -> dict[Metal, Grams]:
    """Grams of each metal that the litres carry. Chromium counts every kind, chromium(VI) its own.

    grams = litres x density x share of the substance x share of the metal in it. Raises ValueError
    for litres below nothing.
    """
    if stain.litres < 0:
        raise ValueError("no less than nothing is laid")
    found: dict[Metal, Grams] = {}
    for content in stain.contents:
        told = metal_share(content.substance)
        if told is None:
            continue
        metal, crystals, dry = told
        grams = _grams(stain, content, crystals, dry)
        for each in (metal, *(("chromium",) if metal == "chromium(VI)" else ())):
            found[each] = found[each].plus(grams) if each in found else grams
    return {metal: found[metal] for metal in METALS if metal in found}


def _grams(stain: StainLaid, content: Content, crystals: float, dry: float) -> Grams:
    light, heavy = (
        DENSITY_KG_L if stain.density_kg_l is None else (stain.density_kg_l, stain.density_kg_l)
    )
    low, high = content.mass_percent_low or 0.0, content.mass_percent_high
    grams_a_percent = 10.0 * stain.litres  # a kilogram has ten grams to the percent
    return Grams(
        grams_a_percent * light * low * crystals,
        None if high is None else grams_a_percent * heavy * high * dry,
    )


def grams_washed_off(stains: Iterable[StainLaid]) -> dict[Metal, Grams]:
    """Grams of each metal that the washing takes off the floor, of all stains together.

    Never more than was laid. Raises ValueError where a share is outside 0 to 1 or the wrong way
    round.
    """
    found: dict[Metal, Grams] = {}
    for stain in stains:
        low, high = stain.washed_off
        if not 0 <= low <= high <= 1:
            raise ValueError("a share washed off lies between 0 and 1, the low end first")
        for metal, laid in grams_laid(stain).items():
            off = Grams(laid.low_g * low, None if laid.high_g is None else laid.high_g * high)
            found[metal] = found[metal].plus(off) if metal in found else off
    return {metal: found[metal] for metal in METALS if metal in found}


def mg_l_in(grams: Grams, water_l: tuple[float, float]) -> tuple[float, float | None]:
    """mg/L when these grams lie in so much water (low and high litres): least and most.

    Raises ValueError for no water.
    """
    least, most = water_l
    if not 0 < least <= most:
        raise ValueError("rinse water is more than nothing, the low end first")
    high = None if grams.high_g is None else 1000 * grams.high_g / least
    return 1000 * grams.low_g / most, high


def share_washed_off(
    found_mg_l: float, water_l: float, laid: Grams
) -> tuple[float | None, float | None]:
    """Share of the metal laid that a test of the mixed rinse water shows: low and high, 0 to 1.

    None where the sheet leaves that end open. Above 1 the sheet, the litres or the test is wrong:
    it is given as it comes out. Raises ValueError for no water or a test below nothing.
    """
    if water_l <= 0 or found_mg_l < 0:
        raise ValueError("a test tells of water that is there")
    grams = found_mg_l * water_l / 1000
    return (
        grams / laid.high_g if laid.high_g else None,
        grams / laid.low_g if laid.low_g else None,
    )
