"""Lines of lettering that stand over each other and belong together."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, radians, sin

import numpy as np

from farwall.readers.lines.sheet import Words

_LINE_STEP = 2.4  # letter heights from line to line within a label, at most (measured on plans)
_LETTER_M = 0.4  # half a letter's breadth in heights, with room to spare
MOST_LINES = 3


class Stacks:
    """Lines of lettering, each of which goes into one stack only."""

    def __init__(self, lines: Sequence[Words]) -> None:
        self.lines = list(lines)
        self._at = np.array([line.at for line in lines], dtype=float).reshape(-1, 2)
        self._height = np.array([line.height for line in lines], dtype=float)
        self._turned = np.array([line.turned_deg for line in lines], dtype=float)
        self._breadth = np.array([len(line.text) * line.height for line in lines], dtype=float)
        self._free = np.ones(len(lines), dtype=bool)

    def free(self) -> list[int]:
        """The places of the lines that are in no stack yet."""
        return [int(index) for index in np.flatnonzero(self._free)]

    def take(self, index: int) -> Words:
        """One line, now in a stack."""
        self._free[index] = False
        return self.lines[index]

    def around(self, base: Words, *, like: Words | None = None) -> list[Words]:
        """The lines over the base line, or else under it, from the top; taken from the free ones.

        With `like`, only lines lettered like that one.
        """
        for side in (1, -1):
            stack: list[Words] = []
            at, model = base, like
            while len(stack) < MOST_LINES:
                index = self._next(at, side, model)
                if index is None:
                    break
                at = self.take(index)
                model = model or at
                stack.append(at)
            if stack:
                return stack[::-1] if side == 1 else stack
        return []

    def _next(self, base: Words, side: int, like: Words | None) -> int | None:
        """The nearest free line on one side of the base line."""
        along, up = self._offsets(base)
        tall = np.maximum(self._height, base.height)
        wide = _LETTER_M * (self._breadth + len(base.text) * base.height)
        turned = np.abs((self._turned - base.turned_deg + 180) % 360 - 180) < 5
        over = (0.4 * tall < side * up) & (side * up < _LINE_STEP * tall)
        near = self._free & turned & over & (np.abs(along) < np.maximum(wide, 2 * tall))
        places = [int(i) for i in np.flatnonzero(near)]
        if like is not None:
            places = [i for i in places if lettered_alike(like, self.lines[i])]
        return min(places, key=lambda i: (abs(float(up[i])), i), default=None)

    def _offsets(self, base: Words) -> tuple[np.ndarray, np.ndarray]:
        turn = radians(base.turned_deg)
        dx, dy = self._at[:, 0] - base.at[0], self._at[:, 1] - base.at[1]
        return dx * cos(turn) + dy * sin(turn), -dx * sin(turn) + dy * cos(turn)


def lettered_alike(first: Words, second: Words) -> bool:
    """Whether two lines have letters of one height on one layer."""
    return abs(first.height - second.height) < 0.1 * first.height and first.layer == second.layer
