"""The waits of a floor as one table: what is waited for, the usual minutes, what hurries it.

A wait is over when enough has passed: at the mild day of common practice a
minute counts as one, in drying air as more, over a cold slab as less (its
pace). What this floor has of its own comes in as a factor (`air.learned`).
The usual minutes are common practice, no source; the paces rest on published
relations where there are any; the spreads were set on half of the bench's
invented floors and are reported on the rest (docs/clocks-tried.md).
Dwell and traffic are prescribed, not foretold: the maker's sheet and the
label win over them, and nothing seen on the floor moves them.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Sequence
from datetime import datetime, timedelta
from functools import cache

from farwall.air import moist
from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.day import HourAtSlab, at
from farwall.air.film import wet_film_mm
from farwall.air.learned import Spread
from farwall.air.relations import uno
from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.nouns import dataclass

HOUR_MIN = 60.0
DAY_MIN = 24 * HOUR_MIN

Pace = Callable[[Conditions], float]


@dataclass(frozen=True)
class Wait:
    """One kind of wait. `by_film`: it goes with the depth of the coat.

    carried: of the ratio of paces between a watching and the wait foretold from
    it, this power does not count (`carried`): what is known of both is in error,
    and a film that gives off more is colder.
    """

    name: str
    usual_min: float
    pace: Pace
    spread: Spread
    longest_min: float
    source: str
    by_film: bool = False
    carried: float = 0.0


PRESCRIBED = "prescribed"
"""How the source of a wait begins that a sheet sets: nothing foretells it or moves it."""


@dataclass(frozen=True)
class Prescribed:
    """A wait that a sheet or label sets: low, usual, high minutes of common practice.

    The three are what different sheets and finishers prescribe, not how far the
    truth spreads: nobody can watch such a wait end.
    """

    name: str
    low_min: float
    usual_min: float
    high_min: float
    source: str = f"{PRESCRIBED}: common-practice; the maker's sheet and the label win"
    rank: Rank = Rank.PRACTICE


def evaporating(now: Conditions) -> float:
    """Evaporation against that of the mild day, none when water condenses. Source: [uno-1998]."""
    return max(0.0, uno(now)) / uno(REFERENCE)


def out_of_the_skin(now: Conditions) -> float:
    """Water coming up through the slab's skin and off it, against the mild day: a guess.

    Vapour drive over two resistances in a row: that of the air, which wind
    lessens as Menzel's relation has it [menzel-1954, from-memory], and a
    skin's of the same size as still air's.
    """
    return _through_skin(now) / _through_skin(REFERENCE)


def knitting(now: Conditions) -> float:
    """A water-based sealer: its water leaves, then its particles knit, twice as fast 10 K warmer.

    Two thirds of the usual wait go to the first, the rest to the second: guesses.
    """
    leaves = evaporating(now)
    if leaves <= 0:
        return 0.0
    knits: float = 2.0 ** ((now.surface_c - REFERENCE.surface_c) / 10)
    return 1 / (2 / 3 / leaves + 1 / 3 / knits)


def _through_skin(now: Conditions) -> float:
    drive = moist.saturation_pressure_pa(air_c=now.surface_c) - moist.vapour_pressure_pa(
        air_c=now.air_c, rh_percent=now.rh_percent
    )
    still = 0.253
    by_air = still + 0.096 * now.air_speed_m_s / 0.44704
    return max(0.0, drive) / (1 / by_air + 1 / still)


CARRIED = 0.5
"""Set on the tuning half of the bench's floors, as the spreads are."""

