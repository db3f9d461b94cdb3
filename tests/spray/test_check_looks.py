"""Mix inside a field before the checker: our plans stand, late looks and other lots do not."""

from copy import deepcopy

import pytest
from tests.midday import HOUSES, after, bands_of, day_of

from farwall.job.replan import replan
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.check import check_plan

QUINCE = "quince-street"
OURS = {"look-late", "look-alone", "other-lot", "two-shades", "edited"}


@pytest.fixture
def plan():
    return deepcopy(plan_to_dict(day_of(QUINCE)))


def codes(plan):
    return {fault.code for fault in check_plan(plan)} & OURS


def inside(plan):
    return next(mix for mix in plan["mixes"] if mix["before_band"])


@pytest.mark.parametrize("house", HOUSES)
def test_our_own_plans_stand(house):
    assert codes(plan_to_dict(day_of(house))) == set()


@pytest.mark.parametrize("done", ["first.3.5", "first.8.4", "first.8.12"])
def test_our_plans_of_mid_day_stand(done):
    planned = day_of(QUINCE)
    last = next(band for band in bands_of(planned) if band.id == done)
    again = replan(planned, after(planned, last.id, tub_l=5.0, tank_l=3.0))
    assert codes(plan_to_dict(again)) == set()


def test_a_batch_begun_with_the_field_nearly_done_comes_too_late(plan):
    inside(plan)["before_band"] = "first.8.18"
    assert "look-late" in codes(plan)


def test_a_first_look_that_bears_no_thirst_is_late(plan):
    late = [look for look in plan["looks"] if look["band"] == "first.8.15"]
    plan["looks"] = [*late, *[look for look in plan["looks"] if look["field"] != "first.8"]]
    assert codes(plan) == {"look-late"}


def test_a_field_begun_on_too_little_makes_its_look_late(plan):
    for look in plan["looks"]:
        look["begin_l"] *= 0.7
    assert "look-late" in codes(plan)


def test_another_lot_inside_a_field_is_named(plan):
    inside(plan)["lots"] = ["L-115"]
    assert codes(plan) == {"other-lot"}


def test_two_lots_in_one_batch_are_named(plan):
    for mix in plan["mixes"]:
        mix["lots"] = ["L-114", "L-115"]
    assert codes(plan) == {"other-lot"}


def test_another_cut_inside_a_field_is_named(plan):
    mix = inside(plan)
    mix["stain_l"], mix["water_l"] = mix["stain_l"] * 0.5, mix["water_l"] * 1.5
    assert "edited" in codes(plan)


def test_nobody_mixes_beside_a_sprayer_who_is_alone(plan):
    plan["inputs"]["crew"]["helper"] = False
    assert "look-alone" in codes(plan)


def test_two_mixes_across_a_line_without_a_leaf_are_seen(plan):
    """Field 8 meets field 7 at a saw cut: with the tub empty before it a new mix is a new shade."""
    first, second, third = (
        m for m in plan["mixes"] if m["coat"] == "first" and not m["before_band"]
    )
    used = sum(b["litres"] for f in plan["fields"][:7] for b in f["bands"])
    spare = first["stain_l"] * 2 + second["stain_l"] * 2 - used
    second["stain_l"] -= spare / 2
    second["water_l"] -= spare / 2
    third["stain_l"] += spare / 2
    third["water_l"] += spare / 2
    assert codes(plan) == {"two-shades"}


def test_a_look_at_no_band_and_one_with_wrong_litres_are_edited(plan):
    plan["looks"][0]["done_l"] += 1.0
    assert codes(plan) == {"edited"}
    plan["looks"][0]["band"] = "first.8.99"
    assert "edited" in codes(plan)


def test_a_plan_from_before_there_were_looks_still_stands(plan):
    for mix in plan["mixes"]:
        del mix["before_band"], mix["lots"]
    del plan["looks"]
    del plan["ways"]
    assert codes(plan) == set()
