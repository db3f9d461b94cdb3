"""The order of fields: nobody shut in, margins first, the largest open field last, walks short.

Spraying by falling number of doors to the outside shuts nobody in: from every
field the shortest way out crosses only fields with fewer doors, which are
still dry. That order, with the largest open field last, is taken when no order
could have a better worst margin (its worst share meets the least share that
the tightest field needs at its best hour and by its best door). Otherwise all
orders are weighed exactly, over sets of fields still dry, up to `_EXACT`
fields.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import NoReturn

from farwall.errors import Unanswerable
from farwall.spray.fields import Pieces, Sweeps
from farwall.spray.world import Seam

TIRED_PER_H = 0.03
"""How much slower an arm sprays for each hour of the day's spraying. Rank: guess."""
_EQUAL_SHARE = 0.05
_EXACT = 14
_NEVER = float("inf")

BudgetAt = Callable[[Pieces, float], float]
"""Minutes an edge may wait in a field of these pieces when it is begun at this minute."""


@dataclass(frozen=True)
class Step:
    """One field of the order and the seam by which the person leaves it."""

    pieces: Pieces
    exit: Seam


@dataclass(frozen=True)
class Order:
    """The steps, the worst share of a budget among them, and whether none can be better."""

    steps: tuple[Step, ...]
    worst_share: float
    proved: bool


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
    house = _House(tuple(fields), sweeps, budget_at)
    if wanted:
        return _as_wanted(house, wanted)
    quick = house.walked(house.by_doors())
    least = house.least_share()
    if quick is not None and quick.worst_share <= least + _EQUAL_SHARE:
        return Order(quick.steps, quick.worst_share, proved=True)
    if len(fields) <= _EXACT:
        found = _Exact(house).best()
        if found is not None:
            return found
    if quick is None:
        _refuse(house)
    return quick


@dataclass(frozen=True)
class _Door:
    """A way out of one field: into field `into` (-1 for the outside), with the age it gives."""

    seam: Seam
    into: int


