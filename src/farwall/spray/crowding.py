"""Fronts that no sweep can undercut, from floor that crowds about one place.

In k hops of w to 1.1 w from a place A changes by no more than E times the walk
(`span_m`). So a place about which much floor lies within a short walk needs a
long front, and all the more one that must come after that floor:

1. The way out comes last: all floor within a walk r of it was sprayed before.
2. A cut between some floor and the way out: the last body to cross it leaves
   all floor beyond, but for what is reached from this side, sprayed before.
3. Any place: the floor about it comes within as much before it or after.

Proofs, and what they assume, are in docs/spraying.md. Rank: derived here.
"""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np
import shapely

from farwall.nouns import dataclass
from farwall.spray.front import FROM_BEYOND, Ground
from farwall.spray.lattice import FAR_M, Bools, Floats, Ints, Lattice, lattice_of
from farwall.spray.walks import all_walks, parts_of, walk_graph
from farwall.spray.world import BODY_M

if TYPE_CHECKING:
    from scipy.sparse import csr_matrix

HOP = 1.1
"""The longest hop that E is told by, in band depths (`ball`)."""
_DIAGONAL = 0.7072
_BIN_M = 0.01
_HAIR = 1e-9
_MOST_PLACES = 6000
_WIDEST_CUT = 400


def span_m(walk_m: Floats, depth_m: float) -> Floats:
    """By how much A can change over a walk of this length, for each metre of E. [m]"""
    hops = np.maximum(1.0, np.floor(walk_m / depth_m + _HAIR))
    even = walk_m <= HOP * hops * depth_m
    up = np.ceil(walk_m / depth_m - _HAIR) * depth_m
    return np.where(even, np.maximum(walk_m, depth_m), up)


def crowding(walk_m: Floats, area_m2: Floats, depth_m: float) -> Floats:
    """For each row of walks the most floor within a walk over what A changes by there. [m]"""
    top = int(np.ceil(min(float(walk_m[walk_m < FAR_M].max(initial=0.0)), FAR_M) / _BIN_M)) + 1
    number = np.minimum(np.ceil(np.minimum(walk_m, FAR_M) / _BIN_M - _HAIR), top + 1).astype(int)
    rows = len(walk_m)
    flat = (number + (top + 2) * np.arange(rows)[:, None]).ravel()
    weights = np.broadcast_to(area_m2, walk_m.shape).ravel()
    floor = np.bincount(flat, weights=weights, minlength=rows * (top + 2)).reshape(rows, top + 2)
    within = np.cumsum(floor, axis=1)[:, : top + 1]
    return np.asarray(
        (within / span_m(np.arange(top + 1, dtype=float) * _BIN_M, depth_m)).max(axis=1)
    )


def crowding_m(ground: Ground, depth_m: float) -> float:
    """The best of the three bounds. [m]"""
    floor = _Floor.of(ground, depth_m)
    return max(exit_last_m(ground, depth_m, finer=True), _about_any(floor), _cut_off(floor))


def about_any_m(ground: Ground, depth_m: float) -> float:
    """Floor about whichever place it crowds most about, sprayed before or after it. [m]"""
    return _about_any(_Floor.of(ground, depth_m))


def cut_off_m(ground: Ground, depth_m: float) -> float:
    """The best bound by a cut at some walk from the way out. [m]"""
    return _cut_off(_Floor.of(ground, depth_m))


@dataclass(frozen=True)
class _Floor:
    """A field with the walks between all of its places."""

    ground: Ground
    depth_m: float
    graph: csr_matrix
    walk_m: Floats

    @classmethod
    def of(cls, ground: Ground, depth_m: float) -> _Floor:
        graph = walk_graph(ground.lattice)
        return cls(ground, depth_m, graph, _straightened(ground.lattice, all_walks(graph)))

    @property
    def own_m(self) -> float:
        """From the middle of a place to its farthest corner."""
        return _DIAGONAL * self.ground.lattice.grid.step_m

    @cached_property
    def stand(self) -> Bools:
        """Whether a body may stand on each place."""
        stand = np.zeros(len(self.ground.lattice), dtype=bool)
        stand[self.ground.stands.places] = True
        return stand

    @cached_property
    def served(self) -> Bools:
        """Floor within reach of a stand."""
        return np.asarray(self.stand[self.ground.in_reach].any(axis=1))


def _about_any(floor: _Floor) -> float:
    area_m2 = floor.ground.lattice.area_m2
    return float(crowding(floor.walk_m + floor.own_m, area_m2, floor.depth_m).max()) / 2


