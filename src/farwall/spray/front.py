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

import heapq
import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely

from farwall.spray.lattice import FAR_M, Bools, Floats, Ints, Lattice
from farwall.spray.world import BODY_M

STEP_M = 0.21
CELLS_A_BAND = 4
"""Lattice steps in the depth of a band, at least."""
_MOST_PLACES = 1200
_TIGHT = 0.25
"""By so much of a step a stand may lie nearer to a wall than a body: places lie where they lie."""
_SIDES = 2
_LEFT_OUT_M2 = 0.1
_BALL = 1.1
_HALF_BALL = 0.9
_RIM = 0.8
FROM_BEYOND = 0.9
"""So far from the way out, in band depths, floor is sprayed from beyond it. Rank: guess; the
wand reaches farther (`tools.reach_m`)."""
_FINE_RIM = 7
_EVEN = 1e-4
RINGS = "rings"
"""The name of the sweep in rings about the way out."""
_HAIR = 1e-9
_BESIDE_M = 1e-3
"""Walks that differ by less are equally long: they carry the rounding of many sums."""


@dataclass(frozen=True)
class Ball:
    """For each place those within 1.1 band depths that it sees (itself fills up), and how far."""

    depth_m: float
    there: Ints
    away_m: Floats


@dataclass(frozen=True)
class Ground:
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
    def stands(self) -> Stands:
        """Where a body may stand."""
        return stands_of(self.lattice, self.out_m)


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


def ball_of(lattice: Lattice, depth_m: float) -> Ball:
    """Who sees whom within 1.1 `depth_m`."""
    reach = max(_BALL * depth_m / lattice.grid.step_m, 1.0)
    ones, twos = [], []
    for dx, dy in _offsets(reach):
        there = _shifted(lattice, dx, dy)
        here = np.flatnonzero(there >= 0)
        ones.append(here)
        twos.append(there[here])
    one, two = np.concatenate(ones), np.concatenate(twos)
    seen = lattice.clear(one, two)
    return _table(lattice, depth_m, one[seen], two[seen])


def _offsets(reach: float) -> list[tuple[int, int]]:
    """Half of the steps in a ball: those of its rim, and eight rays within.

    Of a fine rim every other one; of a coarse one all, or fronts that lie
    askew to the lattice look up to 15 % shorter than they are.
    """
    far = int(reach)
    rim = _RIM * reach
    every = 2 if reach >= _FINE_RIM else 1
    return [
        (dx, dy)
        for dx in range(far + 1)
        for dy in range(-far, far + 1)
        if (dx > 0 or dy > 0)
        and np.hypot(dx, dy) <= reach
        and ((np.hypot(dx, dy) >= rim and (dx + dy) % every == 0) or _on_ray(dx, dy))
    ]


def _on_ray(dx: int, dy: int) -> bool:
    """Whether a step is the first or a second one, or every other after, in eight directions."""
    straight = dx == 0 or dy == 0 or abs(dx) == abs(dy)
    return straight and (max(dx, abs(dy)) <= 2 or max(dx, abs(dy)) % 2 == 1)


def _shifted(lattice: Lattice, dx: int, dy: int) -> Ints:
    columns, rows = lattice.grid.size
    column, row = lattice.column + dx, lattice.row + dy
    inside = (column < columns) & (row >= 0) & (row < rows)
    found = np.full(len(lattice), -1)
    found[inside] = lattice.index[column[inside], row[inside]]
    return found


def _table(lattice: Lattice, depth_m: float, one: Ints, two: Ints) -> Ball:
    count = len(lattice)
    here = np.concatenate([one, two])
    there = np.concatenate([two, one])
    order = np.argsort(here, kind="stable")
    here, there = here[order], there[order]
    many = np.bincount(here, minlength=count)
    first = np.concatenate([[0], np.cumsum(many)[:-1]])
    table = np.repeat(np.arange(count)[:, None], max(1, int(many.max(initial=0))), axis=1)
    table[here, np.arange(len(here)) - first[here]] = there
    gap = lattice.xy[table] - lattice.xy[:, None, :]
    return Ball(depth_m, table, np.hypot(gap[..., 0], gap[..., 1]))


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
    _, group = np.unique(np.round(late / grain), return_inverse=True)
    floor = np.bincount(group, weights=lattice.area_m2)
    return np.asarray((np.cumsum(floor) - floor / 2)[group])


