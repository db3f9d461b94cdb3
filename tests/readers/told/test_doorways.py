"""Lines of openings that are drawn as areas or faces."""

from math import dist

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import box
from shapely.affinity import rotate

from farwall.readers.told.doorways import farthest, middle_line

ROOMS = [box(0, 0, 4, 3), box(4.2, 0, 8, 3)]


def test_a_door_in_a_wall_lies_along_the_wall() -> None:
    line = middle_line(box(4, 1, 4.2, 1.9), ROOMS)
    assert sorted(line) == [pytest.approx((4.1, 1)), pytest.approx((4.1, 1.9))]


def test_a_door_deeper_than_wide_still_lies_across_the_way() -> None:
    rooms = [box(0, 0, 4, 3), box(5.2, 0, 8, 3)]
    line = middle_line(box(4, 1, 5.2, 1.8), rooms)
    assert dist(*line) == pytest.approx(0.8)
    assert [x for x, _ in line] == pytest.approx([4.6, 4.6])


def test_without_rooms_the_longer_middle_is_taken() -> None:
    assert dist(*middle_line(box(0, 0, 0.9, 0.2), [])) == pytest.approx(0.9)


@given(st.floats(0, 360))
def test_the_width_is_the_same_in_any_direction(angle: float) -> None:
    turned = [rotate(shape, angle, origin=(0, 0)) for shape in [box(4, 1, 4.2, 1.9), *ROOMS]]
    assert dist(*middle_line(turned[0], turned[1:])) == pytest.approx(0.9)


def test_a_sliver_gives_a_line_too() -> None:
    flat = shapely.Polygon([(0, 0), (1, 0), (1, 1e-9), (0, 1e-9)])
    assert dist(*middle_line(flat, ROOMS)) == pytest.approx(1)


def test_the_farthest_points_of_a_face() -> None:
    assert farthest([(0, 0), (2, 0), (2, 0), (1, 0)]) == ((0, 0), (2, 0))
    assert farthest([(1, 1), (1, 1)]) is None
    assert farthest([]) is None


@given(st.lists(st.tuples(st.floats(-50, 50), st.floats(-50, 50)), min_size=2, max_size=90))
def test_no_two_points_are_farther_apart(points: list[tuple[float, float]]) -> None:
    found = farthest(points)
    most = max(dist(a, b) for a in points for b in points)
    assert (dist(*found) if found else 0.0) == pytest.approx(most, rel=1e-6, abs=2e-6)
