"""A job of two rooms, planned once, with its stains told in one way or another."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.job import Coat, Stain
from farwall.job.acid_day.ground import Ground
from farwall.job.plan_job import plan_job

EARTH = Stain(
    id="earth", name="earth", hcl_percent_low=10, hcl_percent_high=10, density_kg_l=1.15,
    chromate=False,
)  # fmt: skip
COATS = (Coat(id="first", stain="earth", cut="1:1"), Coat(id="second", stain="earth", cut="1:2"))


@cache
def planned():
    """A plan of both coats."""
    told = job(TWO_ROOMS, stains=(EARTH,), coats=COATS)
    return told, plan_job(told)


def ground(*, stain=EARTH, **more):
    """The same plan beside other facts: none of these moves a band."""
    told, plan = planned()
    return Ground(replace(told, stains=(stain,), **more), plan)
