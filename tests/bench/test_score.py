"""A case scored: the figures of a plan, and what is held against it."""

from dataclasses import replace

import pytest

from farwall.bench.nouns import shape_case
from farwall.bench.score import score
from farwall.bench.shapes import SHAPES
from farwall.errors import Unanswerable
from farwall.job.plan_job import plan_job

CASE = shape_case(SHAPES["small square"])


@pytest.fixture(scope="module")
def plan():
    return plan_job(CASE.job)


def changed(plan, **figures):
    """A planner that gives this plan with other figures in its one field."""
    return lambda _: replace(plan, fields=(replace(plan.fields[0], **figures),))


def test_the_figures_are_those_of_the_plan_by_hand(plan):
    """By hand: front 4 m over bound 2.5 m is 1.6; bands of 0.5 m that wet 0.2 m more: 4 m times
    0.7 m over 2.8 m²/min is 1 min."""
    assert plan.inputs.tools.overlap_m == 0.2
    found = score(CASE, planner=changed(plan, equivalent_front_m=4.0, bound_m=2.5, band_m=0.5))
    (one,) = found.fields
    assert one.ratio == pytest.approx(1.6)
    assert one.predicted_min == pytest.approx(1.0)
    assert one.realised == pytest.approx(one.replayed_min, abs=1e-4)  # told to four places
    assert one.area_m2 == pytest.approx(9.0, abs=0.01)
    assert one.bands == len(plan.fields[0].bands)
    assert one.name == "small square"


def test_the_replayed_age_is_the_checkers_and_not_the_plans_word(plan):
    true = score(CASE, planner=lambda _: plan).fields[0].replayed_min
    told = score(CASE, planner=changed(plan, peak_age_min=99.0)).fields[0].replayed_min
    assert told == true > 0


@pytest.mark.parametrize(("front_m", "wrong"), [(2.5, False), (2.4999, True), (2.6, False)])
def test_a_front_below_its_bound_is_a_failure_that_names_the_field(plan, front_m, wrong):
    found = score(CASE, planner=changed(plan, equivalent_front_m=front_m, bound_m=2.5))
    assert found.fields[0].undercuts == wrong
    named = [one for one in found.failures if "below its bound" in one]
    assert len(named) == wrong
    assert all("small square" in one for one in named)


def test_a_sound_plan_of_today_has_no_fault(plan):
    assert score(CASE, planner=lambda _: plan).faults == ()


def test_floor_that_is_not_sprayed_is_a_fault(plan):
    found = score(CASE, planner=changed(plan, bands=plan.fields[0].bands[1:]))
    assert any(fault.startswith("missed") for fault in found.faults)
    assert any("small square: the checker finds missed" in one for one in found.failures)


@pytest.mark.parametrize(
    ("verdict", "helper", "held_against"),
    [
        ("fits", True, True),
        ("helper", True, True),
        ("helper", False, False),
        ("two", True, False),
        ("cannot", True, False),
    ],
)
def test_a_dead_edge_counts_where_the_field_is_said_to_hold(plan, verdict, helper, held_against):
    field = plan.fields[0]
    short = replace(field.open_time_min, low=0.1)
    crew = replace(plan.inputs.crew, helper=helper)
    told = replace(
        plan,
        inputs=replace(plan.inputs, crew=crew),
        fields=(replace(field, open_time_min=short, verdict=verdict),),
    )
    found = score(CASE, planner=lambda _: told)
    assert any(one.startswith("dead-edge") for one in found.faults) == held_against


def test_a_planner_that_says_no_is_told_and_is_no_failure():
    def no(_):
        raise Unanswerable("No way in.")

    found = score(CASE, planner=no)
    assert found.unplanned == "No way in."
    assert found.failures == ()
    assert found.fields == ()


def test_a_planner_that_breaks_off_is_a_failure_and_the_bench_lives_on():
    def broken(_):
        raise ZeroDivisionError("by nought")

    found = score(CASE, planner=broken)
    (told,) = found.failures
    assert told.startswith("small square: the planner broke off in bench/score.py:")
    assert told.endswith(": ZeroDivisionError: by nought")
