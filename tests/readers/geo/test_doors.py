"""Doors and windows drawn as areas, lines and points on outlines."""

from math import cos, dist, pi, sin

import pytest
from shapely import box

from farwall.readers.geo.doors import Bounds, Placed, placed
from farwall.readers.geo.things import Thing
from farwall.readers.told.nouns import ToldSpace

ROOMS = [
    ToldSpace("a", box(0, 0, 4, 3), storey="level-0"),
    ToldSpace("b", box(4, 0, 8, 3), storey="level-0"),
    ToldSpace("up", box(0, 0, 8, 3), storey="level-1"),
]


def place(*things: Thing, storey: str = "level-0", bounds: Bounds | None = None) -> Placed:
    return placed([(t, storey) for t in things], ROOMS, {storey: bounds} if bounds else {})


def test_a_point_on_an_outline_becomes_a_line_along_it_as_wide_as_told() -> None:
    (way,) = place(Thing("door", "door", "d", point=(4.0, 1.5), width_m=0.8)).openings
    assert way.seam is not None
    assert sorted(way.seam) == [pytest.approx((4, 1.1)), pytest.approx((4, 1.9))]
    assert (way.width_m, way.leaf, way.storey) == (0.8, True, "level-0")


def test_a_point_near_a_corner_keeps_within_its_wall() -> None:
    (way,) = place(Thing("door", "door", point=(4.0, 0.1), width_m=0.8)).openings
    assert way.seam is not None
    assert sorted(way.seam) == [pytest.approx((4, 0)), pytest.approx((4, 0.8))]


def test_a_width_that_is_not_told_is_the_usual_one_and_is_listed() -> None:
    found = place(Thing("door", "door", "d7", point=(4.0, 1.5)))
    assert found.openings[0].width_m == 0.9
    assert found.unmeasured == ["d7"]


def test_a_point_at_no_outline_is_adrift() -> None:
    found = place(Thing("door", "door", point=(2.0, 1.5)))
    assert (found.openings, len(found.adrift)) == ([], 1)


def test_a_line_is_its_own_seam() -> None:
    (way,) = place(Thing("door", "door", line=((4, 1), (4, 1.9)))).openings
    assert way.seam == ((4, 1), (4, 1.9))
    assert way.id == "door-1"


def test_windows_have_a_line_and_a_storey() -> None:
    ring = ((1.0, -0.2), (2.0, -0.2), (2.0, 0.0), (1.0, 0.0), (1.0, -0.2))
    (window,) = place(Thing("window", "window", rings=(ring,)), storey="level-1").windows
    assert dist(*window.line) == pytest.approx(1)
    assert window.storey == "level-1"


def test_a_door_at_a_shaft_or_deep_in_the_house_is_no_way_out() -> None:
    door = Thing("door", "door", line=((4, 1), (4, 1.9)))
    shaft = Bounds(shafts=(box(4.2, 0, 6, 3),))
    deep = Bounds(outlines=(box(-5, -5, 15, 8),))
    edge = Bounds(outlines=(box(-5, -5, 4.2, 8),))
    assert place(door, bounds=shaft).openings[0].said_outside is False
    assert place(door, bounds=deep).openings[0].said_outside is False
    assert place(door, bounds=edge).openings[0].said_outside is None
    entrance = Thing("door", "entrance", line=((4, 1), (4, 1.9)), outside=True)
    assert place(entrance, bounds=edge).openings[0].said_outside is True


def test_a_bent_window_is_the_chord_between_its_ends() -> None:
    outer = [(3 * cos(k * pi / 20), 3 * sin(k * pi / 20)) for k in range(11)]
    inner = [(2.8 * cos(k * pi / 20), 2.8 * sin(k * pi / 20)) for k in range(10, -1, -1)]
    ring = (*outer, *inner, outer[0])
    (window,) = place(Thing("window", "window", rings=(ring,))).windows
    assert sorted(window.line) == [pytest.approx((0, 3)), pytest.approx((3, 0))]
