"""How long ten thousand drawn days of the invented house take. Wanted: half a second of a core."""

import statistics
import sys
import time
from pathlib import Path

import farwall.job.day_drawn as drawing
from farwall.job.chances import chances_of
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parent.parent
TIMES = 1 if "--once" in sys.argv else 9


def main() -> None:
    seconds: list[float] = []
    told = {}

    def timed(*args, **kwargs):
        for _ in range(TIMES):
            start = time.process_time()
            told["chances"] = chances_of(*args, **kwargs)
            seconds.append(time.process_time() - start)
        return told["chances"]

    drawing.chances_of = timed
    plan_job(read_job(ROOT / "examples/sorrel-rise/job.json"))
    found = told["chances"]
    print(
        f"{found.days} days of sorrel-rise, {len(found.edge_dies)} fields: "
        f"{statistics.median(seconds):.2f} s ({min(seconds):.2f}-{max(seconds):.2f}, "
        f"{len(seconds)} runs), processor time"
    )


if __name__ == "__main__":
    main()
