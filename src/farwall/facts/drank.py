"""What a sample drank: coverage as told, or as it follows from what was laid on how much floor."""

from __future__ import annotations

import math
from collections.abc import Iterable

from farwall.errors import Refused
from farwall.facts.cut import Cut, parse_cut
from farwall.facts.default_table import STAIN_DENSITY_KG_L
from farwall.facts.job import Coat, Stain
from farwall.facts.samples import Sample
from farwall.nouns import dataclass

WATER_KG_L = 1.0
"""Within 0.3 % between 5 and 25 °C: far below what a sprayer is weighed to."""


@dataclass(frozen=True)
class Made:
    """The mix that a sample was made with. stain: id; cut, stain: empty where nobody said."""

    stain: str
    cut: str
    density_kg_l: float | None = None

    @property
    def share(self) -> float | None:
        """Share of stain in the mix by volume, 0 to 1; None where its cut is unknown."""
        found = _cut(self.cut)
        return None if found is None else found.stain_share

    def kg_l(self, stain_kg_l: float | None = None) -> float | None:
        """Density of the mix, volumes taken as adding up; None where its cut is unknown.

        stain_kg_l: taken where the stain's sheet was not told; the usual one where it is left out.
        """
        if self.share is None:
            return None
        stain = self.density_kg_l or stain_kg_l or STAIN_DENSITY_KG_L.usual
        return self.share * stain + (1 - self.share) * WATER_KG_L


@dataclass(frozen=True)
class Drank:
    """What a sample drank: m²/L of mix, its low and high end, and how it is known.

    by: "told", "measured out" or "weighed" · density_told: False where the range comes of a density
    that the stain's sheet did not tell.
    """

    m2_per_l: float
    low: float
    high: float
    by: str
    density_told: bool = True

    @property
    def l_per_m2(self) -> float:
        """Litres of mix on a square metre."""
        return 1 / self.m2_per_l


def made_with(sample: Sample, coats: Iterable[Coat], stains: Iterable[Stain]) -> Made:
    """The mix of a sample: its own stain and cut, else those of the coat that it was made for.

    A sample of no coat takes those of the only coat there is.
    """
    listed = tuple(coats)
    own = sample.coat if sample.coat is not None or len(listed) != 1 else listed[0].id
    coat = next((one for one in listed if one.id == own), None)
    stain = sample.stain or (coat.stain if coat else "")
    sheet = next((one for one in stains if one.id == stain), None)
    return Made(
        stain, sample.cut or (coat.cut if coat else ""), sheet.density_kg_l if sheet else None
    )


def drank(sample: Sample, made: Made) -> Drank | None:
    """What it drank; None where neither coverage nor what was laid on how much floor is told.

    Told coverage goes first, then mL measured out, then the sprayer weighed before and after, whose
    kilograms are litres by the density of the cut mix (water 1.0 kg/L, stain by its sheet, else
    `STAIN_DENSITY_KG_L`; acid added to it is left out of that). Coverage that only repeats what was
    measured out or weighed is known by that.
    """
    told, found = sample.m2_per_l, measured_out(sample) or weighed(sample, made)
    if told is None or (found is not None and math.isclose(found.m2_per_l, told)):
        return found
    return Drank(told, told, told, "told")


def measured_out(sample: Sample) -> Drank | None:
    """Coverage by what was measured out: area over litres laid."""
    if sample.area_m2 is None or sample.laid_ml is None:
        return None
    covered = sample.area_m2 / (sample.laid_ml / 1000)
    return Drank(covered, covered, covered, "measured out")


def weighed(sample: Sample, made: Made) -> Drank | None:
    """Coverage by the sprayer's two weights; None where one, the area or the cut is missing."""
    before, after, area = sample.sprayer_before_kg, sample.sprayer_after_kg, sample.area_m2
    if before is None or after is None or area is None or before <= after:
        return None
    usual = made.kg_l()
    low, high = made.kg_l(STAIN_DENSITY_KG_L.low), made.kg_l(STAIN_DENSITY_KG_L.high)
    if usual is None or low is None or high is None:
        return None
    a_kg = area / (before - after)
    return Drank(
        a_kg * usual, a_kg * low, a_kg * high, "weighed",
        density_told=made.density_kg_l is not None,
    )  # fmt: skip


def _cut(text: str) -> Cut | None:
    try:
        return parse_cut(text)
    except Refused:
        return None
