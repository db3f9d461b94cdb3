"""Doors and windows of GeoJSON as lines in plan, whether drawn as areas, lines or points."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise
from math import dist, hypot

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.geo.things import Thing
from farwall.readers.told.doorways import Line, farthest, middle_line
from farwall.readers.told.nouns import ToldOpening, ToldSpace, ToldWindow

_ON_EDGE_M = 0.5
_USUAL_M = 0.9
"""A leaf's usual width, taken where a point says none. Rank: common practice (no source)."""
_NEAR_M = 2.0
_STRAIGHT = 0.7
"""A shape that fills less of its rectangle is bent; its ends give the line (guess)."""
_DEEP_M = 0.6
"""A door stands in a wall no deeper than this (guess)."""


@dataclass(frozen=True)
class Placed:
    """Openings with their lines, windows, points at no outline, and points without a width."""

    openings: list[ToldOpening]
    windows: list[ToldWindow]
    adrift: list[Thing]
    unmeasured: list[str]


@dataclass(frozen=True)
class Bounds:
    """What bounds a storey beside its rooms: shafts that nobody enters, the house's outline."""

    shafts: tuple[shapely.Polygon, ...] = ()
    outlines: tuple[shapely.Polygon, ...] = ()

    def let_out(self, seam: Line) -> bool | None:
        """False where a door cannot lead outside: at a shaft, or deep in the house."""
        line = shapely.LineString(seam)
        if any(shaft.distance(line) < _DEEP_M for shaft in self.shafts):
            return False
        edges = [outline.boundary.distance(line) for outline in self.outlines]
        return False if edges and min(edges) > _DEEP_M else None


def placed(
    things: Sequence[tuple[Thing, str]],
    rooms: Sequence[ToldSpace],
    bounds: Mapping[str, Bounds],
) -> Placed:
    """Doors and windows of things in metres; each comes with its storey.

    `rooms` are those of all storeys; `bounds` go by storey.
    """
    found = Placed([], [], [], [])
    walls = {
        storey: _Walls([r.shape for r in rooms if r.storey == storey])
        for storey in dict.fromkeys(storey for _, storey in things)
    }
    number = 0
    for thing, storey in things:
        if thing.kind == "window":
            line = _line(thing, walls[storey])
            if line is not None:
                found.windows.append(ToldWindow(line, storey=storey))
            continue
        seam = _line(thing, walls[storey])
        number += 1
        own = thing.id or f"door-{number}"
        if seam is None:
            found.adrift.append(thing)
            continue
        if thing.point is not None and thing.width_m is None:
            found.unmeasured.append(own)
        found.openings.append(
            ToldOpening(
                own,
                seam,
                leaf=thing.leaf,
                storey=storey,
                width_m=round(thing.width_m or dist(*seam), 4),
                said_outside=thing.outside or bounds.get(storey, Bounds()).let_out(seam),
            )
        )
    return found


class _Walls:
    """The rooms of a storey and the straight runs of their outlines, found by place."""

    def __init__(self, rooms: Sequence[shapely.Polygon]) -> None:
        self._rooms = shapely.STRtree(rooms)
        self._edges = [edge for room in rooms for edge in _edges(room)]
        self._tree = shapely.STRtree([shapely.LineString(edge) for edge in self._edges])

    def rooms_near(self, area: shapely.Polygon) -> list[shapely.Polygon]:
        return [self._rooms.geometries[i] for i in self._rooms.query(area.buffer(_NEAR_M))]

    def edge_at(self, spot: shapely.Point) -> Line | None:
        """The edge nearest to a point, when it is near."""
        near = self._tree.query_nearest(spot, max_distance=_ON_EDGE_M, all_matches=False)
        return self._edges[int(near[0])] if len(near) else None


def _line(thing: Thing, walls: _Walls) -> Line | None:
    if thing.rings:
        area = shapely.Polygon(thing.rings[0])
        if area.length <= 0.1:
            return None
        straight = area.area >= _STRAIGHT * area.minimum_rotated_rectangle.area
        return middle_line(area, walls.rooms_near(area)) if straight else farthest(thing.rings[0])
    if thing.line:
        return farthest(thing.line)
    if thing.point is None:
        return None
    edge = walls.edge_at(shapely.Point(thing.point))
    return _along(edge, thing.point, thing.width_m or _USUAL_M) if edge else None


def _edges(room: shapely.Polygon) -> list[Line]:
    """The straight runs of an outline; a point put into a wall for a door does not break one."""
    rings = [room.exterior, *room.interiors]
    return [
        ((float(a[0]), float(a[1])), (float(b[0]), float(b[1])))
        for ring in rings
        for a, b in pairwise(shapely.simplify(ring, 0.01).coords)
        if dist(a, b) > 0.05
    ]


def _along(edge: Line, spot: Point, width: float) -> Line:
    (x1, y1), (x2, y2) = edge
    long = hypot(x2 - x1, y2 - y1)
    ux, uy = (x2 - x1) / long, (y2 - y1) / long
    half = min(width, long) / 2
    at = (spot[0] - x1) * ux + (spot[1] - y1) * uy
    at = min(max(at, half), long - half)
    return (
        (x1 + ux * (at - half), y1 + uy * (at - half)),
        (x1 + ux * (at + half), y1 + uy * (at + half)),
    )
