"""From the plan's minutes to the true ones of a day: how walks and fillings of the past moved."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from itertools import pairwise

import numpy as np

from farwall.facts.plan import Band, Plan, Refill, Walk
from farwall.job.half_told import begun_together
from farwall.job.second_past import swaps_for, word_of
from farwall.job.so_far_sense import HAIR_MIN, every_band, whole_fields
from farwall.nouns import dataclass

_SAME_MIN = 0.01
Clock = Callable[[float], float]


@dataclass(frozen=True)
class Clocks:
    """A clock for each sprayer by number; one and the same while both keep the planned turns."""

    by_sprayer: Mapping[int, Clock]

    def walk(self, walk: Walk, refills: Sequence[Refill]) -> Walk:
        """The walk at true minutes; a helper's goes with the filling it serves, as planned."""
        moved = self.by_sprayer[self._whose(walk, refills)]
        return Walk(walk.who, tuple((x, y, moved(t)) for x, y, t in walk.path))

    def _whose(self, walk: Walk, refills: Sequence[Refill]) -> int:
        if walk.who.startswith("sprayer"):
            return 2 if walk.who == word_of(2) else 1
        first, last = walk.path[0][2], walk.path[-1][2]
        for refill in refills:
            begins, ends = refill.at_min, refill.at_min + refill.minutes
            if abs(last - begins) <= _SAME_MIN or abs(first - ends) <= _SAME_MIN:
                return swaps_for(refill.by)
        return 1

    def refill(self, refill: Refill) -> Refill:
        """The filling at true minutes."""
        moved = self.by_sprayer[swaps_for(refill.by)]
        start, end = moved(refill.at_min), moved(refill.at_min + refill.minutes)
        return replace(refill, at_min=start, minutes=round(max(end - start, 0.0), 4))


def clocks_of(plan: Plan, done: dict[str, Band], coat: str) -> Clocks | None:
    """From the plan's minutes to true ones; None when bands were done in another order.

    Both halves of a band count as one from the first beginning to the last end. Where
    somebody began a band while the other was still on the one before, each has a clock of
    his own.
    """
    bands = every_band(plan)
    of_coat = {b.id for f in whole_fields(plan) if f.coat == coat for b in f.bands}
    own = [name for name in done if name in of_coat]
    own.sort(key=lambda name: (bands[name].start_min, bands[name].order))
    common = _clock(_knots(own, bands), _knots(own, done, bands))
    if common is not None:
        return Clocks({1: common, 2: common})
    each: dict[int, Clock] = {}
    for sprayer in (1, 2):
        mine = [name for name in own if bands[name].sprayer == sprayer]
        clock = _clock(_knots(mine, bands), _knots(mine, done, bands))
        if clock is None:
            return None
        each[sprayer] = clock
    return Clocks(each)


def _knots(
    names: Sequence[str], at: Mapping[str, Band], planned: Mapping[str, Band] | None = None
) -> list[float]:
    """First and last minute of each band, or of both its halves, one after the other. [min]"""
    planned = planned or at
    found: list[float] = []
    before = ""
    for name in names:
        if before and begun_together(planned[before], planned[name]):
            found[-2:] = [
                min(found[-2], at[name].start_min),
                max(found[-1], at[name].end_min),
            ]
        else:
            found += [at[name].start_min, at[name].end_min]
        before = name
    return found


def _clock(planned: Sequence[float], true: Sequence[float]) -> Clock | None:
    if list(planned) == list(true) or not planned:
        return lambda minute: minute
    if any(after < before - HAIR_MIN for before, after in pairwise(true)):
        return None

    def moved(minute: float) -> float:
        if minute <= planned[0]:
            return minute + true[0] - planned[0]
        if minute >= planned[-1]:
            return minute + true[-1] - planned[-1]
        return round(float(np.interp(minute, planned, true)), 4)

    return moved
