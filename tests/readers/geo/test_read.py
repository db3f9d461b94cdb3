"""Whole foreign collections: indoor tags, levels, doors on outlines, regions, refusals."""

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.geo.frame import metres_per_degree
from farwall.readers.geo.things import MOST_POINTS

EAST, NORTH = metres_per_degree(52.0)


def at(x: float, y: float) -> list[float]:
    return [13.0 + x / EAST, 52.0 + y / NORTH]


def area(x0: float, y0: float, x1: float, y1: float) -> dict[str, Any]:
    ring = [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1), at(x0, y0)]
    return {"type": "Polygon", "coordinates": [ring]}


def feature(geometry: Any, **properties: Any) -> dict[str, Any]:
    return {"type": "Feature", "properties": properties, "geometry": geometry}


def read(*features: Any, **members: Any) -> Reading:
    collection = {"type": "FeatureCollection", "features": features, **members}
    return read_bytes(json.dumps(collection).encode())


HALL = feature(area(0, 0, 4, 3), id="hall", indoor="corridor", name="Hall", level="0")
BATH = feature(area(4, 0, 8, 3), id="bath", indoor="room", name="Bath", level="0")
DOOR = feature({"type": "Point", "coordinates": at(4, 1.5)}, id="d1", door="yes", width="0.8",
               level="0")  # fmt: skip
FRONT = feature({"type": "Point", "coordinates": at(2, 0)}, id="d2", door="yes", entrance="main",
                width="1", level="0")  # fmt: skip


def test_indoor_rooms_and_door_points() -> None:
    reading = read(HALL, BATH, DOOR, FRONT)
    assert {r.id: round(r.polygon.shape.area, 3) for r in reading.floor.rooms} == {
        "hall": 12, "bath": 12,
    }  # fmt: skip
    doors = {o.id: (o.kind, sorted(o.rooms), o.width_m) for o in reading.floor.openings}
    assert doors == {
        "d1": ("door", ["bath", "hall"], 0.8),
        "d2": ("outside", ["hall"], 1.0),
    }
    assert [way.opening for way in reading.exits] == ["d2"]


def test_levels_are_storeys() -> None:
    upper = feature(area(0, 0, 8, 3), id="loft", indoor="room", level="1")
    reading = read(HALL, upper)
    assert [(s.id, s.name) for s in reading.storeys] == [
        ("level-0", "Level 0"), ("level-1", "Level 1"),
    ]  # fmt: skip
    assert {room.id: room.storey for room in reading.floor.rooms} == {
        "hall": "level-0", "loft": "level-1",
    }  # fmt: skip


def test_a_room_on_several_levels_is_taken_on_the_first_and_that_is_said() -> None:
    reading = read(feature(area(0, 0, 4, 3), indoor="room", level="0;1"))
    assert "several-levels" in {note.code for note in reading.mended}


def test_a_closed_way_is_a_room_and_an_open_one_is_left() -> None:
    ring = area(0, 0, 4, 3)["coordinates"][0]
    way = feature({"type": "LineString", "coordinates": ring}, indoor="room", name="Hall")
    loose = feature({"type": "LineString", "coordinates": ring[:3]}, indoor="room")
    reading = read(way, loose)
    assert [room.id for room in reading.floor.rooms] == ["hall"]
    assert "1 × room left aside." in [note.what for note in reading.left]


def test_floor_without_a_room_is_read_and_said_piece_by_piece() -> None:
    walls = [
        area(0, 0, 8.6, 0.2), area(0, 3.2, 8.6, 3.4), area(0, 0.2, 0.2, 3.2),
        area(8.4, 0.2, 8.6, 3.2), area(4.2, 0.2, 4.4, 1), area(4.2, 1.9, 4.4, 3.2),
    ]  # fmt: skip
    reading = read(
        feature(area(0, 0, 8.6, 3.4), type="building_outline"),
        *(feature(wall, type="wall") for wall in walls),
        feature(area(4.2, 1, 4.4, 1.9), id="d", type="door"),
        feature(area(0.2, 0.2, 4.2, 3.2), id="hall", type="room"),
    )
    assert [room.id for room in reading.floor.rooms] == ["hall", "region-1"]
    assert reading.floor.openings[0].rooms in {("hall", "region-1"), ("region-1", "hall")}
    said = [note for note in reading.mended if note.code == "region-as-room"]
    assert len(said) == 1
    assert said[0].where is not None
    assert "12.00 m²" in said[0].what


def test_without_walls_an_outline_is_no_room() -> None:
    reading = read(feature(area(0, 0, 8, 3), type="building_outline"), HALL)
    assert [room.id for room in reading.floor.rooms] == ["hall"]


