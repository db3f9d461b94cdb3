"""Which hours hold whole coats: none refused from the first stroke to the last, within the working
day, each coat ready for the next and none too late for it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from datetime import datetime, timedelta
from itertools import pairwise

from farwall.air.sealing import Sealing
from farwall.days.clock import SATURDAY
from farwall.days.words import date_words
from farwall.days.work_hours import WORK_FROM_MIN, WORK_UNTIL_MIN
from farwall.facts.plan import Clock
from farwall.nouns import dataclass
from farwall.units import clock_words

Recoat = Callable[[int, datetime], Clock]
"""The wait after coat number (from 0) that ends at this moment."""
_HOUR = timedelta(hours=1)
HALF_H = timedelta(minutes=30)
SPARE = _HOUR
"""Wished for before the coat below has to be abraded. A guess."""


@dataclass(frozen=True)
class Begins:
    """When each coat begins; empty with the reasons where no hours hold them all."""

    coats: tuple[datetime, ...]
    against: tuple[str, ...] = ()


@dataclass(frozen=True)
class SealHours:
    """The known hours with their words. One hour alone stands for conditions that stay."""

    hours: Sequence[Sealing]
    us: bool = False
    """Whether moments are told with am and pm."""
    weekends: bool = True
    """Whether somebody works on Saturdays and Sundays too; also where no day was told."""

    def told(self, moment: datetime) -> str:
        """`Mon 4 May 9:00`, whatever the machine's language."""
        return f"{date_words(moment)} {clock_words(moment, us=self.us)}"

    def works(self, begins: datetime, ends: datetime) -> bool:
        """Whether both lie within one day on which somebody works, and within its hours."""
        return in_working_day(begins, ends) and (self.weekends or begins.weekday() < SATURDAY)

    def against(self, moment: datetime) -> tuple[str, ...]:
        """What stands against sealing at this moment; an hour that is not known is refused."""
        found = self._at(moment)
        if found is None:
            return (f"not known: no weather reaches {self.told(moment)}.",)
        return found.reasons if found.word == "no" else ()

    def word(self, begins: datetime, ends: datetime) -> tuple[str, tuple[str, ...]]:
        """The worst word of the hours between, with its reasons."""
        found = [one for one in self._between(begins, ends) if one is not None]
        worst = max(found, key=lambda one: ("go", "care", "no").index(one.word), default=None)
        return ("no", ()) if worst is None else (worst.word, worst.reasons)

    def first_against(self, begins: datetime, ends: datetime) -> tuple[str, ...]:
        """What stands against the first hour that is refused between two moments."""
        for moment in _hourly(begins, ends):
            against = self.against(moment)
            if against:
                return against
        return ()

    def _at(self, moment: datetime) -> Sealing | None:
        if len(self.hours) == 1:
            return self.hours[0]
        if not self.hours:
            return None
        number = int((moment - self.hours[0].starts_at) // _HOUR)
        return self.hours[number] if 0 <= number < len(self.hours) else None

    def _between(self, begins: datetime, ends: datetime) -> Iterator[Sealing | None]:
        for moment in _hourly(begins, ends):
            yield self._at(moment)


def _hourly(begins: datetime, ends: datetime) -> Iterator[datetime]:
    moment = begins
    while moment < ends:
        yield moment
        moment += _HOUR
    yield ends


def in_working_day(begins: datetime, ends: datetime) -> bool:
    """Whether both lie within one day of work (7:30 to 17:00, common practice, no source)."""
    first = begins.hour * 60 + begins.minute
    last = ends.hour * 60 + ends.minute
    return begins.date() == ends.date() and first >= WORK_FROM_MIN and last <= WORK_UNTIL_MIN


def begins_for(
    known: SealHours,
    minutes: Sequence[float],
    recoat: Recoat,
    latest_min: float,
    *,
    not_before: datetime,
    last: datetime,
) -> Begins:
    """The first hours that hold all coats, each so many `minutes` long.

    A coat begins after the late end of the wait for the one below, and within `latest_min` of
    that one's beginning. Sought every half hour from `not_before` to `last`; where the first hours
    leave less than `SPARE` until a coat would have to be abraded, later ones of that day are taken
    that leave it.
    """
    why: dict[str, str] = {}
    tight: tuple[datetime, ...] = ()
    for first in _moments(not_before, last):
        if tight and first.date() > tight[0].date():
            break
        row = [first]
        if not _holds(known, first, minutes[0], why, 0):
            continue
        for number in range(1, len(minutes)):
            found = _next(
                known, row[-1], number,
                minutes=minutes, recoat=recoat, latest_min=latest_min, why=why,
            )  # fmt: skip
            if found is None:
                break
            row.append(found)
        if len(row) == len(minutes):
            if _spare(row, latest_min) >= SPARE:
                return Begins(tuple(row))
            tight = tight or tuple(row)
    if tight:
        return Begins(tight)
    against = tuple(why.values()) or (f"No hour is known from {known.told(not_before)} on.",)
    return Begins((), against)


def _spare(begun: Sequence[datetime], latest_min: float) -> timedelta:
    """The least time that is left when a coat is begun until the one below has to be abraded."""
    late = timedelta(minutes=latest_min)
    return min((one + late - then for one, then in pairwise(begun)), default=SPARE)


def _next(
    known: SealHours,
    before: datetime,
    number: int,
    *,
    minutes: Sequence[float],
    recoat: Recoat,
    latest_min: float,
    why: dict[str, str],
) -> datetime | None:
    ends = before + timedelta(minutes=minutes[number - 1])
    clock = recoat(number - 1, ends)
    latest = before + timedelta(minutes=latest_min)
    if clock.high_min is None:
        why.setdefault(
            f"recoat {number}",
            f"Coat {number + 1}: coat {number} does not get ready for it within four days.",
        )
        return None
    ready = ends + timedelta(minutes=clock.high_min)
    if ready > latest:
        why.setdefault(
            f"recoat {number}",
            f"Recoat window too short: coat {number} begun {known.told(before)} is ready for "
            f"the next at {known.told(ready)} at the late end, and from {known.told(latest)} on it "
            "has to be abraded first.",
        )
        return None
    tried: dict[str, str] = {}
    for moment in _moments(ready, latest):
        if _holds(known, moment, minutes[number], tried, number):
            return moment
    told = " ".join(tried.values()) or "it is night, the working day is over, or nobody works."
    why.setdefault(
        f"window {number}",
        f"Coat {number + 1} finds no hours between {known.told(ready)} (ready at the late end) and "
        f"{known.told(latest)} (abraded from then on): {told}",
    )
    return None


def _holds(
    known: SealHours, begins: datetime, length_min: float, why: dict[str, str], number: int
) -> bool:
    ends = begins + timedelta(minutes=length_min)
    if not known.works(begins, ends):
        return False
    against = known.first_against(begins, ends)
    if against:
        kind = against[0].partition(":")[0]
        why.setdefault(f"{number} {kind}", f"{known.told(begins)}: {'; '.join(against)}.")
    return not against


def _moments(begins: datetime, ends: datetime) -> Iterator[datetime]:
    """Every half hour between them."""
    moment = next_half_hour(begins)
    while moment <= ends:
        yield moment
        moment += HALF_H


def next_half_hour(moment: datetime) -> datetime:
    """The moment itself where it is a full half hour, else the next one."""
    whole = moment.replace(minute=0, second=0, microsecond=0)
    return next(full for full in (whole, whole + HALF_H, whole + _HOUR) if full >= moment)
