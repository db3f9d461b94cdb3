"""The cheapest exact cover: by hand, refused with the reason, and against three other ways."""

from __future__ import annotations

from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.cover_oracles import by_all_partitions, by_cp_sat, by_milp, covered_once
from tests.spray.drawn_covers import (
    costs_anyhow,
    costs_like_a_house,
    costs_with_ties,
    drawn_columns,
)

from farwall.errors import Unanswerable
from farwall.spray.partition import EXACT_UNITS, Cover, cheapest_cover

COSTS = {"like a house": costs_like_a_house, "anyhow": costs_anyhow, "with ties": costs_with_ties}
BY_HIGHS = {"exact_units": 0}


def sets(**named):
    """Columns of letters: a is unit 0, b is unit 1."""
    return {frozenset(ord(c) - ord("a") for c in name): cost for name, cost in named.items()}


def letters(cover):
    return ["".join(chr(ord("a") + unit) for unit in sorted(group)) for group in cover.columns]


@pytest.mark.parametrize("way", [{}, BY_HIGHS], ids=["subsets", "HiGHS"])
def test_the_cheapest_of_three_covers_by_hand(way):
    """By hand: a+bc costs 1 + 2.5, ab+c 2.2 + 1, a+b+c 3; the dear whole 9."""
    cover = cheapest_cover(3, sets(a=1, b=1, c=1, ab=2.2, bc=2.5, abc=9), **way)
    assert letters(cover) == ["a", "b", "c"]
    assert cover == Cover(cover.columns, 3.0, 3.0, proved=True)
    assert cover.gap == 0.0


@pytest.mark.parametrize("way", [{}, BY_HIGHS], ids=["subsets", "HiGHS"])
def test_of_equally_cheap_covers_the_one_with_fewer_columns_is_taken(way):
    assert letters(cheapest_cover(3, sets(a=1, b=1, c=1, ab=2, bc=2), **way)) in (
        ["a", "bc"],
        ["ab", "c"],
    )


@pytest.mark.parametrize("way", [{}, BY_HIGHS], ids=["subsets", "HiGHS"])
def test_every_unit_once_and_not_twice(way):
    """Two columns that overlap would be cheaper: they are not a cover."""
    assert letters(cheapest_cover(3, sets(ab=1, bc=1, a=6, c=5, abc=9), **way)) == ["ab", "c"]


def test_nothing_to_cover_costs_nothing():
    assert cheapest_cover(0, {}) == Cover((), 0.0, 0.0, proved=True)


@pytest.mark.parametrize("way", [{}, BY_HIGHS], ids=["subsets", "HiGHS"])
@pytest.mark.parametrize(
    "columns", [sets(ab=1, bc=1), sets(a=1, b=1), {}], ids=["odd", "missing", "none"]
)
def test_no_cover_is_said(way, columns):
    with pytest.raises(Unanswerable, match="exactly once") as no:
        cheapest_cover(3, columns, **way)
    assert "alone" in no.value.remedies[0]


@pytest.mark.parametrize(
    ("columns", "said"),
    [
        ({frozenset(): 1.0}, "at least one"),
        ({frozenset([3]): 1.0}, "0 to 2"),
        ({frozenset([-1]): 1.0}, "0 to 2"),
        ({frozenset([0]): -1.0}, "not below 0"),
        ({frozenset([0]): float("nan")}, "finite"),
        ({frozenset([0]): float("inf")}, "finite"),
    ],
)
def test_a_column_that_makes_no_sense_is_refused(columns, said):
    with pytest.raises(ValueError, match=said):
        cheapest_cover(3, columns)


