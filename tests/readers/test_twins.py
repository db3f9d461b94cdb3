"""US twins: each has its key on the noun, and goes there and back."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.shape import Entry, keys_of
from farwall.readers.twins import TWINS, convert
from farwall.readers.wording import unit_of
from farwall.units import L_PER_US_GAL

every = [(noun, twin) for noun, twins in TWINS.items() for twin in twins]
ids = [f"{noun.__name__}.{twin.other}" for noun, twin in every]


@pytest.mark.parametrize(("noun", "twin"), every, ids=ids)
def test_a_twin_stands_for_a_key_and_takes_nobody_elses_name(noun, twin):
    assert twin.key in keys_of(noun)
    assert twin.other not in keys_of(noun)
    assert unit_of(twin.other)
    assert unit_of(twin.other) != unit_of(twin.key)


@given(st.sampled_from(every), st.floats(0.01, 1000))
def test_there_and_back_is_where_it_was(each, value):
    _, twin = each
    assert twin.from_key(twin.to_key(value)) == pytest.approx(value, rel=1e-9, abs=1e-9)


@pytest.mark.parametrize(
    ("other", "value", "expected"),
    [
        # Hand-worked: one foot is 12 in; 1 lb/gal is 0.45359237 kg in 3.785411784 L; 60 mph.
        ("width_in", 36.0, 0.9144),
        ("width_ft", 3.0, 0.9144),
        ("density_lb_per_gal", 10.85, 10.85 * 0.45359237 / L_PER_US_GAL),
        ("air_speed_mph", 60.0, 26.8224),
        ("added_acid_ml_per_l", 62.5, 8.0),
        ("slab_f", 212.0, 100.0),
        ("tip_gal_min", 0.2, 0.7570823568),
    ],
)
def test_hand_worked_conversions(other, value, expected):
    (twin, *_) = [twin for _, twin in every if twin.other == other]
    assert twin.to_key(value) == pytest.approx(expected, rel=1e-9)


def test_a_conversion_leaves_no_litter_of_digits():
    (noun, twin) = next(each for each in every if each[1].other == "tank_gal")
    entry = Entry(("tools",), noun, {"tank_gal": 3})
    mistakes, written = convert(entry)
    assert entry.values == {"tank_l": 11.356235352}
    assert mistakes == []
    assert written[("tools", "tank_l")][0] == ("tools", "tank_gal")
    assert twin.key == "tank_l"
