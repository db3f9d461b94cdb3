"""A sheet that does not lie flat, flattened by its own edges.

What stands over the plane of the corners by h is seen from an eye at height z where the ray meets
that plane: moved away from the eye's foot by 1 / (1 - h / z), by similar triangles. Along an edge
of the sheet that shows how high the edge stands. From each edge to the opposite one the sheet is
taken to run straight: bent one way or the other, or like a cone, and folded along the edges, as
sheets come out of a roll or a pocket. Edges that agree are taken as one. Where two folds cross it
stands as high as the higher one, for paper does not stretch to a peak (guess). The eye is found
by the four corners (Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 8.8; from
memory), square pixels and the axis of the lens in the middle of the picture taken for granted.
"""

from __future__ import annotations

from functools import cached_property
from math import hypot

import numpy as np
import numpy.typing as npt

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.photo.opening import Grey
from farwall.readers.photo.rims import find_rims

Real = npt.NDArray[np.float64]
_USUAL_FOCAL, _FOCAL = 0.8, (0.4, 4.0)
_PLACES = 241
_SMOOTH = 2.0
_LEAST_MOVED = 0.0006
"""Of the sheet's longer side: less is no bend but the grain of the picture. Rank: guess."""
_ALIKE, _UNLIKE = 0.0008, 0.01
"""Of the sheet's longer side, as things at its far corner are moved: opposite edges that differ by
less are taken as one, by more it is asked whether the sheet runs straight between them. Guesses."""
_FOLD = 0.25
"""Of a side: what stands up on less of it is a fold. Rank: guess."""
_LEAST_LEVER = 0.15
"""An edge nearer to the eye's foot than this share of the sheet shows no height."""


@dataclass(frozen=True)
class Bend:
    """How a sheet stands over the plane of its corners, in pixels of the flattened picture.

    size: of it · eye: the point of the plane under the eye · across: height as a share of the
    eye's, at places set evenly from left to right, of the upper and of the lower edge · down: from
    top to bottom, of the left and of the right one · unlike_px: how much farther one of two
    opposite edges moves things than the other, at most.
    """

    size: tuple[int, int]
    eye: Point
    across: Real
    down: Real
    unlike_px: float = 0.0

    @cached_property
    def moved_px(self) -> float:
        """How far the bend moves a place of the sheet, at most; looked at in 41 by 41 places."""
        x, y = np.meshgrid(*(np.linspace(0.0, side, 41) for side in self.size))
        seen_x, seen_y = self.seen(x, y)
        return float(np.hypot(seen_x - x, seen_y - y).max())

    @property
    def straight(self) -> bool:
        """Whether the sheet lies flat, as far as the picture's grain lets it be seen."""
        return self.moved_px < _LEAST_MOVED * max(self.size)

    @property
    def contradicts(self) -> bool:
        """Whether opposite edges bow too unlike to be those of one bend."""
        return self.unlike_px > _UNLIKE * max(self.size)

    def seen(self, x: Real, y: Real) -> tuple[Real, Real]:
        """Where on the plane of the corners a place of the sheet is seen."""
        grown = 1 / (1 - self._height(x, y))
        return self.eye[0] + (x - self.eye[0]) * grown, self.eye[1] + (y - self.eye[1]) * grown

    def laid(self, x: float, y: float) -> Point:
        """The place of the sheet that is seen there."""
        sx, sy = x, y
        for _ in range(8):
            back = 1 - float(self._height(np.array(sx), np.array(sy)))
            sx = self.eye[0] + (x - self.eye[0]) * back
            sy = self.eye[1] + (y - self.eye[1]) * back
        return sx, sy

    def _height(self, x: Real, y: Real) -> Real:
        places = np.linspace(0.0, 1.0, _PLACES)
        u, v = np.clip(x / self.size[0], 0, 1), np.clip(y / self.size[1], 0, 1)
        bend_x, fold_x, bend_y, fold_y = (
            (1 - side) * np.interp(along, places, first) + side * np.interp(along, places, second)
            for (first, second), along, side in zip(
                self._parts, (u, u, v, v), (v, v, u, u), strict=True
            )
        )
        return np.asarray(bend_x + bend_y + np.maximum(fold_x, fold_y))

    @cached_property
    def _parts(self) -> tuple[Real, Real, Real, Real]:
        """Of both ways what is broad, a bend, and what stands on it narrowly, folds."""
        return (*_bend_and_folds(self.across), *_bend_and_folds(self.down))


def find_bend(
    grey: Grey, corners: tuple[Point, ...], to_flat: Real, size: tuple[int, int]
) -> Bend | None:
    """How the sheet stands by its edges; None where they are not seen or show no heights."""
    eye = _eye(to_flat, (grey.shape[1], grey.shape[0]))
    if eye is None:
        return None
    rims = [None if rim is None else _through(to_flat, rim) for rim in find_rims(grey, corners)]
    across = _heights([rims[0], rims[2]], 0, eye, size)
    down = _heights([rims[3], rims[1]], 1, eye, size)
    if across is None or down is None:
        return None
    return Bend(size, eye, across[0], down[0], max(across[1], down[1]))


