"""From jobs to houses of the calendar: waits as watched, the job's sealer, its own hours."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from tests.job.test_lessons import LESSONS
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text

from farwall.air.waits import DRY_DOWN, NEUTRALISE, RECOAT, SEALER, worth_min
from farwall.days.waits import LABEL
from farwall.evidence import Rank
from farwall.facts.defaults import settle
from farwall.facts.job import Sighting, Site
from farwall.facts.lessons import Lessons
from farwall.facts.sealer import Sealer
from farwall.job.lasting import Lasting
from farwall.job.lessons import with_lessons
from farwall.job.plan_days import Ask, plan_days, question_of
from farwall.job.waits import Waits
from farwall.readers.epw import parse_epw

ELM = replace(job(TWO_ROOMS), id="elm", name="Elm Row 3", starts_at="2026-06-08T08:00:00-06:00")
FIR = replace(ELM, id="fir", name="Fir Row 4")
SLOW = Sighting("dry-down before sealing", 60 * 48.0, slab_c=21.0, air_c=21.0, rh_percent=45.0)


@pytest.fixture(scope="module")
def year():
    return parse_epw(epw_text())


def waits(house, step):
    return {one.name: one for one in house.waits[step]}


def test_a_watched_floor_hands_its_own_wait_to_its_house_and_to_no_other():
    """A dry-down of two days was seen at the conditions of the mild day."""
    watched, plain = question_of([replace(ELM, seen=(SLOW,)), FIR], Ask()).houses
    own, usual = (waits(house, "seal-1")[DRY_DOWN.name].minutes for house in (watched, plain))
    assert own.rank is Rank.LEARNED
    assert usual.rank is Rank.PRACTICE
    assert own.likely > 1.7 * usual.likely
    assert own.high - own.low < usual.high - usual.low
    assert waits(watched, "seal-2")[SEALER.name] == waits(plain, "seal-2")[SEALER.name]


def test_the_calendar_and_the_clock_take_the_same_factor_from_a_sighting():
    seen = replace(ELM, seen=(SLOW,))
    settled = settle(seen)
    factor = Waits(Lasting(settled)).factor(DRY_DOWN, settled.coats[-1])
    minutes = waits(question_of([seen], Ask()).houses[0], "seal-1")[DRY_DOWN.name].minutes
    assert minutes.likely == pytest.approx(DRY_DOWN.usual_min * factor.likely)
    assert minutes.high == pytest.approx(DRY_DOWN.usual_min * factor.high)


def test_a_slow_floor_is_sealed_later_and_the_checker_agrees():
    sealed = {}
    for name, seen in (("usual", ()), ("slow", (SLOW,))):
        answer = plan_days([replace(ELM, seen=seen)], Ask())
        assert answer.faults == ()
        steps = {one.id: one for one in answer.calendar.houses[0].steps}
        sealed[name] = steps["seal-1"].start_min - steps["neutralise"].end_min
    assert sealed["slow"] > sealed["usual"]


def test_the_last_coat_waits_by_its_own_thinner_film_by_hand():
    """200 ft²/gal are 4.908 m²/L, 300 are 7.363: two thirds of the film, and of 150 minutes."""
    laid = {"a": 4.908, "b": 7.363}
    two = replace(
        ELM,
        coats=tuple(replace(ELM.coats[0], id=name, m2_per_l=m2) for name, m2 in laid.items()),
    )
    house = question_of([two], Ask()).houses[0]
    assert waits(house, "coat-2")[RECOAT.name].minutes.likely == pytest.approx(120, rel=0.01)
    assert waits(house, "neutralise")[NEUTRALISE.name].minutes.likely == pytest.approx(
        100, rel=0.01
    )


def test_the_jobs_sealer_gives_its_coats_its_wait_and_its_hours():
    epoxy = Sealer(type="epoxy", coats=3, recoat_from_h=8.0, recoat_to_h=72.0)
    house = question_of([replace(ELM, sealer=epoxy)], Ask()).houses[0]
    assert house.seal_coats == 3
    label = waits(house, "seal-3")[LABEL]
    assert (label.minutes.likely, label.longest_min) == (480, 72 * 60)
    answer = plan_days([replace(ELM, sealer=epoxy)], Ask())
    assert [one.id for one in answer.calendar.houses[0].steps][-5:-1] == [
        "seal-1", "seal-2", "seal-3", "finish"
    ]  # fmt: skip
    assert answer.faults == ()


def test_a_sealer_that_bears_more_cold_has_more_hours(year):
    ask = Ask(begins=date(2026, 4, 6))
    hardy, tender = (
        question_of([replace(ELM, sealer=Sealer(least_slab_c=cold))], ask, weather=year).ahead
        for cold in (5.0, 16.0)
    )
    assert sum(one.seal for one in hardy.hours) > sum(one.seal for one in tender.hours)
    assert [one.film for one in hardy.hours] == [one.film for one in tender.hours]


def test_only_a_house_that_stands_otherwise_carries_hours_of_its_own(year):
    warm = replace(FIR, site=Site(heater_kw=10.0, heater_vented=True))
    ask = Ask(begins=date(2026, 3, 9), crews=2)
    question = question_of([ELM, warm, replace(ELM, id="ash")], ask, weather=year)
    assert [one.ahead is None for one in question.houses] == [True, False, True]
    own = question.ahead_of(question.houses[1])
    assert sum(one.seal for one in own.hours) > sum(one.seal for one in question.ahead.hours)
    answer = plan_days([ELM, warm], ask, weather=year)
    assert answer.faults == ()
    told = {one["id"]: "hours" in one for one in answer.document["houses"]}
    assert told == {"elm": False, "fir": True}


def test_an_unvented_heater_warms_nothing(year):
    foul = replace(FIR, site=Site(heater_kw=10.0, heater_vented=False))
    ask = Ask(begins=date(2026, 4, 6))
    assert (
        question_of([foul], ask, weather=year).ahead == question_of([FIR], ask, weather=year).ahead
    )


def test_the_firms_waits_stand_in_the_calendar_as_a_plan_takes_them():
    two = replace(ELM, coats=(replace(ELM.coats[0], id="a"), replace(ELM.coats[0], id="b")))
    settled = with_lessons(settle(two), LESSONS)
    clocks, coat = Waits(Lasting(settled)), settled.coats[0]
    house, usual = (question_of([two], Ask(), lessons=one).houses[0] for one in (LESSONS, None))
    minutes = waits(house, "coat-2")[RECOAT.name].minutes
    due, worth = clocks.factor(RECOAT, coat), worth_min(RECOAT, m2_per_l=coat.m2_per_l)
    assert minutes.likely == pytest.approx(worth * due.likely)
    assert minutes.low == pytest.approx(worth * due.low)
    assert minutes.rank is Rank.LEARNED
    assert minutes.source.endswith(f"learned from {settled.firm_waits[RECOAT.name].jobs} jobs")
    assert minutes.likely != waits(usual, "coat-2")[RECOAT.name].minutes.likely
    # What nobody was taught stays as it was.
    assert waits(house, "seal-1") == waits(usual, "seal-1")


def test_without_lessons_no_digit_of_a_calendar_changes():
    bare, none = (question_of([ELM, FIR], Ask(), lessons=one) for one in (None, Lessons(1)))
    assert bare.houses == none.houses


def test_what_was_watched_in_slow_air_is_carried_over_to_the_hour_as_in_a_plan():
    cold = Sighting(NEUTRALISE.name, 500.0, slab_c=12.0, air_c=12.0, rh_percent=70.0)
    seen = replace(ELM, seen=(cold,))
    settled = settle(seen)
    clocks, coat = Waits(Lasting(settled)), settled.coats[-1]
    house = question_of([seen], Ask()).houses[0]
    here = waits(house, "neutralise")[NEUTRALISE.name].minutes.likely
    worth = worth_min(NEUTRALISE, m2_per_l=coat.m2_per_l)
    pace = clocks.pace(NEUTRALISE, 0.0)
    assert here == pytest.approx(worth * clocks.factor(NEUTRALISE, coat, pace).likely)
    assert here > 1.1 * worth * clocks.factor(NEUTRALISE, coat).likely
