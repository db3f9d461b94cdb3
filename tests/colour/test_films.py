"""Films: their laws as properties, and the way back from two patches."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.films import film, over

K = st.floats(0, 20)
S = st.floats(0, 20)
THICKNESS = st.floats(0, 5)


@given(K, S, THICKNESS)
def test_no_film_makes_light(k, s, thickness):
    found = film(k, s, thickness)
    assert found.r >= 0
    assert found.t >= 0
    assert found.r + found.t <= 1 + 1e-12


@given(S, THICKNESS)
def test_what_absorbs_nothing_loses_nothing(s, thickness):
    found = film(0.0, s, thickness)
    assert found.r + found.t == pytest.approx(1, abs=1e-12)
    assert found.r == pytest.approx(s * thickness / (1 + s * thickness), abs=1e-9)


@given(K, THICKNESS)
def test_what_scatters_nothing_is_beer_and_lambert(k, thickness):
    found = film(k, 0.0, thickness)
    assert found.r == 0
    assert found.t == pytest.approx(math.exp(-k * thickness), rel=1e-9, abs=1e-300)


@given(st.floats(0.01, 20), st.floats(0.01, 20), THICKNESS, st.floats(0, 1), st.floats(0, 1))
def test_a_lighter_backing_never_looks_darker(k, s, thickness, one, other):
    low, high = sorted((one, other))
    found = film(k, s, thickness)
    assert over(found, low) <= over(found, high) + 1e-12


@given(st.floats(0.01, 20), st.floats(0.01, 20))
def test_a_thick_film_hides_its_backing(k, s):
    found = film(k, s, 1e4)
    r = float(found.r)
    assert (1 - r) ** 2 / (2 * r) == pytest.approx(k / s, rel=1e-6), "Kubelka and Munk 1931"
    assert over(found, 0.0) == pytest.approx(float(over(found, 1.0)), abs=1e-12)


def test_channels_go_through_side_by_side():
    together = film([0.22, 1.47, 0.57], [0.05, 0.003, 0.03], 1.0)
    alone = [film(k, s, 1.0) for k, s in [(0.22, 0.05), (1.47, 0.003), (0.57, 0.03)]]
    assert np.allclose(together.r, [float(one.r) for one in alone])
    assert np.allclose(together.t, [float(one.t) for one in alone])
