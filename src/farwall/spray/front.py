"""A sweep of a field before it is cut into bands: which floor is sprayed when.

`lateness` says of each place how late it comes; only its order counts. From it
follows A(x), the floor sprayed before x [m2], for which area{A < a} = a. With
R square metres a minute x is sprayed at A(x)/R, and an edge at x is met by the
next band, one depth w on, when the floor between is done. So the oldest edge
waits E w / R with

    E = max |A(x) - A(y)| / max(d(x, y), w)         the *equivalent front* [m]

the most floor that is sprayed while the front moves on by one depth, per metre
(docs/spraying.md). The lattice takes pairs that see each other up to 1.1 w
apart.
"""

from __future__ import annotations

import math
from functools import cached_property

import numpy as np
import shapely

from farwall.nouns import dataclass
from farwall.spray.ball import Ball
from farwall.spray.lattice import FAR_M, Bools, Floats, Ints, Lattice, Lean
from farwall.spray.stands import Stands, flooded, stands_of

STEP_M = 0.21
CELLS_A_BAND = 4
"""Lattice steps in the depth of a band, at least."""
_MOST_PLACES = 1200
_LEFT_OUT_M2 = 0.1
FROM_BEYOND = 0.9
"""So far from the way out, in band depths, floor is sprayed from beyond it. Rank: guess; the
wand reaches farther (`tools.reach_m`)."""
_EVEN = 1e-4
_HAIR = 1e-9
_BESIDE_M = 1e-3
"""Walks that differ by less are equally long: they carry the rounding of many sums."""


@dataclass(frozen=True)
class Ground(Lean):
    """A field's lattice with its way out.

    out_m: walk to the way out; at_exit: places beside it; wall_m: walk to the
    straight wall that the way out lies in, where there is one.
    """

    lattice: Lattice
    out_m: Floats
    at_exit: Bools
    ball: Ball
    wall_m: Floats | None = None

    @cached_property
    def in_reach(self) -> Ints:
        """For each place those within a wand's easy reach of it."""
        return np.where(
            self.ball.away_m <= FROM_BEYOND * self.ball.depth_m,
            self.ball.there,
            np.arange(len(self.lattice))[:, None],
        )

    @cached_property
    def reach_rows(self) -> Ints:
        """The same with a row for each of the nearest, second and so on: quicker to go through."""
        itself = self.in_reach == np.arange(len(self.lattice))[:, None]
        many = int((~itself).sum(axis=1).max(initial=0))
        first = np.argsort(itself, axis=1, kind="stable")[:, : many + 1]
        return np.ascontiguousarray(np.take_along_axis(self.in_reach, first, axis=1).T)

    @cached_property
    def stands(self) -> Stands:
        """Where a body may stand."""
        return stands_of(self.lattice, self.out_m)

    @cached_property
    def bounds_m(self) -> dict[float, float]:
        """Bounds of its front found so far, by the depth of a band."""
        return {}


@dataclass(frozen=True)
class Front:
    """One sweep: lateness of each place, floor sprayed before it [m2], and its equivalent front."""

    name: str
    late: Floats
    before_m2: Floats
    equivalent_m: float
    astray_m: float = 0.0
    """How far from the exit floor lies on the average, late floor counting more. [m]"""


def ground_of(
    lattice: Lattice,
    ball: Ball,
    exit_line: shapely.LineString,
    *,
    beside: int,
    wall: shapely.LineString | None = None,
) -> Ground:
    """The field with its way out over `exit_line` (and its wall), on piece number `beside`."""
    mine = lattice.owner == beside
    out_m, at_exit = _walks_to(lattice, exit_line, mine)
    wall_m = None if wall is None else _walks_to(lattice, wall, mine)[0]
    return Ground(lattice, out_m, at_exit, ball, wall_m)


def step_for(floor_m2: float, band_m: float) -> float:
    """The lattice step: three make a body's width and more, four at most a band. [m]

    A band is a whole number of steps deep, so that places lie just as far apart:
    a straight front is seen in full by them, and by none that lie nearer.
    """
    fine = max(min(band_m / CELLS_A_BAND, STEP_M), float(np.sqrt(floor_m2 / _MOST_PLACES)))
    return band_m / max(1, math.ceil(band_m / fine - _HAIR))


def _walks_to(lattice: Lattice, line: shapely.LineString, mine: Bools) -> tuple[Floats, Bools]:
    """Walks to a line, and the places next to it, which all lie on one piece."""
    away = np.asarray(shapely.distance(shapely.points(lattice.xy), line))
    away[~mine] = FAR_M
    reach = max(1.2 * lattice.grid.step_m, float(away.min()) + 0.01) + _BESIDE_M
    beside = away <= reach
    return lattice.walks_from(np.where(beside, away, FAR_M)), beside


def front_of(ground: Ground, late: Floats, name: str) -> Front:
    """The sweep in the order of `late`, changed only where somebody would be shut in."""
    even = _evened(ground.lattice, kept_walkable(ground, late))
    before = sprayed_before(ground.lattice, even)
    share = before * ground.lattice.area_m2
    astray = round(float((share * ground.out_m).sum() / max(float(share.sum()), _HAIR)), 4)
    return Front(name, even, before, equivalent_front_m(before, ground), astray)


def _evened(lattice: Lattice, late: Floats) -> Floats:
    """Lateness told in floor sprayed: the same order, as steep where it was next to flat. [m2]"""
    grain = _EVEN * max(float(np.ptp(late)), _HAIR) / 100
    group = ranked(np.round(late / grain))
    floor = np.bincount(group, weights=lattice.area_m2)
    return np.asarray((np.cumsum(floor) - floor / 2)[group])


