"""What the log's rooms say of pH and rag, as what is watched on the floor of a job. Pure.

What was typed into the job stands for the whole floor; a log knows it room by room, and the worst
room decides, for a sealer fails where it is worst.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

from farwall.acid.rinse_belief import Round
from farwall.acid.rinsing import LEAST_PH
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.rinses import Rinses
from farwall.job.story.noun import Story


def as_rinsed(job: Job, plan: Plan, story: Story | None) -> Job:
    """The job with pH and rag of the log's last rinses, room by room; as typed where it has none.

    Of pH the reading that lies farthest outside of what passes, else the lowest; of the rag
    `dirty` where any room's is, or where powder came off the dry floor. Where the log tells of
    rinses but not of every room, what would pass is not known yet: None, and it is asked for.
    """
    if story is None or story.last("rinsed") is None:
        return job
    rinses = Rinses(job, plan, story)
    last = [rinses.rounds(room)[-1:] for room in rinses.areas]
    watch = job.watch
    read = [one for found in last for one in found]
    if any(one.phs for one in read):
        least = min(LEAST_PH, job.sealer.least_ph or LEAST_PH)
        watch = replace(watch, rinse_ph=_ph(last, rinses.wanted.window, least))
    if any(one.rag or one.powder is not None for one in read):
        watch = replace(watch, rag=_rag(last))
    return replace(job, watch=watch)


def _ph(last: list[tuple[Round, ...]], window: tuple[float, float], least: float) -> float | None:
    """The reading that decides. While a room was not read: only one that every rule refuses."""
    low, high = window
    phs = [ph for found in last for one in found for ph in one.phs]
    worst = max(phs, key=lambda ph: (max(low - ph, ph - high, 0.0), -ph))
    whole = all(found and found[0].phs for found in last)
    return worst if whole else min(phs) if min(phs) < least else None


def _rag(last: list[tuple[Round, ...]]) -> Literal["clean", "dirty"] | None:
    rounds = [one for found in last for one in found]
    if any(one.rag in {"grey", "coloured"} or one.powder for one in rounds):
        return "dirty"
    return "clean" if all(found and found[0].rag for found in last) else None
