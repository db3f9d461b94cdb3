"""Where the test patch goes."""

from __future__ import annotations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import box, outside, place
from tests.strategies.houses import house

from farwall.floor.nouns import Room
from farwall.job.seal_day.patch import SIDE_M, patch_of
from farwall.readers.job_json import job_from


def test_a_closet_before_a_smaller_hall():
    """By hand: the closet of 1.2 m × 2 m opens south; the square's middle is as far north."""
    rooms = [
        Room("hall", box(0, 0, 1, 1.5), "Hall"),
        Room("closet", box(2, 0, 3.2, 2), "Coat closet"),
    ]
    floor = place(rooms, [outside("d", ((2.2, 0), (2.9, 0)), "closet")]).floor
    found = patch_of(floor)
    assert found.room == "closet"
    assert found.whole
    assert found.at[1] == pytest.approx(2 - SIDE_M / 2, abs=0.01)


def test_a_room_too_narrow_for_it_gets_a_smaller_square_when_there_is_no_other():
    floor = place(
        [Room("hall", box(0, 0, 0.7, 5), "Hall")], [outside("d", ((0, 0), (0.7, 0)), "hall")]
    ).floor
    found = patch_of(floor)
    assert not found.whole
    assert found.side_m < 0.7


@given(st.integers(0, 40))
def test_the_square_lies_on_its_room_and_off_fixtures(seed):
    floor = job_from(house(seed), about="house").floor
    found = patch_of(floor)
    half, (x, y) = found.side_m / 2 - 2e-3, found.at
    square = shapely.box(x - half, y - half, x + half, y + half)
    assert floor.room_by_id[found.room].polygon.shape.covers(square)
    assert all(one.polygon.shape.intersection(square).area < 1e-6 for one in floor.fixtures)
