"""Who may leave when: by hand, and against walking over dry floor."""

from __future__ import annotations

from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.drawn_leavings import drawn_leaving

from farwall.spray.leaving import Door, Leaving, bits

OUT = 3
HALL = Leaving(
    # Rooms 1 and 2 behind hall 0; room 2 has a door outside as well, by which its edge is older.
    doors=((Door(1.0, OUT, 10),), (Door(2.0, 0, 11),), (Door(3.0, 0, 12), Door(4.0, OUT, 13))),
    minutes=(10.0, 20.0, 30.0),
    share_per_min=lambda index, begun_min: 0.1 * (1 + begun_min / 100),
)


def test_shares_and_doors_of_an_order_by_hand():
    """By hand: room 1 at 0 min: 2 x 0.1; hall at 20 min: 1 x 0.1 x 1.2; room 2 at 30: by 13."""
    walked = HALL.walked([1, 0, 2])
    assert [door.number for _, door in walked] == [11, 10, 13]
    assert [share for share, _ in walked] == pytest.approx([0.2, 0.12, 4 * 0.13])


def test_the_door_with_the_younger_edge_is_taken_while_it_leads_somewhere():
    walked = HALL.walked([2, 1, 0])
    assert [door.number for _, door in walked] == [12, 11, 10]


def test_an_order_that_shuts_somebody_in_is_none():
    assert HALL.walked([0, 1, 2]) is None, "room 1 has the hall only, which is wet"


def test_doors_to_the_outside_by_hand():
    assert HALL.away == (0, 1, 0)
    assert HALL.behind == (0b110, 0, 0, 0b101)


def test_a_field_that_nothing_leads_out_of_is_never_sprayed():
    """Two rooms that lead only into each other, and one without a door."""
    shut = Leaving(
        ((Door(1.0, 4),), (Door(1.0, 2),), (Door(1.0, 1),), ()), (1.0,) * 4, lambda i, at: 1.0
    )
    assert shut.away == (0, None, None, None)


def test_spraying_times_add_up_alike_in_any_order():
    """Tenths of a minute do not, as binary fractions: an hour would begin too late."""
    three = Leaving(((Door(1.0, 3),),) * 3, (0.1, 0.2, 59.7), lambda index, begun_min: begun_min)
    for order in ([0, 1, 2], [1, 0, 2]):
        share, _ = three.walked(order)[2]
        assert share == pytest.approx(0.3, abs=1e-12)
    last, _ = three.walked([2, 0, 1])[2]
    first_two, _ = three.walked([0, 2, 1])[2]
    assert last == first_two


def test_bits_come_from_the_least():
    assert list(bits(0b10110)) == [1, 2, 4]
    assert list(bits(0)) == []


def lets_everybody_out(house, order):
    """Walked forward: after each field a chain of doors over dry fields leads outside."""
    dry = set(order)
    for index in order:
        dry.remove(index)
        seen, todo = set(), [index]
        while todo:
            here = todo.pop()
            seen.add(here)
            todo += [d.into for d in house.doors[here] if d.into in dry - seen]
        if not any(d.into == len(house.doors) for here in seen for d in house.doors[here]):
            return False
    return True


@settings(max_examples=300)
@given(st.integers(2, 8), st.integers(0, 10**6), st.integers(0, 10**6))
def test_what_grows_from_the_outside_is_what_lets_everybody_out(count, seed, shuffle):
    house = drawn_leaving(count, seed)
    order = list(range(count))
    Random(shuffle).shuffle(order)
    assert (house.walked(order) is not None) == lets_everybody_out(house, order)


@settings(max_examples=100)
@given(st.integers(2, 30), st.integers(0, 10**6))
def test_by_falling_number_of_doors_nobody_is_shut_in(count, seed):
    house = drawn_leaving(count, seed)
    order = sorted(range(count), key=lambda index: -house.away[index])
    assert house.walked(order) is not None
    assert lets_everybody_out(house, order)
