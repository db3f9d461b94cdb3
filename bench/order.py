"""How long the best order of fields takes, on houses drawn as tables of doors and shares.

Budgets change from hour to hour, so that the quick answer is seldom good enough and all orders are
weighed. Wanted: 16 fields under 1 s, whatever the doors; 200 fields under 5 s with a floor.
"""

import statistics
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.spray.drawn_leavings import Shape, drawn_leaving  # noqa: E402

from farwall.spray.leaving import Leaving  # noqa: E402
from farwall.spray.margins import best_order, floor_of  # noqa: E402

SEEDS = 1 if "--once" in sys.argv else 5


def nearest_last(leaving: Leaving) -> list[int]:
    return sorted(range(leaving.count), key=lambda index: -(leaving.away[index] or 0))


def timed(count: int, shape: Shape) -> None:
    seconds, gaps, exact = [], [], 0
    for seed in range(SEEDS):
        leaving = drawn_leaving(count, seed, shape=shape)
        start = time.perf_counter()
        floor = floor_of(leaving)
        found = best_order(
            leaving,
            leaving.minutes,
            [floor.order, nearest_last(leaving)],
            floor.share,
            equal_share=0.05,
        )
        seconds.append(time.perf_counter() - start)
        exact += found.exact
        gaps.append(found.least_worst - floor.share)
    print(
        f"{count:4} fields, {shape:<28} {statistics.median(seconds):6.2f} s "
        f"({min(seconds):.2f}-{max(seconds):.2f})  all weighed {exact} of {SEEDS}  "
        f"worst share above the floor {statistics.median(gaps):.3f} (at most {max(gaps):.3f})"
    )


if __name__ == "__main__":
    for count in (8, 14, 40) if "--once" in sys.argv else (8, 14, 16, 20, 40, 200):
        for shape in ("grid", "rooms about a hall", "each with a door outside"):
            timed(count, shape)
