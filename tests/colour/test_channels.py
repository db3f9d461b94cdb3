"""Lab and channels: there and back, and against the library of colour."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.channels import (
    channels_of_lab,
    lab_of_channels,
    lightness_of_channels,
)
from farwall.colour.library import science

LAB = st.tuples(st.floats(1, 99), st.floats(-40, 40), st.floats(-40, 60))


@given(LAB)
def test_there_and_back(lab):
    assert lab_of_channels(channels_of_lab(lab)) == pytest.approx(np.array(lab), abs=1e-9)


@given(st.lists(LAB, min_size=1, max_size=5))
def test_lightness_alone_is_the_lightness_of_the_whole(labs):
    channels = channels_of_lab(labs)
    assert lightness_of_channels(channels) == pytest.approx(lab_of_channels(channels)[..., 0])


def test_below_the_knee_the_straight_line_and_beside_it_the_root():
    labs = np.array([[2.0, 0.0, 0.0], [50.0, 0.0, 0.0]])
    assert lab_of_channels(channels_of_lab(labs)) == pytest.approx(labs, abs=1e-9)


def test_white_is_one_in_each_channel():
    assert channels_of_lab([100.0, 0.0, 0.0]) == pytest.approx(np.ones(3), abs=1e-12)


@pytest.mark.parametrize("lab", [(50.0, 10.0, 20.0), (3.0, 1.0, -2.0), (80.0, -20.0, 5.0)])
def test_as_the_library_has_it(lab):
    colour = science()
    white = np.array([0.96422, 1.0, 0.82521])
    place = white[:2] / white.sum()
    xyz = colour.Lab_to_XYZ(lab, place)
    bradford = colour.CHROMATIC_ADAPTATION_TRANSFORMS["Bradford"]
    theirs = bradford @ xyz / (bradford @ colour.xy_to_XYZ(place))
    assert channels_of_lab(lab) == pytest.approx(theirs, abs=1e-6)
