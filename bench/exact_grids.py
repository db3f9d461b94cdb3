"""How far the planner's sweeps are from the exact least front, on floors of at most 64 cells.

The shapes of the bench cut into cells, and drawn polyominoes (`tests/spray/grid_cases.py`, frozen).
Like beside like: the planner's plain and levelled sweeps on the same cells, step = band depth, no
body, against CP-SAT proved to the optimum (group `oracle`). E in cells; cells know four sides, so a
walk askew counts up to sqrt 2 times its true length and E of a cell floor is no E of a real one.
Wanted: at least 95 % proved.
"""

import statistics
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.spray.cells import bound_of, planned  # noqa: E402
from tests.spray.exact_cells import least_front  # noqa: E402
from tests.spray.grid_cases import grid_cases  # noqa: E402

ONCE = "--once" in sys.argv
SECONDS = 60.0

if __name__ == "__main__":
    ratios, above, proved, told = {"plain": [], "levelled": []}, [], 0, 0
    for number, (name, floor) in enumerate(grid_cases()):
        if ONCE and number % 16:
            continue
        told += 1
        plain, best = planned(floor, levelling=False), planned(floor)
        start = time.process_time()
        least = least_front(floor, best, seconds=SECONDS)
        seconds = time.process_time() - start
        proved += least.proved
        widths = {"plain": floor.width_of(plain), "levelled": floor.width_of(best)}
        if least.proved:
            above.append(least.high / bound_of(floor))
            for way, width in widths.items():
                ratios[way].append(width / least.high)
        exact = f"{least.high:3}" if least.proved else f"{least.low}-{least.high}"
        print(
            f"{name:<28} {len(floor):3} cells  bound {bound_of(floor):5.2f}  exact {exact:>5}  "
            f"plain {widths['plain']:3}  levelled {widths['levelled']:3}  {seconds:6.1f} s",
            flush=True,
        )
    print(f"\nproved {proved} of {told} ({100 * proved / told:.0f} %)")
    for way, found in ratios.items():
        met = sum(one < 1 + 1e-9 for one in found)
        print(
            f"{way:<9} over exact: median {statistics.median(found):.2f}, mean "
            f"{statistics.mean(found):.2f}, worst {max(found):.2f}; met {met} of {len(found)}"
        )
    print(f"exact over the growth bound: median {statistics.median(above):.2f}, "
          f"from {min(above):.2f} to {max(above):.2f}")  # fmt: skip
