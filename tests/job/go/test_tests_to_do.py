"""Which slab tests are still to be made, where, and with what care."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.job.go.jobs import GOOD, surveyed
from tests.shapes import box, outside, place
from tests.spray.hand_floors import job

from farwall.evidence import rank_words
from farwall.facts.job import Survey
from farwall.facts.slab import Choices, Hidden, MoistureTest
from farwall.floor.nouns import Room
from farwall.job.go.tests_to_do import hidden_rooms, slab_tests_to_do
from farwall.phrasebook import in_spanish

HOUSE = place(
    # 100 m² and two closets of 1 and 2 m²: 1,109 ft².
    [
        Room("hall", box(0, 0, 10, 10), "Hall"),
        Room("c2", box(10, 0, 12, 1), "Hall closet"),
        Room("c1", box(10, 1, 11, 2), "Linen closet"),
    ],
    [outside("front", ((0, 1), (0, 2)), "hall")],
)


def told(**facts):
    return {one.test: one for one in slab_tests_to_do(job(HOUSE, survey=Survey(**facts)))}


def test_counts_by_hand_for_1109_square_feet():
    """By hand: 3 + 1 for the part of a second thousand; sheets and pairs of readings for 500."""
    found = told()
    assert {name: one.count for name, one in found.items()} == {
        "meter": 1, "D4263": 3, "F1869": 4, "F2170": 4, "D4262": 6,
    }  # fmt: skip


def test_they_go_to_closets_first_the_smallest_first():
    assert hidden_rooms(job(HOUSE)) == ("c1", "c2")
    assert told()["F1869"].where == ("c1", "c2")
    assert "nothing taped to the open floor" in told()["D4263"].care


def test_what_was_made_is_not_asked_again():
    made = tuple(MoistureTest("F1869", vapour_ug_m2_s=100.0) for _ in range(4))
    found = told(moisture=(*made, MoistureTest("meter", meter="even")))
    assert "F1869" not in found
    assert "F2170" not in found
    assert "meter" not in found
    assert found["D4263"].count == 3


def test_no_hole_before_what_lies_in_the_slab_is_ruled_out():
    assert "ruled out" in told()["F2170"].care
    assert "ruled out" not in told(hidden=Hidden(False, False, False))["F2170"].care
    assert "F2170" not in told(hidden=Hidden(False, True, False))


def test_the_depth_of_a_hole_by_hand():
    """By hand: 40 % of a slab of 100 mm is 40 mm, 1.6 in."""
    assert "(40 mm, 1.6 in here)" in told(slab_thickness_m=0.1)["F2170"].how


def test_the_strictest_wait_holds_until_another_is_chosen():
    assert "read after 72 h" in told()["F2170"].how
    later = replace(job(HOUSE), choices=Choices(probe_wait_h=24))
    assert "read after 24 h" in next(o.how for o in slab_tests_to_do(later) if o.test == "F2170")


@pytest.mark.parametrize("standard", ["F1869", "F2170", "D4263", "D4262"])
def test_every_standard_is_named_with_its_source(standard):
    found = {one.test: one for one in slab_tests_to_do(surveyed(moisture=()))}[standard]
    assert f"astm-{standard.lower()}" in found.source
    assert found.rank == ("from memory" if standard == "D4263" else "published")


def test_no_floor_asks_for_no_test():
    assert slab_tests_to_do(replace(GOOD, floor=replace(GOOD.floor, rooms=()))) == ()


def test_what_a_count_leans_on_is_said_in_spanish_too():
    for one in slab_tests_to_do(surveyed(moisture=())):
        for part in rank_words(one.rank, one.source).split(", "):
            assert in_spanish(part), part
