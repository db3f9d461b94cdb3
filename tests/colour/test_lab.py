"""Lab, XYZ and sRGB hold together, and with the library."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.channels import channels_of_lab, lab_of_channels
from farwall.colour.lab import (
    lab_of_srgb,
    lab_of_xyz,
    linear_of_srgb,
    srgb_of_lab,
    srgb_of_linear,
    xyz_of_lab,
    xyz_of_xyy,
)
from farwall.colour.library import science

CODED = st.tuples(*[st.floats(0, 1)] * 3)


@given(CODED)
def test_a_colour_of_the_screen_comes_back(coded):
    assert srgb_of_lab(lab_of_srgb(coded)) == pytest.approx(np.array(coded), abs=2e-4)
    assert srgb_of_linear(linear_of_srgb(coded)) == pytest.approx(np.array(coded), abs=1e-6)


@given(st.tuples(st.floats(0, 100), st.floats(-80, 80), st.floats(-80, 80)))
def test_lab_comes_back_from_xyz_and_agrees_with_the_channels(lab):
    assert lab_of_xyz(xyz_of_lab(lab)) == pytest.approx(np.array(lab), abs=1e-9)
    assert lab_of_channels(channels_of_lab(lab)) == pytest.approx(np.array(lab), abs=1e-6)


def test_the_library_says_the_same():
    colour = science()
    coded = np.random.default_rng(1).uniform(0, 1, (200, 3))
    d50 = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D50"]
    xyz = colour.sRGB_to_XYZ(coded, illuminant=d50, chromatic_adaptation_transform="Bradford")
    assert lab_of_srgb(coded) == pytest.approx(colour.XYZ_to_Lab(xyz, d50), abs=0.03)


def test_white_is_white_and_a_chromaticity_is_opened():
    assert lab_of_srgb((1.0, 1.0, 1.0)) == pytest.approx([100, 0, 0], abs=0.01)
    assert xyz_of_xyy(0.3, 0.4, 0.5) == pytest.approx((0.375, 0.5, 0.375))
