"""Degrees: what a job may tell is what can be reckoned with, and untold air is no warmer."""

from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.air.conditions import SENSE, Conditions
from farwall.errors import Refused
from farwall.facts.defaults import settle
from farwall.facts.degrees import COLDEST_C, HOTTEST_AIR_C, HOTTEST_SLAB_C, air_like_slab
from farwall.facts.job import Survey
from farwall.facts.plain import plain
from farwall.readers.job_json import job_from

JOB = job(TWO_ROOMS)


@pytest.mark.parametrize(("key", "most"), [("slab_c", HOTTEST_SLAB_C), ("air_c", HOTTEST_AIR_C)])
def test_what_the_reader_lets_in_can_be_reckoned_with(key, most):
    facts = plain(JOB, omit_empty=True)
    for value in (COLDEST_C, most):
        told = job_from({**facts, "survey": {key: value}}, "The job").survey
        Conditions(**{{"slab_c": "surface_c"}.get(key, key): getattr(told, key)})
    for value in (COLDEST_C - 0.1, most + 0.1):
        with pytest.raises(Refused) as refused:
            job_from({**facts, "survey": {key: value}}, "The job")
        assert refused.value.mistakes[0].where == f"survey.{key}"


def test_both_ends_are_those_of_the_conditions():
    assert SENSE["surface_c"][:2] == (COLDEST_C, HOTTEST_SLAB_C)
    assert SENSE["air_c"][:2] == (COLDEST_C, HOTTEST_AIR_C)


def test_the_air_over_a_slab_in_the_sun_is_no_warmer_than_air_gets():
    assert air_like_slab(65.0) == HOTTEST_AIR_C
    assert air_like_slab(20.0) == 20.0
    survey = settle(replace(JOB, survey=Survey(slab_c=65.0))).survey
    assert (survey.slab_c, survey.air_c) == (65.0, HOTTEST_AIR_C)
