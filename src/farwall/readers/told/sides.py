"""What lies on either side of a seam: rays across it, through the depth of the wall."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import dist
from statistics import median

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

SEAT_M = 0.3
"""A seam may stand so far inside a room beside the wall that it belongs to. Rank: guess."""
_HAIR_M = 0.02
_STEP_M = 0.1
_MOST_RAYS = 400
_DOOR_RAYS = (0.1, 0.3, 0.5, 0.7, 0.9)
_SHARE = 0.4
"""A room holds one side of a door when so many of its rays meet it. Rank: guess."""

Line = tuple[Point, Point]
Shapes = Sequence[tuple[str, shapely.Polygon]]


@dataclass(frozen=True)
class Sides:
    """Left and right of a seam: ids of rooms or None; the seam itself, seated in the wall.

    `depth_m` is the depth of the wall between two rooms, 0 where they touch.
    """

    left: str | None
    right: str | None
    seam: Line
    depth_m: float = 0.0

    @property
    def rooms(self) -> tuple[str, ...]:
        """The rooms on its sides; one id twice when both sides are the same room."""
        return tuple(side for side in (self.left, self.right) if side is not None)


@dataclass(frozen=True)
class _Ray:
    """One ray: the room behind and ahead of the wall, and where the wall begins and ends."""

    right: str | None
    left: str | None
    low_m: float
    high_m: float


def sides_of_door(seam: Line, shapes: Shapes, reach_m: float) -> Sides:
    """The room on either side by most of five rays."""
    rays = [_ray(seam, share, shapes, reach_m) for share in _DOOR_RAYS]
    left, right = (_most([getattr(ray, side) for ray in rays]) for side in ("left", "right"))
    own = [ray for ray in rays if (ray.left, ray.right) == (left, right)] or rays
    return _seated(seam, left, right, own)


def sides_of_passage(seam: Line, shapes: Shapes, reach_m: float, least_m: float) -> list[Sides]:
    """The pieces of a seam without a leaf, cut where the rooms at its sides change.

    Pieces shorter than `least_m` are left out.
    """
    long = dist(*seam)
    count = max(3, min(_MOST_RAYS, round(long / _STEP_M)))
    shares = [(place + 0.5) / count for place in range(count)]
    rays = [_ray(seam, share, shapes, reach_m) for share in shares]
    pieces, start = [], 0
    for place in range(1, count + 1):
        if place < count and _pair(rays[place]) == _pair(rays[start]):
            continue
        piece = _between(seam, start / count, place / count)
        if dist(*piece) >= min(least_m, long * 0.9):
            run = rays[start:place]
            pieces.append(_seated(piece, run[0].left, run[0].right, run))
        start = place
    return pieces


def _pair(ray: _Ray) -> tuple[str | None, str | None]:
    return ray.left, ray.right


def _most(rooms: list[str | None]) -> str | None:
    counted = Counter(room for room in rooms if room is not None)
    if not counted:
        return None
    room, times = max(counted.items(), key=lambda pair: (pair[1], pair[0]))
    return room if times >= _SHARE * len(rooms) else None


def _seated(seam: Line, left: str | None, right: str | None, rays: Sequence[_Ray]) -> Sides:
    """The seam moved into the wall when it stood beside it, by the median of the rays."""
    if left is not None and left == right:
        return Sides(left, right, seam)
    low, high = median(ray.low_m for ray in rays), median(ray.high_m for ray in rays)
    depth = max(0.0, high - low) if left is not None and right is not None else 0.0
    shift = min(max(0.0, low), high) if low <= high else (low + high) / 2
    if abs(shift) < 1e-4:
        return Sides(left, right, seam, depth)
    nx, ny = _normal(seam)
    (ax, ay), (bx, by) = seam
    moved = (ax + nx * shift, ay + ny * shift), (bx + nx * shift, by + ny * shift)
    return Sides(left, right, moved, depth)


def _between(seam: Line, low: float, high: float) -> Line:
    return _along(seam, low), _along(seam, high)


def _along(seam: Line, share: float) -> Point:
    (ax, ay), (bx, by) = seam
    return ax + (bx - ax) * share, ay + (by - ay) * share


def _normal(seam: Line) -> Point:
    """The unit vector to the left of a seam."""
    (ax, ay), (bx, by) = seam
    long = dist(*seam)
    return -(by - ay) / long, (bx - ax) / long


def _ray(seam: Line, share: float, shapes: Shapes, reach_m: float) -> _Ray:
    at, way = _along(seam, share), _normal(seam)
    spans = sorted(_spans(at, way, shapes, max(reach_m, SEAT_M)))
    inside = next((s for s in spans if s[0] < -_HAIR_M and s[1] > _HAIR_M), None)
    wall = 0.0
    if inside is not None:
        near = [edge for edge in inside[:2] if abs(edge) <= SEAT_M]
        if not near:
            return _Ray(inside[2], inside[2], 0.0, 0.0)
        wall = min(near, key=abs)
    behind = [span for span in spans if span[1] <= wall + _HAIR_M]
    ahead = [span for span in spans if span[0] >= wall - _HAIR_M and span not in behind]
    low = max((span[1] for span in behind), default=None)
    high = min((span[0] for span in ahead), default=None)
    right = max(behind, key=lambda s: s[1])[2] if behind else None
    left = min(ahead, key=lambda s: s[0])[2] if ahead else None
    if low is None or high is None:
        low = high = _on_the_open_side(low, high)
    return _Ray(right, left, low, high)


def _on_the_open_side(low: float | None, high: float | None) -> float:
    """Where a seam with a room on one side only stands: where it is, but out of the room."""
    if low is not None:
        return max(0.0, low)
    return min(0.0, high) if high is not None else 0.0


def _spans(at: Point, way: Point, shapes: Shapes, reach_m: float) -> list[tuple[float, float, str]]:
    """Where rooms lie along the ray: from, to [m] and id."""
    (x, y), (nx, ny) = at, way
    ray = shapely.LineString(
        [(x - nx * reach_m, y - ny * reach_m), (x + nx * reach_m, y + ny * reach_m)]
    )
    found = []
    for room, shape in shapes:
        for part in shapely.get_parts(shapely.intersection(ray, shape)).tolist():
            if part.length >= _HAIR_M / 2:
                places = [(px - x) * nx + (py - y) * ny for px, py in part.coords]
                found.append((min(places), max(places), room))
    return found
