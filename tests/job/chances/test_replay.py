"""A field's course and its edges, taken from the plan's own moments."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.spray.hand_floors import ROOMY_TANK, hall, job

import farwall.job.day_drawn as drawing
from farwall.facts.job import Crew
from farwall.facts.samples import Sample
from farwall.job.chances.replay import _corners, course_of, edges_of, left_l
from farwall.job.chances.stretched import Factors, Pause, stretched, worst
from farwall.job.plan_job import plan_job

NO_PAUSE = Pause(3.0, 0.05, 1000.0)


@cache
def laid(tank_l=40.0, helper=False):
    """The fields of a hall of 9 m x 5 m as planned, with the moments of their edges."""
    kept = []
    told = drawing.chances_of
    try:
        drawing.chances_of = lambda stretches, *args, **more: kept.extend(stretches)
        facts = job(
            hall(9, 5),
            samples=(Sample("board", coat="one", sheen_loss_min=20.0),),
            tools=replace(ROOMY_TANK, tank_l=tank_l),
            crew=Crew(helper=helper),
        )
        plan = plan_job(facts)
    finally:
        drawing.chances_of = told
    return plan, tuple(kept)


def days(spraying=1.0, walking=1.0, filling=1.0, thirst=1.0):
    return Factors(
        *(np.array([value], dtype=float) for value in (spraying, walking, filling, thirst))
    )


def oldest(stretch, plan, factors, pause=NO_PAUSE):
    """The oldest edge of a field under these factors. [min]"""
    course = course_of(stretch.field, plan.inputs.tools, 0.2, 0.0, (-1.3, 2.5))
    on = stretched(course, factors, np.zeros(1), pause)
    edges = edges_of(stretch.moments, stretch.lives, stretch.field)
    return float(worst(edges, on, np.ones((len(stretch.lives.open_times), 1)))[0][0])


@pytest.mark.parametrize(("tank_l", "helper"), [(40.0, False), (4.0, False), (4.0, True)])
def test_a_day_as_planned_has_the_edges_of_the_plan(tank_l, helper):
    plan, stretches = laid(tank_l, helper)
    for one in stretches:
        assert oldest(one, plan, days()) == pytest.approx(one.field.peak_age_min, abs=0.01)


def test_when_all_takes_twice_as_long_edges_are_twice_as_old():
    plan, stretches = laid(4.0)
    age = oldest(stretches[0], plan, days())
    assert oldest(stretches[0], plan, days(2, 2, 2)) == pytest.approx(2 * age, rel=1e-9)


def test_a_longer_filling_ages_the_edge_that_it_falls_upon_by_just_that():
    """By hand: the oldest edge waits for one filling of 3 min; twice as long is 3 min more."""
    plan, stretches = laid(4.0)
    assert any(refill.at_min > 0 for refill in stretches[0].field.refills[1:])
    age = oldest(stretches[0], plan, days())
    assert oldest(stretches[0], plan, days(filling=2)) == pytest.approx(age + 3.0, abs=1e-6)


def test_a_slower_arm_ages_only_what_is_sprayed():
    plan, stretches = laid()
    age, slow = (oldest(stretches[0], plan, days(spraying=x)) for x in (1, 1.5))
    assert age < slow < 1.5 * age


def test_what_is_left_in_the_tank_is_what_came_less_what_went():
    field = laid(4.0)[1][0].field
    came = sum(refill.litres for refill in field.refills)
    assert left_l(field, 0.0) == pytest.approx(came - sum(band.litres for band in field.bands))


share = st.floats(0, 1).map(lambda value: round(value, 4))


@given(st.lists(st.tuples(share, share), min_size=1, max_size=30), st.floats(0, 9), st.floats(0, 9))
def test_the_corners_hold_the_oldest_place_however_long_the_bands_take(places, first, then):
    made, met = np.array(places).T
    corners = _corners(made, met)
    ages = [b * then - a * first for a, b in corners]
    assert max(ages) == pytest.approx(float((met * then - made * first).max()), abs=1e-9)
    assert len(corners) <= len(places)
