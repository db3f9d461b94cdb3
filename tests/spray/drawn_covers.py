"""Houses drawn as graphs, their connected fields, and costs that look like those of stop lines."""

from __future__ import annotations

from random import Random

Near = tuple[frozenset[int], ...]
Columns = dict[frozenset[int], float]


def drawn_graph(count: int, seed: int, *, extra: float = 0.35) -> Near:
    """A connected graph on a grid: a tree of doors between neighbours, and some more doors."""
    dice = Random(f"graph {count} {seed}")
    across = max(1, round(count**0.5))
    near: list[set[int]] = [set() for _ in range(count)]

    def join(one: int, two: int) -> None:
        near[one].add(two)
        near[two].add(one)

    for unit in range(1, count):
        sides = [unit - 1] if unit % across else []
        sides += [unit - across] if unit >= across else []
        join(unit, dice.choice(sides))
        for side in sides:
            if dice.random() < extra:
                join(unit, side)
    return tuple(frozenset(found) for found in near)


def drawn_columns(count: int, seed: int, *, most: int, cap: int) -> list[frozenset[int]]:
    """Connected sets of up to `most` units: all singles, then the smaller first, `cap` in all."""
    near = drawn_graph(count, seed)
    layer = {frozenset([unit]) for unit in range(count)}
    found = sorted(layer, key=sorted)
    for _ in range(most - 1):
        layer = {
            group | {there} for group in layer for unit in group for there in near[unit] - group
        }
        dice = Random(f"columns {seed} {len(found)}")
        found += dice.sample(sorted(layer, key=sorted), len(layer))
    return found[: max(cap, count)]


def costs_like_a_house(columns: list[frozenset[int]], seed: int) -> Columns:
    """A field costs 0.4 and half of each stop line around it: 1 under a leaf, 6 under a frame."""
    count = 1 + max(unit for group in columns for unit in group)
    near = drawn_graph(count, seed)
    dice = Random(f"kinds {seed}")
    kind = {
        frozenset([one, two]): dice.choice([1.0, 1.0, 1.0, 6.0])
        for one in range(count)
        for two in sorted(near[one])
        if one < two
    }
    return {
        group: 0.4
        + sum(kind[frozenset([unit, there])] / 2 for unit in group for there in near[unit] - group)
        for group in columns
    }


def costs_anyhow(columns: list[frozenset[int]], seed: int) -> Columns:
    """Costs without any pattern, so that ties are rare."""
    dice = Random(f"costs {seed}")
    return {group: dice.uniform(0.5, 1.5) * len(group) ** 0.7 for group in columns}


def costs_with_ties(columns: list[frozenset[int]], seed: int) -> Columns:
    """Three costs over and over: many covers are equally cheap."""
    dice = Random(f"ties {seed}")
    return {group: dice.choice([0.0, 1.0, 1.5, 2.0]) for group in columns}
