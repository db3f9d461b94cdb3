"""A field as a lattice of places: what lies next to what, how far, and who sees whom.

The places lie on a square grid turned with the walls and centred on the
field, so that a floor turned by a right angle or seen in a mirror has the same
lattice. Two places are linked when the straight line between them stays on
the floor: walls of no thickness stay shut whatever the grid.

Walks are measured along links to the 16 nearest directions; such a walk is at
most 2.7 % longer than the straight line (the widest gap between two directions
is 26.6 degrees: 1 / cos(13.3 degrees)), and never shorter than the true walk.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from typing import Any, ClassVar

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.nouns import dataclass

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Bools = npt.NDArray[np.bool_]

FAR_M = 1e4
"""Stands for 'not reached': longer than any walk in a house."""
_DIRECTIONS = ((1, 0), (0, 1), (1, 1), (1, -1), (2, 1), (1, 2), (2, -1), (1, -2))
_NEXT = 4
"""So many of the directions lead to the eight places around one."""
_APART = 2 * FAR_M
"""Between chains; more would cost digits: thousands of chains lie one after the other."""
_SETTLED = 1e-9
_ROUNDS = 60
_QUARTER = np.pi / 2
_NICHE_M = 1.1
_ON_M = 0.001
"""A place nearer than this to a piece, and on none, lies on a wall without thickness."""


@dataclass(frozen=True)
class Grid:
    """Where the places lie: turned by `angle` about the origin, `step_m` apart."""

    angle: float
    step_m: float
    low: tuple[float, float]
    size: tuple[int, int]

    def to_xy(self, uv: Floats) -> Floats:
        """Places of the turned frame in the frame of the floor, n x 2 in metres."""
        return turned(uv, self.angle)

    def to_uv(self, xy: Floats) -> Floats:
        """Places of the floor in the turned frame, n x 2 in metres."""
        return turned(xy, -self.angle)

    def centres(self) -> Floats:
        """All places of the grid in the frame of the floor, columns x rows x 2."""
        u = self.low[0] + self.step_m * (np.arange(self.size[0]) + 0.5)
        v = self.low[1] + self.step_m * (np.arange(self.size[1]) + 0.5)
        return turned(np.stack(np.meshgrid(u, v, indexing="ij"), axis=-1), self.angle)


@dataclass(frozen=True)
class Scan:
    """All links of one direction as chains: `order` walks them, `apart` keeps chains asunder."""

    order: Ints
    apart: Floats
    along_m: Floats


class Lean:
    """A noun that is sent to another process without what was found from it: that is found again.

    Cached tables are many times as large as what they are made from.
    """

    def __getstate__(self) -> dict[str, Any]:
        """Its fields alone."""
        return {name: self.__dict__[name] for name in self.__dataclass_fields__}

    __dataclass_fields__: ClassVar[dict[str, Any]]


@dataclass(frozen=True)
class Lattice(Lean):
    """The places of one field.

    xy: n x 2 in metres; area_m2: the floor each stands for; owner: the piece
    it lies in, as an index; column, row: its place in the grid; near: for each
    the up to eight places around it, itself where there is none.
    """

    floor: shapely.Polygon
    pieces: tuple[BaseGeometry, ...]
    grid: Grid
    xy: Floats
    area_m2: Floats
    owner: Ints
    column: Ints
    row: Ints
    near: Ints
    scans: tuple[Scan, ...]

    def __len__(self) -> int:
        """How many places there are."""
        return len(self.xy)

    @cached_property
    def index(self) -> Ints:
        """The number of the place at each spot of the grid, -1 where there is none."""
        index = np.full(self.grid.size, -1)
        index[self.column, self.row] = np.arange(len(self))
        return index

    @cached_property
    def near_rows(self) -> Ints:
        """`near` with a row for each direction: quicker to go through."""
        return np.ascontiguousarray(self.near.T)

    @cached_property
    def off_wall_m(self) -> Floats:
        """From each place to the nearest wall or fixture."""
        return np.asarray(shapely.distance(shapely.points(self.xy), self.floor.boundary))

    @cached_property
    def core(self) -> Ints:
        """The piece in whose convex middle each place lies, -1 in niches and where there is none.

        A room with a niche at each door is convex but for the niches.
        """
        core = np.full(len(self), -1)
        for number, piece in enumerate(self.pieces):
            middle = without_niches(piece)
            if not middle.is_empty and _is_convex(middle):
                mine = np.flatnonzero(self.owner == number)
                shapely.prepare(middle)
                inside = shapely.contains_xy(middle, self.xy[mine, 0], self.xy[mine, 1])
                core[mine[inside]] = number
        return core

    def clear(self, one: Ints, two: Ints) -> Bools:
        """Whether the straight line between each pair of places stays on the floor."""
        return _clear(self, one, two)

    def spread(self, start: Floats, slope: float | Floats) -> Floats:
        """The least of `start` at any place plus `slope` for each metre of the walk from there.

        start: k x n, or n; slope: a number, or one for each of the k rows.
        """
        rows = np.atleast_2d(start).astype(float)
        steep = np.broadcast_to(np.asarray(slope, dtype=float).reshape(-1, 1), (len(rows), 1))
        shifts = [steep * scan.along_m + scan.apart for scan in self.scans]
        for _ in range(_ROUNDS):
            before = rows.copy()
            for scan, shift in zip(self.scans, shifts, strict=True):
                there = rows[:, scan.order]
                ahead = np.minimum.accumulate(there - shift, axis=1) + shift
                back = np.minimum.accumulate((there + shift)[:, ::-1], axis=1)[:, ::-1] - shift
                rows[:, scan.order] = np.minimum(there, np.minimum(ahead, back))
            if float(np.abs(before - rows).max()) <= _SETTLED:
                break
        return rows.reshape(np.shape(start))

    def walks_from(self, start_m: Floats) -> Floats:
        """Metres of the shortest walk to each place; `start_m` is `FAR_M` where none begins."""
        return self.spread(start_m, 1.0)


def lattice_of(floor: shapely.Polygon, pieces: Sequence[BaseGeometry], step_m: float) -> Lattice:
    """The lattice of `floor` (one polygon), whose `pieces` lie apart by a hair at every wall."""
    angle = main_angle(floor)
    grid = _grid(floor, angle, step_m)
    centres = grid.centres()
    owner = np.full(grid.size, -1)
    for number, piece in enumerate(pieces):
        shapely.prepare(piece)
        owner[shapely.contains_xy(piece, centres[..., 0], centres[..., 1])] = number
    _take_from_walls(owner, centres, pieces)
    column, row = np.nonzero(owner >= 0)
    places = Lattice(
        floor,
        tuple(pieces),
        grid,
        centres[column, row],
        np.full(len(column), step_m**2),
        owner[column, row],
        column,
        row,
        np.empty((0, 8), dtype=np.int64),
        (),
    )
    return _linked(places)


def _take_from_walls(owner: Ints, centres: Floats, pieces: Sequence[BaseGeometry]) -> None:
    """Give places on a wall without thickness to a piece beside it, moved onto its floor."""
    column, row = np.nonzero(owner < 0)
    spots = np.asarray(shapely.points(centres[column, row]))
    for number, piece in enumerate(pieces):
        near = np.flatnonzero((owner[column, row] < 0) & (shapely.distance(spots, piece) < _ON_M))
        inner = shapely.buffer(piece, -_ON_M)
        if len(near) and not inner.is_empty:
            moved = shapely.get_coordinates(shapely.shortest_line(inner, spots[near]))[::2]
            owner[column[near], row[near]] = number
            centres[column[near], row[near]] = moved


def main_angle(floor: BaseGeometry) -> float:
    """The direction of most of the walls, from 0 up to a right angle. [rad]"""
    best: dict[int, list[tuple[float, float]]] = {}
    for ring in shapely.get_parts(floor.boundary):
        legs = np.diff(shapely.get_coordinates(ring), axis=0)
        long = np.hypot(*legs.T)
        for turn, length in zip(np.arctan2(legs[:, 1], legs[:, 0]) % _QUARTER, long, strict=True):
            near = round(float(np.degrees(turn)) * 2) % 180
            best.setdefault(near, []).append((float(turn), float(length)))
    most = max(best.values(), key=lambda legs: round(sum(length for _, length in legs), 6))
    total = sum(length for _, length in most)
    first = most[0][0]
    off = sum(
        ((turn - first + _QUARTER / 2) % _QUARTER - _QUARTER / 2) * length for turn, length in most
    )
    angle = (first + off / max(total, 1e-12)) % _QUARTER
    return 0.0 if min(angle, _QUARTER - angle) < 1e-6 else angle


def turned(places: Floats, angle: float) -> Floats:
    """Places turned about the origin by `angle`."""
    if angle == 0.0:
        return places
    cos, sin = np.cos(angle), np.sin(angle)
    return np.asarray(places @ np.array([[cos, sin], [-sin, cos]]))


def median_of(values: Floats) -> float:
    """The middle one of some values, the mean of two where their number is even.

    The library's own brings its masked arrays with it, which costs as much as a small field.
    """
    low, high = (len(values) - 1) // 2, len(values) // 2
    parted = np.partition(values, (low, high))
    return float((parted[low] + parted[high]) / 2)


def _grid(floor: shapely.Polygon, angle: float, step_m: float) -> Grid:
    uv = turned(shapely.get_coordinates(floor.exterior), -angle)
    low, high = uv.min(axis=0), uv.max(axis=0)
    # A hair off, so that a width that is a round number of steps does not get one more.
    size = np.maximum(1, np.ceil((high - low) / step_m - 0.02)).astype(int)
    start = (low + high - size * step_m) / 2
    return Grid(angle, step_m, (float(start[0]), float(start[1])), (int(size[0]), int(size[1])))


@np.errstate(invalid="ignore")  # of a corner that the library leaves out on some turned floors
def without_niches(piece: BaseGeometry) -> BaseGeometry:
    """The part of a piece that is at least `_NICHE_M` wide both ways."""
    narrow = shapely.buffer(piece, -_NICHE_M / 2, join_style="mitre")
    return shapely.intersection(shapely.buffer(narrow, _NICHE_M / 2, join_style="mitre"), piece)


def _is_convex(piece: BaseGeometry) -> bool:
    return bool(piece.area > (1 - 1e-6) * shapely.convex_hull(piece).area)


def _clear(places: Lattice, one: Ints, two: Ints) -> Bools:
    length = np.hypot(*(places.xy[one] - places.xy[two]).T)
    same = places.owner[one] == places.owner[two]
    surely = (places.core[one] >= 0) & (places.core[one] == places.core[two])
    off = places.off_wall_m
    surely |= same & (np.maximum(off[one], off[two]) > length)
    doubtful = np.flatnonzero(~surely)
    if len(doubtful):
        ends = np.stack([places.xy[one[doubtful]], places.xy[two[doubtful]]], axis=1)
        shapely.prepare(places.floor)
        surely[doubtful] = shapely.covers(places.floor, shapely.linestrings(ends))
    return np.asarray(surely)


def _linked(places: Lattice) -> Lattice:
    """The lattice with its links, and each place's own floor."""
    count = len(places)
    near = np.repeat(np.arange(count)[:, None], 2 * _NEXT, axis=1)
    after = {step: ahead(places, step) for step in _DIRECTIONS}
    pairs = [np.flatnonzero(found >= 0) for found in after.values()]
    one = np.concatenate(pairs)
    two = np.concatenate([found[i] for found, i in zip(after.values(), pairs, strict=True)])
    good = places.clear(one, two)
    scans = []
    start = 0
    for number, (step, mine) in enumerate(zip(after, pairs, strict=True)):
        keep = good[start : start + len(mine)]
        start += len(mine)
        here, there = mine[keep], after[step][mine[keep]]
        if number < _NEXT:
            near[here, 2 * number] = there
            near[there, 2 * number + 1] = here
        scans.append(_scan(places, step, here, there))
    return Lattice(
        places.floor,
        places.pieces,
        places.grid,
        places.xy,
        _floor_of(places),
        places.owner,
        places.column,
        places.row,
        near,
        tuple(scans),
    )


