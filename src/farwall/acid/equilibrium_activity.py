"""How far ions in salty water act like fewer than they are: activity coefficients."""

from __future__ import annotations

from math import sqrt
from typing import NamedTuple

from farwall.acid.equilibrium_constants import Constants

SIZES: dict[str, tuple[int, float, float]] = {
    "h": (1, 9.0, 0.0), "oh": (1, 3.5, 0.0), "na": (1, 4.0, 0.075), "k": (1, 3.5, 0.015),
    "cl": (1, 3.5, 0.015), "ca": (2, 5.0, 0.165), "hco3": (1, 5.4, 0.0), "co3": (2, 5.4, 0.0),
    "nh4": (1, 2.5, 0.0), "cahco3": (1, 6.0, 0.0),
}  # fmt: skip
"""Charge, size in Å and slope b in kg/mol of an ion.

[truesdell-jones-1974], table 2, as quoted in a database; ammonium [kielland-1937], **from
memory**."""
SALTED_OUT = 0.1
"""kg/mol: slope of log10 γ of what carries no charge. [harned-davis-1943] for carbon dioxide in
salt water at 25 °C; taken for ammonia and neutral pairs too. **From memory**."""
WATER_PER_MOL = 0.017
"""The activity of water falls by this for each mol/kg dissolved. [garrels-christ-1965], p. 66."""


class Gammas(NamedTuple):
    """Activity coefficients, and the activity of water. `naco3` and `caoh` share `single`."""

    h: float
    oh: float
    na: float
    ca: float
    hco3: float
    co3: float
    nh4: float
    cahco3: float
    single: float
    neutral: float
    water: float


_KEPT = ("h", "oh", "na", "ca", "hco3", "co3", "nh4", "cahco3")
_ROWS = tuple((z * z, size, b) for z, size, b in (SIZES[name] for name in _KEPT))


def gammas(ionic_strength: float, dissolved: float, at: Constants) -> Gammas:
    """Coefficients at an ionic strength, mol/kg; `dissolved` is all that is in it, mol/kg.

    log10 γ = -A·z²·√I/(1 + B·a·√I) + b·I. [truesdell-jones-1974], equation 1. Pairs of one charge
    without a size of their own: [davies-1962], 0.3. Good to 0.3 mol/kg; to some 3 mol/kg for what
    sodium, calcium and chloride make up; above 1 mol/kg the pH of strong acid reads high.
    """
    root = sqrt(ionic_strength)
    a, b_size = at.debye_a, at.debye_b
    by_row = [
        10 ** (-a * squared * root / (1 + b_size * size * root) + slope * ionic_strength)
        for squared, size, slope in _ROWS
    ]
    single = 10 ** (-a * (root / (1 + root) - 0.3 * ionic_strength))
    neutral = 10 ** (SALTED_OUT * ionic_strength)
    h, oh, na, ca, hco3, co3, nh4, cahco3 = by_row
    return Gammas(
        h,
        oh,
        na,
        ca,
        hco3,
        co3,
        nh4,
        cahco3,
        single,
        neutral,
        max(0.5, 1 - WATER_PER_MOL * dissolved),
    )
