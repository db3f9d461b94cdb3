"""Nouns as plain JSON values."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from tests.strategies.jobs import jobs

from farwall.facts.job import Crew, Survey, Wishes
from farwall.facts.plain import plain
from farwall.floor.geometry import PolygonGeometry


def test_keys_come_in_the_nouns_own_order_and_geojson_says_its_type_first():
    assert list(plain(Crew())) == ["sprayers", "helper", "second_adult"]
    assert list(plain(PolygonGeometry(((),)))) == ["type", "coordinates"]


def test_what_is_not_said_is_kept_as_null_or_left_out_on_demand():
    assert plain(Survey())["slab_c"] is None
    assert plain(Survey(slab_c=0.0), omit_empty=True) == {"slab_c": 0.0}
    assert plain(Crew(helper=False), omit_empty=True)["helper"] is False
    assert plain(Wishes(order=()), omit_empty=True) == {
        "units": "us",
        "bands": "best",
        "language": "en",
    }


def test_what_is_no_fact_is_refused():
    with pytest.raises(TypeError, match="object is not a plain fact"):
        plain({"a": object()})


@given(jobs())
def test_every_job_is_json(job):
    assert json.loads(json.dumps(plain(job), allow_nan=False)) == plain(job)
