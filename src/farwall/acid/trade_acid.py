"""Muriatic acid by its degrees Baumé: density, share and mass of hydrogen chloride."""

from __future__ import annotations

from farwall.acid.equilibrium_constants import water_density_kg_l
from farwall.errors import Mistake, Refused

SIXTY_F_C = 15.556
TRADE_PERCENT: tuple[tuple[float, float], ...] = ((18.0, 27.92), (20.0, 31.45), (22.0, 35.21))
"""Degrees Baumé and % HCl by mass of the trade strengths [baume]; 18 and 22 **from memory**."""


def density_kg_l(baume: float) -> float:
    """kg/L at 60 °F: 145/(145 - °Bé) times that of water there [baume]."""
    return 145 / (145 - baume) * water_density_kg_l(SIXTY_F_C)


def percent(baume: float) -> float:
    """% HCl by mass, straight between the trade strengths. Raises `Refused` outside 18 to 22."""
    (low, below), *rest = TRADE_PERCENT
    for high, above in rest:
        if low <= baume <= high:
            return below + (above - below) * (baume - low) / (high - low)
        low, below = high, above
    raise Refused(
        Mistake("baume", f"{baume:g} °Bé is no trade strength.", "Give 18 to 22, or kg of HCl.")
    )


def hcl_kg_l(baume: float) -> float:
    """kg of hydrogen chloride in a litre."""
    return density_kg_l(baume) * percent(baume) / 100
