"""The root finder: the very steps of scipy's, which is another's hand."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from farwall.acid.root import RELATIVE, root_between

SHAPES = (
    lambda x, a: x**3 - a,
    lambda x, a: math.exp(x) - 1 - a,
    lambda x, a: math.atan(8 * (x - a / 4)),
    lambda x, a: x - a if x < a else 0.1 * (x - a),
    lambda x, a: (x - a / 2) ** 3 + 0.01 * (x - a / 2),
)


@given(
    st.sampled_from(SHAPES), st.floats(0.01, 3), st.floats(0.02, 3),
    st.sampled_from([(1e-12, RELATIVE), (1e-9, 1e-12), (1e-4, 1e-3)]),
)  # fmt: skip
def test_it_is_where_scipy_finds_it(shape, a, more, fine):
    width, relative = fine

    def told(x):
        return shape(x, a)

    low, high = -0.5, 3.0 + more
    ours = root_between(told, low, high, width=width, relative=relative)
    theirs = brentq(told, low, high, xtol=width, rtol=relative)
    assert ours == pytest.approx(theirs, abs=2 * width, rel=2 * relative)


def test_as_many_looks_as_scipy_by_counting():
    looks = []

    def told(x):
        looks.append(x)
        return math.cos(x) - x

    root_between(told, 0.0, 1.5, width=2e-12)
    ours, looks[:] = list(looks), []
    brentq(told, 0.0, 1.5, xtol=2e-12)
    assert len(ours) == len(looks)
    assert ours == pytest.approx(looks, rel=1e-12)


def test_the_root_of_two_by_hand():
    assert root_between(lambda x: x * x - 2, 0.0, 2.0, width=1e-13) == pytest.approx(math.sqrt(2))
    assert root_between(lambda x: x, 0.0, 2.0, width=1e-9) == 0.0
    assert root_between(lambda x: x - 2, 0.0, 2.0, width=1e-9) == 2.0


def test_what_has_no_root_is_refused():
    with pytest.raises(ValueError, match="no root"):
        root_between(lambda x: x + 1, 0.0, 2.0, width=1e-9)
    with pytest.raises(ArithmeticError, match="no number"):
        root_between(lambda x: math.nan, 0.0, 2.0, width=1e-9)
    with pytest.raises(ArithmeticError, match="100 steps"):
        root_between(lambda x: math.copysign(1.0, x - 1 / 3), 0.0, 3e9, width=0.0, relative=0.0)
