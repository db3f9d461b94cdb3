"""The least worst share: by hand, four other ways, and a floor that nothing undercuts."""

from __future__ import annotations

from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.drawn_leavings import drawn_leaving
from tests.spray.order_oracles import by_all_orders, by_cp_sat, by_milp, by_sets

from farwall.spray.leaving import Door, Leaving
from farwall.spray.margins import EXACT_FIELDS, MOST_SETS, best_order, floor_of

EQUAL = 0.05
SHAPES = ("grid", "rooms about a hall", "each with a door outside")


def worst(house, order):
    return max(share for share, _ in house.walked(order))


def best(house, known=(), **options):
    floor = floor_of(house)
    return best_order(
        house,
        [float(minutes) for minutes in house.minutes],
        [floor.order, *known],
        floor.share,
        equal_share=EQUAL,
        **options,
    )


def two_open_rooms(hours):
    """Two rooms of an hour each with doors outside; what a minute of age weighs by hour."""
    return Leaving(
        ((Door(1.0, 2),), (Door(1.0, 2),)),
        (60.0, 60.0),
        lambda index, begun_min: hours[index][int(begun_min // 60)],
    )


def test_the_room_whose_budget_shrinks_goes_first_by_hand():
    """By hand: room 0 weighs 0.4 then 0.9, room 1 0.5 then 0.6: 0 first has its worst at 0.6."""
    house = two_open_rooms(((0.4, 0.9, 0.9), (0.5, 0.6, 0.6)))
    assert floor_of(house).share == pytest.approx(0.6)
    assert floor_of(house).order == (0, 1)
    found = best(house)
    assert found.order == (0, 1)
    assert found.least_worst == pytest.approx(0.6)
    assert found.exact


def test_the_floor_takes_the_best_hour_that_is_still_to_come_by_hand():
    """By hand: both rooms are lightest in the second hour, which only one of them can have.

    From the back: the last one weighs 0.3 or 0.4, the first could hope for as little: the floor is
    0.4, while any order has 0.8 in its first hour.
    """
    house = two_open_rooms(((0.8, 0.3, 0.3), (0.9, 0.4, 0.4)))
    assert floor_of(house).share == pytest.approx(0.4)
    assert best(house).least_worst == pytest.approx(0.8)
    assert best(house).order == (0, 1)


def test_within_the_margin_the_larger_room_is_last():
    """0.60 or 0.62 counts as equal: the order is tidy, and the least share is told all the same.

    By hand: 0 before 1 needs 0.97 x 0.62 = 0.6014 at worst, 1 before 0 needs 0.62.
    """
    house = Leaving(
        ((Door(0.62, 2),), (Door(0.60, 2),)),
        (30.0, 10.0),
        lambda index, begun_min: 1.0 if (index == 0) == (begun_min > 0) else 0.97,
    )
    found = best(house)
    assert found.order == (1, 0), "room 0 takes longer here, and is larger"
    assert worst(house, found.order) == pytest.approx(0.62)
    assert found.least_worst == pytest.approx(0.97 * 0.62)


@pytest.mark.parametrize("block", range(10))
def test_four_ways_agree_on_the_least_worst_share(block):
    """Two hundred and ten houses of 2 to 8 rooms, unequal, with other budgets every hour.

    All orders walked one by one, a dynamic program over dry sets, a time-indexed model for HiGHS
    and intervals for CP-SAT, against the planner's sets of later fields. About a hall and with
    doors everywhere only up to 6 rooms: there nearly every order lets everybody out.
    """
    for seed in range(21 * block, 21 * block + 21):
        shape = SHAPES[seed // 7 % 3]
        count = 2 + seed % (7 if shape == "grid" else 5)
        house = drawn_leaving(count, seed, shape=shape)
        truth = by_all_orders(house)
        assert by_sets(house) == pytest.approx(truth, abs=1e-9), seed
        assert by_milp(house) == pytest.approx(truth, abs=1e-5), seed
        assert by_cp_sat(house) == pytest.approx(truth, abs=2e-6), seed
        found = best(house)
        assert found.exact
        assert found.least_worst == pytest.approx(truth, abs=1e-9), seed
        assert truth <= worst(house, found.order) + 1e-9 <= truth + EQUAL + 2e-9
        assert floor_of(house).share <= truth + 1e-9


def tidiness(house, order):
    """The largest last, then far fields early: told once more, for one order."""
    walk = sum(place * house.away[index] for place, index in enumerate(order))
    return -house.minutes[order[-1]], walk


@settings(max_examples=60)
@given(st.integers(2, 6), st.integers(0, 10**6), st.sampled_from(SHAPES))
def test_no_order_within_the_margin_is_tidier(count, seed, shape):
    """Every permutation that lets everybody out is weighed; minutes stand for areas here."""
    house = drawn_leaving(count, seed, shape=shape)
    possible = [order for order in permutations(range(count)) if house.walked(order)]
    limit = min(worst(house, order) for order in possible) + EQUAL
    within = [order for order in possible if worst(house, order) <= limit]
    found = best(house)
    assert found.order in within
    assert tidiness(house, found.order) == min(tidiness(house, order) for order in within)


@settings(max_examples=60)
@given(st.integers(2, 9), st.integers(0, 10**6), st.sampled_from(SHAPES))
def test_where_budgets_never_grow_the_floor_is_the_least_worst_share(count, seed, shape):
    """The arm tires and the budget stays: the last field first is the best of all orders."""
    house = drawn_leaving(count, seed, shape=shape, steady=True)
    floor = floor_of(house)
    assert floor.share == pytest.approx(by_sets(house), abs=1e-9)
    assert worst(house, floor.order) == pytest.approx(floor.share, abs=1e-9)


@settings(max_examples=20)
@given(st.integers(30, 120), st.integers(0, 10**6))
def test_of_large_houses_too_the_floor_is_met_where_budgets_never_grow(count, seed):
    house = drawn_leaving(count, seed, steady=True)
    floor = floor_of(house)
    assert worst(house, floor.order) == pytest.approx(floor.share, abs=1e-9)


@settings(max_examples=40)
@given(st.integers(2, 9), st.integers(0, 10**6), st.sampled_from(SHAPES), st.integers(1, 4))
def test_cut_short_the_order_is_walkable_and_no_worse_than_what_was_known(
    count, seed, shape, width
):
    house = drawn_leaving(count, seed, shape=shape)
    known = sorted(range(count), key=lambda index: -house.away[index])
    short = best(house, [known], most_sets=1, width=width)
    full = best(house, [known])
    assert not short.exact
    assert full.exact
    assert floor_of(house).share <= full.least_worst + 1e-9
    assert full.least_worst <= short.least_worst + 1e-9
    assert short.least_worst <= worst(house, known) + 1e-9
    assert worst(house, short.order) <= short.least_worst + EQUAL + 1e-9


def test_sixteen_fields_with_doors_everywhere_never_have_too_many_sets():
    """Every set of later fields is possible: 2 to the 16, the empty one among them."""
    assert MOST_SETS == 2**EXACT_FIELDS
    house = Leaving(
        tuple((Door(1.0, EXACT_FIELDS),) for _ in range(EXACT_FIELDS)),
        tuple(float(1 + i) for i in range(EXACT_FIELDS)),
        lambda index, begun_min: 1.0,
    )
    found = best(house)
    assert found.exact
    assert found.order[-1] == EXACT_FIELDS - 1, "the largest is last"


def test_a_long_row_of_rooms_is_weighed_to_the_end():
    """Forty rooms in a row have but forty sets of later fields."""
    doors = ((Door(1.0, 40),), *((Door(1.0, i),) for i in range(39)))
    house = Leaving(doors, (10.0,) * 40, lambda index, begun_min: 1 + begun_min)
    found = best(house)
    assert found.exact
    assert found.order == tuple(reversed(range(40)))
