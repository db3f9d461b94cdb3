"""Figures of a lesson as they are shown: units, digits, how far it moved."""

from dataclasses import replace

import pytest

from farwall.facts.lessons import Lesson
from farwall.learn.figures import (
    figure,
    figures_shown,
    moved,
    moved_by,
    practice_shown,
    unit_shown,
)
from farwall.phrasebook import speaking
from farwall.web.pages.lesson_words import unit_told

RATE = Lesson(
    "spray rate", "spray rate", "m2/min", low=2.0, likely=2.4, high=3.0, own_low=2.3, own_high=2.5,
    spread=0.1, practice=2.0, jobs=3, weight=3, rank="learned", source="learned from 3 jobs",
)  # fmt: skip


def test_by_hand_square_metres_a_minute_are_square_feet_a_minute():
    """2.4 m² are 2.4 x 10.7639 = 25.83 ft²."""
    assert unit_shown(RATE) == "ft²/min"
    assert figures_shown(RATE)[1] == "25.8"
    assert figures_shown(RATE, "metric") == ["2", "2.4", "3", "2.3", "2.5"]
    assert unit_shown(RATE, "metric") == "m²/min"
    scatter = replace(RATE, unit="spread of ln")
    assert {unit_shown(scatter, one) for one in ("us", "metric")} == {"of itself up or down"}


def test_by_hand_a_coverage_of_10_m2_a_litre_is_407_ft2_a_gallon():
    """10 m²/L x 10.7639 ft²/m² x 3.785412 L/gal = 407.46."""
    one = replace(RATE, unit="m2/L", practice=10.0)
    assert practice_shown(one) == "407"
    assert practice_shown(one, "metric") == "10"


@pytest.mark.parametrize(
    ("unit", "amount", "told"),
    [("m2/min", 3.21, ("+3.2", "percent")), ("% of jobs", -3.21, ("-3.2", "points")),
     ("spread", 3.21, ("+3.2", "variance")), ("steps darker", 0.123, ("+0.12", "steps"))],
)  # fmt: skip
def test_what_a_job_moved_it_by_is_told_in_its_own_measure(unit, amount, told):
    assert moved_by(replace(RATE, unit=unit), amount) == told


def test_how_far_it_lies_from_practice():
    assert moved(RATE) == ("+20", "percent")
    assert moved(replace(RATE, unit="steps darker")) == ("+0.40", "steps")


def test_three_digits_count():
    assert [figure(one) for one in (1234.5, 99.94, 0.01234)] == ["1234", "99.9", "0.0123"]


def test_hours_are_told_of_a_floor_in_the_units_of_the_firm():
    """1,500 ft² of 0.09290304 m² are 139.4 m²."""
    hours = replace(RATE, unit="h on 1,500 ft²")
    assert unit_shown(hours, "us") == "h on 1,500 ft²"
    assert unit_shown(hours, "metric") == f"h on {1500 * 0.09290304:.0f} m²"
    for language, told in (("en", "h on 139 m²"), ("es", "h en 139 m²")):
        with speaking(language):
            assert unit_told(hours, "metric") == told
