"""Which samples a day has: three cuts a coat in each place, and those that are told already."""

from __future__ import annotations

import json

from tests.job.colour.sample_day.drawn import EXAMPLES, quince
from tests.midday import day_of as planned_day

from farwall.job.colour.sample_day import course_of
from farwall.job.colour.sample_day.lasts import lasts_of
from farwall.readers.job_json import job_from


def test_three_cuts_of_each_coat_side_by_side_the_second_on_half_of_the_first():
    course = course_of(quince())
    assert [one.id for one in course.samples] == ["A1", "B1", "C1", "A2", "B2", "C2"]
    assert [one.cut for one in course.samples] == ["1:3", "1:1", "neat", "1:5", "1:2", "2:1"]
    assert [one.over for one in course.samples] == ["", "", "", "A1", "B1", "C1"]
    assert {one.area_m2 for one in course.samples[:3]} == {0.72}
    assert {one.area_m2 for one in course.samples[3:]} == {0.36}  # 0.6 m square stays bare of it


def test_a_finish_and_a_pour_of_its_own_get_squares_of_their_own():
    survey = {"finish": "trowel", "pours": 2, "rooms": {"hall": {"finish": "float"}}}
    course = course_of(quince(survey=survey))
    first = [one for one in course.samples if one.coat == "first"]
    assert [one.square for one in first] == list("ABCDEFGHI")
    assert [one.why for one in first[::3]] == ["trowel", "float", "pour 2"]
    assert [one.room for one in first[3::3]] == ["hall", ""]


def test_every_coat_has_its_waits_with_ranks_and_those_of_the_plan_win():
    course = course_of(quince())
    names = ("sheen", "dry", "dwell", "dry-down")
    found = {(one.coat, one.name) for one in course.waits}
    assert found == {(coat, name) for coat in ("first", "second") for name in names}
    plan = planned_day("quince-street")
    sheen = next(one for one in plan.clocks if (one.coat, one.name) == ("first", "open time"))
    told = course_of(quince(), plan).wait("first", "sheen")
    assert (told.low_min, told.likely_min, told.rank) == (
        sheen.low_min,
        sheen.likely_min,
        sheen.rank,
    )


def test_a_slab_that_is_too_cold_has_no_time_and_says_why():
    course = course_of(quince(survey={"slab_c": 4.0}))
    sheen = course.wait("first", "sheen")
    assert (sheen.low_min, sheen.likely_min, sheen.high_min) == (None, None, None)
    assert "50" in sheen.source


def test_samples_that_the_facts_tell_of_stand_beside_those_planned():
    facts = json.loads((EXAMPLES / "quince-street" / "job.json").read_text())
    course = course_of(job_from(facts, "The job"))
    assert [one.id for one in course.samples[6:]] == ["closet-1", "closet-2"]
    assert "sheen" in course.told["closet-1"]
    assert "verdict=right" in course.told["closet-2"]


def test_how_long_it_takes_by_hand():
    course = course_of(quince())
    to_wash, to_seal, whole = lasts_of(course)
    dry, dwell = course.wait("first", "dry"), course.wait("second", "dwell")
    # 45 min before, three cuts at 10 min each, dry, three more, the floor's own dwell
    assert to_wash.likely_min == 45 + 30 + dry.likely_min + 30 + dwell.likely_min
    assert to_wash.low_min < to_wash.likely_min < to_wash.high_min
    down = course.wait("second", "dry-down").likely_min
    assert to_seal.likely_min == to_wash.likely_min + 6 * 12 + 6 * 4 + down
    assert whole.likely_min == to_seal.likely_min + 6 * 10 + 12 * 4
