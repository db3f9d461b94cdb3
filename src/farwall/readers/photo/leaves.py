"""Leaves with their swings, and glass: the thin lines at the ends of walls.

At each outer corner of a wall a quarter circle is sought in the four quarters round it, by how much
ink lies along it; a leaf drawn open along one of its two sides must be there too.
"""

from __future__ import annotations

from math import hypot

import numpy as np
import numpy.typing as npt

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.photo.light import THIN_INK, Even, Mask
from farwall.readers.photo.outline import Edge
from farwall.readers.photo.solid import Solid

Real = npt.NDArray[np.float64]
_ARC, _LEAF = 0.85, 0.7
_RADII = (2.2, 22.0)
"""Of a swing, in depths of the wall: a leaf of 0.4 m in one of 0.18 m to 1.4 m in one of 0.065."""
_STEPS = 40
_WHOLE = 0.85


@dataclass(frozen=True)
class Leaf:
    """A leaf's swing [px]: its hinge, the two ends of its quarter circle, its radius."""

    hinge: Point
    ends: tuple[Point, Point]
    radius: float


def thin_ink(even: Even, solid: Solid) -> Mask:
    """Ink beside the walls, a pixel wider all round than drawn."""
    import cv2

    reach = round(solid.pen_px / 2 + 1) * 2 + 1
    walls = cv2.dilate(solid.mask, np.ones((reach, reach), np.uint8))
    fine = ((even < THIN_INK) & (walls == 0)).astype(np.uint8)
    return np.asarray(cv2.dilate(fine, np.ones((3, 3), np.uint8)), np.uint8)


def find_leaves(outlines: list[list[Edge]], thin: Mask, solid: Solid) -> list[Leaf]:
    """Every leaf that hangs at an outer corner of a wall."""
    found: list[Leaf] = []
    for edges in outlines:
        for edge in edges:
            if _is_jamb(edge, solid):
                for hinge in (edge.start, edge.end):
                    leaf = _leaf_at(hinge, edge, thin, solid)
                    if leaf is not None:
                        found.append(leaf)
    return found


def _is_jamb(edge: Edge, solid: Solid) -> bool:
    return 0.4 * solid.deep_px <= edge.length <= 2.2 * solid.deep_px


def _leaf_at(hinge: Point, edge: Edge, thin: Mask, solid: Solid) -> Leaf | None:
    """The best quarter circle round a corner, its axes those of the wall's end."""
    u = np.array(edge.way)
    v = np.array([-u[1], u[0]])
    radii = np.arange(
        _RADII[0] * solid.deep_px, min(_RADII[1] * solid.deep_px, 0.2 * max(thin.shape))
    )
    if not len(radii):
        return None
    best: tuple[float, Real, Real, float] | None = None
    angles = np.radians(np.linspace(6, 84, _STEPS))
    for a, b in ((u, v), (v, -u), (-u, -v), (-v, u)):
        ways = np.cos(angles)[:, None] * a + np.sin(angles)[:, None] * b
        ink = _looked(thin, np.array(hinge) + radii[:, None, None] * ways[None])
        along = ink.mean(axis=1)
        k = int(np.argmax(along))
        if along[k] < _ARC or (best is not None and along[k] <= best[0]):
            continue
        flat = np.flatnonzero(along >= along[k] - 0.05)
        run = flat[np.abs(flat - k) <= 0.5 * solid.deep_px]
        radius = float(radii[run].mean())
        if max(_drawn(thin, hinge, w, radius) for w in (a, b)) >= _LEAF:
            best = (float(along[k]), a, b, radius)
    if best is None:
        return None
    _, a, b, radius = best
    ends = [(hinge[0] + radius * w[0], hinge[1] + radius * w[1]) for w in (a, b)]
    return Leaf(hinge, (ends[0], ends[1]), radius)


def _drawn(thin: Mask, hinge: Point, way: Real, radius: float) -> float:
    """How much of a leaf's length is drawn, from beside its hinge to its tip."""
    along = np.linspace(0.15, 0.95, _STEPS) * radius
    across = np.array([-way[1], way[0]])
    shares = []
    for aside in (-2.0, 0.0, 2.0):
        spots = np.array(hinge) + along[:, None] * way + aside * across
        shares.append(float(_looked(thin, spots).mean()))
    return max(shares)


def _looked(thin: Mask, spots: Real) -> npt.NDArray[np.uint8]:
    high, wide = thin.shape
    x, y = np.rint(spots[..., 0]).astype(int), np.rint(spots[..., 1]).astype(int)
    inside = (x >= 0) & (y >= 0) & (x < wide) & (y < high)
    return np.where(inside, thin[np.clip(y, 0, high - 1), np.clip(x, 0, wide - 1)], 0)


def find_glass(outlines: list[list[Edge]], thin: Mask, solid: Solid) -> list[tuple[Point, Point]]:
    """Lines from the end of one wall to the end of the next, within its depth."""
    found: list[tuple[Point, Point]] = []
    for edges in outlines:
        for edge in edges:
            if _is_jamb(edge, solid):
                line = _pane(edge, thin, solid)
                if line is not None and not any(_same(line, other) for other in found):
                    found.append(line)
    return found


def _pane(edge: Edge, thin: Mask, solid: Solid) -> tuple[Point, Point] | None:
    """A line straight on from a wall's end, well within its depth, to the next wall."""
    start, end = np.array(edge.start), np.array(edge.end)
    out = np.array([edge.way[1], -edge.way[0]])
    if _looked(solid.mask, (start + end) / 2 + 3 * out):
        out = -out
    reach = np.arange(2.0, 40 * solid.deep_px)
    for share in np.linspace(0.3, 0.7, 9):
        foot = start + share * (end - start)
        walls = _looked(solid.mask, foot + reach[:, None] * out)
        hits = np.flatnonzero(walls)
        if not len(hits) or hits[0] < 2 * solid.deep_px:
            continue
        to = float(reach[hits[0]])
        inner = np.arange(0.1 * to, 0.9 * to)
        if _looked(thin, foot + inner[:, None] * out).mean() >= _WHOLE:
            a, b = foot, foot + to * out
            return (float(a[0]), float(a[1])), (float(b[0]), float(b[1]))
    return None


def _same(one: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    def middle(line: tuple[Point, Point]) -> Point:
        (ax, ay), (bx, by) = line
        return (ax + bx) / 2, (ay + by) / 2

    (ax, ay), (bx, by) = middle(one), middle(other)
    return hypot(ax - bx, ay - by) < 4
