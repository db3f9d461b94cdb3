"""The order of fields: nobody shut in, margins first, the largest open field last, walks short.

Exact over sets of fields already sprayed. Two rounds: the first finds the
least worst share of a budget that any order needs, the second takes, among
orders that need no more, the one with the largest field last and the far
fields early.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from farwall.errors import Unanswerable
from farwall.spray.fields import Pieces, Sweeps
from farwall.spray.world import Seam

_EQUAL_SHARE = 0.02
_STATES = 40_000

BudgetAt = Callable[[Pieces, float], float]
"""Minutes an edge may wait in a field of these pieces when it is begun at this minute."""


@dataclass(frozen=True)
class Step:
    """One field of the order and the seam by which the person leaves it."""

    pieces: Pieces
    exit: Seam


@dataclass(frozen=True)
class Order:
    """The steps, the worst share of a budget among them, and whether every order was weighed."""

    steps: tuple[Step, ...]
    worst_share: float
    exact: bool


def order_fields(
    fields: Sequence[Pieces],
    sweeps: Sweeps,
    budget_at: BudgetAt,
    *,
    wanted: Sequence[str] = (),
) -> Order:
    """The best order of `fields`; `wanted` names rooms whose order the user insists on.

    Raises `Unanswerable` when no order lets everybody out.
    """
    search = _Search(tuple(fields), sweeps, budget_at, _rank(fields, sweeps, wanted))
    whole = frozenset(range(len(fields)))
    worst = search.least_worst(whole)
    if worst == float("inf"):
        _refuse(fields, sweeps, wanted)
    steps = search.best_steps(whole, worst + _EQUAL_SHARE)
    return Order(steps, worst, search.exact)


class _Search:
    def __init__(
        self,
        fields: tuple[Pieces, ...],
        sweeps: Sweeps,
        budget_at: BudgetAt,
        rank: dict[int, int] | None,
    ) -> None:
        self.fields = fields
        self.sweeps = sweeps
        self.budget_at = budget_at
        self.rank = rank
        self.exact = True
        pace = sweeps.tools.spray_m2_min
        area = [sum(sweeps.world.pieces[p].shape.area for p in pieces) for pieces in fields]
        self.area = area
        self.minutes = [each / pace for each in area]
        self.away = [self._hops(pieces) for pieces in fields]
        self._worst: dict[frozenset[int], float] = {frozenset(): 0.0}
        self._choices: dict[tuple[frozenset[int], int], tuple[float, Seam] | None] = {}

    def _hops(self, pieces: Pieces) -> int:
        """Doors between a field and the outside, by the shortest way."""
        world = self.sweeps.world
        seen = {seam.a for seam in world.seams if seam.is_way_out}
        hops, front = 0, set(seen)
        while front and not front & pieces:
            hops += 1
            front = {
                seam.other(p) for p in front for seam in world.seams_of(p) if seam.other(p)
            } - seen
            seen |= front
        return hops

    def choice(self, left: frozenset[int], index: int) -> tuple[float, Seam] | None:
        """The best way out of field `index` while `left` is still dry: its share and its seam."""
        key = (left, index)
        if key not in self._choices:
            self._choices[key] = self._choose(left, index)
        return self._choices[key]

    def _choose(self, left: frozenset[int], index: int) -> tuple[float, Seam] | None:
        if self.rank is not None and any(self.rank[i] < self.rank[index] for i in left):
            return None
        pieces = self.fields[index]
        wet = frozenset(self.sweeps.world.pieces) - frozenset().union(
            *(self.fields[i] for i in left)
        )
        begun = sum(self.minutes) - sum(self.minutes[i] for i in left)
        budget = max(self.budget_at(pieces, begun), 1e-9)
        options = []
        for seam in self.sweeps.ways_out(pieces, wet):
            try:
                options.append((self.sweeps.age_min(pieces, seam) / budget, seam))
            except Unanswerable:
                continue
        return min(options, key=lambda option: (option[0], option[1].id), default=None)

    def least_worst(self, left: frozenset[int]) -> float:
        """The least possible worst share over all orders of `left`, infinite when none exists."""
        if left in self._worst:
            return self._worst[left]
        found = float("inf")
        for index in self._candidates(left):
            choice = self.choice(left, index)
            if choice is None or choice[0] >= found:
                continue
            found = min(found, max(choice[0], self.least_worst(left - {index})))
        self._worst[left] = found
        return found

    def _candidates(self, left: frozenset[int]) -> list[int]:
        """Fields to try next, far ones first; only the first when the house is too big."""
        ranked = sorted(left, key=lambda i: (-self.away[i], self.area[i], i))
        if len(self._worst) < _STATES:
            return ranked
        self.exact = False
        return [i for i in ranked if self.choice(left, i) is not None][:1]

    def best_steps(self, whole: frozenset[int], limit: float) -> tuple[Step, ...]:
        """Among orders within `limit`: the largest possible field last, then far fields early."""
        memo: dict[frozenset[int], tuple[float, float, tuple[Step, ...]] | None] = {}

        def best(left: frozenset[int]) -> tuple[float, float, tuple[Step, ...]] | None:
            if left in memo:
                return memo[left]
            found = None
            place = len(self.fields) - len(left)
            for index in self._candidates(left):
                choice = self.choice(left, index)
                if choice is None or choice[0] > limit:
                    continue
                step = Step(self.fields[index], choice[1])
                rest = left - {index}
                option: tuple[float, float, tuple[Step, ...]]
                if not rest:
                    option = (-self.area[index], 0.0, (step,))
                else:
                    if self._worst.get(rest, 0.0) > limit:
                        continue
                    later = best(rest)
                    if later is None:
                        continue
                    walk = later[1] + place * self.away[index]
                    option = (later[0], walk, (step, *later[2]))
                if found is None or option[:2] < found[:2]:
                    found = option
            memo[left] = found
            return found

        answer = best(whole)
        if answer is None:
            raise Unanswerable("No order of the rooms was found.")
        return answer[2]


def _rank(fields: Sequence[Pieces], sweeps: Sweeps, wanted: Sequence[str]) -> dict[int, int] | None:
    if not wanted:
        return None
    rooms = {name: piece.room for name, piece in sweeps.world.pieces.items()}
    rank = {}
    for index, pieces in enumerate(fields):
        named = [wanted.index(rooms[p]) for p in pieces if rooms[p] in wanted]
        rank[index] = min(named, default=len(wanted))
    return rank


def _refuse(fields: Sequence[Pieces], sweeps: Sweeps, wanted: Sequence[str]) -> None:
    if wanted:
        raise Unanswerable(
            f"The order {', '.join(wanted)} shuts somebody in: a room named later has no way out "
            "but over wet floor.",
            remedies=["Leave --order out to get an order that works, and compare."],
        )
    stuck = [
        ", ".join(sorted(pieces))
        for pieces in fields
        if sweeps.best_age_min(pieces) == float("inf")
    ]
    raise Unanswerable(
        f"No order of the rooms works: {'; '.join(stuck) or 'somebody is always shut in'}.",
        remedies=[
            (
                "Widen the doorway in the plan if it is drawn too narrow for a person (0.5 m), "
                "or move the fixture that stands in it."
            )
        ],
    )
