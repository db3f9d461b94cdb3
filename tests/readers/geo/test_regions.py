"""Floor between walls that has no room of its own."""

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import box

from farwall.readers.geo.regions import name_of, regions_of

OUTLINE = box(0, 0, 8.6, 3.4)
WALLS = [
    box(0, 0, 8.6, 0.2), box(0, 3.2, 8.6, 3.4), box(0, 0.2, 0.2, 3.2), box(8.4, 0.2, 8.6, 3.2),
    box(4.2, 0.2, 4.4, 1), box(4.2, 1.9, 4.4, 3.2),
]  # fmt: skip
DOOR = box(4.2, 1, 4.4, 1.9)


def test_two_rooms_between_walls_by_hand() -> None:
    """Inside 0.2 m walls lie 4 m by 3 m on each side of the one with the door."""
    regions = regions_of([OUTLINE], [*WALLS, DOOR])
    assert [shape.area for shape in regions.shapes] == [pytest.approx(12), pytest.approx(12)]
    assert (regions.slivers, regions.slivers_m2) == (0, 0)


def test_without_the_door_both_are_one_room_through_the_gap() -> None:
    (whole,) = regions_of([OUTLINE], WALLS).shapes
    assert whole.area == pytest.approx(24 + 0.9 * 0.2, abs=1e-3)


def test_rooms_that_are_drawn_are_taken_out() -> None:
    (rest,) = regions_of([OUTLINE], [*WALLS, DOOR, box(0.2, 0.2, 4.2, 3.2)]).shapes
    assert rest.bounds == pytest.approx((4.4, 0.2, 8.4, 3.2))


def test_walls_a_hair_apart_are_closed() -> None:
    short = [*WALLS[:4], box(4.2, 0.208, 4.4, 1), box(4.2, 1.9, 4.4, 3.195)]
    assert len(regions_of([OUTLINE], [*short, DOOR]).shapes) == 2


def test_gaps_beside_walls_are_counted_and_are_no_rooms() -> None:
    regions = regions_of([box(-0.3, 0, 8.6, 3.4)], [*WALLS, DOOR])
    assert len(regions.shapes) == 2
    assert regions.slivers == 1
    assert regions.slivers_m2 == pytest.approx(0.3 * 3.4, abs=0.01)


def test_a_zone_over_a_region_names_it_and_two_do_not() -> None:
    region = box(0, 0, 4, 3)
    assert name_of(region, [("Unit 1", box(0, 0, 4.1, 3))]) == "Unit 1"
    assert name_of(region, [("Unit 1", box(0, 0, 40, 30))]) == ""
    assert name_of(region, [("Unit 1", region), ("Unit 2", region)]) == ""
    assert name_of(region, [("", region)]) == ""


def millimetres(low: int, high: int) -> st.SearchStrategy[float]:
    return st.integers(low, high).map(lambda mm: mm / 1000)


BOXES = st.tuples(
    *(millimetres(*span) for span in ((0, 8000), (0, 3000), (100, 4000), (100, 3000)))
)


@given(st.lists(BOXES))
def test_regions_never_reach_into_what_is_taken(
    boxes: list[tuple[float, float, float, float]],
) -> None:
    taken = [box(x, y, x + w, y + h) for x, y, w, h in boxes]
    regions = regions_of([OUTLINE], taken)
    solid = shapely.union_all(taken) if taken else shapely.Polygon()
    for shape in regions.shapes:
        assert shape.is_valid
        assert shape.intersection(solid).area < 0.02 * (shape.length + 1)