def equivalent_front_m(before_m2: Floats, ground: Ground) -> float:
    """E of a sweep given by the floor sprayed before each place. [m]

    Half a step before the places that come first nothing has been sprayed, and
    half a step beyond those that come last all of the floor.
    """
    ball, floor_m2 = ground.ball, float(ground.lattice.floor.area)
    first = before_m2 <= before_m2.min() + _EVEN * floor_m2
    last = before_m2 >= before_m2.max() - _EVEN * floor_m2
    if (first & last).any():
        return floor_m2 / ball.depth_m
    done = np.where(last, floor_m2, np.where(first, 0.0, before_m2))
    on_m = np.where(first | last, ground.lattice.grid.step_m / 2, 0.0)
    away_m = ball.away_m + on_m[ball.there] + on_m[:, None]
    return max(_steepest(ball, before_m2, ball.away_m), _steepest(ball, done, away_m))


def _steepest(ball: Ball, sprayed_m2: Floats, away_m: Floats) -> float:
    span = np.abs(sprayed_m2[ball.there] - sprayed_m2[:, None])
    return float((span / np.maximum(away_m, ball.depth_m)).max(initial=0.0))


def sprayed_before(lattice: Lattice, late: Floats) -> Floats:
    """The floor sprayed before each place when the sweep runs by `late`. [m2]

    Each place is spread over the lateness that it spans, so that a row of
    places that come together counts as the strip of floor that it is.
    """
    beside = late[lattice.near]
    half = np.maximum(beside.max(axis=1) - late, late - beside.min(axis=1)) / 2 + _HAIR
    ends = np.concatenate([late - half, late + half])
    pace = lattice.area_m2 / (2 * half)
    order = np.argsort(ends, kind="stable")
    ends = ends[order]
    rate = np.cumsum(np.concatenate([pace, -pace])[order])
    floor = np.concatenate([[0.0], np.cumsum(rate[:-1] * np.diff(ends))])
    return np.asarray(np.interp(late, ends, floor))


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
        return late
    value = late[stands.under].min(axis=1)
    if not bool(((value[stands.near].max(axis=1) > value + _HAIR) | stands.at_exit).all()):
        value = _flooded(stands, value, _EVEN * max(float(np.ptp(late)), _HAIR))
    given = np.full(len(late), -np.inf)
    given[stands.places] = value
    most = given[ground.in_reach].max(axis=1)
    beyond = ground.out_m <= FROM_BEYOND * ground.ball.depth_m
    most[np.isneginf(most) | beyond] = np.inf
    return np.asarray(np.minimum(np.minimum(late, most), late[ground.at_exit].max()))


def _flooded(stands: Stands, wanted: Floats, step: float) -> Floats:
    near, want = stands.near_list, wanted.tolist()
    given = [-np.inf] * len(want)
    queue = []
    for place in np.flatnonzero(stands.at_exit).tolist():
        given[place] = want[place]
        queue.append((-want[place], place))
    heapq.heapify(queue)
    push, pop = heapq.heappush, heapq.heappop
    done = [False] * len(want)
    while queue:
        _, here = pop(queue)
        if done[here]:
            continue
        done[here] = True
        most = given[here] - step
        for there in near[here]:
            if not done[there]:
                wish = want[there]
                value = wish if wish < most else most
                if value > given[there]:
                    given[there] = value
                    push(queue, (-value, there))
    return np.array(given)


def body_gets_everywhere(ground: Ground) -> bool:
    """Whether a body that comes in by the exit has a stand within reach of all the floor."""
    stands = ground.stands
    if not len(stands.places):
        return False
    level = _flooded(stands, np.zeros(len(stands.places)), 0.0)
    reached = np.zeros(len(ground.lattice), dtype=bool)
    reached[stands.places] = ~np.isneginf(level)
    for _ in range(2):
        reached = np.asarray(reached[ground.in_reach].any(axis=1))
    return bool(ground.lattice.area_m2[~reached].sum() <= _LEFT_OUT_M2)


@dataclass(frozen=True)
class Stands:
    """Where a body may stand: places, those under the body, stands beside, those at the exit."""

    places: Ints
    under: Ints
    near: Ints
    at_exit: Bools

    @cached_property
    def near_list(self) -> list[list[int]]:
        """For each stand those beside it, as plain numbers."""
        return [list(dict.fromkeys(row)) for row in self.near.tolist()]


def stands_of(lattice: Lattice, out_m: Floats) -> Stands:
    """All stands of a field; the one nearest to the way out is at it."""
    places = np.flatnonzero(lattice.off_wall_m >= BODY_M - lattice.grid.step_m * _TIGHT)
    number = np.full(len(lattice), -1)
    number[places] = np.arange(len(places))
    beside = number[lattice.near[places]]
    beside = np.where(beside >= 0, beside, np.arange(len(places))[:, None])
    under = np.column_stack([places, lattice.near[places][:, : 2 * _SIDES]])
    away = out_m[places]
    near_exit = float(away.min(initial=FAR_M)) + lattice.grid.step_m / 4
    return Stands(places, under, beside, away <= near_exit)


