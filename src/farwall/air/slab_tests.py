"""Slab tests by number and by limit: moisture by F1869, F2170, D4263, pH by D4262."""

from __future__ import annotations

import math

from farwall.units import KG_M2_PER_LB_FT2, ft2_from_m2

UG_M2_S_PER_LB = KG_M2_PER_LB_FT2 * 1e9 / 1000 / 86_400
"""1 lb a 1,000 ft² and 24 h in µg/(m²·s): exact."""
VAPOUR_LIMITS_LB = (3.0, 5.0)
"""What film-forming coverings are specified at: 3 or 5 lb a 1,000 ft² and 24 h [trade-press]."""
RH_LIMITS_PERCENT = (75.0, 90.0)
"""Usual limits of flooring on humidity inside the slab, low and high [astm-f2170]."""
DEPTH_FROM_TOP, DEPTH_FROM_BOTH = 0.40, 0.20
"""Depth of a probe's hole as a share of the slab: dried from the top, from both [astm-f2170]."""
_AREA_OF_A_SHEET_FT2 = 500.0
_HAIR_FT2 = 1e-6
"""A conversion's last digit does not ask for one test more."""


def moisture_tests_by_area(area_m2: float) -> int:
    """Three for the first 1,000 ft², one for each further 1,000 or part of it.

    Sources: [astm-f1869], [astm-f2170]. The current edition wins.
    """
    return 3 + max(0, math.ceil((ft2_from_m2(area_m2) - 1000 - _HAIR_FT2) / 1000))


def readings_by_area(area_m2: float) -> int:
    """At least two pH readings for each 500 ft² or part of it. Source: [astm-d4262] section 6.2."""
    return 2 * max(1, math.ceil((ft2_from_m2(area_m2) - _HAIR_FT2) / 500))


def sheets_by_area(area_m2: float) -> int:
    """One plastic sheet for each 500 ft² or part of it. Source: [astm-d4263], from memory."""
    return max(1, math.ceil((ft2_from_m2(area_m2) - _HAIR_FT2) / _AREA_OF_A_SHEET_FT2))
