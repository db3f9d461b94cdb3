"""A plan for two, spoilt as only two can spoil it, is refused by the code that names it."""

from __future__ import annotations

from copy import deepcopy
from functools import cache

import pytest
from tests.spray.hand_day import rehashed
from tests.spray.hand_floors import hall, job

from farwall.facts.job import Crew, Tools
from farwall.facts.plain import plain
from farwall.facts.samples import Sample
from farwall.job.plan_job import plan_job
from farwall.spray.check import check_plan

TOOLS = Tools(6.0, 1.0, 3.0, 40.0, 3.0, 0.5, 0.2, 1.9)


@cache
def _plan():
    samples = (Sample("board", coat="one", sheen_loss_min=40.0),)
    return plain(plan_job(job(hall(9, 6), crew=Crew(2), tools=TOOLS, samples=samples)))


def good():
    return deepcopy(_plan())


def of(field, sprayer):
    return [band for band in field["bands"] if band["sprayer"] == sprayer]


def test_the_plan_for_two_stands():
    assert check_plan(good()) == []
    field = good()["fields"][0]
    assert len(of(field, 1)) > 4
    assert len(of(field, 2)) > 4


def the_second_sprays_beside_the_first(field):
    one, two = of(field, 1)[3], of(field, 2)[3]
    x, y = one["path"][0][:2]
    two["path"] = [[x + 0.3, y, t] for _, _, t in two["path"]]


def both_go_in_side_by_side(field):
    walks = [w for w in field["walks"] if w["who"] == "sprayer"]
    mine = [w for w in field["walks"] if w["who"] == "sprayer 2"]
    mine[0]["path"] = [[x + 0.1, y + 0.1, t] for x, y, t in walks[0]["path"]]


def the_second_walks_over_the_wet_half_of_the_first(field):
    band, mine = of(field, 1)[1], of(field, 2)[2]
    x, y = band["polygon"]["coordinates"][0][0]
    at = mine["path"][0][2]
    field["walks"].append({"who": "sprayer 2", "path": [[x, y, at - 0.01], [x, y, at]]})


def the_second_stays_on_the_floor(field):
    """His ways out after the first bands are struck out: he stands there to the end."""
    late = of(field, 2)[1]["path"][-1][2]
    field["walks"] = [
        w for w in field["walks"] if w["who"] != "sprayer 2" or w["path"][0][2] < late
    ]
    for band in of(field, 2)[2:]:
        band["sprayer"] = 1


def the_second_is_never_filled(field):
    field["refills"] = [refill for refill in field["refills"] if refill["by"] != "sprayer 2"]


def the_tank_of_the_first_is_filled_twice(field):
    for refill in field["refills"]:
        refill["by"] = "sprayer"


def one_does_both_halves(field):
    of(field, 2)[2]["sprayer"] = 1


def they_change_halves(field):
    one, two = of(field, 1)[2], of(field, 2)[2]
    one["sprayer"], two["sprayer"] = 2, 1


def a_third_sprayer(field):
    of(field, 2)[2]["sprayer"] = 3


def the_half_of_the_second_is_left_out(field):
    field["bands"].remove(of(field, 2)[2])


def the_halves_lap_over_each_other(field):
    of(field, 2)[2]["polygon"] = of(field, 1)[2]["polygon"]


def the_second_comes_when_the_edge_is_dead(field):
    field["open_time_min"]["low"] = 0.5


SPOILT = {
    the_second_sprays_beside_the_first: "collision",
    both_go_in_side_by_side: "collision",
    the_second_walks_over_the_wet_half_of_the_first: "trodden",
    the_second_stays_on_the_floor: "shut-in",
    the_second_is_never_filled: "tank-dry",
    the_tank_of_the_first_is_filled_twice: "refill-astray",
    one_does_both_halves: "jump",
    they_change_halves: "jump",
    a_third_sprayer: "edited",
    the_half_of_the_second_is_left_out: "missed",
    the_halves_lap_over_each_other: "twice",
    the_second_comes_when_the_edge_is_dead: "dead-edge",
}


@pytest.mark.parametrize("spoil", SPOILT, ids=lambda spoil: spoil.__name__.replace("_", " "))
def test_a_spoilt_plan_for_two_is_refused_by_the_code_that_names_it(spoil):
    plan = good()
    spoil(plan["fields"][0])
    rehashed(plan)
    assert SPOILT[spoil] in {fault.code for fault in check_plan(plan)}


def test_a_crew_of_one_has_no_second_sprayer():
    plan = good()
    plan["inputs"]["crew"]["sprayers"] = 1
    rehashed(plan)
    assert "edited" in {fault.code for fault in check_plan(plan)}


def test_a_collision_is_told_once_with_its_distance():
    plan = good()
    the_second_sprays_beside_the_first(plan["fields"][0])
    told = [f.what for f in check_plan(plan) if f.code == "collision"]
    assert told
    assert "apart, both spraying" in told[0]
    assert "they need 1.00 m" in told[0]
