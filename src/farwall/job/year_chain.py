"""How long a house would take that is begun on each day of the year, from cleaning to sealed.

Work of the calendar's practice (`days.practice`) for 1,500 ft² and two people,
on every day of the week; waits of `air.waits` through the hours. Pure arrays:
every date at once, by the hour.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from farwall.air.conditions import Conditions
from farwall.air.learned import factor
from farwall.air.sealers import SealerLimits
from farwall.air.waits import DRY_DOWN, DWELL, HOUR_MIN, NEUTRALISE, RECOAT, SEALER, Wait, worth_min
from farwall.days.practice import chain, step_min
from farwall.days.work_hours import TYPICAL_M2
from farwall.facts import default_table as table
from farwall.job.year_hours import DAY_H, Flags, Floats, Seal, Stain, passed, until
from farwall.nouns import dataclass

FROM_H, TO_H = 8, 18
"""Hours in which somebody works: a guess near the calendar's 7:30 to 18:30."""
LONGEST_DAYS = 60
"""No chain is followed further: such a house is not begun."""
_NEVER = 10**9

Hours = NDArray[np.intp]
End = Literal["likely", "high"]


@dataclass(frozen=True)
class Allowed:
    """Through two years on end: which hours are worked, may be stained, may be sealed."""

    work: Flags
    stain: Flags
    seal: Flags


@dataclass(frozen=True)
class _Air:
    """The hours, what may be done in them, and which end of every range is taken."""

    hours: Sequence[Conditions]
    open_hours: Allowed
    limits: SealerLimits
    end: End


def allowed(stain: Stain, seal: Seal) -> Allowed:
    """The hours of the chain: those of work, and what the weather allows in them."""
    hour = np.arange(2 * len(stain.cold)) % DAY_H
    work = (hour >= FROM_H) & (hour < TO_H)
    no_stain = stain.cold | stain.hot | stain.too_quick
    return Allowed(work, work & ~np.tile(no_stain, 2), work & np.tile(seal.fine, 2))


def days_to_seal(
    hours: Sequence[Conditions], open_hours: Allowed, limits: SealerLimits, *, end: End
) -> Floats:
    """Days from the first to the last, both counted, by the date of the beginning.

    Not a number where it would take more than `LONGEST_DAYS`. end: `likely`, or
    `high`, with all work and every wait at its long end together.
    """
    work_h = {
        one.id: max(1, int(np.ceil(step_min(one, end, area_m2=TYPICAL_M2, people=2) / HOUR_MIN)))
        for one in chain(2)
    }
    first = np.arange(0, len(hours), DAY_H, dtype=np.intp)
    clean = _split(open_hours.work, work_h["clean"] + work_h["mask"])
    coat = _whole(open_hours.stain, work_h["coat-1"])
    rinse = _split(open_hours.work, work_h["neutralise"])
    now = _step(first, clean)
    air = _Air(hours, open_hours, limits, end)
    now = _step(now, coat)
    now = _waited(RECOAT, air, now, coat=0)
    now = _step(now, coat)
    dwelt = now + int((DWELL.usual_min if end == "likely" else DWELL.high_min) / HOUR_MIN)
    now = _step(np.maximum(_waited(NEUTRALISE, air, now, coat=1), dwelt), rinse)
    now = _waited(DRY_DOWN, air, now)
    now = _sealed(air, now, work_h["seal-1"])
    days = (now - 1) // DAY_H - first // DAY_H + 1
    return np.where(days <= LONGEST_DAYS, days.astype(float), np.nan)


def next_at(fine: Flags) -> Hours:
    """For each hour and the one after the last, the next that is fine; far off when none is."""
    found = np.full(len(fine) + 1, _NEVER, dtype=np.intp)
    found[:-1][fine] = np.flatnonzero(fine)
    return np.minimum.accumulate(found[::-1])[::-1]


def _whole(fine: Flags, length: int) -> Hours:
    """For each hour, the end of the next work of that length that is not broken off."""
    run = fine.copy()
    for n in range(1, length):
        run[:-n] &= fine[n:]
        run[-n:] = False
    return np.asarray(next_at(run) + length, dtype=np.intp)


def _split(fine: Flags, length: int) -> Hours:
    """For each hour, the end of work of that length that may be parted over days."""
    where = np.flatnonzero(fine)
    nth = np.concatenate([[0], np.cumsum(fine)]) + length - 1
    inside = nth < len(where)
    return np.where(inside, where[np.minimum(nth, len(where) - 1)] + 1, _NEVER).astype(np.intp)


def _step(now: Hours, ends: Hours) -> Hours:
    return ends[np.minimum(now, len(ends) - 1)]


def _waited(wait: Wait, air: _Air, now: Hours, *, coat: int | None = None) -> Hours:
    """The first full hour by which the wait is over; the longest it may be where it never is."""
    usual = (table.FIRST_COAT_M2_PER_L.usual, table.LATER_COAT_M2_PER_L.usual)
    worth = worth_min(wait, m2_per_l=None if coat is None else usual[coat])
    course = passed(wait, air.hours)
    inside = np.minimum(now, len(course) - 1)
    minutes = until(course, inside, worth * getattr(factor(wait.spread), air.end), wait.longest_min)
    minutes = np.where(np.isnan(minutes), wait.longest_min, minutes)
    return np.minimum(now + np.ceil(minutes / HOUR_MIN).astype(np.intp), _NEVER)


def _sealed(air: _Air, now: Hours, length: int) -> Hours:
    """The end of the last coat of sealer, each coat inside the recoat window of the one before."""
    limits = air.limits
    begins = np.arange(len(air.open_hours.seal), dtype=np.intp)
    last = _whole_starts(air.open_hours.seal, air.open_hours.work, length)
    done = np.where(last, begins + length, _NEVER)
    for _ in range(limits.coats - 1):
        # Where the next coat can follow in time: going back from the last one.
        after = np.minimum(begins + length, len(begins))
        ready = np.maximum(_waited(SEALER, air, after), after + _up(limits.recoat_from_h))
        following = next_at(done < _NEVER)[np.minimum(ready, len(begins))]
        good = last & (following <= after + int(limits.recoat_to_h))
        done = np.where(good, done[np.minimum(following, len(begins) - 1)], _NEVER)
    first = next_at(done < _NEVER)[np.minimum(now, len(begins))]
    return np.where(first < _NEVER, done[np.minimum(first, len(begins) - 1)], _NEVER)


def _whole_starts(begin: Flags, work: Flags, length: int) -> Flags:
    """Hours in which a coat may begin that is finished within the hours of work."""
    fits = begin.copy()
    for n in range(1, length):
        fits[:-n] &= work[n:]
        fits[-n:] = False
    return fits


def _up(hours: float) -> int:
    return int(np.ceil(hours))
