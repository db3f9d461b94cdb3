"""Our own target by its four markers: where its plane lies in the photo."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.targets.nouns import Target

Real = NDArray[np.float64]
_LEAST_MARKERS = 3
_MOST_OFF, _MOST_OFF_PX = 0.05, 3.0
"""Of a marker's side, or points, that its corners may lie off the plane of all: white spreads over
black where a photo is soft. Rank: guess."""


def plane_of_markers(rgb: NDArray[np.uint8], target: Target) -> Real | None:
    """From millimetres of the target to pixels of the photo; None where it is not seen.

    Three of four markers do: a thumb may lie on one. The corners of all have to fit one plane.
    """
    import cv2

    grey = cv2.cvtColor(rgb, cv2.COLOR_RGB2GRAY)
    book = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    how = cv2.aruco.DetectorParameters()
    how.cornerRefinementMethod = cv2.aruco.CORNER_REFINE_SUBPIX
    how.adaptiveThreshWinSizeMax = 53
    how.adaptiveThreshWinSizeStep = 10
    corners, numbers, _ = cv2.aruco.ArucoDetector(book, how).detectMarkers(grey)
    seen = {int(n): c.reshape(4, 2) for n, c in zip(_flat(numbers), corners, strict=False)}
    ours = [one for one in target.markers if one.number in seen]
    if len(ours) < _LEAST_MARKERS:
        return None
    known = np.array([corner for one in ours for corner in _corners(one.at_mm, one.side_mm)])
    found = np.vstack([seen[one.number] for one in ours]) + 0.5
    plane = np.asarray(cv2.findHomography(known, found, 0)[0], np.float64)
    if plane.shape != (3, 3):
        return None
    off = np.hypot(*(placed(plane, known) - found).T)
    sides = np.hypot(*(found[1::4] - found[::4]).T)
    return None if off.max() > max(_MOST_OFF_PX, _MOST_OFF * sides.min()) else plane


def placed(plane: Real, places: Real) -> Real:
    """Places, rows of x and y, through a plane's map."""
    ends = np.column_stack([places, np.ones(len(places))]) @ np.asarray(plane).T
    return np.asarray(ends[:, :2] / ends[:, 2:])


def _flat(numbers: object) -> list[int]:
    return [] if numbers is None else [int(one) for one in np.ravel(numbers)]  # type: ignore[call-overload]


def _corners(at: tuple[float, float], side: float) -> list[tuple[float, float]]:
    x, y, half = *at, side / 2
    return [(x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half)]
