"""What is seen of a line from the main window: worked by hand, and laws of every floor."""

from __future__ import annotations

from dataclasses import replace
from math import atan2, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import TWO_ROOMS, box, door, place

from farwall.floor.nouns import Floor, Opening, Room, Window
from farwall.floor.sight import View, main_window

HALL = Floor((Room("hall", box(0, 0, 6, 4)),), windows=(Window(((0, 0), (0, 4)), height_m=1.5),))


def view(floor):
    main = main_window(floor)
    assert main is not None
    return View(floor, main)


def row_of_two(kind, *, gap_m=0.0):
    """Two rooms side by side; the window lies in the west wall of the first."""
    rooms = [Room("a", box(0, 0, 3, 4)), Room("b", box(3 + gap_m, 0, 6, 4))]
    between = door("ab", ((3, 1), (3, 3)), "a", "b", kind=kind)
    told = place(rooms, [between]).floor
    return replace(told, windows=(Window(((0, 1.5), (0, 2.5)), room="a"),))


def test_a_line_across_the_view_is_seen_whole():
    """By hand: some place of the glass lies square before each place of the line: sine 1."""
    assert view(HALL).share(((4, 1), (4, 3))) == 1.0


def test_a_line_along_the_view_of_a_narrow_window_is_hardly_seen():
    """By hand: the window is 0.2 m wide, so the line 2 to 5 m off is met at a sine of at most
    0.08 / 1.95 = 0.04."""
    narrow = replace(HALL, windows=(Window(((0, 1.9), (0, 2.1))),))
    assert view(narrow).share(((2, 2), (5, 2))) == 0.0
    assert view(narrow).share(((4, 1.9), (4, 2.1))) == 1.0


def test_a_slanted_line_counts_as_the_sine_of_its_angle_by_hand():
    """By hand: a short line 4 m before a narrow window, at 30 degrees to the view: sine one half,
    half of it counts."""
    narrow = replace(HALL, windows=(Window(((0, 1.99), (0, 2.01))),))
    slant = ((4.0, 2.0), (4.0 + 0.0866, 2.05))
    assert sin(atan2(0.05, 0.0866)) == pytest.approx(0.5, abs=1e-3)
    assert view(narrow).share(slant) == 0.5


@pytest.mark.parametrize(("kind", "seen"), [("door", 0.0), ("cased", 1.0), ("wide", 1.0)])
def test_sight_ends_at_a_leaf_and_goes_on_through_a_frame(kind, seen):
    assert view(row_of_two(kind)).share(((5, 1.6), (5, 2.4))) == seen


def test_a_line_under_the_leaf_itself_is_in_sight():
    """A leaf that stands open shows its line; the jambs are those of the plan."""
    assert view(row_of_two("door")).share(((3, 1), (3, 3))) == 1.0


def test_a_wall_of_no_thickness_ends_sight_beside_the_opening():
    """By hand: from (0, 1.5 to 2.5) through (3, 1 to 3) nobody sees (3.2, 3.6 to 3.9)."""
    assert view(row_of_two("wide")).share(((3.2, 3.6), (3.2, 3.9))) == 0.0


def test_the_main_window_is_the_one_that_is_told():
    small = Window(((0, 3.5), (0, 5)), room="back", main=True)
    large = Window(((0, 0.5), (0, 2.5)), room="front")
    floor = replace(TWO_ROOMS.floor, windows=(large, small))
    found = main_window(floor)
    assert found is not None
    assert (found.window, found.room) == (small, "back")


def test_else_it_is_the_largest_glass_of_the_largest_room_that_has_one():
    """By hand: 2 x 1.0 is less glass than 1.2 x 2.0; the closet's 3 x 2 does not count, nor does
    the hall, which is larger and has none."""
    boxes = {"hall": (0, 0, 9, 9), "great": (9, 0, 15, 5), "closet": (15, 0, 16, 4)}
    rooms = tuple(Room(name, box(*corners)) for name, corners in boxes.items())
    low = Window(((9.5, 0), (11.5, 0)), height_m=1.0, room="great")
    high = Window(((12, 0), (13.2, 0)), height_m=2.0)
    closet = Window(((16, 0.5), (16, 3.5)), height_m=2.0)
    found = main_window(Floor(rooms, windows=(low, closet, high)))
    assert found is not None
    assert (found.window, found.room) == (high, "great")


def test_without_a_window_at_a_room_none_is_known():
    assert main_window(TWO_ROOMS.floor) is None
    stray = Window(((40, 0), (41, 0)))
    assert main_window(replace(TWO_ROOMS.floor, windows=(stray,))) is None


lines = st.tuples(
    st.tuples(st.floats(0.1, 5.9), st.floats(0.1, 3.9)),
    st.tuples(st.floats(0.1, 5.9), st.floats(0.1, 3.9)),
).filter(lambda line: abs(line[0][0] - line[1][0]) + abs(line[0][1] - line[1][1]) > 0.3)


@given(lines)
def test_sight_is_told_in_quarters_and_the_same_either_way_round(line):
    share = view(HALL).share(line)
    assert share in {0.0, 0.25, 0.5, 0.75, 1.0}
    assert view(HALL).share(line[::-1]) == pytest.approx(share, abs=0.25)


@given(lines)
def test_what_a_leaf_hides_is_never_seen_better_than_without_the_leaf(line):
    shut, open_ = row_of_two("door"), row_of_two("wide")
    assert view(shut).share(line) <= view(open_).share(line)
    assert isinstance(shut.openings[0], Opening)
