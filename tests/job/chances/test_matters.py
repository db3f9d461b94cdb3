"""Variance shares against closed forms."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.job.chances.matters import first_order

RNG = np.random.default_rng(3)
ONE, TWO, NONE = RNG.standard_normal((3, 20_000))


@settings(max_examples=20)
@given(st.floats(0.1, 5), st.floats(0.1, 5))
def test_of_a_sum_each_part_has_the_share_of_its_variance(a, b):
    """Closed form: a²/(a² + b²)."""
    share = a * a / (a * a + b * b)
    assert first_order(ONE, a * ONE + b * TWO) == pytest.approx(share, abs=0.03)


def test_an_input_without_bearing_has_no_share():
    assert abs(first_order(NONE, 2 * ONE + TWO)) < 0.01


def test_a_bent_dependence_counts_too():
    """Closed form: of z² + e, with a variance of 2 for z² and 1 for e, two thirds.

    The outermost of 50 bins reach far out on z², and what varies inside them is not told: 0.07.
    """
    assert first_order(ONE, ONE**2 + TWO) == pytest.approx(2 / 3, abs=0.07)


def test_where_nothing_varies_nothing_has_a_share():
    assert first_order(ONE, np.ones(len(ONE))) == 0.0
