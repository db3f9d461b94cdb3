"""What hides a seam: a leaf, a frame, a saw cut, and only where the stop line lies on it."""

from types import SimpleNamespace

import pytest
from shapely import LineString

from farwall.spray.check.stop_lines import problem_of

DOORWAY = LineString([(0, 0), (1, 0)])
OFF = LineString([(0, 0.2), (1, 0.2)])


def house(kind):
    opening = SimpleNamespace(id="d", kind=kind, line=DOORWAY)
    cut = SimpleNamespace(id="cut", line=DOORWAY)
    return SimpleNamespace(openings=[opening], saw_cuts=[cut, SimpleNamespace(id="", line=OFF)])


def problem(kind="door", *, name="d", told="door", line=DOORWAY):
    return problem_of(SimpleNamespace(id=name, kind=told, line=line), house(kind))


@pytest.mark.parametrize("kind", ["door", "cased", "outside"])
def test_a_leaf_or_a_frame_hides_a_seam(kind):
    assert problem(kind) == ""


def test_a_wide_opening_hides_none_be_it_the_house_or_the_plan_that_says_so():
    assert "no leaf and no frame" in problem("wide")
    assert "no leaf and no frame" in problem("door", told="wide")


def test_a_stop_line_lies_on_its_opening_or_saw_cut_by_hand():
    """By hand: 0.2 m beside it all of its metre lies in open floor."""
    assert problem(name="cut", told="saw-cut") == ""
    assert problem(line=OFF).startswith("1.00 m of it lies in open floor, away from opening d")
    assert "away from saw cut cut" in problem(name="cut", told="saw-cut", line=OFF)


@pytest.mark.parametrize("name", ["elsewhere", ""])
def test_a_name_that_the_floor_does_not_know_hides_nothing(name):
    assert "neither an opening nor a saw cut" in problem(name=name, line=OFF)