@pytest.mark.parametrize("block", range(10))
def test_four_ways_agree_on_the_cheapest_cut(block):
    """Two hundred and ten houses of 2 to 8 rooms, three kinds of costs; every connected field.

    All partitions, the subset search, HiGHS as the planner calls it, HiGHS by a model of the
    test's own and CP-SAT: the same least cost, and the same least number of fields at that cost.
    """
    for seed in range(21 * block, 21 * block + 21):
        count = 2 + seed % 7
        drawn = drawn_columns(count, seed, most=count, cap=10**6)
        for name, costs in COSTS.items():
            columns = costs(drawn, seed)
            truth = by_all_partitions(count, columns)
            assert by_milp(count, columns) == pytest.approx(truth, abs=1e-5), (seed, name)
            assert by_cp_sat(count, columns) == pytest.approx(truth, abs=1e-5), (seed, name)
            for way in ({}, BY_HIGHS):
                cover = cheapest_cover(count, columns, **way)
                assert (cover.cost, len(cover.columns)) == pytest.approx(truth, abs=1e-5)
                assert cover.cost == pytest.approx(sum(columns[c] for c in cover.columns))
                assert covered_once(count, cover.columns)
                assert cover.proved


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10**6), st.integers(2, 8), st.sampled_from(sorted(COSTS)), st.booleans())
def test_the_order_of_the_columns_changes_nothing(seed, count, name, highs):
    columns = COSTS[name](drawn_columns(count, seed, most=4, cap=200), seed)
    shuffled = list(columns.items())
    Random(seed).shuffle(shuffled)
    way = BY_HIGHS if highs else {}
    assert cheapest_cover(count, dict(shuffled), **way) == cheapest_cover(count, columns, **way)


@pytest.mark.parametrize("seed", range(6))
def test_both_ways_agree_where_one_hands_over_to_the_other(seed):
    """Sixteen rooms: the last size of the subset search."""
    columns = costs_like_a_house(drawn_columns(EXACT_UNITS, seed, most=5, cap=600), seed)
    one = cheapest_cover(EXACT_UNITS, columns)
    two = cheapest_cover(EXACT_UNITS, columns, **BY_HIGHS)
    assert one.cost == pytest.approx(two.cost)
    assert len(one.columns) == len(two.columns)
    assert one.proved
    assert two.proved


def test_sixty_rooms_are_cut_and_proved_as_cp_sat_says():
    columns = costs_like_a_house(drawn_columns(60, 3, most=4, cap=1000), 3)
    cover = cheapest_cover(60, columns)
    assert cover.proved
    assert covered_once(60, cover.columns)
    assert (cover.cost, len(cover.columns)) == pytest.approx(by_cp_sat(60, columns), abs=1e-5)


def test_out_of_time_the_gap_is_told_and_true():
    """No time at all: what comes back is a cover, and its floor is below the least cost."""
    columns = costs_anyhow(drawn_columns(30, 1, most=5, cap=800), 1)
    hasty = cheapest_cover(30, columns, time_limit_s=0.0)
    best = cheapest_cover(30, columns)
    assert best.proved
    assert not hasty.proved
    assert covered_once(30, hasty.columns)
    assert hasty.lower_bound <= best.cost <= hasty.cost
    assert hasty.gap == pytest.approx(hasty.cost - hasty.lower_bound)
    assert hasty.lower_bound > 0


def test_a_bound_one_step_below_the_cost_proves_nothing(monkeypatch):
    """By hand: any two of three units for 2, as each alone: 4 is the least in whole numbers.

    A solver that stopped with a bound of one less leaves a floor of 3, with ties counted in.
    """
    import scipy.optimize

    solve = scipy.optimize.milp

    def hasty(*args, **options):
        answer = solve(*args, **options)
        answer.status = 1
        answer.mip_dual_bound -= 1.0
        return answer

    monkeypatch.setattr(scipy.optimize, "milp", hasty)
    cover = cheapest_cover(3, sets(a=2, b=2, c=2, ab=2, bc=2, ac=2, abc=9), **BY_HIGHS)
    assert (cover.cost, cover.lower_bound, cover.gap) == (4.0, 3.0, 1.0)
    assert not cover.proved


def test_out_of_time_without_a_cover_is_said():
    columns = costs_anyhow(drawn_columns(30, 1, most=5, cap=800), 1)
    without = {group: cost for group, cost in columns.items() if len(group) > 1}
    with pytest.raises(Unanswerable, match="time") as no:
        cheapest_cover(30, without, time_limit_s=0.0)
    assert "more time" in no.value.remedies[0]
