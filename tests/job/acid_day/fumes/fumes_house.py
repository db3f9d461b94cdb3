"""An invented house of two rooms, planned once for all tests of its fumes."""

from dataclasses import replace
from functools import cache
from pathlib import Path

from farwall.facts.contents import Content
from farwall.facts.job import Coat, Job, Site, Stain
from farwall.facts.plan import Plan
from farwall.job.acid_day.fumes import Fumes, fumes_of
from farwall.job.acid_day.ground import Ground
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parents[4]
STAIN = Stain("umber", hcl_percent_low=8.0, hcl_percent_high=12.0, chromate=False)
BARE = (Content("manganese(II) chloride", 15.0, 15.0),)


@cache
def planned() -> tuple[Job, Plan]:
    job = read_job(ROOT / "examples" / "thistle-end" / "job.json")
    job = replace(
        job,
        starts_at="2026-06-23T08:00:00-05:00",  # both coats on one day
        stains=(STAIN,),
        coats=(Coat("first", "umber", "1:1"), Coat("second", "umber", "1:2")),
        site=Site(house="shut", fans=0),
    )
    return job, plan_job(job)


def fumes(**changed: object) -> Fumes:
    """The fumes with facts changed that leave the plan as it is."""
    job, plan = planned()
    return fumes_of(Ground(replace(job, **changed), plan))  # type: ignore[arg-type]


def stained(**changed: object) -> Fumes:
    """With another stain of the same name."""
    return fumes(stains=(replace(STAIN, **changed),))  # type: ignore[arg-type]


def peak(found: Fumes) -> float:
    """The greatest likely ppm of any room."""
    return max(one.peak_ppm.likely for one in found.rooms)
