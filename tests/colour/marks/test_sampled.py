"""Read between points and smoothed as the large library does it."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.ndimage import gaussian_filter1d, map_coordinates

from farwall.colour.marks.sampled import between, smoothed


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
