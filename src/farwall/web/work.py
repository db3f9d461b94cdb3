"""The slow work of a door, in a process of its own: a plan, and the rest of a day laid anew.

Plain values in, plain values out, so that it may run anywhere.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from farwall.errors import FarwallError, Refused, Unanswerable
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units

Json = dict[str, Any]


@dataclass(frozen=True)
class Made:
    """A plan as plain values with what the checker finds wrong, or why there is none."""

    document: Json | None
    faults: tuple[str, ...] = ()
    no: tuple[str, ...] = ()


def plan_of(facts: Json, job: str, lessons: Json | None = None) -> Made:
    """The plan of a job's facts, with the firm's lessons. Never raises for what they say."""
    from farwall.job.acid_day.fumes.caution import with_fumes
    from farwall.job.plan_job import plan_job
    from farwall.readers.clock_change import with_clock_change
    from farwall.readers.job_json import job_from
    from farwall.readers.plan_json import plan_to_dict
    from farwall.web.firm import lessons_in

    try:
        known = lessons_in(lessons)
        told = job_from(facts, f"The job {job}")
        plan = with_clock_change(plan_job(told, lessons=known), told)
        document = plan_to_dict(with_fumes(plan, told))
    except FarwallError as error:
        return Made(None, no=_why(error))
    return Made(document, _faults(document, us=told.wishes.units == "us"))


def rest_of(
    document: Json,
    kept: Sequence[Json],
    at_min: float,
    units: Units = "us",
    sun: tuple[float, float] | None = None,
) -> Made:
    """The rest of the day at a minute of the plan, from the entries as `web.taking` tells them.

    units: those in which the job is told what the checker finds · sun: latitude and longitude by
    which the sun sets; None: until the evening of the calendar.
    """
    from farwall.job.daylight import Daylight
    from farwall.job.live.again import so_far_of
    from farwall.job.replan import replan
    from farwall.job.story import story
    from farwall.readers.kept_json import kept_from
    from farwall.readers.plan_json import plan_from, plan_to_dict

    try:
        plan = plan_from(document, "the plan")
        told = story(plan, [kept_from(one) for one in kept])
        light = Daylight(datetime.fromisoformat(plan.starts_at), *(sun or (None, None)))
        rest = plan_to_dict(replan(plan, so_far_of(plan, told, at_min=at_min), light=light))
    except FarwallError as error:
        return Made(None, no=_why(error))
    return Made(rest, _faults(rest, us=units == "us"))


def _faults(document: Json, *, us: bool) -> tuple[str, ...]:
    from farwall.job.faults_told import faults_told
    from farwall.spray.check import check_plan

    return tuple(faults_told(document, check_plan(document), us=us))


def _why(error: FarwallError) -> tuple[str, ...]:
    if isinstance(error, Refused):
        return tuple(str(one) for one in error.mistakes)
    if isinstance(error, Unanswerable):
        return (error.reason, *error.remedies)
    return (str(error),)
