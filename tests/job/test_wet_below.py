"""A coat over one that is surely dry, likely dry, or stays wet in this air."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.job import Coat, Stain, Survey
from farwall.facts.plain import plain
from farwall.facts.plan import Clock
from farwall.job.faults_told import faults_told
from farwall.job.plan_job import plan_job
from farwall.job.say import said
from farwall.job.wet_below import free_from, stays_wet
from farwall.phrasebook import in_spanish
from farwall.spray.check import check_plan

COATS = tuple(Coat(name, "sand", "1:2") for name in ("one", "two", "three"))


def clock(low, likely, high):
    return Clock("one", "dry to recoat", low, likely, high, "guess", "")


@cache
def planned(slab_c, rh_percent, coats=2):
    survey = Survey(slab_c=slab_c, air_c=slab_c, rh_percent=rh_percent)
    of = job(TWO_ROOMS, stains=(Stain("sand"),), coats=COATS[:coats], survey=survey)
    return plan_job(replace(of, starts_at="2026-10-06T08:00-05:00"))


def of_coat(plan, coat):
    return [one for one in plan.fields if one.coat == coat]


def lines(plan):
    faults = faults_told(plain(plan), check_plan(plain(plan)), us=False)
    return said(plan, faults, folder="out", us=False).splitlines()


def test_by_hand_a_coat_waits_for_the_late_end_else_a_day_and_the_likely_one():
    """By hand: from minute 30 to 130, dry after 200; after a day; after a day and 20 minutes; and
    a wait of 23 h that is sure counts from the end, though the day from the begin is over sooner.
    """
    assert free_from(30, 130, clock(60, 100, 200)) == 330
    assert free_from(30, 130, clock(60, 100, None)) == 1470
    assert free_from(30, 130, clock(60, 1360, None)) == 1490
    assert free_from(30, 130, clock(60, 100, 1380)) == 1510
    assert free_from(30, 130, clock(1440, None, None)) == 1470


@given(
    st.floats(0, 600), st.floats(1, 600), st.floats(1, 1440),
    st.none() | st.floats(1, 1440), st.none() | st.floats(1, 1440),
)  # fmt: skip
def test_law_the_checker_s_own_rule_holds_the_coat_below_as_dry(begins, lasts, low, more, most):
    likely = None if more is None else low + more
    high = None if likely is None or most is None else likely + most
    ends = begins + lasts
    free = free_from(begins, ends, clock(low, likely, high))
    wait = high if high is not None else likely
    assert wait is None or free >= ends + wait - 1e-9
    assert free > ends or lasts > 1440


def test_a_mild_day_says_nothing_of_it():
    plan = planned(21.0, 50.0)
    assert not [one for one in plan.warnings if "not sure to be dry" in one]
    assert not stays_wet(plan.clocks[0])


def test_a_coat_that_is_only_likely_dry_is_gone_over_after_a_look():
    plan = planned(11.0, 90.0)
    assert plan.clocks[0].likely_min is not None
    assert plan.clocks[0].high_min is None
    (words,) = [one for one in plan.warnings if "not sure to be dry" in one]
    assert words.startswith("Coat 1 is not sure to be dry when coat 2 begins, at 8:0")
    assert words.endswith("Look and touch in each room first.")
    assert in_spanish(words)
    assert check_plan(plain(plan)) == []


@pytest.mark.parametrize("coats", [2, 3])
def test_over_a_coat_that_stays_wet_nothing_is_sprayed_and_the_plan_says_why(coats):
    """Air that is damper than a slab of the same warmth can dry in a day: before, the plan said
    that the field fits, and its own replay that the sprayer treads on wet bands."""
    plan = planned(12.0, 98.0, coats)
    assert stays_wet(plan.clocks[0])
    assert {one.verdict for one in of_coat(plan, "one")} != {"cannot"}
    over = [one for coat in COATS[1:coats] for one in of_coat(plan, coat.id)]
    assert {one.verdict for one in over} == {"cannot"}
    for one in over:
        assert [r.what for r in one.remedies][:2] == [
            "In this air coat 1 is not dry within a day, and over it nothing goes.",
            "Warm the slab and dry the air, by heat that gives off no water, and read both again.",
        ]
        assert all(in_spanish(r.what) for r in one.remedies[:2])
    told = lines(plan)
    assert not [one for one in told if "trodden" in one or "not-dry" in one]
    assert [one for one in told if one.startswith("Replayed on the floor, but for what may not")]
