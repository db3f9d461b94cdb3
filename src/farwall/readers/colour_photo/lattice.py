"""The common 24 patches, which bear no markers: squares that stand in a lattice.

Even regions with four sides are taken for squares. Each lends its own frame, in which its
neighbours have to stand at whole steps; the largest such family is laid on the six by four. Which
way round it lies is told by its colours.
"""

from __future__ import annotations

from itertools import product

import numpy as np
from numpy.typing import NDArray

from farwall.colour.lab import XYZ_OF_SRGB, linear_of_srgb, xyz_of_lab
from farwall.colour.targets.nouns import Target
from farwall.nouns import dataclass
from farwall.readers.colour_photo.markers import placed

Real = NDArray[np.float64]
_Cell = tuple[int, int]
_LOOK_PX = 1000
_COLUMNS, _ROWS = 6, 4
_LEAST_SQUARES = 12
_STEP = 46.0 / 40.0
"""From square to square by their sides."""
_MOST_OFF = 0.25
_MOST_MISFIT = 0.12
"""Mean error of linear light, white 1, after the best linear map: another thing of 24 squares has
more. Rank: guess."""


@dataclass(frozen=True)
class _Square:
    middle: Real
    across: Real
    down: Real
    area: float


def plane_of_lattice(rgb: NDArray[np.uint8], target: Target) -> Real | None:
    """From millimetres of the target to pixels of the photo; None where it is not seen."""
    import cv2

    factor = min(1.0, _LOOK_PX / max(rgb.shape[:2]))
    small = cv2.resize(rgb, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
    squares = _squares(np.asarray(small, np.uint8))
    best: tuple[int, Real] | None = None
    near = _neighbours(squares)
    for start in range(len(squares)):
        cells = _family(start, near)
        if len(cells) >= max(_LEAST_SQUARES, best[0] + 1 if best else 0):
            best = (len(cells), _plane({cell: squares[n] for cell, n in cells.items()}))
            if len(cells) >= _COLUMNS * _ROWS - 1:
                break
    if best is None:
        return None
    grow = np.diag([1 / factor, 1 / factor, 1.0])
    return _turned(rgb, grow @ best[1], target)


def _squares(small: NDArray[np.uint8]) -> list[_Square]:
    """Even regions with four straight sides, whatever their colour."""
    import cv2

    found: list[_Square] = []
    soft = cv2.medianBlur(small, 5)
    thick = np.ones((3, 3), np.uint8)
    spread = cv2.subtract(cv2.dilate(soft, thick), cv2.erode(soft, thick)).max(axis=2)
    for cut in (9, 16, 28):
        even = (spread < cut).astype(np.uint8)
        even = cv2.morphologyEx(even, cv2.MORPH_OPEN, np.ones((5, 5), np.uint8))
        outlines, _ = cv2.findContours(even, cv2.RETR_LIST, cv2.CHAIN_APPROX_NONE)
        for line in outlines:
            one = _square(np.asarray(line, np.int32), small.shape[0] * small.shape[1])
            if one is not None and not any(_same(one, other) for other in found):
                found.append(one)
    return found


def _square(line: NDArray[np.int32], whole: int) -> _Square | None:
    import cv2

    area = cv2.contourArea(line)
    if not 6e-5 * whole < area < 0.06 * whole:
        return None
    closed = True
    four = cv2.approxPolyDP(line, 0.07 * cv2.arcLength(line, closed), closed).reshape(-1, 2)
    if len(four) != 4 or not cv2.isContourConvex(four) or cv2.contourArea(four) > 1.35 * area:
        return None
    corners = np.asarray(four, np.float64)
    one = (corners[1] - corners[0] + corners[2] - corners[3]) / 2
    two = (corners[3] - corners[0] + corners[2] - corners[1]) / 2
    long, short = max(np.hypot(*one), np.hypot(*two)), min(np.hypot(*one), np.hypot(*two))
    if long > 2.4 * short:
        return None
    if abs(one[0]) < abs(two[0]):
        one, two = two, one
    across = one if one[0] > 0 else -one
    down = two if two[1] > 0 else -two
    grown = 1 + 4 / short  # the even middle of a square is smaller than the square
    return _Square(corners.mean(axis=0), across * grown, down * grown, area)


def _same(one: _Square, other: _Square) -> bool:
    near = np.hypot(*(one.middle - other.middle))
    return bool(near < 0.35 * np.sqrt(min(one.area, other.area)))


def _neighbours(squares: list[_Square]) -> list[list[tuple[int, _Cell]]]:
    """For each square those one whole step from it in its own frame: their numbers and steps."""
    middles = np.array([one.middle for one in squares]).reshape(-1, 2)
    areas = np.array([one.area for one in squares])
    near = []
    for here in squares:
        frame = np.linalg.inv(np.column_stack([here.across, here.down]) * _STEP)
        step = (middles - here.middle) @ frame.T
        whole, alike = np.round(step), areas / here.area
        beside = (np.abs(whole).sum(axis=1) == 1) & (alike > 0.4) & (alike < 2.5)
        beside &= np.abs(step - whole).max(axis=1) <= _MOST_OFF
        near.append(
            [(int(n), (int(whole[n, 0]), int(whole[n, 1]))) for n in np.flatnonzero(beside)]
        )
    return near


def _family(start: int, near: list[list[tuple[int, _Cell]]]) -> dict[_Cell, int]:
    """Numbers of squares at whole steps from this one, each reached from a neighbour.

    A square stands in one cell: of two that are askew each may see the other to its right, and
    would lead on and on.
    """
    cells, taken, edge = {(0, 0): start}, {start}, [(0, 0)]
    while edge:
        at = edge.pop()
        for other, step in near[cells[at]]:
            cell = (at[0] + step[0], at[1] + step[1])
            if cell not in cells and other not in taken:
                cells[cell] = other
                taken.add(other)
                edge.append(cell)
    return cells


def _plane(cells: dict[_Cell, _Square]) -> Real:
    """The map of the lattice's own steps, laid so that six by four cover most of the family."""
    import cv2

    steps = np.array(list(cells), np.float64)
    middles = np.array([one.middle for one in cells.values()]) + 0.5
    plane, _ = cv2.findHomography(steps, middles, cv2.RANSAC, 4.0)
    return np.eye(3) if plane is None else np.asarray(plane)


def _turned(rgb: NDArray[np.uint8], steps: Real, target: Target) -> Real | None:
    """The lattice laid on the target in the way that its colours fit best."""
    wanted = np.array([one.lab for one in target.patches])
    linear = xyz_of_lab(wanted) @ np.linalg.inv(XYZ_OF_SRGB).T
    pitch = target.size_mm[0] / _COLUMNS
    best: tuple[float, Real] | None = None
    middles = (np.array([one.at_mm for one in target.patches]) / pitch) - 0.5
    for turn, dx, dy in product(range(4), range(-6, 7), range(-6, 7)):
        cell = middles @ _TURNS[turn].T + (dx, dy)
        seen = _looked(rgb, placed(steps, cell) - 0.5)
        if seen is None:
            continue
        misfit = _misfit(seen, linear)
        if best is None or misfit < best[0]:
            to_cell = np.eye(3)
            to_cell[:2, :2] = _TURNS[turn] / pitch
            to_cell[:2, 2] = _TURNS[turn] @ (-0.5, -0.5) + (dx, dy)
            best = (misfit, steps @ to_cell)
    return None if best is None or best[0] > _MOST_MISFIT else best[1]


_TURNS = tuple(
    np.array([[c, -s], [s, c]], np.float64) for c, s in ((1, 0), (0, 1), (-1, 0), (0, -1))
)


def _looked(rgb: NDArray[np.uint8], places: Real) -> Real | None:
    whole = np.round(places).astype(int)
    high, wide = rgb.shape[:2]
    if (whole < 1).any() or (whole[:, 0] >= wide - 1).any() or (whole[:, 1] >= high - 1).any():
        return None
    return linear_of_srgb(rgb[whole[:, 1], whole[:, 0]] / 255.0)


def _misfit(seen: Real, wanted: Real) -> float:
    mix, *_ = np.linalg.lstsq(seen, wanted, rcond=None)
    return float(np.abs(seen @ mix - wanted).mean())
