"""Films: their laws as properties, and the way back from two patches."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.films import film, from_patches, k_over_s, layered, over

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


@given(K, S, st.floats(0.01, 2), st.floats(0.01, 2))
def test_two_films_of_one_stuff_are_a_thicker_one(k, s, one, other):
    both = layered(film(k, s, one), film(k, s, other))
    whole = film(k, s, one + other)
    assert both.r == pytest.approx(float(whole.r), abs=1e-10)
    assert both.t == pytest.approx(float(whole.t), abs=1e-10)


@given(st.floats(0.01, 20), st.floats(0.01, 20), THICKNESS, st.floats(0, 1), st.floats(0, 1))
def test_a_lighter_backing_never_looks_darker(k, s, thickness, one, other):
    low, high = sorted((one, other))
    found = film(k, s, thickness)
    assert over(found, low) <= over(found, high) + 1e-12


@given(st.floats(0.01, 20), st.floats(0.01, 20))
def test_a_thick_film_hides_its_backing(k, s):
    found = film(k, s, 1e4)
    assert k_over_s(found.r) == pytest.approx(k / s, rel=1e-6)
    assert over(found, 0.0) == pytest.approx(float(over(found, 1.0)), abs=1e-12)


@given(st.floats(0.05, 3), st.floats(0.05, 3))
def test_two_patches_give_the_film_back(k, s):
    found = film(k, s, 1.0)
    back_k, back_s = from_patches(over(found, 0.999999), over(found, 0.0))
    white_k, white_s = from_patches(over(found, 1.0 - 1e-12), over(found, 0.0))
    assert white_k == pytest.approx(k, rel=1e-4)
    assert white_s == pytest.approx(s, rel=1e-4)
    assert back_k == pytest.approx(k, rel=1e-2)
    assert back_s == pytest.approx(s, rel=1e-2)


def test_channels_go_through_side_by_side():
    together = film([0.22, 1.47, 0.57], [0.05, 0.003, 0.03], 1.0)
    alone = [film(k, s, 1.0) for k, s in [(0.22, 0.05), (1.47, 0.003), (0.57, 0.03)]]
    assert np.allclose(together.r, [float(one.r) for one in alone])
    assert np.allclose(together.t, [float(one.t) for one in alone])
