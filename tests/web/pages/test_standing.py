"""How the floor stands when nobody sprays: by the clocks, or as it was looked at."""

import pytest
from tests.web.pages.shown_house import bands, house, logged

from farwall.job.moments import moment_at
from farwall.web.pages.moment import floor_at
from farwall.web.pages.moment_words import moment_of, words_of
from farwall.web.pages.standing import standing


@pytest.fixture(scope="module")
def shown():
    return house()


def at(shown, minute):
    plan = shown.floor_plan
    return standing(shown.course, moment_of(plan, minute), shown.went)


def test_while_somebody_sprays_nothing_is_said_of_walking(shown):
    field = shown.plan.fields[0]
    middle = (field.start_min + field.end_min) / 2
    assert standing(shown.course, moment_at(shown.plan, field.coat, middle), None) is None


def test_after_the_last_coat_keep_off_then_perhaps_then_walk_then_rinsed_then_sealed(shown):
    course = shown.course
    ends = course.coats[-1].to_min
    wait = next(one.clock for one in course.waits if one.begins_min == ends)
    rinse, seal = course.piece("rinse"), course.piece("seal", 1)
    assert at(shown, ends + wait.low_min - 1).tread == "off"
    assert at(shown, ends + wait.low_min + 1).tread == "maybe"
    assert at(shown, ends + wait.high_min + 1).tread == "walk"
    assert at(shown, (rinse.from_min + rinse.to_min) / 2).stage == "Neutralise, rinse"
    assert at(shown, rinse.to_min + 5).told == "rinsed"
    assert at(shown, (seal.from_min + seal.to_min) / 2).tread == "off"
    assert at(shown, course.piece("hand-over").to_min).told == "sealed"


def test_days_before_it_says_what_is_done_and_what_is_only_planned(shown):
    survey, clean = shown.course.piece("survey"), shown.course.piece("clean")
    assert "Survey" in at(shown, survey.from_min + 5).stage
    assert "Planned" in at(shown, clean.from_min + 5).lines[0]


def test_a_look_counts_for_more_than_a_clock(shown):
    course = shown.course
    ends = course.coats[-1].to_min
    done = [("band-done", one.end_min, {"band": one.id}) for one in bands(shown)]
    for word, tread in (("dry", "walk"), ("still-damp", "maybe")):
        told = logged(shown, *done, (word, ends + 5, {}))
        assert at(told, told.course.coats[-1].to_min + 6).tread == tread


def test_what_was_planned_by_now_and_not_entered_did_not_happen(shown):
    done = [("band-done", one.end_min, {"band": one.id}) for one in bands(shown)]
    rinse = shown.course.piece("rinse")
    silent = logged(shown, *done, ("note", rinse.to_min + 60, {"text": "x"}))
    told = logged(shown, *done, ("neutralised", rinse.from_min, {}),
                  ("rinsed", rinse.from_min + 90, {}))  # fmt: skip
    assert at(silent, rinse.to_min + 30).told != "rinsed"
    assert at(told, rinse.from_min + 100).told == "rinsed"


def test_the_words_and_the_floor_say_the_same(shown):
    ends = shown.course.coats[-1].to_min
    moment = moment_of(shown.plan, ends + 1)
    stands = standing(shown.course, moment, None)
    drawn = floor_at(shown, ends + 1)
    assert 'data-marks="off"' in drawn
    assert "keep off" in drawn
    assert words_of(shown, moment, stands).head == stands.stage
