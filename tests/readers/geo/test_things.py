"""Features of many habits as things of a floor."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.geo.things import Thing, is_closed, things_of, width_of

RING = [[0, 0, 7], [4, 0, 7], [4, 3, 7], [0, 0, 7]]


def feature(geometry: Any, **properties: Any) -> dict[str, Any]:
    return {"type": "Feature", "properties": properties, "geometry": geometry}


def polygon(*rings: Any) -> dict[str, Any]:
    return {"type": "Polygon", "coordinates": list(rings) or [RING]}


def one(item: Any) -> Thing:
    ((thing,), broken) = things_of([item])
    assert broken == 0
    return thing


@pytest.mark.parametrize(
    ("properties", "kind"),
    [
        ({"indoor": "room"}, "room"),
        ({"indoor": "corridor"}, "room"),
        ({"indoor": "area"}, "room"),
        ({"indoor": "room", "stairs": "yes"}, "stairs"),
        ({"indoor": "wall"}, "wall"),
        ({"type": "Bathroom"}, "room"),
        ({"type": "multipolygon", "indoor": "room"}, "room"),
        ({"class": "window"}, "window"),
        ({"tags": {"indoor": "room"}}, "room"),
        ({"buildingpart": "corridor"}, "room"),
        ({"indoor": "yes", "room": "office"}, "room"),
        ({"room": "no"}, "other"),
        ({"indoor": "column"}, "column"),
        ({"door": "yes"}, "door"),
        ({"entrance": "main"}, "door"),
        ({"type": "inaccessible_space"}, "shaft"),
        ({"type": "no_geometry"}, "zone"),
        ({"type": "sofa"}, "other"),
        ({}, "other"),
    ],
)
def test_kinds_by_tags_of_several_habits(properties: dict[str, Any], kind: str) -> None:
    assert one(feature(polygon(), **properties)).kind == kind


def test_heights_are_dropped_and_holes_are_kept() -> None:
    hole = [[1, 1], [2, 1], [2, 2], [1, 1]]
    thing = one(feature(polygon(RING, hole), indoor="room"))
    assert thing.rings == (((0, 0), (4, 0), (4, 3), (0, 0)), ((1, 1), (2, 1), (2, 2), (1, 1)))
    assert len(thing.points) == 8


def test_parts_of_many_are_things_of_their_own() -> None:
    many = {"type": "MultiPolygon", "coordinates": [[RING], [RING]]}
    things, broken = things_of([feature(many, id="r", indoor="room")])
    assert ([thing.id for thing in things], broken) == (["r", "r-2"], 0)
    collection = {"type": "GeometryCollection", "geometries": [polygon(), polygon()]}
    assert len(things_of([feature(collection)])[0]) == 2


def test_a_closed_way_is_an_area_and_an_open_one_a_line() -> None:
    assert is_closed([(0, 0), (4, 0), (4, 3), (0, 0)])
    way = {"type": "LineString", "coordinates": RING}
    assert one(feature(way, indoor="room")).rings
    assert one(feature({**way, "coordinates": RING[:3]}, indoor="room")).line


@pytest.mark.parametrize(
    ("level", "first", "several"),
    [(0, "0", False), ("1", "1", False), ("-1;0", "-1", True), ("0-2", "0", True),
     (2.0, "2", False), ("1.5", "1.5", False), ("Attic", "Attic", False), (None, "", False),
     ([1], "", False)],
)  # fmt: skip
def test_levels(level: Any, first: str, several: bool) -> None:
    properties = {"indoor": "room"} | ({} if level is None else {"level": level})
    thing = one(feature(polygon(), **properties))
    assert (thing.level, thing.several) == (first, several)


@pytest.mark.parametrize(
    ("told", "metres"),
    [(0.9, 0.9), ("0.9", 0.9), ("90 cm", 0.9), ("0,9 m", 0.9), ("3 ft", 0.9144), ("3'", 0.9144),
     ('36"', 0.9144), ("wide", None), (0, None), (90, None), (True, None), (None, None)],
)  # fmt: skip
def test_widths_as_people_write_them(told: Any, metres: float | None) -> None:
    assert width_of(told) == (pytest.approx(metres) if metres else None)


def test_a_door_without_a_leaf_and_an_entrance() -> None:
    point = {"type": "Point", "coordinates": [1, 2]}
    assert one(feature(point, door="no")).leaf is False
    assert one(feature(point, door="hinged")).leaf is True
    assert one(feature(point, door="yes", entrance="yes")).outside is True


@pytest.mark.parametrize(
    "geometry",
    [
        None,
        {},
        {"type": "Polygon"},
        {"type": "Polygon", "coordinates": []},
        {"type": "Polygon", "coordinates": [[[0, 0], [1, 0]]]},
        {"type": "Polygon", "coordinates": [[["NaN", 0], [1, 0], [1, 1], ["NaN", 0]]]},
        {"type": "Polygon", "coordinates": [[[10**400, 0], [1, 0], [1, 1], [10**400, 0]]]},
        {"type": "Point", "coordinates": [True, 1]},
        {"type": "Polygon", "coordinates": {"a": 1}},
    ],
)
def test_what_is_no_geometry_is_counted(geometry: Any) -> None:
    assert things_of([feature(geometry), 5, None]) == ([], 3)


json_values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=4),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=4), inner),
    max_leaves=8,
)


@given(st.dictionaries(st.sampled_from(["indoor", "level", "width", "name", "id", "tags"]),
                       json_values))  # fmt: skip
def test_any_properties_at_all_are_told(properties: dict[str, Any]) -> None:
    assert len(things_of([feature(polygon(), **properties)])[0]) == 1