def test_holes_and_many_polygons() -> None:
    hole = area(1, 1, 2, 2)["coordinates"][0]
    ring = area(0, 0, 4, 3)["coordinates"][0]
    far = area(6, 0, 8, 3)["coordinates"]
    many = {"type": "MultiPolygon", "coordinates": [[ring, hole], far]}
    reading = read(feature(many, id="r", indoor="room"))
    areas = {r.id: round(r.polygon.shape.area, 3) for r in reading.floor.rooms}
    assert areas == {"r": 11, "r-2": 6}


def test_an_outline_that_crosses_itself_is_left_by_name() -> None:
    ring = [at(0, 0), at(4, 3), at(4, 0), at(0, 3), at(0, 0)]
    bow = feature({"type": "Polygon", "coordinates": [ring]}, indoor="room", name="Bow")
    assert "room-unsound" in {note.code for note in read(bow, HALL).left}


def test_a_survey_grid_is_metres_near_its_own_corner() -> None:
    ring = [[445_000, 5_444_000], [445_004, 5_444_000], [445_004, 5_444_003], [445_000, 5_444_003],
            [445_000, 5_444_000]]  # fmt: skip
    room = feature({"type": "Polygon", "coordinates": [ring]}, indoor="room", id="r")
    reading = read(room, crs={"type": "name", "properties": {"name": "EPSG:25832"}})
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(12)
    assert reading.length_unit == "m"
    assert {"unit-metres", "origin-moved"} <= {note.code for note in reading.mended}


def test_our_own_words_among_others_are_still_read() -> None:
    """Without a unit and with a feature that is not ours, it is another's file."""
    theirs = feature(area(0, 0, 4, 3), kind="room", name="Hall")
    assert [r.id for r in read(theirs, feature(None, kind="tree")).floor.rooms] == ["hall"]


def test_columns_stand_on_the_floor_and_stay_dry() -> None:
    column = feature(area(1, 1, 1.4, 1.4), indoor="column", level="0")
    (fixture,) = read(HALL, column).floor.fixtures
    assert fixture.kind == "column"
    assert fixture.polygon.shape.area == pytest.approx(0.16, abs=1e-4)


@pytest.mark.parametrize("kind", ["MultiPolygon", "GeometryCollection"])
def test_lone_geometries_are_rooms(kind: str) -> None:
    ring = [[0, 0], [4, 0], [4, 3], [0, 3], [0, 0]]
    lone: dict[str, Any] = {"type": kind, "coordinates": [[ring]]}
    if kind == "GeometryCollection":
        lone = {"type": kind, "geometries": [{"type": "Polygon", "coordinates": [ring]}]}
    assert read_bytes(json.dumps(lone).encode()).floor.rooms[0].polygon.shape.area == 12


@pytest.mark.parametrize(
    ("features", "words"),
    [
        ([feature({"type": "Point", "coordinates": [1, 2]}, door="yes")], "no polygon"),
        ([feature(None, indoor="room"), 7], "no polygon"),
    ],
)
def test_without_a_polygon_it_is_refused(features: list[Any], words: str) -> None:
    with pytest.raises(Refused, match=words):
        read(*features)


def test_too_many_points_are_refused_with_their_number() -> None:
    ring = [[0.0, 0.0], *[[1.0, k / MOST_POINTS] for k in range(MOST_POINTS)], [0.0, 0.0]]
    with pytest.raises(Refused, match=r"200,00\d points"):
        read(feature({"type": "Polygon", "coordinates": [ring]}, indoor="room"))


def test_a_number_of_ten_thousand_digits_is_refused() -> None:
    with pytest.raises(Refused, match="too many digits"):
        read_bytes(b'{"type": "FeatureCollection", "features": [' + b"9" * 10_000 + b"]}")


points = st.lists(st.floats(-200, 200) | st.integers(-3, 3), min_size=2, max_size=3)
geometries = st.one_of(
    st.builds(lambda p: {"type": "Point", "coordinates": p}, points),
    st.builds(lambda ps: {"type": "LineString", "coordinates": ps}, st.lists(points, max_size=6)),
    st.builds(
        lambda rs: {"type": "Polygon", "coordinates": [[*r, r[0]] for r in rs]},
        st.lists(st.lists(points, min_size=3, max_size=6), max_size=2),
    ),
)
kinds = st.sampled_from(
    ["room", "door", "window", "wall", "building_outline", "stairs", "no_geometry", "elevator"]
)


@given(
    st.lists(st.builds(lambda g, k, n: feature(g, type=k, level=n), geometries, kinds,
                       st.integers(0, 1)), max_size=8)
)  # fmt: skip
def test_any_features_at_all_are_read_or_refused(features: list[Any]) -> None:
    try:
        reading = read(*features)
    except Refused as refusal:
        assert "no polygon" in str(refusal)  # noqa: PT017
        return
    assert all(room.polygon.shape.is_valid for room in reading.floor.rooms)
