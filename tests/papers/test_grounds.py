"""What a plan rests on, in words."""

from __future__ import annotations

import pytest

from farwall.facts.plan import Ground
from farwall.papers.grounds import ground_words, weightiest


@pytest.mark.parametrize(
    ("name", "value", "unit", "us", "metric"),
    [
        ("tools.spray_m2_min", "2.787", "m2/min", "30 ft²/min", "2.8 m²/min"),
        ("tools.tank_l", "7.57", "L", "2.00 gal", "7.6 L"),
        ("coats.first.m2_per_l", "4.9085", "m2/L", "200 ft²/gal", "4.9 m²/L"),
        ("survey.slab_c", "20", "C", "68 °F", "20 °C"),
        ("tools.band_m", "1.016", "m", "3' 4\"", "1.02 m"),
        ("survey.finish", "trowel", "", "trowel", "trowel"),
        ("survey.rh_percent", "45", "%", "45 %", "45 %"),
    ],
)
def test_values_in_the_readers_units_by_hand(
    name: str, value: str, unit: str, us: str, metric: str
):
    """30 ft2 is 2.787 m2; 2 gal is 7.57 L; 4.9085 m2/L is 200 ft2/gal; 20 C is 68 F."""
    ground = Ground(name, value, unit, "guess", "house-guess")
    assert ground_words(ground, "us").value == us
    assert ground_words(ground, "metric").value == metric


def test_names_are_plain_words():
    ground = Ground("coats.second.m2_per_l", "7.4", "m2/L", "guess", "")
    assert ground_words(ground, "us", coats=["first", "second"]).name == "coverage, coat 2"
    assert ground_words(Ground("what.ever_it", "1", "", "guess", ""), "us").name == "what, ever it"


def test_what_decides_the_day_comes_first():
    names = ["survey.finish", "tools.tank_l", "tools.spray_m2_min", "coats.a.m2_per_l", "starts_at"]
    grounds = [Ground(name, "1", "", "guess", "") for name in names]
    told = [words.name for words in weightiest(grounds, units="us", most=3, coats=["a"])]
    assert told == ["coverage, coat 1", "spray rate", "tank"]
