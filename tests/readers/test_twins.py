"""US twins: each has its key on the noun, and goes there and back."""

from __future__ import annotations

import pkgutil
import re
from dataclasses import fields, is_dataclass
from importlib import import_module

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall import facts
from farwall.readers.schemas import job_schema
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


METRIC = re.compile(
    r"(?<!_g)(?<!_mg)_(l|kg|m|m2|c|k|m2_min|m_min|l_min|kg_m3|m2_per_l|l_per_m2|kg_l|m_s)$"
)
"""Units that a site with a tape in feet and a tank in gallons has its own for; a laboratory's
(mg/L, g/L) it has not."""
ONLY_METRIC = {"Masking.room_film_m"}
"""A table by room."""


def nouns_of_a_job():
    """The nouns of a job's schema."""
    parts = job_schema()["$defs"]
    for module in pkgutil.iter_modules(facts.__path__):
        for noun in vars(import_module(f"{facts.__name__}.{module.name}")).values():
            if isinstance(noun, type) and is_dataclass(noun) and noun.__name__ in parts:
                keys = {one.name for one in fields(noun)}
                if keys <= set(parts[noun.__name__]["properties"]):
                    yield noun


def test_whatever_a_job_tells_in_metres_or_litres_may_be_told_in_feet_or_gallons():
    nouns = set(nouns_of_a_job())
    assert len(nouns) > 40
    told = {(noun, key) for noun in nouns for key in keys_of(noun) if METRIC.search(key)}
    there = {(noun, twin.key) for noun, twin in every}
    assert {f"{noun.__name__}.{key}" for noun, key in told - there} == ONLY_METRIC
