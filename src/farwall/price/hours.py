"""Person-hours of a job from its sizes, task by task: low, likely and high of each.

Low and high are ends that a job stays within nine times in ten, as `learn.kinds` reads those of
practice; ranges of lessons, which hold four times in five, are widened to that.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.lessons import Lesson, Lessons, learned_from
from farwall.learn.kinds import TASK_HOURS, TYPICAL_HOURS
from farwall.learn.told import typical_share
from farwall.nouns import dataclass
from farwall.units import M2_PER_FT2, M_PER_FT

Three = tuple[float, float, float]
"""Low, likely, high."""


@dataclass(frozen=True)
class TaskHours:
    """A task: person-hours low, likely, high; the rule that says so, its rank and source."""

    task: str
    low_h: float
    likely_h: float
    high_h: float
    rule: str
    rank: str
    source: str
    id: str = ""


@dataclass(frozen=True)
class Sizes:
    """What hours go with. Areas m², lengths m.

    coat_min: minutes on the clock of each coat that is laid, as planned · people: hands on site
    while stain goes down · site_days: days with work on site · wash_h: hours of neutralising,
    scrubbing and rinsing where the wash day was reckoned · us: rules are told in feet, else in
    metres.
    """

    area_m2: float
    wall_m: float
    coat_min: tuple[float, ...]
    people: int = 2
    sealer_coats: int = 2
    finish_coats: int = 2
    site_days: Three = (4.0, 5.0, 7.0)
    wash_h: Three | None = None
    us: bool = True

    @property
    def floor_told(self) -> str:
        """The floor as rules tell it."""
        much = self.area_m2 / M2_PER_FT2 if self.us else self.area_m2
        return f"{much:,.0f} {'ft²' if self.us else 'm²'} of floor"

    @property
    def wall_told(self) -> str:
        """The walls as rules tell them."""
        much = self.wall_m / M_PER_FT if self.us else self.wall_m
        return f"{much:,.0f} {'ft' if self.us else 'm'} of wall"


WORDS = {
    "travel": "travel, phone and papers",
    "sample": "survey and samples",
    "set-up": "set up and clear away",
    "protect": "protect",
    "clean": "clean before staining",
    "mask": "mask",
    "mix": "mix, box and wash out",
    "coat": "spray",
    "judge": "judge and touch up",
    "wash": "neutralise, scrub and rinse",
    "seal": "seal",
    "finish": "lay floor finish",
    "hand-over": "unmask and hand over",
}
"""Tasks in their order, as screens and papers have them."""

MASK_FT_H: Three = (40, 65, 100)
CLEAN_FT2_H: Three = (80, 150, 250)
WASH_FT2_H: Three = (50, 90, 150)
SEAL_FT2_H: Three = (300, 600, 1000)
FINISH_FT2_H: Three = (600, 1000, 1800)
"""Feet of wall, or ft² of floor, a person-hour: low, usual, high [common-practice]."""
SPRAY_FT2_MIN: Three = (20, 30, 45)
"""Spraying: what is slower or faster than planned is taken from this range [common-practice]."""
MIXING_H: Three = (0.25, 0.5, 1.0)
"""Person-hours of mixing, boxing and washing out, each coat [house-guess]."""
TRAVEL_H: Three = (6, 8, 10)
"""Travel, phone and papers of a job [common-practice]."""
SAMPLE_H: Three = (1.5, 2, 4)
"""Survey, drop map and a sample of three dilutions [house-guess]."""
SET_UP_H: Three = (0.2, 0.4, 0.8)
"""Unloading, hoses and clearing away, each day on site [house-guess]."""

_NINE_IN_TEN, _FOUR_IN_FIVE = 1.6448536269514722, 1.2815515655446004
"""Points of the standard normal at 95 and 90 %."""


def hours_of_sizes(sizes: Sizes, lessons: Lessons | None = None) -> tuple[TaskHours, ...]:
    """Every task of a job of these sizes, in order; what closed jobs taught wins over practice.

    Source: paces of work of common practice, no source [common-practice]; parts without a pace
    are guesses [house-guess], as marked at each.
    """
    return tuple(one for one in _tasks(sizes, lessons) if one.high_h > 0)


def paced(
    task: str, much: float, pace: Three, told: str, *, unit: float = 1.0, times: int = 1
) -> TaskHours:
    """Hours for so much at a pace an hour.

    told: how much it is, in words. unit: how many of the unit that it is told in are one of the
    unit of `much` and `pace`. times: how often it is gone over.
    """
    low, usual, high = pace
    slow, as_a_rule, fast = (f"{_two_figures(one * unit):,g}" for one in pace)
    rule = f"{told} at {slow} to {fast} an hour, usually {as_a_rule}"
    if times != 1:
        rule += f", {times} times"
    much *= times
    ends = (much / high, much / usual, much / low)
    return TaskHours(WORDS[task], *ends, rule, Rank.PRACTICE.value, PRACTICE, task)  # fmt: skip


def _two_figures(value: float) -> float:
    return float(f"{value:.2g}")


def _paced_floor(task: str, sizes: Sizes, pace: Three, *, times: int = 1) -> TaskHours:
    unit, much = 1.0 if sizes.us else M2_PER_FT2, sizes.area_m2 / M2_PER_FT2
    return paced(task, much, pace, sizes.floor_told, unit=unit, times=times)


def sprayed_h(coat_min: tuple[float, ...], people: int) -> Three:
    """Person-hours of spraying: the minutes of the plan times the hands on site."""
    slow, usual, fast = SPRAY_FT2_MIN
    likely = math.fsum(coat_min) * people / 60
    return (likely * usual / fast, likely, likely * usual / slow)


def _tasks(sizes: Sizes, lessons: Lessons | None) -> Iterator[TaskHours]:
    share = typical_share(sizes.area_m2)
    coats = len(sizes.coat_min)
    yield _of("travel", TRAVEL_H, "for a job, whatever its size", Rank.PRACTICE)
    yield _of("sample", SAMPLE_H, "for a survey and a sample of three dilutions", Rank.GUESS)
    yield _set_up(sizes.site_days)
    if found := _found(lessons, "protect"):
        yield _learned("protect", found, sizes, share)
    unit = 1.0 if sizes.us else M_PER_FT
    mask = paced("mask", sizes.wall_m / M_PER_FT, MASK_FT_H, sizes.wall_told, unit=unit)
    yield _or(_found(lessons, "clean"), _paced_floor("clean", sizes, CLEAN_FT2_H), sizes, share)
    yield _or(_found(lessons, "mask"), mask, sizes, share)
    yield from _coats(sizes, lessons, share)
    if coats:
        yield _typical("judge", sizes, lessons, share)
        yield _wash(sizes, lessons, share)
    for task, times, pace in (
        ("seal", sizes.sealer_coats, SEAL_FT2_H), ("finish", sizes.finish_coats, FINISH_FT2_H),
    ):  # fmt: skip
        plain = _paced_floor(task, sizes, pace, times=times)
        yield _or(_found(lessons, task), plain, sizes, share * times / 2)
    yield _typical("hand-over", sizes, lessons, share)


def _set_up(site_days: Three) -> TaskHours:
    ends = tuple(one * days for one, days in zip(SET_UP_H, site_days, strict=True))
    rule = f"{SET_UP_H[1]:g} h for each of {site_days[1]:.0f} days on site"
    return _of("set-up", (ends[0], ends[1], ends[2]), rule, Rank.GUESS)


def _coats(sizes: Sizes, lessons: Lessons | None, share: float) -> Iterator[TaskHours]:
    """Mixing and spraying; closed jobs tell both as one."""
    found, coats = _found(lessons, "coat"), len(sizes.coat_min)
    if found:
        yield _learned("coat", found, sizes, share * coats / 2)
        return
    low, usual, high = (one * coats for one in MIXING_H)
    yield _of("mix", (low, usual, high), f"{MIXING_H[1]:g} h for each of {coats} coats", Rank.GUESS)
    rule = f"{math.fsum(sizes.coat_min):.0f} min of the plan for {sizes.people} people"
    yield _of("coat", sprayed_h(sizes.coat_min, sizes.people), rule, Rank.PRACTICE)


def _wash(sizes: Sizes, lessons: Lessons | None, share: float) -> TaskHours:
    """Neutralising and rinsing are two tasks of the log and one here."""
    known = [(_found(lessons, one), TYPICAL_HOURS[one]) for one in ("neutralise", "rinse")]
    taught = [found for found, _ in known if found]
    if taught:
        parts = [wide(found) if found else usual for found, usual in known]
        ends = tuple(math.fsum(each) * share for each in zip(*parts, strict=True))
        jobs = max(one.jobs for one in taught)
        return _of(
            "wash",
            (ends[0], ends[1], ends[2]),
            _rule(share, sizes),
            Rank.LEARNED,
            learned_from(jobs),
        )
    if sizes.wash_h is not None:
        return _of("wash", sizes.wash_h, "as the wash day is reckoned, room by room", Rank.PRACTICE)
    return _paced_floor("wash", sizes, WASH_FT2_H)


def _or(found: Lesson | None, plain: TaskHours, sizes: Sizes, share: float) -> TaskHours:
    """What closed jobs taught, else practice; of sealer and finish lessons tell two coats."""
    return _learned(plain.id, found, sizes, share) if found else plain


def _typical(task: str, sizes: Sizes, lessons: Lessons | None, share: float) -> TaskHours:
    found = _found(lessons, task)
    if found:
        return _learned(task, found, sizes, share)
    low, usual, high = (one * share for one in TYPICAL_HOURS[task])
    return _of(task, (low, usual, high), _rule(share, sizes), Rank.PRACTICE)


def _found(lessons: Lessons | None, task: str) -> Lesson | None:
    return lessons.find(TASK_HOURS + task) if lessons else None


def _learned(task: str, found: Lesson, sizes: Sizes, share: float) -> TaskHours:
    low, likely, high = (one * share for one in wide(found))
    return _of(
        task, (low, likely, high), _rule(share, sizes), Rank.LEARNED, learned_from(found.jobs)
    )


def wide(found: Lesson) -> Three:
    """The ends of a lesson, which hold four times in five, as those that hold nine in ten."""
    reach = _NINE_IN_TEN / _FOUR_IN_FIVE
    low, high = found.low / found.likely, found.high / found.likely
    return (found.likely * low**reach, found.likely, found.likely * high**reach)


def _rule(share: float, sizes: Sizes) -> str:
    typical = "1,500 ft²" if sizes.us else "139 m²"
    return f"{share:.2f} times the hours of a floor of {typical}"


def _of(task: str, ends: Three, rule: str, rank: Rank, source: str = "") -> TaskHours:
    at = source or (OUR_GUESS if rank is Rank.GUESS else PRACTICE)
    return TaskHours(WORDS[task], *ends, rule, rank.value, at, task)
