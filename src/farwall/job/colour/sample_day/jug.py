"""What is measured into the jug for one sample: whole marks, and the cut exactly."""

from __future__ import annotations

import math

from farwall.facts.cut import parse_cut
from farwall.job.colour.sample_day.cuts import parts_of
from farwall.job.colour.sample_day.nouns import JugMix

MARK_ML = 10
"""A jug is read to its marks: our guess."""
STAYS_ML = 100
"""Stays in hose, pump and wand and under the dip tube, so that the wand does not spit: our guess.
It is in both weights of the sprayer and so in no figure."""
MORE = 1.25
"""A quarter more than it takes, as for a slab that was not sampled: common practice."""


def jug_mix(cut: str, *, area_m2: float, m2_per_l: float) -> JugMix:
    """Stain and water [mL] for a square of this area at this coverage.

    Never less than a quarter more than the square takes and what stays in the sprayer; the cut
    holds to the mark. Raises Refused for what is no cut. Marks of 10 mL.
    """
    stain, water = parts_of(parse_cut(cut))
    wanted_ml = area_m2 / m2_per_l * 1000 * MORE + STAYS_ML
    part_ml = math.ceil(wanted_ml / (stain + water) / MARK_ML - 1e-9) * MARK_ML
    return JugMix(stain * part_ml, water * part_ml)
