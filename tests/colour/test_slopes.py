"""Slopes put together of few rows are those of every parameter by itself."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.dose import FORMS, Laid
from farwall.colour.fitting import before
from farwall.colour.looks import HAIR, looks
from farwall.colour.nouns import Seen, told
from farwall.colour.prior import Prior
from farwall.colour.slopes import around

DOSE = st.floats(0.01, 0.2)


def seen_of(stains, doses):
    """A sample, the floor and two rooms, each with coats of every stain."""
    coats = tuple(Laid(n % stains, dose) for n, dose in enumerate(doses))
    places = ("samples", "samples", "floor", "hall", "kitchen", "hall")
    return told(
        [Seen(coats[: n % 4], (50.0 - n, 3.0, 8.0), place) for n, place in enumerate(places)],
        stains=stains, rooms=("never seen",), prior=Prior(),
    )  # fmt: skip


@pytest.mark.parametrize("form", FORMS, ids=str)
@pytest.mark.parametrize("stains", [1, 2, 3])
@given(doses=st.tuples(DOSE, DOSE, DOSE), seed=st.integers(0, 1000))
def test_each_parameter_moves_the_looks_as_it_does_by_itself(form, stains, doses, seed):
    given_ = seen_of(stains, doses)
    middle, _ = before(form, given_)
    theta = middle + np.random.default_rng(seed).normal(0, 0.1, len(middle))
    many = np.concatenate((theta[None], theta + HAIR * np.eye(len(theta))))
    shown = looks(form, many, given_.laid, stains, places=given_.places)
    slope = (shown[1:] - shown[0]).reshape(len(theta), -1).T / HAIR
    found = around(form, theta, given_)
    assert found.off == pytest.approx(given_.labs - shown[0].reshape(-1))
    assert found.slope == pytest.approx(slope, abs=1e-6)
    thirsty = looks(form, theta[None], given_.laid, stains, places=given_.places, thirst=HAIR)
    assert found.thirst == pytest.approx((thirsty[0] - shown[0]) / HAIR, abs=1e-6)
    bare = 3 * stains + 1
    shaded = theta + HAIR * np.isin(np.arange(len(theta)), range(bare, bare + 3))
    dark = looks(form, shaded[None], given_.laid, stains, places=given_.places)
    assert found.shade == pytest.approx((dark[0] - shown[0]) / HAIR, abs=1e-6)


def test_a_room_that_nobody_saw_moves_nothing():
    found = around(FORMS[0], before(FORMS[0], seen_of(1, (0.1, 0.1, 0.1)))[0],
                   seen_of(1, (0.1, 0.1, 0.1)))  # fmt: skip
    first_room = 3 + 8
    assert not found.slope[:, first_room].any()
    assert found.slope[:, first_room + 1].any()
