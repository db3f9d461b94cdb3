"""What a closed job tells: only what was entered, and as it was entered."""

from __future__ import annotations

import json

import pytest
from tests.job.story.entries import Log
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.plain import plain
from farwall.job.closed import WHOLE, closed_job
from farwall.job.plan_job import plan_job
from farwall.job.rinses import Rinses
from farwall.job.story import story
from farwall.learn.lessons import lessons_of
from farwall.readers.lessons_json import read_closed


@pytest.fixture(scope="module")
def asked():
    return job(TWO_ROOMS, id="two", name="Two rooms")


@pytest.fixture(scope="module")
def plan(asked):
    return plan_job(asked)


@pytest.fixture
def log(plan):
    return Log(plan)


def told(asked, plan, log):
    return closed_job(asked, plan, story(plan, log.kept), job_id="two")


def litres(plan, coat):
    own = [field for field in plan.fields if field.coat == coat]
    return own, sum(band.litres for field in own for band in field.bands)


def test_an_empty_log_teaches_nothing(asked, plan, log):
    found = told(asked, plan, log)
    assert (found.sprayed, found.waits, found.hours, found.rinsed) == ((), (), (), ())
    assert found.colour == ()
    assert found.closed_on == plan.starts_at[:10]


def test_what_each_field_took_by_hand(asked, plan, log):
    """By hand: 30 L mixed, 24 L left after the first field, so that it took 6 L."""
    fields, _ = litres(plan, plan.inputs.coats[0].id)
    first = fields[0]
    log("mixed", 0.0, coat=first.coat, litres=30.0, tub_l=30.0, lot="7")
    log("field-done", first.end_min, field=first.id, tub_l=20.0, tank_l=4.0)
    found = told(asked, plan, log)
    assert [one.field for one in found.sprayed] == [first.id]
    one = found.sprayed[0]
    assert one.used_l == pytest.approx(6.0)
    assert one.area_m2 == pytest.approx(first.area_m2, rel=0.01)
    assert one.planned_l == pytest.approx(sum(band.litres for band in first.bands), rel=0.01)
    assert (one.number, one.lot, one.sampled) == (1, "7", False)


def test_a_coat_weighed_only_at_its_end_is_told_whole_by_hand(asked, plan, log):
    coat = plan.inputs.coats[0].id
    fields, likely_l = litres(plan, coat)
    log("mixed", 0.0, coat=coat, litres=30.0)
    log("coat-done", fields[-1].end_min, coat=coat, tub_l=3.0, tank_l=0.0)
    (one,) = told(asked, plan, log).sprayed
    assert (one.field, one.used_l) == (WHOLE, pytest.approx(27.0))
    assert one.planned_l == pytest.approx(likely_l, rel=0.01)
    assert one.area_m2 == pytest.approx(sum(field.area_m2 for field in fields), rel=0.01)


def test_what_was_not_weighed_is_not_told_as_planned(asked, plan, log):
    first = plan.fields[0]
    log("field-done", first.end_min, field=first.id)
    assert told(asked, plan, log).sprayed == ()


def test_hours_rinses_colour_and_calls_by_hand(asked, plan, log):
    log("hours", 500.0, task="coat", hours=4.0, people=2)
    log("coat-judged", 510.0, coat=plan.inputs.coats[0].id, look="darker", steps=2)
    for minute, rag in ((600.0, "coloured"), (630.0, "grey"), (660.0, "clean"), (690.0, "clean")):
        log("rinsed", minute, rag=rag)
    log("handed-over", 1500.0)
    log("called-back", 9000.0, what="orange dust", hours=3.0)
    found = told(asked, plan, log)
    assert [(one.task, one.hours, one.people) for one in found.hours] == [("coat", 4.0, 2)]
    assert [one.rounds for one in found.rinsed] == [3]
    assert [(one.look, one.by_steps) for one in found.colour] == [("darker", 2.0)]
    assert [(one.what, one.hours) for one in found.called_back] == [("orange dust", 3.0)]


