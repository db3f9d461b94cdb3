"""In mid-day, fields planned again are held to the sun of their new minutes."""

from dataclasses import replace
from functools import cache

import pytest
from tests.job.sun_house import sun_job
from tests.midday import after, codes

from farwall.air.clocks import SUN
from farwall.facts.job import RoomSurvey, Survey
from farwall.job.plan_job import plan_job
from farwall.job.replan import replan
from farwall.job.sun_midday import in_sun
from farwall.spray.lives import Lives


@cache
def morning(*, told_sunny=False):
    rooms = {"west": RoomSurvey(sun=True)} if told_sunny else {}
    survey = Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0, rooms=rooms)
    return plan_job(sun_job(at="10:30", survey=survey))


def test_a_field_that_comes_three_hours_late_meets_the_sun_of_the_afternoon():
    """Before noon no sun reaches the west room; at 14:00 it does, and the edges are held to it."""
    plan = morning()
    first = plan.fields[0]
    west = next(f for f in plan.fields if "west" in f.rooms and f.coat == "coat-1")
    assert first.id != west.id
    assert not any(one.polygon is not None and one.room == "west" for one in west.open_times)
    again = replan(plan, after(plan, first.bands[-1].id, late_min=210.0))
    late = next(f for f in again.fields if f.id == west.id)
    patches = [one for one in late.open_times if one.polygon is not None and one.room == "west"]
    assert patches
    shade = next(one for one in late.open_times if one.polygon is None and one.room == "west")
    assert patches[0].low == pytest.approx(SUN * shade.low, abs=0.006)
    assert again.sun.patches == plan.sun.patches
    assert again.sun.advice == ()
    assert codes(again) == set()


def test_the_checker_finds_an_edge_that_such_a_patch_kills():
    plan = morning()
    again = replan(plan, after(plan, plan.fields[0].bands[-1].id, late_min=210.0))
    short = [
        replace(
            field,
            open_times=tuple(
                replace(one, low=0.01) if one.polygon is not None else one
                for one in field.open_times
            ),
        )
        for field in again.fields
    ]
    assert "dead-edge" in codes(replace(again, fields=tuple(short)))


def test_a_room_told_to_be_sunny_is_not_shortened_twice_and_no_patch_comes_twice():
    plan = morning(told_sunny=True)
    west = next(f for f in plan.fields if "west" in f.rooms)
    shapes = {room.id: room.polygon.shape for room in plan.inputs.floor.rooms}
    floors = {room: shapes[room] for room in west.rooms}
    lives = Lives(west.open_times, floors)
    assert in_sun(lives, plan, 180.0, 240.0).open_times == lives.open_times
    own = morning()
    field = next(f for f in own.fields if "west" in f.rooms)
    once = in_sun(Lives(field.open_times, floors), own, 180.0, 240.0)
    assert len(once.open_times) > len(field.open_times)
    assert in_sun(once, own, 180.0, 240.0).open_times == once.open_times


def test_without_a_sun_nothing_changes():
    plan = replace(morning(), sun=None)
    field = plan.fields[0]
    lives = Lives(field.open_times, {})
    assert in_sun(lives, plan, 0.0, 600.0) is lives
