"""From clicks to the plane of the floor."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from tests.floor_photos import SIZE, camera, pairs, seen_at

from farwall.errors import Refused
from farwall.readers.floor_photo.nouns import Pair
from farwall.readers.floor_photo.plane import MOST_OFF_MM, plane_of


def test_four_true_points_give_the_plane_back():
    matrix = camera()
    plane = plane_of(pairs(matrix)[:4], SIZE)
    place = np.array([[3.1, 2.7], [2.2, 1.4]])
    seen, depth = plane.photo_places(place)
    assert seen[0] == pytest.approx(seen_at(matrix, (3.1, 2.7)), abs=1e-5)
    assert (depth > 0).all()
    assert plane.floor_places(seen) == pytest.approx(place, abs=1e-8)
    assert max(plane.off_mm) < 1e-4


@given(x=st.floats(1, 5), y=st.floats(-1.5, 0), high=st.floats(1.2, 2.5), focal=st.floats(0.5, 1.0))
def test_any_camera_above_the_floor_is_found_from_all_points(x, y, high, focal):
    matrix = camera((x, y, high), (3.0, 2.0), focal)
    told = pairs(matrix)
    assume(all(0 <= px <= SIZE[0] and 0 <= py <= SIZE[1] for px, py in (p.photo for p in told)))
    plane = plane_of(told, SIZE)
    assert max(plane.off_mm) < 1e-3


def test_the_error_foreseen_from_the_clicks_is_the_error_that_comes():
    """Clicks that err as the file says they do: 300 draws, both ways together."""
    from farwall.readers.floor_photo.plane import CLICK_SHARE

    matrix, place = camera(), np.array([[3.5, 3.0]])
    told = plane_of(pairs(matrix)[:4], SIZE).place_error_mm(place)[0]
    off = []
    for seed in range(300):
        plane = plane_of(pairs(matrix, CLICK_SHARE * max(SIZE), seed)[:4], SIZE)
        off.append(plane.floor_places(np.array([seen_at(matrix, (3.5, 3.0))]))[0] - place[0])
    came = 1000 * np.sqrt((np.array(off) ** 2).sum(axis=1).mean())
    assert told == pytest.approx(came, rel=0.15)  # 300 draws know a spread to 4 %; and bends


def test_points_farther_apart_make_the_place_surer():
    matrix = camera()
    corners = {"A": (2.8, 1.8), "B": (3.2, 1.8), "C": (3.2, 2.2), "D": (2.8, 2.2)}
    near = [Pair(seen_at(matrix, place), place, name) for name, place in corners.items()]
    place = np.array([[3.5, 3.0]])
    wide = plane_of(pairs(matrix)[:4], SIZE).place_error_mm(place)[0]
    assert plane_of(near, SIZE).place_error_mm(place)[0] > 5 * wide


def test_points_nearly_on_a_line_fix_nothing():
    matrix = camera()
    row = [Pair(seen_at(matrix, p), p) for p in ((2, 1), (2.7, 1.01), (3.3, 1.0), (3, 3))]
    with pytest.raises(Refused, match="on a line"):
        plane_of(row, SIZE)


def test_three_points_are_too_few_and_one_twice_is_named():
    told = pairs(camera())
    with pytest.raises(Refused, match="3 points are told"):
        plane_of(told[:3], SIZE)
    with pytest.raises(Refused, match="A and again are the same place"):
        plane_of((*told[:4], replace(told[0], name="again")), SIZE)


def test_swapped_points_are_seen():
    a, b, c, d, _ = pairs(camera())
    mirrored = [replace(a, photo=b.photo), replace(b, photo=a.photo),
                replace(c, photo=d.photo), replace(d, photo=c.photo)]  # fmt: skip
    with pytest.raises(Refused, match="swapped or mirrored"):
        plane_of(mirrored, SIZE)


@pytest.mark.parametrize("wrong", range(6))
def test_the_point_that_was_clicked_on_another_thing_is_named(wrong):
    matrix = camera()
    told = [*pairs(matrix, 1.0), Pair(seen_at(matrix, (4.0, 3.0)), (4.0, 3.0), "F")]
    x, y = told[wrong].floor
    told[wrong] = replace(told[wrong], floor=(x + 5 * MOST_OFF_MM / 1000, y))
    with pytest.raises(Refused, match=f"{told[wrong].name} fits worst"):
        plane_of(told, SIZE)


def test_a_point_outside_the_photo_is_refused():
    told = pairs(camera())
    with pytest.raises(Refused, match="outside the photo"):
        plane_of((replace(told[0], photo=(-5.0, 10.0)), *told[1:]), SIZE)
