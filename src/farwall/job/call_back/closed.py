"""A call-back that was closed: what was found, held against the records of its room. Pure."""

from __future__ import annotations

from farwall.facts.closed import CallBack
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.call_back.causes import BY_ID, CAUSES
from farwall.job.call_back.noun import Sign
from farwall.job.call_back.records import RoomRecords
from farwall.job.call_back.signs import age_of
from farwall.job.call_back.triage import speaks_for
from farwall.job.story.noun import Happened, Story

_MIN_A_MONTH = 30.44 * 24 * 60


def closed_call_back(job: Job, plan: Plan, story: Story, one: Happened) -> CallBack:
    """What an entry `called-back` teaches: nothing of signs while it names no cause.

    Signs are those of the records up to now and of the months since hand-over; what the caller
    says on the telephone is not in the log.
    """
    cause = BY_ID.get(one.text("cause"))
    what, hours = one.text("what")[:80], one.number("hours")
    if cause is None:
        return CallBack(what, hours)
    signs = (*RoomRecords(job, plan, story, one.text("room")).signs(), *_age(story, one))
    others = [each for each in CAUSES if each is not cause]
    return CallBack(
        what, hours, cause.id,
        for_it={sign.kind: float(speaks_for(cause, sign)) for sign in signs},
        for_others={
            sign.kind: sum(speaks_for(each, sign) for each in others) / len(others)
            for sign in signs
        },
    )  # fmt: skip


def _age(story: Story, one: Happened) -> tuple[Sign, ...]:
    last = story.last("handed-over")
    if last is None or one.at_min < last.at_min:
        return ()
    return (Sign("when", age_of((one.at_min - last.at_min) / _MIN_A_MONTH), ""),)
