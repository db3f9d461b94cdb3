"""What a price costs: ten thousand draws, and a whole house with its offers, in processor time.

python bench/pricing.py: the invented house of `farwall demo`.
"""

from __future__ import annotations

import argparse
import json
import time
from importlib.resources import files

from farwall.facts.job import Prices
from farwall.facts.prices import CallBacks
from farwall.job.office import OfficeGround, office_of
from farwall.job.plan_job import plan_job
from farwall.price.chances import call_backs
from farwall.price.costs import Reckoning, costs_of
from farwall.price.goods import allowances
from farwall.price.hours import Sizes, hours_of_sizes
from farwall.price.risk import DRAWS, outcome
from farwall.price.usual import rates_used
from farwall.readers.job_json import job_from

TIMES = 20


def main() -> None:
    """Measure and tell."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--once", action="store_true")
    times = 1 if parser.parse_args().once else TIMES
    sizes = Sizes(area_m2=139.4, wall_m=165.0, coat_min=(50.0, 50.0))
    costs = costs_of(
        Reckoning(
            hours_of_sizes(sizes), allowances(sizes, stain_l=20.0), (6, 7, 9),
            rates_used(Prices()), call_backs(CallBacks()),
        )
    )  # fmt: skip
    outcome(costs)
    begun = time.process_time()
    for _ in range(times):
        outcome(costs)
    spent = 1e3 * (time.process_time() - begun) / times
    print(f"{DRAWS} draws with what drives them: {spent:.0f} ms")
    text = files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8")
    job = job_from(json.loads(text), "the invented house")
    ground = OfficeGround(job, plan_job(job))
    begun = time.process_time()
    office_of(ground)
    print(
        f"a house with its offers: {1e3 * (time.process_time() - begun):.0f} ms, plan not counted"
    )


if __name__ == "__main__":
    main()
