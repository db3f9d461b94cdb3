"""Long faint lines: the best path across a map of answers, summed as it goes.

A lap line may be no darker than the mottle beside it at any one point; over a metre its sum stands
out. The sum is carried from strip to strip and forgotten when it falls below nothing, as in local
alignment [smith-1981]: so a path begins and ends where the line does. A path turns at a cost, for a
seam of two bands is straight or gently ragged and a texture is not.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.nouns import Floats32
from farwall.nouns import dataclass

STRIP = 4
"""Points along a path between two turns; its slopes are -1 to 1 in quarters."""
TOLL = 1.4
"""Taken from each strip's mean answer: a path through noise then loses as it goes. Tuned here."""
TURN = 0.12
"""Taken for a turn by a quarter of slope. Tuned here."""
CLIP = 3.0
"""Answers are held to this many spreads, so that one black dot does not make a line."""
SLOPES = tuple(range(-STRIP, STRIP + 1))


@dataclass(frozen=True)
class Answers:
    """Second or first derivatives over a picture, from which the answer at any slope follows.

    along_xx, along_xy, along_yy: (rows, columns); for a step: d/dx, none, d/dy.
    """

    xx: Floats32
    xy: Floats32 | None
    yy: Floats32

    def turned(self) -> Answers:
        """The same of the picture with rows and columns swapped."""
        return Answers(self.yy.T, None if self.xy is None else self.xy.T, self.xx.T)

    def at(self, slope: float) -> Floats32:
        """The answer across a line of this slope."""
        c, s = np.cos(np.arctan(slope)), np.sin(np.arctan(slope))
        if self.xy is None:
            return np.asarray(c * self.yy - s * self.xx, dtype=np.float32)
        across = c * c * self.yy - 2 * s * c * self.xy + s * s * self.xx
        return np.asarray(across, dtype=np.float32)


@dataclass(frozen=True)
class Path:
    """points: (n, 2) rows and columns, one every strip · score: its sum · layer: of which map."""

    points: NDArray[np.float64]
    score: float
    layer: int


def strips_of(layers: Sequence[tuple[Answers, float]], dead: NDArray[np.bool_]) -> Floats32:
    """Mean answers along each strip: (layers, slopes, rows, strips)."""
    rows, columns = dead.shape
    count = columns // STRIP
    out = np.empty((len(layers), len(SLOPES), rows, count), dtype=np.float32)
    pad = STRIP
    for j, slope in enumerate(SLOPES):
        offs = [round(slope * (k + 0.5) / STRIP - 0.01 * np.sign(slope)) for k in range(STRIP)]
        held: dict[int, Floats32] = {}
        for i, (answers, sign) in enumerate(layers):
            key = id(answers)
            if key not in held:
                at = answers.at(slope / STRIP)
                at = np.where(dead, 0, at)
                wide = np.pad(at, ((pad, pad), (0, 0)))
                held[key] = wide
            wide = np.clip(held[key] * sign, -CLIP, CLIP)
            total = np.zeros((rows, count), dtype=np.float32)
            for k, off in enumerate(offs):
                total += wide[pad + off : pad + off + rows, k : count * STRIP : STRIP]
            out[i, j] = total / STRIP
    return out


@dataclass(frozen=True)
class Carried:
    """The sums at the end of each strip, the best over slopes, and the way back."""

    best: Floats32  # (strips, layers, rows)
    which: NDArray[np.int8]
    back: NDArray[np.int8]  # (strips, layers, slopes, rows): slope before, or -1 at a beginning


def carried(mean: Floats32) -> Carried:
    """Sums of the best paths that end in each strip, going right."""
    layers, slopes, rows, count = mean.shape
    gain = np.ascontiguousarray(np.moveaxis(mean, 3, 0)) - np.float32(TOLL)
    best = np.empty((count, layers, rows), dtype=np.float32)
    which = np.empty((count, layers, rows), dtype=np.int8)
    back = np.empty((count, layers, slopes, rows), dtype=np.int8)
    moved = np.full((layers, slopes, rows), -1.0, dtype=np.float32)
    own = np.arange(slopes, dtype=np.int8)[None, :, None]
    for b in range(count):
        came = moved.copy()
        frm = np.broadcast_to(own, came.shape).copy()
        for turn in (-1, 1):
            here = slice(max(-turn, 0), slopes - max(turn, 0))
            there = slice(max(turn, 0), slopes - max(-turn, 0))
            other = moved[:, there] - np.float32(TURN)
            better = other > came[:, here]
            came[:, here] = np.where(better, other, came[:, here])
            frm[:, here] = np.where(better, own[:, there], frm[:, here])
        fresh = came <= 0
        frm[fresh] = -1
        now = gain[b] + np.maximum(came, 0)
        back[b] = frm
        which[b] = now.argmax(axis=1)
        best[b] = now.max(axis=1)
        # A path that enters at row y with slope s leaves at row y + s.
        moved.fill(-1.0)
        for j, slope in enumerate(SLOPES):
            if slope >= 0:
                moved[:, j, slope:] = now[:, j, : rows - slope]
            else:
                moved[:, j, :slope] = now[:, j, -slope:]
    return Carried(best, which, back)


def traced(of: Carried, strip: int, layer: int, row: int) -> NDArray[np.float64]:
    """The points of the path that ends there, from its beginning; rows and columns."""
    slope = int(of.which[strip, layer, row])
    points = [(row + SLOPES[slope], (strip + 1) * STRIP)]
    while True:
        points.append((row, strip * STRIP))
        before = int(of.back[strip, layer, slope, row])
        if before < 0 or strip == 0:
            break
        strip, row, slope = strip - 1, row - SLOPES[before], before
    return np.array(points[::-1], dtype=np.float64)


def best_paths(
    of: Carried, *, least: float, most: int, shape: tuple[int, int], reach: int
) -> list[Path]:
    """The best paths whose sum is at least `least`, the best first, none along another."""
    ends = np.argwhere(of.best >= least)
    if not len(ends):
        return []
    sums = of.best[tuple(ends.T)]
    taken = [np.zeros(shape, dtype=bool) for _ in range(of.best.shape[1])]
    found: list[Path] = []
    for at in np.argsort(-sums, kind="stable")[:200_000]:
        strip, layer, row = (int(n) for n in ends[at])
        rows, columns = shape
        if taken[layer][min(max(row, 0), rows - 1), strip * STRIP]:
            continue
        points = traced(of, strip, layer, row)
        inside = np.clip(points.astype(int), 0, [rows - 1, columns - 1])
        free = ~taken[layer][inside[:, 0], inside[:, 1]]
        _cover(taken[layer], points, reach)
        if free.mean() < 0.7:
            continue
        found.append(Path(points, float(sums[at]), layer))
        if len(found) >= most:
            break
    return found


def _cover(taken: NDArray[np.bool_], points: NDArray[np.float64], reach: int) -> None:
    import cv2

    canvas = taken.astype(np.uint8)
    line = points[:, ::-1].round().astype(np.int32).reshape(-1, 1, 2)
    cv2.polylines(canvas, [line], isClosed=False, color=1, thickness=2 * reach + 1)
    taken |= canvas.astype(bool)
