"""Hours of a job taken from its plan, its wash day, its walls; days on site."""

import math
from dataclasses import replace
from pathlib import Path

import pytest

from farwall.days.nouns import House
from farwall.facts.prices import Offer
from farwall.job.office import OfficeGround
from farwall.job.office.hours import hours_of
from farwall.job.office.hours.days import calendar_days, worked_days
from farwall.job.office.hours.sizes import sizes_of
from farwall.job.office.masking import masked_of
from farwall.job.office.scope import scope_of
from farwall.job.plan_days import Ask, plan_days
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parents[3]


@pytest.fixture(scope="module")
def ground():
    job = read_job(ROOT / "examples" / "quince-street" / "job.json")
    return OfficeGround(job, plan_job(job))


@pytest.fixture(scope="module")
def masked(ground):
    return masked_of(ground)


def by_id(found):
    return {one.id: one for one in found.tasks}


def test_spraying_is_the_minutes_of_the_plan_times_the_people(ground, masked):
    found = by_id(hours_of(ground, masked))
    minutes = sum(one.end_min - one.start_min for one in ground.plan.fields)
    assert found["coat"].likely_h == pytest.approx(minutes * 2 / 60)


def test_washing_is_what_the_wash_day_says(ground, masked):
    assert by_id(hours_of(ground, masked))["wash"].likely_h == pytest.approx(
        ground.acid.washing.work_h.likely
    )


def test_masking_goes_by_the_walls_of_the_masking(ground, masked):
    found = by_id(hours_of(ground, masked))["mask"]
    assert found.likely_h == pytest.approx(masked.wall_m / 0.3048 / 65)


def test_an_offer_of_one_coat_sprays_that_coat_alone(ground, masked):
    coats = [one.id for one in ground.plan.inputs.coats]
    parts = [
        sizes_of(ground, masked, scope_of(ground, Offer("one", coats=(id_,)))).coat_min[0]
        for id_ in coats
    ]
    assert parts == list(sizes_of(ground, masked, scope_of(ground)).coat_min)


def test_rooms_of_two_offers_add_up_to_the_whole(ground, masked):
    rooms = [one.id for one in ground.job.floor.rooms]
    here, there = rooms[::2], rooms[1::2]
    parts = [
        sizes_of(ground, masked, scope_of(ground, Offer("x", rooms=tuple(one))))
        for one in (here, there)
    ]
    whole = sizes_of(ground, masked, scope_of(ground))
    assert math.fsum(one.area_m2 for one in parts) == pytest.approx(whole.area_m2)
    assert math.fsum(one.wall_m for one in parts) == pytest.approx(whole.wall_m)
    for coat in range(2):
        minutes = math.fsum(one.coat_min[coat] for one in parts)
        assert minutes == pytest.approx(whole.coat_min[coat])


def test_rooms_share_the_tasks_that_go_with_floor_and_wall(ground, masked):
    found = hours_of(ground, masked)
    own = [one for one in found.tasks if one.id not in {"travel", "sample", "set-up"}]
    assert sum(one.hours for one in found.rooms) == pytest.approx(
        sum(one.likely_h for one in own), abs=0.02
    )


def test_the_range_of_the_sum_is_narrower_than_the_sum_of_the_ends(ground, masked):
    found = hours_of(ground, masked)
    assert sum(one.low_h for one in found.tasks) < found.low_h < found.likely_h < found.high_h
    assert found.high_h < sum(one.high_h for one in found.tasks)


def test_nobody_works_alone(ground, masked):
    crew = replace(ground.job.crew, sprayers=1, helper=False, second_adult=True)
    alone = replace(ground, job=replace(ground.job, crew=crew))
    assert hours_of(alone, masked).people == 2


def test_more_coats_and_larger_floors_never_take_fewer_days():
    days = [len(worked_days(House("h", "", 100, coats=n), 2, "likely")) for n in (1, 2, 3)]
    assert days == sorted(days)
    small, large = (len(worked_days(House("h", "", a), 2, "likely")) for a in (40, 400))
    assert small < large


@pytest.mark.common_practice
def test_most_houses_take_four_to_five_days():
    """As a builder's sheet of finishers has it, no source: 1,500 ft², two people, mild days."""
    assert 4 <= len(worked_days(House("h", "", 139.4), 2, "likely")) <= 6


def test_days_of_a_calendar_are_those_on_which_a_step_is_worked(ground):
    answer = plan_days([ground.job], Ask())
    id_ = answer.document["houses"][0]["id"]
    first, last, count = calendar_days(answer.document, id_)
    steps = answer.document["houses"][0]["steps"]
    assert first.isoformat() == steps[0]["starts_at"][:10]
    assert last.isoformat() == steps[-1]["ends_at"][:10]
    assert 3 <= count <= (last - first).days + 1
    assert calendar_days(answer.document, "no house") is None
    assert calendar_days(None, id_) is None
    found = hours_of(replace(ground, calendar=answer.document), masked_of(ground))
    assert found.days[1] == count
    assert found.days_from == "the calendar"
    one_coat = scope_of(ground, Offer("one", coats=(ground.plan.inputs.coats[0].id,)))
    part = hours_of(replace(ground, calendar=answer.document), masked_of(ground), one_coat)
    assert part.days_from != "the calendar"
