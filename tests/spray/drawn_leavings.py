"""Houses drawn as tables: doors with ages, minutes of spraying, budgets by the hour."""

from __future__ import annotations

from random import Random
from typing import Literal

from tests.spray.drawn_covers import drawn_graph

from farwall.spray.leaving import Door, Leaving

Shape = Literal["grid", "rooms about a hall", "each with a door outside"]


def drawn_leaving(
    count: int,
    seed: int,
    *,
    shape: Shape = "grid",
    steady: bool = False,
    blocked: float = 0.1,
    whole: int = 30,
) -> Leaving:
    """A house of `count` fields that can all be sprayed.

    Fields take 1 to 3 times `whole` minutes. Budgets change with every hour, each field in its own
    way, or, with `steady`, never. On a grid `blocked` of the doors let no body out.
    """
    attempt = 0
    while True:
        drawn = _drawn(count, f"{seed} {attempt}", shape, steady, blocked, whole)
        if None not in drawn.away:
            return drawn
        attempt += 1


def _drawn(
    count: int, seed: str, shape: Shape, steady: bool, blocked: float, whole: int
) -> Leaving:
    dice = Random(f"leaving {count} {seed} {shape}")
    graph = drawn_graph(count, dice.randrange(10**9))
    pairs = [(here, there) for here, near in enumerate(graph) for there in sorted(near)]
    outer = {dice.randrange(count)} | {i for i in range(count) if dice.random() < 0.15}
    if shape == "rooms about a hall":
        pairs = [pair for i in range(1, count) for pair in ((0, i), (i, 0))]
        outer = {0}
    if shape == "each with a door outside":
        outer = set(range(count))
    ways = [*pairs, *((i, count) for i in sorted(outer))]
    doors: list[list[Door]] = [[] for _ in range(count)]
    for number, (here, into) in enumerate(ways):
        if shape != "grid" or dice.random() >= blocked:
            doors[here].append(Door(dice.uniform(0.5, 1.5), into, number))
    key = dice.random()

    def share_per_min(index: int, begun_min: float) -> float:
        hour = 0 if steady else int(begun_min // 60)
        return (1 + 0.03 * begun_min / 60) * budgets[index][hour % len(budgets[index])]

    budgets = [
        [Random(f"{key} {i} {h}").uniform(0.6, 1.2) for h in range(24)] for i in range(count)
    ]
    return Leaving(
        tuple(tuple(sorted(found, key=lambda door: door.age_min)) for found in doors),
        tuple(float(whole * dice.randint(1, 3)) for _ in range(count)),
        share_per_min,
    )
