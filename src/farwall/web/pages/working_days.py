"""Working days at a house: Monday to Friday, in the hours of the calendar (`days.practice`)."""

from __future__ import annotations

from datetime import timedelta

from farwall.days.work_hours import DAY_MIN, EVENING_MIN, WORK_FROM_MIN, WORK_UNTIL_MIN
from farwall.nouns import dataclass
from farwall.papers.wall_clock import WallClock

_SATURDAY = 5


@dataclass(frozen=True)
class WorkingDays:
    """Where work of some minutes lies, in minutes of the plan whose clock this is."""

    clock: WallClock

    def at_work(self, free_min: float, lasts: float) -> float:
        """The first minute from then on at which so many minutes fit before the evening."""
        hour = self.of_day(free_min)
        begins = free_min
        if hour < WORK_FROM_MIN:
            begins = free_min + WORK_FROM_MIN - hour
        elif hour + lasts > EVENING_MIN:
            begins = free_min + DAY_MIN - hour + WORK_FROM_MIN
        while self.is_weekend(begins):
            begins += DAY_MIN - self.of_day(begins) + WORK_FROM_MIN
        return begins

    def of_day(self, minute: float) -> float:
        """Minutes since midnight."""
        start = self.clock.starts_at
        return (minute + start.hour * 60 + start.minute) % DAY_MIN

    def is_weekend(self, minute: float) -> bool:
        """Whether nobody works that day, as in the calendar; never where no day is told."""
        if not self.clock.day_told:
            return False
        return (self.clock.starts_at + timedelta(minutes=minute)).weekday() >= _SATURDAY

    def working_day(self, minute: float) -> float:
        """The same time on the working day at or before."""
        while self.is_weekend(minute):
            minute -= DAY_MIN
        return minute

    def back(self, until: float, lasts: float) -> float:
        """When work of so many minutes begins that is over on the working day before a midnight.

        What takes more than a day lies on working days one after the other.
        """
        day = WORK_UNTIL_MIN - WORK_FROM_MIN
        at = until + WORK_FROM_MIN
        for _ in range(int(-(-lasts // day))):
            at = self.working_day(at - DAY_MIN)
        return at

    def over(self, begins: float, lasts: float) -> float:
        """When work is over that begins in the morning, nights and weekends left out."""
        day = WORK_UNTIL_MIN - WORK_FROM_MIN
        while lasts > day:
            lasts, begins = lasts - day, begins + DAY_MIN
            while self.is_weekend(begins):
                begins += DAY_MIN
        return begins + lasts

    def midnight(self, minute: float) -> float:
        """The midnight before a minute."""
        return minute - self.of_day(minute)
