"""How much a respirator with cartridges may be asked to hold back: air never dirtier than this.

Maximum use concentration: assigned protection factor times the limit, and never what is immediately
dangerous to life or health, whatever the cartridges [osha-respirators, (d)(3)(i)(A), (B)].
"""

from __future__ import annotations

from farwall.facts.workers import Respirator
from farwall.nouns import dataclass

FACTORS: dict[Respirator, float] = {
    "half face": 10.0, "full face": 50.0, "powered": 50.0, "powered hood": 25.0,
}  # fmt: skip
"""29 CFR 1910.134, Table 1, from memory; of a powered one the lower figure (half face, loose hood
without the maker's own proof)."""
LEGAL_PPM, HYGIENISTS_PPM = 5.0, 2.0
"""Ceilings for hydrogen chloride: 29 CFR 1910.1000 Table Z-1, and the hygienists' as quoted there
[osha-hcl]."""
DANGEROUS_PPM = 45.0
"""Immediately dangerous: 45 ppm in the profile of 2025, 50 ppm in the pocket guide before it; the
lower one is taken [osha-hcl]."""


@dataclass(frozen=True)
class Holds:
    """Air in which a respirator may be worn, hydrogen chloride, ppm; by either ceiling."""

    factor: float
    legal_ppm: float
    hygienists_ppm: float


def holds(respirator: Respirator) -> Holds:
    """The most that a respirator with fresh acid-gas cartridges, fitted and tight, holds back."""
    factor = FACTORS[respirator]
    return Holds(
        factor, min(factor * LEGAL_PPM, DANGEROUS_PPM), min(factor * HYGIENISTS_PPM, DANGEROUS_PPM)
    )
