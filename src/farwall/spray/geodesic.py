"""How far the floor lies from the way out, walking around corners.

`reach_regions` answers: which floor lies within a walk of r metres of the
exit? Exact up to the polygonal discs: the shortest walk on a floor with
corners is a chain of straight lines from corner to corner, so the region is a
union of discs about the corners, each cut to what that corner sees.
Source: the shortest-path map of a polygonal domain, standard computational
geometry (Lozano-Perez and Wesley, Communications of the ACM 22(10), 1979,
for the chain of corners) [lozano-perez-1979].
"""

from __future__ import annotations

import heapq
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point, polygons_of

_CORNER_IN_M = 0.001
"""Corners are looked from one millimetre inside the floor, so that no sight line grazes a wall."""
_TURN = 1e-6
_DISC_QUAD_SEGS = 12
_LEAST_SERVED_M2 = 1e-4
_SLIVER_M = 1e-4

Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Look:
    """A place on the floor, the walk from there to the exit in metres, and what it alone serves.

    The place is a corner, a point of the exit, or the exit's whole line for
    the floor that sees all of it.

    `sees` leaves out what the corner before it on the way sees as well: from
    there the walk is shorter.
    """

    at: BaseGeometry
    walk_m: float
    sees: BaseGeometry


@dataclass(frozen=True)
class WalkMap:
    """Everything needed to say how far any point of one floor is from its exit."""

    floor: shapely.Polygon
    looks: tuple[Look, ...]

    def growing_in(self, part: BaseGeometry) -> Growing:
        """The same walk map held to one part of the floor, to be asked from near to far."""
        cells = []
        for look in self.looks:
            cell = shapely.intersection(look.sees, part)
            if cell.area > _LEAST_SERVED_M2:
                away = shapely.distance(shapely.points(shapely.get_coordinates(cell)), look.at)
                nearest = float(shapely.distance(cell, look.at))
                far = look.walk_m + float(away.max())
                cells.append(_Cell(look.at, look.walk_m, cell, look.walk_m + nearest, far))
        return Growing(cells)

    def region_within(self, walk_m: float) -> BaseGeometry:
        """The floor within `walk_m` of the exit."""
        discs = [
            look.at.buffer(walk_m - look.walk_m, quad_segs=_DISC_QUAD_SEGS)
            for look in self.looks
            if look.walk_m < walk_m
        ]
        sees = [look.sees for look in self.looks if look.walk_m < walk_m]
        if not discs:
            return shapely.Polygon()
        return shapely.union_all(shapely.intersection(discs, sees))

    def walk_from(self, points: Floats) -> Floats:
        """Metres from each of `points` (n x 2) to the exit; infinite where nothing sees it."""
        best = np.full(len(points), np.inf)
        places = np.asarray(shapely.points(points))
        for look in self.looks:
            straight = shapely.distance(places, look.at) + look.walk_m
            nearer = straight < best
            if nearer.any():
                seen = np.zeros(len(points), dtype=bool)
                seen[nearer] = shapely.intersects(look.sees, places[nearer])
                best = np.where(seen, straight, best)
        return best

    def farthest_m(self) -> float:
        """The longest walk to the exit from any corner of the floor, in metres."""
        corners = shapely.get_coordinates(shapely.buffer(self.floor, -0.002, join_style="mitre"))
        walks = self.walk_from(corners)
        finite = walks[np.isfinite(walks)]
        return float(finite.max()) if len(finite) else 0.0


@dataclass(frozen=True)
class _Cell:
    """The part of a floor that one look serves: its walks run from `nearest_m` to `farthest_m`."""

    at: BaseGeometry
    walk_m: float
    shape: BaseGeometry
    nearest_m: float
    farthest_m: float


class Growing:
    """Floor within a walk that only grows, told step by step: what was told whole is not again."""

    def __init__(self, cells: list[_Cell]) -> None:
        self._left = cells

    def within(self, walk_m: float) -> BaseGeometry:
        """The floor within `walk_m` of the exit, less cells told whole before."""
        reached = [cell for cell in self._left if cell.nearest_m < walk_m]
        if reached:
            whole = [cell.shape for cell in reached if cell.farthest_m <= walk_m]
            cut = [cell for cell in reached if cell.farthest_m > walk_m]
            discs = [
                cell.at.buffer(walk_m - cell.walk_m, quad_segs=_DISC_QUAD_SEGS) for cell in cut
            ]
            parts = [
                shapely.intersection(d, cell.shape) for d, cell in zip(discs, cut, strict=True)
            ]
            self._left = [cell for cell in self._left if cell.farthest_m > walk_m]
            return shapely.union_all([*whole, *parts])
        return shapely.Polygon()


def walk_map(floor: shapely.Polygon, sources: Sequence[Point]) -> WalkMap:
    """The walk map of `floor` (metres) for an exit at `sources`, points in it or on its edge."""
    edges = _edges(floor)
    shapely.prepare(floor)
    corners = _inner_corners(floor)
    places = [*_inside(floor, sources), *corners]
    sights = [_sight(place, edges) for place in places]
    walks, before = _shortest(places, sights, len(sources))
    looks, plain = _exit_line(places[: len(sources)], sights[: len(sources)])
    for here, place in enumerate(places):
        if not np.isfinite(walks[here]):
            continue
        serves: BaseGeometry = sights[here]
        if before[here] >= 0:
            serves = _opened(shapely.difference(serves, sights[before[here]]))
        elif plain is not None:
            serves = _opened(shapely.difference(serves, plain))
        if serves.area > _LEAST_SERVED_M2:
            looks.append(Look(shapely.Point(place), walks[here], serves))
    return WalkMap(floor, tuple(looks))


