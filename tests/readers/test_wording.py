"""Faults in plain words: in the unit in which the user wrote the figure."""

from __future__ import annotations

import pytest

from farwall.facts.job import Job, Survey
from farwall.readers.shape import bare, keys_of
from farwall.readers.twins import TWINS
from farwall.readers.wording import beyond, shown, unit_of


@pytest.mark.parametrize(
    ("key", "unit"),
    [
        ("tank_l", "L"),
        ("tank_gal", "gal"),
        ("m2_per_l", "m²/L"),
        ("ft2_per_gal", "ft²/gal"),
        ("spray_m2_min", "m²/min"),
        ("walk_m_min", "m/min"),
        ("air_speed_m_s", "m/s"),
        ("refill_min", "minutes"),
        ("slab_c", "°C"),
        ("drop_s", "s"),
        ("rh_percent", "%"),
        ("sprayers", ""),
        ("stain", ""),
    ],
)
def test_the_unit_of_a_key_is_read_from_its_name(key, unit):
    assert unit_of(key) == unit


def test_every_figure_of_a_job_carries_its_unit_in_its_name():
    waiting, seen, silent = [Job], set(), []
    while waiting:
        noun = waiting.pop()
        if noun in seen:
            continue
        seen.add(noun)
        for key, hint in keys_of(noun).items():
            inner = bare(hint)
            if inner is float and not unit_of(key):
                silent.append(f"{noun.__name__}.{key}")
            waiting += [
                part
                for part in (inner, *getattr(inner, "__args__", ()))
                if hasattr(bare(part), "__dataclass_fields__")
            ]
    assert silent == []
    assert Survey in seen


def test_a_bound_is_told_in_the_unit_that_was_written():
    (twin,) = [one for one in TWINS[Survey] if one.other == "slab_f"]
    place = ("survey", "slab_c")
    said = beyond(place, 148.9, "at most", 70, {place: (("survey", "slab_f"), twin)})
    assert said.where == "survey.slab_f"
    assert said.what == "300.02 °F is out of range: it must be at most 158 °F."


def test_a_long_value_is_cut_short():
    assert len(shown("x" * 1000)) < 50
    assert shown({"a": 1}) == '{"a": 1}'
