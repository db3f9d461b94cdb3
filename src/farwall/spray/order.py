"""The order of fields: nobody shut in, margins first, the largest open field last, walks short.

Spraying by falling number of doors to the outside shuts nobody in: from every
field the shortest way out crosses only fields with fewer doors, which are
still dry. That order, with the largest open field last, is taken when no order
could have a better worst margin, by a floor that holds for any number of
fields. Otherwise orders are weighed over sets of later fields: all of them up
to 16 fields, above that the likeliest, and the floor says what that may cost.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NoReturn

from farwall.errors import Unanswerable
from farwall.nouns import dataclass
from farwall.spray.leaving import Door, Leaving
from farwall.spray.margins import MOST_SETS, Floor, best_order, floor_of
from farwall.spray.sweeps import Pieces, Sweeps
from farwall.spray.world import Seam

TIRED_PER_H = 0.03
"""How much slower an arm sprays for each hour of the day's spraying. Rank: guess."""
EQUAL_SHARE = 0.05
_NEVER = float("inf")

BudgetAt = Callable[[Pieces, float], float]
"""Minutes an edge may wait in a field of these pieces when it is begun at this minute.

It may change on whole hours only: the floor under all orders looks at each hour once.
"""


@dataclass(frozen=True)
class Step:
    """One field of the order and the seam by which the person leaves it."""

    pieces: Pieces
    exit: Seam


@dataclass(frozen=True)
class Order:
    """The steps, the worst share of a budget among them, and how much better one could be.

    No order in which nobody is shut in has a worst share below `least_share`. `proved` says that
    `worst_share` is within 0.05 of that, which counts as equal. An order that the user wants is
    never `proved`: it was not chosen.
    """

    steps: tuple[Step, ...]
    worst_share: float
    least_share: float
    proved: bool

    @property
    def gap(self) -> float:
        """By how much another order could be better at most, in shares of a budget."""
        return max(self.worst_share - self.least_share, 0.0)


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
    house = House(tuple(fields), sweeps, budget_at)
    if wanted:
        return _as_wanted(house, wanted)
    if None in house.leaving.away:
        _refuse(house)
    floor = floor_of(house.leaving)
    by_doors = house.by_doors()
    quick = house.told(by_doors, floor.share)
    if quick is not None and quick.proved:
        return quick
    return _weighed(house, floor, [floor.order, *([by_doors] if quick else [])])


class House:
    """Fields by number: who may leave which by what seam, and how old edges grow by each."""

    def __init__(self, fields: tuple[Pieces, ...], sweeps: Sweeps, budget_at: BudgetAt) -> None:
        self.fields = fields
        self.sweeps = sweeps
        self.budget_at = budget_at
        self.seams = sweeps.world.seams
        pieces_of = sweeps.world.pieces
        self.area_m2 = [sum(pieces_of[p].shape.area for p in pieces) for pieces in fields]
        pace = sweeps.tools.spray_m2_min
        self.leaving = Leaving(
            self._doors(), tuple(area / pace for area in self.area_m2), self.share_per_min
        )

    def _doors(self) -> tuple[tuple[Door, ...], ...]:
        home = {piece: index for index, pieces in enumerate(self.fields) for piece in pieces}
        doors: list[list[Door]] = [[] for _ in self.fields]
        for here, pieces in enumerate(self.fields):
            for seam in self.sweeps.ways_out(pieces):  # a door into a dead end lets nobody out
                far = seam.b if seam.a in pieces else seam.a
                into = home[far] if seam.b else len(self.fields)
                age = self._age_min(here, seam)
                if age < _NEVER:
                    doors[here].append(Door(age, into, self.seams.index(seam)))
        return tuple(
            tuple(sorted(found, key=lambda door: (door.age_min, self.seams[door.number].id)))
            for found in doors
        )

    def _age_min(self, index: int, seam: Seam) -> float:
        """Age of the oldest edge toward this seam, infinite when a body cannot do it."""
        try:
            return self.sweeps.age_min(self.fields[index], seam)
        except Unanswerable:
            return _NEVER

    def share_per_min(self, index: int, begun_min: float) -> float:
        """Share of the budget a minute of age takes; a tired arm makes the same edge older."""
        tired = 1 + TIRED_PER_H * begun_min / 60
        return tired / max(self.budget_at(self.fields[index], begun_min), 1e-9)

    def by_doors(self) -> list[int]:
        """Fields by falling number of doors to the outside, the largest open one last."""
        away = [hops if hops is not None else len(self.fields) for hops in self.leaving.away]
        open_fields = [i for i, hops in enumerate(away) if hops == 0]
        last = max(open_fields, key=lambda i: (self.area_m2[i], -i), default=0)
        rest = [i for i in range(len(self.fields)) if i != last]
        return [*sorted(rest, key=lambda i: (-away[i], self.area_m2[i], i)), last]

    def told(self, order: Sequence[int], least_share: float) -> Order | None:
        """This order with the best door at each step, or None when somebody is shut in."""
        walked = self.leaving.walked(order)
        if walked is None:
            return None
        steps = tuple(
            Step(self.fields[index], self.seams[door.number])
            for index, (_, door) in zip(order, walked, strict=True)
        )
        worst = max((share for share, _ in walked), default=0.0)
        return Order(steps, worst, least_share, worst <= least_share + EQUAL_SHARE)


def _weighed(house: House, floor: Floor, known: Sequence[Sequence[int]]) -> Order:
    """The best of all orders, or of the likeliest when there are too many."""
    found = best_order(
        house.leaving,
        house.area_m2,
        known,
        floor.share,
        equal_share=EQUAL_SHARE,
        most_sets=MOST_SETS,
    )
    least = found.least_worst if found.exact else floor.share
    told = house.told(found.order, least)
    if told is None:  # sets of later fields only ever grow by fields that can be left
        raise AssertionError("an order that was grown field by field shuts somebody in")
    return told


def order_asked_for(house: House, wanted: Sequence[str]) -> list[int]:
    """Fields in the order the user asked for: named rooms as named, all others after them."""
    room_of = {name: piece.room for name, piece in house.sweeps.world.pieces.items()}
    by_doors = house.by_doors()

    def rank(index: int) -> tuple[int, int]:
        rooms = {room_of[piece] for piece in house.fields[index]}
        named = [wanted.index(room) for room in rooms if room in wanted]
        return min(named, default=len(wanted)), by_doors.index(index)

    return sorted(range(len(house.fields)), key=rank)


def _as_wanted(house: House, wanted: Sequence[str]) -> Order:
    order = order_asked_for(house, wanted)
    found = None if None in house.leaving.away else house.told(order, 0.0)
    if found is None:
        told = house.sweeps.world.called(wanted)
        raise Unanswerable(
            f"The order {told} shuts somebody in: a room named later has no way out but over wet "
            "floor.",
            remedies=["Leave the order of the rooms open to get one that works, and compare."],
        )
    return Order(found.steps, found.worst_share, floor_of(house.leaving).share, proved=False)


def _refuse(house: House) -> NoReturn:
    """No order sprays some fields: name those without any door that a body can spray toward."""
    never = [index for index, hops in enumerate(house.leaving.away) if hops is None]
    shut = [index for index in never if not house.leaving.doors[index]] or never
    named = "; ".join(house.sweeps.world.called(sorted(house.fields[index])) for index in shut)
    raise Unanswerable(
        f"No order of the rooms works: {named}.",
        remedies=[
            (
                "Widen the doorway in the plan if it is drawn too narrow for a person (20 in, "
                "0.5 m), or move the fixture that stands in it."
            )
        ],
    )
