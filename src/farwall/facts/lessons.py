"""Lessons: what closed jobs taught, each with its range, its jobs and what each of them moved."""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Gt, MaxLen, MinLen

from farwall.nouns import dataclass

LESSONS_VERSION = 1

_Word = Annotated[str, MinLen(1), MaxLen(200)]
_NotNegative = Annotated[float, Ge(0)]


@dataclass(frozen=True)
class JobShare:
    """One job's part in a lesson.

    share: weight of this job in the likely value, beside that of common practice and of the
    other jobs; all of them add up to 1. moved_by: what it moved the likely value by, away from
    common practice: per cent (as a factor, so that they multiply), or steps or points of per cent
    where the unit of the lesson is such.
    """

    job: _Word
    share: float
    moved_by: float


@dataclass(frozen=True)
class Lesson:
    """One quantity: what the next job will likely show, and what it rests on.

    what: the kind of quantity · of: which part of it, from wide to narrow; empty for the whole
    firm · low, likely, high: the next job's value lies within four times in five · own_low,
    own_high: the same of the quantity itself, without a job's own chance · spread: between
    jobs, as a standard deviation of the logarithm, or in the unit where that is steps ·
    spread_percent, field_share: where it is of litres, what the gate is to be given
    (`mix.thirst`) · practice: what common practice says · jobs: how many told of just this ·
    weight: what all jobs behind it count for after forgetting · on: False when switched off.
    """

    name: _Word
    what: _Word
    unit: str
    low: float
    likely: float
    high: float
    own_low: float
    own_high: float
    spread: _NotNegative
    practice: float
    jobs: Annotated[int, Ge(0)]
    weight: _NotNegative
    rank: str
    source: str
    of: tuple[str, ...] = ()
    spread_percent: float | None = None
    field_share: float | None = None
    shares: tuple[JobShare, ...] = ()
    on: bool = True


@dataclass(frozen=True)
class SignWeight:
    """How much a kind of sign weighs for the cause of a call-back, with its range of four in five.

    weight: doublings of the odds of a cause that it speaks for · guess: what was taken before ·
    call_backs: how many closed ones told of it.
    """

    kind: _Word
    weight: _NotNegative
    low: _NotNegative
    high: _NotNegative
    guess: _NotNegative
    call_backs: Annotated[int, Ge(1)]
    rank: str
    source: str


@dataclass(frozen=True)
class Lessons:
    """All lessons of a firm. until: date of the last job · forgetting by jobs or by months · signs:
    weights of the signs of call-backs."""

    version: Literal[1]
    jobs: Annotated[int, Ge(0)] = 0
    until: str = ""
    forget_jobs: Annotated[float, Gt(0)] | None = None
    forget_months: Annotated[float, Gt(0)] | None = None
    without: tuple[str, ...] = ()
    lessons: tuple[Lesson, ...] = ()
    signs: tuple[SignWeight, ...] = ()

    def named(self, name: str) -> Lesson:
        """The lesson of that name; KeyError when there is none."""
        for one in self.lessons:
            if one.name == name:
                return one
        raise KeyError(name)

    def find(self, what: str, *of: str) -> Lesson | None:
        """The narrowest lesson of this kind that is on and whose parts are the first of `of`.

        None when no job told of any: common practice then stands as it is.
        """
        known = {one.of: one for one in self.lessons if one.what == what and one.on}
        for length in range(len(of), -1, -1):
            found = known.get(of[:length])
            if found is not None and found.weight > 0:
                return found
        return None


def learned_from(jobs: int) -> str:
    """`learned from 3 jobs`: the source of a learned figure."""
    return f"learned from {jobs} {'job' if jobs == 1 else 'jobs'}"
