"""Swatches: held against the library's own conversion, and words that follow the lightness."""

import warnings

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.library import science
from farwall.colour.swatch import hex_of_lab, in_words


@given(st.tuples(*[st.integers(0, 255)] * 3))
def test_a_colour_of_the_screen_comes_back_as_it_was(rgb):
    """Their XYZ is of D65, brought to D50 by Bradford; ends of rounding are one step of 255."""
    colour = science()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        xyz = colour.sRGB_to_XYZ([one / 255 for one in rgb], chromatic_adaptation_transform=None)
        d65 = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D65"]
        d50 = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D50"]
        whites = [colour.xyY_to_XYZ([*one, 1.0]) for one in (d65, d50)]
        there = colour.adaptation.chromatic_adaptation_VonKries(xyz, *whites, transform="Bradford")
        lab = colour.XYZ_to_Lab(there, d50)
    found = hex_of_lab(tuple(float(one) for one in lab))
    back = [int(found[n : n + 2], 16) for n in (1, 3, 5)]
    assert max(abs(one - other) for one, other in zip(back, rgb, strict=True)) <= 1


def test_beyond_the_screen_is_cut_off():
    assert hex_of_lab((100.0, 0.0, 0.0)) == "#ffffff"
    assert hex_of_lab((0.0, 0.0, 0.0)) == "#000000"
    assert hex_of_lab((50.0, 120.0, -120.0)).startswith("#")


@pytest.mark.parametrize(
    ("lab", "words"),
    [
        ((41.0, 9.0, 20.0), ("dark", "brown")),
        ((70.0, 1.0, 4.0), ("light", "grey")),
        ((30.0, -12.0, -4.0), ("dark", "blue-green")),
        ((20.0, 14.0, 6.0), ("very dark", "red")),
        ((55.0, 4.0, 30.0), ("medium", "ochre")),
    ],
)
def test_words_of_colours_by_hand(lab, words):
    assert in_words(lab) == words
