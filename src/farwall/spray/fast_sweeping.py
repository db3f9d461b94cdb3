"""Walks on a grid by fast sweeping: the shortest way to each place around walls, at any angle.

The length u of the shortest walk has |grad u| = 1. On a grid with step h the upwind differences
of Godunov make of it, with a and b the smaller neighbours along the columns and the rows,

    [(u - a)+]^2 + [(u - b)+]^2 = h^2           (z+ is z where positive, else 0),

so u = min(a, b) + h where |a - b| >= h, else (a + b + sqrt(2 h^2 - (a - b)^2)) / 2. It is solved
place by place in the four diagonal directions in turn until nothing changes.
Source: Zhao, A fast sweeping method for Eikonal equations, Math. Comp. 74 (250), 2005, pp. 603-627,
equations (2.1) to (2.4); their numbers from memory [zhao-2005].

Second order: where the next place but one on the same side is no later, u - a is replaced by
(3 u - 4 a + a') / 2, the one-sided difference of second order. Places on one line askew to the grid
do not ask each other, so such a line is done at once without changing a digit (Detrixhe, Gibou and
Min, J. Comput. Phys. 237, 2013, pp. 46-55, abstract) [detrixhe-2013]: so it is done without numba.

Both ways do the same sums in the same order: the same digits with and without the extra `fast`.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from functools import cache
from importlib.util import find_spec

import numpy as np
import numpy.typing as npt

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Bools = npt.NDArray[np.bool_]
Flags = npt.NDArray[np.uint8]
Sweeps = Callable[[Floats, Flags, Bools, int], tuple[int, bool]]

RIM = 2
"""Places of rim around the grid, so that the next but one is always there."""
WEST, EAST, SOUTH, NORTH = 1, 2, 4, 8
"""Sides to which one gets from a place."""
BEYOND = 16
"""Times a side: from the neighbour on that side one gets one place further on."""
THIRD = 1 / 3
SETTLED = 1e-9
"""Of a step: when no place changes by more in a round of four sweeps, it has settled."""
MOST_ROUNDS = 500
_LOADED_IN = 40_000
"""Places swept without numba in about the time that loading it takes. Rank: measured here."""


@dataclass(frozen=True)
class GridWalks:
    """`metres`: columns x rows, infinite where no walk leads; `rounds` of four sweeps it took.

    `settled`: whether the last round changed nothing to speak of.
    """

    metres: Floats
    rounds: int
    settled: bool


@cache
def has_numba() -> bool:
    """Whether the extra `fast` is installed."""
    return find_spec("numba") is not None


def _worth_numba(places: int) -> bool:
    """Whether numba is there and spares more than loading it takes; the digits are the same."""
    return has_numba() and (places > _LOADED_IN or "numba" in sys.modules)


def walks_on_grid(
    free: Bools,
    start_m: Floats,
    step_m: float,
    *,
    east: Bools | None = None,
    north: Bools | None = None,
    order: int = 2,
    compiled: bool | None = None,
) -> GridWalks:
    """Metres of the shortest walk over `free` places from those whose `start_m` is finite.

    free, start_m: columns x rows; start values stay as they are. east: whether one gets from a
    place to the next column, north: to the next row, where a wall without thickness may lie
    between (default: wherever both are free). order: 1 or 2; the second wants starts two places
    deep, and around a corner its error is of first order too (docs/spraying.md has figures).
    compiled: by numba or not (default: if it is there and worth loading).

    Raises `Refused` where shapes differ, the step is not positive, the order neither 1 nor 2, or a
    start negative or no number.
    """
    _check(free, start_m, step_m, order, (east, north))
    sides = _sides(free, east, north)
    walks = np.full(sides.shape, np.inf)
    inner = (slice(RIM, -RIM), slice(RIM, -RIM))
    walks[inner] = np.where(free, start_m / step_m, np.inf)
    asked = np.zeros(sides.shape, dtype=bool)
    asked[inner] = free & ~np.isfinite(start_m)
    sweeps = _sweeps(compiled=_worth_numba(free.size) if compiled is None else compiled)
    rounds, settled = sweeps(walks, sides, asked, order)
    return GridWalks(walks[inner] * step_m, rounds, settled)


def _check(
    free: Bools, start_m: Floats, step_m: float, order: int, walls: tuple[Bools | None, ...]
) -> None:
    mistakes = []
    if free.ndim != 2:
        mistakes.append(Mistake("free", f"has {free.ndim} axes.", "Give columns x rows."))
    for name, one in zip(("start_m", "east", "north"), (start_m, *walls), strict=True):
        if one is not None and one.shape != free.shape:
            told = f"is {one.shape}, the grid {free.shape}."
            mistakes.append(Mistake(name, told, "Give one value for each place."))
    if not 0 < step_m < np.inf:
        mistakes.append(Mistake("step_m", f"{step_m} is no step.", "Give metres above 0."))
    if order not in {1, 2}:
        mistakes.append(Mistake("order", f"{order} is not known.", "Give 1 or 2."))
    if not (start_m >= 0).all():
        mistakes.append(
            Mistake("start_m", "is negative or no number.", "Give 0 or more, infinite for none.")
        )
    if mistakes:
        raise Refused(*mistakes)


def _sides(free: Bools, east: Bools | None, north: Bools | None) -> Flags:
    """For each place, with a rim around, the sides to which one gets, and gets beyond."""
    inside = np.pad(free, RIM)
    on_east = inside & np.roll(inside, -1, axis=0)
    on_north = inside & np.roll(inside, -1, axis=1)
    if east is not None:
        on_east &= np.pad(east, RIM)
    if north is not None:
        on_north &= np.pad(north, RIM)
    sides = np.zeros(inside.shape, dtype=np.uint8)
    for on, axis, ahead, behind in ((on_east, 0, EAST, WEST), (on_north, 1, NORTH, SOUTH)):
        back = np.roll(on, 1, axis=axis)
        for one, shift, flag in ((on, -1, ahead), (back, 1, behind)):
            sides[one] |= np.uint8(flag)
            sides[one & np.roll(one, shift, axis=axis)] |= np.uint8(flag * BEYOND)
    return sides


def _sweeps(*, compiled: bool) -> Sweeps:
    """The one or the other way to do all sweeps."""
    if not compiled:
        return _by_lines
    from farwall.spray.fast_sweeping_compiled import sweep_until_settled

    return sweep_until_settled


def _by_lines(walks: Floats, sides: Flags, asked: Bools, order: int) -> tuple[int, bool]:
    """All sweeps, a line askew to the grid at once; `walks` in steps is filled in."""
    flat, side = walks.reshape(-1), sides.reshape(-1)
    lines = _lines(asked)
    solved = _second_order if order > 1 else _first_order
    for rounds in range(1, MOST_ROUNDS + 1):
        moved = 0.0
        for line in _in_four_directions(lines):
            old = flat[line]
            new = solved(flat, side, line, walks.shape[1])
            flat[line] = new = new if order > 1 else np.minimum(old, new)
            moved = max(moved, float(_apart(old, new).max(initial=0.0)))
        if moved <= SETTLED:
            return rounds, True
    return MOST_ROUNDS, False


def _apart(one: Floats, other: Floats) -> Floats:
    """How far apart they are, 0 where both are infinite."""
    differ = one != other
    return np.asarray(np.abs(np.where(differ, one, 0.0) - np.where(differ, other, 0.0)))


def _lines(asked: Bools) -> tuple[list[Ints], list[Ints]]:
    """The places that are asked for, line by line: column + row alike, column - row alike."""
    column, row = np.nonzero(asked)
    flat = column * asked.shape[1] + row
    return _split(flat, column + row), _split(flat, column - row)


def _split(flat: Ints, line: Ints) -> list[Ints]:
    order = np.argsort(line, kind="stable")
    ends = np.flatnonzero(np.diff(line[order])) + 1
    return np.split(flat[order], ends)


def _in_four_directions(lines: tuple[list[Ints], list[Ints]]) -> Iterator[Ints]:
    rising, falling = lines
    yield from rising
    yield from falling
    yield from reversed(rising)
    yield from reversed(falling)


def _first_order(flat: Floats, side: Flags, line: Ints, stride: int) -> Floats:
    """What the neighbours of these places say of them, in steps."""
    flags = side[line]
    a = np.minimum(_at(flat, flags, line - stride, WEST), _at(flat, flags, line + stride, EAST))
    b = np.minimum(_at(flat, flags, line - 1, SOUTH), _at(flat, flags, line + 1, NORTH))
    one = np.isinf(a) | np.isinf(b)
    apart = np.where(one, 1.0, np.abs(np.where(one, 0.0, a) - np.where(one, 0.0, b)))
    root = np.sqrt(np.maximum(2.0 - apart * apart, 0.0))
    return np.asarray(np.where(apart < 1.0, (a + b + root) * 0.5, np.minimum(a, b) + 1.0))


def _second_order(flat: Floats, side: Flags, line: Ints, stride: int) -> Floats:
    """The same with the next place but one, where it may be asked."""
    flags = side[line]
    a, told_a, weight_a, alone_a = _upwind(flat, flags, line, (stride, WEST, EAST))
    b, told_b, weight_b, alone_b = _upwind(flat, flags, line, (1, SOUTH, NORTH))
    both = np.isfinite(a) & np.isfinite(b)
    told_a, told_b = np.where(both, told_a, 0.0), np.where(both, told_b, 0.0)
    apart = told_b - told_a
    weight = weight_a + weight_b
    root = weight - weight_a * weight_b * apart * apart
    value = told_a + (weight_b * apart + np.sqrt(np.maximum(root, 0.0))) / weight
    good = both & (root >= 0.0) & (value >= a - SETTLED) & (value >= b - SETTLED)
    return np.asarray(np.where(good, value, np.minimum(alone_a, alone_b)))


def _upwind(
    flat: Floats, flags: Flags, line: Ints, axis: tuple[int, int, int]
) -> tuple[Floats, Floats, Floats, Floats]:
    """Along one axis: smaller neighbour, what u is told apart from, its weight, u by it alone."""
    on, behind, ahead = axis
    down, up = _at(flat, flags, line - on, behind), _at(flat, flags, line + on, ahead)
    down_two = _at(flat, flags, line - 2 * on, behind * BEYOND)
    up_two = _at(flat, flags, line + 2 * on, ahead * BEYOND)
    one = np.minimum(down, up)
    alike = np.maximum(down, up) <= one + SETTLED  # by rounding one side is not the nearer
    farther = np.maximum(down_two, up_two)
    two = np.where(alike, farther, np.where(down < up, down_two, up_two))
    smooth = (two <= one + SETTLED) & np.isfinite(two)
    told = one.copy()
    told[smooth] = (4.0 * one[smooth] - two[smooth]) * THIRD
    return one, told, np.where(smooth, 2.25, 1.0), told + np.where(smooth, 2.0 * THIRD, 1.0)


def _at(flat: Floats, flags: Flags, there: Ints, flag: int) -> Floats:
    """What stands there, infinite where one does not get."""
    return np.asarray(np.where(flags & np.uint8(flag), flat[there], np.inf))
