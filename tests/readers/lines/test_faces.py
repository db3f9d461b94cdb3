"""Breadth of a face: that of the widest circle inside, whichever way it was found."""

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.lines.bounds import line, lines_of
from farwall.readers.lines.faces import Nets, breadth_m, cut_faces, noded
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


def test_the_same_lines_are_cut_once_and_others_anew():
    lines = lines_of(
        [Stroke((0, 0), (2, 2), "W", Role.WALL), Stroke((0, 2), (2, 0), "W", Role.WALL)]
    )
    nets = Nets()
    net = nets.of(lines)
    assert nets.of([shapely.LineString(one.coords) for one in lines]) is net
    assert len(shapely.get_parts(net)) == 4
    assert len(shapely.get_parts(nets.of(lines[:1]))) == 1
    assert nets.of([]).is_empty


@given(st.floats(0.1, 0.7), st.integers(0, 6))
def test_walls_and_rooms_are_told_apart_as_by_the_widest_circle(deep, bays):
    """A wall with buttresses, which is no rectangle: of it no more is asked than what it is."""
    body = shapely.union_all(
        [
            shapely.box(0, 0, 8, deep),
            *(shapely.box(n, deep, n + 0.1, deep + 0.1) for n in range(bays)),
        ]
    )
    (face,) = cut_faces(noded([shapely.LineString(body.exterior.coords)]))
    exact = breadth_m(body)
    assert (face.breadth_m >= 0.45) == (exact >= 0.45)
    assert (face.breadth_m < 0.06) == (exact < 0.06)
    assert face.breadth_m <= exact + 0.005
