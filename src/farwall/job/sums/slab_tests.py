"""How many moisture tests and pH readings a slab asks for, by its area."""

from __future__ import annotations

import math

from farwall.evidence import Rank
from farwall.job.sums.arguments import AREA
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.units import ft2_from_m2

_HAIR_FT2 = 1e-6
"""A conversion's last digit does not ask for one test more."""
MARKS = (
    "Kits grind the slab, probes drill it, sheets need tape: put them in closets or where a mark "
    "does not matter, and never drill a heated slab."
)


def tests_by_area(area_ft2: float) -> int:
    """Three for the first 1,000 ft², one for each further 1,000 or part of it.

    Sources: [astm-f1869], [astm-f2170].
    """
    return 3 + max(0, math.ceil((area_ft2 - 1000 - _HAIR_FT2) / 1000))


def readings_by_area(area_ft2: float) -> int:
    """At least two for each 500 ft² or part of it. Source: [astm-d4262] section 6.2."""
    return 2 * max(1, math.ceil((area_ft2 - _HAIR_FT2) / 500))


def reckon(given: Given) -> Result:
    """Numbers of tests; the standard's current edition wins."""
    area_ft2 = ft2_from_m2(given.number("area_m2"))
    tests = tests_by_area(area_ft2)
    return {
        "f1869_tests": tests,
        "f2170_tests": tests,
        "d4262_readings": readings_by_area(area_ft2),
        "area_ft2": area_ft2,
        "area_m2": given.number("area_m2"),
        "rank": Rank.PUBLISHED.value,
        "source": "astm-f1869, astm-f2170, astm-d4262",
        "warnings": [MARKS, "The current edition of each standard wins over these numbers."],
    }


SUM = Sum(
    name="slab-tests",
    what="how many moisture tests and pH readings a slab asks for",
    arguments=(Argument("area", AREA, Bounds(0.0, 1e6, above=True), needed=True),),
    reckon=reckon,
)
