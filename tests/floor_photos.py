"""Photographs of an invented floor by a camera whose place is known; the truth of no real one."""

from __future__ import annotations

from functools import cache

import numpy as np
import numpy.typing as npt

from farwall.readers.floor_photo.nouns import Ground, Pair

SIZE = (2000, 1500)
ROOM = Ground((((0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0), (0.0, 0.0)),))
POINTS = {"A": (2.0, 1.0), "B": (4.0, 1.0), "C": (5.0, 3.9), "D": (1.0, 3.9), "E": (3.0, 2.0)}
PATCH, PATCH_M = (3.2, 2.4), 0.15
SHINE, SHINE_M = (2.2, 1.8), (0.2, 0.12)
_CELL = 0.0025
Matrix = npt.NDArray[np.float64]


def camera(
    at: tuple[float, float, float] = (3.0, -0.3, 1.6), to: tuple[float, float] = (3.0, 2.0),
    focal: float = 0.75, size: tuple[int, int] = SIZE,
) -> Matrix:  # fmt: skip
    """From the plan [m] to the photo [px]; focal: in longer sides."""
    where = np.array(at)
    ahead = np.array([*to, 0.0]) - where
    ahead /= np.linalg.norm(ahead)
    right = np.cross(ahead, [0.0, 0.0, 1.0])
    right /= np.linalg.norm(right)
    turn = np.stack([right, np.cross(ahead, right), ahead])
    inner = np.array([[focal * size[0], 0, size[0] / 2], [0, focal * size[0], size[1] / 2],
                      [0, 0, 1]])  # fmt: skip
    return np.asarray(inner @ np.column_stack([turn[:, 0], turn[:, 1], -turn @ where]))


def seen_at(matrix: Matrix, place: tuple[float, float]) -> tuple[float, float]:
    """Where the photo shows a place."""
    x, y, depth = matrix @ [*place, 1.0]
    return (float(x / depth), float(y / depth))


def pairs(matrix: Matrix, off_px: float = 0.0, seed: int = 1) -> tuple[Pair, ...]:
    """The points as clicked, off by so much."""
    rng = np.random.default_rng(seed)
    return tuple(
        Pair(tuple((np.array(seen_at(matrix, place)) + rng.normal(0, off_px, 2)).tolist()), place,
             name)
        for name, place in POINTS.items()
    )  # fmt: skip


@cache
def floor_picture(shine: bool = True) -> npt.NDArray[np.uint8]:
    """The floor from above at 2.5 mm: brown, uneven, a light patch, a place that mirrors a lamp."""
    import cv2

    rng = np.random.default_rng(1)
    rough = cv2.GaussianBlur(rng.normal(0, 40, (1600, 2400)).astype(np.float32), (0, 0), 6)
    floor = np.array([120.0, 95.0, 80.0])[None, None] + rough[..., None]
    picture = np.clip(floor, 0, 255).astype(np.uint8)
    x, y = _cells(PATCH)
    cv2.circle(picture, (x, y), round(PATCH_M / _CELL), (165, 140, 125), -1)
    if shine:
        axes = (round(SHINE_M[0] / _CELL), round(SHINE_M[1] / _CELL))
        cv2.ellipse(picture, _cells(SHINE), axes, 0, 0, 360, (255, 255, 255), -1)
    return picture


def photograph(matrix: Matrix, *, shine: bool = True) -> npt.NDArray[np.uint8]:
    """What the camera sees, red first; walls and sky are grey."""
    import cv2

    cells = np.array([[_CELL, 0, 0], [0, -_CELL, 4.0], [0, 0, 1]])
    return np.asarray(
        cv2.warpPerspective(
            floor_picture(shine), matrix @ cells, SIZE, flags=cv2.INTER_AREA,
            borderMode=cv2.BORDER_CONSTANT, borderValue=(190, 190, 190),
        ), np.uint8,
    )  # fmt: skip


@cache
def jpeg(shine: bool = True) -> bytes:
    """The photo as a file."""
    import cv2

    seen = photograph(camera(), shine=shine)
    done, data = cv2.imencode(".jpg", seen[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, 92])
    assert done
    return bytes(data)


def _cells(place: tuple[float, float]) -> tuple[int, int]:
    return round(place[0] / _CELL), round((4.0 - place[1]) / _CELL)
