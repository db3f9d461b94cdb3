"""Easing: a sweep changed a little everywhere at once, so that its steepest places are less steep.

Levelling is a climb that stops where no mean of two surfaces is better. From there a sweep is
changed by linear programs: of all changes of at most so many square metres the one whose front
is shortest, as far as it is told by straight lines; the change is tried, and the next one is
sought in a wider or narrower range (a trust region). Whatever comes of it is put back to
area{A < a} = a and kept walkable like any other sweep, and taken only where it is shorter.
Rank: derived here; how far and how often, tried on four fields of the bench.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass
from farwall.spray.front import (
    FROM_BEYOND,
    Front,
    Ground,
    ends_of,
    front_of,
    spans_of_places,
)
from farwall.spray.lattice import Bools, Floats, Ints
from farwall.spray.stands import ways_out

if TYPE_CHECKING:
    from scipy.sparse import csr_matrix

ROUNDS = 30
_FIRST_SHARE, _LEAST_SHARE = 1 / 60, 1 / 20_000
"""So much of the floor a change may be at first [m2 of m2], and below so much none is sought."""
_AS_TOLD, _HARDLY = 0.4, 0.15
"""What share of the gain that was told has to come, for the range to widen, or to stay."""
_WIDER, _NARROWER, _NOT_AT_ALL = 1.6, 0.6, 0.4
_HALVES = (1.0, 0.5)
_BETTER_M = 1e-5
_NEAR = 0.02
_REACH = 3


def eased(ground: Ground, front: Front, *, rounds: int = ROUNDS) -> Front:
    """The shortest sweep that small changes of `front` come by, itself at worst: some seconds."""
    floor_m2 = float(ground.lattice.floor.area)
    most_m2 = _FIRST_SHARE * floor_m2
    for _ in range(rounds):
        if most_m2 < _LEAST_SHARE * floor_m2:
            break
        found, told_m = _changed(ground, front, most_m2)
        gain_m = front.equivalent_m - found.equivalent_m
        if gain_m <= _BETTER_M:
            most_m2 *= _NOT_AT_ALL
            continue
        share = gain_m / max(front.equivalent_m - told_m, _BETTER_M)
        most_m2 *= _WIDER if share > _AS_TOLD else 1.0 if share > _HARDLY else _NARROWER
        front = found
    return front


def _changed(ground: Ground, front: Front, most_m2: float) -> tuple[Front, float]:
    """The best of the told change and of half of it; and the front that was told. [m]"""
    found = _Program(ground, front.before_m2, front.equivalent_m, most_m2).answer()
    if found is None:
        return front, front.equivalent_m
    change, told_m = found
    tried = [front_of(ground, front.before_m2 + part * change, "eased") for part in _HALVES]
    return min(tried, key=lambda one: one.equivalent_m), told_m


@dataclass
class _Rows:
    """Rows of a linear program as they are gathered: sum of factors times unknowns <= limit."""

    row: list[Ints] = field(default_factory=list)
    column: list[Ints] = field(default_factory=list)
    factor: list[Floats] = field(default_factory=list)
    limit: list[Floats] = field(default_factory=list)
    count: int = 0

    def add(self, terms: Sequence[tuple[Ints | int, Floats | float]], limit: Floats) -> None:
        """As many rows as there are limits; of each term the unknown of each row, its factor."""
        rows = np.arange(len(limit)) + self.count
        for column, factor in terms:
            self.row.append(rows)
            self.column.append(np.broadcast_to(column, rows.shape))
            self.factor.append(np.broadcast_to(factor, rows.shape).astype(float))
        self.limit.append(limit)
        self.count += len(limit)

    def matrix(self, unknowns: int) -> csr_matrix:
        """All rows."""
        from scipy.sparse import csr_matrix

        where = np.concatenate(self.row), np.concatenate(self.column)
        shape = self.count, unknowns
        return csr_matrix((np.concatenate(self.factor), where), shape=shape)


@dataclass(frozen=True)
class _Program:
    """The shortest front within `most_m2` of a sweep.

    Unknowns, one after the other: by how much each place comes later [m2]; the front [m]; of each
    stand until when it is tied to the way out [m2]; by how much more has been sprayed before
    each place then, for later neighbours on the same level push it back [m2].
    """

    ground: Ground
    before_m2: Floats
    front_m: float
    most_m2: float

    def answer(self) -> tuple[Floats, float] | None:
        """By how much each place comes later, and the front that is told; None without an
        answer."""
        from scipy.optimize import linprog
        from scipy.sparse import csr_matrix, diags, hstack, identity

        rows = _Rows()
        steep = self._steep(rows) | self._ends(rows)
        self._ways(rows)
        self._exit_last(rows)
        share = _shares(self.ground, self.before_m2)
        asked = np.flatnonzero(steep)
        own = diags(np.asarray(share.sum(axis=1)).ravel()).tocsr()[asked]
        between = csr_matrix((len(asked), 1 + len(self.ground.stands.places)))
        pushed = identity(self._places, format="csr")[asked]
        least = np.zeros(self._unknowns)
        least[self._places] = 1.0
        found = linprog(
            least,
            A_ub=rows.matrix(self._unknowns),
            b_ub=np.concatenate(rows.limit),
            A_eq=hstack([own - share[asked], between, -pushed]).tocsr(),
            b_eq=np.zeros(len(asked)),
            bounds=self._bounds(steep),
            method="highs-ipm",
        )
        if found.x is None:
            return None
        return np.asarray(found.x[: self._places]), float(found.x[self._places])

    @property
    def _places(self) -> int:
        return len(self.before_m2)

    @property
    def _tied(self) -> int:
        return self._places + 1

    @property
    def _pushed(self) -> int:
        return self._tied + len(self.ground.stands.places)

    @property
    def _unknowns(self) -> int:
        return self._pushed + self._places

    def _bounds(self, steep: Bools) -> Floats:
        late = np.full(self._places, self.most_m2)
        tied = np.full(len(self.ground.stands.places), 5 * float(self.ground.lattice.floor.area))
        pushed = np.where(steep, 4 * self.most_m2, 0.0)
        high = np.concatenate([late, [2 * self.front_m], tied, pushed])
        low = np.concatenate([-late, [0.0], -tied, -pushed])
        return np.column_stack([low, high])

    def _steep(self, rows: _Rows) -> Bools:
        """Pairs of places that are or may become the steepest; which places are in one."""
        pairs = self.ground.ball.pairs
        apart = self.before_m2[pairs.here] - self.before_m2[pairs.there]
        slack = _REACH * self.most_m2 + _NEAR * self.front_m
        near = np.flatnonzero(np.abs(apart) >= self.front_m * pairs.least_m - slack)
        here, there, sign = pairs.here[near], pairs.there[near], np.sign(apart[near])
        terms = [(self._pushed + here, sign), (self._pushed + there, -sign)]
        rows.add([*terms, (self._places, -pairs.least_m[near])], -np.abs(apart[near]))
        return self._those(here, there)

    def _ends(self, rows: _Rows) -> Bools:
        """The same with the first and the last floor, whose ends lie half a step beyond."""
        pairs = ends_of(self.before_m2, self.ground)
        apart = pairs.done_m2[pairs.here] - pairs.done_m2[pairs.there]
        near = np.abs(apart) >= self.front_m * pairs.least_m - _REACH * self.most_m2
        here, there, sign = pairs.here[near], pairs.there[near], np.sign(apart[near])
        ends = pairs.ends
        terms = [
            (self._pushed + here, np.where(ends[here], 0.0, sign)),
            (self._pushed + there, np.where(ends[there], 0.0, -sign)),
        ]
        rows.add([*terms, (self._places, -pairs.least_m[near])], -np.abs(apart[near]))
        return self._those(here, there)

    def _those(self, here: Ints, there: Ints) -> Bools:
        told = np.zeros(self._places, dtype=bool)
        told[here] = told[there] = True
        return told

    def _ways(self, rows: _Rows) -> None:
        """A place comes no later than its stand is tied to the way out, over the same stands as
        now."""
        ground, before = self.ground, self.before_m2
        stands = ground.stands
        if not len(stands.places):
            return
        ways = ways_out(stands, before[stands.under_rows].min(axis=0))
        until = np.full(self._places, -np.inf)
        until[stands.places] = ways.until
        reached = until[ground.reach_rows]
        best = reached.argmax(axis=0), np.arange(self._places)
        number = np.full(self._places, -1)
        number[stands.places] = np.arange(len(stands.places))
        stand, left = number[ground.reach_rows[best]], reached[best] - before
        beyond = ground.out_m <= FROM_BEYOND * ground.ball.depth_m
        near = ~beyond & np.isfinite(left) & (left < _REACH * self.most_m2)
        place = np.flatnonzero(near)
        rows.add([(place, 1.0), (self._tied + stand[place], -1.0)], -before[place])
        used = ways.passed(stand[place])
        for under in stands.under_rows:
            rows.add([(self._tied + used, 1.0), (under[used], -1.0)], before[under[used]])
        on = used[ways.next_one[used] != used]
        terms = [(self._tied + on, 1.0), (self._tied + ways.next_one[on], -1.0)]
        rows.add(terms, np.zeros(len(on)))

    def _exit_last(self, rows: _Rows) -> None:
        """No floor comes later than that beside the way out which is now the last."""
        beside = np.flatnonzero(self.ground.at_exit)
        last = int(beside[np.argmax(self.before_m2[beside])])
        ahead = self.before_m2[last] - self.before_m2
        place = np.flatnonzero(ahead <= _REACH * self.most_m2)
        place = place[place != last]
        rows.add([(place, 1.0), (last, -1.0)], ahead[place])


def _shares(ground: Ground, late: Floats) -> csr_matrix:
    """How much of what one place is late has been sprayed less before another: the change of
    `front.sprayed_before` by small changes of lateness, the stretch of each place kept."""
    from scipy.sparse import csr_matrix

    low, high, pace = spans_of_places(ground.lattice, late)
    order = np.argsort(late)
    first, last = (np.searchsorted(late[order], ends) for ends in (low, high))
    many = last - first
    there = np.repeat(np.arange(len(late)), many)
    start = np.repeat(first - (np.cumsum(many) - many), many)
    here: npt.NDArray[np.int64] = order[np.arange(len(there)) + start]
    return csr_matrix((pace[there], (here, there)), shape=(len(late), len(late)))
