"""The days of the firm's calendar on the tape of a house: only where it coats it on that day."""

from datetime import date, datetime

import pytest
from tests.web.pages.shown_house import STARTS_AT, house

from farwall.job.plan_days import Ask, plan_days
from farwall.web.pages.course import Course
from farwall.web.pages.from_calendar import days_of

START = datetime.fromisoformat(STARTS_AT)


@pytest.fixture(scope="module")
def shown():
    return house()


@pytest.fixture(scope="module")
def calendar(shown):
    """The calendar of this house alone, begun so early that days are as it likes them."""
    return plan_days([shown.job], Ask(begins=date(2026, 6, 1))).document


def coat_day(calendar):
    steps = calendar["houses"][0]["steps"]
    return datetime.fromisoformat(next(s["starts_at"] for s in steps if s["id"] == "coat-1"))


def test_a_house_that_is_coated_on_another_day_or_is_not_in_it_has_none(shown, calendar):
    other = coat_day(calendar).replace(year=2027)
    assert days_of(calendar, "two", other) == {}
    assert days_of(calendar, "another", coat_day(calendar)) == {}
    assert days_of(None, "two", START) == {}


def test_its_steps_stand_where_the_calendar_has_them(shown, calendar):
    start = coat_day(calendar).replace(hour=8, minute=0)
    days = days_of(calendar, "two", start)
    assert {"clean", "mask", "coat-1", "neutralise", "seal-1", "hand-over"} <= set(days)
    assert days["clean"][0] < days["mask"][0] < 0 <= days["coat-1"][1]
    told = Course(shown.job, shown.plan, shown.clock, days=days)
    for key in ("clean", "mask", "hand-over"):
        assert (told.piece(key).from_min, told.piece(key).to_min) == days[key]
    assert told.piece("seal", 1).from_min == days["seal-1"][0]


def test_what_was_entered_and_what_is_past_counts_for_more(shown, calendar):
    start = coat_day(calendar).replace(hour=8, minute=0)
    days = days_of(calendar, "two", start)
    entered = (("rinsed", days["neutralise"][0] + 30),)
    told = Course(shown.job, shown.plan, shown.clock, entered, days=days)
    assert told.piece("rinse").kind == "happened"
    late = Course(shown.job, shown.plan, shown.clock, (), days["hand-over"][1] + 5, days)
    assert late.piece("hand-over").from_min > days["hand-over"][1]
