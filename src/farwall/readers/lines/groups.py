"""What hangs together: things joined by pairs, each group with a number of its own."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np


def numbered(count: int, first: Iterable[int], second: Iterable[int]) -> np.ndarray:
    """For each of `count` things the number of its group, from 0 on in the order of the things.

    Written out here, as the library for it takes longer to start than most drawings to read.
    """
    above = list(range(count))

    def top(thing: int) -> int:
        while above[thing] != thing:
            above[thing] = above[above[thing]]
            thing = above[thing]
        return thing

    for a, b in zip(first, second, strict=True):
        low, high = sorted((top(a), top(b)))
        above[high] = low
    tops = [top(thing) for thing in range(count)]
    numbers = {one: number for number, one in enumerate(dict.fromkeys(tops))}
    return np.array([numbers[one] for one in tops], dtype=int)