def test_a_rag_that_never_came_clean_tells_no_count(asked, plan, log):
    log("rinsed", 600.0, rag="grey")
    assert told(asked, plan, log).rinsed == ()


def test_rinses_of_the_whole_floor_count_in_each_of_its_rooms(asked, plan, log):
    """By hand: twice the whole floor, then each room by itself, is three rinses and four."""
    one, two = (room.id for room in asked.floor.rooms)
    for minute in (600.0, 620.0):
        log("rinsed", minute, rag="grey")
    log("rinsed", 640.0, room=one, rag="clean")
    log("rinsed", 650.0, room=two, rag="grey")
    log("rinsed", 670.0, room=two, rag="clean")
    log("rinsed", 680.0, rag="clean")
    rinses = Rinses(asked, plan, story(plan, log.kept))
    assert {one.room: one.rounds for one in told(asked, plan, log).rinsed} == {one: 3, two: 4}
    assert rinses.counts(one)[2] == 3
    assert rinses.counts(two)[-1] == 5


def test_two_strips_of_one_rinse_are_one_and_its_number_is_believed(asked, plan, log):
    """By hand: the third rinse is the first that was entered, and its dirtier rag counts."""
    log("rinsed", 600.0, round=3, rag="clean")
    log("rinsed", 605.0, round=3, rag="grey")
    log("rinsed", 630.0, round=4, rag="clean")
    assert [one.rounds for one in told(asked, plan, log).rinsed] == [4]


def test_slips_of_a_count_teach_nothing_and_the_job_is_read_back(asked, plan, log, tmp_path):
    log("hours", 500.0, task="coat", hours=4.0, people=400)
    log("coat-judged", 510.0, coat=plan.inputs.coats[0].id, look="darker", steps=300)
    log("rinsed", 600.0, round=900, rag="clean")
    fields, likely_l = litres(plan, plan.inputs.coats[0].id)
    log("mixed", 0.0, coat=fields[0].coat, litres=likely_l * 1.5, lot="of a name " * 30)
    log("coat-done", fields[-1].end_min, coat=fields[0].coat, tub_l=0.0, tank_l=0.0)
    found = told(asked, plan, log)
    assert [one.people for one in found.hours] == [None]
    assert [one.by_steps for one in found.colour] == [None]
    assert [one.rounds for one in found.rinsed] == [1]
    path = tmp_path / "closed.json"
    path.write_text(json.dumps(plain(found)))
    assert list(read_closed(path)) == [found]


def test_a_wait_that_was_watched_is_told_as_a_share_of_the_usual(asked, plan, log):
    coat, room = plan.inputs.coats[0].id, asked.floor.rooms[0].id
    log("still-damp", 200.0, room=room, coat=coat, after_min=60.0, clock="recoat")
    log("dry", 260.0, room=room, coat=coat, after_min=120.0, clock="recoat")
    (one,) = [w for w in told(asked, plan, log).waits if w.clock == "dry to recoat"]
    assert one.ended
    assert one.share == pytest.approx(2 * one.since, rel=0.2)
    assert 0.3 < one.share < 3.0


def test_what_was_struck_teaches_nothing(asked, plan, log):
    hours = log("hours", 500.0, task="coat", hours=40.0)
    log("struck", 501.0, entry=hours.entry.id)
    assert told(asked, plan, log).hours == ()


def test_lessons_can_be_made_of_it(asked, plan, log):
    coat = plan.inputs.coats[0].id
    fields, likely_l = litres(plan, coat)
    log("mixed", 0.0, coat=coat, litres=likely_l * 1.5)
    log("coat-done", fields[-1].end_min, coat=coat, tub_l=0.0, tank_l=0.0)
    lessons = lessons_of([told(asked, plan, log)])
    (over,) = [one for one in lessons.lessons if one.name.startswith("litres over planned")]
    assert over.jobs == 1
    assert over.likely > 1.0
