"""What a job needs in the van: its list of quantities, less what is not loaded."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.supplies import Supplies
from farwall.job.office import OfficeGround
from farwall.job.office.masking import masked_of
from farwall.job.office.quantities import quantities_of
from farwall.job.plan_job import plan_job
from farwall.job.van.needs import NOT_LOADED, needs


@pytest.fixture(scope="module")
def found():
    asked = job(TWO_ROOMS)
    plan = plan_job(asked)
    return asked, plan, {(one.kind, one.of): one for one in needs(asked, plan)}


def test_stains_are_those_of_the_plan(found):
    _, plan, told = found
    for stain in plan.buying["stains"]:
        assert told["stain", stain["stain"]].amount == pytest.approx(stain["ready_l"], abs=0.01)


@pytest.mark.common_practice
def test_tape_is_that_of_the_masking_up_to_a_whole_metre(found):
    """Common practice, no source: of a roll of 180 ft about 160 ft do, so an edge takes a ninth
    more than it is long, and what holds joins and upper edge besides."""
    asked, plan, told = found
    masked = masked_of(OfficeGround(asked, plan))
    assert masked.tape_m <= told["tape", ""].amount < masked.tape_m + 1
    assert told["tape", ""].amount > masked.wall_m / 0.9


@pytest.mark.common_practice
def test_gear_goes_by_people_and_days(found):
    """Common practice, no source: 2-3 pairs of gloves and a suit a person and day; one who sprays
    on the first day and washes on the second."""
    _, plan, told = found
    people = 2 if plan.inputs.crew.helper else 1
    assert told["gloves", ""].amount == 3 * people * 2
    assert told["suit", ""].amount == people * 2
    assert told["cartridges", ""].amount == people


def test_every_line_that_is_loaded_is_there_once(found):
    asked, plan, told = found
    of = OfficeGround(asked, plan)
    lines = [one for one in quantities_of(of, masked_of(of)).wanted if one.ready]
    loaded = {(one.kind, one.of) for one in lines if one.kind not in NOT_LOADED}
    assert set(told) == loaded
    assert len(told) == len(needs(asked, plan))
    assert ("water", "") not in told


def test_a_switched_off_line_is_not_loaded_and_an_own_figure_is(found):
    asked, plan, _ = found
    wished = replace(asked, supplies=Supplies(("rags",), {"bags": 25}))
    told = {one.kind: one.amount for one in needs(wished, plan)}
    assert "rags" not in told
    assert told["bags"] == 25
