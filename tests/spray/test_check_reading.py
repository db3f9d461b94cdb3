"""Whatever a plan holds, the checker answers with faults or with every mistake by its place."""

from __future__ import annotations

from copy import deepcopy

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.hand_plans import PLANS

from farwall.spray.check import Unreadable, check_plan

SMALL = PLANS["a helper inside"]()
CUT = PLANS["a room cut in two fields"]()


def mistakes(plan):
    with pytest.raises(Unreadable) as refusal:
        check_plan(plan)
    return refusal.value.mistakes


def test_all_mistakes_are_named_at_once_with_their_places():
    plan = deepcopy(SMALL)
    plan["fields"][0]["bands"][1]["litres"] = "two"
    plan["fields"][0]["bands"][2]["path"][0] = [1.0, 2.0]
    plan["inputs"]["tools"]["tank_l"] = -1
    plan["inputs"]["floor"]["rooms"][0]["polygon"]["coordinates"] = [[[0, 0], [1, 1], [2, 2]]]
    del plan["inputs"]["crew"]["helper"]
    told = "\n".join(mistakes(plan))
    for place in (
        "fields[0].bands[1].litres: a number is expected",
        "fields[0].bands[2].path[0]: a list of 3 numbers is expected",
        "inputs.tools.tank_l: a number from 0",
        "inputs.floor.rooms[0].polygon: a polygon with an area",
        "inputs.crew.helper: is missing",
    ):
        assert place in told


@pytest.mark.parametrize("plan", [[], None, 3, "plan", {}, {"fields": 3}, {"inputs": []}])
def test_what_is_no_plan_is_refused(plan):
    assert mistakes(plan)


def test_a_missing_part_is_told_once():
    plan = deepcopy(SMALL)
    del plan["inputs"]["tools"]
    assert [what for what in mistakes(plan) if "tools" in what] == ["inputs.tools: is missing."]


def test_two_storeys_over_each_other_are_refused_and_side_by_side_are_not():
    plan = deepcopy(PLANS["two rooms with a door between"]())
    rooms = plan["inputs"]["floor"]["rooms"]
    rooms[0]["storey"] = "upper"
    assert {fault.code for fault in check_plan(plan)} == {"edited"}  # the hash
    rooms[0]["polygon"] = deepcopy(rooms[1]["polygon"])
    assert "different storeys" in mistakes(plan)[0]


def places(value, path=()):
    """Every place in a plan."""
    yield path
    if isinstance(value, dict | list):
        entries = value.items() if isinstance(value, dict) else enumerate(value)
        for key, entry in entries:
            yield from places(entry, (*path, key))


odd = st.one_of(
    st.none(), st.booleans(), st.integers(), st.floats(), st.text(max_size=5), st.just([]),
    st.just({}), st.just("\ud800"), st.just(10**400), st.just([[0, 0, 0]]), st.just([[[0, 0]]]),
    st.sampled_from([1e308, -1e-308, 1e5, -1.0, 1e-9]), st.lists(st.lists(st.floats())),
)  # fmt: skip


@st.composite
def mutants(draw):
    """A good plan with one to four places changed, dropped or doubled."""
    plan = deepcopy(draw(st.sampled_from([SMALL, CUT])))
    for _ in range(draw(st.integers(1, 4))):
        *path, last = draw(st.sampled_from([place for place in places(plan) if place]))
        holder = plan
        for key in path:
            holder = holder[key]
        what = draw(st.sampled_from(["change", "drop", "double", "nudge"]))
        if what == "drop":
            del holder[last]
        elif what == "double" and isinstance(holder, list):
            holder.append(deepcopy(holder[last]))
        elif what == "nudge" and isinstance(holder[last], float):
            holder[last] += draw(st.floats(-3, 3))
        else:
            holder[last] = deepcopy(draw(odd))
    return plan


@given(mutants())
@settings(max_examples=300)
def test_any_mutant_gives_faults_or_mistakes_and_never_another_error(plan):
    told = []
    try:
        told = [fault.what for fault in check_plan(plan)]
    except Unreadable as refusal:
        told = list(refusal.mistakes)
    assert all(what.encode() and what.endswith(".") for what in told)
