"""Everything that was measured as rows of one system: what each says, and how far it may stray.

Unknowns are the corners of all rooms (x, y) and the jambs of all openings, along their wall. Walls
and openings are told along the directions of the walk, so that their rows are linear; that leaves
out 1 - cos of an out-of-square corner, 0.04 mm in 4 m at 0.25 degrees. Diagonals are not linear.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from math import hypot, radians, tan
from typing import Literal

from farwall.floor.walk.lay import Join, Lay, unit
from farwall.floor.walk.nouns import Spread, Walk
from farwall.nouns import dataclass

Kind = Literal["wall", "diagonal", "across", "at", "width", "rest", "depth", "square", "pin"]
READ: tuple[Kind, ...] = ("wall", "diagonal", "across", "at", "width", "rest")
"""Kinds that are read on a tape, and so may hold a slip."""
Spot = tuple[int, int, float]
"""A place on a wall: room, wall, share of its length."""
_PIN_M = 0.001
_SQUARE_LEAST_M = 0.003


@dataclass(frozen=True)
class Row:
    """One thing told: `value_m` of what, in which room, with its standard deviation.

    wall: number of the wall, of the first corner of a diagonal, or of the opening; other: the
    second one. parts: coefficients by unknown, empty for a diagonal, which has its corners.
    """

    kind: Kind
    room: int
    wall: int
    value_m: float
    sigma_m: float
    parts: Mapping[int, float]
    other: int = -1
    corners: tuple[int, int] | None = None


@dataclass(frozen=True, eq=False)
class Net:
    """All rows; first: number of the first unknown of each room; jambs: unknowns by way."""

    rows: tuple[Row, ...]
    unknowns: int
    first: tuple[int, ...]
    jambs: Mapping[tuple[int, int], tuple[int, int]] = field(default_factory=dict)


def net_of(walk: Walk, lay: Lay, spread: Spread | None = None) -> Net:
    """The rows of a walk whose directions are known."""
    return _Maker(walk, lay, spread or Spread()).made()


class _Maker:
    def __init__(self, walk: Walk, lay: Lay, spread: Spread) -> None:
        self.walk, self.lay, self.spread = walk, lay, spread
        self.rows: list[Row] = []
        self.first: list[int] = []
        self.jambs: dict[tuple[int, int], tuple[int, int]] = {}
        self.unknowns = 0

    def made(self) -> Net:
        for room in self.walk.rooms:
            self.first.append(self.unknowns)
            self.unknowns += 2 * len(room.walls)
        for n in range(len(self.walk.rooms)):
            self._walls(n)
            self._checks(n)
        twins = {(join.other, join.other_way): join for join in self.lay.joins}
        for n, room in enumerate(self.walk.rooms):
            for k in range(len(room.ways)):
                self._way(n, k, twins.get((n, k)))
        for join in self.lay.joins:
            self._depth(join)
        for k in range(len(self.walk.shared)):
            self._shared(k)
        for part in sorted(set(self.lay.parts)):
            for axis in (0, 1):
                at = self.first[part] + axis
                self.rows.append(Row("pin", part, 0, 0.0, _PIN_M, {at: 1.0}))
        return Net(tuple(self.rows), self.unknowns, tuple(self.first), self.jambs)

    def corner(self, room: int, k: int) -> int:
        """Number of the x of a corner; its y is the next."""
        return self.first[room] + 2 * (k % len(self.walk.rooms[room].walls))

    def _walls(self, n: int) -> None:
        for k, wall in enumerate(self.walk.rooms[n].walls):
            along = self._along(n, k)
            a, b = self.corner(n, k), self.corner(n, k + 1)
            if wall.length_m is not None:
                sigma = self.spread.of_tape(wall.length_m)
                self.rows.append(Row("wall", n, k, wall.length_m, sigma, _step(a, b, along)))
            told_deg = self.spread.square_deg if self.lay.squares[n][k] else self.spread.angle_deg
            length = wall.length_m if wall.length_m is not None else 3.0
            sigma = hypot(_SQUARE_LEAST_M, length * tan(radians(told_deg)))
            parts = _step(a, b, _left_of(along))
            self.rows.append(Row("square", n, k, 0.0, sigma, parts))

    def _checks(self, n: int) -> None:
        room = self.walk.rooms[n]
        for one in room.diagonals:
            sigma = self.spread.of_tape(one.length_m)
            ends = self.corner(n, one.start), self.corner(n, one.end)
            self.rows.append(
                Row("diagonal", n, one.start, one.length_m, sigma, {}, one.end, ends)
            )  # fmt: skip
        for cross in room.across:
            length = room.walls[cross.wall].length_m
            share = 0.5 if cross.at_m is None or not length else min(cross.at_m / length, 1.0)
            # The other wall runs back: a line square across meets it as far from its end.
            parts = self._between((n, cross.wall, share), (n, cross.other, 1.0 - share))
            inward = {key: -one for key, one in parts.items()}
            sigma = self.spread.of_tape(cross.length_m)
            self.rows.append(
                Row("across", n, cross.wall, cross.length_m, sigma, inward, cross.other)
            )  # fmt: skip

    def _along(self, n: int, k: int) -> tuple[float, float]:
        return unit(self.lay.headings[n][k])

    def _out(self, n: int, k: int) -> tuple[float, float]:
        x, y = self._along(n, k)
        return (y, -x) if self.lay.hands[n] > 0 else (-y, x)

    def _between(self, one: Spot, two: Spot) -> dict[int, float]:
        """Square off the wall of the first place outward, from its face to that of the second."""
        out = self._out(one[0], one[1])
        parts: dict[int, float] = {}
        for (room, wall, share), sign in ((one, -1.0), (two, 1.0)):
            for corner, weight in ((wall, 1.0 - share), (wall + 1, share)):
                for axis in (0, 1):
                    key = self.corner(room, corner) + axis
                    parts[key] = parts.get(key, 0.0) + sign * weight * out[axis]
        return parts

    def _way(self, n: int, k: int, twin: Join | None) -> None:
        """Rows of an opening; told from its second side it has the jambs of the first."""
        way = self.walk.rooms[n].ways[k]
        along = self._along(n, way.wall)
        if twin is None:
            self.jambs[n, k] = (self.unknowns, self.unknowns + 1)
            self.unknowns += 2
            near, far, sign = *self.jambs[n, k], 1.0
        else:
            one, two = self.jambs[twin.room, twin.way]
            theirs = self._along(twin.room, self.walk.rooms[twin.room].ways[twin.way].wall)
            same = theirs[0] * along[0] + theirs[1] * along[1] > 0
            near, far, sign = (one, two, 1.0) if same else (two, one, -1.0)
            self.jambs[n, k] = (near, far)
            along = theirs
        a, b = self.corner(n, way.wall), self.corner(n, way.wall + 1)
        tape = self.spread.of_tape
        start = {a: -sign * along[0], a + 1: -sign * along[1], near: sign}
        self.rows.append(Row("at", n, k, way.at_m, tape(way.at_m), start))
        wide = {near: -sign, far: sign}
        self.rows.append(Row("width", n, k, way.width_m, tape(way.width_m), wide))
        if way.rest_m is not None:
            end = {b: sign * along[0], b + 1: sign * along[1], far: -sign}
            self.rows.append(Row("rest", n, k, way.rest_m, tape(way.rest_m), end))

    def _depth(self, join: Join) -> None:
        """The wall's depth where a door joins two rooms; a guess of its own where not told."""
        ways = [self.walk.rooms[join.room].ways[join.way],
                self.walk.rooms[join.other].ways[join.other_way]]  # fmt: skip
        told = [one.depth_m for one in ways if one.depth_m is not None]
        depth = sum(told) / len(told) if told else USUAL_DEPTH_M
        sigma = self.spread.depth_m if told else UNKNOWN_DEPTH_M
        shares = [self._share(n, way.wall, way.at_m + way.width_m / 2)
                  for n, way in zip((join.room, join.other), ways, strict=True)]  # fmt: skip
        parts = self._between(
            (join.room, ways[0].wall, shares[0]), (join.other, ways[1].wall, shares[1])
        )
        self.rows.append(Row("depth", join.room, join.way, depth, sigma, parts, join.other))

    def _share(self, n: int, wall: int, at_m: float) -> float:
        length = self.walk.rooms[n].walls[wall].length_m
        return min(max(at_m / length, 0.0), 1.0) if length else 0.5

    def _shared(self, k: int) -> None:
        one = self.walk.shared[k]
        facing = self._facing(one.room, one.wall, one.other_room, one.other_wall)
        if not facing:
            return
        faces = (one.room, one.wall), (one.other_room, one.other_wall)
        parts = self._between((*faces[0], 0.5), (*faces[1], 0.5))
        lengths = [self.walk.rooms[n].walls[w].length_m or 3.0 for n, w in faces]
        skew = max(lengths) * tan(radians(self.spread.square_deg)) / 2
        sigma = hypot(self.spread.depth_m, skew)
        self.rows.append(
            Row("depth", one.room, one.wall, one.depth_m, sigma, parts, one.other_room)
        )

    def _facing(self, n: int, k: int, other: int, wall: int) -> bool:
        (ax, ay), (bx, by) = self._out(n, k), self._out(other, wall)
        return ax * bx + ay * by < -0.98


USUAL_DEPTH_M = 0.115
"""Half-inch board on both faces of a 3 1/2 in stud, 4 1/2 in: common practice of US houses."""
UNKNOWN_DEPTH_M = 0.03
"""Spread of a depth that nobody told: our guess."""


def _left_of(along: tuple[float, float]) -> tuple[float, float]:
    return -along[1], along[0]


def _step(a: int, b: int, way: tuple[float, float]) -> dict[int, float]:
    return {a: -way[0], a + 1: -way[1], b: way[0], b + 1: way[1]}
