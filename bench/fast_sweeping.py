"""Walks on a grid: fast sweeping (with and without numba) beside marching by scikit-fmm.

Same floors, same cells, same run, warm: the best of several runs in processor seconds, and how far
the walks are off the exact ones (chains of corners). Wanted: no longer than marching, no farther
off. What is not installed is said and left out: numba is the extra `fast`, scikit-fmm the
dependency group `rival`.
"""

import sys
import time
from importlib.util import find_spec
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

import numpy as np  # noqa: E402
from tests.spray.walk_floors import WALLS, cut, off_m  # noqa: E402

from farwall.spray.fast_sweeping import walks_on_grid  # noqa: E402

ONCE = "--once" in sys.argv
CELLS = (64,) if ONCE else (64, 128, 256, 512, 1024)
LINES_UP_TO = 256
"""Without numba it takes seconds above."""


def best(way, times):
    way()
    seconds = []
    for _ in range(times):
        start = time.process_time()
        walks = way()
        seconds.append(time.process_time() - start)
    return min(seconds), walks


def row(walls, cells, order):
    of = cut(walls, cells)
    times = 3 if ONCE else 9
    ways = {}
    if find_spec("skfmm"):
        import skfmm

        phi = np.ma.MaskedArray(of.to_round_m, ~of.free & (of.to_round_m >= 0))
        ways["marching"] = lambda: np.ma.filled(
            skfmm.distance(phi, dx=of.step_m, order=order), np.inf
        )
    for name, compiled in (("sweeping", True), ("by lines", False)):
        if (not compiled and cells <= LINES_UP_TO) or (compiled and find_spec("numba")):
            ways[name] = lambda compiled=compiled: (
                walks_on_grid(of.free, of.start_m, of.step_m, order=order, compiled=compiled).metres
            )
    told, found = [], {}
    for name, way in ways.items():
        seconds, metres = best(way, 1 if name == "by lines" else times)
        mean, most = off_m(walls, of, metres)
        found[name] = seconds, mean, most
        told.append(f"{name} {1e3 * seconds:8.2f} ms, off {1e3 * mean:6.2f} / {1e3 * most:6.2f} mm")
    ratio = ""
    if {"marching", "sweeping"} <= found.keys():
        one, other = found["sweeping"], found["marching"]
        ratio = f"  time {one[0] / other[0]:.2f}, mean off {one[1] / other[1]:.2f}"
    print(f"{walls:<6} {cells:5}² cells, order {order}:  " + "  |  ".join(told) + ratio)


if __name__ == "__main__":
    for module, extra in (("numba", "extra `fast`"), ("skfmm", "group `rival`")):
        if not find_spec(module):
            print(f"{module} is not installed ({extra}): left out")
    for walls in WALLS:
        for cells in CELLS:
            for order in (1, 2):
                row(walls, cells, order)
