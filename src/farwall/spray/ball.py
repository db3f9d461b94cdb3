"""For each place of a field those about one band's depth away: what a front moves on by."""

from __future__ import annotations

from functools import cached_property
from typing import Any

import numpy as np

from farwall.nouns import dataclass
from farwall.spray.lattice import Floats, Ints, Lattice, Lean

_BALL = 1.1
_RIM = 0.8
_FINE_RIM = 7
_FEW_PLACES = 200
"""On so small a field hardly any place has a rim about it: every pair within counts."""


@dataclass(frozen=True)
class Pairs:
    """Each pair of places of a ball once, how far apart, and that but at least the depth."""

    here: Ints
    there: Ints
    away_m: Floats
    least_m: Floats


@dataclass(frozen=True)
class Ball(Lean):
    """For each place those within 1.1 band depths that it sees (itself fills up), and how far."""

    depth_m: float
    there: Ints
    away_m: Floats

    def __getstate__(self) -> dict[str, Any]:
        """Its fields, the numbers of places in no more bytes than they need."""
        count = len(self.there)
        return {**super().__getstate__(), "there": self.there.astype(np.min_scalar_type(count))}

    def __setstate__(self, state: dict[str, Any]) -> None:
        """The same again."""
        self.__dict__.update(state, there=state["there"].astype(np.int64))

    @cached_property
    def pairs(self) -> Pairs:
        """Every two places that see each other, once."""
        here, column = np.nonzero(self.there > np.arange(len(self.there))[:, None])
        away_m = self.away_m[here, column]
        there = self.there[here, column]
        return Pairs(here, there, away_m, np.maximum(away_m, self.depth_m))


def ball_of(lattice: Lattice, depth_m: float) -> Ball:
    """Who sees whom within 1.1 `depth_m`."""
    reach = max(_BALL * depth_m / lattice.grid.step_m, 1.0)
    ones, twos = [], []
    for dx, dy in _offsets(reach, every_pair=len(lattice) <= _FEW_PLACES):
        there = _shifted(lattice, dx, dy)
        here = np.flatnonzero(there >= 0)
        ones.append(here)
        twos.append(there[here])
    one, two = np.concatenate(ones), np.concatenate(twos)
    seen = lattice.clear(one, two)
    return _table(lattice, depth_m, one[seen], two[seen])


def _offsets(reach: float, *, every_pair: bool) -> list[tuple[int, int]]:
    """Half of the steps in a ball: every one, or those of its rim, and eight rays within.

    Of a fine rim every other one; of a coarse one all, or fronts that lie
    askew to the lattice look up to 15 % shorter than they are.
    """
    far = int(reach)
    rim = _RIM * reach
    every = 2 if reach >= _FINE_RIM else 1
    return [
        (dx, dy)
        for dx in range(far + 1)
        for dy in range(-far, far + 1)
        if (dx > 0 or dy > 0)
        and np.hypot(dx, dy) <= reach
        and (every_pair or (np.hypot(dx, dy) >= rim and (dx + dy) % every == 0) or _on_ray(dx, dy))
    ]


def _on_ray(dx: int, dy: int) -> bool:
    """Whether a step is the first or a second one, or every other after, in eight directions."""
    straight = dx == 0 or dy == 0 or abs(dx) == abs(dy)
    return straight and (max(dx, abs(dy)) <= 2 or max(dx, abs(dy)) % 2 == 1)


def _shifted(lattice: Lattice, dx: int, dy: int) -> Ints:
    columns, rows = lattice.grid.size
    column, row = lattice.column + dx, lattice.row + dy
    inside = (column < columns) & (row >= 0) & (row < rows)
    found = np.full(len(lattice), -1)
    found[inside] = lattice.index[column[inside], row[inside]]
    return found


def _table(lattice: Lattice, depth_m: float, one: Ints, two: Ints) -> Ball:
    count = len(lattice)
    here = np.concatenate([one, two])
    there = np.concatenate([two, one])
    order = np.argsort(here, kind="stable")
    here, there = here[order], there[order]
    many = np.bincount(here, minlength=count)
    first = np.concatenate([[0], np.cumsum(many)[:-1]])
    table = np.repeat(np.arange(count)[:, None], max(1, int(many.max(initial=0))), axis=1)
    table[here, np.arange(len(here)) - first[here]] = there
    gap = lattice.xy[table] - lattice.xy[:, None, :]
    return Ball(depth_m, table, np.hypot(gap[..., 0], gap[..., 1]))
