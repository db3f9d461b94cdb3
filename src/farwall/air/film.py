"""The wet film as sprayed, and how long evaporation alone would take to dry it.

A millimetre of film is a litre on a square metre, and weighs a kilogram (the
film is counted as water; stain is 10-30 % heavier, and the salts stay behind).
"""

from __future__ import annotations

from farwall.air.conditions import Conditions
from farwall.air.evaporation import Evaporation, evaporation
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

KG_M2_PER_MM = 1.0
MIN_PER_H = 60.0


def wet_film_mm(*, m2_per_l: float) -> float:
    """Depth of the coat as sprayed. [mm] m2_per_l: floor that a litre covers, above 0 [m²/L]."""
    if not m2_per_l > 0:
        raise Refused(
            Mistake("m2_per_l", f"A litre cannot cover {m2_per_l:g} m².", "Give more than 0.")
        )
    return 1.0 / m2_per_l


@dataclass(frozen=True)
class FilmDrying:
    """Minutes until a film has evaporated; `None` where it does not dry. NOT an open time."""

    minutes: float | None
    low_min: float | None
    high_min: float | None
    by: Evaporation


def film_drying(
    conditions: Conditions, *, film_mm: float, relation: str | None = None
) -> FilmDrying:
    """Minutes for evaporation alone to take a film away, suction left out.

    film_mm: depth of the film, above 0 [mm]. relation: as `evaporation`.
    Never to be shown as open time: the slab drinks most of a coat long before.
    """
    if not film_mm > 0:
        raise Refused(Mistake("film_mm", f"A film of {film_mm:g} mm is none.", "Give more than 0."))
    by = evaporation(conditions, relation=relation)
    return FilmDrying(
        minutes=minutes_to_dry(film_mm, by.rate_kg_m2_h),
        low_min=minutes_to_dry(film_mm, by.high_kg_m2_h),
        high_min=minutes_to_dry(film_mm, by.low_kg_m2_h),
        by=by,
    )


def minutes_to_dry(film_mm: float, rate_kg_m2_h: float) -> float | None:
    """Minutes for a steady rate [kg/(m²·h)] to take `film_mm` away; None at no rate."""
    if rate_kg_m2_h <= 0:
        return None
    return film_mm * KG_M2_PER_MM / rate_kg_m2_h * MIN_PER_H
