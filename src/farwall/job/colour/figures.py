"""Figures of colour as they are said: US units first, metric beside them. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.colour.next_coat import Outlook
from farwall.job.colour.ways import cut_of
from farwall.units import ft2_per_gal_from_m2_per_l, gal_from_l


def coverage(l_per_m2: float) -> str:
    """`300 ft²/gal (7.4 m²/L)`."""
    m2 = 1 / l_per_m2
    return f"{ft2_per_gal_from_m2_per_l(m2):.0f} ft²/gal ({m2:.1f} m²/L)"


def volume(litres: float) -> str:
    """`2.1 gal (7.9 L)`."""
    return f"{gal_from_l(litres):.2g} gal ({litres:.2g} L)"


def percent(chance: float) -> str:
    """`1.2 %`, `under 0.1 %`, `over 99 %`."""
    if chance < 0.001:
        return "under 0.1 %"
    if chance > 0.99:
        return "over 99 %"
    return f"{chance * 100:.1f} %" if chance < 0.1 else f"{chance * 100:.0f} %"


def lab_said(lab: Sequence[float]) -> str:
    """`L* 43.1, a* 8.0, b* 13.2`."""
    return f"L* {lab[0]:.1f}, a* {lab[1]:.1f}, b* {lab[2]:.1f}"


def way_said(one: Outlook) -> str:
    """`1:4 at 300 ft²/gal (7.4 m²/L)`."""
    if one.way is None:
        return "nothing more"
    return f"{cut_of(one.way)} at {coverage(one.way.l_per_m2)}"


def listed(names: Sequence[str]) -> str:
    """Names in a row: `a, b and c`."""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} and {names[-1]}"
