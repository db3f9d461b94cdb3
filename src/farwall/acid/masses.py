"""Molar masses, g/mol, from the standard atomic weights of 2021, abridged.

Prohaska et al., Pure and Applied Chemistry 94, 573 (2022), Table 1 (abridged values) [iupac-2021].
"""

from __future__ import annotations

ATOMIC_WEIGHT = {
    "H": 1.0080, "C": 12.011, "N": 14.007, "O": 15.999, "Na": 22.990, "Mg": 24.305, "P": 30.974,
    "S": 32.06, "Cl": 35.45, "K": 39.098, "Ca": 40.078, "Cr": 51.996, "Mn": 54.938, "Fe": 55.845,
    "Cu": 63.546, "Zn": 65.38,
}  # fmt: skip
"""g/mol; those with a range in nature stand at their abridged single value."""


def molar_mass_g_mol(**atoms: int) -> float:
    """g/mol of a formula: `molar_mass_g_mol(H=1, Cl=1)`. Raises KeyError for an unknown element."""
    return sum(ATOMIC_WEIGHT[element] * count for element, count in atoms.items())


HCL_G_MOL = molar_mass_g_mol(H=1, Cl=1)
WATER_G_MOL = molar_mass_g_mol(H=2, O=1)
