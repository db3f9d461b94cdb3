"""Jobs of two rooms of round figures, planned once each, for the lines of quantities."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job, row

from farwall.facts.job import Coat, Crew, Stain
from farwall.job.office import OfficeGround
from farwall.job.office.masking import masked_of
from farwall.job.office.quantities import quantities_of
from farwall.job.plan_job import plan_job

STAINS = (
    Stain("earth", "earth", hcl_percent_low=10, hcl_percent_high=10, density_kg_l=1.15,
          chromate=False, lots=("E-1",)),
    Stain("slate", "slate", hcl_percent_low=8, hcl_percent_high=10, density_kg_l=1.2,
          chromate=False),
)  # fmt: skip
COATS = (Coat("first", "earth", "1:1", m2_per_l=4.5), Coat("second", "slate", "1:2", m2_per_l=7.5))
FACTS = {"stains": STAINS, "coats": COATS, "crew": Crew(1, helper=True)}


@cache
def planned():
    """Two rooms of 12 m², two coats."""
    told = job(TWO_ROOMS, **FACTS)
    return told, plan_job(told)


def ground(*, van=None, **more):
    """The same plan beside other facts that move no band."""
    told, plan = planned()
    return OfficeGround(replace(told, **more), plan, van=van)


@cache
def of_rooms(*widths, depth=3.0):
    """Rooms in a row, planned on their own."""
    told = job(row(*widths, depth=depth), **FACTS)
    return OfficeGround(told, plan_job(told))


def lines(of):
    """Its lines by their ids."""
    return {one.id: one for one in quantities_of(of, masked_of(of)).lines}


def warnings(of):
    """What stands against its list."""
    return quantities_of(of, masked_of(of)).warnings
