"""How long a new sample takes until the next coat is told again: gathered, refitted, weighed.

python bench/next_coat.py [--once]: the invented house of `examples/fennel-court` with its log, a
sample more each time; processor and wall milliseconds, middle and worst.
"""

from __future__ import annotations

import statistics
import sys
import time
from dataclasses import replace
from pathlib import Path

from farwall.cli.log_file import LogFile
from farwall.colour.belief import believe
from farwall.facts.samples import Look, Sample
from farwall.job.colour.asked import Asked
from farwall.job.colour.fit import colour_fit
from farwall.job.colour.next_coat import colour_next
from farwall.job.colour.seen import gathered
from farwall.job.plan_job import plan_job
from farwall.job.story import story
from farwall.readers.job_json import read_job

FOLDER = Path(__file__).parents[1] / "examples" / "fennel-court"
TIMES = 20


def main() -> None:
    """Measure and tell."""
    times = 1 if "--once" in sys.argv else TIMES
    job = read_job(FOLDER / "job.json")
    plan, kept = plan_job(job), tuple(LogFile(FOLDER).entries())
    colour_next(Asked(job, plan, kept))  # what is imported once is not counted
    refit, whole, fit = [], [], []
    for n in range(times):
        look = Look("clean wet", (44.0 + n / 100, 9.0, 13.5), error_de=0.6)
        more = Sample("more", coat="first", stain="umber", cut="1:4", m2_per_l=4.9, looks=(look,))
        now = replace(job, samples=(*job.samples, more))
        found = gathered(now, plan, kept, story(plan, kept))
        refit.append(_timed(lambda f=found: believe(f.seen, stains=len(f.stains))))
        whole.append(_timed(lambda j=now: colour_next(Asked(j, plan, kept))))
        fit.append(_timed(lambda j=now: colour_fit(Asked(j, plan, kept))))
    _tell(f"refit of {len(found.patches)} patches", refit)
    _tell("the whole verdict", whole)
    _tell("fit with every sample left out once", fit)


def _timed(work) -> tuple[float, float]:  # type: ignore[no-untyped-def]
    wall, own = time.perf_counter(), time.process_time()
    work()
    return (time.process_time() - own) * 1000, (time.perf_counter() - wall) * 1000


def _tell(what: str, found: list[tuple[float, float]]) -> None:
    own, wall = zip(*found, strict=True)
    print(
        f"{what}: {statistics.median(own):.0f} ms of the processor, worst {max(own):.0f}; "
        f"wall {statistics.median(wall):.0f}, worst {max(wall):.0f}"
    )


if __name__ == "__main__":
    main()
