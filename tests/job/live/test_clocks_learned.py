"""The waits of the live day, moved about what the firm's closed jobs taught."""

import math
from dataclasses import replace

import pytest
from tests.job.story.entries import Log
from tests.job.test_lessons import LESSONS
from tests.midday import EXAMPLES

from farwall.facts.job import Sighting
from farwall.job.live import now
from farwall.job.plan_job import plan_job
from farwall.job.story import story
from farwall.readers.job_json import read_job

JOB = read_job(EXAMPLES / "quince-street" / "job.json")


@pytest.fixture(scope="module")
def plan():
    return plan_job(JOB, lessons=LESSONS)


def day(plan, *entries):
    log = Log(plan)
    log("coat-done", 65, coat=plan.inputs.coats[0].id, tub_l=1.0, tank_l=0.0)
    for word, minute, told in entries:
        log(word, minute, **told)
    return story(plan, log.kept)


def recoat(plan, told, lessons):
    waits = now(JOB, plan, told, at_min=300.0, lessons=lessons).waits
    return next(one for one in waits if one.clock.name == "dry to recoat")


DAMP = ("still-damp", 65 + 180, {"room": "great-room"})


def test_unwatched_the_waits_are_the_plans_with_and_without_lessons(plan):
    for lessons in (None, LESSONS):
        found = recoat(plan, day(plan), lessons)
        assert found.clock == found.planned
        assert "learned from" in found.planned.source


def test_a_room_found_damp_moves_the_wait_as_a_plan_with_that_sighting_has_it(plan):
    """The plan that knows lessons and sighting in the morning is asked in another way."""
    told = day(plan, DAMP)
    seen = told.sightings[0].sighting
    assert isinstance(seen, Sighting)
    then = plan_job(replace(JOB, seen=(*JOB.seen, seen)), lessons=LESSONS)
    due = next(c for c in then.clocks if c.name == "dry to recoat")
    was = next(c for c in plan.clocks if c.name == "dry to recoat")
    found = recoat(plan, told, LESSONS)
    # What lies before the last damp look is cut away besides: the likely end may only grow.
    assert found.clock.likely_min >= due.likely_min - 2.0
    assert due.likely_min > was.likely_min
    assert found.clock.source.endswith("jobs")
    assert "learned from" in found.clock.source


def test_lessons_change_what_a_look_says(plan):
    told = day(plan, DAMP)
    with_, without = (recoat(plan, told, one).clock for one in (LESSONS, None))
    assert with_ != without
    assert "learned from" not in without.source


def test_a_room_seen_dry_today_narrows_its_own_coat_more_than_a_sighting_of_another_day(plan):
    room = JOB.floor.rooms[0].id
    told = day(plan, ("dry", 65 + 150, {"room": room, "after_min": 150.0}))
    seen = told.sightings[0].sighting
    then = plan_job(replace(JOB, seen=(*JOB.seen, seen)))
    due = next(c for c in then.clocks if c.name == "dry to recoat")
    found = recoat(plan_job(JOB), told, None).clock
    assert math.log(found.high_min / found.low_min) < 0.9 * math.log(due.high_min / due.low_min)
