"""The sheet laid flat: four corners to a rectangle, its lines level.

A plane seen by a lens without distortion is a projective image of itself, which four points fix
(Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 4.1; from memory). What stands off
the plane, by a fold or a bend, is laid back as far as the sheet's edges show it (`bent`).
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.photo.bent import Bend, find_bend
from farwall.readers.photo.opening import WORKING_PIXELS, Grey

Real = npt.NDArray[np.float64]
_MOST_SKEW_DEG = 8.0
_LEAST_SKEW_DEG = 0.02
_STEP = 8
_USUAL_FOCAL, _FOCAL = 0.8, (0.4, 4.0)
"""Of a telephone's lens, in longer sides of the picture: 0.7 to 0.8 are usual (from memory)."""


@dataclass(frozen=True)
class Flat:
    """The flattened picture; `to_plane` takes a place of the picture [px] to the plane of the
    sheet's corners.

    `px_per_mm` of paper, None where nobody told the size of the sheet; `turned_deg` how far the
    lines of the drawing were off the level; `bend`: how the sheet stands over that plane, None
    where its edges were not seen.
    """

    grey: Grey
    to_plane: Real
    px_per_mm: float | None
    turned_deg: float = 0.0
    bend: Bend | None = None

    def place(self, point: Point) -> Point:
        """A place of the picture in the flattened one [px]."""
        x, y, w = self.to_plane @ np.array([point[0], point[1], 1.0])
        on_sheet = float(x / w), float(y / w)
        if self.bend is not None and not self.bend.straight:
            on_sheet = self.bend.laid(*on_sheet)
        high, wide = self.grey.shape
        x, y, _ = _turned(self.turned_deg, (wide, high)) @ np.array([*on_sheet, 1.0])
        return float(x), float(y)


def flatten(
    grey: Grey, corners: tuple[Point, ...] = (), paper_mm: tuple[float, float] | None = None
) -> Flat:
    """The sheet within the corners [px], clockwise from its upper left, or the whole picture."""
    high, wide = grey.shape
    four = corners or (
        (0.0, 0.0),
        (float(wide), 0.0),
        (float(wide), float(high)),
        (0.0, float(high)),
    )
    size, px_per_mm = _size(four, paper_mm, _aspect(four, (wide, high)) if corners else wide / high)
    to_plane = _through(four, size)
    bend = find_bend(grey, corners, to_plane, size) if corners else None
    turn = _skew(_laid(grey, to_plane, size, 0.0, bend))
    turn = turn if abs(turn) >= _LEAST_SKEW_DEG else 0.0
    return Flat(_laid(grey, to_plane, size, turn, bend), to_plane, px_per_mm, turn, bend)


def _size(
    four: tuple[Point, ...], paper_mm: tuple[float, float] | None, aspect: float
) -> tuple[tuple[int, int], float | None]:
    """Pixels across and down, and pixels to a millimetre of paper; `aspect`: across to down."""
    sides = [float(np.hypot(*np.subtract(four[(k + 1) % 4], four[k]))) for k in range(4)]
    across, down = max(sides[0], sides[2]), max(sides[1], sides[3])
    across, down = max(across, down * aspect), max(down, across / aspect)
    px_per_mm = None
    if paper_mm is not None:
        long, short = max(paper_mm), min(paper_mm)
        wide_mm, high_mm = (long, short) if aspect >= 1 else (short, long)
        px_per_mm = max(across / wide_mm, down / high_mm)
        px_per_mm = min(px_per_mm, (WORKING_PIXELS / (wide_mm * high_mm)) ** 0.5)
        return (round(wide_mm * px_per_mm), round(high_mm * px_per_mm)), px_per_mm
    smaller = min(1.0, (WORKING_PIXELS / (across * down)) ** 0.5)
    return (max(8, round(across * smaller)), max(8, round(down * smaller))), None


def _aspect(four: tuple[Point, ...], size: tuple[int, int]) -> float:
    """Across to down of the sheet itself, by how its far sides shrink.

    Square pixels, the axis of the lens in the middle of the picture (Zhang and He, Whiteboard
    scanning and image enhancement, 2007, equations 11 to 20; from memory). Seen nearly squarely
    it cannot be told so, and the sides as they are seen are taken.
    """
    sides = [float(np.hypot(*np.subtract(four[(k + 1) % 4], four[k]))) for k in range(4)]
    seen = (sides[0] + sides[2]) / (sides[1] + sides[3])
    focal = float(max(size))
    middle = (size[0] / 2, size[1] / 2)
    ul, ur, lr, ll = (np.array([*np.subtract(p, middle) / focal, 1.0]) for p in four)
    k2 = (np.cross(ul, lr) @ ll) / (np.cross(ur, lr) @ ll)
    k3 = (np.cross(ul, lr) @ ur) / (np.cross(ll, lr) @ ur)
    n2, n3 = k2 * ur - ul, k3 * ll - ul
    if abs(n2[2] * n3[2]) < 1e-4:
        f2 = _USUAL_FOCAL**2
    else:
        f2 = float(-(n2[0] * n3[0] + n2[1] * n3[1]) / (n2[2] * n3[2]))
        f2 = f2 if _FOCAL[0] ** 2 < f2 < _FOCAL[1] ** 2 else _USUAL_FOCAL**2
    ratio = np.hypot(np.hypot(n2[0], n2[1]) / f2**0.5, n2[2]) / np.hypot(
        np.hypot(n3[0], n3[1]) / f2**0.5, n3[2]
    )
    return float(ratio) if np.isfinite(ratio) and 0.2 < ratio < 5 else seen


