"""How near sweeps come to what is possible: peak ages beside their bounds, on invented houses.

For every field of the first coat of some houses that are always the same:
- peak age x rate / depth over the bound: 1 would be a field that no swept order can better,
  walks, overlap and refills included in the age, so that it is always a little more;
- the front of the strips in order (equivalent front) over the bound: without walks and refills;
- the age as told in the plan over front x depth / rate: what bands, walks and overlap add.
Fields with a refill inside are told apart. Nothing is asserted; figures are printed.
"""

import statistics
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.strategies.houses import house  # noqa: E402  (the path comes first)

from farwall.errors import Unanswerable  # noqa: E402
from farwall.job.plan_job import plan_job  # noqa: E402
from farwall.readers.job_json import job_from  # noqa: E402

HOUSES = 4 if "--once" in sys.argv else 40


def ratios() -> tuple[dict[str, list[float]], list[int]]:
    """The three ratios of every field with more than one band, by name; houses without a plan."""
    found: dict[str, list[float]] = {}
    unplanned = []
    for seed in range(HOUSES):
        try:
            plan = plan_job(job_from(house(seed), about=f"house {seed}"))
        except Unanswerable:
            unplanned.append(seed)
            continue
        rate = plan.inputs.tools.spray_m2_min
        for field in plan.fields:
            if field.coat != plan.inputs.coats[0].id or len(field.bands) < 2 or not field.band_m:
                continue
            inside = [r for r in field.refills if r.at_min > field.start_min]
            kind = "with a refill inside" if inside else "without a refill inside"
            front_age = field.equivalent_front_m * field.band_m / rate
            found.setdefault(f"age x rate / depth over bound, {kind}", []).append(
                field.peak_age_min * rate / field.band_m / field.bound_m
            )
            found.setdefault("equivalent front over bound", []).append(
                field.equivalent_front_m / field.bound_m
            )
            found.setdefault(f"age over front x depth / rate, {kind}", []).append(
                field.peak_age_min / front_age
            )
    return found, unplanned


if __name__ == "__main__":
    figures, without = ratios()
    print(f"{HOUSES} houses, first coat" + (f"; no plan for {without}" if without else ""))
    for name, values in sorted(figures.items()):
        print(
            f"{name:<58} {len(values):4} fields  median {statistics.median(values):5.2f}  "
            f"least {min(values):5.2f}  worst {max(values):5.2f}"
        )
