"""What a phone carries of the wash day, and what the book answers about it, room by room. Pure.

The phone judges a rinse by itself from what the sheet carries, as `acid/rinsing.py` does; how many
rinses are still to come it has from the book alone.
"""

from __future__ import annotations

from typing import Any

from farwall.acid.rinsing import Step
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.acid_day.washing.order import wash_order
from farwall.job.rinses import Rinses, readings_of
from farwall.job.room_areas import areas_of
from farwall.job.story.noun import Story

Json = dict[str, Any]


def washing_of(job: Job, plan: Plan) -> Json:
    """Part of the sheet: rooms in the order in which they are washed; readings of pH that each
    wants after its last rinse; what a rinsed floor is held against, None where nobody said."""
    told, sealer = job.washing, job.sealer
    return {
        "order": [room for room, _ in wash_order(plan)],
        "readings": readings_of(areas_of(plan)),
        "tap_ph": told.tap_ph, "unstained_ph": told.unstained_ph,
        "least_ph": sealer.least_ph, "most_ph": sealer.most_ph,
    }  # fmt: skip


def steps_of(job: Job, plan: Plan, story: Story) -> Json:
    """By room what it asks for next: `verdict`, `code`, `sealer`, `more` as low, likely and high
    of the rinses to come or None. Empty once the floor is sealed."""
    if story.last("sealed", "handed-over") is not None:
        return {}
    rinses = Rinses(job, plan, story)
    return {room: _step(rinses.step(room)) for room in rinses.areas}


def _step(step: Step) -> Json:
    more = step.more
    return {
        "verdict": step.verdict, "code": step.code, "sealer": step.sealer,
        "more": None if more is None else [more.low, more.likely, more.high],
    }  # fmt: skip
