"""Read between points and smoothed as the large library does it."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.ndimage import gaussian_filter, gaussian_filter1d, map_coordinates

from farwall.colour.marks.sampled import between, slope, smoothed


@given(st.integers(1, 9), st.integers(1, 9), st.integers(0, 1000))
def test_between_points_as_the_library_reads_them(high, wide, seed):
    throws = np.random.default_rng(seed)
    of = throws.normal(0, 1, (high, wide)).astype(np.float32)
    at = throws.uniform(-3, 12, (2, 4, 5))
    theirs = map_coordinates(of.astype(np.float64), at, order=1, mode="nearest")
    assert between(of, at[0], at[1]) == pytest.approx(theirs, abs=1e-6)


@given(st.integers(1, 40), st.floats(0.3, 6), st.integers(0, 1000))
def test_smoothed_as_the_library_does_it(rows, sigma, seed):
    line = np.random.default_rng(seed).normal(0, 1, (rows, 2))
    theirs = gaussian_filter1d(line, sigma, axis=0, mode="nearest")
    assert smoothed(line, sigma) == pytest.approx(theirs, abs=1e-9)


@given(st.integers(0, 2), st.floats(0.3, 6), st.integers(0, 1000))
def test_smoothed_along_any_axis(axis, sigma, seed):
    of = np.random.default_rng(seed).normal(0, 1, (3, 9, 14))
    theirs = gaussian_filter1d(of, sigma, axis=axis, mode="nearest")
    assert smoothed(of, sigma, axis) == pytest.approx(theirs, abs=1e-9)


@given(st.integers(1, 30), st.integers(1, 30), st.floats(0.5, 5), st.floats(0.5, 3))
def test_the_slope_as_the_library_takes_it(high, wide, along, across):
    of = np.random.default_rng(7).normal(0, 1, (high, wide))
    for reach in (3.0, 4.0):
        theirs = gaussian_filter(of, (along, across), order=(0, 1), mode="nearest", truncate=reach)
        assert slope(of, along, across, reach=reach) == pytest.approx(theirs, abs=1e-9)
        single = slope(of.astype(np.float32), along, across, reach=reach)
        assert single.dtype == np.float32
        assert single == pytest.approx(theirs, abs=1e-5)


def test_a_picture_that_rises_by_two_a_column_has_a_slope_of_two():
    of = np.tile(2.0 * np.arange(40.0), (20, 1))
    assert slope(of, 2.0, 1.0)[10, 10:30] == pytest.approx(2.0, abs=1e-3)
