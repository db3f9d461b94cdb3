"""How fast a film goes: the model under the clocks, sized by what common practice says.

Everything here is evaporation [uno-1998 and its rivals] plus a steady suction
(`air.suction`, a guess), with their two free sizes set once from the mild day
of common practice. Slow, likely and fast ends are kept side by side.
"""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.film import MIN_PER_H, wet_film_mm
from farwall.air.relations import IN_MOVING_AIR, RELATIONS
from farwall.air.suction import drop_seconds, thirst, warmth
from farwall.facts import default_table as table

if TYPE_CHECKING:  # its nouns load shapely, which a single sum can do without
    from farwall.facts.job import Finish

OPEN_TIME_MIN = (5.0, 10.0, 15.0)
"""Low, likely, high on a normal trowel at 70 °F: common practice, no source. The table of first
defaults says 4, 10, 20, with the slab left open as well."""

RECOAT_MIN = (60.0, 120.0, 240.0)
"""Low, likely, high wait between coats on a mild day: common practice, no source."""

Minutes = tuple[float, float, float]
MaybeMinutes = tuple[float, float | None, float | None]


def sheen_loss_min(
    conditions: Conditions, *, m2_per_l: float, drop_s: float | None, finish: Finish | None
) -> Minutes:
    """Minutes until suction and evaporation have taken the film: fast, likely, slow."""
    film_mm = wet_film_mm(m2_per_l=m2_per_l)
    leaving = _evaporation_mm_min(conditions)
    drunk = _suction_mm_min(conditions, drop_s=drop_s, finish=finish)
    fast, likely, slow = (film_mm / (a + b) for a, b in zip(leaving, drunk, strict=True))
    return fast, likely, slow


def recoat_min(conditions: Conditions, *, m2_per_l: float) -> MaybeMinutes:
    """Minutes until a coat is dry for the next: fast, likely, slow; None where nothing evaporates.

    The fast end is infinite when no relation at all sees anything evaporate.
    """
    film_mm = wet_film_mm(m2_per_l=m2_per_l)
    fastest, likely, slowest = _evaporation_mm_min(conditions)
    few, films, many = _recoat_films()
    slow = max(_over(films * film_mm, slowest), _over(many * film_mm, likely))
    return (
        min(_over(films * film_mm, fastest), _over(few * film_mm, likely)),
        _finite(_over(films * film_mm, likely)),
        _finite(slow),
    )


def _suction_mm_min(
    conditions: Conditions, *, drop_s: float | None, finish: Finish | None
) -> tuple[float, float, float]:
    """Fast, likely, slow. The fast end takes no comfort from a cold slab: see `air.suction`."""
    drink = thirst(drop_s=drop_seconds(drop_s=drop_s, finish=finish).value)
    warm = warmth(surface_c=conditions.surface_c)
    fast, likely, slow = _reference_suction_mm_min()
    return fast * drink * max(1.0, warm), likely * drink * warm, slow * drink * warm


def _evaporation_mm_min(conditions: Conditions) -> tuple[float, float, float]:
    """Fastest, chosen and slowest of the relations that know air speed. [mm/min]

    Always Uno's, even a little outside the range it was made for: a clock that
    changed relation at a limit would jump there.
    """
    rates = {name: RELATIONS[name].positive(conditions) / MIN_PER_H for name in IN_MOVING_AIR}
    return max(rates.values()), rates["uno"], min(rates.values())


@cache
def _reference_suction_mm_min() -> tuple[float, float, float]:
    """What the reference slab must drink for the open times of practice. [mm/min]"""
    film_mm = wet_film_mm(m2_per_l=table.FIRST_COAT_M2_PER_L.usual)
    leaving = _evaporation_mm_min(REFERENCE)
    fast, likely, slow = (
        film_mm / minutes - gone for minutes, gone in zip(OPEN_TIME_MIN, leaving, strict=True)
    )
    return fast, likely, slow


@cache
def _recoat_films() -> tuple[float, float, float]:
    """Films' worth of evaporation until dry, so that the reference day gives practice's waits."""
    film_mm = wet_film_mm(m2_per_l=table.FIRST_COAT_M2_PER_L.usual)
    likely_mm_min = _evaporation_mm_min(REFERENCE)[1]
    few, films, many = (minutes * likely_mm_min / film_mm for minutes in RECOAT_MIN)
    return few, films, many


def _over(film_mm: float, rate_mm_min: float) -> float:
    return film_mm / rate_mm_min if rate_mm_min > 0 else float("inf")


def _finite(minutes: float) -> float | None:
    return None if minutes == float("inf") else minutes
