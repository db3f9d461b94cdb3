"""Stretches that two outlines share."""

import pytest
import shapely
from shapely import box

from farwall.readers.indoorgml.touch import shared_stretches


def test_a_shared_wall_is_a_stretch_no_longer_than_the_shorter_side() -> None:
    (line,) = shared_stretches(box(0, 0, 4, 3), box(4, 1, 8, 2))
    assert sorted(line) == [(4, 1), (4, 2)]
    (back,) = shared_stretches(box(4, 1, 8, 2), box(0, 0, 4, 3))
    assert sorted(back) == [(4, 1), (4, 2)]


def test_a_gap_of_millimetres_is_closed_and_one_of_a_wall_is_not() -> None:
    (line,) = shared_stretches(box(0, 0, 4, 3), box(4.004, 1, 8, 2))
    assert [x for x, _ in line] == pytest.approx([4, 4])
    assert shared_stretches(box(0, 0, 4, 3), box(4.1, 1, 8, 2)) == []


def test_corners_and_short_stretches_are_none() -> None:
    assert shared_stretches(box(0, 0, 4, 3), box(4, 3, 8, 6)) == []
    assert shared_stretches(box(0, 0, 4, 3), box(4, 2.8, 8, 6)) == []
    assert shared_stretches(box(0, 0, 4, 3), box(4, 2.6, 8, 6)) != []


def test_an_outline_round_a_hole_shares_the_holes_sides() -> None:
    ring = shapely.Polygon(box(0, 0, 9, 9).exterior, [box(3, 3, 6, 6).exterior])
    assert len(shared_stretches(ring, box(3, 3, 6, 6))) == 4
