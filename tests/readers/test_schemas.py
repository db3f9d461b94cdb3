"""The published schemas, tried with a checker that is not ours."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator
from tests.strategies.jobs import jobs
from tests.strategies.plans import small_plan

from farwall.errors import Refused
from farwall.floor.geojson import floor_collection
from farwall.readers.job_json import job_from, job_to_dict
from farwall.readers.plan_json import plan_to_dict
from farwall.readers.schemas import job_schema, plan_schema, so_far_schema, van_schema
from farwall.readers.twins import TWINS

BROKEN = Path(__file__).parents[1] / "broken_jobs"
EXAMPLES = Path(__file__).parents[2] / "examples"
SCHEMAS = [job_schema(), plan_schema(), van_schema()]
JOB, PLAN = Draft202012Validator(job_schema()), Draft202012Validator(plan_schema())


@pytest.mark.parametrize("schema", SCHEMAS, ids=["job", "plan", "van"])
def test_it_is_a_schema_of_the_2020_12_draft_with_title_and_version_and_no_id(schema):
    Draft202012Validator.check_schema(schema)
    assert schema["$schema"].endswith("2020-12/schema")
    assert schema["title"].startswith("Farwall ")
    assert schema["version"] == 1
    assert "$id" not in schema


@pytest.mark.parametrize("schema", SCHEMAS, ids=["job", "plan", "van"])
def test_every_noun_and_every_key_says_what_it_means(schema):
    parts = {"": schema, **schema["$defs"]}
    silent = [name for name, part in parts.items() if not part.get("description")]
    silent += [
        f"{name}.{key}"
        for name, part in parts.items()
        for key, value in part.get("properties", {}).items()
        if not value.get("description")
    ]
    assert silent == []


def test_a_job_asks_for_version_floor_and_exits_only():
    assert job_schema()["required"] == ["version", "floor", "exits"]


def test_a_plan_promises_its_keys():
    promised = {"version", "inputs_hash", "starts_at", "inputs", "fields", "mixes", "clocks"}
    assert promised | {"cautions"} <= set(plan_schema()["properties"])


@given(jobs())
def test_every_sound_job_is_valid(job):
    assert not list(JOB.iter_errors(job_to_dict(job)))


def test_a_job_in_us_units_is_valid_and_both_spellings_at_once_are_not():
    job = json.loads(next(EXAMPLES.glob("*/job.json")).read_text())
    job["tools"] = {"tank_gal": 2, "band_ft": 4, "overlap_in": 8}
    job["survey"] = {"slab_f": 70}
    assert not list(JOB.iter_errors(job))
    job["tools"]["tank_l"] = 8
    assert list(JOB.iter_errors(job))


def test_every_twin_stands_in_the_schema():
    parts = {**job_schema()["$defs"], "SoFar": so_far_schema(), **van_schema()["$defs"]}
    for noun, twins in TWINS.items():
        for twin in twins:
            assert twin.other in parts[noun.__name__]["properties"]


def test_a_floor_may_be_a_geojson_collection():
    job = job_to_dict(job_from(json.loads(next(EXAMPLES.glob("*/job.json")).read_text()), "it"))
    sound = job_from(job, "it")
    job["floor"] = floor_collection(sound.floor)
    assert not list(JOB.iter_errors(job))


@pytest.mark.parametrize("path", sorted(EXAMPLES.glob("*/job.json")), ids=lambda p: p.parent.name)
def test_the_examples_are_valid(path):
    assert not list(JOB.iter_errors(json.loads(path.read_text())))


def test_a_plan_file_is_valid():
    assert not list(PLAN.iter_errors(plan_to_dict(small_plan())))


def test_a_plan_may_grow_and_a_job_may_not():
    assert not list(PLAN.iter_errors(plan_to_dict(small_plan()) | {"weather": "fine"}))
    job = json.loads(next(EXAMPLES.glob("*/job.json")).read_text())
    assert list(JOB.iter_errors(job | {"weather": "fine"}))


@pytest.mark.parametrize(
    "name",
    [
        "nothing-in-it",
        "made-by-a-later-farwall",
        "a-tank-like-a-swimming-pool",
        "a-number-in-quotes",
        "an-unknown-key",
        "litres-and-gallons-at-once",
        "no-way-out",
        "points-with-heights",
        "a-cut-in-words",
        "prices-in-words",
        "nine-mistakes-at-once",
    ],
)
def test_what_breaks_the_form_breaks_the_schema_too(name):
    (path,) = BROKEN.glob(f"*-{name}.json")
    assert list(JOB.iter_errors(json.loads(path.read_text())))


@given(jobs(), st.data())
def test_what_the_schema_refuses_the_reader_refuses_too(job, data):
    """Not the other way round: a schema cannot tell that a name names something."""
    raw = job_to_dict(job)
    section = data.draw(st.sampled_from(["tools", "crew", "wishes", "survey"]))
    key = data.draw(st.sampled_from(["tank_l", "tank_gal", "helper", "slab_f", "order", "units"]))
    value = st.none() | st.booleans() | st.floats(-1e3, 1e3) | st.text(max_size=3)
    raw.setdefault(section, {})[key] = data.draw(value)
    if list(JOB.iter_errors(raw)):
        with pytest.raises(Refused):
            job_from(raw, "a job")


def test_the_example_van_is_valid_and_a_key_too_many_is_not():
    van = json.loads((EXAMPLES / "van" / "van.json").read_text())
    valid = Draft202012Validator(van_schema())
    assert not list(valid.iter_errors(van))
    van["stock"][0]["colour"] = "brown"
    assert list(valid.iter_errors(van))
