"""Containers bought: always enough, never dearer than the best that trying all can find."""

from __future__ import annotations

import itertools
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.facts.job import Container
from farwall.mix.pack import pack
from farwall.units import L_PER_US_GAL, l_from_gal

GALLON = Container(L_PER_US_GAL, "60.00")
PAIL = Container(5 * L_PER_US_GAL, "270.00")

sizes = st.sampled_from([0.5, 0.946352946, 1.0, 2.5, 3.785411784, 5.0, 18.92705892])
prices = st.integers(100, 30_000).map(lambda cents: str(Decimal(cents) / 100))
shelves = st.lists(
    st.builds(Container, size_l=sizes, price=prices),
    min_size=1,
    max_size=3,
    unique_by=lambda c: c.size_l,
)


def by_hand(found):
    return {round(container.size_l / L_PER_US_GAL): count for container, count in found.containers}


def by_trying_all(need_l, shelf):
    """Every sensible set of containers: slow, obvious, and not the way the answer was found."""
    most = [int(need_l / one.size_l) + 1 for one in shelf]
    for counts in itertools.product(*(range(n + 1) for n in most)):
        held = sum(one.size_l * count for one, count in zip(shelf, counts, strict=True))
        if held >= need_l * (1 - 1e-9):
            cost = sum(Decimal(one.price) * n for one, n in zip(shelf, counts, strict=True))
            yield cost, held


@pytest.mark.parametrize(
    ("need_gal", "bought"),
    [
        # Hand-worked with a gallon at 60 and five at 270: 5 gallons singly are 300.
        (4.0, {1: 4}),
        (4.4, {5: 1}),
        (5.0, {5: 1}),
        (6.0, {1: 1, 5: 1}),
        (9.2, {5: 2}),
        (0.0, {}),
    ],
)
def test_what_is_bought_by_hand(need_gal, bought):
    assert by_hand(pack(l_from_gal(need_gal), [GALLON, PAIL])) == bought


@pytest.mark.parametrize("aim", ["cost", "left over"])
@pytest.mark.parametrize(
    ("need_l", "shelf", "bought"),
    [
        # Hand-worked: a litre holds a litre, though it shares no measure with the quart beside it.
        (1.0, [Container(1.0, "29.09"), Container(0.946, "40.68")], [1, 0]),
        (
            43.785,
            [Container(20.0, "402"), Container(3.785, "164"), Container(10.0, "413")],
            [2, 1, 0],
        ),
        (5.0, [Container(5.0, "182.75"), Container(4.54, "98.43")], [1, 0]),
    ],
)
def test_what_holds_the_need_exactly_is_not_short(need_l, shelf, bought, aim):
    found = {id(one): count for one, count in pack(need_l, shelf, aim=aim).containers}
    assert [found.get(id(one), 0) for one in shelf] == bought


def test_cost_and_left_over_by_hand():
    found = pack(l_from_gal(4.4), [GALLON, PAIL])
    assert found.cost == Decimal("270.00")
    assert found.left_over_l == pytest.approx(l_from_gal(0.6))


def test_a_spare_is_part_of_what_is_asked_but_is_left_over_all_the_same():
    found = pack(l_from_gal(5), [GALLON, PAIL], spare_percent=20)
    assert by_hand(found) == {1: 1, 5: 1}
    assert found.left_over_l == pytest.approx(l_from_gal(1))


def test_the_least_left_over_may_cost_more():
    dear = Container(L_PER_US_GAL, "90.00")
    need_l = l_from_gal(4)
    assert by_hand(pack(need_l, [dear, PAIL])) == {5: 1}
    least = pack(need_l, [dear, PAIL], aim="left over")
    assert by_hand(least) == {1: 4}
    assert least.cost == Decimal("360.00")


def test_at_equal_cost_less_is_left_over():
    even = Container(5 * L_PER_US_GAL, "300.00")
    assert by_hand(pack(l_from_gal(5.5), [GALLON, even])) in ({1: 6}, {1: 1, 5: 1})
    assert pack(l_from_gal(5.5), [GALLON, even]).left_over_l == pytest.approx(l_from_gal(0.5))


even_sizes = st.sampled_from([0.5, 1.0, 2.5, 4.0])
even_shelves = st.lists(
    st.builds(Container, size_l=even_sizes, price=prices),
    min_size=1,
    max_size=3,
    unique_by=lambda c: c.size_l,
)


@given(st.floats(0.1, 12), even_shelves)
def test_no_set_of_containers_is_cheaper_or_at_its_cost_smaller(need_l, shelf):
    found = pack(need_l, shelf)
    cost, held = min(by_trying_all(need_l, shelf))
    assert found.bought_l >= need_l * (1 - 1e-8)
    assert found.cost <= cost
    if found.cost == cost:
        assert found.bought_l <= held * (1 + 1e-3)


@given(st.floats(0.1, 12), even_shelves)
def test_no_set_of_containers_leaves_less_over(need_l, shelf):
    found = pack(need_l, shelf, aim="left over")
    assert found.bought_l == pytest.approx(min(held for _, held in by_trying_all(need_l, shelf)))


@given(st.floats(0, 200), shelves, st.floats(0, 40))
def test_what_is_bought_is_enough_and_its_cost_is_the_sum(need_l, shelf, spare):
    found = pack(need_l, shelf, spare_percent=spare)
    assert found.bought_l >= need_l * (1 + spare / 100) * (1 - 1e-8)
    assert found.cost == sum(Decimal(one.price) * count for one, count in found.containers)


def test_sizes_that_share_no_measure_are_told_finely_apart_by_hand():
    """Hand-worked: two of 1.37 L hold 2.74 L, enough for 2.735 L; told in 64ths they would be
    2.72 L and a third be bought. The hopeful sum is no lower here: one of each holds 2.37 L."""
    shelf = [Container(1.0, "10.00"), Container(1.37, "11.00")]
    for hopeful in (False, True):
        found = pack(2.735, shelf, hopeful=hopeful)
        assert [(one.size_l, count) for one, count in found.containers] == [(1.37, 2)]
        assert found.cost == Decimal("22.00")


def test_what_cannot_be_bought_is_refused():
    with pytest.raises(Refused, match="No sizes"):
        pack(1.0, [])
    with pytest.raises(Refused, match="no house"):
        pack(1e9, [GALLON])
    with pytest.raises(Refused, match="no need"):
        pack(-1.0, [GALLON])


def test_no_more_is_bought_than_there_are_by_hand():
    need_l = l_from_gal(6)
    assert by_hand(pack(need_l, [GALLON, PAIL], at_most=[4, 1])) == {1: 1, 5: 1}
    assert by_hand(pack(need_l, [GALLON, PAIL], at_most=[0, None])) == {5: 2}
    with pytest.raises(Refused, match="all there are hold"):
        pack(need_l, [GALLON, PAIL], at_most=[0, 1])


@given(st.floats(0.5, 60), st.lists(st.floats(0.3, 20), min_size=2, max_size=5))
def test_the_hopeful_sum_is_a_lower_bound(need_l, sizes_l):
    shelf = [Container(size, f"{5 + 9 * size:.2f}") for size in sizes_l]
    low, found = pack(need_l, shelf, hopeful=True), pack(need_l, shelf)
    assert low.cost <= found.cost
    assert found.bought_l >= need_l * (1 - 1e-8)
