"""Patches of sun: sizes worked by hand, and what holds for every window and sun."""

from math import cos, radians, sin, tan

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.patches import Glazing, by_room, glazing_at, ground_of, lit, whole_patches
from farwall.air.sun import LOWEST_DEG

SOUTH = Glazing(((2.0, 0.0), (4.0, 0.0)), (0.0, -1.0), 1.0, 1.0)
"""2 m wide, 1 m high, sill at 1 m, in the south wall (y = 0) of a room to its north."""


def box(west, south, east, north):
    return shapely.box(west, south, east, north)


def one(glazing, high, bearing):
    corners = whole_patches(glazing, np.array([high]), np.array([bearing]))[0]
    return None if np.isnan(corners).any() else shapely.Polygon(corners)


def light(glazing, ground, high, bearing):
    return lit(glazing, ground, np.array([high]), np.array([bearing]))[0]


def test_a_south_window_at_noon_lies_as_deep_as_its_height_over_the_tangent_by_hand():
    """By hand: at 45° light of 1 m to 2 m height falls 1 m to 2 m deep; at 30° by 1.732 as far."""
    straight = one(SOUTH, 45.0, 180.0).symmetric_difference(box(2, 1, 4, 2))
    assert straight.area == pytest.approx(0, abs=1e-9)
    lower = box(2, 3**0.5, 4, 2 * 3**0.5)
    assert one(SOUTH, 30.0, 180.0).symmetric_difference(lower).area == pytest.approx(0, abs=1e-9)


def test_from_the_south_west_it_slants_to_the_east_by_hand():
    """By hand: sun at 225°, 45° high: a metre of height moves light 0.7071 m north and east."""
    step = 0.5**0.5
    corners = [
        (2 + step, step),
        (4 + step, step),
        (4 + 2 * step, 2 * step),
        (2 + 2 * step, 2 * step),
    ]
    apart = one(SOUTH, 45.0, 225.0).symmetric_difference(shapely.Polygon(corners))
    assert apart.area == pytest.approx(0, abs=1e-9)


def test_the_depth_of_the_wall_takes_off_the_far_end_and_one_side_by_hand():
    """By hand: wall 0.2 m, sun at 225°, 45° high. Light must pass the head of the outer face:
    0.2 m less of depth; and slanting by 0.2 m within the wall it loses that much width."""
    deep = Glazing(SOUTH.line, SOUTH.outward, 1.0, 1.0, reveal_m=0.2)
    step = 0.5**0.5
    far = 2 * step - 0.2
    corners = [(2 + step, step), (3.8 + step, step), (3.8 + far, far), (2 + far, far)]
    found = one(deep, 45.0, 225.0)
    assert found.area == pytest.approx(1.8 * (far - step))
    mirrored = one(deep, 45.0, 135.0)
    assert mirrored.area == pytest.approx(found.area)
    lost = shapely.Polygon(corners).symmetric_difference(found).area
    assert min(lost, shapely.Polygon([(x + 0.2, y) for x, y in corners]).symmetric_difference(
        found).area) == pytest.approx(0, abs=1e-9)  # fmt: skip


@given(st.floats(LOWEST_DEG, 85), st.floats(91.5, 268.5), st.floats(0.3, 4), st.floats(0.3, 3))
def test_its_area_is_that_of_the_window_times_cosine_over_tangent(high, bearing, width, height):
    glazing = Glazing(((0.0, 0.0), (width, 0.0)), (0.0, -1.0), 0.5, height)
    facing = cos(radians(bearing - 180))
    area = width * height * facing / tan(radians(high))
    assert one(glazing, high, bearing).area == pytest.approx(area, rel=1e-6)


@given(st.floats(LOWEST_DEG, 85), st.floats(0, 360), st.floats(0, 0.4))
def test_a_deeper_wall_never_makes_it_larger(high, bearing, reveal):
    deep = one(Glazing(SOUTH.line, SOUTH.outward, 1.0, 1.0, reveal), high, bearing)
    thin = one(SOUTH, high, bearing)
    assert deep is None or deep.difference(thin.buffer(1e-6)).area < 1e-9


