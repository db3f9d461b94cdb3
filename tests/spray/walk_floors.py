"""Floors of 10 m with walls, cut into cells, and their walks told exactly: for tests and bench.

The walls lie on lines of a grid of 64 cells, so that finer grids have the same floor. Walks lead
from the rim of a round around `FROM`; a shortest one is straight or bends at corners of walls, so
the exact length is the least over chains of corners that see each other [lozano-perez-1979].
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely

SIDE_M = 10.0
FROM = (1.2, 1.1)
ROUND_M = 0.6
_UNIT = SIDE_M / 64

_DOOR = 8 * _UNIT
WALLS = {
    "open": (),
    "corner": (shapely.box(5, 0, 10, 5),),
    "comb": (
        shapely.box(2.5, 0, 2.5 + 2 * _UNIT, 10 - _DOOR),
        shapely.box(5, _DOOR, 5 + 2 * _UNIT, 10),
        shapely.box(7.5, 0, 7.5 + 2 * _UNIT, 10 - _DOOR),
    ),
}


@dataclass(frozen=True)
class Cut:
    """A floor in cells: what is floor, the signed distance to the round, and its step."""

    free: np.ndarray
    to_round_m: np.ndarray
    centres: np.ndarray
    step_m: float

    @property
    def start_m(self):
        """Exact where it is known by one look: two cells deep around the round."""
        near = self.free & (self.to_round_m < 2 * self.step_m)
        return np.where(near, self.to_round_m, np.inf)


def cut(walls, cells):
    step = SIDE_M / cells
    at = (np.arange(cells) + 0.5) * step
    centres = np.stack(np.meshgrid(at, at, indexing="ij"), axis=-1)
    blocked = np.zeros((cells, cells), dtype=bool)
    for wall in WALLS[walls]:
        blocked |= shapely.contains_xy(wall, centres[..., 0], centres[..., 1])
    to_round = np.hypot(*(np.moveaxis(centres, -1, 0) - np.array(FROM)[:, None, None])) - ROUND_M
    return Cut(~blocked & (to_round >= 0), to_round, centres, step)


def exact_m(walls, places):
    """The shortest walk from the round to each of these places, n x 2."""
    floor = shapely.difference(shapely.box(0, 0, SIDE_M, SIDE_M), shapely.union_all(WALLS[walls]))
    shapely.prepare(floor)
    corners = np.array([p for w in WALLS[walls] for p in w.exterior.coords[:-1]]).reshape(-1, 2)
    nodes = np.vstack([FROM, corners])
    apart = _seen_apart(floor, nodes, nodes)
    least = np.full(len(nodes), np.inf)
    least[0] = -ROUND_M
    for _ in nodes:
        least = np.minimum(least, (least[None, :] + apart).min(axis=1))
    return (_seen_apart(floor, places, nodes) + least[None, :]).min(axis=1)


def _seen_apart(floor, ones, others):
    ends = np.stack(np.broadcast_arrays(ones[:, None, :], others[None, :, :]), axis=2)
    seen = shapely.covers(floor, shapely.linestrings(ends))
    return np.where(seen, np.hypot(*np.moveaxis(ends[..., 0, :] - ends[..., 1, :], -1, 0)), np.inf)


def off_m(walls, of, metres, *, most=500):
    """By how much the walks are off at cells picked evenly, metres: mean and most."""
    picked = np.flatnonzero((of.free & (of.to_round_m > 2 * of.step_m)).ravel())
    picked = picked[:: max(1, len(picked) // most)]
    exact = exact_m(walls, of.centres.reshape(-1, 2)[picked])
    off = np.abs(metres.ravel()[picked] - exact)
    return float(off.mean()), float(off.max())
