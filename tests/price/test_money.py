"""Rounding held against [en16931] rules, hand-worked."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.price.money import amount, rounded, share, written

AMOUNTS = st.decimals(-(10**9), 10**9, places=5, allow_nan=False)


def test_half_goes_away_from_zero_on_both_sides():
    assert rounded(Decimal("-324.995")) == Decimal("-325.00")
    assert rounded(Decimal("324.995")) == Decimal("325.00")
    assert rounded(share(Decimal("-1710.50"), 19)) == Decimal("-325.00")


def test_to_a_step():
    assert rounded(Decimal("6113.20"), Decimal(10)) == Decimal(6110)
    assert rounded(Decimal("6115"), Decimal(10)) == Decimal(6120)
    with pytest.raises(ArithmeticError):
        rounded(Decimal(1), Decimal(0))


@given(AMOUNTS)
def test_written_reads_back_within_half_a_cent_and_never_as_minus_nothing(value):
    text = written(value)
    assert abs(amount(text) - value) <= Decimal("0.005")
    assert text != "-0.00"


@given(AMOUNTS)
def test_rounding_is_odd(value):
    assert rounded(-value) == -rounded(value)


@pytest.mark.parametrize("text", ["NaN", "Infinity", "ten"])
def test_what_is_no_amount(text):
    with pytest.raises(ArithmeticError):
        amount(text)