def ahead(places: Lattice, step: tuple[int, int]) -> Ints:
    """For each place the one `step` columns and rows on, -1 where there is none."""
    columns, rows = places.grid.size
    column, row = places.column + step[0], places.row + step[1]
    inside = (column >= 0) & (column < columns) & (row >= 0) & (row < rows)
    found = np.full(len(places), -1)
    found[inside] = places.index[column[inside], row[inside]]
    return found


def _scan(places: Lattice, step: tuple[int, int], here: Ints, there: Ints) -> Scan:
    dx, dy = step
    order = np.lexsort((places.column * dx + places.row * dy, places.column * dy - places.row * dx))
    follows = np.full(len(places), -1)
    follows[here] = there
    breaks = np.concatenate([[0], follows[order[:-1]] != order[1:]])
    gaps = np.hypot(*np.diff(places.xy[order], axis=0).T)
    along = np.concatenate([[0.0], np.cumsum(np.where(breaks[1:] > 0, 0.0, gaps))])
    return Scan(
        order,
        np.asarray(np.cumsum(breaks) * _APART, dtype=float),
        np.asarray(along, dtype=float),
    )


def _floor_of(places: Lattice) -> Floats:
    """The floor of each place; what no place lies on is shared out in its piece. [m2]"""
    step = places.grid.step_m
    area = places.area_m2.copy()
    edge = np.flatnonzero(places.off_wall_m < step * 0.72)
    if len(edge):
        half = step / 2
        uv = turned(places.xy[edge], -places.grid.angle)
        corners = np.array([[-half, -half], [half, -half], [half, half], [-half, half]])
        squares = shapely.polygons(places.grid.to_xy(uv[:, None, :] + corners))
        mine = np.array(places.pieces, dtype=object)[places.owner[edge]]
        area[edge] = shapely.area(shapely.intersection(squares, mine))
    mine = np.bincount(places.owner, weights=area, minlength=len(places.pieces))
    whole = np.array([piece.area for piece in places.pieces])
    area *= np.where(mine > 0, whole / np.maximum(mine, 1e-12), 1.0)[places.owner]
    return np.asarray(area * (places.floor.area / area.sum()))
