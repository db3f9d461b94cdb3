"""What each hour of a typical year allows on a floor: stain, its drying, sealer. Arrays of hours.

The rules are those of a plan (`air.limits`, `air.waits`, `air.sealing`), asked
for a whole year at once. The last hours run on into the year's first ones.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.air import moist
from farwall.air.conditions import Conditions
from farwall.air.learned import factor
from farwall.air.limits import COLDEST_C, HOTTEST_C
from farwall.air.pace import sheen_loss_min
from farwall.air.sealers import GOOD_RH_PERCENT, SealerLimits
from farwall.air.sealing import AHEAD_H, FALLING_K_PER_H
from farwall.air.waits import HOUR_MIN, NEUTRALISE, RECOAT, Wait, worth_min
from farwall.facts import default_table as table
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

DAY_H = 24
FRONT_M = 6.0
"""The edge of an ordinary large room, 20 ft: a guess."""
NEEDED_MIN = FRONT_M * table.TOOLS["band_m"].usual / table.TOOLS["spray_m2_min"].usual
"""Age of that edge when the next band reaches it (edge × band / spray rate), walking left out."""
MORNING_H = 8
"""When rinsing begins on the day after: a guess."""
SOON_MIN, SAME_DAY_MIN = 120.0, 240.0
"""Shades of the picture: the mild day's usual wait, and the long end that is told of it."""
_HAIR = 1e-6


@dataclass(frozen=True)
class Stain:
    """For each hour: why no stain may go down, and the waits of a coat that ends with it.

    `low_min` and so on: minutes to the next coat, not a number where it is not dry in a day.
    """

    cold: Flags
    hot: Flags
    too_quick: Flags
    """The low end of the open time is shorter than the edge of an ordinary room asks for."""
    likely_min: Floats
    high_min: Floats
    rinse_min: Floats
    """Minutes until the last coat is dry to neutralise, at the high end."""

    @property
    def slow(self) -> Flags:
        """Not dry within a day."""
        return np.isnan(self.likely_min)

    @property
    def fine(self) -> Flags:
        """A coat may be laid and dries within a day."""
        return ~(self.cold | self.hot | self.too_quick | self.slow)

    @property
    def rinsed_next_morning(self) -> Flags:
        """A last coat of this hour is dry to neutralise by the next morning, at the high end."""
        hour = np.arange(len(self.cold)) % DAY_H
        until = (DAY_H - hour + MORNING_H) * HOUR_MIN
        return np.asarray(self.rinse_min <= until)


@dataclass(frozen=True)
class Seal:
    """For each hour: why no sealer may go down, and where it asks for care."""

    cold: Flags
    hot: Flags
    damp: Flags
    """Air too damp, or the slab too near the dew point, now or while the film is young."""
    cooling: Flags
    care: Flags

    @property
    def fine(self) -> Flags:
        """A coat of sealer may begin."""
        return ~(self.cold | self.hot | self.damp | self.cooling)


def stain_hours(hours: Sequence[Conditions]) -> Stain:
    """Stain in each of these hours, on a normal trowel at the usual coverage of a first coat.

    hours: a whole number of days in order, which follow each other round and round.
    """
    slab = np.array([one.surface_c for one in hours])
    usual = table.FIRST_COAT_M2_PER_L.usual
    edge = np.array(
        [sheen_loss_min(one, m2_per_l=usual, drop_s=None, finish=None)[0] for one in hours]
    )
    spread, later = factor(RECOAT.spread), factor(NEUTRALISE.spread)
    recoat = worth_min(RECOAT)
    rinse = worth_min(NEUTRALISE, m2_per_l=table.LATER_COAT_M2_PER_L.usual)
    course = passed(RECOAT, hours)
    after = passed(NEUTRALISE, hours)
    starts = np.arange(len(hours))
    return Stain(
        slab < COLDEST_C - _HAIR,
        slab > HOTTEST_C + _HAIR,
        edge < NEEDED_MIN,
        until(course, starts, recoat * spread.likely, RECOAT.longest_min),
        until(course, starts, recoat * spread.high, RECOAT.longest_min),
        until(after, starts, rinse * later.high, NEUTRALISE.longest_min),
    )


def seal_hours(hours: Sequence[Conditions], limits: SealerLimits) -> Seal:
    """Sealer in each of these hours, the night ahead counted: the rule of `air.sealing.may_seal`.

    hours: as `stain_hours`; tests hold it to that rule hour by hour.
    """
    slab = np.array([one.surface_c for one in hours])
    damp = np.array([one.rh_percent for one in hours])
    dew = np.array(
        [moist.dew_point_c(air_c=x.air_c, rh_percent=max(x.rh_percent, 0.1)) for x in hours]
    )
    near_dew = _in_the_hours_ahead(slab - dew < limits.least_margin_k - _HAIR)
    cold = _in_the_hours_ahead(slab < limits.least_slab_c - _HAIR)
    return Seal(
        cold,
        slab > limits.most_slab_c + _HAIR,
        near_dew | (damp > limits.most_rh_percent + _HAIR),
        np.roll(slab, -1) < slab - FALLING_K_PER_H,
        damp > min(GOOD_RH_PERCENT, limits.most_rh_percent) + _HAIR,
    )


def passed(wait: Wait, hours: Sequence[Conditions]) -> Floats:
    """Minutes of the mild day that have passed at each full hour, through two years on end."""
    paces = np.array([wait.pace(one) for one in hours])
    return np.concatenate([[0.0], np.cumsum(np.tile(paces, 2) * HOUR_MIN)])


def until(course: Floats, starts: NDArray[np.intp], worth: float, longest_min: float) -> Floats:
    """Minutes from each of `starts` (hours) until so much has passed; nan beyond `longest_min`.

    What `air.waits.Course.until` says, for many starts at once.
    """
    wanted = course[starts] + worth
    at = np.minimum(np.searchsorted(course, wanted, side="left"), len(course) - 1)
    before, after = course[at - 1], course[at]
    share = (wanted - before) / np.maximum(after - before, 1e-12)
    minutes = (at - 1 + share - starts) * HOUR_MIN
    return np.where((after >= wanted) & (minutes <= longest_min), minutes, np.nan)


def _in_the_hours_ahead(flags: Flags) -> Flags:
    """So now, or in one of the hours that a young film has before it."""
    found = flags.copy()
    for n in range(1, AHEAD_H + 1):
        found |= np.roll(flags, -n)
    return found
