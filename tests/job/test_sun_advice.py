"""What the sun does to a plan: shorter open times in its patch, advice that is reckoned again."""

import re
from dataclasses import replace
from functools import cache

import pytest
from tests.job.sun_house import covered, sun_job

from farwall.air.clocks import SUN
from farwall.facts.defaults import settle
from farwall.facts.job import RoomSurvey, Survey, Tools, Wishes
from farwall.job.lasting import lasting_of
from farwall.job.plan_job import ground_of, laid_out, plan_job
from farwall.readers.plan_json import plan_from, plan_to_dict
from farwall.spray.check import check_plan

DRY = Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0)


@cache
def planned(at="11:45", *, film=False, units="us"):
    job = sun_job(at=at, survey=DRY, wishes=Wishes(units=units))
    return plan_job(covered(job) if film else job)


def field_of(plan, room, coat="coat-1"):
    return next(f for f in plan.fields if room in f.rooms and f.coat == coat)


def test_an_edge_in_the_patch_is_held_to_the_share_that_sun_leaves():
    field = field_of(planned(), "west", "coat-2")
    whole = [one for one in field.open_times if one.polygon is None and one.room == "west"]
    patch = [one for one in field.open_times if one.polygon is not None and one.room == "west"]
    assert patch
    assert patch[0].low == pytest.approx(SUN * whole[0].low, abs=0.01)
    assert patch[0].to_min is not None
    assert patch[0].rank == "guess"


def test_the_checker_holds_the_same_plan_to_the_same_patches():
    """It finds nothing; and what it finds when every patch lets edges live no time at all."""
    document = plan_to_dict(planned())
    assert check_plan(document) == []
    for field in document["fields"]:
        for one in field["open_times"]:
            if one["polygon"] is not None:
                one["low"] = 0.01
    assert any(fault.code == "dead-edge" for fault in check_plan(document))


def test_the_advice_says_what_film_gives_by_hand():
    """By hand: without sun one open time holds in the whole room, so that the oldest edge has the
    least to spare: that open time less its age. Planned with film on, the field fits as well."""
    field = field_of(planned(), "west", "coat-2")
    told = [one for one in planned().sun.advice if one.room == "west"]
    assert [one.field for one in told] == [field.id]
    settled = settle(covered(sun_job(at="11:45", survey=DRY)))
    shade = lasting_of(settled, None).open_time(("west",), settled.coats[1], 0.0).low
    assert shade > next(one.low for one in field.open_times if one.polygon is None)
    assert told[0].spare_covered_min == pytest.approx(shade - field.peak_age_min, abs=1e-3)
    assert told[0].spare_min == field.tightest.spare_min < told[0].spare_covered_min
    assert told[0].windows == ("west-window",)
    assert "the west window of West room" in told[0].what
    assert "the bands of West room (2." in told[0].what
    assert re.search(r"before \d{1,2}:\d\d [ap]m, best", told[0].what)
    metric = next(one for one in planned(units="metric").sun.advice if one.room == "west")
    assert re.search(r"before 1\d:\d\d, best", metric.what)
    filmed = planned(film=True)
    assert filmed.sun is None
    assert field_of(filmed, "west", "coat-2").tightest.spare_min > told[0].spare_min


def test_the_start_it_names_does_without_film():
    """The whole day moved so that the field begins then: it has more to spare than in the sun."""
    told = planned().sun.advice[0]
    field = field_of(planned(), told.room, "coat-2")
    assert told.spray_before_min < field.start_min
    start = int(11 * 60 + 45 + told.spray_before_min - field.start_min)
    earlier = planned(at=f"{start // 60:02d}:{start % 60:02d}")
    assert field_of(earlier, told.room, "coat-2").tightest.spare_min > told.spare_min


def test_no_advice_where_the_sun_does_not_decide():
    """In damp still air edges live so long that the patch takes nothing that is needed."""
    damp = Survey(slab_c=16.0, air_c=16.0, rh_percent=85.0)
    plan = plan_job(sun_job(at="16:00", survey=damp))
    assert any(one.polygon is not None for one in field_of(plan, "west").open_times)
    assert plan.sun.advice == ()


def test_the_plan_keeps_its_sun_in_a_file():
    plan = planned()
    assert plan_from(plan_to_dict(plan), "it").sun == plan.sun


def test_a_room_told_to_be_sunny_stays_so_as_a_whole():
    rooms = {"west": RoomSurvey(sun=True)}
    told = Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0, rooms=rooms)
    field = field_of(plan_job(sun_job(at="16:00", survey=told)), "west")
    assert not any(one.polygon is not None and one.room == "west" for one in field.open_times)


def test_missing_north_is_asked_for_once():
    job = sun_job(survey=DRY)
    plan = plan_job(replace(job, floor=replace(job.floor, north_deg=None)))
    assert plan.sun is None
    asked = [one for one in plan.warnings if "The sun of" in one]
    assert asked == ["The sun of 2 windows is not reckoned: put floor.north_deg into the job."]


def test_a_room_is_weighed_by_the_sun_of_its_hour():
    """Two like rooms: in the afternoon the west one is weighed by its sun, the east one not."""
    settled = settle(sun_job(at="11:00", survey=DRY))
    lasting, coat = lasting_of(settled, None), settled.coats[0]
    lit, dull = (lasting.shortest((room,), coat, 240.0).low for room in ("west", "east"))
    assert lit == pytest.approx(SUN * lasting.open_time(("west",), coat, 240.0).low, abs=0.01)
    assert dull == pytest.approx(lasting.open_time(("east",), coat, 240.0).low)
    # The east slab still holds some of the morning's sun, the hall had none.
    assert dull < lasting.shortest(("hall",), coat, 240.0).low


def test_of_two_like_rooms_the_one_in_the_shade_comes_first():
    """At 11:00 the east room lies in the sun, an hour later neither does; with film on the
    windows the order falls back to that of their names."""

    def first(job):
        order = laid_out(ground_of(job, None)).order
        return set(order.steps[0].pieces)

    slow = Tools(spray_m2_min=0.4, band_m=0.5)
    assert first(sun_job(at="11:00", tools=slow)) == {"west"}
    assert first(covered(sun_job(at="11:00", tools=slow))) == {"east"}


def test_a_remedy_names_the_hour_without_sun_also_where_no_weather_is_given():
    """At 16:00 the west room lies in the sun: film, or an hour without it, helps.

    What they give is more than the share of the sun alone: the slab is cooler as well.
    """
    ground = ground_of(sun_job(at="16:00", survey=DRY), None)
    coat = ground.settled.coats[0]
    found = {one.code: one for one in ground.others.for_field(("west",), coat, 0.0, 2.0)}
    now = ground.lasting.shortest(("west",), coat, 0.0)
    for code in ("hour", "window"):
        assert 1.0 < found[code].lasting.low / (now.low / SUN) < 1.15
