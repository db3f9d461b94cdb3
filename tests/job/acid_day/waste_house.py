"""An invented house of two rooms with a stain whose sheet is known, planned once."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from tests.shapes import TWO_ROOMS

from farwall.facts.contents import Content
from farwall.facts.discharge import Discharge, OfficialWord, SewerLimits, WaterTest
from farwall.facts.job import Coat, Job, Stain, Survey
from farwall.job.acid_day.ground import Ground
from farwall.job.plan_job import plan_job

STAIN = Stain(
    "umber", name="umber", density_kg_l=1.25, chromate=False, hcl_percent_low=5,
    hcl_percent_high=10,
    contents=(
        Content("manganese(II) chloride", 10, 15), Content("iron(III) chloride", 5, 10),
        Content("copper(II) chloride", 1, 10),
    ),
)  # fmt: skip
LIMITS = SewerLimits(least_ph=5.5, most_ph=10, copper_mg_l=1.0, manganese_mg_l=4.0)
WORD = OfficialWord(
    "sewer", "Ana Poole", "Sewer district, pretreatment", "2027-04-02", True,
    "Test first, then by appointment.", LIMITS,
)  # fmt: skip
TEST = WaterTest(
    drum="1", on="2027-05-06", by="laboratory", found_ph=8.4, copper_mg_l=12, manganese_mg_l=3,
    water_l=60,
)  # fmt: skip
JOB = Job(
    1, TWO_ROOMS.floor, TWO_ROOMS.exits, name="Alder Row", starts_at="2027-05-04T07:30:00-06:00",
    survey=Survey(waste="drums"), stains=(STAIN,), coats=(Coat("c1", "umber", "1:1"),),
)  # fmt: skip


@cache
def _plan():
    return plan_job(JOB)


def ground(**told) -> Ground:
    """The house with other facts; its plan is that of one coat of the stain."""
    return Ground(replace(JOB, **told), _plan())


def asked(**told) -> Ground:
    """The house with a word of the sewer district and a tested drum."""
    return ground(discharge=Discharge((WORD,), (TEST,)), **told)
