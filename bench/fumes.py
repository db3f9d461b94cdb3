"""How long a day's fumes take: two invented houses, the larger of 12 rooms, two coats each.

Processor time from a plan in hand to every room, way and doubt; and what finer steps would change.
"""

import math
import time
from dataclasses import replace
from pathlib import Path

from timing import ONCE

from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.acid_day.fumes import fumes_of
from farwall.job.acid_day.fumes.cases import cases
from farwall.job.acid_day.fumes.course import course_of
from farwall.job.acid_day.fumes.day_of import day_of
from farwall.job.acid_day.fumes.ground_air import rooms_of
from farwall.job.acid_day.fumes.laid import laid_of, patches_of
from farwall.job.acid_day.ground import Ground
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import read_job

EXAMPLES = Path(__file__).resolve().parents[1] / "examples"


def measured(ground: Ground) -> None:
    best = math.inf
    for _ in range(1 if ONCE else 7):
        began = time.process_time()
        found = fumes_of(ground)
        best = min(best, time.process_time() - began)
    patches = len(patches_of(ground.plan, ground.job.floor.rooms))
    print(
        f"{ground.job.id}: {len(found.rooms)} rooms, {patches} patches, "
        f"{1000 * best:.0f} ms of processor time"
    )


def finer(ground: Ground) -> None:
    """The greatest likely ppm by steps of a minute and of a fifth of one."""
    settled = settle(ground.job)
    patches = patches_of(ground.plan, ground.job.floor.rooms)
    day = day_of(ground, settled, patches)
    tried = cases()
    floor = ground.job.floor
    rooms = rooms_of(floor.rooms, floor.openings, tried, day.changes_h[: len(tried)])
    where = {room.id: n for n, room in enumerate(floor.rooms)}
    laid, fate = laid_of(patches, settled, where, tried, water_m_s=day.air.water_m_s)
    for step_min in (1.0, 0.2):
        course = course_of(laid, fate, rooms, tried, day.air, step_min=step_min)
        print(
            f"  steps of {step_min:g} min: peak {course.likely.max():.2f} ppm "
            f"({course.low.max():.2f} to {course.high.max():.2f})"
        )


def planned(name: str) -> tuple[Job, Plan]:
    job = read_job(EXAMPLES / name / "job.json")
    job = replace(job, wishes=replace(job.wishes, bands="plain"))
    return job, plan_job(job)


def main() -> None:
    for name in ("thistle-end",) if ONCE else ("thistle-end", "sorrel-rise"):
        ground = Ground(*planned(name))
        measured(ground)
        finer(ground)


if __name__ == "__main__":
    main()
