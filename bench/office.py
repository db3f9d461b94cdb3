"""How long a moment of a floor takes the office: drawn anew each time, processor milliseconds.

python bench/office.py: the invented house of `farwall demo`, 400 minutes of its plan.
"""

from __future__ import annotations

import json
import time
from importlib.resources import files

import numpy as np

from farwall.job.plan_job import plan_job
from farwall.readers.job_json import job_from
from farwall.web.pages.moment import floor_at
from farwall.web.pages.shown import Shown

MOMENTS = 400


def main() -> None:
    text = files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8")
    job = job_from(json.loads(text), "the invented house")
    shown = Shown(job, plan_job(job), 1, ())
    last = max(field.end_min for field in shown.plan.fields)
    spent, size = [], []
    for minute in np.linspace(0.0, last, MOMENTS):
        begun = time.process_time()
        size.append(len(floor_at(shown, float(minute))))
        spent.append(1e3 * (time.process_time() - begun))
    half, most = np.percentile(spent, [50, 95])
    print(f"{MOMENTS} moments: {half:.0f} ms at the median, {most:.0f} at p95, {max(spent):.0f} at")
    print(f"worst; {np.median(size) / 1e3:.0f} KB at the median, {max(size) / 1e3:.0f} at most")


if __name__ == "__main__":
    main()