@dataclass(frozen=True)
class Starts:
    """Plain ways to sweep a field, each as a lateness: straight, about the way out, from a corner.

    Straight ones and those along the wall of the way out come first: their
    bands are the easiest to find on a bare floor.
    """

    ground: Ground

    @cached_property
    def _across(self) -> tuple[Floats, Floats]:
        lattice = self.ground.lattice
        angle = lattice.grid.angle
        along = np.array([np.cos(angle), np.sin(angle)])
        return lattice.xy @ along, lattice.xy @ np.array([-along[1], along[0]])

    def plain(self) -> list[tuple[str, Floats]]:
        """Along the wall of the way out, straight four ways, and in rings about the way out."""
        found = [("wall", -self.ground.wall_m)] if self.ground.wall_m is not None else []
        for axis, line in zip("uv", self._across, strict=True):
            found += [
                (f"straight {sign}{axis}", late)
                for sign, late in (("", line), ("-", -line))
                if self._toward_exit(late)
            ]
        return [*found, (RINGS, -self.ground.out_m)]

    def _toward_exit(self, late: Floats) -> bool:
        """Whether most of the floor comes before the exit."""
        return float(np.median(late)) <= float(late[self.ground.at_exit].max()) + _HAIR

    def leaning(self) -> list[tuple[str, Floats]]:
        """From each corner of the field's box, and straight ones, leaning to the way out."""
        out = self.ground.out_m
        found = []
        for corner in self._corners():
            from_here = self._from(corner)
            found += [
                (f"corner {corner} {lean}", from_here - lean * out) for lean in (0, 0.5, 1, 2)
            ]
        for axis, line in zip("uv", self._across, strict=True):
            for sign in (1, -1):
                found += [
                    (f"leaning {axis} {sign} {lean}", sign * line - lean * out)
                    for lean in (0.5, 1.0)
                ]
        return found

    def _corners(self) -> list[int]:
        u, v = self._across
        picks = [int(np.argmin(a * u + b * v)) for a in (1, -1) for b in (1, -1)]
        far = int(np.argmax(np.round(self.ground.out_m, 6)))
        return list(dict.fromkeys([*picks, far]))

    def _from(self, place: int) -> Floats:
        start = np.full(len(self.ground.lattice), FAR_M)
        start[place] = 0.0
        return self.ground.lattice.walks_from(start)


def levelled(ground: Ground, starts: Sequence[Front], *, rounds: int) -> Front:
    """The best sweep found by levelling `starts`: none steeper than need be, all floor reached.

    Alternating projection: A is replaced by the mean of the steepest and the
    least steep sweep that lie within slope B of it everywhere, then put back
    to area{A < a} = a and kept walkable; B is lowered by 3 % whenever it is
    reached. Not proved to find the best: the bound beside it says how far off
    it may be.
    """
    before = np.stack([front.before_m2 for front in starts])
    fronts = list(starts)
    best = min(starts, key=lambda front: front.equivalent_m)
    steep = np.array([front.equivalent_m for front in starts]) * _LOWER
    idle = 0
    for _ in range(rounds):
        around = _within_slope(ground.ball, np.concatenate([before, -before]), np.tile(steep, 2))
        middle = (around[: len(fronts)] - around[len(fronts) :]) / 2
        idle += 1
        for number, late in enumerate(middle):
            front = front_of(ground, late, "levelled")
            before[number] = front.before_m2
            if front.equivalent_m < best.equivalent_m * _BETTER:
                best, idle = front, 0
            reached = front.equivalent_m * _LOWER
            easier = min(steep[number] * _EASE, reached)
            steep[number] = easier if front.equivalent_m > steep[number] else reached
        if idle >= _IDLE:
            break
    return best


_LOWER = 0.97
_BETTER = 0.998
_IDLE = 8
_EASE = 1.003
_HOPS = 30
_SETTLED = 1e-3


def _within_slope(ball: Ball, rows: Floats, steep: Floats) -> Floats:
    """The least of each row at any place plus `steep` a metre from there, in hops of a ball."""
    hop_m = np.maximum(ball.away_m, _HALF_BALL * ball.depth_m)
    climb = (steep[:, None, None] * hop_m[None]).astype(np.float32)
    near = rows.astype(np.float32)
    enough = _SETTLED * float(np.ptp(near))
    for _ in range(_HOPS):
        lower = np.minimum(near, (near[:, ball.there] + climb).min(axis=2))
        if float((near - lower).max()) < enough:
            break
        near = lower
    return np.asarray(lower, dtype=float)