def _exit_line(
    sources: Sequence[Point], sights: Sequence[BaseGeometry]
) -> tuple[list[Look], BaseGeometry | None]:
    """The exit's line as one look, for the floor that sees every part of it."""
    if len(sources) < 2:
        return [], None
    plain = shapely.intersection_all(list(sights))
    if plain.area <= _LEAST_SERVED_M2:
        return [], None
    return [Look(shapely.LineString([sources[0], sources[-1]]), 0.0, plain)], plain


def _opened(cell: BaseGeometry) -> BaseGeometry:
    """The cell without slivers, a little wider than it was, so that cells overlap."""
    wide = [part for part in polygons_of(cell) if part.area > _LEAST_SERVED_M2]
    # On a grid: spikes of no width would set the mitred buffer dividing by zero.
    whole = shapely.set_precision(shapely.union_all(wide), _SLIVER_M / 100)
    narrow = shapely.buffer(whole, -_SLIVER_M, join_style="mitre")
    opened = shapely.buffer(narrow, 3 * _SLIVER_M, join_style="mitre")
    return opened.simplify(_SLIVER_M / 4)


def _edges(floor: shapely.Polygon) -> Floats:
    """All wall edges as rows x1, y1, x2, y2."""
    rows = []
    for ring in [floor.exterior, *floor.interiors]:
        xy = np.asarray(ring.coords)
        rows.append(np.hstack([xy[:-1], xy[1:]]))
    return np.vstack(rows)


def _inner_corners(floor: shapely.Polygon) -> list[Point]:
    """Corners that a walk may turn around (reflex), moved a millimetre onto the floor."""
    found: list[Point] = []
    for index, ring in enumerate([floor.exterior, *floor.interiors]):
        xy = np.asarray(ring.coords)[:-1]
        if ring.is_ccw != (index == 0):
            xy = xy[::-1]
        before = xy - np.roll(xy, 1, axis=0)
        after = np.roll(xy, -1, axis=0) - xy
        turn = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
        lengths = np.hypot(*before.T) * np.hypot(*after.T)
        reflex = turn < -1e-4 * lengths
        unit_before = before / np.hypot(*before.T)[:, None]
        unit_after = after / np.hypot(*after.T)[:, None]
        out = unit_before - unit_after
        norm = np.hypot(*out.T)[:, None]
        moved = xy + _CORNER_IN_M * out / np.where(norm > 0, norm, 1)
        found.extend((float(x), float(y)) for x, y in moved[reflex])
    keep = shapely.contains_xy(floor, *np.array(found).T) if found else []
    return [place for place, inside in zip(found, keep, strict=True) if inside]


def _inside(floor: shapely.Polygon, sources: Sequence[Point]) -> list[Point]:
    """The sources, those on or beyond the edge moved a millimetre onto the floor."""
    inner = floor.buffer(-_CORNER_IN_M, join_style="mitre")
    moved = []
    for source in sources:
        place = shapely.Point(source)
        if not inner.covers(place):
            place = shapely.shortest_line(inner, place).interpolate(0)
        moved.append((place.x, place.y))
    return moved


def _sight(place: Point, edges: Floats) -> BaseGeometry:
    """The polygon that `place` sees: rays to every corner and a hair to each side of it."""
    origin = np.array(place)
    corners = edges[:, :2] - origin
    bearing = np.arctan2(corners[:, 1], corners[:, 0])
    bearing = np.unique(np.concatenate([bearing - _TURN, bearing, bearing + _TURN]))
    ray = np.column_stack([np.cos(bearing), np.sin(bearing)])
    start = edges[:, :2] - origin
    along = edges[:, 2:] - edges[:, :2]
    cross = ray[:, :1] * along[:, 1] - ray[:, 1:] * along[:, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        distance = (start[:, 0] * along[:, 1] - start[:, 1] * along[:, 0]) / cross
        share = (start[:, 0] * ray[:, 1:] - start[:, 1] * ray[:, :1]) / cross
    hit = (np.abs(cross) > 1e-14) & (distance > 1e-9) & (share >= -1e-9) & (share <= 1 + 1e-9)
    nearest = np.where(hit, distance, np.inf).min(axis=1)
    good = np.isfinite(nearest)
    seen: BaseGeometry = shapely.Polygon(origin + ray[good] * nearest[good, None])
    seen = seen.simplify(1e-5, preserve_topology=False)
    return seen if seen.is_valid else shapely.make_valid(seen)


def _shortest(
    places: Sequence[Point], sights: Sequence[BaseGeometry], exits: int
) -> tuple[list[float], list[int]]:
    """Metres from each place to the nearest of the first `exits` ones, and the place before."""
    xy = np.array(places)
    points = shapely.points(xy)
    shapely.prepare(list(sights))
    walks = [0.0] * exits + [np.inf] * (len(places) - exits)
    before = [-1] * len(places)
    queue = [(0.0, index) for index in range(exits)]
    done: set[int] = set()
    while queue:
        walked, here = heapq.heappop(queue)
        if here in done:
            continue
        done.add(here)
        visible = np.flatnonzero(shapely.intersects(sights[here], points))
        for there in visible.tolist():
            onward = walked + float(np.hypot(*(xy[there] - xy[here])))
            if onward < walks[there] - 1e-12:
                walks[there] = onward
                before[there] = here
                heapq.heappush(queue, (onward, there))
    return walks, before