RECOAT = Wait(
    "dry to recoat",
    120.0,
    evaporating,
    Spread(0.41, 0.08, 0.08, occasion=0.13, within=0.075),
    DAY_MIN,
    "common-practice, uno-1998",
    by_film=True,
    carried=CARRIED,
)
NEUTRALISE = Wait(
    "dry to neutralise",
    150.0,
    evaporating,
    Spread(0.37, 0.08, 0.08, occasion=0.14, within=0.08),
    DAY_MIN,
    "common-practice, uno-1998",
    by_film=True,
    carried=CARRIED,
)
DRY_DOWN = Wait(
    "dry-down before sealing",
    DAY_MIN,
    out_of_the_skin,
    Spread(0.75, 0.045, 0.05, occasion=0.025),
    6 * DAY_MIN,
    "common-practice, house-guess",
)
SEALER = Wait(
    "next coat of sealer",
    180.0,
    knitting,
    Spread(0.36, 0.06, 0.08, occasion=0.08),
    DAY_MIN,
    "common-practice; the sealer's label wins",
)
CLEANED = Wait(
    "dry after cleaning, overnight",
    6 * HOUR_MIN,
    evaporating,
    Spread(0.6, 0.1, 0.1),
    DAY_MIN,
    "common-practice, house-guess",
)
"""Before masking. Nobody is asked to watch it: its spread is a guess (3 to 14 h)."""
FINISHED = Wait(
    "finish dry",
    45.0,
    knitting,
    Spread(0.22, 0.05, 0.05),
    DAY_MIN,
    "common-practice; the finish's label wins",
)
"""Before anybody unmasks; 30 to 60 min."""
OPEN_TIME = "open time"
OPEN_TIME_SPREAD = Spread(0.28, 0.29, 0.10, occasion=0.14)
KIN_RATIO, KIN_BLUR = 1.17, 0.35
"""A first coat that was watched tells of the last one, which waits longer by this much more than
the usual minutes say, and less surely: set on the tuning half of the bench's floors."""
KIN = {RECOAT.name: 1.0, NEUTRALISE.name: KIN_RATIO}
DWELL = Prescribed("dwell", 4 * HOUR_MIN, 8 * HOUR_MIN, DAY_MIN)
TRAFFIC = Prescribed("traffic in shoes", 12 * HOUR_MIN, DAY_MIN, 3 * DAY_MIN)
WAITS = {one.name: one for one in (RECOAT, NEUTRALISE, DRY_DOWN, SEALER)}
WATCHABLE = (OPEN_TIME, *WAITS)


@cache
def _usual_film_mm() -> float:
    return wet_film_mm(m2_per_l=table.FIRST_COAT_M2_PER_L.usual)


def kin_share(share: float, *, seen: str, asked: str) -> float:
    """A share of the usual wait seen of one kind of drying, as it would be of its kin."""
    return share * KIN[asked] / KIN[seen]


def carried(wait: Wait, share: float, *, pace_seen: float, pace_asked: float) -> float:
    """A share of the usual wait seen at one pace, as it is expected at another.

    A wait seen in slow air and asked about in quick air takes longer than the
    ratio of the paces alone would have it. Paces of nought leave the share as it is.
    """
    if pace_seen <= 0 or pace_asked <= 0:
        return share
    return share * float((pace_asked / pace_seen) ** wait.carried)


def worth_min(wait: Wait, *, m2_per_l: float | None = None) -> float:
    """What has to pass, in minutes of the mild day, before any factor. [min]"""
    if not wait.by_film or m2_per_l is None:
        return wait.usual_min
    return wait.usual_min * wet_film_mm(m2_per_l=m2_per_l) / _usual_film_mm()


@dataclass(frozen=True)
class Course:
    """How much passes from a moment on, in minutes of the mild day."""

    minutes: tuple[float, ...]
    passed: tuple[float, ...]

    def after(self, minutes: float) -> float:
        """What has passed after so many minutes; beyond the course as in its last stretch."""
        return _along(self.minutes, self.passed, minutes)

    def until(self, worth: float) -> float | None:
        """Minutes until so much has passed, None when it does not within the course."""
        if worth > self.passed[-1]:
            return None
        n = bisect_left(self.passed, worth)
        if n == 0:
            return 0.0
        low, high = self.passed[n - 1], self.passed[n]
        share = (worth - low) / (high - low)
        return self.minutes[n - 1] + share * (self.minutes[n] - self.minutes[n - 1])


def _along(xs: Sequence[float], ys: Sequence[float], x: float) -> float:
    n = min(max(bisect_left(xs, x), 1), len(xs) - 1)
    share = (x - xs[n - 1]) / (xs[n] - xs[n - 1])
    return ys[n - 1] + share * (ys[n] - ys[n - 1])


def steady(wait: Wait, now: Conditions) -> Course:
    """The course where nothing changes."""
    return Course((0.0, wait.longest_min), (0.0, wait.longest_min * wait.pace(now)))


def through(wait: Wait, hours: Sequence[HourAtSlab], *, begins: datetime) -> Course:
    """The course through changing hours; before the first and after the last they stay as they are.

    Dew that forms meanwhile does no drying, and is not counted as new water.
    """
    minutes, passed = [0.0], [0.0]
    paces: dict[Conditions, float] = {}
    moment = begins
    while minutes[-1] < wait.longest_min:
        gone = (moment.minute * 60 + moment.second + moment.microsecond / 1e6) / 60
        length = min(HOUR_MIN - gone, wait.longest_min - minutes[-1])
        now = at(hours, moment).conditions
        if now not in paces:
            paces[now] = wait.pace(now)
        minutes.append(minutes[-1] + length)
        passed.append(passed[-1] + length * paces[now])
        moment += timedelta(minutes=length)
    return Course(tuple(minutes), tuple(passed))
