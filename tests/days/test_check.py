"""The checker: silent on what holds, and each fault named by its code."""

from __future__ import annotations

import copy
from datetime import datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.days.shop import shop, steady

from farwall.days.calendar import calendar
from farwall.days.check import check_days
from farwall.days.document import document
from farwall.days.nouns import Away

TOLD = document(calendar(shop(3, crews=2, away=(Away("house-2", "plumber", 2),))))


def codes(told):
    return {fault.code for fault in check_days(told)}


def spoilt():
    return copy.deepcopy(TOLD)


def step_of(house, name):
    return next(step for step in house["steps"] if step["id"] == name)


def shift(step, **by):
    for key in ("starts_at", "ends_at"):
        step[key] = (datetime.fromisoformat(step[key]) + timedelta(**by)).isoformat()


def test_an_answer_of_ours_holds():
    assert check_days(TOLD) == []


@settings(max_examples=8)
@given(st.integers(1, 4), st.integers(1, 2), st.integers(2, 3), st.sampled_from([52, 60, 80]))
def test_answers_hold_whatever_the_shop_and_the_weather(count, crews, people, surface_f):
    ahead = steady(surface_f, 50, days=120)
    question = shop(count, crews=crews, people=people, ahead=ahead)
    assert check_days(document(calendar(question))) == []


def test_two_houses_of_a_crew_at_once_are_two_places():
    told = spoilt()
    told["houses"][1]["crew"] = told["houses"][0]["crew"]
    assert "two-places" in codes(told)


def test_stain_on_a_wet_floor():
    told = spoilt()
    shift(step_of(told["houses"][0], "coat-2"), minutes=-30)
    assert codes(told) == {"wet-floor"}


def test_neutralising_before_the_dwell_is_over():
    told = spoilt()
    shift(step_of(told["houses"][0], "neutralise"), hours=-12)
    assert "wet-floor" in codes(told)


def test_a_dwell_over_the_longest():
    told = spoilt()
    for name in ("coat-1", "coat-2"):
        shift(step_of(told["houses"][0], name), days=-1)
    assert "out-of-time" in codes(told)


@pytest.mark.parametrize(("name", "code"), [("coat", "coat-window"), ("seal", "seal-window")])
def test_work_where_no_hour_allows_it(name, code):
    told = spoilt()
    told["hours"][name] = [0] * len(told["hours"][name])
    assert code in codes(told)


def test_a_trade_inside_the_lock():
    told = spoilt()
    last = datetime.fromisoformat(told["houses"][0]["lock"]["ends_at"]).date()
    for day, inside in ((last, True), (last + timedelta(days=1), False)):
        told["away"] = [
            {"house": told["houses"][0]["id"], "trade": "painter", "date": day.isoformat()}
        ]
        assert ("trade-inside" in codes(told)) is inside


def test_a_lock_that_ends_too_soon():
    told = spoilt()
    told["houses"][0]["lock"]["ends_at"] = told["houses"][0]["steps"][-1]["ends_at"]
    assert codes(told) == {"lock"}


def test_work_at_night_and_on_a_saturday():
    for by in ({"hours": 12}, {"days": 4}):
        told = spoilt()
        shift(step_of(told["houses"][0], "coat-1"), **by)
        assert "out-of-hours" in codes(told)


def test_a_step_with_too_little_time():
    told = spoilt()
    step = step_of(told["houses"][0], "clean")
    step["ends_at"] = step["starts_at"].replace("T07:30", "T08:00")
    assert codes(told) == {"too-short"}


def test_a_step_that_is_left_out():
    told = spoilt()
    told["houses"][0]["steps"].remove(step_of(told["houses"][0], "finish"))
    assert codes(told)


def test_a_second_judge_of_colour():
    told = spoilt()
    other = next(c["id"] for c in told["crews"] if c["id"] != told["houses"][0]["crew"])
    step_of(told["houses"][0], "coat-2")["crew"] = other
    assert "two-judges" in codes(told)


def staggered(people):
    """Two houses of one crew, the second sprayed in the hour after the first, by hand."""
    told = document(calendar(shop(1, people=people)))
    other = copy.deepcopy(told["houses"][0])
    other["id"] = "second"
    told["houses"].append(other)
    return told


def test_spraying_without_a_guard_and_two_sprays_of_one_van():
    told = staggered(2)
    assert {"no-guard", "two-sprays"} <= codes(told)


def test_a_third_person_guards_the_other_floor():
    assert "no-guard" not in codes(staggered(3))


def test_a_floor_that_was_neutralised_needs_no_guard():
    told = staggered(2)
    for step in told["houses"][1]["steps"]:
        shift(step, days=7)
    assert "no-guard" not in codes(told)


def test_a_house_begun_before_it_is_free_and_days_late_told_wrong():
    told = spoilt()
    told["houses"][0]["free_from"] = "2002-01-01"
    told["houses"][0]["late_days"] = 3
    assert codes(told) == {"too-early", "late"}


def test_a_bound_above_the_cost():
    told = spoilt()
    told["proof"]["bound_days"] = told["proof"]["cost_days"] + 1
    assert codes(told) == {"proof"}


@pytest.mark.parametrize("told", [{}, {"crews": 3}, {**TOLD, "hours": {}}, {**TOLD, "begins": "?"}])
def test_what_cannot_be_read_is_a_fault_and_no_traceback(told):
    assert codes(told) == {"unreadable"}


def test_a_long_coat_may_not_rest_overnight():
    told = spoilt()
    coat = step_of(told["houses"][0], "coat-2")
    coat["minutes"] = 600.0
    coat["ends_at"] = step_of(told["houses"][0], "neutralise")["starts_at"]
    assert "out-of-hours" in codes(told)
