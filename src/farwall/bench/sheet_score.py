"""How well a floor was read from a picture: rooms found, their areas, their corners."""

from __future__ import annotations

from math import hypot

import numpy as np
import numpy.typing as npt
import shapely
from shapely.affinity import translate

from farwall.floor.nouns import Floor
from farwall.nouns import dataclass

_SAME = 0.7


@dataclass(frozen=True)
class Score:
    """rooms, found: how many there are and were · area: share of each found room's area off ·
    corner_m: how far off each corner of these rooms is [m] · ways, ways_found: openings · false:
    rooms read that are none.
    """

    rooms: int
    found: int
    area: tuple[float, ...]
    corner_m: tuple[float, ...]
    ways: int
    ways_found: int
    false: int


def score(true: Floor, read: Floor) -> Score:
    """Rooms are matched by what they share; the whole is shifted, never turned or scaled."""
    trues = [room.polygon.shape for room in true.rooms]
    reads = [room.polygon.shape for room in read.rooms]
    dx, dy = _shift(trues, reads)
    reads = [translate(shape, dx, dy) for shape in reads]
    pairs = _pairs(trues, reads)
    areas = tuple(reads[k].area / trues[n].area - 1 for n, k in pairs)
    corners = tuple(off for n, k in pairs for off in _corners(trues[n], reads[k]))
    middles = [shapely.LineString(one.line).centroid for one in true.openings]
    seen = [translate(shapely.LineString(one.line), dx, dy).centroid for one in read.openings]
    ways = sum(any(one.distance(other) < 0.3 for other in seen) for one in middles)
    return Score(
        len(trues), len(pairs), areas, corners, len(middles), ways, len(reads) - len(pairs)
    )


def _shift(trues: list[shapely.Polygon], reads: list[shapely.Polygon]) -> tuple[float, float]:
    """From the read floor to the true one: lower left corners first, then by the matched rooms."""
    if not reads:
        return 0.0, 0.0
    low, seen = shapely.unary_union(trues).bounds, shapely.unary_union(reads).bounds
    dx, dy = low[0] - seen[0], low[1] - seen[1]
    for _ in range(2):
        moved = [translate(shape, dx, dy) for shape in reads]
        offs = [off for n, k in _pairs(trues, moved) for off in _offsets(trues[n], moved[k])]
        if offs:
            mean = np.median(np.array(offs), axis=0)
            dx, dy = dx + float(mean[0]), dy + float(mean[1])
    return dx, dy


def _pairs(trues: list[shapely.Polygon], reads: list[shapely.Polygon]) -> list[tuple[int, int]]:
    shared = [
        (one.intersection(other).area / one.union(other).area, n, k)
        for n, one in enumerate(trues)
        for k, other in enumerate(reads)
        if one.intersects(other)
    ]
    taken: set[tuple[str, int]] = set()
    pairs = []
    for share, n, k in sorted(shared, reverse=True):
        if share >= _SAME and not {("true", n), ("read", k)} & taken:
            taken |= {("true", n), ("read", k)}
            pairs.append((n, k))
    return pairs


def _points(shape: shapely.Polygon) -> npt.NDArray[np.float64]:
    return np.array([p for ring in (shape.exterior, *shape.interiors) for p in ring.coords[:-1]])


def _offsets(true: shapely.Polygon, read: shapely.Polygon) -> list[tuple[float, float]]:
    """From the nearest corner that was read to each true corner."""
    seen = _points(read)
    found = []
    for corner in _points(_plain(true)):
        off = corner - seen[np.argmin(np.hypot(*(seen - corner).T))]
        found.append((float(off[0]), float(off[1])))
    return found


def _plain(shape: shapely.Polygon) -> shapely.Polygon:
    plain = shape.simplify(0.001)
    return plain if isinstance(plain, shapely.Polygon) else shape


def _corners(true: shapely.Polygon, read: shapely.Polygon) -> list[float]:
    return [hypot(*off) for off in _offsets(true, read)]
