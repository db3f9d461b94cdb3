"""Sizes that share no measure: still the best of all ways, and the proof says so."""

from __future__ import annotations

import random
from dataclasses import replace
from decimal import Decimal
from math import pi, sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.price.buying.by_programme import least_total
from tests.price.buying.by_trying_all import best, drawn, ways_of
from tests.price.buying.test_solve import wrong_in

from farwall.errors import Refused
from farwall.facts.wares import Seller, Ware
from farwall.price.buying import Material, buy
from farwall.price.buying.lots import Shelf

ODD = (1.0, sqrt(2) / 1.4, pi / 3.1, sqrt(7) / 2.6, 3.785411784 / 3.8)


def with_odd_sizes(seed: int) -> tuple[list[Material], list[Seller]]:
    """A drawn purchase whose sizes are set off by ratios that are no fractions."""
    materials, sellers = drawn(seed)
    draw = random.Random(-seed)
    odd = [
        replace(one, wares=tuple(replace(w, size=w.size * draw.choice(ODD)) for w in one.wares))
        for one in materials
    ]
    return odd, sellers


@pytest.mark.parametrize("part", range(4))
def test_no_way_of_all_that_there_are_is_cheaper_400_drawn(part):
    """Deliveries, sums, stock, lots and fields as in the drawn purchases of even sizes."""
    odd = 0
    for seed in range(part * 100, part * 100 + 100):
        materials, sellers = with_odd_sizes(seed)
        odd += any(Shelf(one, "cost").fine for one in materials)
        wanted = best(materials, sellers, least_left=False)
        if wanted is None:
            with pytest.raises(Refused, match="not have enough"):
                buy(materials, sellers, "cheapest")
            continue
        found = buy(materials, sellers, "cheapest")
        assert found.total == wanted, seed
        assert found.proof.status == "best", seed
        assert not wrong_in(found, materials, sellers), seed
    assert odd > 50


@settings(max_examples=80)
@given(seed=st.integers(0, 100_000))
def test_hardly_more_is_left_over_than_the_least_of_all_ways(seed):
    """Told apart to an 8,000th of the need for each container; what is nearer counts as short."""
    materials, sellers = with_odd_sizes(seed)
    try:
        found = buy(materials, sellers, "fewest left over")
    except Refused:
        return
    assert not wrong_in(found, materials, sellers)
    for material, (_, left) in zip(materials, found.left_over, strict=True):
        smallest = min(one.size for one in material.wares)
        step = max(material.need / 8_000, smallest / 4_096) * 1.001
        ways = ways_of(material, boxed=material.id in found.boxed)
        plain = [much for counts, much in ways if much >= (sum(counts) + 1) * step]
        many = sum(one.count for one in found.taken if one.material == material.id)
        assert left <= min(plain) + (many + 1) * step


def larger(seed: int) -> tuple[list[Material], list[Seller]]:
    draw = random.Random(seed)
    sellers = [
        Seller(f"s{n}", draw.choice(["0", "9.00", "21.00"]), draw.choice([None, "90", "150"]))
        for n in range(3)
    ]
    materials = []
    for m in range(4):
        wares = []
        for n in range(9):
            size = draw.uniform(0.4, 9) if draw.random() < 0.7 else draw.choice([1.0, 3.785411784])
            price = str(Decimal(int(100 * size**0.85 * draw.uniform(4, 8))) / 100)
            wares.append(Ware(f"w{m}-{n}", "other", size, "l", price, draw.choice(sellers).id,
                              in_stock=draw.choice([None, None, 1, 3])))  # fmt: skip
        materials.append(Material(f"m{m}", draw.uniform(2, 25), tuple(wares)))
    return materials, sellers


@settings(max_examples=25)
@given(seed=st.integers(0, 100_000))
def test_a_mixed_integer_programme_comes_to_the_same(seed):
    materials, sellers = larger(seed)
    found = buy(materials, sellers, "cheapest")
    assert found.proof.status == "best"
    assert float(found.total) == pytest.approx(least_total(materials, sellers), abs=0.004)
    assert not wrong_in(found, materials, sellers)


@settings(max_examples=40)
@given(seed=st.integers(0, 10_000))
def test_the_order_in_which_it_is_told_changes_nothing(seed):
    materials, sellers = larger(seed)
    turned = [replace(one, wares=tuple(reversed(one.wares))) for one in reversed(materials)]
    assert buy(materials, sellers, "cheapest") == buy(turned, sellers[::-1], "cheapest")


def test_a_drop_too_little_is_too_little_by_hand():
    """Two of 2.4999999 are short of 5 by a fifty-millionth, which a larger one makes good."""
    near = Ware("near", "other", 2.4999999, "l", "10.00")
    more = Ware("more", "other", 2.5000003 * sqrt(2), "l", "11.00")
    found = buy([Material("m", 5.0, (near, more))], [], "cheapest")
    assert {one.ware.id: one.count for one in found.taken} == {"near": 1, "more": 1}
    assert (found.total, found.proof.status) == (Decimal("21.00"), "best")


def test_a_price_by_the_litre_leaves_a_gap_that_is_told():
    """Forty odd sizes, all at the same price of a litre: too many ways are as good as another."""
    draw = random.Random(4)
    wares = [
        Ware(f"w{n}", "other", size, "l", str(Decimal(round(1000 * size)) / 100))
        for n, size in enumerate(draw.uniform(0.3, 25) for _ in range(40))
    ]
    found = buy([Material("m", 58.7, tuple(wares))], [], "cheapest")
    assert sum(one.ware.size * one.count for one in found.taken) >= 58.7
    assert found.proof.at_least + found.proof.gap == found.total
    assert Decimal("586.5") < found.proof.at_least <= found.total < Decimal("587.5")
