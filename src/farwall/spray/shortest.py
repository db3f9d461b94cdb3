"""The shortest walk of a body on a ground with corners: straight steps from corner to corner.

A shortest walk turns only at inner corners, and there around the corner like a
string pulled tight [lozano-perez-1979]. So of all steps only those are offered that
run along the ground's edge at both ends and bend around it; they are tried by
the length of walk that they promise, and a sight line is tested only when
its turn comes: most never do.
"""

from __future__ import annotations

import heapq

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

ON_M = 0.004
"""How far a place may lie off the ground by rounding; a body keeps that much more away."""
_HAIR = 1e-9
_MORE = 64

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]
Signs = npt.NDArray[np.int8]


@dataclass(frozen=True)
class Corners:
    """Inner corners of a ground, n x 2, and its edges there: unit vectors and their lengths."""

    places: Floats
    before: Floats
    after: Floats
    before_m: Floats
    after_m: Floats

    def only(self, number: int) -> Corners:
        """One of them."""
        here = slice(number, number + 1)
        return Corners(
            self.places[here],
            self.before[here],
            self.after[here],
            self.before_m[here],
            self.after_m[here],
        )


class Sights:
    """Who sees whom on ground before any of it is wet: who is out of sight then stays so.

    roomy: that ground, wider by `ON_M` and prepared. Answers are kept.
    """

    def __init__(self, roomy: BaseGeometry) -> None:
        self._roomy = roomy
        self._numbers: dict[Point, int] = {}
        self._rows: dict[int, Signs] = {}

    def number(self, place: Point) -> int:
        """A number for a place, the same each time."""
        return self._numbers.setdefault(place, len(self._numbers))

    def known(self, one: int) -> Signs:
        """Of each number: 1 when it is in sight of `one`, -1 when not, 0 when nobody asked yet."""
        row, many = self._rows.get(one), len(self._numbers)
        if row is None or len(row) < many:
            longer = np.zeros(many + _MORE, dtype=np.int8)
            if row is not None:
                longer[: len(row)] = row
            row = self._rows[one] = longer
        return row

    def clear(self, one: int, two: int, ends: Floats) -> bool:
        """Whether the straight line between both `ends`, of these numbers, stays on the ground."""
        row = self.known(one)
        if not row[two]:
            row[two] = 1 if shapely.covers(self._roomy, shapely.linestrings(ends)) else -1
            self.known(two)[one] = row[two]
        return bool(row[two] > 0)


def corners_of(ground: shapely.Polygon) -> Corners:
    """Corners of the ground that a walk may turn around."""
    places, before, after = [], [], []
    for index, ring in enumerate([ground.exterior, *ground.interiors]):
        xy = shapely.get_coordinates(ring)[:-1]
        if ring.is_ccw != (index == 0):
            xy = xy[::-1]
        back = np.roll(xy, 1, axis=0) - xy
        on = np.roll(xy, -1, axis=0) - xy
        inner = back[:, 1] * on[:, 0] - back[:, 0] * on[:, 1] < -_HAIR
        places.append(xy[inner])
        before.append(back[inner])
        after.append(on[inner])
    back, on = np.vstack(before), np.vstack(after)
    back_m, on_m = np.hypot(*back.T), np.hypot(*on.T)
    return Corners(np.vstack(places), back / back_m[:, None], on / on_m[:, None], back_m, on_m)


