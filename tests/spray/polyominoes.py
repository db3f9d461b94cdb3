"""All floors of up to ten cells: free polyominoes, one for each set of mirrored and turned ones."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from tests.spray.cells import SIDES, Cell

FREE = (1, 1, 2, 5, 12, 35, 108, 369, 1285, 4655)
"""How many there are of 1 to 10 cells, holes allowed. From memory: sequence A000105."""

Polyomino = tuple[Cell, ...]


@cache
def free_polyominoes(count: int) -> tuple[Polyomino, ...]:
    """Those of `count` cells: each smaller one with a cell added at each of its sides."""
    if count == 1:
        return (((0, 0),),)
    grown = {
        frozenset((*smaller, beside))
        for smaller in free_polyominoes(count - 1)
        for beside in _beside(smaller)
    }
    return tuple(sorted({_least(one) for one in grown}))


def _beside(cells: Polyomino) -> Iterator[Cell]:
    mine = set(cells)
    for x, y in cells:
        yield from ((x + dx, y + dy) for dx, dy in SIDES if (x + dx, y + dy) not in mine)


def _least(cells: frozenset[Cell]) -> Polyomino:
    """Of its eight mirrored and turned ones, moved to the origin, the first in order."""
    found = []
    turned = list(cells)
    for _ in range(4):
        turned = [(-y, x) for x, y in turned]
        for one in (turned, [(-x, y) for x, y in turned]):
            x0, y0 = min(x for x, _ in one), min(y for _, y in one)
            found.append(tuple(sorted((x - x0, y - y0) for x, y in one)))
    return min(found)
