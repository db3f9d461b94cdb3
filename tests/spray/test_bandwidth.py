"""The check module for bandwidths: published values, proofs in a line, brute force and CP-SAT."""

from __future__ import annotations

from itertools import combinations, permutations, product
from math import comb
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from ortools.sat.python import cp_model
from tests.spray.bandwidth import Numbered, bandwidth, growth_bound
from tests.spray.drawn_covers import drawn_graph


def path(count):
    return count, [(v, v + 1) for v in range(count - 1)]


def cycle(count):
    return count, [(v, (v + 1) % count) for v in range(count)]


def star(count):
    return count, [(0, v) for v in range(1, count)]


def complete(count):
    return count, list(combinations(range(count), 2))


def bipartite(one, two):
    return one + two, [(a, one + b) for a, b in product(range(one), range(two))]


def grid(rows, columns):
    across = [
        (r * columns + c, r * columns + c + 1) for r in range(rows) for c in range(columns - 1)
    ]
    down = [(v, v + columns) for v in range((rows - 1) * columns)]
    return rows * columns, across + down


def tree(arms, levels):
    count = (arms ** (levels + 1) - 1) // (arms - 1)
    return count, [((v - 1) // arms, v) for v in range(1, count)]


def cube(dimensions):
    count = 2**dimensions
    return count, [
        (v, v ^ 1 << b) for v in range(count) for b in range(dimensions) if not v >> b & 1
    ]


@pytest.mark.parametrize("count", [2, 3, 9, 16])
def test_a_path_has_bandwidth_1(count):
    """An edge waits one place at least; in the order of the path none waits longer."""
    assert bandwidth(*path(count)).width == 1


@pytest.mark.parametrize("count", [3, 4, 9, 16])
def test_a_cycle_has_bandwidth_2(count):
    """The first vertex has two neighbours, one of them two places on; both ways round in turn."""
    assert bandwidth(*cycle(count)).width == 2


@pytest.mark.parametrize("count", [2, 5, 9])
def test_a_complete_graph_has_bandwidth_one_less_than_its_vertices(count):
    """The first and the last vertex are neighbours."""
    assert bandwidth(*complete(count)).width == count - 1


@pytest.mark.parametrize("count", [2, 3, 8, 9, 16])
def test_a_star_has_half_of_its_arms_rounded_up(count):
    """On one side of the middle lie half of the arms at least; the middle in the middle does it."""
    assert bandwidth(*star(count)).width == -(-(count - 1) // 2)


@pytest.mark.parametrize(
    ("rows", "columns"), [(1, 5), (2, 2), (2, 9), (3, 3), (3, 4), (3, 6), (4, 4), (4, 5)]
)
def test_a_grid_has_its_shorter_side(rows, columns):
    """[chvatalova-1975]."""
    assert bandwidth(*grid(rows, columns)).width == min(rows, columns)


@pytest.mark.parametrize(("arms", "levels"), [(2, 1), (2, 2), (2, 3), (2, 4), (3, 1), (3, 2)])
def test_a_complete_tree_has_the_published_bandwidth(arms, levels):
    """[smithline-1995]; binary trees of 3, 7, 15 and 31 vertices have 1, 2, 3 and 4."""
    leaves = arms**levels
    published = -(-arms * (leaves - 1) // (2 * levels * (arms - 1)))
    assert bandwidth(*tree(arms, levels)).width == published


@pytest.mark.parametrize(("one", "two"), [(1, 1), (3, 2), (4, 4), (6, 3), (7, 5)])
def test_a_complete_bipartite_graph_has_the_published_bandwidth(one, two):
    """[chvatal-1970]."""
    assert bandwidth(*bipartite(one, two)).width == (one - 1) // 2 + two


@pytest.mark.parametrize("dimensions", [1, 2, 3, 4])
def test_a_cube_has_the_published_bandwidth(dimensions):
    """[harper-1966]: 1, 2, 4 and 7."""
    published = sum(comb(m, m // 2) for m in range(dimensions))
    assert bandwidth(*cube(dimensions)).width == published


def test_the_exit_last_by_hand():
    """By hand. A row of rooms left at its end: 1; left in its middle, both arms in turn: 2.

    A hall with five rooms that is left last: the first room waits for the other four. A floor
    left at its corner: strip after strip along the shorter side, as without an exit.
    """
    assert bandwidth(*path(7), last=6) == Numbered(1, (0, 1, 2, 3, 4, 5, 6))
    assert bandwidth(*path(7), last=3).width == 2
    assert bandwidth(*star(6), last=0).width == 5
    assert bandwidth(*star(6), last=1).width == 3
    assert bandwidth(*grid(4, 5), last=0).width == 4


def test_areas_by_hand():
    """By hand: a, b, c in a row of 5, 1 and 2 m². From a: 5 and 1; from c: 2 and 1; b last: 7.

    An edge waits from the begin of its first to the begin of its second room.
    """
    areas = (5, 1, 2)
    assert bandwidth(*path(3), areas=areas, last=2) == Numbered(5, (0, 1, 2))
    assert bandwidth(*path(3), areas=areas) == Numbered(2, (2, 1, 0))
    assert bandwidth(*path(3), areas=areas, last=1).width == 7


def test_a_graph_in_parts():
    """No edge waits between them; but nobody can walk from one to the other."""
    assert bandwidth(4, [(0, 1), (2, 3)]).width == 1
    assert bandwidth(3, []).width == 0
    with pytest.raises(ValueError, match="falls apart"):
        bandwidth(4, [(0, 1), (2, 3)], walkable=True)


def drawn(count, seed):
    near = drawn_graph(count, seed)
    edges = [(one, two) for one in range(count) for two in sorted(near[one]) if one < two]
    dice = Random(f"areas {seed}")
    return edges, [dice.randint(1, 5) for _ in range(count)]


def waits(order, edges, areas):
    begin = {v: sum(areas[u] for u in order[:place]) for place, v in enumerate(order)}
    return max((abs(begin[one] - begin[two]) for one, two in edges), default=0)


def may_be_walked(order, edges):
    place = {v: at for at, v in enumerate(order)}
    later = {one if place[one] < place[two] else two for one, two in edges}
    return later == set(order[:-1])


@settings(max_examples=40)
@given(st.integers(2, 6), st.integers(0, 10**6), st.booleans(), st.booleans(), st.booleans())
def test_no_permutation_waits_less(count, seed, with_exit, weighted, walkable):
    edges, areas = drawn(count, seed)
    areas = areas if weighted else [1] * count
    last = seed % count if with_exit else None
    truth = min(
        waits(order, edges, areas)
        for order in permutations(range(count))
        if last in (None, order[-1]) and (not walkable or may_be_walked(order, edges))
    )
    found = bandwidth(count, edges, last=last, areas=areas, walkable=walkable)
    assert found.width == truth == waits(found.order, edges, areas)
    assert last in (None, found.order[-1])
    assert not walkable or may_be_walked(found.order, edges)


def by_cp_sat(count, edges, areas, last, *, walkable):
    """Intervals that do not overlap, in which joined ones begin as close together as can be."""
    model = cp_model.CpModel()
    whole = sum(areas)
    begin = [model.new_int_var(0, whole - area, "") for area in areas]
    model.add_no_overlap(
        model.new_fixed_size_interval_var(begin[v], area, "") for v, area in enumerate(areas)
    )
    width = model.new_int_var(0, whole, "width")
    later = [[] for _ in range(count)]
    for one, two in edges:
        first = model.new_bool_var("")
        model.add(begin[two] > begin[one]).only_enforce_if(first)
        model.add(begin[two] < begin[one]).only_enforce_if(~first)
        model.add(begin[two] - begin[one] <= width)
        model.add(begin[one] - begin[two] <= width)
        later[one].append(first)
        later[two].append(~first)
    ends = [model.new_bool_var("") for _ in range(count)]
    model.add_exactly_one(ends)
    for v, is_last in enumerate(ends):
        model.add(begin[v] == whole - areas[v]).only_enforce_if(is_last)
        if walkable:
            model.add_bool_or([*later[v], is_last])
    if last is not None:
        model.add(ends[last] == 1)
    model.minimize(width)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    return round(solver.objective_value)


@pytest.mark.parametrize("weighted", [False, True], ids=["by number", "by area"])
@pytest.mark.parametrize("walkable", [False, True], ids=["any", "walkable"])
@pytest.mark.parametrize("block", range(4))
def test_cp_sat_finds_the_same_width(block, walkable, weighted):
    """On eighty drawn graphs of 6 to 11 vertices, half of them with an exit that comes last."""
    for seed in range(5 * block, 5 * block + 5):
        count = 6 + seed % 6
        edges, areas = drawn(count, seed)
        areas = areas if weighted else [1] * count
        last = seed % count if seed % 2 else None
        found = bandwidth(count, edges, last=last, areas=areas, walkable=walkable)
        assert found.width == waits(found.order, edges, areas)
        assert found.width == by_cp_sat(count, edges, areas, last, walkable=walkable), seed


@settings(max_examples=60)
@given(st.integers(2, 14), st.integers(0, 10**6))
def test_counting_from_the_exit_never_says_too_much(count, seed):
    edges, _ = drawn(count, seed)
    exit_ = seed % count
    free = bandwidth(count, edges).width
    last = bandwidth(count, edges, last=exit_).width
    walked = bandwidth(count, edges, last=exit_, walkable=True).width
    assert growth_bound(count, edges, exit_) <= last
    assert free <= last <= walked
