"""Where the sheet lies in a photo: the largest light four-sided thing, offered as a proposal.

Its sides are fitted to the edge of the paper between light and dark, to parts of a pixel, away
from the corners, which are often curled or hidden under a thumb.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from farwall.floor.geometry import Point
from farwall.readers.photo.opening import Grey

Real = npt.NDArray[np.float64]
_LOOK_PX = 900
_LEAST_SHARE, _MOST_SHARE = 0.12, 0.97
_REACH = 0.006
_SAMPLES, _FROM = 240, 0.02
_AGREE_PX, _STRAIGHT, _LOCAL = 1.0, 0.7, 30
"""Points of a side lie this near its line; where fewer than this share do, the side is bent, and
only so many points beside the corner are asked."""


def find_corners(grey: Grey) -> tuple[Point, ...]:
    """The sheet's corners [px], clockwise from the upper left one; empty where none is seen."""
    import cv2

    high, wide = grey.shape
    factor = min(1.0, _LOOK_PX / max(high, wide))
    small = cv2.resize(grey, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
    soft = cv2.GaussianBlur(grey, (0, 0), 1.2).astype(np.float32)
    fitted = [
        _fitted(soft, (rough + 0.5) / factor - 0.5) for rough in _light(np.asarray(small, np.uint8))
    ]
    if not fitted:
        return ()
    # Where a shadow's edge cuts a corner off, its sides lie on no edge of paper; where it cuts the
    # sheet in two, the whole is larger.
    fine = max(fitted, key=lambda found: found[1] * _area(found[0]))[0]
    return tuple((float(x) + 0.5, float(y) + 0.5) for x, y in _clockwise(fine))


def _area(four: Real) -> float:
    x, y = four[:, 0], four[:, 1]
    return abs(float(x @ np.roll(y, -1) - y @ np.roll(x, -1))) / 2


def _light(small: Grey) -> list[Real]:
    """Four points of the best light quadrilateral at each of a few cuts of light."""
    import cv2

    soft = cv2.GaussianBlur(
        cv2.morphologyEx(small, cv2.MORPH_CLOSE, np.ones((9, 9), np.uint8)), (5, 5), 0
    )
    level, _ = cv2.threshold(soft, 0, 255, cv2.THRESH_BINARY + cv2.THRESH_OTSU)
    whole = float(small.size)
    masks = [
        (soft > cut).astype(np.uint8) for cut in (level, 0.8 * level, 0.6 * level, 1.15 * level)
    ]
    masks.append(_between_edges(np.asarray(soft, np.uint8)))
    found: list[Real] = []
    for mask in masks:
        best: tuple[float, Real] | None = None
        opened = cv2.morphologyEx(mask, cv2.MORPH_OPEN, np.ones((7, 7), np.uint8))
        outlines, _ = cv2.findContours(opened, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
        for outline in outlines:
            hull = cv2.convexHull(outline)
            area = cv2.contourArea(hull)
            if not _LEAST_SHARE * whole <= area <= _MOST_SHARE * whole:
                continue
            four = _four(np.asarray(hull, np.int32))
            if four is None:
                continue
            full = cv2.contourArea(outline) / max(cv2.contourArea(four.astype(np.float32)), 1.0)
            if 0.85 <= full <= 1.1:
                score = area * (1 - 4 * abs(1 - full))
                if best is None or score > best[0]:
                    best = (score, four)
        if best is not None and not any(np.allclose(best[1], one, atol=1.0) for one in found):
            found.append(best[1])
    return found


def _between_edges(soft: Grey) -> Grey:
    """What edges of light enclose: for a sheet half in shadow, as dark there as a light table."""
    import cv2

    edges = cv2.dilate(cv2.Canny(soft, 25, 75), np.ones((3, 3), np.uint8))
    high, wide = edges.shape
    flood = np.zeros((high + 2, wide + 2), np.uint8)
    flood[1:-1, 1:-1] = edges
    space = np.zeros_like(edges)
    for x, y in ((0, 0), (wide - 1, 0), (0, high - 1), (wide - 1, high - 1)):
        if not flood[y + 1, x + 1]:
            cv2.floodFill(space, flood, (x, y), (1,))
    return np.asarray(1 - space, np.uint8)


def _four(hull: npt.NDArray[np.int32]) -> Real | None:
    import cv2

    around = cv2.arcLength(hull, closed=True)
    for share in (0.01, 0.015, 0.02, 0.03, 0.045, 0.06, 0.08):
        found = cv2.approxPolyDP(hull, share * around, closed=True)
        if len(found) == 4:
            return np.asarray(found.reshape(4, 2), np.float64)
        if len(found) < 4:
            return None
    return None


def _fitted(soft: npt.NDArray[np.float32], rough: Real) -> tuple[Real, float]:
    """The corners where the fitted sides cross, each by the parts of the sides beside it.

    With them how much of the sides' beginnings and ends lies in line with its corners, 0 to 1.
    """
    reach = _REACH * max(soft.shape)
    found, agree = rough, 0.0
    for span in (reach, 0.4 * reach):
        middle = found.mean(axis=0)
        sides = [_edge(soft, (found[k], found[(k + 1) % 4], middle), span) for k in range(4)]
        crossed = [
            _crossing(_near(sides[k - 1], last=True), _near(sides[k], last=False)) for k in range(4)
        ]
        again = [c for c in crossed if c is not None]
        if len(again) < 4 or np.max(np.abs(np.array(again) - rough)) > 3 * reach:
            return found, 0.0
        found = np.array(again)
        agree = min(_in_line(sides[k], found[k], found[(k + 1) % 4]) for k in range(4))
    return found, agree


def _in_line(points: Real, start: Real, end: Real) -> float:
    """Share of the points beside each corner that lie on one line with it; the worse end's."""
    shares = []
    for part, corner in ((points[:_LOCAL], start), (points[-_LOCAL:], end)):
        near = part[_most_agree(part)]
        middle, way = _line(near)
        off = abs(float((corner - middle) @ np.array([-way[1], way[0]])))
        shares.append(len(near) / len(part) if off < 12 * _AGREE_PX else 0.0)
    return min(shares)


def _edge(soft: npt.NDArray[np.float32], side: tuple[Real, Real, Real], reach: float) -> Real:
    """Points where the light paper ends; `side`: the two ends of one side, the sheet's middle."""
    import cv2

    start, end, middle = side
    way = (end - start) / np.hypot(*(end - start))
    across = np.array([-way[1], way[0]])
    steps = np.arange(-reach, reach + 0.25, 0.5)
    along = start + np.linspace(_FROM, 1 - _FROM, _SAMPLES)[:, None] * (end - start)
    spots = along[:, None, :] + steps[None, :, None] * across
    light = cv2.remap(
        soft, spots[..., 0].astype(np.float32), spots[..., 1].astype(np.float32), cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_REPLICATE,
    )  # fmt: skip
    inwards = float(np.sign((middle - start) @ across))
    rise = np.maximum(0.0, inwards * np.gradient(light, axis=1))
    best = _outermost(rise, -inwards)
    offsets = (
        np.array([_peak(row, int(k)) for row, k in zip(rise, best, strict=True)]) * 0.5 - reach
    )
    return np.asarray(along + offsets[:, None] * across)


def _near(points: Real, *, last: bool) -> tuple[Real, Real]:
    """The line of a side: of the whole where it is straight, else of its part at that end."""
    whole = _most_agree(points)
    if whole.sum() > _STRAIGHT * len(points):
        return _line(points[whole])
    part = points[-_LOCAL:] if last else points[:_LOCAL]
    return _line(part[_most_agree(part)])


def _most_agree(points: Real) -> npt.NDArray[np.bool_]:
    """Which points lie along the line through two of them on which most agree."""
    best = np.ones(len(points), bool)
    most = 0
    for step in (len(points) // 2, len(points) // 3, len(points) // 4):
        for k in range(len(points) - step):
            way = points[k + step] - points[k]
            long = np.hypot(*way)
            if long < 1:
                continue
            off = np.abs((points - points[k]) @ np.array([-way[1], way[0]])) / long
            agree = off <= _AGREE_PX
            if agree.sum() > most:
                best, most = agree, int(agree.sum())
    return best


def _line(points: Real) -> tuple[Real, Real]:
    middle = points.mean(axis=0)
    return middle, np.linalg.svd(points - middle, full_matrices=False)[2][0]


def _outermost(rise: npt.NDArray[np.float32], out: float) -> npt.NDArray[np.intp]:
    """The outermost strong edge of each row: a frame drawn near the paper's edge lies inside."""
    ordered = rise if out < 0 else rise[:, ::-1]
    inner = ordered[:, 1:-1]
    peak = (inner >= ordered[:, :-2]) & (inner >= ordered[:, 2:])
    strong = peak & (inner >= 0.45 * ordered.max(axis=1, keepdims=True))
    first = np.argmax(strong, axis=1) + 1
    return np.asarray(first if out < 0 else rise.shape[1] - 1 - first)


def _peak(row: npt.NDArray[np.float32], k: int) -> float:
    """The place of a peak between samples, by the parabola through three."""
    if not 0 < k < len(row) - 1:
        return float(k)
    a, b, c = (float(row[n]) for n in (k - 1, k, k + 1))
    bend = a - 2 * b + c
    return k + (0.5 * (a - c) / bend if bend < -1e-9 else 0.0)


def _crossing(first: tuple[Real, Real], second: tuple[Real, Real]) -> Real | None:
    (p, u), (q, v) = first, second
    turn = u[0] * v[1] - u[1] * v[0]
    if abs(turn) < 0.05:
        return None
    t = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / turn
    return np.asarray(p + t * u)


def _clockwise(points: Real) -> Real:
    """Clockwise on the screen, the one nearest the upper left first."""
    middle = points.mean(axis=0)
    turn = np.arctan2(points[:, 1] - middle[1], points[:, 0] - middle[0])
    ordered = points[np.argsort(turn)]
    first = int(np.argmin(ordered.sum(axis=1)))
    return np.roll(ordered, -first, axis=0)
