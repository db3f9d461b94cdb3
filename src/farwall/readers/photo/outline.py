"""The outline of the walls as straight edges, each laid to parts of a pixel by the light across it.

Edges near the level or the upright are set exactly so: a house is built square, and a photo is not.
"""

from __future__ import annotations

from math import cos, hypot, radians, sin

import numpy as np
import numpy.typing as npt

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.photo.light import Even
from farwall.readers.photo.solid import Solid

Real = npt.NDArray[np.float64]
_SQUARE_DEG = 3.0
_OFF_PX = 7.0
_LEAST_EDGES = 4


@dataclass(frozen=True)
class Edge:
    """One straight edge of a wall's outline: a point on it, its way, where it begins and ends."""

    at: Point
    way: Point
    start: Point
    end: Point

    @property
    def length(self) -> float:
        """From the corner where it begins to the one where it ends [px]."""
        return hypot(self.end[0] - self.start[0], self.end[1] - self.start[1])


def find_outlines(even: Even, solid: Solid) -> list[list[Edge]]:
    """Closed outlines of the walls [px, x right, y down], the wall on one side of all edges."""
    import cv2

    least = max(6.0, 2 * solid.deep_px) * max(3.0, solid.deep_px) * 0.5
    rings, _ = cv2.findContours(solid.mask, cv2.RETR_CCOMP, cv2.CHAIN_APPROX_NONE)
    found = []
    for ring in rings:
        if cv2.contourArea(ring) < least:
            continue
        rough = cv2.approxPolyDP(ring, max(2.0, 0.2 * solid.deep_px), closed=True).reshape(-1, 2)
        edges = _fitted(rough.astype(np.float64), even, solid)
        if len(edges) >= _LEAST_EDGES:
            found.append(edges)
    return found


def _fitted(rough: Real, even: Even, solid: Solid) -> list[Edge]:
    lines = []
    for start, end in zip(rough, np.roll(rough, -1, axis=0), strict=True):
        long = float(np.hypot(*(end - start)))
        if long >= max(3.0, 0.22 * solid.deep_px):
            lines.append((*_line(start, end, even, solid), long))
    lines = _without_bevels(lines, solid.deep_px)
    return _met(_merged(lines, 0.3 * solid.deep_px + 1))


Line = tuple[Real, Real, float]
"""A point, a way, how long it is."""


def _line(start: Real, end: Real, even: Even, solid: Solid) -> tuple[Real, Real]:
    """The edge between two rough corners, by the light across it."""
    import cv2

    way = (end - start) / np.hypot(*(end - start))
    long = float(np.hypot(*(end - start)))
    square = _square(way, long)
    if square is not None:
        way = square
    across = np.array([-way[1], way[0]])
    cut_off = min(0.3 * long, solid.deep_px)
    count = max(3, int((long - 2 * cut_off) / 1.5))
    spots = start + np.linspace(cut_off, long - cut_off, count)[:, None] * (end - start) / long
    reach = 0.45 * solid.deep_px if solid.style == "filled" else solid.pen_px + 2
    steps = np.arange(-reach, reach + 0.01, 0.5)
    grid = spots[:, None, :] + steps[None, :, None] * across
    seen = cv2.remap(
        even, grid[..., 0].astype(np.float32), grid[..., 1].astype(np.float32), cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_REPLICATE,
    )  # fmt: skip
    light = np.asarray(seen, np.float32)
    offsets = _crossings(light, steps, solid) if solid.style == "filled" else _ridges(light, steps)
    kept = np.isfinite(offsets)
    if kept.sum() < 2:
        return start, way
    points = spots[kept] + offsets[kept][:, None] * across
    if square is not None or kept.sum() < 8:
        return _beside(points, offsets[kept], across), way
    return _through(points, offsets[kept], way)


def _agreeing(points: Real, offsets: Real) -> Real:
    """The points that lie with most of them."""
    off = np.abs(offsets - np.median(offsets))
    return points[off <= max(1.0, 2 * float(np.median(off)))]


def _beside(points: Real, offsets: Real, across: Real) -> Real:
    """A point on the line of known way."""
    kept = _agreeing(points, offsets)
    centre = kept.mean(axis=0)
    return np.asarray(centre + (float(np.median(kept @ across)) - float(centre @ across)) * across)


def _through(points: Real, offsets: Real, way: Real) -> tuple[Real, Real]:
    """The straight line through the points, by least squares of the distances from it."""
    kept = _agreeing(points, offsets)
    centre = kept.mean(axis=0)
    fitted = np.linalg.svd(kept - centre, full_matrices=False)[2][0]
    return centre, fitted if fitted @ way > 0 else -fitted


