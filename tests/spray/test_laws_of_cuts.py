"""More stop lines to choose from never make the best cut dearer: a law of every drawn house."""

from __future__ import annotations

from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.drawn_covers import (
    costs_anyhow,
    costs_like_a_house,
    costs_with_ties,
    drawn_columns,
    drawn_graph,
)

from farwall.spray.partition import cheapest_cover

COSTS = {"like a house": costs_like_a_house, "anyhow": costs_anyhow, "with ties": costs_with_ties}


def without_stops_at(shut, columns):
    """The fields that no shut door parts: both of its rooms are in, or neither."""
    return {
        field: cost
        for field, cost in columns.items()
        if all((one in field) == (two in field) for one, two in shut)
    }


@settings(max_examples=80, deadline=None)
@given(
    st.integers(2, 8), st.integers(0, 10**6), st.sampled_from(sorted(COSTS)),
    st.floats(0, 1), st.sampled_from([{}, {"exact_units": 0}]),
)  # fmt: skip
def test_more_doors_to_stop_at_never_make_the_best_cut_dearer(count, seed, kind, share, way):
    """Doors at which nobody may stop are opened one after the other; the whole house in one field
    is always among the cuts."""
    columns = COSTS[kind](drawn_columns(count, seed, most=count, cap=10**6), seed)
    near = drawn_graph(count, seed)
    doors = [(one, two) for one in range(count) for two in sorted(near[one]) if one < two]
    dice = Random(seed)
    dice.shuffle(doors)
    shut = doors[: round(share * len(doors))]
    before = float("inf")
    while True:
        found = cheapest_cover(count, without_stops_at(shut, columns), **way)
        assert found.proved
        assert found.cost <= before + 1e-6
        before = found.cost
        if not shut:
            break
        shut.pop()


def test_a_door_to_stop_at_by_hand():
    """By hand: one field costs 5; with a stop at the door two for 1 and 2."""
    columns = {frozenset([0]): 1.0, frozenset([1]): 2.0, frozenset([0, 1]): 5.0}
    assert cheapest_cover(2, without_stops_at([(0, 1)], columns)).cost == pytest.approx(5.0)
    assert cheapest_cover(2, columns).cost == pytest.approx(3.0)
