"""The site's clock in slots: which may be worked, stained or sealed, and how far waits get."""

from __future__ import annotations

from collections.abc import Collection

import numpy as np
from numpy.typing import NDArray

from farwall.days.nouns import Ahead, Pace, Place
from farwall.days.work_hours import EVENING_MIN, NOON_MIN, WORK_FROM_MIN, WORK_UNTIL_MIN
from farwall.nouns import dataclass

SLOT_MIN = 15
PER_DAY = 1440 // SLOT_MIN
_PER_HOUR = 60 // SLOT_MIN
SATURDAY = 5
_NOON, _MORNING = int(NOON_MIN) // SLOT_MIN, int(WORK_FROM_MIN) // SLOT_MIN

Slots = NDArray[np.int64]


@dataclass(frozen=True)
class SiteClock:
    """Slots of `ahead`: `open[place]` where work may go on, `passed[pace]` mild minutes so far."""

    count: int
    open: dict[Place, NDArray[np.bool_]]
    passed: dict[Pace, NDArray[np.float64]]

    def until(self, pace: Pace, ends: Slots, worth_min: float) -> Slots:
        """The first slot by which `worth_min` has passed since each of `ends`; count if never."""
        course = self.passed[pace]
        found = np.searchsorted(course, course[ends] + worth_min - 1e-6)
        return np.minimum(np.maximum(found, ends), self.count)


def working_day(ahead: Ahead, day: int) -> bool:
    """Monday to Friday."""
    return (ahead.begins.weekday() + day) % 7 < SATURDAY


def site_clock(ahead: Ahead, shut_days: Collection[int] = ()) -> SiteClock:
    """The clock of one site; on `shut_days` nobody of ours may be there."""
    count = ahead.days * PER_DAY
    of_day = np.arange(count) % PER_DAY * SLOT_MIN
    days = np.arange(count) // PER_DAY
    works = np.array([working_day(ahead, n) and n not in shut_days for n in range(ahead.days)])
    works = works[days] if count else np.zeros(0, dtype=bool)
    work = works & (of_day >= WORK_FROM_MIN) & (of_day + SLOT_MIN <= WORK_UNTIL_MIN)
    late = works & (of_day >= WORK_FROM_MIN) & (of_day + SLOT_MIN <= EVENING_MIN)
    hours = ahead.hours[: ahead.days * 24]
    coat = np.repeat([one.coat for one in hours], _PER_HOUR).astype(bool)
    seal = np.repeat([one.seal for one in hours], _PER_HOUR).astype(bool)
    passed: dict[Pace, NDArray[np.float64]] = {
        "film": _course([one.film for one in hours]),
        "slab": _course([one.slab for one in hours]),
        "sealer": _course([one.sealer for one in hours]),
        "clock": _course([one.clock for one in hours]),
    }
    return SiteClock(
        count, {"any": work, "coat": late & coat, "rinse": late, "seal": work & seal}, passed
    )


def _course(paces: list[float]) -> NDArray[np.float64]:
    steps = np.repeat(np.asarray(paces, dtype=float), _PER_HOUR) * SLOT_MIN
    return np.concatenate([[0.0], np.cumsum(steps)])


def half_day(slot: int) -> int:
    """The half day (two a day, parted at noon) in which a slot lies."""
    return slot // PER_DAY * 2 + (slot % PER_DAY >= _NOON)


def half_days(start: int, end: int) -> range:
    """The half days of the slots from `start` to before `end`; early mornings belong to none."""
    last = end - 1
    if last % PER_DAY < _MORNING:
        last = last // PER_DAY * PER_DAY - 1
    return range(half_day(start), half_day(last) + 1)