def _square(way: Real, long: float) -> Real | None:
    """The level or upright way that an edge nearly has, for a short one to a pixel or two."""
    least = min(cos(radians(_SQUARE_DEG)), max(cos(radians(40)), cos(_OFF_PX / max(long, 1.0))))
    for k in range(4):
        exact = np.array([(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0)][k])
        if way @ exact > least:
            return exact
    return None


def _crossings(light: npt.NDArray[np.float32], steps: Real, solid: Solid) -> Real:
    """Where the light passes the cut nearest the middle, along each row."""
    below = light < solid.cut
    change = below[:, 1:] != below[:, :-1]
    found = np.full(len(light), np.nan)
    for row in range(len(light)):
        places = np.flatnonzero(change[row])
        if not len(places):
            continue
        k = places[np.argmin(np.abs(steps[places] + 0.25))]
        a, b = float(light[row, k]), float(light[row, k + 1])
        found[row] = steps[k] + 0.5 * (solid.cut - a) / (b - a)
    return found


def _ridges(light: npt.NDArray[np.float32], steps: Real) -> Real:
    """The middle of the line's ink along each row."""
    ink = np.maximum(0.0, 0.92 - light.astype(np.float64))
    weight = ink.sum(axis=1)
    middle = (ink * steps).sum(axis=1) / np.maximum(weight, 1e-9)
    return np.where(weight > 0.3, middle, np.nan)


def _without_bevels(lines: list[Line], deep_px: float) -> list[Line]:
    """Short slanted edges between two square ones left out: a corner that pixels have rounded.

    Between two that run on the same way it is a step, and is set square to them.
    """
    kept = []
    for k, one in enumerate(lines):
        before, after = lines[k - 1], lines[(k + 1) % len(lines)]
        squares = [_exactly_square(way) for _, way, _ in (before, one, after)]
        along = float(before[1] @ after[1])
        slanted = squares == [True, False, True]
        if slanted and along > 0.9 and one[2] < 1.2 * deep_px:
            up = np.array([-before[1][1], before[1][0]])
            kept.append((one[0], up if one[1] @ up > 0 else -up, one[2]))
        elif not (slanted and abs(along) < 0.1 and one[2] < 0.8 * deep_px):
            kept.append(one)
    return kept


def _exactly_square(way: Real) -> bool:
    return float(np.max(np.abs(way))) > 1 - 1e-9


def _merged(lines: list[Line], near: float) -> list[Line]:
    """Edges that follow each other in one line made one, by their lengths."""
    merged = list(lines)
    k = 0
    while len(merged) > _LEAST_EDGES and k < len(merged):
        (p, u, a), (q, v, b) = merged[k - 1], merged[k]
        if u @ v > cos(radians(12)) and abs((q - p) @ np.array([-u[1], u[0]])) < near + 0.03 * min(
            a, b
        ):
            way = (a * u + b * v) / hypot(*(a * u + b * v))
            square = _square(way, a + b)
            merged[k - 1] = ((a * p + b * q) / (a + b), way if square is None else square, a + b)
            del merged[k]
            k = max(0, k - 1)
        else:
            k += 1
    return merged


def _met(lines: list[Line]) -> list[Edge]:
    """The edges from corner to corner; between two that run alongside, a step square to them."""
    stepped: list[Line] = []
    for k, one in enumerate(lines):
        before = lines[k - 1]
        if k or len(lines) > 1:
            turn = abs(before[1][0] * one[1][1] - before[1][1] * one[1][0])
            if turn < sin(radians(20)):
                middle = before[0] + ((one[0] - before[0]) @ before[1]) / 2 * before[1]
                way = np.array([-before[1][1], before[1][0]])
                stepped.append((middle, way if (one[0] - middle) @ way > 0 else -way, 1.0))
        stepped.append(one)
    corners = [_crossing(stepped[k - 1], stepped[k]) for k in range(len(stepped))]
    if any(corner is None for corner in corners):
        return []
    edges = []
    for k, (at, way, _) in enumerate(stepped):
        start, end = corners[k], corners[(k + 1) % len(corners)]
        assert start is not None
        assert end is not None
        edges.append(Edge(_pair(at), _pair(way), _pair(start), _pair(end)))
    return edges


def _crossing(first: Line, second: Line) -> Real | None:
    (p, u, _), (q, v, _) = first, second
    turn = u[0] * v[1] - u[1] * v[0]
    if abs(turn) < 0.1:
        return None
    t = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / turn
    return np.asarray(p + t * u)


def _pair(point: Real) -> Point:
    return float(point[0]), float(point[1])
