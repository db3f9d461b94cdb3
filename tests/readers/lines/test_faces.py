"""Breadth of a face: that of the widest circle inside, whichever way it was found."""

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.lines.bounds import line, lines_of
from farwall.readers.lines.faces import breadth_m
from farwall.readers.lines.sheet import Role, Stroke

ELL = shapely.Polygon([(0, 0), (0.9, 0), (0.9, 0.1), (0.1, 0.1), (0.1, 0.9), (0, 0.9)])


@given(
    long=st.floats(0.05, 30.0), narrow=st.floats(0.02, 1.0), turned_deg=st.floats(0.0, 180.0)
)  # fmt: skip
def test_a_rectangle_is_as_broad_as_its_short_side(long, narrow, turned_deg):
    shape = shapely.affinity.rotate(shapely.box(0, 0, long, narrow), turned_deg)
    found = breadth_m(shape)
    assert found <= min(long, narrow) * 2 + 1e-6  # the rough figure for what is very thin or broad
    if 0.1 < min(long, narrow) < 1.0 and max(long, narrow) < 1.5:
        assert found == pytest.approx(min(long, narrow), rel=1e-4)


def test_what_is_no_rectangle_is_searched():
    # By hand: the circle in the corner of the ell touches its two outer sides and the inner
    # corner at (0.1, 0.1): r = 0.1 * sqrt(2) / (1 + sqrt(2)).
    assert breadth_m(ELL) == pytest.approx(2 * 0.1 * 2**0.5 / (1 + 2**0.5), abs=0.005)


def test_lines_made_at_once_are_those_made_one_by_one():
    strokes = [Stroke((0, 0), (1, n), "WALL", Role.WALL) for n in range(3)]
    assert [one.wkt for one in lines_of(strokes)] == [line(one).wkt for one in strokes]
    assert lines_of([]) == []
