"""Dose to colour: laws that no form may break."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.dose import (
    FORMS,
    Laid,
    body_of_depth,
    body_of_wet,
    counted,
    depth_of_body,
    schedules,
    wet_of_body,
)

DOSES = st.lists(st.floats(0.001, 1), min_size=1, max_size=5)
one_row = np.ones((1, 1))


def bound(form, coats, stains=1, lime=0.3):
    found = counted(form, schedules([coats]), stains, factor=one_row, lime=np.full((1, 1), lime))
    return found[0, 0]


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(doses=DOSES)
def test_each_coat_adds_and_never_more_than_was_laid_or_than_there_is_lime(form, doses):
    coats = [Laid(0, one) for one in doses]
    steps = [bound(form, coats[:n])[0] for n in range(len(coats) + 1)]
    assert all(later >= before for before, later in pairwise(steps))
    assert steps[-1] <= min(sum(doses), 0.3) + 1e-12


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(doses=DOSES)
def test_a_coat_in_two_halves_is_the_coat(form, doses):
    whole = bound(form, [Laid(0, sum(doses))])
    assert bound(form, [Laid(0, one) for one in doses]) == pytest.approx(whole, abs=1e-12)


@pytest.mark.parametrize("form", FORMS, ids=str)
def test_a_second_colour_finds_the_lime_that_the_first_left(form):
    alone = bound(form, [Laid(1, 0.1)], stains=2)
    after = bound(form, [Laid(0, 0.4), Laid(1, 0.1)], stains=2)
    assert after[1] < alone[1]
    assert after[0] == bound(form, [Laid(0, 0.4)], stains=2)[0]


def test_patches_with_fewer_coats_stand_beside_those_with_more():
    form = FORMS[0]
    both = counted(
        form, schedules([[], [Laid(0, 0.1), Laid(0, 0.1)]]), 1, factor=np.ones((1, 2)),
        lime=np.full((1, 1), 0.3),
    )  # fmt: skip
    assert both[0, 0, 0] == 0
    assert both[0, 1, 0] == pytest.approx(bound(form, [Laid(0, 0.2)])[0])


@pytest.mark.parametrize("form", FORMS, ids=str)
@given(st.floats(0.02, 0.95))
def test_depth_there_and_back(form, body):
    assert body_of_depth(depth_of_body(np.array([body]), form), form) == pytest.approx(body)


@given(st.tuples(st.floats(10, 90), st.floats(-10, 10), st.floats(-10, 15)))
def test_the_wet_face_comes_off_and_on_again(lab):
    assert wet_of_body(body_of_wet(np.array(lab))) == pytest.approx(np.array(lab), abs=1e-6)
