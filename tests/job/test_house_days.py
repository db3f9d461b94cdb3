"""The days of one house: in the calendar, else so that its first coat falls on the plan's day."""

from dataclasses import replace
from datetime import date, datetime

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.days.check import check_days
from farwall.days.practice import FIRST_COAT
from farwall.facts.job import Coat, Stain
from farwall.job.house_days import begun_before, house_days
from farwall.job.plan_days import Ask, plan_days


def house(day="2026-06-10", **more):
    return job(TWO_ROOMS, id="two", starts_at=f"{day}T08:00:00+00:00", **more)


def coat_day(found):
    step = next(one for one in found.house["steps"] if one["id"] == FIRST_COAT)
    return datetime.fromisoformat(step["starts_at"]).date()


@pytest.mark.parametrize("day", ["2026-06-08", "2026-06-09", "2026-06-10", "2026-06-11"])
def test_the_first_coat_falls_on_the_day_of_the_plan(day):
    found = house_days(house(day))
    assert coat_day(found) == date.fromisoformat(day)
    assert found.on_the_day
    assert found.told
    assert not found.from_calendar


@pytest.mark.parametrize("day", ["2026-06-12", "2026-06-13"])
def test_a_day_that_the_calendar_would_not_take_is_told_as_another(day):
    """A Friday's dwell would end on a day on which nobody works; on a Saturday nobody works."""
    found = house_days(house(day))
    assert not found.on_the_day
    assert coat_day(found) < date.fromisoformat(day)


def test_the_calendar_wins():
    facts = house()
    document = plan_days([facts], Ask(begins=date(2026, 7, 6))).document
    found = house_days(facts, calendar=document)
    assert found.from_calendar
    assert found.house["id"] == "two"
    assert coat_day(found).month == 7
    assert not house_days(job(TWO_ROOMS, id="other"), calendar=document).from_calendar


def test_no_start_gives_days_that_only_count():
    found = house_days(job(TWO_ROOMS, id="two"))
    assert found.house
    assert found.told is (job(TWO_ROOMS, id="two").starts_at is not None)


def test_a_house_without_days_says_why():
    from farwall.facts.job import Survey

    cold = replace(house(), survey=Survey(slab_c=2.0))
    found = house_days(cold)
    assert not found.house
    assert found.no


@pytest.mark.parametrize("day", ["2026-06-08", "2026-06-09", "2026-06-10", "2026-06-11"])
def test_coats_begin_when_the_plan_begins_them_and_the_floor_is_masked_by_then(day):
    """Before, the paper for the builder had coat 1 when masking ended, at three o'clock."""
    first = datetime.fromisoformat(f"{day}T08:00:00+00:00")
    two = (Coat("one", "sand", "1:1"), Coat("two", "sand", "1:2"))
    facts = replace(house(day), coats=two, stains=(Stain("sand"),))
    found = house_days(facts, coats_from=(first, first.replace(hour=14)))
    steps = {one["id"]: one for one in found.house["steps"]}
    begun = {key: datetime.fromisoformat(one["starts_at"]) for key, one in steps.items()}
    assert begun["coat-1"] == first
    assert begun["coat-2"] >= first.replace(hour=14)
    assert datetime.fromisoformat(steps["mask"]["ends_at"]) <= first
    assert found.on_the_day
    assert not check_days(found.document)
    later = house_days(facts)
    assert datetime.fromisoformat(later.house["lock"]["starts_at"]) >= datetime.fromisoformat(
        found.house["lock"]["starts_at"]
    )


def test_where_no_coat_can_begin_by_the_plan_the_days_are_those_without_it():
    """A Friday's dwell would end on a day on which nobody works."""
    friday = datetime.fromisoformat("2026-06-12T08:00:00+00:00")
    assert house_days(house("2026-06-12"), coats_from=(friday,)) == house_days(house("2026-06-12"))


@pytest.mark.parametrize("day", ["2026-06-08", "2026-06-10"])
def test_a_calendar_is_begun_so_long_before_that_the_first_coat_is_on_time(day):
    facts = house(day)
    ask = begun_before(facts, Ask(people=3))
    assert ask.people == 3
    assert ask.begins < date.fromisoformat(day)
    steps = plan_days([facts], ask).document["houses"][0]["steps"]
    at = {one["id"]: datetime.fromisoformat(one["starts_at"]) for one in steps}
    assert at[FIRST_COAT] == datetime.fromisoformat(facts.starts_at)


def test_a_calendar_of_a_house_that_finds_no_days_is_asked_as_it_was():
    from farwall.facts.job import Survey

    assert begun_before(replace(house(), survey=Survey(slab_c=2.0)), Ask()) == Ask()
    assert begun_before(job(TWO_ROOMS, starts_at=None), Ask()) == Ask()
