"""Any house written in a model's format comes back with the same rooms and the same doors."""

import json
from math import dist

import pytest
from hypothesis import given, settings
from tests.strategies.told_houses import House, as_gbxml, as_geojson, as_indoorgml, told_houses

from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.geo.frame import metres_per_degree


def assert_same(house: House, reading: Reading, *, rel: float = 1e-6) -> None:
    areas = {room.id: room.polygon.shape.area for room in reading.floor.rooms}
    wanted = {name: (x1 - x0) * (y1 - y0) for name, (x0, y0, x1, y1) in house.rooms.items()}
    assert areas == pytest.approx(wanted, rel=rel)
    assert {room.name for room in reading.floor.rooms} == {f"Room {name}" for name in house.rooms}
    doors = {o.id: (sorted(o.rooms), o.width_m) for o in reading.floor.openings}
    told = {d.id: (sorted(d.rooms), pytest.approx(dist(*d.ends), rel=1e-3)) for d in house.doors}
    assert doors == told
    assert [way.opening for way in reading.exits] == ["d-out"]


@given(told_houses())
@settings(max_examples=40)
def test_through_gbxml(house: House) -> None:
    assert_same(house, read_bytes(as_gbxml(house)))


@given(told_houses(walls=(0.0,)))
@settings(max_examples=30)
def test_through_gbxml_with_rooms_drawn_to_the_middle_of_the_walls(house: House) -> None:
    reading = read_bytes(as_gbxml(house))
    assert_same(house, reading)
    asked = "wall-centres" in {note.code for note in reading.asks}
    assert asked is (len(house.rooms) > 1)


@given(told_houses())
@settings(max_examples=20)
def test_through_gbxml_in_feet(house: House) -> None:
    reading = read_bytes(as_gbxml(house, unit="Feet", per_m=1 / 0.3048))
    assert (reading.length_unit, reading.scale_m_per_unit) == ("ft", 0.3048)
    assert_same(house, reading, rel=1e-5)


@given(told_houses())
@settings(max_examples=40)
def test_through_indoorgml_with_doors_as_cells(house: House) -> None:
    assert_same(house, read_bytes(as_indoorgml(house)))


@given(told_houses())
@settings(max_examples=20)
def test_through_indoorgml_under_another_prefix(house: House) -> None:
    assert (
        read_bytes(as_indoorgml(house, prefix="x")).floor == read_bytes(as_indoorgml(house)).floor
    )


@given(told_houses())
@settings(max_examples=40)
def test_through_geojson_in_degrees(house: House) -> None:
    data = as_geojson(house, per_degree=metres_per_degree(47.0))
    reading = read_bytes(data)
    assert reading.length_unit == "degree"
    assert_same(house, reading, rel=1e-4)


@given(told_houses())
@settings(max_examples=20)
def test_through_geojson_across_the_date_line(house: House) -> None:
    """The first room begins a hand's breadth west of 180 degrees."""
    east, north = metres_per_degree(-17.0)
    data = as_geojson(house, origin=(180.0 - 0.5 / east, -17.0), per_degree=(east, north))
    collection = json.loads(data)
    for feature in collection["features"]:
        for ring in feature["geometry"]["coordinates"]:
            for point in ring:
                point[0] = point[0] - 360 if point[0] > 180 else point[0]
    reading = read_bytes(json.dumps(collection).encode())
    assert "date-line" in {note.code for note in reading.mended}
    assert_same(house, reading, rel=1e-4)
