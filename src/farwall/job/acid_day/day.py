"""The acid day of a job, part by part. Pure."""

from __future__ import annotations

from farwall.job.acid_day.fumes import fumes_of
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.neutralising import neutralising_of
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.people import people_of
from farwall.job.acid_day.pours import pours_of
from farwall.job.acid_day.strength import strength_of
from farwall.job.acid_day.washing import washing_of
from farwall.job.acid_day.waste import waste_of


def acid_day(ground: Ground) -> AcidDay:
    """Every part for a planned job; what nobody told stands among its warnings."""
    plan = ground.plan
    return AcidDay(
        job=plan.job,
        inputs_hash=plan.inputs_hash,
        starts_at=plan.starts_at,
        strength=strength_of(ground),
        fumes=fumes_of(ground),
        neutralising=neutralising_of(ground),
        washing=washing_of(ground),
        waste=waste_of(ground),
        people=people_of(ground),
        pours=pours_of(ground),
    )
