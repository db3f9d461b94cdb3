"""Moments of the bench's shapes planned for two, taken up again and replayed by the checker.

.venv/bin/python bench/midday_two.py         a few shapes
.venv/bin/python bench/midday_two.py all     all of them, some minutes
"""

from __future__ import annotations

import random
import sys
from collections import Counter
from dataclasses import replace

from farwall.bench.nouns import shape_case
from farwall.bench.shapes import SHAPES
from farwall.errors import Refused, Unanswerable
from farwall.facts.plan import Plan
from farwall.facts.so_far import SoFar
from farwall.job.plan_job import plan_job
from farwall.job.replan import replan
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.check import check_plan

FEW = 6


def moment(plan: Plan, rng: random.Random, case: int) -> str:
    """One moment: on time, late, or the second gone; tanks drawn. What became of it."""
    own = sorted((b for f in plan.fields for b in f.bands), key=lambda b: b.start_min)
    one = rng.choice(own[:-1])
    told = SoFar(
        at_min=one.end_min + (0.0, 0.7, 2.0)[case],
        done_up_to=one.id,
        sprayers=1 if case == 2 else None,
        tank_l=rng.choice([None, rng.uniform(0.5, 6)]),
        tank_2_l=None if case == 2 else rng.choice([None, rng.uniform(0.5, 6)]),
    )
    try:
        again = replan(plan, told)
    except (Refused, Unanswerable):
        return "refused"
    faults = {fault.code for fault in check_plan(plan_to_dict(again))}
    said = any(field.verdict != "fits" for field in again.fields)
    if not faults:
        return "clean"
    return "edge died, and said so" if said and faults <= {"dead-edge"} else "FAULT"


def main() -> None:
    """Print how many moments came out how."""
    rng, tally = random.Random(11), Counter[str]()
    names = sorted(SHAPES)[: None if sys.argv[1:] == ["all"] else FEW]
    for number, name in enumerate(names):
        job = shape_case(SHAPES[name]).job
        crew = replace(job.crew, sprayers=2, helper=bool(number % 2))
        plan = plan_job(replace(job, crew=crew))
        if not any(band.sprayer == 2 for field in plan.fields for band in field.bands):
            tally["shapes where one sprays"] += 1
            continue
        tally.update(moment(plan, rng, case) for case in range(3))
    for word, count in sorted(tally.items()):
        print(f"{count:5d}  {word}")


if __name__ == "__main__":
    main()