def ranked(values: Floats) -> Ints:
    """The place of each value among those that differ, in rising order from 0.

    The library's own search brings its masked arrays with it.
    """
    order = np.argsort(values)
    rising = values[order]
    ranks = np.empty(len(values), dtype=np.int64)
    ranks[order] = np.cumsum(np.concatenate([[0], rising[1:] != rising[:-1]]))
    return ranks


def equivalent_front_m(before_m2: Floats, ground: Ground) -> float:
    """E of a sweep given by the floor sprayed before each place. [m]

    Half a step before the places that come first nothing has been sprayed, and
    half a step beyond those that come last all of the floor.
    """
    pairs, floor_m2 = ground.ball.pairs, float(ground.lattice.floor.area)
    at_ends = ends_of(before_m2, ground)
    if at_ends.at_once:
        return floor_m2 / ground.ball.depth_m
    longest = float((_span(pairs.here, pairs.there, before_m2) / pairs.least_m).max(initial=0.0))
    ended = _span(at_ends.here, at_ends.there, at_ends.done_m2) / at_ends.least_m
    return max(longest, float(ended.max(initial=0.0)))


@dataclass(frozen=True)
class AtEnds:
    """Pairs of places of which one comes first or last, what has been sprayed at each then, and
    how far apart they are, ends half a step beyond."""

    here: Ints
    there: Ints
    least_m: Floats
    done_m2: Floats
    ends: Bools
    at_once: bool
    """Whether a place is both: all floor comes at once."""


def ends_of(before_m2: Floats, ground: Ground) -> AtEnds:
    """The pairs of a sweep that its first and its last floor are in."""
    pairs, floor_m2 = ground.ball.pairs, float(ground.lattice.floor.area)
    first = before_m2 <= before_m2.min() + _EVEN * floor_m2
    last = before_m2 >= before_m2.max() - _EVEN * floor_m2
    ends = first | last
    at_end = np.flatnonzero(ends[pairs.here] | ends[pairs.there])
    here, there = pairs.here[at_end], pairs.there[at_end]
    done = np.where(last, floor_m2, np.where(first, 0.0, before_m2))
    on_m = np.where(ends, ground.lattice.grid.step_m / 2, 0.0)
    away_m = pairs.away_m[at_end] + on_m[there] + on_m[here]
    least_m = np.maximum(away_m, ground.ball.depth_m)
    return AtEnds(here, there, least_m, done, ends, bool((first & last).any()))


def _span(here: Ints, there: Ints, sprayed_m2: Floats) -> Floats:
    return np.abs(sprayed_m2[there] - sprayed_m2[here])


def sprayed_before(lattice: Lattice, late: Floats) -> Floats:
    """The floor sprayed before each place when the sweep runs by `late`. [m2]

    Each place is spread over the lateness that it spans, so that a row of
    places that come together counts as the strip of floor that it is.
    """
    low, high, pace = spans_of_places(lattice, late)
    ends = np.concatenate([low, high])
    order = np.argsort(ends, kind="stable")
    ends = ends[order]
    rate = np.cumsum(np.concatenate([pace, -pace])[order])
    floor = np.concatenate([[0.0], np.cumsum(rate[:-1] * np.diff(ends))])
    return np.asarray(np.interp(late, ends, floor))


def spans_of_places(lattice: Lattice, late: Floats) -> tuple[Floats, Floats, Floats]:
    """From which to which lateness each place is sprayed, and how much floor for each of it."""
    beside = late[lattice.near_rows]
    half = np.maximum(beside.max(axis=0) - late, late - beside.min(axis=0)) / 2 + _HAIR
    return late - half, late + half, lattice.area_m2 / (2 * half)


def kept_walkable(ground: Ground, late: Floats) -> Floats:
    """`late`, lowered where a body would be shut in: dry floor a body wide leads out.

    A body stands where it is clear of walls and all floor under it is dry. A
    place may come no later than the last stand within reach that is still tied
    to the way out over other stands. Floor within reach of the way out is
    sprayed from beyond; none comes later than the way out itself.
    Source: filling of hollows by a priority queue, upside down (Barnes, Lehman
    and Mulla, Computers & Geosciences 62, 2014, algorithm 3) [barnes-2014].
    """
    stands = ground.stands
    if not len(stands.places):
        return np.asarray(np.minimum(late, late[ground.at_exit].max()))
    value = late[stands.under_rows].min(axis=0)
    if not bool(((value[stands.near_rows].max(axis=0) > value + _HAIR) | stands.at_exit).all()):
        value = flooded(stands, value, _EVEN * max(float(np.ptp(late)), _HAIR))
    given = np.full(len(late), -np.inf)
    given[stands.places] = value
    most = given[ground.reach_rows].max(axis=0)
    beyond = ground.out_m <= FROM_BEYOND * ground.ball.depth_m
    most[np.isneginf(most) | beyond] = np.inf
    return np.asarray(np.minimum(np.minimum(late, most), late[ground.at_exit].max()))


def body_gets_everywhere(ground: Ground) -> bool:
    """Whether a body that comes in by the exit has a stand within reach of all the floor."""
    stands = ground.stands
    if not len(stands.places):
        return False
    level = flooded(stands, np.zeros(len(stands.places)), 0.0)
    reached = np.zeros(len(ground.lattice), dtype=bool)
    reached[stands.places] = ~np.isneginf(level)
    for _ in range(2):
        reached = np.asarray(reached[ground.in_reach].any(axis=1))
    return bool(ground.lattice.area_m2[~reached].sum() <= _LEFT_OUT_M2)
