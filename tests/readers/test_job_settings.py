"""Settings on the command line: dotted keys put into a job before it is judged."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.jobs import jobs, row_of_rooms

from farwall.errors import Refused
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.readers.job_json import job_from, job_to_dict
from farwall.readers.job_settings import with_settings


def raw():
    return {
        "version": 1,
        "floor": plain(row_of_rooms([3.0, 3.0]), omit_empty=True),
        "exits": [{"id": "out", "opening": "door-0"}],
        "coats": [
            {"id": "first", "stain": "sand", "cut": "1:1"},
            {"id": "second", "stain": "bark", "cut": "1:2"},
        ],
        "tools": {"tank_l": 9.0},
    }


def job_with(*settings):
    return job_from(with_settings(raw(), settings), "the settings")


def refusal_of(*settings):
    with pytest.raises(Refused) as refusal:
        job_with(*settings)
    return [str(one) for one in refusal.value.mistakes]


def test_figures_switches_and_texts_go_where_their_key_leads():
    job = job_with(
        "crew.helper=yes",
        "crew.sprayers=2",
        "tools.band_m=1",
        "name=The yellow house",
        "survey.rooms.room-0.drop_s=9.5",
        "wishes.order=room-1,room-0",
    )
    assert (job.crew.helper, job.crew.sprayers, job.tools.band_m) == (True, 2, 1.0)
    assert job.name == "The yellow house"
    assert job.survey.rooms["room-0"].drop_s == 9.5
    assert job.wishes.order == ("room-1", "room-0")


def test_a_us_twin_takes_the_place_of_the_metric_figure():
    assert job_with("tools.tank_gal=2").tools.tank_l == pytest.approx(7.570823568)


def test_a_list_counts_from_nought_as_mistakes_do_and_goes_by_id_too():
    assert job_with("coats.1.cut=1:3").coats[1].cut == "1:3"
    assert job_with("coats.first.cut=2:1").coats[0].cut == "2:1"


def test_the_entry_after_the_last_is_a_new_one():
    job = job_with("samples.0.id=s1", "samples.0.coat=first", "samples.0.ft2_per_gal=180")
    assert job.samples[0].m2_per_l == pytest.approx(4.4177, abs=1e-4)


def test_none_takes_a_fact_away():
    assert job_with("tools.tank_l=none").tools.tank_l is None


def test_all_unusable_settings_are_told_at_once_with_the_nearest_key():
    said = refusal_of("tols.tank_l=3", "tools.tank=3", "coats.9.cut=1:1", "name.first=x", "helper")
    assert [one.split(":")[0] for one in said] == [
        "tols.tank_l",
        "tools.tank",
        "coats.9.cut",
        "name.first",
        "helper",
    ]
    assert "`tools`" in said[0]
    assert "`tank_l`" in said[1]
    assert "first, second" in said[2]


def test_one_thing_is_set_once():
    (said,) = refusal_of("tools.tank_l=8", "tools.tank_gal=2")
    assert said.startswith("tools.tank_gal: It was already set by `tools.tank_l`")


def test_a_value_that_does_not_fit_is_refused_by_the_job_itself():
    (said,) = refusal_of("tools.tank_gal=two")
    assert said.startswith("tools.tank_gal: A number is expected")


@given(jobs(), st.lists(st.text("abcdelorstux.=_0123456789 ", max_size=24), max_size=3))
def test_any_settings_give_a_job_or_a_refusal(job, settings):
    try:
        answer = job_from(with_settings(job_to_dict(job), settings), "the settings")
    except Refused as refusal:
        answer = refusal
    assert isinstance(answer, Job) or answer.mistakes
