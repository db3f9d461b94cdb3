"""Lessons that are spreads: how rooms of one floor differ in a wait, fields of a coat in thirst."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from farwall.air.learned import Spread
from farwall.air.waits import OPEN_TIME, OPEN_TIME_SPREAD, WAITS
from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.closed import ClosedJob
from farwall.facts.lessons import JobShare, Lesson
from farwall.learn.quantiles import GATE_POINT, normal, reach, variance
from farwall.learn.told import field_offs, room_offs
from farwall.learn.within import Within, within
from farwall.mix.need import log_variance
from farwall.mix.thirst import FIELD_SHARE

ROOMS = "rooms of one floor: "
FIELDS = "fields of one coat"

CLOCK_SPREADS: dict[str, Spread] = {
    OPEN_TIME: OPEN_TIME_SPREAD,
    **{name: wait.spread for name, wait in WAITS.items()},
}

_GUESSED_FIELD_SD = math.sqrt(FIELD_SHARE * log_variance(table.SPREAD_SAMPLED_PERCENT.usual))


def gate_field_variance(jobs: Sequence[ClosedJob], counts: Mapping[str, float]) -> float:
    """Variance of the logarithm of what a field takes about its coat, as the gate is given it."""
    found = _fields(jobs, counts)
    return (found.sd * reach(GATE_POINT, 2 * found.a) / normal(GATE_POINT)) ** 2


def spread_lessons(jobs: Sequence[ClosedJob], counts: Mapping[str, float]) -> Iterator[Lesson]:
    """One lesson for each spread that any job told of."""
    fields = _fields(jobs, counts)
    if fields.shares:
        yield _lesson(FIELDS, fields, _GUESSED_FIELD_SD, counts)
    for clock, spread in CLOCK_SPREADS.items():
        offs = {
            job.id: [(found, len(found) - 1.0)] for job in jobs if (found := room_offs(job, clock))
        }
        if offs:
            yield _lesson(ROOMS + clock, within(offs, spread.room, counts), spread.room, counts)


def _fields(jobs: Sequence[ClosedJob], counts: Mapping[str, float]) -> Within:
    offs = {job.id: found for job in jobs if (found := field_offs(job))}
    return within(offs, _GUESSED_FIELD_SD, counts)


def _lesson(name: str, found: Within, guess: float, counts: Mapping[str, float]) -> Lesson:
    low, high = (math.sqrt(variance(share, found.a, found.b)) for share in (0.1, 0.9))
    jobs = len(found.shares)
    return Lesson(
        name=name,
        what=name,
        unit="spread of ln",
        low=low,
        likely=found.sd,
        high=high,
        own_low=low,
        own_high=high,
        spread=found.sd,
        practice=guess,
        jobs=jobs,
        weight=math.fsum(counts[job] for job in found.shares),
        rank=Rank.LEARNED.value,
        source=f"learned from {jobs} {'job' if jobs == 1 else 'jobs'}",
        shares=tuple(
            JobShare(job, share, 100 * share * (square / guess**2 - 1))
            for job, (share, square) in found.shares.items()
        ),
    )