@given(st.floats(-90, 90), st.floats(0, 360))
def test_no_sun_below_the_horizon_or_behind_the_wall(high, bearing):
    behind = cos(radians(bearing - 180)) <= 0
    if high < LOWEST_DEG or behind:
        assert one(SOUTH, high, bearing) is None


ROOM = box(0, 0, 6, 5)


@given(st.floats(-10, 90), st.floats(0, 360))
def test_no_patch_lies_outside_the_rooms(high, bearing):
    ground = ground_of({"a": ROOM}, [])
    for parts in by_room(light(SOUTH, ground, high, bearing), ground).values():
        assert all(part.difference(ROOM.buffer(1e-9)).area < 1e-9 for part in parts)


def test_the_inner_corner_of_an_ell_throws_a_shadow_by_hand():
    """By hand: an ell whose west arm is 4 m deep, its east arm, x from 3 m, only 1.5 m. Sun due
    south at 30°: light of 1.73 m to 3.46 m depth falls on the west arm alone, x from 2 to 3 m."""
    ell = shapely.Polygon([(0, 0), (6, 0), (6, 1.5), (3, 1.5), (3, 4), (0, 4)])
    ground = ground_of({"a": ell}, [])
    parts = by_room(light(SOUTH, ground, 30.0, 180.0), ground)["a"]
    assert sum(part.area for part in parts) == pytest.approx(3**0.5)


def test_a_pier_in_mid_room_shades_what_lies_behind_it_by_hand():
    """By hand: a pier 1 m wide at 0.5 m to 0.8 m depth takes half of a patch 2 m wide."""
    pier = box(2.5, 0.5, 3.5, 0.8)
    ground = ground_of({"a": ROOM.difference(pier)}, [])
    parts = by_room(light(SOUTH, ground, 45.0, 180.0), ground)["a"]
    assert sum(part.area for part in parts) == pytest.approx(1.0)


def test_light_goes_through_a_doorway_and_not_through_the_wall_by_hand():
    """By hand: a wall at 1.2 m depth with a doorway from x = 3 to 3.8: light of 1 m to 2 m depth
    leaves 2 × 0.2 m² before it and 0.8 × 0.8 m² behind."""
    rooms = {"front": box(0, 0, 6, 1.2), "back": box(0, 1.2, 6, 5)}
    shut = ground_of(rooms, [])
    ajar = ground_of(rooms, [((3.0, 1.2), (3.8, 1.2))])
    found = by_room(light(SOUTH, ajar, 45.0, 180.0), ajar)
    assert sum(part.area for part in found["front"]) == pytest.approx(0.4)
    assert sum(part.area for part in found["back"]) == pytest.approx(0.64, rel=1e-6)
    assert "back" not in by_room(light(SOUTH, shut, 45.0, 180.0), shut)


@given(st.floats(0, 360))
def test_a_turned_house_under_a_turned_sun_has_the_same_patch(turn):
    """All turned clockwise by the same angle."""
    sine, cosine = sin(radians(turn)), cos(radians(turn))

    def turned(point):
        return (point[0] * cosine + point[1] * sine, -point[0] * sine + point[1] * cosine)

    line = (turned(SOUTH.line[0]), turned(SOUTH.line[1]))
    window = Glazing(line, turned(SOUTH.outward), 1.0, 1.0, 0.2)
    straight = one(Glazing(SOUTH.line, SOUTH.outward, 1.0, 1.0, 0.2), 40.0, 200.0)
    assert one(window, 40.0, 200.0 + turn).area == pytest.approx(straight.area)


def test_a_line_in_the_middle_of_the_wall_is_brought_to_its_inner_face():
    drawn = glazing_at(((4.0, -0.1), (2.0, -0.1)), ROOM, sill_m=1.0, height_m=1.0, reveal_m=0.05)
    assert drawn.outward == pytest.approx((0.0, -1.0))
    assert sorted(drawn.line) == [pytest.approx((2.0, 0.0)), pytest.approx((4.0, 0.0))]
    assert drawn.reveal_m == pytest.approx(0.1)
