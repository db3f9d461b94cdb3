"""A house as its air feels it: what passes, what warms, how fast air moves over the floor.

All figures that no job tells are guesses with a range, to be replaced by a
reading; formulas carry their source. Air passing through cracks goes with the
root of warmth difference and wind squared, added: the basic form of the
ASHRAE handbook, coefficients from memory. Air through open doors and windows
goes with wind, and with the root of height times difference [from-memory].
"""

from __future__ import annotations

import math
from typing import Literal

from farwall.evidence import Rank
from farwall.nouns import dataclass

Standing = Literal["shut", "open"]

STACK, WIND = 0.000145, 0.000104
"""(L/s)²/(cm⁴·K) and (L/s)²/(cm⁴·(m/s)²): one storey, shielded by houses around [from-memory]."""
CRACKS_CM2_M2 = 4.0
"""Crack area for a square metre of floor: a guess; tight houses have a quarter, old ones thrice."""
OPEN_M2_M2 = 0.02
"""Open door and window for a square metre of floor when the house stands open: a guess."""
THROUGH_WIND, THROUGH_STACK, TALL_M = 0.3, 0.6, 1.0
"""Share of the wind that goes through an opening; discharge; half of a door [from-memory]."""
FAN_M3_S = 0.8
"""What a fan in a window moves, about 1700 cfm: a guess."""
CEILING_M = 2.5
STILL_M_S, SHUT_SHARE, OPEN_SHARE, FAN_M_S = 0.1, 0.02, 0.10, 0.4
"""Air over the floor: never less than still; shares of the wind at 10 m; with a fan: guesses."""

AIR_J_M3K = 1200.0


@dataclass(frozen=True)
class House:
    """How the house stands while the floor is done.

    fans: in windows, blowing out. heat_kw: of a vented heater or the house's
    own; an unvented one has no place here (water, soot, carbon monoxide).
    heat_to_c: of the air, where a thermostat stops it; None: it burns on.
    floor_m2: of the storey. rank: of how it stands, told or taken.
    """

    standing: Standing = "shut"
    fans: int = 0
    heat_kw: float = 0.0
    floor_m2: float = 120.0
    rank: Rank = Rank.GUESS
    heat_to_c: float | None = None


def air_changes_h(house: House, *, inside_c: float, outside_c: float, wind_m_s: float) -> float:
    """How often an hour the air of the house is changed. [1/h] Rank: a guess.

    wind_m_s: at 10 m in the open. Laws: wind, difference, openings and fans
    never lessen it.
    """
    apart = abs(inside_c - outside_c)
    leaks = CRACKS_CM2_M2 * math.sqrt(STACK * apart + WIND * wind_m_s**2) / 1000
    through = 0.0
    if house.standing == "open":
        warm = 9.81 * TALL_M * apart / (273.15 + (inside_c + outside_c) / 2)
        blown = OPEN_M2_M2 / 2 * THROUGH_WIND * wind_m_s
        risen = OPEN_M2_M2 / 2 * THROUGH_STACK * math.sqrt(warm)
        through = math.hypot(blown, risen)
    drawn = house.fans * FAN_M3_S / house.floor_m2
    return (math.hypot(leaks + through, drawn)) * 3600 / CEILING_M


def over_floor_m_s(house: House, *, wind_m_s: float) -> float:
    """Air over the floor. [m/s] A guess: no airport's wind is measured over a floor."""
    share = OPEN_SHARE if house.standing == "open" else SHUT_SHARE
    return max(STILL_M_S, share * wind_m_s, FAN_M_S if house.fans else 0.0)
