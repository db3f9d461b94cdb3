"""Closed jobs in, lessons out. Pure.

lessons_of(jobs)                       all that they teach
lessons_of(jobs, without=("elm-14",))  one left out
lessons_of(jobs, off=("spray rate",))  one switched off: told, and not put to work
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date

from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.facts.closed import ClosedJob
from farwall.facts.lessons import JobShare, Lesson, Lessons
from farwall.learn import kinds
from farwall.learn.call_back_signs import sign_weights
from farwall.learn.forgetting import Forgetting
from farwall.learn.kinds import KINDS, Kind
from farwall.learn.quantiles import GATE_POINT, normal, reach, student
from farwall.learn.rates import call_backs
from farwall.learn.spreads import gate_field_variance, spread_lessons
from farwall.learn.told import Told, told_of
from farwall.learn.tree import Fit, fit
from farwall.mix.need import log_variance
from farwall.nouns import dataclass

HIGH = 0.9
"""Ranges hold four times in five, as those of the clocks do."""
SHARED = 0.04
"""What jobs share (a season, a habit) and no number of them averages out, in spreads between jobs:
a guess, kept after the tuning half of the bench."""
LEAST_SHARE = 5e-4
"""Jobs that weigh less than this are not written beside a lesson."""


@dataclass(frozen=True)
class _Taught:
    """One kind with all that jobs told of it."""

    kind: Kind
    told: Sequence[Told]
    counts: Mapping[str, float]
    fit: Fit


def lessons_of(
    jobs: Sequence[ClosedJob],
    *,
    forgetting: Forgetting = Forgetting(),  # noqa: B008
    off: Sequence[str] = (),
    without: Sequence[str] = (),
) -> Lessons:
    """All that closed jobs teach. Their order does not matter; their dates do when forgetting.

    off: names of lessons, or of kinds, that are told but not put to work. without: ids of jobs
    left out. Raises Refused for a job told twice, a date that is none, and for names and ids
    that nothing bears.
    """
    _insist_jobs(jobs, without)
    kept = sorted(
        (one for one in jobs if one.id not in without), key=lambda one: (one.closed_on, one.id)
    )
    counts = forgetting.counts(kept)
    told: dict[str, list[Told]] = {}
    for job in kept:
        for what, each in told_of(job).items():
            told.setdefault(what, []).extend(each)
    fields = gate_field_variance(kept, counts)
    found: list[Lesson] = []
    for what, kind in KINDS.items():
        if what in told:
            found.extend(_lessons(taught(kind, told[what], counts), fields))
    found.extend(spread_lessons(kept, counts))
    if kept:
        found.append(call_backs(kept, counts))
    return Lessons(
        version=1,
        jobs=len(kept),
        until=kept[-1].closed_on if kept else "",
        forget_jobs=forgetting.jobs,
        forget_months=forgetting.months,
        without=tuple(sorted(without)),
        lessons=switched_off(found, off),
        signs=sign_weights(kept, counts),
    )


def switched_off(lessons: Sequence[Lesson], names: Sequence[str]) -> tuple[Lesson, ...]:
    """The same lessons, those of these names or kinds switched off. Refused for unknown ones."""
    known = {one.name for one in lessons} | {one.what for one in lessons}
    mistakes = [
        Mistake("--off", f"there is no lesson “{name}”.", "`farwall learn` names them all.")
        for name in names
        if name not in known
    ]
    if mistakes:
        raise Refused(*mistakes)
    return tuple(
        replace(one, on=one.name not in names and one.what not in names) for one in lessons
    )


def taught(kind: Kind, told: Sequence[Told], counts: Mapping[str, float]) -> _Taught:
    """The belief in one kind after what jobs told of it."""
    found = fit(
        [kind.seen(one.value) for one in told],
        [one.path for one in told],
        kind.prior,
        counts=[counts[one.job] for one in told],
        unended=[one.unended for one in told],
    )
    return _Taught(kind, told, counts, found)


def _lessons(taught: _Taught, fields: float) -> Iterator[Lesson]:
    rows = {path: row for row, path in enumerate(taught.fit.paths)}
    for path, row in sorted(rows.items()):
        yield _lesson(taught, row, path, fields)


def _lesson(taught: _Taught, row: int, path: tuple[str, ...], fields: float) -> Lesson:
    kind, found = taught.kind, taught.fit
    middle, own = float(found.mean[row]), float(found.own[row]) + SHARED**2
    below = sum((one / kind.prior.job) ** 2 for one in kind.prior.parts[len(path) :])
    wide = found.scale * math.sqrt(1 + own + below)
    next_one = reach(HIGH, found.degrees) * wide
    itself = student(HIGH, found.degrees) * found.scale * math.sqrt(own)
    here = [one for one in taught.told if one.path[: len(path)] == path]
    jobs = {one.job for one in here}
    litres = kind.what in kinds.COVERAGE or kind.what in kinds.CONSUMPTION
    lean = max(middle, 0.0) if kind.what in kinds.CONSUMPTION else 0.0
    gate = (lean + reach(GATE_POINT, found.degrees) * wide) / normal(GATE_POINT)
    return Lesson(
        name=": ".join((kind.what, ", ".join(path))) if path else kind.what,
        what=kind.what,
        of=path,
        unit=kind.unit,
        low=kind.told(middle - next_one),
        likely=kind.told(middle),
        high=kind.told(middle + next_one),
        own_low=kind.told(middle - itself),
        own_high=kind.told(middle + itself),
        spread=found.scale,
        practice=kind.told(kind.prior.mean),
        jobs=len(jobs),
        weight=math.fsum(taught.counts[job] for job in sorted(jobs)),
        rank=Rank.LEARNED.value,
        source=f"learned from {len(jobs)} {'job' if len(jobs) == 1 else 'jobs'}",
        spread_percent=_percent(gate**2 + fields) if litres else None,
        field_share=fields / (gate**2 + fields) if litres else None,
        shares=_shares(taught, row),
    )


def _percent(variance: float) -> float:
    """The spread in per cent whose logarithm has this variance; the reverse of `log_variance`."""
    found = 100 * math.sqrt(math.expm1(variance))
    assert math.isclose(log_variance(found), variance, rel_tol=1e-9)
    return found


def _shares(taught: _Taught, row: int) -> tuple[JobShare, ...]:
    """What each job weighs and moved; of a job that told of several parts, all together."""
    kind = taught.kind
    sums: dict[str, tuple[float, float]] = {}
    for one, share in zip(taught.told, taught.fit.shares[row], strict=True):
        weighs, moved = sums.get(one.job, (0.0, 0.0))
        off = kind.seen(one.value) - kind.prior.mean
        sums[one.job] = (weighs + float(share), moved + float(share) * off)
    return tuple(
        JobShare(job, weighs, 100 * math.expm1(moved) if kind.scale == "factor" else moved)
        for job, (weighs, moved) in sums.items()
        if weighs >= LEAST_SHARE
    )


def _insist_jobs(jobs: Sequence[ClosedJob], without: Sequence[str]) -> None:
    mistakes = []
    seen: set[str] = set()
    for number, job in enumerate(jobs):
        if job.id in seen:
            mistakes.append(
                Mistake(f"job {number + 1}", f"“{job.id}” is told twice.", "Tell each job once.")
            )
        seen.add(job.id)
        try:
            date.fromisoformat(job.closed_on)
        except ValueError:
            what = f"“{job.closed_on}” is no date."
            mistakes.append(Mistake(f"{job.id}.closed_on", what, "Write it as 2027-05-14."))
    mistakes += [
        Mistake("--without", f"there is no job “{one}”.", f"There are: {', '.join(sorted(seen))}.")
        for one in without
        if one not in seen
    ]
    if mistakes:
        raise Refused(*mistakes)
