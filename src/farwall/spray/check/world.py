"""Where a person can be: free floor, ways through openings, ground beyond the exits.

Rooms are joined only through openings, however their edges may touch; the ground
outside is joined only at exits. A wall is therefore a line even where it has no
thickness, and a body's centre keeps `CLEAR_M` from every wall, fixture and gap
between rooms. With walls as obstacles, no step of the replay needs to know in
which room it is.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.nouns import CLEAR_M, PLACE_M, House, Opening, Room

GAP_M = 0.2
"""Half of the widest gap between rooms that is taken for a wall and not for ground."""
_NO_LENGTH_M = 1e-6
SEAM_M = 0.002
"""Rooms that touch may miss each other by this much: their corners are rounded."""
DEPTH_M = 0.45
"""Deepest wall that an opening without a threshold is taken to pass through."""
MARGIN_M = 3.0

Shapes = NDArray[np.object_]


@dataclass(frozen=True, eq=False)
class World:
    """The house as obstacles and free ground; areas are those of `floors`, by room."""

    house: House
    floors: dict[str, BaseGeometry]
    thresholds: dict[str, BaseGeometry]
    walls: Shapes
    obstacles: Shapes
    obstacle_names: tuple[str, ...]
    ground: BaseGeometry
    free: BaseGeometry

    def place(self, x: float, y: float) -> str:
        """Where a point is, in words."""
        spot = shapely.Point(x, y)
        for room in self.house.rooms:
            if shapely.dwithin(room.shape, spot, PLACE_M):
                return f"in {room.label}"
        return "outside" if shapely.intersects(self.ground, spot) else "in a doorway"

    def is_outside(self, x: float, y: float) -> bool:
        """Whether a point lies beyond every room."""
        return bool(shapely.intersects(self.ground, shapely.Point(x, y)))


def world_of(house: House, places: NDArray[np.float64]) -> World:
    """The world of a house, wide enough for all `places` (rows of x, y)."""
    rooms = np.array([room.shape for room in house.rooms])
    ways_out = {exit_.opening for exit_ in house.exits}
    thresholds = _thresholds(house, rooms)
    passages = [_passage(opening, house.rooms, ways_out) for opening in house.openings]
    footprint = _closed(shapely.union_all([*rooms, *thresholds.values()]))
    solid = _solid(footprint, rooms, passages)
    walls = _wall_lines(house, rooms, passages, ways_out)
    fixtures = [fixture.shape for fixture in house.fixtures]
    obstacles = np.array([*walls, *solid, *fixtures], dtype=object)
    names = ["a wall"] * (len(walls) + len(solid))
    names += [f"the {fixture.label}" for fixture in house.fixtures]
    box = _box(footprint, places)
    blocked = shapely.union_all(shapely.buffer(obstacles, CLEAR_M))
    ground = shapely.difference(box, footprint)
    shapely.prepare(ground)
    dry = shapely.union_all(fixtures)
    return World(
        house=house,
        floors={room.id: shapely.difference(room.shape, dry) for room in house.rooms},
        thresholds={key: shapely.difference(shape, dry) for key, shape in thresholds.items()},
        walls=np.array(walls, dtype=object),
        obstacles=obstacles,
        obstacle_names=tuple(names),
        ground=ground,
        free=shapely.difference(box, blocked),
    )


def _thresholds(house: House, rooms: Shapes) -> dict[str, BaseGeometry]:
    """Floor in the depth of walls, by opening, less what the rooms hold already."""
    covered = shapely.union_all(rooms)
    return {
        opening.id: shapely.difference(opening.threshold, covered)
        for opening in house.openings
        if opening.threshold is not None
    }


def _closed(shape: BaseGeometry) -> BaseGeometry:
    """The shape with gaps narrower than two `GAP_M` filled, its corners kept sharp."""
    wider = shapely.buffer(shape, GAP_M, join_style="mitre")
    return shapely.buffer(wider, -GAP_M, join_style="mitre")


def _solid(footprint: BaseGeometry, rooms: Shapes, passages: list[BaseGeometry]) -> Shapes:
    """The body of the walls: the footprint less rooms and passages, hair-thin seams left out."""
    rest = shapely.difference(footprint, shapely.union_all([*rooms, *passages]))
    rest = shapely.simplify(rest, _NO_LENGTH_M)  # at legs of no length a sharp corner has no end
    thick = shapely.buffer(rest, -SEAM_M, join_style="mitre")
    return shapely.get_parts(shapely.buffer(thick, SEAM_M, join_style="mitre"))


def _passage(opening: Opening, rooms: tuple[Room, ...], ways_out: set[str]) -> BaseGeometry:
    """The region of an opening in which a room's edge is no wall."""
    parts: list[BaseGeometry] = []
    if opening.threshold is not None:
        parts.append(shapely.buffer(opening.threshold, SEAM_M))
    if len(opening.rooms) > 1 or opening.id in ways_out:
        parts.append(shapely.buffer(opening.line, PLACE_M, cap_style="flat"))
        if opening.threshold is None:
            parts.append(_depth(opening, rooms))
    return shapely.union_all(parts)


