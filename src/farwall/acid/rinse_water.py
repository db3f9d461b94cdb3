"""Water of the wash day: litres of all rinses, of scrubbing beside them, and drums full of it."""

from __future__ import annotations

import math

from farwall.evidence import Rank, Span
from farwall.nouns import dataclass
from farwall.units import KG_PER_LB, L_PER_US_GAL, M2_PER_FT2

_L_M2 = L_PER_US_GAL / (100 * M2_PER_FT2)
"""1 gal on 100 ft² in L/m²: exact."""
ALL_RINSES_L_M2 = (8 * _L_M2, 12 * _L_M2, 20 * _L_M2)
"""Water of all rinses together, 8, 12 and 20 gal on 100 ft²: common practice, no source."""
SCRUB_L_M2 = (0.6, 1.0, 1.6)
"""Neutraliser and detergent as laid for scrubbing, both together, beside the rinses: a guess."""
ROUNDS = (3, 4, 6)
"""Rinses: three at least, four to six for dark colours and open floors. Common practice."""
DRUM_L = 55 * L_PER_US_GAL
DRUM_FILL = 0.85
"""A drum is made 85 % full, so that it can be moved and sealed. Common practice."""
DRUM_EMPTY_KG = 22 * KG_PER_LB
"""Own weight of a plastic drum of 55 gal, about 22 lb; one of steel about 40 lb: from memory."""
DRUM_ACROSS_M = 0.58
"""Its width on the floor, about 23 in: from memory."""
WATER_KG_L = 1.0
"""Rinse water is counted as water; neutralised salts make it a few per cent heavier."""
SPARES = 1
INTO_SPARE = 0.1
"""So much of a drum goes into the spare rather than ask for one more: a guess."""


@dataclass(frozen=True)
class RinseWater:
    """Litres of a floor: all rinses, scrubbing beside them, and both together."""

    rinses_l: Span
    scrub_l: Span
    all_l: Span


def rinse_water(area_m2: float, *, l_per_m2: float | None = None) -> RinseWater:
    """Litres of a wash day, low, likely, high. [L] area_m2: net floor, 0 or more.

    l_per_m2: of all rinses, as told; then it is all three. What evaporates or stays in the slab is
    not taken off: so much has to be brought, and at most so much comes back.
    """
    told = l_per_m2 is not None
    per_m2 = ALL_RINSES_L_M2 if l_per_m2 is None else (l_per_m2,) * 3
    rank, source = (
        (Rank.MEASURED, "told in the job") if told else (Rank.PRACTICE, "common-practice")
    )
    both = tuple(a + b for a, b in zip(per_m2, SCRUB_L_M2, strict=True))
    return RinseWater(
        _span(area_m2, per_m2, rank, source),
        _span(area_m2, SCRUB_L_M2, Rank.GUESS, "house-guess"),
        _span(area_m2, both, Rank.GUESS, f"{source}, house-guess"),
    )


def _span(area_m2: float, per_m2: tuple[float, ...], rank: Rank, source: str) -> Span:
    low, likely, high = (area_m2 * one for one in per_m2)
    return Span(low, likely, high, rank, source)


@dataclass(frozen=True)
class DrumNeed:
    """Drums for so many litres: how many are filled, with spares, what one full one weighs. [kg]

    `square_m`: side of the square of floor that one stands on at the floor's own limit, None where
    that limit is not told.
    """

    holds_l: float
    full: int
    spares: int
    full_kg: float
    under_kg_m2: float
    square_m: float | None = None

    @property
    def count(self) -> int:
        """All that stand on site."""
        return self.full + self.spares


def drums_for(
    litres: float,
    *,
    size_l: float = DRUM_L,
    fill: float = DRUM_FILL,
    empty_kg: float = DRUM_EMPTY_KG,
    floor_kg_m2: float | None = None,
) -> DrumNeed:
    """Drums for an amount of water. litres: 0 or more; fill: share of `size_l`, 0 to 1.

    The spare is for what a floor asks beyond the likely. Weight is of
    the drum as filled; `under_kg_m2` that on the disc it stands on, its width going with the cube
    root of its size.
    """
    holds = size_l * fill
    full_kg = holds * WATER_KG_L + empty_kg
    across = DRUM_ACROSS_M * (size_l / DRUM_L) ** (1 / 3)
    return DrumNeed(
        holds_l=holds,
        full=max(1, math.ceil(litres / holds - INTO_SPARE)) if litres > 0 else 0,
        spares=SPARES,
        full_kg=full_kg,
        under_kg_m2=full_kg / (math.pi / 4 * across**2),
        square_m=None if floor_kg_m2 is None else math.sqrt(full_kg / floor_kg_m2),
    )