def _through(to_flat: Real, points: Real) -> Real:
    seen = np.column_stack([points, np.ones(len(points))]) @ to_flat.T
    return np.asarray(seen[:, :2] / seen[:, 2:])


def _eye(to_flat: Real, picture: tuple[int, int]) -> Point | None:
    """The foot of the eye on the plane, by how a square on it is seen."""
    scale = float(max(picture))
    centred = np.array([[1, 0, -picture[0] / 2], [0, 1, -picture[1] / 2], [0, 0, scale]]) / scale
    plane = centred @ np.linalg.inv(to_flat)
    (a, b), (c, d), (e, f) = plane[:, :2]
    bent = np.array([a * b + c * d, a * a + c * c - b * b - d * d])
    straight = np.array([e * f, e * e - f * f])
    # Squareness says bent / focal² + straight = 0, twice; seen from straight above both are 0.
    power = float(bent @ bent)
    inverse = -float(bent @ straight) / power if power > 0 else 0.0
    focal = inverse**-0.5 if inverse > 0 else 0.0
    if not _FOCAL[0] < focal < _FOCAL[1]:
        focal = _USUAL_FOCAL
    seen = np.diag([1 / focal, 1 / focal, 1.0]) @ plane
    seen /= np.sqrt(np.hypot(*seen[:, 0][:2]) ** 2 + seen[2, 0] ** 2)
    first, second, away = seen.T
    turned = np.column_stack([first, second, np.cross(first, second)])
    if abs(np.linalg.det(turned)) < 1e-12:
        return None
    foot = -np.linalg.solve(turned, away)
    return float(foot[0]), float(foot[1])


def _heights(
    rims: list[Real | None], axis: int, eye: Point, size: tuple[int, int]
) -> tuple[Real, float] | None:
    """Heights along the two edges that run along an axis, and how far they lie apart [px]; None
    where neither shows any, one for both where only one does.
    """
    places = np.linspace(0.0, 1.0, _PLACES)
    found, levers = [], []
    for rim, edge in zip(rims, (0.0, float(size[1 - axis])), strict=True):
        lever = edge - eye[1 - axis]
        if rim is None or abs(lever) < _LEAST_LEVER * size[1 - axis]:
            continue
        grown = (rim[:, 1 - axis] - eye[1 - axis]) / lever
        along = (eye[axis] + (rim[:, axis] - eye[axis]) / grown) / size[axis]
        order = np.argsort(along)
        at = np.concatenate([[0.0], along[order], [1.0]])
        height = np.concatenate([[0.0], 1 - 1 / grown[order], [0.0]])
        found.append(_smooth(np.interp(places, at, height)))
        levers.append(lever)
    if not found:
        return None
    apart = np.ptp(found, axis=0) * _farthest(eye, size)
    if np.median(apart) > _ALIKE * max(size):
        return np.asarray(found), float(apart.max())
    mean = np.average(found, axis=0, weights=np.square(levers))
    return np.asarray([mean, mean]), 0.0


def _farthest(eye: Point, size: tuple[int, int]) -> float:
    """From the eye's foot to the farthest corner."""
    return hypot(*(max(at, side - at) for at, side in zip(eye, size, strict=True)))


def _bend_and_folds(heights: Real) -> tuple[Real, Real]:
    """The heights without what is narrower than a fold's ridge, and the rest, never below 0."""
    reach = round(_FOLD * _PLACES / 2)
    beyond = ((0, 0), (reach, reach))
    windows = np.lib.stride_tricks.sliding_window_view
    low = windows(np.pad(heights, beyond, mode="edge"), 2 * reach + 1, axis=1).min(axis=-1)
    broad = windows(np.pad(low, beyond, mode="edge"), 2 * reach + 1, axis=1).max(axis=-1)
    return np.asarray(broad), np.asarray(heights - broad)


def _smooth(values: Real) -> Real:
    """Without the grain of the edge; nothing at both ends, where the corners are."""
    middle = np.median(np.stack([np.roll(values, n) for n in (-2, -1, 0, 1, 2)]), axis=0)
    middle[:2], middle[-2:] = values[:2], values[-2:]
    reach = int(4 * _SMOOTH)
    kernel = np.exp(-0.5 * (np.arange(-reach, reach + 1) / _SMOOTH) ** 2)
    wide = np.concatenate([-middle[reach:0:-1], middle, -middle[-2 : -reach - 2 : -1]])
    return np.asarray(np.convolve(wide, kernel / kernel.sum(), mode="valid"))
