"""Quantities in words: the user's unit first, the other beside it."""

from __future__ import annotations

import pytest
from tests.midday import day_of
from tests.papers.invented_plan import small_house

from farwall.papers.words import (
    area,
    length,
    listed,
    minutes,
    names_in,
    own_first,
    room_names,
    unbroken,
    volume,
)
from farwall.phrasebook import in_spanish


def test_volumes_by_hand():
    """3.785411784 L is one US gallon."""
    assert volume(3.785411784, "us") == "1.00 gal (3.8 L)"
    assert volume(3.785411784, "metric") == "3.8 L (1.00 gal)"
    assert volume(0.5, "us") == "0.13 gal (0.50 L)"
    assert volume(75.70823568, "us", both=False) == "20.0 gal"


def test_lengths_by_hand():
    """1.016 m is 40 in is 3 ft 4 in."""
    assert length(1.016, "us") == "3' 4\" (1.02 m)"
    assert length(1.016, "metric") == "1.02 m (3' 4\")"
    assert length(1.016, "metric", both=False) == "1.02 m"


def test_a_length_below_a_foot_has_no_feet():
    """0.2032 m is 8 in, 0.0127 m half of one."""
    assert length(0.2032, "us", both=False) == '8"'
    assert length(0.0127, "us", both=False) == '½"'
    assert length(-0.2032, "us", both=False) == '-8"'


def test_areas_by_hand():
    """100 m2 is 100 / 0.09290304 = 1076.4 ft2."""
    assert area(100.0, "us") == "1,076 ft²"
    assert area(100.0, "metric") == "100.0 m²"


@pytest.mark.parametrize(
    ("value", "told"),
    [(6.2, "6.2 min"), (45, "45 min"), (125, "2 h 5 min"), (180, "3 h"), (728, "12 h")],
)
def test_minutes(value: float, told: str):
    assert minutes(value) == told


def test_lists():
    assert listed([]) == ""
    assert listed(["a"]) == "a"
    assert listed(["a", "b", "c"]) == "a, b and c"


def test_a_room_that_the_plan_does_not_know_stands_for_itself():
    assert room_names(small_house(), ["r1", "r99"]) == ["Bed 1", "r99"]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("mix 0.40 gal (1.5 L) by 2:15 pm", "mix 0.40_gal (1.5_L) by 2:15_pm"),
        ("de 7:31 a. m. a 14 m²; 70 °F", "de 7:31_a._m. a 14_m²; 70_°F"),
        ("200 ft²/gal, 12 s, 3½ h", "200_ft²/gal, 12_s, 3½_h"),
        (
            "5 hours, 3 Main rooms, 2 Living rooms, 9 mats",
            "5 hours, 3 Main rooms, 2 Living rooms, 9 mats",
        ),
    ],
)
def test_a_number_is_tied_to_its_unit_and_to_nothing_else(text, told):
    assert unbroken(text).replace("\u00a0", "_") == (
        text.replace("2 L", "2_L") if told is None else told
    )
    assert unbroken(unbroken(text)) == unbroken(text)


@pytest.mark.parametrize(
    ("us", "metric"),
    [
        ("rooms between 60 and 90 °F (16 and 32 °C), day and night",
         "rooms between 16 and 32 °C (60 and 90 °F), day and night"),
        ("well below 104 °F (40 °C).", "well below 40 °C (104 °F)."),
        ("cada 500 ft² (46 m²), justo", "cada 46 m² (500 ft²), justo"),
        ("un cuarto de galón (1 L) de acabado", "1 L (un cuarto de galón) de acabado"),
        ("a menos de 150 ft (45 m), solo", "a menos de 45 m (150 ft), solo"),
        ("75 ± 10 °F (24 ± 6 °C)", "24 ± 6 °C (75 ± 10 °F)"),
        ("a sample, 2 × 2 ft (0.6 × 0.6 m), a", "a sample, 0.6 × 0.6 m (2 × 2 ft), a"),
        ("from 50 to 85 °F (10 to 29 °C)", "from 10 to 29 °C (50 to 85 °F)"),
        ("it gives 0.18 gal/min (0.69 L/min) here", "it gives 0.69 L/min (0.18 gal/min) here"),
        ("1:4 at 300 ft²/gal (7.4 m²/L), then", "1:4 at 7.4 m²/L (300 ft²/gal), then"),
        ("1:2 a 302 ft²/gal (7.4 m²/L), así", "1:2 a 7.4 m²/L (302 ft²/gal), así"),
        ("mano 2 a 302 ft²/gal (7.4 m²/L)", "mano 2 a 7.4 m²/L (302 ft²/gal)"),
        ("de 60 a 90 °F (16 a 32 °C)", "de 16 a 32 °C (60 a 90 °F)"),
        ("MIX 2.7 gal (10.4 L) now", "MIX 10.4 L (2.7 gal) now"),
        ("the base, 1/8 in (3 mm) above the slab", "the base, 3 mm (1/8 in) above the slab"),
        ("a más de ⅛ in (3 mm) si no", "a más de 3 mm (⅛ in) si no"),
        ("at 4 1/2 in (11 cm) of board", "at 11 cm (4 1/2 in) of board"),
        ("3 rooms (2 m apart), pH 7 (two)", "3 rooms (2 m apart), pH 7 (two)"),
    ],
)  # fmt: skip
def test_a_measure_told_both_ways_begins_with_the_readers_own(us: str, metric: str):
    assert own_first(us, "metric") == metric
    assert own_first(us, "us") == us


def test_a_saw_cut_is_a_name_that_no_language_changes():
    """`cut-1` was taken for English, and the whole warning stayed so."""
    text = (
        "Nothing can stop at the saw cut cut-1: it does not run from wall to wall, or it ends in "
    )
    found = in_spanish(f"{text}a doorway.", names_in(day_of("quince-street")))
    assert found is not None
    assert "cut-1" in found
