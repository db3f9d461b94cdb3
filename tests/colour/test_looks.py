"""Looks under parameters: more stain, order of coats, units, and two colours over one another."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.dose import FORMS, Laid, schedules
from farwall.colour.looks import (
    HAIR,
    LEAST_MEETING,
    looks,
    looks_and_moves,
    meeting,
    parts_of,
)
from farwall.colour.prior import Prior

LOG = st.floats(-0.6, 0.6)
ONE = st.tuples(*[LOG] * 12)
FLOOR = np.array([0])


def theta(moves, stains=1):
    """A row of likely parameters, moved a little in each direction."""
    n = 3 * stains
    middle = np.concatenate((
        [np.log(10.0)] * n, [np.log(0.4)], np.log([0.6, 0.6, 0.7]), [0.0] * 4,
        [0.0] * (stains - 1), [0.0] * (3 * (stains > 1)),
    ))  # fmt: skip
    return (middle + np.resize(np.array(moves), len(middle)))[None]


def lightness(form, row, coats, stains=1):
    return float(looks(form, row, schedules([coats]), stains, places=FLOOR)[0, 0, 0])


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(moves=ONE, dose=st.floats(0.005, 0.3), more=st.floats(0.001, 0.3))
def test_more_stain_is_never_lighter(form, moves, dose, more):
    row = theta(moves)
    assert lightness(form, row, [Laid(0, dose + more)]) <= lightness(form, row, [Laid(0, dose)])
    assert lightness(form, row, [Laid(0, dose)]) <= lightness(form, row, [])


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(moves=ONE, one=st.floats(0.01, 0.2), other=st.floats(0.01, 0.2))
def test_coats_of_one_stain_may_change_places(form, moves, one, other):
    row = theta(moves)
    first = lightness(form, row, [Laid(0, one), Laid(0, other)])
    assert lightness(form, row, [Laid(0, other), Laid(0, one)]) == pytest.approx(first, abs=1e-9)


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(moves=ONE, dose=st.floats(0.01, 0.2), times=st.floats(0.2, 5))
def test_a_weaker_stain_laid_thicker_looks_the_same(form, moves, dose, times):
    """Litres may be any litres: strength down, lime and dose up by as much."""
    row = theta(moves)
    other = row.copy()
    other[0, :3] -= np.log(times)
    other[0, 3] += np.log(times)
    thick = lightness(form, other, [Laid(0, dose * times)])
    assert thick == pytest.approx(lightness(form, row, [Laid(0, dose)]), abs=1e-8)


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(moves=st.tuples(*[LOG] * 5), dose=st.floats(0.01, 0.2), more=st.floats(0.001, 0.2))
def test_more_of_a_second_colour_is_never_lighter(form, moves, dose, more):
    row = theta(moves, stains=2)
    weak, strong = (
        looks(form, row, schedules([[Laid(0, 0.1), Laid(1, one)]]), 2, places=FLOOR)
        for one in (dose, dose + more)
    )
    assert strong[0, 0, 0] <= weak[0, 0, 0] + 1e-9


def test_two_colours_meet_only_where_both_lie():
    strength = np.array([[[10.0, 5.0, 1.0], [2.0, 5.0, 9.0]]])
    alone = meeting(np.array([[[0.1, 0.0]]]), strength)
    assert alone == pytest.approx(0)
    alike = meeting(np.array([[[0.1, 0.1]]]), strength)
    assert alike[0, 0, 1] == pytest.approx(0.5)
    assert alike[0, 0, 0] == pytest.approx(2 * 1.0 * 0.2 / 1.2)


def test_the_least_meeting_keeps_the_sum_growing():
    """d(s1 + s2 + m·2·s1·s2/(s1 + s2))/ds1 = 1 + 2m·(s2/(s1 + s2))², above 0 for m above -1/2."""
    assert 1 + 2 * LEAST_MEETING > 0


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(moves=ONE, dose=st.floats(0.0, 0.2))
def test_moves_are_those_of_thirst_and_shade(form, moves, dose):
    row, prior = theta(moves), Prior()
    laid = schedules([[Laid(0, dose)], [Laid(0, 0.1)]])
    places = np.array([-1, 0])
    usual, thirst, shade = looks_and_moves(form, row, laid, 1, places=places, prior=prior)
    assert usual == pytest.approx(looks(form, row, laid, 1, places=places))
    thirsty = looks(form, row, laid, 1, places=places, thirst=HAIR)
    assert thirst * HAIR == pytest.approx((thirsty - usual)[..., 0] * prior.patch_thirst, abs=1e-9)
    shaded = row.copy()
    shaded[:, 4:7] += HAIR
    dark = looks(form, shaded, laid, 1, places=places)
    assert shade * HAIR == pytest.approx((dark - usual)[..., 0] * prior.patch_shade, abs=1e-9)


@given(st.integers(0, 3000), st.integers(0, 500))
def test_parts_are_all_rows_once(rows, patches):
    parts = parts_of(rows, patches)
    assert [n for one in parts for n in range(rows)[one]] == list(range(rows))
