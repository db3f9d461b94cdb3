"""Area per volume and wet film: one of them gives the others, exactly."""

from __future__ import annotations

from farwall.air.film import wet_film_mm
from farwall.evidence import Rank
from farwall.job.sums.arguments import COVERAGE, FILM
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.units import MM_PER_MIL, ft2_per_gal_from_m2_per_l

MOST_M2_PER_L, THICKEST_MM = 1e5, 1e4


def reckon(given: Given) -> Result:
    """Coverage and wet film in both systems. A litre on a square metre is a millimetre."""
    film_mm = given.maybe("wet_film_mm")
    m2_per_l = given.number("m2_per_l") if film_mm is None else 1.0 / film_mm
    if film_mm is None:
        film_mm = wet_film_mm(m2_per_l=m2_per_l)
    return {
        "ft2_per_gal": ft2_per_gal_from_m2_per_l(m2_per_l),
        "m2_per_l": m2_per_l,
        "wet_film_mm": film_mm,
        "wet_film_mil": film_mm / MM_PER_MIL,
        "rank": Rank.PUBLISHED.value,
        "source": "arithmetic on nist-hb44",
        "warnings": [],
    }


SUM = Sum(
    name="coverage",
    what="area per volume and wet film",
    arguments=(
        Argument("", COVERAGE, Bounds(0.0, MOST_M2_PER_L, above=True)),
        Argument("wet_film", FILM, Bounds(0.0, THICKEST_MM, above=True)),
    ),
    one_of=(("m2_per_l", "wet_film_mm"),),
    reckon=reckon,
)
