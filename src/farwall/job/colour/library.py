"""What closed jobs teach of stains, and what is made of it before a sample of this job. Pure."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from farwall.colour.belief import believe, learned
from farwall.colour.dose import Form, body_of_depth, depth_of_body
from farwall.colour.prior import Prior, Strength
from farwall.facts.closed import StainSeen
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job
from farwall.facts.lessons import Lesson, Lessons
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.job.colour.seen import gathered
from farwall.job.story.noun import Story
from farwall.learn.kinds import STRENGTH

SURE = 0.4
"""A job tells of a stain where what is left unknown of it, as a logarithm, is at most so much; else
it would hand on the guess that it began with. A guess."""
SHARED = 0.7
"""Of the variance between jobs, the part that all channels share: a guess."""
_DOSE, _BODY = 0.08, 0.5
"""L/m² on a body of middling reflectance, by which one way of darkening is set beside the other."""
_END = 1.2815515655446004
"""90 % point of the standard normal."""


def stains_seen(job: Job, plan: Plan, kept: Sequence[Kept], story: Story) -> tuple[StainSeen, ...]:
    """How strong this job's patches found each stain; none where they leave it open."""
    found = gathered(job, plan, kept, story)
    if not any(found.sampled(stain) for stain in found.stains):
        return ()
    belief = believe(found.seen, stains=len(found.stains))
    told = []
    for number, stain in enumerate(found.stains):
        own = learned(belief, number)
        patches = sum(any(c.stain == stain for c in one.coats) for one in found.patches)
        if found.sampled(stain) and math.hypot(own.spread, own.channel_spread) <= SURE:
            told.append(StainSeen(_name(job, stain)[:80], own.scattering, patches))
    return tuple(told)


def prior_of(job: Job, stains: Sequence[str], lessons: Lessons | None) -> tuple[Prior, int]:
    """Beliefs before the samples, and how many closed jobs are behind them; 0: the tool's own.

    A stain is known again by its name.
    """
    if lessons is None:
        return Prior(), 0
    taught = [_taught(lessons, _name(job, stain)) for stain in stains]
    known = [one for each in taught for one in each]
    if not known:
        return Prior(), 0
    strengths = tuple(_strength(each) if each else Strength() for each in taught)
    return Prior(strengths=strengths), max(one.jobs for one in known)


def _taught(lessons: Lessons, name: str) -> tuple[Lesson, ...]:
    """Its lessons by channel; none where one of them is missing or switched off."""
    found = [
        one
        for what in STRENGTH
        for one in lessons.lessons
        if one.what == what and one.of == (name,) and one.on and one.weight > 0
    ]
    return tuple(found) if len(found) == len(STRENGTH) else ()


def _strength(taught: Sequence[Lesson]) -> Strength:
    long, middle, short = (one.likely for one in taught)
    spread = max(math.log(one.high / one.low) / 2 / _END for one in taught)
    return Strength(
        scattering=(long, middle, short),
        absorbing=(absorbing_of(long), absorbing_of(middle), absorbing_of(short)),
        spread=max(0.05, spread * math.sqrt(SHARED)),
        channel_spread=max(0.05, spread * math.sqrt(1 - SHARED)),
    )


def absorbing_of(scattering: float) -> float:
    """Optical depth a litre on a square metre that darkens a middling slab as much as this K/S."""
    body = np.array([_BODY])
    adds, dims = Form("scattering", "by share"), Form("absorbing", "by share")
    darker = body_of_depth(depth_of_body(body, adds) + scattering * _DOSE, adds)
    return float((depth_of_body(darker, dims) - depth_of_body(body, dims))[0] / _DOSE)


def _name(job: Job, stain: str) -> str:
    listed, _ = stains_and_coats(job)
    return next((one.name or one.id for one in listed if one.id == stain), stain)
