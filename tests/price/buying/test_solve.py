"""Purchases: the best of all ways that trying them finds, whatever order they are told in."""

from __future__ import annotations

import random
from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.price.buying.by_trying_all import best, drawn

from farwall.errors import Refused
from farwall.facts.wares import Seller, Ware
from farwall.price.buying import Material, buy
from farwall.price.buying.check import faults_of

CASES = 2000


def wrong_in(found, materials, sellers):
    return faults_of(
        [{"material": o.material, "ware": o.ware.id, "count": o.count} for o in found.taken],
        {one.id: one.need for one in materials},
        [vars(ware) for one in materials for ware in one.wares],
        [vars(one) for one in sellers],
        {
            "goods": str(found.goods),
            "total": str(found.total),
            "delivery": {name: str(due) for name, due in found.delivery},
            "fields": {one.id: one.parts for one in materials},
            "boxed": found.boxed,
        },
    )


@pytest.mark.parametrize("part", range(8))
def test_no_way_of_all_that_there_are_is_cheaper_2000_drawn(part):
    """Sellers with deliveries and stock, lots, fields; both aims; half of them have no answer or
    one material only, as the draw has it."""
    for seed in range(part * CASES // 8, (part + 1) * CASES // 8):
        materials, sellers = drawn(seed)
        for aim in ("cheapest", "fewest left over"):
            wanted = best(materials, sellers, least_left=aim != "cheapest")
            if wanted is None:
                with pytest.raises(Refused, match="not have enough"):
                    buy(materials, sellers, aim)
                continue
            found = buy(materials, sellers, aim)
            assert found.total == wanted, (seed, aim)
            assert found.proof.status == "best", (seed, aim)
            assert not wrong_in(found, materials, sellers), (seed, aim)


@pytest.mark.parametrize("seed", range(40))
def test_the_order_in_which_it_is_told_changes_nothing(seed):
    materials, sellers = drawn(seed)
    shuffled = [replace(one, wares=tuple(reversed(one.wares))) for one in reversed(materials)]
    turned = list(reversed(sellers))
    random.Random(seed).shuffle(turned)
    try:
        assert buy(materials, sellers, "cheapest") == buy(shuffled, turned, "cheapest")
    except Refused:
        with pytest.raises(Refused):
            buy(shuffled, turned, "cheapest")


GALLON = Ware("gallon", "stain", 1.0, "l", "60.00", seller="yard", of="walnut")
PAIL = Ware("pail", "stain", 5.0, "l", "270.00", seller="mill", of="walnut")


def only(need, *wares, sellers=(), parts=(), aim="cheapest"):
    return buy([Material("walnut", need, wares, parts)], sellers, aim)


def counts(found):
    return {one.ware.id: one.count for one in found.taken}


def test_a_delivery_turns_the_choice_by_hand():
    """Five singly are 300; the pail is 270, and 310 when it has to be brought for 40."""
    assert counts(only(5.0, GALLON, PAIL)) == {"pail": 1}
    found = only(5.0, GALLON, PAIL, sellers=[Seller("mill", "40.00")])
    assert counts(found) == {"gallon": 5}
    assert found.total == Decimal("300")


def test_one_more_is_bought_where_that_brings_it_free_by_hand():
    """Four are 240 and 25 for the way; five are 300 and brought free: 265 it stays. With 70 for
    the way the fifth is bought."""
    dear = [Seller("yard", "25.00", "300")]
    assert only(4.0, GALLON, sellers=dear).total == Decimal("265")
    found = only(4.0, GALLON, sellers=[Seller("yard", "70.00", "300")])
    assert (counts(found), found.total) == ({"gallon": 5}, Decimal("300"))
    assert found.delivery == ()


def test_no_field_is_split_between_two_lots_by_hand():
    """Two fields of 3: lot 7 has four left. The one takes lot 7, the other 8, six in all; a field
    of 6 takes eight's alone."""
    seven = replace(GALLON, id="seven", lot="7", in_stock=4)
    eight = replace(GALLON, id="eight", lot="8", price="80.00")
    two = only(6.0, seven, eight, parts=(3.0, 3.0))
    assert (counts(two), two.boxed) == ({"seven": 3, "eight": 3}, ())
    one = only(6.0, seven, eight, parts=(6.0,))
    assert (counts(one), one.boxed) == ({"eight": 6}, ())


def test_where_no_lot_does_for_a_field_all_are_boxed_by_hand():
    seven = replace(GALLON, id="seven", lot="7", in_stock=4)
    eight = replace(GALLON, id="eight", lot="8", price="80.00", in_stock=4)
    found = only(6.0, seven, eight, parts=(6.0,))
    assert (counts(found), found.boxed) == ({"seven": 4, "eight": 2}, ("walnut",))


def test_what_sellers_have_not_enough_of_is_told_all_at_once():
    few = replace(GALLON, in_stock=2)
    with pytest.raises(Refused) as refused:
        buy([Material("a", 3.0, (few,)), Material("b", 9.0, (few,))], [], "cheapest")
    assert [one.where for one in refused.value.mistakes] == ["a", "b"]


def test_sizes_that_share_no_measure_are_never_short_and_the_gap_is_told():
    odd = [
        Ware(f"w{n}", "other", size, "l", price)
        for n, (size, price) in enumerate([(0.473, "9.10"), (3.785, "44.00"), (5.01, "52.30")])
    ]
    found = only(17.77, *odd)
    assert sum(one.ware.size * one.count for one in found.taken) >= 17.77
    assert found.proof.at_least + found.proof.gap == found.total


@settings(max_examples=60)
@given(seed=st.integers(0, 10_000), which=st.integers(0, 10), off=st.integers(1, 60))
def test_a_cheaper_ware_never_makes_it_dearer(seed, which, off):
    materials, sellers = drawn(seed)
    try:
        before = buy(materials, sellers, "cheapest").total
    except Refused:
        return
    one = materials[which % len(materials)]
    ware = one.wares[which % len(one.wares)]
    cheaper = replace(ware, price=str((Decimal(ware.price) * (100 - off) / 100).quantize(
        Decimal("0.01"))))  # fmt: skip
    # Free from a sum: the same basket may fall below it and be brought for money.
    fixed = [replace(seller, free_from=None) for seller in sellers]
    before = buy(materials, fixed, "cheapest").total
    changed = replace(one, wares=tuple(cheaper if w is ware else w for w in one.wares))
    turned = [changed if m is one else m for m in materials]
    assert buy(turned, fixed, "cheapest").total <= before


@settings(max_examples=60)
@given(seed=st.integers(0, 10_000), which=st.integers(0, 10), more=st.floats(0.01, 3))
def test_more_need_is_never_cheaper(seed, which, more):
    materials, sellers = drawn(seed)
    plain = [replace(one, parts=()) for one in materials]
    one = plain[which % len(plain)]
    bigger = [replace(m, need=m.need + more) if m is one else m for m in plain]
    try:
        found = buy(bigger, sellers, "cheapest").total
    except Refused:
        return
    assert buy(plain, sellers, "cheapest").total <= found


@settings(max_examples=40)
@given(seed=st.integers(0, 10_000))
def test_the_fewest_left_over_leave_no_more_than_the_cheapest_and_cost_no_less(seed):
    materials, sellers = drawn(seed)
    try:
        cheap, few = (buy(materials, sellers, aim) for aim in ("cheapest", "fewest left over"))
    except Refused:
        return
    assert few.total >= cheap.total
    assert not cheap.boxed or few.boxed
    for (_, less), (_, more) in zip(few.left_over, cheap.left_over, strict=True):
        assert less <= more + 1e-9
