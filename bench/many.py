"""How planning many jobs grows: so many invented houses of 3 to 5 rooms by one worker and by more.

    .venv/bin/python bench/many.py              100 houses, one worker, then every processor
    .venv/bin/python bench/many.py 1000         so many
    .venv/bin/python bench/many.py 10000 rooms  so many single small rooms, twenty times as quick

Pages are left out, as a count of houses is about plans. Wanted: two workers at least 1.8 times one.
"""

import resource
import sys
import time
from dataclasses import replace

from timing import ONCE

from farwall.bench.generator import house_of
from farwall.bench.nouns import shape_case
from farwall.bench.shapes import SHAPES
from farwall.cli.many.nouns import How, OneJob
from farwall.cli.many.workers import pool, processors
from farwall.readers.job_json import job_to_text

SMALL = ("narrow closet", "walk-in closet", "bath with tub", "small square")


def rooms(count: int) -> list[OneJob]:
    """Single small rooms, four kinds in turn, each a job of its own."""
    cases = [shape_case(SHAPES[SMALL[n % len(SMALL)]]).job for n in range(count)]
    made = (replace(job, id=f"room-{n}") for n, job in enumerate(cases))
    return [OneJob(one.id, job_to_text(one).encode(), one.id) for one in made]


def jobs(count: int) -> list[OneJob]:
    """Houses that are always the same."""
    made = (house_of(3 + n % 3, 5000 + n, name=f"house-{n}") for n in range(count))
    return [OneJob(one.name, job_to_text(one.job).encode(), one.name) for one in made]


def seconds(asked: list[OneJob], workers: int) -> float:
    """How long so many workers take for all of them, the start of the workers with it."""
    began = time.perf_counter()
    states = [one.state for one in pool(asked, How(pages=False), workers=workers)]
    took = time.perf_counter() - began
    counts = ", ".join(f"{states.count(state)} {state}" for state in sorted(set(states)))
    print(
        f"{len(asked):>6} jobs, {workers} workers: {took:8.1f} s, "
        f"{len(asked) / took:6.2f} a second ({counts}); {peak_mb():.0f} MB at most so far",
        flush=True,
    )
    return took


def peak_mb() -> float:
    """The most memory that this process or one of its workers that ended has held. [MB]"""
    kinds = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    return max(resource.getrusage(kind).ru_maxrss for kind in kinds) / 1024


if __name__ == "__main__":
    told = [int(word) for word in sys.argv[1:] if word.isdigit()]
    make = rooms if "rooms" in sys.argv[1:] else jobs
    asked = make(2 if ONCE else (told or [100])[0])
    most = processors()
    one, all_ = seconds(asked, 1), seconds(asked, most)
    print(f"{most} workers: {one / all_:.2f} times one")
