"""What a job's log lacks before it is closed, and what it teaches as it stands."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from farwall.errors import FarwallError
from farwall.facts.job import Job
from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan, PlanCoat
from farwall.job.live.stained import stained
from farwall.job.story.noun import Story
from farwall.web.words import said


def lacks(plan: Plan, story: Story) -> Iterator[str]:
    """What was not entered, a sentence each; nothing of it keeps a job from being closed."""
    coats = {one.coat: one for one in story.coats}
    judged = {one.text("coat") for one in story.of("coat-judged")}
    for coat in _laid(plan, story):
        told, number = coats.get(coat.id), numbered(plan, coat.id)
        whole = told is not None and told.end_min is not None
        if not whole:
            yield said("log-lacks-coat", coat=number)
        elif told is not None and told.used_l is None:
            yield said("log-lacks-used", coat=number)
        if whole and coat.id not in judged:
            yield said("log-lacks-judged", coat=number)
    if not story.of("neutralised"):
        yield said("log-lacks-neutralised")
    if not any(
        one.text("rag") == "clean" or one.number("ph") is not None for one in story.of("rinsed")
    ):
        yield said("log-lacks-rinsed")
    if not story.of("sealed"):
        yield said("log-lacks-sealed")
    if not story.hours_h:
        yield said("log-lacks-hours")
    if not story.sightings:
        yield said("log-lacks-waits")


def _laid(plan: Plan, story: Story) -> Sequence[PlanCoat]:
    """The coats that are to be told of: up to the one that the log says was the last."""
    coats, ended = plan.inputs.coats, stained(plan, story)
    last = next((n for n, one in enumerate(coats) if ended and one.id == ended.coat), None)
    return coats if last is None else coats[: last + 1]


def teaches(job: Job, plan: Plan, story: Story, *, job_id: str) -> str:
    """What `farwall learn` would take from it, in a sentence."""
    from farwall.job.closed import closed_job

    try:
        found = closed_job(job, plan, story, job_id=job_id)
    except FarwallError as error:
        return str(error)
    told = (
        ("log-teaches-sprayed", len(found.sprayed)),
        ("log-teaches-waits", len(found.waits)),
        ("log-teaches-hours", len({one.task for one in found.hours})),
        ("log-teaches-colour", len(found.colour)),
    )
    parts = [said(key, n=n) for key, n in told if n]
    return said("log-teaches", what=", ".join(parts)) if parts else said("log-teaches-nothing")
