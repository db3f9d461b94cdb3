"""How honest the ranges of lessons are, on invented firms that nothing was tuned to.

After 5, 20 and 100 jobs a firm's lessons foretell the next job, and tell the quantity itself; both
are held against what is so. Then a day's mix is gated with the spread that was learned.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.bench.learn_firms import Closed, Firm, closed_jobs, firm
from farwall.facts.lessons import Lesson, Lessons
from farwall.learn.lessons import lessons_of
from farwall.learn.told import Told, told_of
from farwall.nouns import dataclass

AFTER_JOBS = (5, 20, 100)
KINDS = (
    "coverage of coat 1",
    "spray rate",
    "clock: dry to recoat",
    "clock: open time",
    "hours to mask",
    "hours to rinse",
    "rinses until clean",
    "colour against the sample",
    "call-backs",
)


@dataclass(frozen=True)
class LearnScore:
    """One kind after so many jobs, over many firms.

    next_percent: of next jobs within the range · own_percent: of firms whose true quantity lies
    in its range; None where none is defined · error, practice_error: median error of the likely
    value as learned, and as common practice has it, against the quantity itself, in per cent (steps
    for colour, points for call-backs).
    """

    what: str
    jobs: int
    firms: int
    next_percent: float | None
    own_percent: float | None
    error: float
    practice_error: float


@dataclass
class _Tally:
    next_in: list[bool]
    own_in: list[bool]
    error: list[float]
    practice: list[float]


def score_learning(
    seeds: Sequence[int], *, after: Sequence[int] = AFTER_JOBS
) -> tuple[LearnScore, ...]:
    """Every kind after each number of jobs, over the firms of these seeds."""
    found = {(what, jobs): _Tally([], [], [], []) for jobs in after for what in KINDS}
    for seed in seeds:
        one = firm(seed)
        closed = list(closed_jobs(one, count=max(after) + 1))
        for jobs in after:
            lessons = lessons_of([each.job for each in closed[:jobs]])
            _tally(one, lessons, closed[jobs], {what: found[what, jobs] for what in KINDS})
    return tuple(
        LearnScore(
            what,
            jobs,
            len(tally.error),
            _percent(tally.next_in),
            _percent(tally.own_in),
            _median(tally.error),
            _median(tally.practice),
        )
        for (what, jobs), tally in found.items()
    )


def _tally(one: Firm, lessons: Lessons, coming: Closed, found: dict[str, _Tally]) -> None:
    told = told_of(coming.job)
    for what, tally in found.items():
        each = told.get(what, [Told(coming.job.id, (), 0.0)] if what == "call-backs" else [])
        for value in each:
            lesson = lessons.find(what, *value.path)
            if lesson is None:
                continue
            if what != "call-backs" and not value.unended:
                tally.next_in.append(lesson.low <= value.value <= lesson.high)
            true = one.true_value(what, value.path)
            if true is None or lesson.of != value.path:
                continue
            tally.own_in.append(lesson.own_low <= true <= lesson.own_high)
            tally.error.append(_error(lesson, lesson.likely, true))
            tally.practice.append(_error(lesson, lesson.practice, true))


def _error(lesson: Lesson, value: float, true: float) -> float:
    if lesson.unit.startswith(("steps", "%")):
        return abs(value - true)
    return 100 * abs(value / true - 1)


def _percent(held: Sequence[bool]) -> float | None:
    return 100 * sum(held) / len(held) if held else None


def _median(values: Sequence[float]) -> float:
    return sorted(values)[len(values) // 2] if values else math.nan
