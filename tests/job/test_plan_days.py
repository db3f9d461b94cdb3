"""From jobs to a calendar: ids, areas, days, weather; and what the lines say."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, datetime

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text

from farwall.errors import Unanswerable
from farwall.evidence import Rank
from farwall.facts.job import Survey
from farwall.floor.takeoff import take_off
from farwall.job.plan_days import Ask, first_day, house_ids, plan_days, question_of
from farwall.job.say_days import said_days
from farwall.readers.epw import parse_epw

MONDAY = date(2026, 6, 8)
ONE = replace(job(TWO_ROOMS), id="elm", name="Elm Row 3", starts_at="2026-06-08T08:00:00-06:00")
OTHER = replace(ONE, id="fir", name="Fir Row 4")


def test_a_house_is_its_net_area_its_coats_and_its_id():
    house = question_of([ONE], Ask()).houses[0]
    assert (house.id, house.name, house.coats) == ("elm", "Elm Row 3", 1)
    assert house.area_m2 == pytest.approx(take_off(ONE.floor).net_m2)


def test_a_job_without_an_id_goes_by_its_name_or_number():
    bare = replace(ONE, id="", name="")
    assert house_ids([ONE, replace(ONE, id=""), bare]) == ["elm", "Elm Row 3", "job-3"]


def test_the_calendar_begins_with_the_job_or_as_told_and_on_its_clock():
    question = question_of([ONE], Ask())
    assert question.ahead.begins == datetime.fromisoformat("2026-06-08T00:00:00-06:00")
    told = question_of([ONE], Ask(begins=date(2026, 7, 1)))
    assert told.ahead.begins.date() == date(2026, 7, 1)
    assert first_day([replace(ONE, starts_at=None)]).weekday() == 0


def test_readings_of_the_survey_are_taken_to_last_for_one_house():
    cold = replace(ONE, survey=Survey(slab_c=10.5, air_c=10.5))
    ahead = question_of([cold], Ask()).ahead
    assert ahead.hours[0].film < 0.7
    assert "readings" in ahead.source
    assert question_of([cold, OTHER], Ask()).ahead.rank is Rank.PRACTICE


def test_a_cold_house_is_a_no():
    with pytest.raises(Unanswerable, match="Elm Row 3"):
        plan_days([replace(ONE, survey=Survey(slab_c=5, air_c=5))], Ask())


def test_weather_is_read_for_the_days_and_tells_the_chances():
    weather = parse_epw(epw_text())
    answer = plan_days([ONE], Ask(), weather=weather)
    assert answer.document["rests_on"]["rank"] == "guess"
    assert answer.document["houses"][0]["lost_chance"] is not None
    assert answer.faults == ()
    assert "Chance that a day" in said_days(answer, us=True)


def test_january_costs_more_days_than_july_where_winters_are_cool():
    weather = parse_epw(epw_text())
    days = {}
    for month in (4, 7):
        answer = plan_days([ONE], Ask(begins=date(2026, month, 6)), weather=weather)
        days[month] = answer.calendar.houses[0].steps[-1].end_min
    assert days[7] < days[4]


def test_one_house_is_told_by_the_hour():
    said = said_days(plan_days([ONE], Ask(begins=MONDAY)), us=False)
    assert "Mon 8 Jun   7:30 to" in said
    assert "Locked to all other trades from Mon 8 Jun 7:30 to" in said
    assert "builder sheet" in said
    assert "Read again by the checker" in said
    assert "licensed practice win" in said


def test_in_us_manner_every_hour_of_a_house_has_its_half_of_the_day():
    said = said_days(plan_days([ONE], Ask(begins=MONDAY)), us=True)
    assert "Mon 8 Jun   7:30 am to" in said
    assert "Locked to all other trades from Mon 8 Jun 7:30 am to" in said
    hours = re.findall(r"\b(\d+):\d\d\b( [ap]m)?", said)
    assert len(hours) > 20
    assert all(half and 1 <= int(hour) <= 12 for hour, half in hours)
    within_a_day = re.findall(r"^  Mon .{8}\d+:\d\d [ap]m to \d+:.*$", said, re.MULTILINE)
    assert within_a_day
    assert all(line[35] == " " != line[36] for line in within_a_day)


def test_what_moves_and_who_stays_out_are_told_in_the_same_manner():
    ask = Ask(begins=MONDAY, crews=2, rain=(date(2026, 6, 9),))
    answer = plan_days([ONE, OTHER], ask)
    for us, least in ((True, " am instead of "), (False, ":30 instead of ")):
        said = said_days(answer, us=us)
        assert least in said
        halves = re.findall(r"\b\d+:\d\d( [ap]m)?", said)
        assert {bool(half) for half in halves} == {us}
    assert "other trades out until" in said


def test_many_houses_are_told_by_the_day_with_the_proof():
    said = said_days(plan_days([ONE, OTHER], Ask(begins=MONDAY, crews=2)), us=True)
    assert "crew 1, 2 people, 1 houses" not in said
    assert "crew 2, 2 people, 1 house" in said
    assert "no calendar of the" in said
    assert "gap 0.0 %" in said


def test_rain_tells_what_moves_and_what_stays():
    answer = plan_days([ONE], Ask(begins=MONDAY, rain=(date(2026, 6, 9),)))
    said = said_days(answer, us=True)
    assert "Against the first answer:" in said
    assert "coat 1: Wed 10 Jun" in said
    assert "instead of Tue 9 Jun" in said
    assert answer.document["hours"]["wet_days"] == [1]


def test_rain_after_hand_over_moves_nothing():
    answer = plan_days([ONE], Ask(begins=MONDAY, rain=(date(2026, 6, 25),)))
    assert "no step moves to another day" in said_days(answer, us=True)


def test_a_plumber_in_the_house_moves_it_and_the_checker_agrees():
    answer = plan_days(
        [ONE, OTHER], Ask(begins=MONDAY, crews=2, away=(("elm", "plumber", date(2026, 6, 9)),))
    )
    assert answer.faults == ()
    moved = {one.house.house.id: one.stays for one in answer.changes}
    assert moved == {"elm": False, "fir": True}
    assert "No day moves at Fir Row 4." in said_days(answer, us=True)


def test_a_house_that_is_late_says_so():
    answer = plan_days([ONE], Ask(begins=MONDAY, due={"elm": date(2026, 6, 10)}))
    assert answer.calendar.houses[0].late_days > 0
    assert "LATE by" in said_days(answer, us=True)
