"""Lines on the floor, wide and narrow, darker, lighter, or between two tones."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools, Ground, blurred
from farwall.colour.marks.nouns import Floats32
from farwall.colour.marks.paths import Answers, best_paths, carried, strips_of
from farwall.nouns import dataclass

Sort = Literal["dark", "light", "step"]
SORTS: tuple[Sort, ...] = ("light", "dark", "step", "step")
"""Of the layers of a map: what curves up, what curves down, steps either way."""
OCTAVES = (2, 4, 8)
"""Working points to a point of the map on which lines of a width are sought."""
_SIGMA = 1.2
_LOCAL_M = 0.35
_USUAL = {2: 12.0, 4: 7.5, 8: 4.2}
"""Largest sum in a surrogate of a floor about 3 m wide, by octave. Measured here."""
_MOST = 14
LEAST_SUM = 2.0
"""No sum of mottle below this is told."""


@dataclass(frozen=True)
class Line:
    """points: (n, 2) rows and columns on the ground · over: its sum by the largest in mottle ·
    coarse_m: point of the map in which it was found.
    """

    points: NDArray[np.float64]
    sort: Sort
    over: float
    coarse_m: float


def lines_of(ground: Ground, mottle: Floats32, *, least: float) -> list[Line]:
    """Lines whose sum is at least `least` times the largest in `mottle`, the surest first."""
    found: list[Line] = []
    for octave in OCTAVES:
        null = max((_largest(sums) for sums, _ in _maps(mottle, ground, octave)), default=0.0)
        usual = (max(null, 0.5 * _USUAL[octave]) * _USUAL[octave]) ** 0.5
        found += [
            Line(line.points, line.sort, line.over / usual, line.coarse_m)
            for line in _sought(ground.flat, ground, octave, least * usual, _MOST)
        ]
    return sorted(found, key=lambda line: -line.over)


def _maps(flat: Floats32, ground: Ground, octave: int) -> Iterator[tuple[Floats32, bool]]:
    """Sums of paths that go right, then of those that go down (True), over a picture so small."""
    import cv2

    rows, columns = flat.shape
    size = (columns // octave, rows // octave)
    if min(size) < 8:
        return
    small = cv2.resize(flat, size, interpolation=cv2.INTER_AREA).astype(np.float32)
    seen = cv2.resize(ground.seen.astype(np.float32), size, interpolation=cv2.INTER_AREA)
    dead = np.asarray(seen < 0.5)
    ridge, step = _answers(small, ground.step_m * octave)
    yield carried(strips_of([ridge, step], dead)), False
    turned = np.ascontiguousarray(dead.T)
    yield carried(strips_of([ridge.turned(), step.turned()], turned)), True


def _largest(sums: Floats32) -> float:
    """The largest sum; 0 where it is too small to tell."""
    most = float(sums.max(initial=0.0))
    return most if most >= LEAST_SUM else 0.0


def _sought(flat: Floats32, ground: Ground, octave: int, least: float, most: int) -> list[Line]:
    rows, columns = (side // octave for side in flat.shape)
    found = []
    for sums, down in _maps(flat, ground, octave):
        shape = (columns, rows) if down else (rows, columns)
        for path in best_paths(sums, least=least, most=most, shape=shape, reach=3):
            points = (path.points[:, ::-1] if down else path.points) + 0.5
            found.append(
                Line(points * octave, SORTS[path.layer], path.score, ground.step_m * octave)
            )
    return found


def _answers(flat: Floats32, point_m: float) -> tuple[Answers, Answers]:
    """Second and first derivatives [freeman-1991], each by its own usual size nearby."""
    import cv2

    soft = blurred(flat, _SIGMA)

    def taken(dx: int, dy: int) -> Floats32:
        out = cv2.Sobel(soft, cv2.CV_32F, dx, dy, ksize=3, borderType=cv2.BORDER_REFLECT)
        return np.asarray(out, dtype=np.float32)

    xx, xy, yy, x, y = taken(2, 0), taken(1, 1), taken(0, 2), taken(1, 0), taken(0, 1)
    curved, steep = _usual(xx, yy, point_m), _usual(x, y, point_m)
    return (
        Answers(_by(xx, curved), _by(xy, curved), _by(yy, curved)),
        Answers(_by(x, steep), None, _by(y, steep)),
    )


def _by(one: Floats32, other: Floats32) -> Floats32:
    return np.asarray(one / other, dtype=np.float32)


def _usual(one: Floats32, other: Floats32, point_m: float) -> Floats32:
    size = one**2 + other**2
    held = np.minimum(size, 9 * np.mean(size))
    near = blurred(held.astype(np.float32), _LOCAL_M / point_m)
    return np.asarray(np.sqrt(np.maximum(near, 0.1 * near.mean() + 1e-12) / 2), dtype=np.float32)


def beside(
    line: Line, other: Line, *, shape: tuple[int, int], near_m: float, step_m: float
) -> float:
    """Share of `other` that lies within `near_m` of `line`."""
    import cv2

    scale = 4
    canvas = np.zeros((shape[0] // scale + 1, shape[1] // scale + 1), dtype=np.uint8)
    drawn = (line.points[:, ::-1] / scale).round().astype(np.int32).reshape(-1, 1, 2)
    cv2.polylines(
        canvas,
        [drawn],
        isClosed=False,
        color=1,
        thickness=max(2 * round(near_m / step_m / scale) + 1, 1),
    )
    at = (other.points / scale).astype(int)
    inside = canvas[
        np.clip(at[:, 0], 0, canvas.shape[0] - 1), np.clip(at[:, 1], 0, canvas.shape[1] - 1)
    ]
    return float(inside.mean())


def alone(lines: list[Line], ground: Ground, *, near_m: float = 0.06) -> list[Line]:
    """Of lines along one another only the surest."""
    kept: list[Line] = []
    shape: tuple[int, int] = (ground.flat.shape[0], ground.flat.shape[1])
    for line in lines:
        covered = [
            beside(k, line, shape=shape, near_m=max(near_m, k.coarse_m * 2), step_m=ground.step_m)
            for k in kept
        ]
        if sum(covered) < 0.5:
            kept.append(line)
    return kept


def hidden_share(points: NDArray[np.float64], seen: Bools) -> float:
    """Share of the points that lie where nothing may be proposed."""
    at = points.astype(int)
    inside = seen[np.clip(at[:, 0], 0, seen.shape[0] - 1), np.clip(at[:, 1], 0, seen.shape[1] - 1)]
    return float(1 - inside.mean())
