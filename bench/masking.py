"""How long the masking of a house takes: reckoned, and drawn. CPU time, printed and not asserted.

python bench/masking.py [--once]: houses of the generator with 12, 50 and 200 rooms.
"""

import sys
import time
from dataclasses import replace

from farwall.bench.generator import house_of
from farwall.facts.plan import Plan
from farwall.job.office.masking.reckon import masked_in
from farwall.job.plan_job import plan_job
from farwall.papers.masking.drawing import masking_svg


def median_ms(work, times: int) -> float:
    """Middle of several runs."""
    found = []
    for _ in range(times):
        start = time.process_time()
        work()
        found.append((time.process_time() - start) * 1000)
    return sorted(found)[len(found) // 2]


def plan_with(plan: Plan, job) -> Plan:
    """A plan whose floor is that of the job: the drawing asks no more of it."""
    floor = job.floor
    inputs = replace(
        plan.inputs,
        floor=replace(plan.inputs.floor, rooms=floor.rooms),
        openings=floor.openings,
        fixtures=floor.fixtures,
        exits=job.exits,
        saw_cuts=(),
    )
    return replace(plan, inputs=inputs)


def main() -> None:
    """Print a line a house."""
    once = "--once" in sys.argv
    plan = plan_job(house_of(3, 1).job)
    for rooms in (12,) if once else (12, 50, 200):
        job = house_of(rooms, 1).job
        masked = masked_in(job)
        here = plan_with(plan, job)
        times = 1 if once else 9
        reckoned = median_ms(lambda job=job: masked_in(job), times)
        drawn = median_ms(lambda here=here, masked=masked: masking_svg(here, masked), times)
        print(f"{rooms} rooms: reckoned in {reckoned:.0f} ms, drawn in {drawn:.0f} ms of CPU")


if __name__ == "__main__":
    main()
