"""What a job needs beside stain, from floor and people."""

from __future__ import annotations

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.floor.takeoff import take_off
from farwall.job.plan_job import plan_job
from farwall.job.van.needs import needs


@pytest.fixture(scope="module")
def found():
    asked = job(TWO_ROOMS)
    plan = plan_job(asked)
    return asked, plan, {(one.kind, one.of): one for one in needs(plan, asked.floor)}


def test_stains_are_those_of_the_plan(found):
    _, plan, told = found
    for stain in plan.buying["stains"]:
        assert told["stain", stain["stain"]].amount == pytest.approx(stain["ready_l"], abs=0.01)


@pytest.mark.common_practice
def test_tape_is_the_edge_to_mask_and_a_tenth_by_hand(found):
    """Common practice, no source: a roll of 180 ft does about 160 ft of wall."""
    asked, _, told = found
    mask_m = take_off(asked.floor).mask_m
    assert mask_m * 1.1 <= told["tape", ""].amount <= mask_m * 1.1 + 1
    assert mask_m < told["film", ""].amount < mask_m * 1.03


@pytest.mark.common_practice
def test_gear_goes_by_people(found):
    """Common practice, no source: 2-3 pairs of gloves, a suit, cartridges a person and day."""
    _, plan, told = found
    people = 2 if plan.inputs.crew.helper else 1
    assert told["gloves", ""].amount == 3 * people
    assert told["cartridges", ""].amount == people
