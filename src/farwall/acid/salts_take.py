"""What the salts of a stain take of a base, beside its acid, on the way to pH 8."""

from __future__ import annotations

from collections.abc import Iterable

from farwall.acid.masses import WATER_G_MOL, molar_mass_g_mol
from farwall.facts.contents import Content
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Taking:
    """g/mol of a dry substance, and moles of base that one of it takes by pH 8: least and most.

    waters: of its crystals as commonly sold; a sheet may mean these, so the low end counts them.
    """

    g_mol: float
    least: float
    most: float
    waters: int = 0


TAKES: dict[str, Taking] = {
    "iron(II) chloride": Taking(molar_mass_g_mol(Fe=1, Cl=2), 0, 2, 4),
    "iron(III) chloride": Taking(molar_mass_g_mol(Fe=1, Cl=3), 3, 3, 6),
    "manganese(II) chloride": Taking(molar_mass_g_mol(Mn=1, Cl=2), 0, 2, 4),
    "copper(II) chloride": Taking(molar_mass_g_mol(Cu=1, Cl=2), 1.5, 2, 2),
    "copper(II) sulfate": Taking(molar_mass_g_mol(Cu=1, S=1, O=4), 1.5, 2, 5),
    "chromium(III) chloride": Taking(molar_mass_g_mol(Cr=1, Cl=3), 3, 3, 6),
    "sodium dichromate": Taking(molar_mass_g_mol(Na=2, Cr=2, O=7), 2, 2, 2),
    "potassium dichromate": Taking(molar_mass_g_mol(K=2, Cr=2, O=7), 2, 2),
    "calcium chloride": Taking(molar_mass_g_mol(Ca=1, Cl=2), 0, 2, 2),
    "ammonium chloride": Taking(molar_mass_g_mol(N=1, H=4, Cl=1), 0, 0.1),
    "phosphoric acid": Taking(molar_mass_g_mol(H=3, P=1, O=4), 1, 2),
    "nitric acid": Taking(molar_mass_g_mol(H=1, N=1, O=3), 1, 1),
    "sulfuric acid": Taking(molar_mass_g_mol(H=2, S=1, O=4), 2, 2),
    "hydrogen peroxide": Taking(molar_mass_g_mol(H=2, O=2), 0, 0),
}
"""Stoichiometry; where each falls as hydroxide after [baes-mesmer-1976], **from memory**: iron(III)
and chromium(III) whole by pH 6, copper by 7 (its basic chloride takes 1.5), iron(II) by air as rust
(2 all the same: what the air's oxygen takes of acid is what iron(III) gives more), manganese and
calcium only where carbonate takes them. Dichromate turns to chromate."""


@dataclass(frozen=True)
class SaltsTaken:
    """mol of base for a litre of stain, low and high; what could not be counted, in plain words."""

    low_mol_l: float
    high_mol_l: float
    not_counted: tuple[str, ...]


def salts_taken(contents: Iterable[Content], density_kg_l: tuple[float, float]) -> SaltsTaken:
    """Over the substances that a sheet lists. An end that the sheet leaves out counts as nought
    below and as the other end above, and is told."""
    low = high = 0.0
    missing: list[str] = []
    for one in contents:
        taking = TAKES.get(one.substance)
        share_low, share_high = one.mass_percent_low, one.mass_percent_high
        top = share_high if share_high is not None else share_low
        if taking is None or top is None:
            missing.append(one.substance)
            continue
        if share_high is None:
            missing.append(f"{one.substance} above {top:g} %")
        crystals = taking.g_mol + taking.waters * WATER_G_MOL
        low += (share_low or 0.0) * 10 / crystals * taking.least * density_kg_l[0]
        high += top * 10 / taking.g_mol * taking.most * density_kg_l[1]
    return SaltsTaken(low, high, tuple(missing))
