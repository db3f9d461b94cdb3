"""A call as facts of a house: what the rules read, and what a new house begins with."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

from farwall.facts.job import Job, Survey
from farwall.facts.slab import Covering, Hidden
from farwall.floor.from_sizes import LEAST_M, MOST_M, SizedRoom, floor_from_sizes
from farwall.job.enquiry.noun import Enquiry

STAND_IN_M2 = 100.0
"""Floor of a call that did not tell its area: a stand-in for the rules, which do not read it."""


def job_of(told: Enquiry, *, name: str = "", room: str = "Floor") -> Job:
    """One square room of the told area that stands in for the floor, and the survey as answered."""
    side = min(max(sqrt(told.area_m2 or STAND_IN_M2), LEAST_M), MOST_M)
    floor, exits = floor_from_sizes([SizedRoom("floor", room, side, side)])
    return Job(version=1, floor=floor, exits=exits, name=name, survey=survey_of(told))


def survey_of(told: Enquiry) -> Survey:
    """What a call tells of the slab, in the words of a survey; all else stays to be asked."""
    return Survey(
        slab_age_days=None if told.slab == "not poured" else told.slab_age_days,
        film=None if told.film == "unknown" else told.film,
        covering=_covering(told),
        acid_before=told.acid_before,
        pours=told.pours,
        hidden=Hidden(heating_tubes=told.heated),
        trades=told.trades,
        waste=None if told.waste == "sewer" else told.waste,
        colour_wanted=told.colour_wanted,
    )


def _covering(told: Enquiry) -> Covering | None:
    """What lies on the slab; carpet is no word of a survey, and is left to be looked at."""
    return None if told.covering == "carpet" else told.covering


def with_overlay(survey: Survey, told: Enquiry) -> Survey:
    """The same survey for a house that is kept: an overlay is what lies on a slab told as bare."""
    if told.overlay in {"leveller", "overlay"} and survey.covering in {None, "bare"}:
        return replace(survey, covering=told.overlay)
    return survey
