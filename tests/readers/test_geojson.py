"""GeoJSON in: our own metres, other people's degrees, and calm refusals."""

import json
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import AWKWARD, TWO_ROOMS, Place

from farwall.errors import Refused
from farwall.floor.geojson import floor_collection
from farwall.readers.any_plan import read_bytes, read_plan
from farwall.readers.geo.frame import metres_per_degree


def as_bytes(place: Place) -> bytes:
    return json.dumps(floor_collection(place.floor, place.exits)).encode()


@pytest.mark.parametrize("place", AWKWARD.values(), ids=AWKWARD.keys())
def test_our_own_collections_come_back_whole(place: Place) -> None:
    reading = read_bytes(as_bytes(place))
    assert (reading.floor, reading.exits) == (place.floor, place.exits)
    assert (reading.format, reading.length_unit, reading.scale_m_per_unit) == ("GeoJSON", "m", 1.0)
    assert {note.code for note in reading.asks} <= {"north", "windows", "water"}


def test_without_a_way_out_it_asks_for_one() -> None:
    reading = read_bytes(json.dumps(floor_collection(TWO_ROOMS.floor)).encode())
    assert reading.asks[0].code == "way-out"


def test_an_unsound_floor_is_refused_with_its_faults() -> None:
    collection = floor_collection(TWO_ROOMS.floor, TWO_ROOMS.exits)
    collection["features"][0]["properties"]["id"] = "back"
    with pytest.raises(Refused, match="used 2 times"):
        read_bytes(json.dumps(collection).encode())


# One degree at a latitude on WGS 84 [m]: National Geospatial-Intelligence Agency's published
# "length of a degree" table, as printed to the metre in many atlases (from memory).
@pytest.mark.parametrize(
    ("latitude", "east", "north"),
    [(0, 111_320, 110_574), (45, 78_847, 111_132), (60, 55_800, 111_412)],
)
def test_metres_in_a_degree(latitude: float, east: float, north: float) -> None:
    assert metres_per_degree(latitude) == pytest.approx((east, north), abs=1.0)


def test_a_square_in_degrees_by_hand() -> None:
    """At the equator 1e-4° is 11.132 m east and 11.0574 m north: 123.09 m²."""
    ring = [[10.0, 0.0], [10.0001, 0.0], [10.0001, 0.0001], [10.0, 0.0001], [10.0, 0.0]]
    feature = {
        "type": "Feature",
        "properties": {"type": "room", "name": "Square"},
        "geometry": {"type": "Polygon", "coordinates": [ring]},
    }
    reading = read_bytes(json.dumps(feature).encode())
    (room,) = reading.floor.rooms
    assert reading.length_unit == "degree"
    assert room.id == "square"
    assert room.polygon.shape.area == pytest.approx(123.09, abs=0.01)
    assert min(room.polygon.coordinates[0]) == (0.0, 0.0)


def test_a_lone_polygon_is_a_room() -> None:
    polygon = {"type": "Polygon", "coordinates": [[[0, 0], [5, 0], [5, 4], [0, 4], [0, 0]]]}
    reading = read_bytes(json.dumps(polygon).encode())
    assert reading.floor.rooms[0].polygon.shape.area == 20


@pytest.mark.needs_shared
def test_office_floor_rooms_match_the_reference_areas(shared: Callable[[str], Path]) -> None:
    """Reference: rooms' areas of office_floor2.geojson printed to 0.01 m², reckoned elsewhere."""
    reading = read_plan(shared("data/plans/office_floor2.geojson"))
    reference = json.loads(shared("data/plans/reference.json").read_text(encoding="utf-8"))
    wanted = {str(r["id"]): r["area_m2"] for r in reference["office_floor2.geojson"]["rooms"]}
    found = {room.id: room.polygon.shape.area for room in reading.floor.rooms}
    assert {own: found[own] for own in wanted} == pytest.approx(wanted, abs=0.01)


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"{", "this is no JSON"),
        (b'{"a": NaN}', "NaN is no number"),
        (b"[1, 2]", "no GeoJSON"),
        (b'{"version": 1, "floor": {}}', "a job or a plan"),
        (b'{"type": "FeatureCollection", "features": []}', "no polygon"),
        (b"[" * 100_000, "nested too deep"),
        (b'{"\xff": 1}', "no UTF-8"),
    ],
)
def test_calm_refusals(data: bytes, words: str) -> None:
    with pytest.raises(Refused, match=words):
        read_bytes(data)


JSON = st.recursive(
    st.none() | st.booleans() | st.floats(allow_nan=False) | st.text(max_size=5),
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(
            st.sampled_from(["type", "features", "geometry", "properties", "coordinates", "kind"]),
            inner,
            max_size=4,
        )
    ),
    max_leaves=20,
)


@given(st.lists(JSON, max_size=4))
def test_any_json_at_all_is_read_or_refused(features: list[object]) -> None:
    data = json.dumps({"type": "FeatureCollection", "features": features}).encode()
    with suppress(Refused):
        assert read_bytes(data).format == "GeoJSON"
