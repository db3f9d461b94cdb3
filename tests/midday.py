"""Days of the two example houses, planned once, and moments of them."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path

from farwall.facts.plan import Band, Plan
from farwall.facts.so_far import SoFar
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import read_job
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.check import check_plan

EXAMPLES = Path(__file__).resolve().parents[1] / "examples"
HOUSES = ("quince-street", "sorrel-rise")


@cache
def day_of(house: str) -> Plan:
    """The plan of the morning."""
    return plan_job(read_job(EXAMPLES / house / "job.json"))


@cache
def day_of_two(house: str, *, helper: bool = False) -> Plan:
    """The plan of the morning for a crew of two, with a helper or without."""
    job = read_job(EXAMPLES / house / "job.json")
    return plan_job(replace(job, crew=replace(job.crew, sprayers=2, helper=helper)))


def bands_of(plan: Plan, coat: int | None = None) -> list[Band]:
    """The bands of a coat by its number, of all coats without it, in order."""
    wanted = None if coat is None else plan.inputs.coats[coat].id
    return [b for f in plan.fields if wanted in (None, f.coat) for b in f.bands]


def band(plan: Plan, name: str) -> Band:
    """The band of that id."""
    return next(b for b in bands_of(plan) if b.id == name)


def codes(plan: Plan) -> set[str]:
    """The codes that the checker finds in a plan."""
    return {fault.code for fault in check_plan(plan_to_dict(plan))}


def after(plan: Plan, name: str, *, late_min: float = 0.0, **told: object) -> SoFar:
    """The day so far at the end of a band, or some minutes after it."""
    return SoFar(at_min=band(plan, name).end_min + late_min, done_up_to=name, **told)
