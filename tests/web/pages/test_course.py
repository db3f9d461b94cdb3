"""The course of a house: its work in order, in working hours; waits from what they follow."""

from dataclasses import replace
from itertools import pairwise

import pytest
from tests.web.pages.shown_house import house

from farwall.facts.job import Survey
from farwall.web.pages.course import Course


@pytest.fixture(scope="module")
def shown():
    return house()


def hour(shown, minute):
    at = shown.clock.at(minute)
    return at.hour + at.minute / 60


def test_work_comes_in_order_and_none_overlaps(shown):
    pieces = shown.course.pieces
    keys = [one.key for one in pieces]
    assert keys[:5] == ["survey", "samples", "signed", "clean", "mask"]
    assert keys[-1] == "hand-over"
    assert all(a.to_min <= b.from_min + 0.1 for a, b in pairwise(pieces))


def test_work_that_is_only_planned_begins_in_working_hours(shown):
    for one in shown.course.pieces:
        if one.kind == "planned":
            assert 7.4 <= hour(shown, one.from_min) <= 18.6
            assert one.key == "rinse" or shown.clock.at(one.from_min).weekday() < 5


def test_a_house_of_two_days_of_cleaning_is_cleaned_on_two_working_days():
    large = house(starts_at="2026-06-09T08:00:00+00:00")  # a Tuesday

    class Slow(Course):
        _lasts = property(lambda _: large.course._lasts | {"clean": 700.0})

    course = Slow(large.job, large.plan, large.clock)
    clean, mask = course.piece("clean"), course.piece("mask")
    days = [large.clock.at(minute).date().isoformat() for minute in (clean.from_min, clean.to_min)]
    assert days == ["2026-06-04", "2026-06-05"]
    assert large.clock.at(mask.from_min).date().isoformat() == "2026-06-08"


def test_the_spraying_is_the_plans_own_to_the_minute(shown):
    coats = shown.course.coats
    assert [one.number for one in coats] == list(range(1, len(coats) + 1))
    for piece in coats:
        assert piece.from_min == min(field.start_min for field in piece.fields)
        assert piece.to_min == max(field.end_min for field in piece.fields)


def test_every_wait_runs_from_what_it_follows(shown):
    course = shown.course
    ends = {round(one.to_min, 1) for one in course.pieces}
    for wait in course.waits:
        assert round(wait.begins_min, 1) in ends
        assert wait.clock.name != "open time"
    assert len(course.waits) == sum(one.name != "open time" for one in shown.plan.clocks)


def test_facts_that_are_there_are_done_and_those_that_are_not_are_planned(shown):
    bare = Course(replace(shown.job, survey=Survey(), samples=()), shown.plan, shown.clock)
    asked = Course(replace(shown.job, survey=Survey(drop_s=12.0)), shown.plan, shown.clock)
    assert bare.piece("survey").kind == "planned"
    assert asked.piece("survey").kind == "done"
    assert bare.piece("samples").kind == "planned"


def test_a_later_plan_has_all_that_follows_later(shown):
    late = replace(
        shown.plan,
        clocks=tuple(
            one if one.begins_min is None else replace(one, begins_min=one.begins_min + 1440)
            for one in shown.plan.clocks
        ),
    )
    moved = Course(shown.job, late, shown.clock)
    assert moved.piece("rinse").from_min == shown.course.piece("rinse").from_min + 1440
    assert moved.to_min > shown.course.to_min


def test_after_the_coats_what_was_entered_stands_where_it_was_entered(shown):
    rinse = shown.course.piece("rinse")
    entered = (
        ("neutralised", rinse.from_min + 60), ("rinsed", rinse.to_min - 30),
        ("rinsed", rinse.to_min + 90), ("sealed", rinse.to_min + 3000),
    )  # fmt: skip
    told = Course(shown.job, shown.plan, shown.clock, entered, rinse.to_min + 3001)
    mine, first = told.piece("rinse"), told.piece("seal", 1)
    assert (mine.kind, mine.from_min, mine.to_min) == (
        "happened", rinse.from_min + 60, rinse.to_min + 90,
    )  # fmt: skip
    assert (first.kind, first.to_min) == ("happened", rinse.to_min + 3000)
    down = next(one for one in told.waits if one.clock.name == "dry-down before sealing")
    assert down.begins_min == mine.to_min


def test_what_nobody_entered_by_now_still_lies_ahead(shown):
    now = shown.course.piece("hand-over").to_min + 500
    told = Course(shown.job, shown.plan, shown.clock, (("mixed", 1.0),), now)
    for key, number in (("rinse", 0), ("seal", 1), ("hand-over", 0)):
        assert told.piece(key, number).kind == "planned"
        assert told.piece(key, number).from_min >= now
