"""What closed jobs tell of each kind of quantity: one figure for each job and part.

A job has one voice a part, however many fields it had: fields of one job hang together.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import TypeVar

from farwall.days.work_hours import FIXED_SHARE, TYPICAL_M2
from farwall.facts.closed import ClosedJob, ColourSeen, Sprayed, WaitSeen
from farwall.learn import kinds
from farwall.nouns import dataclass

T = TypeVar("T")

DROPS_QUICK_S, DROPS_SLOW_S = 8.0, 20.0
"""Quicker than the first a floor drinks quickly, slower than the second slowly: our guess."""
STEP_UNTOLD = 1.0
"""Steps of the sample scale where a look was off and nobody said by how much: a guess."""


@dataclass(frozen=True)
class Told:
    """What one job tells of one part. `value` in the unit of the kind; unended: it is greater."""

    job: str
    path: tuple[str, ...]
    value: float
    unended: bool = False


def told_of(job: ClosedJob) -> dict[str, list[Told]]:
    """What a job tells, by kind; kinds that it tells nothing of are left out."""
    found: dict[str, list[Told]] = defaultdict(list)
    for what, one in _all(job):
        found[what].append(one)
    return dict(found)


def drops(drop_s: float) -> str:
    """The class of a slab's thirst, by seconds that a drop takes to go in."""
    if drop_s < DROPS_QUICK_S:
        return "quick drops"
    return "slow drops" if drop_s > DROPS_SLOW_S else "usual drops"


def coverage_path(finish: str | None, drop_s: float | None) -> tuple[str, ...]:
    """Where a floor's coverage belongs: its finish, then how it drinks; short where not told."""
    if finish is None:
        return ()
    return (finish,) if drop_s is None else (finish, drops(drop_s))


def typical_share(area_m2: float) -> float:
    """Hours on this floor over those on the typical one: a fixed part, the rest by area."""
    return FIXED_SHARE + (1 - FIXED_SHARE) * area_m2 / TYPICAL_M2


def _all(job: ClosedJob) -> Iterator[tuple[str, Told]]:
    for number in (1, 2):
        coats = [one for one in job.sprayed if min(one.number, 2) == number]
        yield from _ratios(
            kinds.COVERAGE[number - 1], job.id, coats, _finish, lambda o: (o.area_m2, o.used_l)
        )
    timed = [one for one in job.sprayed if one.spray_min is not None]
    yield from _ratios(
        kinds.SPRAY_RATE, job.id, timed, _person, lambda o: (o.area_m2, o.spray_min or 1.0)
    )
    for sampled, what in zip((True, False), kinds.CONSUMPTION, strict=True):
        known = [o for o in job.sprayed if o.planned_l is not None and o.sampled is sampled]
        yield from _ratios(
            what, job.id, known, lambda _: (), lambda o: (o.used_l, o.planned_l or 1.0)
        )
    yield from _clocks(job)
    yield from _hours(job)
    yield from _rinses(job)
    plants = _by(job.colour, lambda one: (one.plant,) if one.plant else ())
    for path, seen in plants.items():
        value = math.fsum(map(_steps, seen)) / len(seen)
        yield kinds.COLOUR, Told(job.id, path, value)
    for stain in job.stains:
        for what, value in zip(kinds.STRENGTH, stain.strength, strict=True):
            yield what, Told(job.id, (stain.stain,), value)


def _ratios(
    what: str,
    job: str,
    fields: Sequence[Sprayed],
    path_of: Callable[[Sprayed], tuple[str, ...]],
    pair: Callable[[Sprayed], tuple[float, float]],
) -> Iterator[tuple[str, Told]]:
    """Sums over sums for each part: a large field says more than a closet."""
    for path, group in _by(fields, path_of).items():
        over, under = zip(*map(pair, group), strict=True)
        yield what, Told(job, path, math.fsum(over) / math.fsum(under))


def _finish(one: Sprayed) -> tuple[str, ...]:
    return coverage_path(one.finish, one.drop_s)


def _person(one: Sprayed) -> tuple[str, ...]:
    return (one.person,) if one.person else ()


def _clocks(job: ClosedJob) -> Iterator[tuple[str, Told]]:
    """A floor's factor: the geometric mean over its rooms; only unended looks tell a least one."""
    for (clock,), seen in _by(job.waits, lambda one: (one.clock,)).items():
        ended = [one for one in seen if one.ended]
        if ended:
            rooms = [_mean_ln(each) for each in _by(ended, lambda one: (one.room,)).values()]
            yield kinds.CLOCK + clock, Told(job.id, (), math.exp(math.fsum(rooms) / len(rooms)))
        else:
            least = max(one.share for one in seen)
            yield kinds.CLOCK + clock, Told(job.id, (), least, unended=True)


def _mean_ln(seen: Sequence[WaitSeen]) -> float:
    return math.fsum(math.log(_ended_at(one)) for one in seen) / len(seen)


def _ended_at(one: WaitSeen) -> float:
    """Where it ended: between the last look that found it unended and the first that did not."""
    return math.sqrt(one.since * one.share) if 0 < one.since < one.share else one.share


def room_offs(job: ClosedJob, clock: str) -> list[float]:
    """By how much rooms of this job differ from its floor, as logarithms; two rooms at least."""
    ended = [one for one in job.waits if one.clock == clock and one.ended]
    rooms = [_mean_ln(each) for each in _by(ended, lambda one: (one.room,)).values()]
    if len(rooms) < 2:
        return []
    middle = math.fsum(rooms) / len(rooms)
    return [one - middle for one in rooms]


def _hours(job: ClosedJob) -> Iterator[tuple[str, Told]]:
    coats = len({one.coat for one in job.sprayed}) or 2
    for (task,), each in _by(job.hours, lambda one: (one.task,)).items():
        if task not in kinds.TYPICAL_HOURS:
            continue
        hours = math.fsum(one.hours for one in each)
        share = typical_share(max(one.area_m2 for one in each))
        if task == "coat":
            share *= coats / 2
        yield kinds.TASK_HOURS + task, Told(job.id, (), hours / share)


def _rinses(job: ClosedJob) -> Iterator[tuple[str, Told]]:
    for path, each in _by(job.rinsed, lambda one: (one.finish,) if one.finish else ()).items():
        mean = math.fsum(math.log(one.rounds) for one in each) / len(each)
        yield kinds.RINSES, Told(job.id, path, math.exp(mean))


def _steps(one: ColourSeen) -> float:
    if one.look == "right":
        return 0.0
    off = STEP_UNTOLD if one.by_steps is None else one.by_steps
    return off if one.look == "darker" else -off


def field_offs(job: ClosedJob) -> list[tuple[list[float], float]]:
    """ln(used over planned) of each coat's fields about its coat, and how many are free of it.

    Coats of two fields at least, whose fields have been planned.
    """
    found = []
    for fields in _by(job.sprayed, lambda one: (one.coat,)).values():
        offs = [math.log(one.used_l / one.planned_l) for one in fields if one.planned_l]
        if len(offs) > 1:
            middle = math.fsum(offs) / len(offs)
            found.append(([one - middle for one in offs], len(offs) - 1.0))
    return found


def _by(each: Iterable[T], key: Callable[[T], tuple[str, ...]]) -> dict[tuple[str, ...], list[T]]:
    found: dict[tuple[str, ...], list[T]] = {}
    for one in each:
        found.setdefault(key(one), []).append(one)
    return found


__all__ = ["Told", "coverage_path", "drops", "field_offs", "room_offs", "told_of"]