class _House:
    """Fields as bits: which touch which, which lead outside, how old edges grow by each door."""

    def __init__(self, fields: tuple[Pieces, ...], sweeps: Sweeps, budget_at: BudgetAt) -> None:
        self.fields = fields
        self.sweeps = sweeps
        self.budget_at = budget_at
        world = sweeps.world
        home = {piece: index for index, pieces in enumerate(fields) for piece in pieces}
        self.doors: list[list[_Door]] = [[] for _ in fields]
        for seam in world.seams:
            if not seam.b:
                if seam.is_way_out:
                    self.doors[home[seam.a]].append(_Door(seam, -1))
            elif home[seam.a] != home[seam.b]:
                self.doors[home[seam.a]].append(_Door(seam, home[seam.b]))
                self.doors[home[seam.b]].append(_Door(seam, home[seam.a]))
        self.area = [sum(world.pieces[p].shape.area for p in pieces) for pieces in fields]
        pace = sweeps.tools.spray_m2_min
        self.minutes = [area / pace for area in self.area]
        self.outer = sum(
            1 << i for i, doors in enumerate(self.doors) if any(d.into < 0 for d in doors)
        )
        self.near = [sum({1 << d.into for d in doors if d.into >= 0}) for doors in self.doors]

    @property
    def whole(self) -> int:
        """All fields, as bits."""
        return (1 << len(self.fields)) - 1

    @cached_property
    def away(self) -> list[int]:
        """Doors between each field and the outside, by the shortest way."""
        away = [len(self.fields)] * len(self.fields)
        front, seen, hops = self.outer, self.outer, 0
        while front:
            for index in _bits(front):
                away[index] = hops
            step = 0
            for index in _bits(front):
                step |= self.near[index]
            front = step & ~seen
            seen |= step
            hops += 1
        return away

    def by_doors(self) -> list[int]:
        """Fields by falling number of doors to the outside, the largest open one last."""
        open_fields = [i for i in range(len(self.fields)) if self.outer >> i & 1]
        last = max(open_fields, key=lambda i: (self.area[i], -i), default=0)
        rest = [i for i in range(len(self.fields)) if i != last]
        return [*sorted(rest, key=lambda i: (-self.away[i], self.area[i], i)), last]

    def leads_out(self, dry: int) -> int:
        """Of the `dry` fields those from which the outside is reached over dry fields."""
        reached = self.outer & dry
        front = reached
        while front:
            step = 0
            for index in _bits(front):
                step |= self.near[index]
            front = step & dry & ~reached
            reached |= front
        return reached

    def share(self, index: int, door: _Door, begun_min: float) -> float:
        """Age of the oldest edge over its budget, infinite when a body cannot do it.

        A tired arm counts: later in the day the same edge comes out older.
        """
        try:
            age = self.sweeps.age_min(self.fields[index], door.seam)
        except Unanswerable:
            return _NEVER
        age *= 1 + TIRED_PER_H * begun_min / 60
        return age / max(self.budget_at(self.fields[index], begun_min), 1e-9)

    def choice(self, dry: int, index: int) -> tuple[float, Seam] | None:
        """The best way out of a field while `dry` fields (it among them) are left."""
        free = self.leads_out(dry & ~(1 << index))
        begun = sum(self.minutes) - sum(self.minutes[i] for i in _bits(dry))
        options = [
            (self.share(index, door, begun), door.seam)
            for door in self.doors[index]
            if door.into < 0 or free >> door.into & 1
        ]
        best = min(options, key=lambda option: (option[0], option[1].id), default=None)
        return best if best is not None and best[0] < _NEVER else None

    def walked(self, order: Sequence[int]) -> Order | None:
        """This order with the best door at each step, or None when somebody is shut in."""
        dry, worst, steps = self.whole, 0.0, []
        for index in order:
            choice = self.choice(dry, index)
            if choice is None:
                return None
            worst = max(worst, choice[0])
            steps.append(Step(self.fields[index], choice[1]))
            dry &= ~(1 << index)
        return Order(tuple(steps), worst, proved=False)

    def least_share(self) -> float:
        """A share that the tightest field needs in any order: best door, best hour."""
        total = sum(self.minutes)
        hours = [60.0 * hour for hour in range(int(total // 60) + 1)] + [total]
        return max(self._least_share_of(i, hours) for i in range(len(self.fields)))

    def _least_share_of(self, index: int, hours: Sequence[float]) -> float:
        free = self.leads_out(self.whole & ~(1 << index))
        doors = [d for d in self.doors[index] if d.into < 0 or free >> d.into & 1]
        return min((self.share(index, d, at) for d in doors for at in hours), default=_NEVER)


class _Exact:
    """Every order weighed over sets of dry fields: least worst share, then the tidiest."""

    def __init__(self, house: _House) -> None:
        self.house = house
        self._worst: dict[int, float] = {0: 0.0}
        self._choices: dict[tuple[int, int], tuple[float, Seam] | None] = {}
        self._tidy: dict[int, tuple[float, float, tuple[Step, ...]] | None] = {}

    def best(self) -> Order | None:
        """The order, or None when there is none."""
        whole = self.house.whole
        worst = self._least_worst(whole)
        if worst == _NEVER:
            return None
        tidy = self._tidiest(whole, worst + _EQUAL_SHARE)
        return None if tidy is None else Order(tidy[2], worst, proved=True)

    def _choice(self, dry: int, index: int) -> tuple[float, Seam] | None:
        key = (dry, index)
        if key not in self._choices:
            self._choices[key] = self.house.choice(dry, index)
        return self._choices[key]

    def _least_worst(self, dry: int) -> float:
        if dry not in self._worst:
            found = _NEVER
            for index in _bits(dry):
                choice = self._choice(dry, index)
                if choice is not None and choice[0] < found:
                    found = min(found, max(choice[0], self._least_worst(dry & ~(1 << index))))
            self._worst[dry] = found
        return self._worst[dry]

    def _tidiest(self, dry: int, limit: float) -> tuple[float, float, tuple[Step, ...]] | None:
        """Within `limit`: the largest possible field last, then far fields early."""
        if dry in self._tidy:
            return self._tidy[dry]
        house = self.house
        place = len(house.fields) - dry.bit_count()
        found: tuple[float, float, tuple[Step, ...]] | None = None
        for index in _bits(dry):
            choice = self._choice(dry, index)
            if choice is None or choice[0] > limit:
                continue
            step = Step(house.fields[index], choice[1])
            rest = dry & ~(1 << index)
            later = self._tidiest(rest, limit) if rest else (-house.area[index], 0.0, ())
            if later is None:
                continue
            walk = later[1] + place * house.away[index]
            if found is None or (later[0], walk) < found[:2]:
                found = (later[0], walk, (step, *later[2]))
        self._tidy[dry] = found
        return found


def _bits(mask: int) -> list[int]:
    return [index for index in range(mask.bit_length()) if mask >> index & 1]


def _as_wanted(house: _House, wanted: Sequence[str]) -> Order:
    """The order the user asked for: named rooms as named, all others after them."""
    room_of = {name: piece.room for name, piece in house.sweeps.world.pieces.items()}

    def rank(index: int) -> tuple[int, int]:
        rooms = {room_of[piece] for piece in house.fields[index]}
        named = [wanted.index(room) for room in rooms if room in wanted]
        return min(named, default=len(wanted)), house.by_doors().index(index)

    found = house.walked(sorted(range(len(house.fields)), key=rank))
    if found is None:
        raise Unanswerable(
            f"The order {', '.join(wanted)} shuts somebody in: a room named later has no way out "
            "but over wet floor.",
            remedies=["Leave --order out to get an order that works, and compare."],
        )
    return found


def _refuse(house: _House) -> NoReturn:
    stuck = [
        ", ".join(sorted(pieces))
        for pieces in house.fields
        if house.sweeps.best_age_min(pieces) == _NEVER
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