def _through(four: tuple[Point, ...], size: tuple[int, int]) -> Real:
    """Corners are those of pixels here: a picture reaches from 0 to its width."""
    import cv2

    flat = np.array([(0, 0), (size[0], 0), (size[0], size[1]), (0, size[1])], np.float32)
    return np.asarray(cv2.getPerspectiveTransform(np.array(four, np.float32), flat), np.float64)


def _warped(grey: Grey, to_flat: Real, size: tuple[int, int]) -> Grey:
    import cv2

    middle = np.array([[1.0, 0.0, -0.5], [0.0, 1.0, -0.5], [0.0, 0.0, 1.0]])
    by_centres = middle @ to_flat @ np.linalg.inv(middle)
    flat = cv2.warpPerspective(
        grey, by_centres, size, flags=cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE
    )
    return np.asarray(flat, np.uint8)


def _laid(
    grey: Grey, to_plane: Real, size: tuple[int, int], turn_deg: float, bend: Bend | None
) -> Grey:
    """The sheet flattened and turned, what stands over the plane laid back."""
    turned = _turned(turn_deg, size)
    if bend is None or bend.straight:
        return _warped(grey, turned @ to_plane, size)
    import cv2

    # Each eighth place is reckoned, one more at each edge; between them the way is straight.
    x, y = np.meshgrid(*((np.arange(-1, -(-side // _STEP) + 1) + 0.5) * _STEP for side in size))
    back = np.linalg.inv(turned)
    x, y = (back[n, 0] * x + back[n, 1] * y + back[n, 2] for n in (0, 1))
    seen = np.stack([*bend.seen(x, y), np.ones_like(x)], axis=-1) @ np.linalg.inv(to_plane).T
    across, down = (_between(seen[..., n] / seen[..., 2] - 0.5, size) for n in (0, 1))
    flat = cv2.remap(grey, across, down, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    return np.asarray(flat, np.uint8)


def _between(reckoned: Real, size: tuple[int, int]) -> npt.NDArray[np.float32]:
    import cv2

    coarse = reckoned.astype(np.float32)
    whole = cv2.resize(coarse, None, fx=_STEP, fy=_STEP, interpolation=cv2.INTER_LINEAR)
    return np.asarray(whole[_STEP : _STEP + size[1], _STEP : _STEP + size[0]], np.float32)


def _skew(flat: Grey) -> float:
    """How far the longest lines are off the level or the upright [degrees], 0 beyond 8."""
    import cv2

    factor = min(1.0, 2000 / max(flat.shape))
    small = cv2.resize(flat, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
    high, wide = small.shape
    found = cv2.createLineSegmentDetector().detect(small)[0]
    ends = np.zeros((0, 4)) if np.ndim(found) == 0 else np.asarray(found).reshape(-1, 4)
    dx, dy = ends[:, 2] - ends[:, 0], ends[:, 3] - ends[:, 1]
    long = np.hypot(dx, dy)
    off = (np.degrees(np.arctan2(dy, dx)) + 45) % 90 - 45
    near = (np.abs(off) <= _MOST_SKEW_DEG) & (long > 0.02 * max(high, wide))
    if near.sum() < 4:
        return 0.0
    off, weight = off[near], long[near] ** 2
    middle = _weighted_median(off, weight)
    close = np.abs(off - middle) < 0.7
    return float(np.average(off[close], weights=weight[close]))


def _weighted_median(values: Real, weights: Real) -> float:
    order = np.argsort(values)
    run = np.cumsum(weights[order])
    return float(values[order][np.searchsorted(run, run[-1] / 2)])


def _turned(turn_deg: float, size: tuple[int, int]) -> Real:
    import cv2

    middle = (size[0] / 2, size[1] / 2)
    return np.vstack([cv2.getRotationMatrix2D(middle, turn_deg, 1.0), [0.0, 0.0, 1.0]])