def _straightened(lattice: Lattice, walk_m: Floats) -> Floats:
    """The walks, straight between places of one convex middle of a room. [m]"""
    for number in np.unique(lattice.core[lattice.core >= 0]):
        mine = np.flatnonzero(lattice.core == number)
        gap = lattice.xy[mine][:, None] - lattice.xy[mine]
        walk_m[np.ix_(mine, mine)] = np.hypot(gap[..., 0], gap[..., 1])
    return walk_m


def exit_last_m(ground: Ground, depth_m: float, *, finer: bool = False) -> float:
    """Floor about the way out, whichever place beside it comes last. [m]

    finer: on a lattice twice as fine where that is not too large, which leaves out less.
    """
    lattice, walk_m = _walks_of_last(ground, finer=finer)
    return float(crowding(walk_m, lattice.area_m2, depth_m).min())


def walks_to_last(ground: Ground) -> tuple[Lattice, Floats]:
    """A finer lattice and, for all floor of each of its places, the longest walk to it from
    whichever place beside the way out comes last. [m]"""
    lattice, walk_m = _walks_of_last(ground, finer=True)
    return lattice, np.asarray(walk_m.max(axis=0))


def _walks_of_last(ground: Ground, *, finer: bool) -> tuple[Lattice, Floats]:
    """Walks to all floor of each place, a row for each place beside the way out. [m]"""
    last, lattice = np.flatnonzero(ground.at_exit), ground.lattice
    if finer and 4 * len(lattice) <= _MOST_PLACES:
        lattice = lattice_of(lattice.floor, lattice.pieces, lattice.grid.step_m / 2)
        walk_m = _walks_about(ground.lattice, last, lattice)
    else:
        start = np.full((len(last), len(lattice)), FAR_M)
        start[np.arange(len(last)), last] = 0.0
        walk_m = lattice.walks_from(start)
    beyond = ground.lattice.grid.step_m / 2 + _DIAGONAL * lattice.grid.step_m
    return lattice, walk_m + beyond


def _walks_about(of: Lattice, places: Ints, fine: Lattice) -> Floats:
    """Walks from places of one lattice to those of another over the same floor: straight where
    they see each other, else by way of places close by. [m]"""
    graph = walk_graph(fine)
    shapely.prepare(fine.floor)
    found = np.full((len(places), len(fine)), FAR_M)
    for row, place in enumerate(of.xy[places]):
        straight = np.hypot(*(fine.xy - place).T)
        ends = np.stack([np.broadcast_to(place, fine.xy.shape), fine.xy], axis=1)
        seen = np.asarray(shapely.covers(fine.floor, shapely.linestrings(ends)))
        found[row, seen] = straight[seen]
        near = np.flatnonzero(seen & (straight <= 2 * of.grid.step_m))
        if len(near):
            by = (all_walks(graph, near) + straight[near, None]).min(axis=0)
            found[row] = np.minimum(found[row], by)
    return found


def _cut_off(floor: _Floor) -> float:
    ground, step = floor.ground, floor.ground.lattice.grid.step_m
    best = 0.0
    for cut_m in np.arange(BODY_M + 2 * step, float(ground.out_m.max()), step):
        for part in parts_of(floor.graph, ground.out_m >= cut_m):
            if float(ground.lattice.area_m2[part].sum()) > best * floor.depth_m:
                best = max(best, _beyond(floor, part, float(cut_m)))
    return best


def _beyond(floor: _Floor, part: Ints, cut_m: float) -> float:
    """The bound by the floor of one part beyond a cut: by its own last floor, by the last body."""
    out_m, step = floor.ground.out_m, floor.ground.lattice.grid.step_m
    reach_m = FROM_BEYOND * floor.depth_m + floor.own_m
    served = part[floor.served[part]]
    own_last = part[out_m[part] <= cut_m + reach_m + step]
    inner = served[out_m[served] > cut_m + reach_m]
    return max(_after(floor, own_last, served), _after(floor, _beside(floor, part, cut_m), inner))


def _after(floor: _Floor, last: Ints, before: Ints) -> float:
    """The bound when one of some places comes after all of some floor; 0 if it is not worth it."""
    if not 0 < len(last) <= _WIDEST_CUT or not len(before):
        return 0.0
    rows = floor.walk_m[np.ix_(last, before)] + 2 * floor.own_m
    area_m2 = floor.ground.lattice.area_m2[before]
    return float(crowding(rows, area_m2, floor.depth_m).min())


def _beside(floor: _Floor, part: Ints, cut_m: float) -> Ints:
    """Places under a body that stands on the cut before `part`."""
    lattice = floor.ground.lattice
    step = lattice.grid.step_m
    under = np.zeros(len(lattice), dtype=bool)
    near = part[floor.ground.out_m[part] <= cut_m + 3 * step]
    under[near[floor.stand[near]]] = True
    for _ in range(int(np.ceil(BODY_M / step))):
        under[lattice.near[under].ravel()] = True
    return np.flatnonzero(under)
