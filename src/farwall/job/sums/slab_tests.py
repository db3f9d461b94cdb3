"""How many moisture tests and pH readings a slab asks for, by its area."""

from __future__ import annotations

from farwall.air.slab_tests import moisture_tests_by_area, readings_by_area
from farwall.evidence import Rank
from farwall.job.sums.arguments import AREA
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.units import ft2_from_m2

MARKS = (
    "Kits grind the slab, probes drill it, sheets need tape: put them in closets or where a mark "
    "does not matter, and never drill a heated slab."
)


def reckon(given: Given) -> Result:
    """Numbers of tests; the standard's current edition wins."""
    area_m2 = given.number("area_m2")
    tests = moisture_tests_by_area(area_m2)
    return {
        "f1869_tests": tests,
        "f2170_tests": tests,
        "d4262_readings": readings_by_area(area_m2),
        "area_ft2": ft2_from_m2(area_m2),
        "area_m2": area_m2,
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
