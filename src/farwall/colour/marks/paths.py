"""Long faint lines: the best path across a map of answers, summed as it goes.

A lap line may be no darker than the mottle beside it at any one point; over a metre its sum stands
out. The sum is carried from strip to strip and forgotten when it falls below nothing, as in local
alignment [smith-1981]: so a path begins and ends where the line does. A path turns at a cost, for a
seam of two bands is straight or gently ragged and a texture is not.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

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
_MOST_ENDS, _AHEAD = 200_000, 16
Places = NDArray[np.intp]
Points = NDArray[np.float64]
_NOWHERE: Points = np.empty((0, 2))


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
        angle = math.atan(slope)
        c, s = math.cos(angle), math.sin(angle)
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


def strips_of(layers: Sequence[Answers], dead: NDArray[np.bool_]) -> Floats32:
    """Mean answers along each strip: (strips, 2 a layer, slopes, rows).

    Of each layer first what lies above 0, then what lies below, turned over.
    """
    rows, columns = dead.shape
    count = columns // STRIP
    out = np.empty((count, 2 * len(layers), len(SLOPES), rows), dtype=np.float32)
    pad = STRIP
    wide = np.zeros((count * STRIP, rows + 2 * pad), dtype=np.float32)
    hidden = dead.T[: count * STRIP]
    for j, slope in enumerate(SLOPES):
        offs = [round(slope * (k + 0.5) / STRIP - 0.01 * np.sign(slope)) for k in range(STRIP)]
        for i, answers in enumerate(layers):
            at = answers.at(slope / STRIP).T[: count * STRIP]
            wide[:, pad : pad + rows] = np.clip(at, -CLIP, CLIP)
            wide[:, pad : pad + rows][hidden] = 0
            total = np.zeros((count, rows), dtype=np.float32)
            for k, off in enumerate(offs):
                total += wide[k::STRIP, pad + off : pad + off + rows]
            total /= STRIP
            out[:, 2 * i, j] = total
            np.negative(total, out=out[:, 2 * i + 1, j])
    return out


def carried(mean: Floats32) -> Floats32:
    """Sums of the best paths that end in each strip, going right: as `strips_of` has its means."""
    sums = mean - np.float32(TOLL)
    moved = np.full(mean.shape[1:], -1.0, dtype=np.float32)
    for before, own in pairwise(sums):
        _move(before, moved)
        came, turned = np.maximum(moved, 0), moved - np.float32(TURN)
        np.maximum(came[:, 1:], turned[:, :-1], out=came[:, 1:])
        np.maximum(came[:, :-1], turned[:, 1:], out=came[:, :-1])
        np.add(own, came, out=own)
    return sums


def _move(sums: Floats32, onto: Floats32) -> None:
    """A path that enters a strip at row y with slope s leaves it at row y + s."""
    onto.fill(-1.0)
    rows = sums.shape[-1]
    for j, slope in enumerate(SLOPES):
        if slope >= 0:
            onto[:, j, slope:] = sums[:, j, : rows - slope]
        else:
            onto[:, j, :slope] = sums[:, j, -slope:]


def best_paths(
    sums: Floats32, *, least: float, most: int, shape: tuple[int, int], reach: int
) -> list[Path]:
    """The best paths whose sum is at least `least`, the best first, none along another."""
    best = sums.max(axis=2)
    ends = np.argwhere(best >= least)
    if not len(ends):
        return []
    heights = best[tuple(ends.T)]
    order = np.argsort(-heights, kind="stable")[:_MOST_ENDS]
    strips, layers, rows = ends[order].T
    heights = heights[order]
    taken = np.zeros((best.shape[1], *shape), dtype=np.uint8)
    ways = [Ways(sums[:, layer]) for layer in range(len(taken))]
    found: list[Path] = []
    for n in _free(taken, layers, rows, strips * STRIP):
        layer = int(layers[n])
        points, shared = ways[layer].to(int(strips[n]), int(rows[n]))
        # What it shares with a way that was traced before was taken with that.
        own = points[shared:]
        inside = np.clip(own.astype(int), 0, [shape[0] - 1, shape[1] - 1])
        free = int((taken[layer][inside[:, 0], inside[:, 1]] == 0).sum())
        _cover(taken[layer], points[max(shared - 1, 0) :], reach)
        if free < 0.7 * len(points):
            continue
        found.append(Path(points, float(heights[n]), layer))
        if len(found) >= most:
            break
    return found


class Ways:
    """The ways back from ends to beginnings over one layer; where two have met they are one."""

    def __init__(self, sums: Floats32) -> None:
        """sums: (strips, slopes, rows), as `carried` tells them."""
        self._sums = sums
        self._met: dict[tuple[int, int, int], tuple[Points, int]] = {}

    def to(self, strip: int, row: int) -> tuple[Points, int]:
        """Points from the beginning to that end, rows and columns, and how many of them were
        told already as points of a way traced before."""
        slope = int(self._sums[strip, :, row].argmax())
        end = (row + SLOPES[slope], (strip + 1) * STRIP)
        at: tuple[int, int, int] | None = (strip, row, slope)
        fresh: list[tuple[int, int, int]] = []
        while at is not None and at not in self._met:
            fresh.append(at)
            at = self._before(*at)
        before, count = self._met[at] if at is not None else (_NOWHERE, 0)
        own = [(row, strip * STRIP) for strip, row, _ in reversed(fresh)]
        points = np.concatenate((before[:count], np.array([*own, end], np.float64)))
        for n, one in enumerate(reversed(fresh), count + 1):
            self._met[one] = points, n
        return points, count

    def _before(self, strip: int, row: int, slope: int) -> tuple[int, int, int] | None:
        """The strip before it, row and slope there; None where a path begins here."""
        if strip == 0:
            return None
        sums = self._sums[strip - 1]
        best, came = None, np.float32(0)
        for turn in (0, -1, 1):
            own = slope + turn
            if 0 <= own < len(SLOPES) and 0 <= row - SLOPES[own] < sums.shape[1]:
                told = sums[own, row - SLOPES[own]] - np.float32(TURN if turn else 0)
                if told > came:
                    best, came = (strip - 1, row - SLOPES[own], own), told
        return best


def _free(taken: NDArray[np.uint8], layers: Places, rows: Places, columns: Places) -> Iterator[int]:
    """Number of each place that is not taken when its turn comes; more are taken meanwhile."""
    at, ahead = 0, _AHEAD
    while at < len(rows):
        near = slice(at, at + ahead)
        free = taken[layers[near], rows[near], columns[near]] == 0
        if free.any():
            at += int(free.argmax())
            yield at
            at, ahead = at + 1, _AHEAD
        else:
            at, ahead = at + ahead, 2 * ahead


def _cover(taken: NDArray[np.uint8], points: Points, reach: int) -> None:
    import cv2

    line = points[:, ::-1].round().astype(np.int32).reshape(-1, 1, 2)
    cv2.polylines(taken, [line], isClosed=False, color=(1,), thickness=2 * reach + 1)
