"""The gate's policy on drawn days: does a field take more than stands in tub and tanks?

A day goes as `mix.gate` has it: the morning's mix, then at each stop line as much more as
the gate asks for, the belief in the slab's thirst sharpened by every field.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from farwall.job.chances.drawn_days import Floats
from farwall.mix.gate import hand_l, morning_l
from farwall.mix.thirst import Thirst

Bools = npt.NDArray[np.bool_]


def runs_short(
    likely_l: Sequence[float], drunk: Floats, *, belief: Thirst, chances: Sequence[float]
) -> Bools:
    """On which days the mix runs short inside one of these fields of a coat.

    drunk: fields x days, litres taken over likely ones. Everything that the gate asks for grows
    with the believed thirst exp(mean), so its sums are those of a mean of nothing times that.
    """
    count = drunk.shape[1]
    mean = np.full(count, belief.mean)
    variance, own = belief.variance, belief.field_variance
    have = np.full(count, morning_l(likely_l, belief=belief, chances=chances))
    short = np.zeros(count, dtype=bool)
    for number, litres in enumerate(likely_l):
        plain = Thirst(0.0, variance, own)
        start = np.exp(mean) * plain.enough_l(litres, chance_dry=chances[number])
        hand = hand_l(likely_l[number:], belief=plain, chances=chances[number:])
        have = np.where(have >= start * (1 - 1e-9), have, np.exp(mean) * hand)
        taken = litres * drunk[number]
        short |= taken > have
        have = np.maximum(have - taken, 0.0)
        if variance > 0:
            weight = variance / (variance + own)
            mean = mean + weight * (np.log(drunk[number]) - mean)
            variance *= 1 - weight
    return short


def log_width(belief: Thirst) -> float:
    """The whole log-width of one field's need before anything was sprayed."""
    return math.sqrt(belief.variance + belief.field_variance)
