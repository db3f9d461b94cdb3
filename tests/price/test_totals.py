"""Laws of totals and of amounts cut into parts."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.price.money import added, rounded
from farwall.price.totals import TaxGroup, spread_over, tax_groups, totals, whole_parts

CENTS = st.integers(-(10**9), 10**9).map(lambda n: Decimal(n) / 100)
SHARES = st.lists(st.integers(0, 50).map(Decimal), max_size=2)
KINDS = st.sampled_from(["standard", "zero", "exempt"])
TAXED = st.lists(st.tuples(KINDS, st.integers(0, 30).map(Decimal), CENTS), min_size=1, max_size=9)


@given(TAXED)
def test_groups_add_up_to_what_is_taxed(amounts):
    groups = tax_groups(amounts)
    found = totals([value for _, _, value in amounts], taxes=groups)
    assert found.bases == found.without_tax == added(value for _, _, value in amounts)
    assert len({(one.kind, one.percent) for one in groups}) == len(groups)


@given(TAXED, CENTS, CENTS)
def test_turned_signs_turn_every_total(amounts, prepaid, rounding):
    def of(sign):
        return totals(
            [sign * v for _, _, v in amounts],
            taxes=tax_groups([(k, p, sign * v) for k, p, v in amounts]),
            prepaid=sign * prepaid, rounding=sign * rounding,
        )  # fmt: skip

    assert of(-1).payable == -of(1).payable
    assert of(-1).tax == -of(1).tax


@given(CENTS, st.lists(st.integers(0, 1000).map(Decimal), min_size=1, max_size=6))
def test_what_is_spread_is_all_there(whole, weights):
    if not any(weights):
        with pytest.raises(ArithmeticError):
            spread_over(whole, weights)
        return
    parts = spread_over(whole, weights)
    assert added(parts) == rounded(whole)
    assert all(part == 0 for part, one in zip(parts, weights, strict=True) if one == 0)


def test_an_amount_is_spread_by_weights_by_hand():
    """100 by 1, 2, 1 is 25, 50, 25; 10 by thirds is 3.33 twice, and the last takes the cent."""
    one, two, none = Decimal(1), Decimal(2), Decimal(0)
    assert spread_over(Decimal(100), [one, two, one]) == (Decimal(25), Decimal(50), Decimal(25))
    thirds = (Decimal("3.33"), Decimal("3.33"), Decimal("3.34"), none)
    assert spread_over(Decimal(10), [one, one, one, none]) == thirds


def test_a_rate_written_in_two_ways_is_one_group():
    groups = tax_groups([
        ("standard", Decimal("25"), Decimal(1)), ("standard", Decimal("25.00"), Decimal(2)),
    ])  # fmt: skip
    assert groups == (TaxGroup("standard", Decimal(25), Decimal(3)),)


@given(st.lists(CENTS, max_size=12))
def test_whole_parts_add_up_to_the_rounded_sum_and_none_is_off_by_one(parts):
    whole = whole_parts(parts, added(parts))
    assert added(whole) == rounded(added(parts), Decimal(1))
    assert all(abs(a - b) < 1 for a, b in zip(whole, parts, strict=True))


def test_whole_parts_by_hand():
    """Three thirds of a hundred: the first of equals takes what is over."""
    third = Decimal("33.33")
    assert whole_parts([third, third, Decimal("33.34")], Decimal(100)) == (33, 33, 34)
    assert whole_parts([Decimal("0.5")] * 4, Decimal(2)) == (1, 1, 0, 0)
    assert whole_parts([Decimal("0.5")] * 3, Decimal(1)) == (1, 0, 0)
