"""What a book's closed jobs teach, made in a process of its own: plain values in and out."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import field
from typing import Any

from farwall.errors import FarwallError
from farwall.facts.closed import ClosedJob
from farwall.facts.lessons import Lessons
from farwall.nouns import dataclass

Json = dict[str, Any]
MOST_STEPS = 12
"""Ranges that are drawn of one lesson. Rank: guess."""


@dataclass(frozen=True)
class How:
    """How it is learned: half-lives in jobs or months, jobs left out, lessons switched off."""

    forget_jobs: float | None = None
    forget_months: float | None = None
    without: tuple[str, ...] = ()
    off: tuple[str, ...] = field(default=())


def closed_of(told: Sequence[tuple[str, Json, Json, Sequence[Json]]]) -> list[Json | str]:
    """Closed jobs as plain values, or why one teaches nothing. told: id, facts, plan, entries."""
    return [_closed(*one) for one in told]


def _closed(job: str, facts: Json, plan: Json, kept: Sequence[Json]) -> Json | str:
    from farwall.facts.plain import plain
    from farwall.job.closed import closed_job
    from farwall.job.story import story
    from farwall.readers.job_json import job_from
    from farwall.readers.kept_json import kept_from
    from farwall.readers.plan_json import plan_from

    try:
        planned = plan_from(plan, f"the plan of {job}")
        entries = [kept_from(one) for one in kept]
        told = story(planned, entries)
        found = closed_job(job_from(facts, job), planned, told, job_id=job, kept=entries)
    except FarwallError as error:
        return f"{job} teaches nothing: {error}"
    return plain(found, omit_empty=True)  # type: ignore[return-value]


def taught(closed: Sequence[Json], how: Mapping[str, Any]) -> Json:
    """`lessons` of these jobs as `farwall learn` has them, and `steps`: their ranges job by job.

    Raises Refused for what is no closed job.
    """
    from farwall.facts.plain import plain
    from farwall.readers.lessons_json import closed_from

    jobs = list(closed_from(list(closed), "the book"))
    asked = How(
        how.get("forget_jobs"), how.get("forget_months"), tuple(how.get("without", ())),
        tuple(how.get("off", ())),
    )  # fmt: skip
    lessons = learned(jobs, asked)
    return {"lessons": plain(lessons), "steps": steps_of(jobs, asked)}


def learned(jobs: Sequence[ClosedJob], how: How) -> Lessons:
    """The lessons; names and jobs that are no more are passed over."""
    from dataclasses import replace

    from farwall.learn.forgetting import Forgetting
    from farwall.learn.lessons import lessons_of, switched_off

    ids = {one.id for one in jobs}
    found = lessons_of(
        jobs, forgetting=Forgetting(how.forget_jobs, how.forget_months),
        without=[one for one in how.without if one in ids],
    )  # fmt: skip
    known = {one.name for one in found.lessons} | {one.what for one in found.lessons}
    off = [one for one in how.off if one in known]
    return replace(found, lessons=switched_off(found.lessons, off))


def steps_of(jobs: Sequence[ClosedJob], how: How) -> list[Json]:
    """After how many jobs, the last of which, the range of every lesson then.

    `ranges`: by name low, likely, high, own_low, own_high.
    """
    kept = sorted((one for one in jobs if one.id not in how.without),
                  key=lambda one: (one.closed_on, one.id))  # fmt: skip
    found = []
    for count in counts_of(len(kept)):
        own = How(how.forget_jobs, how.forget_months)
        lessons = learned(kept[:count], own).lessons
        ranges = {one.name: [one.low, one.likely, one.high, one.own_low, one.own_high]
                  for one in lessons}  # fmt: skip
        last = kept[count - 1]
        found.append({"jobs": count, "job": last.name or last.id, "ranges": ranges})
    return found


def counts_of(jobs: int) -> list[int]:
    """After which numbers of jobs a range is shown: the first few, then ever further apart."""
    found: list[int] = []
    step = 1.0
    while round(step) < jobs and len(found) < MOST_STEPS - 1:
        found.append(round(step))
        step = max(step + 1, step * max(1.45, (jobs / 3) ** (1 / (MOST_STEPS - 3))))
    return [*found, jobs] if jobs else []
