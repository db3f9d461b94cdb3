"""A good plan, spoilt, is refused with the code that names what was spoilt.

The hash of the inputs is made right again each time, so that it cannot do the catching.
"""

from __future__ import annotations

import pytest
from tests.spray.hand_day import rehashed
from tests.spray.hand_plans import PLANS
from tests.spray.spoil import SPOILS

from farwall.spray.check import check_plan


def spoilt(name):
    base, code, spoil = SPOILS[name]
    plan = PLANS[base]()
    assert check_plan(plan) == []
    spoil(plan)
    rehashed(plan)
    plan["inputs_hash"] = plan.pop("keep_hash", plan["inputs_hash"])
    return plan, code


@pytest.mark.parametrize("name", SPOILS)
def test_a_spoilt_plan_is_refused_by_the_code_that_names_it(name):
    plan, code = spoilt(name)
    assert code in {fault.code for fault in check_plan(plan)}


def test_there_are_forty_ways_to_spoil_a_plan_and_every_code_is_met():
    assert len(SPOILS) >= 40
    assert {code for _, code, _ in SPOILS.values()} == {
        "dead-edge", "edited", "jump", "missed", "not-dry", "out-of-reach", "overfull",
        "refill-astray", "shut-in", "stop-line-open", "tank-dry", "too-fast", "trodden",
        "twice", "wall",
    }  # fmt: skip


@pytest.mark.parametrize(
    "name",
    [
        "the area edited",
        "the litres of a band edited",
        "the peak age edited",
        "a walk too fast",
        "a wand too short",
        "a tank filled beyond its brim",
        "a stop line where no leaf hangs",
        "a hash of something else",
    ],
)
def test_where_one_figure_is_spoilt_nothing_else_is_told(name):
    plan, code = spoilt(name)
    assert {fault.code for fault in check_plan(plan)} == {code}


@pytest.mark.parametrize("name", SPOILS)
def test_a_fault_says_what_where_and_by_how_much(name):
    plan, _ = spoilt(name)
    ids = {field["id"] for field in plan["fields"]}
    for fault in check_plan(plan):
        assert fault.what.endswith(".")
        assert len(fault.what) > 30
        assert fault.field in ids | {""}
