"""The two bounds of a swept field, by hand on rectangles, and below any front that is found."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from shapely import box
from shapely.affinity import rotate
from tests.shapes import AWKWARD
from tests.spray.hand_floors import LARGE_HALL, ROUND, hall, row
from tests.spray.sweeping import sweeper, swept, way_out
from tests.strategies.houses import house

from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from
from farwall.spray.bound import front_of_rectangle_m, least_front_m, rectangle_m
from farwall.spray.building import build_world
from farwall.spray.crowding import exit_last_m, span_m
from farwall.spray.fronts import levelled_front, plain_fronts
from farwall.spray.lattice import main_angle


def rectangle(one, other, depth_m=1.0):
    return float(front_of_rectangle_m(np.array([one]), np.array([other]), depth_m)[0])


@pytest.mark.parametrize(
    ("one", "other", "front_m"),
    [
        (4.0, 3.0, 3.0),
        (5.0, 5.0, 5.0),
        (9.0, 1.2, 1.2),
        (1.2, 1.0, 0.9251),
        (1.0, 1.0, 0.8408),
        (0.3, 0.3, 0.0),
    ],
)
def test_the_front_of_a_rectangle_by_hand(one, other, front_m):
    """By hand, bands of 1 m: t = (1 - l + 2 b / π) / 2, and b - π t² / 2 where t is above 0.

    1.2 by 1: t = (1 - 1.2 + 0.6366) / 2 = 0.2183 and 1 - π x 0.0477 / 2 = 0.9251; 1 by 1:
    t = 0.3183 and 0.8408. In 0.3 by 0.3 t = 0.4455 is more than 2 b / π = 0.191: one band may be
    all of it, and nothing is known.
    """
    assert rectangle(one, other) == pytest.approx(front_m, abs=1e-4)
    assert rectangle(other, one) == rectangle(one, other)


def test_the_front_of_a_rectangle_for_thinner_bands_by_hand():
    """By hand: 1 by 1 in bands of 0.5 m: t = (0.5 - 1 + 0.6366) / 2 = 0.0683 and
    1 - π x 0.004665 / (2 x 0.5) = 0.9853."""
    assert rectangle(1.0, 1.0, 0.5) == pytest.approx(0.9853, abs=1e-4)


@given(st.floats(0.2, 9.0), st.floats(0.2, 9.0), st.floats(0.3, 1.5))
def test_no_rectangle_has_a_front_longer_than_its_shorter_side_nor_than_all_of_it(a, b, depth_m):
    found = rectangle(a, b, depth_m)
    assert 0.0 <= found <= min(a, b)
    assert found * depth_m <= a * b + 1e-9, "all of it in one band"


@pytest.mark.parametrize(
    ("floor", "side"),
    [
        (box(0, 0, 4, 3), 3.0),
        (box(0, 0, 5, 5), 5.0),
        (box(0, 0, 9, 1.2), 1.2),
        (shapely.Polygon([(0, 0), (6, 0), (6, 2), (2, 2), (2, 6), (0, 6)]), 2.0),
        (shapely.Polygon(box(0, 0, 6, 6).exterior.coords, [box(2, 2, 4, 4).exterior.coords]), 2.0),
    ],
    ids=["4 x 3", "5 x 5", "corridor", "ell", "ring"],
)
@pytest.mark.parametrize("turn", [0.0, 17.0, 90.0])
def test_the_best_rectangle_inside_by_hand(floor, side, turn):
    """By hand: the shorter side of a rectangle, the width of an ell or of a ring.

    What is found is inside, so it is never larger; squares of 0.1 m or a 24th of the floor's
    shorter way may miss two steps.
    """
    x0, y0, x1, y1 = floor.bounds
    step = max(0.1, min(x1 - x0, y1 - y0) / 24)
    there = rotate(floor, turn, origin=(0, 0))
    found = rectangle_m(there, main_angle(there), 1.0)
    assert side - 2 * step - 1e-9 <= found <= side + 1e-9


def growth_by_discs(width, deep, door, depth_m):
    """The bound of a room without inner corners by true discs about places on the door's line.

    Another way than the source's: whole discs cut to the room, radii 2 cm apart.
    """
    room = shapely.box(0, 0, width, deep)
    (x0, y0), (x1, y1) = door
    spots = [
        shapely.Point(x0 + share * (x1 - x0), y0 + share * (y1 - y0))
        for share in np.linspace(0, 1, 11)
    ]
    radii = np.arange(depth_m, np.hypot(width, deep) + 0.02, 0.02)
    spans = span_m(radii, depth_m)
    return min(
        max(
            spot.buffer(radius, 64).intersection(room).area / span
            for radius, span in zip(radii, spans, strict=True)
        )
        for spot in spots
    )


@pytest.mark.parametrize("finer", [False, True])
def test_the_growth_of_a_hall_by_hand(finer):
    """By hand: 2 m wide, 8 m long, its whole end the way out. From any place of it all 16 m² lie
    within sqrt(8² + 2²) m at most. The lattice leaves out up to a quarter of a metre."""
    found = exit_last_m(sweeper(hall(8, 2)).field.ground, 1.0, finer=finer)
    assert 16 / (np.hypot(8, 2) + 0.25) <= found <= 2.0


def test_the_growth_around_a_narrow_door_is_that_of_true_discs():
    """8 m by 8 m, a door of 1 m in the middle of a wall; walks on the lattice are a little long,
    on the finer one less."""
    here = sweeper(hall(8, 8, door_m=1.0)).field.ground
    true = growth_by_discs(8, 8, [(0, 3.5), (0, 4.5)], 1.0)
    rough, fine = (exit_last_m(here, 1.0, finer=finer) for finer in (False, True))
    assert 0.9 * true <= rough <= fine <= true * (1 + 1e-3)


def test_the_larger_of_the_bounds_is_told():
    """A long hall is bound by its width, a wide room with its door in the long wall by growth."""
    long, wide = swept(hall(8, 2)), swept(LARGE_HALL)
    assert long.bound_m == least_front_m(long.ground, 1.0) == pytest.approx(2.0, abs=0.002)
    assert long.bound_m > exit_last_m(long.ground, 1.0)
    assert wide.bound_m >= exit_last_m(wide.ground, 1.0)


def fronts_of(made):
    plain = plain_fronts(made.field.ground)
    return [*plain, levelled_front(made.field.ground, plain)]


def assert_none_undercuts(made, band_m):
    bound_m = least_front_m(made.field.ground, band_m)
    for front in fronts_of(made):
        assert front.equivalent_m >= bound_m * (1 - 1e-6), front.name


FLOORS = {"large hall": LARGE_HALL, "corridor": hall(9, 1.2), "row": row(3, 4, 2), **AWKWARD}


@pytest.mark.parametrize("name", FLOORS)
@pytest.mark.parametrize("band_m", [0.6, 1.0])
def test_no_front_undercuts_the_bound_plain_or_levelled(name, band_m):
    assert_none_undercuts(sweeper(FLOORS[name], tools=replace(ROUND, band_m=band_m)), band_m)


@settings(max_examples=15)
@given(st.integers(0, 5000), st.sampled_from([0.6, 0.9, 1.2]))
@example(7100, 1.2)  # a corridor left in the middle of its side: its far end is not last
@example(7028, 0.9)
def test_no_front_of_any_house_undercuts_the_bound(seed, band_m):
    job = job_from(house(seed), about="house")
    of = build_world(join_thresholds(job.floor), job.exits)
    leave = way_out(of)
    assume(leave.chord.length >= 0.6)  # a saw cut may leave less of a doorway than a body needs
    tools = replace(ROUND, band_m=band_m)
    assert_none_undercuts(sweeper(of, leave.a, by=leave, tools=tools), band_m)


@settings(max_examples=12)
@given(st.floats(1.2, 8.0), st.floats(1.2, 8.0), st.floats(0.2, 1.0))
def test_a_rectangle_is_never_bound_by_more_than_what_lies_behind_any_line(length, width, share):
    """A straight front along the longer way is an upper bound of the least front of a rectangle
    whose whole end is the way out: the bound of such a hall is at most its width. A narrower way
    out leaves no shorter front."""
    wide = swept(hall(length, width))
    if length > width:
        assert wide.bound_m <= width + 1e-6
    narrow = swept(hall(length, width, door_m=0.6 + share * (width - 0.6)))
    assert narrow.bound_m >= wide.bound_m - 1e-6
