"""Patches on the floor drawing and on the sheet: drawn, named, told with the line to sign."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.job.test_patches import DRY, STAINED, TRENCH, told
from tests.papers.pictures import outside, overlaps, parsed, words
from tests.shapes import box

from farwall.facts.slab import Patch
from farwall.job.plan_job import plan_job
from farwall.papers.drawing.patch_marks import EDGE_DASH
from farwall.papers.floor_drawing import field_svg, floor_svg
from farwall.papers.run_sheet.before_page import _patch_row
from farwall.papers.run_sheet.field_points import _in_sight

SMALL = Patch("p2", "front", polygon=box(2.2, 1.2, 2.5, 1.4))
LEFT = Patch("p3", "front", polygon=box(0.4, 1.4, 1.6, 2.2), decision=DRY)
PLAN = plan_job(told(TRENCH, SMALL, LEFT))


def dashed(svg):
    return [one for one in parsed(svg).iter() if one.get("stroke-dasharray") == EDGE_DASH]


def test_each_patch_that_is_stained_has_its_edge_and_its_name_by_hand():
    """By hand: a trench and a small patch are stained; the third is left dry and drawn as such."""
    svg = floor_svg(PLAN)
    assert len(dashed(svg)) == 2
    said = " ".join(one.text for one in words(svg))
    for name in ("trench t", "patch p2", "kept dry"):
        assert name in said


@pytest.mark.parametrize(("width", "height"), [(960.0, 680.0), (532.0, 300.0), (340.0, 190.0)])
def test_no_name_of_a_patch_lies_on_another_word_or_sticks_out(width, height):
    pictures = [floor_svg(PLAN, width=width, height=height)]
    pictures += [field_svg(PLAN, one, width=width, height=height) for one in PLAN.fields]
    for svg in pictures:
        found = words(svg)
        assert overlaps(found) == []
        assert outside(found, svg) == []


def test_a_field_shows_the_patches_on_its_own_floor_alone():
    counts = {one.rooms: len(dashed(field_svg(PLAN, one))) for one in PLAN.fields}
    assert counts == {("back",): 1, ("front",): 1}


def test_without_patches_nothing_is_drawn():
    assert dashed(floor_svg(plan_job(told()))) == []


def test_the_sheet_says_what_is_done_and_what_the_owner_signs():
    name, what, disclosure = _patch_row(PLAN, PLAN.patches[0])
    assert name == "Trench t, Back room."
    assert "Stained along" in what
    assert "3 s" in what
    assert "will not match" in disclosure
    assert PLAN.patches[0].decision == STAINED


def test_a_field_says_which_of_its_stops_the_main_window_looks_at():
    """By hand: the back room stops at the leaf alone, the front room there and at its sill."""
    assert {_in_sight(one) for one in PLAN.fields} == {""}
    for field in PLAN.fields:
        seen = tuple(replace(one, seen=one.id == "between") for one in field.stop_lines)
        told_of = _in_sight(replace(field, stop_lines=seen))
        assert told_of == " It lies in sight of the main window."
    two = replace(seen[0], id="ab", kind="door", seen=False)
    both = replace(PLAN.fields[0], stop_lines=(*seen, two))
    assert _in_sight(both) == " One of them lies in sight of the main window."
