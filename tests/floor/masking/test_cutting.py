"""Straight edges cut by spans."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.floor.masking.cutting import Piece, cut, faced, on_line, turn_deg

EDGE = Piece("wall", "", (0.0, 0.0), (4.0, 0.0))


def test_a_span_in_the_middle_leaves_a_part_at_either_side_by_hand():
    parts = cut(EDGE, [(1.0, 1.8, "mouth", "d")])
    assert [(one.kind, round(one.length_m, 9)) for one in parts] == [
        ("wall", 1.0), ("mouth", 0.8), ("wall", 2.2),
    ]  # fmt: skip


def test_where_two_spans_lie_on_each_other_the_first_holds():
    parts = cut(EDGE, [(1.0, 2.0, "mouth", "d"), (1.5, 3.0, "mouth", "e")])
    assert [(one.of, round(one.length_m, 9)) for one in parts] == [
        ("", 1.0), ("d", 1.0), ("e", 1.0), ("", 1.0),
    ]  # fmt: skip


@given(st.lists(st.tuples(st.floats(-1, 5), st.floats(0, 3), st.sampled_from("abc")), max_size=6))
def test_the_parts_are_the_whole_and_follow_each_other(rows):
    parts = cut(EDGE, [(low, low + long, "mouth", of) for low, long, of in rows])
    assert math.fsum(one.length_m for one in parts) == pytest.approx(EDGE.length_m, abs=1e-9)
    assert [one.start for one in parts[1:]] == [one.end for one in parts[:-1]]
    assert (parts[0].start, parts[-1].end) == (EDGE.start, EDGE.end)


@pytest.mark.parametrize(
    ("line", "found"),
    [
        (((1.0, 0.001), (2.0, 0.001)), (1.0, 2.0)),
        (((-1.0, 0.0), (2.0, 0.0)), (0.0, 2.0)),
        (((1.0, 0.01), (2.0, 0.01)), None),
        (((5.0, 0.0), (6.0, 0.0)), None),
        (((1.0, 0.0), (1.0, 1.0)), None),
    ],
)
def test_a_line_lies_on_an_edge_only_along_it(line, found):
    assert on_line(EDGE, line) == (found if found is None else pytest.approx(found))


def test_an_edge_faces_another_only_across_a_narrow_gap_of_floor():
    assert faced(EDGE, Piece("fixture", "0", (3.0, 0.02), (1.0, 0.02))) == (1.0, 3.0)
    assert faced(EDGE, Piece("fixture", "0", (3.0, 0.2), (1.0, 0.2))) is None
    assert faced(EDGE, Piece("fixture", "0", (3.0, -0.02), (1.0, -0.02))) is None
    assert faced(EDGE, Piece("fixture", "0", (1.0, 0.02), (3.0, 0.02))) is None


def test_a_turn_to_the_left_is_positive():
    up = Piece("wall", "", (4.0, 0.0), (4.0, 2.0))
    assert turn_deg(EDGE, up) == pytest.approx(90)
    assert turn_deg(up, EDGE) == pytest.approx(-90)
