"""The leaner way on drawn days: gates, then looks into the last field (`mix.lean`, `mix.look`).

How the rest of the last field differs from its first part is another day's own draw of the field,
with half of its variance, as `mix.thirst.inside` believes. Tub and tank are read without error.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from statistics import NormalDist

import numpy as np

from farwall.job.chances.drawn_days import Floats
from farwall.job.chances.mix_days import Bools
from farwall.mix.lean import AHEAD_SHARE, Ahead, looks_of, morning_lean_l
from farwall.mix.look import LEAST_BOX_L, Place, late_and_rest
from farwall.mix.thirst import Thirst, inside

_NORMAL = NormalDist()


def runs_short_lean(ahead: Sequence[Ahead], drunk: Floats, *, belief: Thirst, own: Floats) -> Bools:
    """On which days the mix runs short inside one of these fields of a coat.

    drunk: fields x days, litres taken over likely ones; own: each day's own standard normal of
    the last field.
    """
    count = drunk.shape[1]
    mean = np.full(count, belief.mean)
    variance, field = belief.variance, belief.field_variance
    have = np.full(count, morning_lean_l(ahead, belief))
    short = np.zeros(count, dtype=bool)
    for number, one in enumerate(ahead):
        plain = Thirst(0.0, variance, field)
        last = number + 1 == len(ahead)
        places = looks_of(one, plain) if last else ()
        need = np.exp(mean) * _share(one, plain, looked=bool(places))
        need = need + (LEAST_BOX_L if not last and ahead[number + 1].seen else 0.0)
        likely = math.fsum(each.likely_l for each in ahead[number:])
        more = np.maximum(need, (0.0 if last else AHEAD_SHARE) * likely * np.exp(mean))
        have = np.where(have >= need * (1 - 1e-9), have, more)
        if places:
            noise = np.exp(math.sqrt(field / 2) * np.roll(own, 1))
            return short | _looked(
                places, one, plain, mean=mean, have=have, first=drunk[number], noise=noise
            )
        taken = one.likely_l * drunk[number]
        short |= taken > have
        have = np.maximum(have - taken, 0.0)
        if variance > 0:
            weight = variance / (variance + field)
            mean = mean + weight * (np.log(drunk[number]) - mean)
            variance *= 1 - weight
    return short


def _share(one: Ahead, plain: Thirst, *, looked: bool) -> float:
    return one.likely_l if looked else plain.enough_l(one.likely_l, chance_dry=one.chance_dry)


def _looked(
    places: Sequence[Place],
    last: Ahead,
    plain: Thirst,
    *,
    mean: Floats,
    have: Floats,
    first: Floats,
    noise: Floats,
) -> Bools:
    """The last field with its looks; `first` is how much its part before the first look drank."""
    begun = have
    done0 = places[0].done_l

    def taken(planned: float) -> Floats:
        return np.asarray(first * (min(planned, done0) + max(planned - done0, 0.0) * noise))

    late, dry = (_NORMAL.inv_cdf(1 - one) for one in late_and_rest(last.chance_dry))
    open_ = np.ones(len(have), dtype=bool)
    short = np.zeros(len(have), dtype=bool)
    for number, place in enumerate(places):
        left = begun - taken(place.done_l)
        rest = inside(plain, done_l=place.done_l, used_l=place.done_l)
        wide = math.sqrt(rest.variance + rest.field_variance)
        half = plain.variance + plain.field_variance / 2
        weight = 1 - rest.variance / half if half > 0 else 0.0
        seen = mean + weight * (np.log(taken(place.done_l) / place.done_l) - mean)
        enough = np.exp(seen + dry * wide) * place.to_do_l
        mixes = open_ & (left < enough)
        if number + 1 < len(places):
            until = places[number + 1].until_ready_l - place.done_l
            mixes &= left - np.exp(seen + late * wide) * until < LEAST_BOX_L
        short |= mixes & (taken(place.until_ready_l) > begun)
        have = np.where(mixes, begun + enough - left, have)
        open_ &= ~mixes
    return short | (taken(last.likely_l) > have)
