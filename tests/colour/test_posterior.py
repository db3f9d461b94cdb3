"""Points that are drawn: shares, likelihood, and what the normal alone would get wrong."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.belief import Prior, Seen, believe
from farwall.colour.dose import FORMS, Laid
from farwall.colour.fitting import fit
from farwall.colour.looks import looks
from farwall.colour.nouns import told
from farwall.colour.posterior import evenly, pools

SEEN = (
    Seen((), (56.0, 0.5, 1.5), "samples", "a"),
    Seen((Laid(0, 0.1),), (46.0, 5.0, 10.0), "samples", "a"),
    Seen((Laid(0, 0.1), Laid(0, 0.1)), (40.0, 7.0, 13.0), "samples", "a"),
)
GIVEN = told(SEEN, stains=1, rooms=(), prior=Prior())


@pytest.fixture(scope="module")
def made():
    return pools([fit(form, GIVEN) for form in FORMS])


def test_shares_are_a_whole_and_none_is_below_nothing(made):
    for one in made:
        assert one.shares.sum() == pytest.approx(1) or not len(one.shares)
        assert (one.shares >= 0).all()


def test_as_many_points_are_kept_as_were_asked_for(made):
    best = max(made, key=lambda one: one.evidence)
    assert len(best.kept(37).drawn) == len(best.kept(37).scale) == 37
    assert len(best.kept(0).drawn) == 0


def test_kept_points_meet_the_samples_in_the_mean_and_the_normal_alone_does_not(made):
    """The bent ridge of strength and lime: the look in the mean is what the samples say."""
    best = max(made, key=lambda one: one.evidence)
    places, form = GIVEN.places, best.about.task.form

    def off(theta):
        seen = looks(form, theta, GIVEN.laid, 1, places=places)[..., 0].mean(axis=0)
        return np.abs(seen - GIVEN.labs.reshape(-1, 3)[:, 0]).max()

    assert off(best.kept(512).drawn) < off(best.points)
    assert off(best.kept(512).drawn) < 0.6


def test_the_weights_of_the_forms_are_a_whole_and_rule_the_rows():
    belief = believe(SEEN, stains=1)
    assert sum(belief.weights) == pytest.approx(1)
    for one, weight in zip(belief.fits, belief.weights, strict=True):
        assert len(one.drawn) == round(512 * weight)


@given(st.integers(1, 400), st.integers(1, 30))
def test_even_numbers_lie_inside_the_cube(count, size):
    found = evenly(count, size)
    assert found.shape == (count, size)
    assert ((found > 0) & (found < 1)).all()


def test_even_numbers_fill_each_side_evenly():
    found = np.sort(evenly(1000, 12), axis=0)
    assert np.abs(found - np.linspace(0, 1, 1000)[:, None]).max() < 0.03
