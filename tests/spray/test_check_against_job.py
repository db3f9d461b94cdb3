"""A plan beside its job: each fact that differs is told, and nothing that does not."""

from __future__ import annotations

from copy import deepcopy

import pytest
from shapely import box
from tests.spray.hand_day import polygon, rehashed
from tests.spray.hand_plans import PLANS

from farwall.spray.check import Unreadable, check_plan

PLAN = PLANS["two rooms with a threshold and a stop line"]()


def job():
    inputs = deepcopy(PLAN["inputs"])
    floor = {"rooms": inputs["floor"]["rooms"]}
    floor |= {key: inputs[key] for key in ("openings", "fixtures", "saw_cuts")}
    crew, coats, tools = inputs["crew"], inputs["coats"], inputs["tools"]
    return {
        "floor": floor, "exits": inputs["exits"], "crew": crew, "coats": coats, "tools": tools
    }  # fmt: skip


def codes(facts):
    return [fault.code for fault in check_plan(PLAN, job=facts)]


def test_the_same_facts_agree():
    assert codes(job()) == []


def test_facts_that_the_job_does_not_give_are_not_compared():
    facts = job()
    for key in ("crew", "coats", "tools"):
        del facts[key]
    assert codes(facts) == []
    facts["tools"] = {"tank_l": None, "walk_m_min": 40}
    assert codes(facts) == []


def test_an_opening_told_the_other_way_round_is_the_same():
    facts = job()
    facts["floor"]["openings"][0]["line"].reverse()
    facts["floor"]["openings"][0]["rooms"].reverse()
    assert codes(facts) == []


def test_a_plan_may_share_the_floor_under_a_door_out_to_its_rooms():
    """The job ends its rooms at their wall faces; in the plan they meet under the leaf."""
    facts = job()
    plan = deepcopy(PLAN)
    plan["inputs"]["openings"][0]["threshold"] = None
    shapes = [box(0, 3.12, 3, 6.12) | box(1.05, 3.06, 1.95, 3.12)]
    shapes.append(box(0, 0, 3, 3) | box(1.05, 3, 1.95, 3.06))
    for room, shape in zip(plan["inputs"]["floor"]["rooms"], shapes, strict=True):
        room["polygon"] = polygon(shape)
    assert {fault.code for fault in check_plan(plan, job=facts)} == {"edited"}  # the hash


def wider(facts):
    facts["floor"]["rooms"][1]["polygon"] = polygon(box(0, 0, 3.1, 3))


def another_room(facts):
    facts["floor"]["rooms"].append({"id": "attic", "polygon": polygon(box(9, 9, 10, 10))})


def a_moved_door(facts):
    facts["floor"]["openings"][1]["line"][0][0] += 0.02


def a_cased_door(facts):
    facts["floor"]["openings"][0]["kind"] = "cased"


def a_deeper_threshold(facts):
    facts["floor"]["openings"][0]["threshold"] = polygon(box(0.5, 3, 1.95, 3.12))


def no_exit(facts):
    facts["exits"] = []


def an_exit_by_another_door(facts):
    facts["exits"][0]["opening"] = "inner"


def an_island(facts):
    facts["floor"]["fixtures"] = [{"kind": "island", "polygon": polygon(box(1, 1, 2, 2))}]


def a_saw_cut(facts):
    facts["floor"]["saw_cuts"] = [{"id": "s", "line": [[0, 1], [3, 1]]}]


def a_helper(facts):
    facts["crew"]["helper"] = True


def a_smaller_tank(facts):
    facts["tools"]["tank_l"] = 5.0


def a_weaker_cut(facts):
    facts["coats"][0]["cut"] = "1:2"


def another_stain(facts):
    facts["coats"][0]["stain"] = "moss"


def a_second_coat(facts):
    facts["coats"].append({"id": "two", "stain": "moss", "cut": "1:1"})


@pytest.mark.parametrize(
    "change",
    [
        wider, another_room, a_moved_door, a_cased_door, a_deeper_threshold, no_exit,
        an_exit_by_another_door, an_island, a_saw_cut, a_helper, a_smaller_tank, a_weaker_cut,
        another_stain, a_second_coat,
    ],
    ids=lambda change: change.__name__.replace("_", " "),
)  # fmt: skip
def test_a_fact_that_differs_is_told(change):
    facts = job()
    change(facts)
    assert codes(facts) == ["other-job"]


@pytest.mark.parametrize("facts", [[], 3, {}, {"floor": 1}, {"floor": {"rooms": 3}}])
def test_what_is_no_job_is_refused(facts):
    with pytest.raises(Unreadable):
        check_plan(PLAN, job=facts)


def test_the_mornings_flow_counts_by_hand():
    """By hand: the plan's rate asks its own flow of the tip; a tip of half that gives half."""
    facts = job()
    rate = PLAN["inputs"]["tools"]["spray_m2_min"]
    flow = rate * max(PLAN["inputs"]["l_per_m2"].values())
    facts["morning"] = {"tip_l_min": flow}
    assert codes(facts) == []
    facts["morning"] = {"tip_l_min": flow / 2}
    assert codes(facts) == ["other-job"]
    facts["tools"] = facts["tools"] | {"spray_m2_min": 2 * rate}
    facts["morning"] = {"tip_l_min": flow}
    assert codes(facts) == []


def test_with_a_leak_a_tank_is_filled_and_not_swapped():
    facts = job()
    tools = PLAN["inputs"]["tools"]
    assert tools["swap_min"] != tools["refill_min"]
    facts["morning"] = {"spare_tight": False}
    assert codes(facts) == ["other-job"]


@pytest.mark.parametrize(("word", "found"), [("fan", []), ("cone", ["other-job"])])
def test_a_tool_told_in_words_is_compared_word_by_word(word, found):
    plan, facts = deepcopy(PLAN), job()
    plan["inputs"]["tools"]["tip"] = "fan"
    facts["tools"] = facts["tools"] | {"tip": word}
    assert [fault.code for fault in check_plan(rehashed(plan), job=facts)] == found
