"""How planning many jobs grows: so many invented houses of 3 to 5 rooms by one worker and by more.

    .venv/bin/python bench/many.py              100 houses, one worker, then every processor
    .venv/bin/python bench/many.py 1000         so many

Pages are left out, as a count of houses is about plans. Wanted: two workers at least 1.8 times one.
"""

import sys
import time

from timing import ONCE

from farwall.bench.generator import house_of
from farwall.cli.many.nouns import How, OneJob
from farwall.cli.many.workers import pool, processors
from farwall.readers.job_json import job_to_text


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
        f"{len(asked):>6} houses, {workers} workers: {took:8.1f} s, "
        f"{len(asked) / took:6.2f} a second ({counts})",
        flush=True,
    )
    return took


if __name__ == "__main__":
    told = [int(word) for word in sys.argv[1:] if word.isdigit()]
    asked = jobs(2 if ONCE else (told or [100])[0])
    most = processors()
    one, all_ = seconds(asked, 1), seconds(asked, most)
    print(f"{most} workers: {one / all_:.2f} times one")
