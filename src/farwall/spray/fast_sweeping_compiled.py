"""The sweeps of `fast_sweeping`, compiled by numba: the same sums in the same order.

Asked again are only places beside one that has changed, and of those only later ones: nobody
owes its value to a later neighbour (locking of points: Bak, McLaughlin and Renzi, SIAM J. Sci.
Comput. 32 (5), 2010, from memory) [bak-2010]. Import it only where numba is installed.
"""

from __future__ import annotations

import math

import numba
import numpy as np

from farwall.spray.fast_sweeping import (
    BEYOND,
    EAST,
    MOST_ROUNDS,
    NORTH,
    RIM,
    SETTLED,
    SOUTH,
    THIRD,
    WEST,
    Bools,
    Flags,
    Floats,
)

_INF = np.inf
_WEST_TWO, _EAST_TWO = WEST * BEYOND, EAST * BEYOND
_SOUTH_TWO, _NORTH_TWO = SOUTH * BEYOND, NORTH * BEYOND


@numba.njit(cache=True)
def _solved(flat: Floats, sides: Flags, at: int, stride: int, order: int) -> float:
    side = sides[at]
    west = flat[at - stride] if side & WEST else _INF
    east = flat[at + stride] if side & EAST else _INF
    south = flat[at - 1] if side & SOUTH else _INF
    north = flat[at + 1] if side & NORTH else _INF
    a, b = min(west, east), min(south, north)
    if a == _INF and b == _INF:
        return _INF
    if order == 1:
        apart = abs(a - b)
        if apart < 1.0:
            return (a + b + math.sqrt(2.0 - apart * apart)) * 0.5
        return min(a, b) + 1.0
    west_two = flat[at - 2 * stride] if side & _WEST_TWO else _INF
    east_two = flat[at + 2 * stride] if side & _EAST_TWO else _INF
    south_two = flat[at - 2] if side & _SOUTH_TWO else _INF
    north_two = flat[at + 2] if side & _NORTH_TWO else _INF
    a_two = west_two if west < east else east_two
    if max(west, east) <= a + SETTLED:
        a_two = max(west_two, east_two)
    b_two = south_two if south < north else north_two
    if max(south, north) <= b + SETTLED:
        b_two = max(south_two, north_two)
    told_a, weight_a, alone_a = a, 1.0, a + 1.0
    if a_two <= a + SETTLED and a_two < _INF:
        told_a, weight_a = (4.0 * a - a_two) * THIRD, 2.25
        alone_a = told_a + 2.0 * THIRD
    told_b, weight_b, alone_b = b, 1.0, b + 1.0
    if b_two <= b + SETTLED and b_two < _INF:
        told_b, weight_b = (4.0 * b - b_two) * THIRD, 2.25
        alone_b = told_b + 2.0 * THIRD
    if a < _INF and b < _INF:
        apart = told_b - told_a
        weight = weight_a + weight_b
        root = weight - weight_a * weight_b * apart * apart
        if root >= 0.0:
            value = told_a + (weight_b * apart + math.sqrt(root)) / weight
            if value >= a - SETTLED and value >= b - SETTLED:
                return value
    return min(alone_a, alone_b)


@numba.njit(cache=True)
def _sweep(
    flat: Floats,
    sides: Flags,
    asked: Bools,
    awake: Bools,
    columns: Bools,
    from_end: tuple[bool, bool],
    order: int,
) -> float:
    moved = 0.0
    rows = len(flat) // len(columns)
    last = order
    for i in range(RIM, len(columns) - RIM):
        column = len(columns) - 1 - i if from_end[0] else i
        if not columns[column]:
            continue
        columns[column] = False
        for j in range(RIM, rows - RIM):
            at = column * rows + (rows - 1 - j if from_end[1] else j)
            if not awake[at]:
                continue
            awake[at] = False
            old = flat[at]
            new = _solved(flat, sides, at, rows, order)
            if new == old or (order == 1 and new > old):
                continue
            flat[at] = new
            moved = max(moved, abs(new - old))
            since = min(new, old) - 2.0 * SETTLED
            for on in range(1, last + 1):
                there = at - on * rows
                if asked[there] and flat[there] > since:
                    awake[there] = columns[column - on] = True
                there = at + on * rows
                if asked[there] and flat[there] > since:
                    awake[there] = columns[column + on] = True
                if asked[at - on] and flat[at - on] > since:
                    awake[at - on] = columns[column] = True
                if asked[at + on] and flat[at + on] > since:
                    awake[at + on] = columns[column] = True
    return moved


@numba.njit(cache=True)
def _rounds(flat: Floats, sides: Flags, asked: Bools, columns: int, order: int) -> tuple[int, bool]:
    awake = asked.copy()
    awake_in = np.ones(columns, dtype=np.bool_)
    for rounds in range(1, MOST_ROUNDS + 1):
        moved = _sweep(flat, sides, asked, awake, awake_in, (False, False), order)
        moved = max(moved, _sweep(flat, sides, asked, awake, awake_in, (False, True), order))
        moved = max(moved, _sweep(flat, sides, asked, awake, awake_in, (True, True), order))
        moved = max(moved, _sweep(flat, sides, asked, awake, awake_in, (True, False), order))
        if moved <= SETTLED:
            return rounds, True
    return MOST_ROUNDS, False


def sweep_until_settled(walks: Floats, sides: Flags, asked: Bools, order: int) -> tuple[int, bool]:
    """All sweeps over the grid with its rim; `walks` in steps is filled in. Rounds, settled."""
    flat = walks.reshape(-1)
    rounds, settled = _rounds(flat, sides.reshape(-1), asked.reshape(-1), len(walks), order)
    return int(rounds), bool(settled)
