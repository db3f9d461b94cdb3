"""How long the cheapest cut takes: houses of rooms on a grid, all fields of up to five rooms.

Wanted: 200 rooms with 3000 columns under 1 s, proved; 16 rooms by dynamic programming in less.
"""

import statistics
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.spray.drawn_covers import costs_like_a_house, drawn_columns  # noqa: E402

from farwall.spray.partition import EXACT_UNITS, cheapest_cover  # noqa: E402

SEEDS = 1 if "--once" in sys.argv else 10


def timed(what: str, count: int, cap: int, *, exact_units: int = EXACT_UNITS) -> None:
    seconds, proved, columns = [], 0, 0
    for seed in range(SEEDS):
        drawn = costs_like_a_house(drawn_columns(count, seed, most=5, cap=cap), seed)
        columns = max(columns, len(drawn))
        start = time.perf_counter()
        proved += cheapest_cover(count, drawn, exact_units=exact_units).proved
        seconds.append(time.perf_counter() - start)
    print(
        f"{what:<44} {columns:6} columns  {statistics.median(seconds):7.3f} s "
        f"({min(seconds):.3f}-{max(seconds):.3f})  proved {proved} of {SEEDS}"
    )


if __name__ == "__main__":
    timed("17 rooms, HiGHS (its import included once)", 17, 3000)
    timed("14 rooms, dynamic program", 14, 3000)
    timed("16 rooms, dynamic program", 16, 3000)
    timed("16 rooms, HiGHS", 16, 3000, exact_units=0)
    timed("24 rooms, HiGHS", 24, 3000)
    timed("60 rooms, HiGHS", 60, 3000)
    timed("200 rooms, HiGHS", 200, 3000)
