"""Which moment is looked at: the one asked for, a time of day, else the tightest of all."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.job.moments import moment_at
from farwall.job.plan_job import plan_job
from farwall.web.pages.looking_at import LEAST_MIN, Window, look_at, whole_of
from farwall.web.pages.moment_words import words_of
from farwall.web.pages.shown import Shown
from farwall.web.pages.standing import standing


@pytest.fixture(scope="module")
def shown():
    facts = job(TWO_ROOMS, id="two", starts_at="2026-06-08T08:00:00+00:00")
    return Shown(facts, plan_job(facts), 1, ())


def test_at_first_it_is_just_before_the_tightest_edge_is_met(shown):
    worst = min((f.tightest for f in shown.plan.fields if f.tightest), key=lambda t: t.spare_min)
    assert look_at(shown).minute == pytest.approx(worst.met_min - 0.02, abs=0.006)  # two places


@pytest.mark.parametrize(
    ("told", "minute"),
    [
        ({"minute": 3.25}, 3.25),
        ({"at": "08:04"}, 4),
        ({"at": "08:04", "minute": 1500.0}, 1444),
        ({"at": "noon", "minute": 7.0}, 7),
        ({"minute": -9.0}, -9.0),
    ],
)
def test_it_is_what_was_asked_for_within_the_plan(shown, told, minute):
    assert look_at(shown, **told).minute == minute


def test_steps_lead_through_every_band_and_back(shown):
    minute, seen = 0.0, 0
    last = max(field.end_min for field in shown.plan.fields)
    while (look := look_at(shown, minute=minute)).after is not None and minute < last:
        assert look.after > minute
        assert look_at(shown, minute=look.after).before >= minute
        minute, seen = look.after, seen + 1
    assert seen >= sum(len(field.bands) for field in shown.plan.fields)


def test_the_words_say_the_edge_against_its_life_and_what_comes_next(shown):
    field = max(shown.plan.fields, key=lambda one: len(one.bands))
    band = sorted(field.bands, key=lambda one: one.order)[1]
    minute = (band.start_min + band.end_min) / 2
    moment = moment_at(shown.plan, field.coat, minute)
    words = words_of(shown, moment)
    assert f"band 2 of {len(field.bands)}" in words.head
    assert any(f"lives {field.open_time_min.low:.1f} min" in line for line in words.lines)
    assert words.next


def test_an_edge_that_is_older_than_it_lives_is_told_as_too_late(shown):
    field = max(shown.plan.fields, key=lambda one: len(one.bands))
    brief = replace(field, open_time_min=replace(field.open_time_min, low=0.01))
    plan = replace(shown.plan, fields=(brief,))
    band = sorted(field.bands, key=lambda one: one.order)[1]
    moment = moment_at(plan, field.coat, band.start_min)
    words = words_of(replace(shown, plan=plan), moment)
    assert any("too late" in line for line in words.lines)


def test_when_all_is_sprayed_the_wait_is_told(shown):
    last = max(field.end_min for field in shown.plan.fields)
    moment = moment_at(shown.plan, shown.plan.fields[-1].coat, last + 5)
    words = words_of(shown, moment, standing(shown.course, moment, None))
    assert words.head.startswith("All is sprayed")
    assert "most likely" in words.lines[0]
    assert "neutralise, rinse" in words.next


def test_a_window_keeps_the_moment_in_sight_and_stays_on_the_tape(shown):
    whole = whole_of(shown.course)
    for asked in (Window(-1e5, 1e5), Window(0, 1), Window(500, 700), Window(-4000, -3000)):
        for minute in (whole.from_min, 2.0, 400.0, whole.to_min):
            seen = asked.within(whole, minute)
            assert LEAST_MIN - 0.01 <= seen.span_min <= whole.span_min + 0.01
            assert whole.from_min - 0.01 <= seen.from_min <= minute <= seen.to_min
            assert seen.to_min <= whole.to_min + 0.01


def test_plus_and_minus_lead_from_days_to_minutes_and_back(shown):
    look, spans = look_at(shown, minute=3.0, scale="days"), []
    while look.nearer is not None:
        spans.append(look.window.span_min)
        window = (look.nearer.from_min, look.nearer.to_min)
        look = look_at(shown, minute=3.0, window=window)
    assert look.window.span_min == pytest.approx(LEAST_MIN, abs=0.1)
    assert spans == sorted(spans, reverse=True)
    while look.wider is not None:
        look = look_at(shown, minute=3.0, window=(look.wider.from_min, look.wider.to_min))
    assert look.window == look.whole


def test_on_a_day_of_work_it_opens_at_the_minute_that_it_is(shown):
    assert look_at(shown, now_min=2.5).minute == 2.5
    assert look_at(shown, now_min=-5000.0).minute == look_at(shown).minute
    assert look_at(shown, minute=1.0, now_min=2.5).minute == 1.0