class Search:
    """One walk sought: place 0 is the start, the last one the end, between them all corners.

    roomy: the ground, wider by `ON_M` and prepared. sights: of larger ground that it is a part
    of; `numbers` are those of its corners there.
    """

    def __init__(
        self,
        roomy: BaseGeometry,
        corners: Corners,
        ends: tuple[Point, Point],
        *,
        sights: Sights | None = None,
        numbers: list[int] | None = None,
    ) -> None:
        self._roomy = roomy
        self._corners = corners
        self._places = np.vstack([ends[:1], corners.places, ends[1:]])
        self._goal = len(self._places) - 1
        away = self._places - self._places[self._goal]
        self._to_goal = np.hypot(away[:, 0], away[:, 1])
        self._sights = sights
        if sights is not None:
            around = [sights.number(ends[0]), *(numbers or ()), sights.number(ends[1])]
            self._numbers = np.array(around)
        self._closed = np.zeros(len(self._places), dtype=bool)
        self._came: dict[int, int] = {}
        self._queue: list[tuple[float, int, int]] = []
        self._steps: dict[int, tuple[list[float], list[int]]] = {}

    def walk(self) -> tuple[Point, ...] | None:
        """The shortest walk, None when there is none."""
        self._close(0, 0.0)
        while self._queue:
            promised_m, here, rank = heapq.heappop(self._queue)
            there = self._steps[here][1][rank]
            self._offer(here, rank + 1)
            if self._closed[there] or not self._sees(here, there):
                continue
            self._came[there] = here
            if there == self._goal:
                return self._traced()
            self._close(there, promised_m - float(self._to_goal[there]))
        return None

    def _traced(self) -> tuple[Point, ...]:
        path = [self._goal]
        while path[-1]:
            path.append(self._came[path[-1]])
        xy = self._places[path[::-1]].tolist()
        return tuple((x, y) for x, y in xy)

    def _sees(self, here: int, there: int) -> bool:
        ends = self._places[[here, there]]
        if self._sights is not None:
            one, two = self._numbers[[here, there]].tolist()
            if not self._sights.clear(one, two, ends):
                return False
        return bool(shapely.covers(self._roomy, shapely.linestrings(ends)))

    def _close(self, here: int, walked_m: float) -> None:
        """The shortest walk to a place is known: offer all steps onward, the best first."""
        self._closed[here] = True
        onward = self._places - self._places[here]
        step_m = np.hypot(onward[:, 0], onward[:, 1])
        offered = ~self._closed & self._taut(here, onward, step_m)
        if self._sights is not None:
            offered &= self._sights.known(int(self._numbers[here]))[self._numbers] >= 0
        there = np.flatnonzero(offered)
        promised_m = walked_m + step_m[there] + self._to_goal[there]
        order = np.argsort(promised_m, kind="stable")
        self._steps[here] = promised_m[order].tolist(), there[order].tolist()
        self._offer(here, 0)

    def _offer(self, here: int, rank: int) -> None:
        promised_m = self._steps[here][0]
        if rank < len(promised_m):
            heapq.heappush(self._queue, (promised_m[rank], here, rank))

    def _taut(self, here: int, onward: Floats, step_m: Floats) -> Bools:
        """Steps around the corners at both ends, give or take `ON_M`; start and end are none."""
        unit = onward / np.maximum(step_m, _HAIR)[:, None]
        taut = np.ones(len(onward), dtype=bool)
        left, right = _sides(unit[1:-1], step_m[1:-1], self._corners)
        taut[1:-1] = left | right
        back = self._places[here] - self._places[self._came.get(here, here)]
        back_m = np.hypot(back[:1], back[1:])
        if back_m[0] > _HAIR:  # neither the start nor a corner that it lies on
            left, right = _sides(back[None] / back_m, back_m, self._corners.only(here - 1))
            turn = (back[0] * unit[:, 1] - back[1] * unit[:, 0]) / back_m
            off_m = turn * np.minimum(step_m, back_m)
            taut &= (left & (off_m >= -ON_M)) | (right & (off_m <= ON_M))
        return taut


def _sides(unit: Floats, step_m: Floats, corners: Corners) -> tuple[Bools, Bools]:
    """Whether both edges of each corner lie left of a step to it, and whether both right."""
    edges = ((corners.before, corners.before_m), (corners.after, corners.after_m))
    one, two = (
        (unit[:, 0] * edge[:, 1] - unit[:, 1] * edge[:, 0]) * np.minimum(edge_m, step_m)
        for edge, edge_m in edges
    )
    return np.minimum(one, two) >= -ON_M, np.maximum(one, two) <= ON_M
