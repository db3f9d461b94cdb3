"""The waits of a sample day, by the job's own clocks.

Those of the plan where there is one, else of the facts as they stand: sheen by the open time, dry
by the wait between coats, dwell as the floor will have it, dry-down before the sealer. A slab out
of range has no clock, and the reason stands in its source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Clock, Plan
from farwall.job.colour.sample_day.nouns import Wait, WaitName
from farwall.job.lasting import lasting_of
from farwall.job.waits import Waits

_NAMES: dict[str, WaitName] = {
    "open time": "sheen",
    "dry to recoat": "dry",
    "dry to neutralise": "dry",
    "dwell": "dwell",
    "dry-down before sealing": "dry-down",
}


def waits_of(job: Job, plan: Plan | None) -> tuple[Wait, ...]:
    """The waits of every coat, by coat in the job's order. Raises Refused for a job that is none.

    What follows the last coat (dwell, dry-down) is the same for a sample of any coat: a square is
    washed and sealed as the floor will be.
    """
    settled = settle(job)
    coats = [one.id for one in settled.coats]
    found = {(one.coat, one.name): one for one in _told(job, plan)}
    last = {name: found.get((coats[-1], name)) for name in ("dwell", "dry-down")}
    made = []
    for coat in coats:
        for name in ("sheen", "dry", "dwell", "dry-down"):
            one = found.get((coat, name)) or last.get(name)
            if one is not None:
                made.append(_of_coat(one, coat))
    return tuple(made)


def _told(job: Job, plan: Plan | None) -> Iterator[Wait]:
    yield from _waits(_reckoned(job))
    if plan is not None:
        yield from _waits(plan.clocks)


def _waits(clocks: Iterable[Clock]) -> Iterator[Wait]:
    for one in clocks:
        name = _NAMES.get(one.name)
        if name is None:
            continue
        none = one.likely_min is None and one.low_min <= 0
        low_min = None if none else one.low_min
        yield Wait(one.coat, name, low_min, one.likely_min, one.high_min, one.rank, one.source)


def _reckoned(job: Job) -> Iterator[Clock]:
    """Of the facts alone: no weather, the morning's readings or the usual ones."""
    waits = Waits(lasting_of(settle(job), None))
    coats = waits.lasting.job.coats
    for one in coats:
        last = one is coats[-1]
        yield waits.open_time(one, 0.0)
        dry = waits.dry(one, 0.0, last=last)
        yield dry
        if last:
            yield from waits.after(one, 0.0, dry)


def _of_coat(one: Wait, coat: str) -> Wait:
    return Wait(coat, one.name, one.low_min, one.likely_min, one.high_min, one.rank, one.source)