def _depth(opening: Opening, rooms: tuple[Room, ...]) -> BaseGeometry:
    """The strip from an opening's line to each of its rooms that ends short of it."""
    strips = []
    for room in rooms:
        gap = shapely.distance(opening.line, room.shape) if room.id in opening.rooms else 0.0
        if PLACE_M < gap <= DEPTH_M:
            strip = shapely.buffer(opening.line, gap + PLACE_M, cap_style="flat")
            half = shapely.union(opening.line, room.shape)
            strips.append(shapely.intersection(strip, shapely.convex_hull(half)))
    return shapely.union_all(strips)


def _wall_lines(
    house: House, rooms: Shapes, passages: list[BaseGeometry], ways_out: set[str]
) -> Shapes:
    """Every edge of a room or of a threshold that is not open, one straight piece each."""
    edges = shapely.difference(shapely.boundary(rooms), shapely.union_all(passages))
    beside_rooms = shapely.buffer(shapely.union_all(rooms), SEAM_M, join_style="mitre")
    jambs = [
        edge
        for opening in house.openings
        if opening.threshold is not None
        for edge in _jambs(opening, beside_rooms, open_out=opening.id in ways_out)
    ]
    return np.array([*_straight(edges), *jambs], dtype=object)


def _straight(lines: Shapes) -> list[shapely.LineString]:
    """The straight pieces of any lines."""
    parts = shapely.get_parts(shapely.get_parts(lines))
    parts = parts[shapely.get_dimensions(parts) == 1]
    return [piece for part in parts for piece in _pieces(shapely.get_coordinates(part))]


def _pieces(points: NDArray[np.float64]) -> list[shapely.LineString]:
    return [shapely.LineString(ends) for ends in np.stack([points[:-1], points[1:]], axis=1)]


def _jambs(opening: Opening, beside_rooms: BaseGeometry, *, open_out: bool) -> list[BaseGeometry]:
    """Edges of a threshold where nobody passes: its ends, and its far side unless a way out."""
    line = shapely.get_coordinates(opening.line)
    along = line[-1] - line[0]
    passable = open_out or len(opening.rooms) > 1
    found: list[BaseGeometry] = []
    for piece in _straight(np.array([shapely.boundary(opening.threshold)])):
        rest = shapely.difference(piece, beside_rooms)
        start, end = shapely.get_coordinates(piece)
        side = end - start
        crosswise = abs(_cross(along, side)) >= abs(float(along @ side))
        if rest.length > PLACE_M and (crosswise or not passable):
            found.append(rest)
    return found


def _cross(one: NDArray[np.float64], other: NDArray[np.float64]) -> float:
    return float(one[0] * other[1] - one[1] * other[0])


def _box(footprint: BaseGeometry, places: NDArray[np.float64]) -> BaseGeometry:
    """A rectangle around the house and every place where somebody goes."""
    left, low, right, high = footprint.bounds
    far = np.vstack([places, [[left, low], [right, high]]])
    (x0, y0), (x1, y1) = far.min(axis=0) - MARGIN_M, far.max(axis=0) + MARGIN_M
    return shapely.Polygon([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])
