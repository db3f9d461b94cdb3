"""A floor written as GeoJSON and read back is the same floor, to the last digit."""

import json
from typing import Any

import pytest
from hypothesis import given
from tests.shapes import AWKWARD, ISLAND_KITCHEN, TWO_ROOMS, Place
from tests.strategies.floors import floors

from farwall.errors import Refused
from farwall.floor.geojson import floor_collection, floor_from_collection
from farwall.floor.nouns import Exit, Floor, SawCut, Window


def round_trip(floor: Floor, exits: tuple[Exit, ...]) -> tuple[Floor, tuple[Exit, ...]]:
    return floor_from_collection(json.loads(json.dumps(floor_collection(floor, exits))))


@pytest.mark.parametrize("place", AWKWARD.values(), ids=AWKWARD.keys())
def test_awkward_shapes_come_back_as_they_went(place: Place) -> None:
    assert round_trip(place.floor, place.exits) == (place.floor, place.exits)


@given(floors())
def test_drawn_floors_come_back_as_they_went(drawn: tuple[Floor, tuple[Exit, ...]]) -> None:
    assert round_trip(*drawn) == drawn


def test_saw_cuts_windows_and_north_come_back() -> None:
    floor = Floor(
        TWO_ROOMS.floor.rooms,
        saw_cuts=(SawCut(((0.0, 1.5), (2.0, 1.6), (4.0, 1.5)), "cut"),),
        windows=(
            Window(((1.0, 6.0), (2.5, 6.0)), 0.9, 1.2),
            Window(((3.0, 6.0), (3.5, 6.0))),
            Window(((0.0, 1.0), (0.0, 2.0)), room="front", covered=True, main=True),
        ),
        north_deg=12.5,
    )
    assert round_trip(floor, ()) == (floor, ())


@pytest.mark.parametrize("key", ["covered", "main"])
def test_what_is_said_of_a_window_is_true_or_false(key: str) -> None:
    floor = Floor(TWO_ROOMS.floor.rooms, windows=(Window(((1.0, 6.0), (2.5, 6.0))),))
    collection = floor_collection(floor, ())
    collection["features"][-1]["properties"][key] = "yes"
    with pytest.raises(Refused) as refusal:
        floor_from_collection(collection)
    assert [mistake.where for mistake in refusal.value.mistakes] == [
        f"features[{len(collection['features']) - 1}].properties.{key}"
    ]


def test_every_feature_says_its_kind_and_lies_in_metres() -> None:
    collection = floor_collection(ISLAND_KITCHEN.floor, ISLAND_KITCHEN.exits)
    assert collection["units"] == "m"
    kinds = [feature["properties"]["kind"] for feature in collection["features"]]
    assert kinds == ["room", "opening", "exit", "fixture"]


@pytest.mark.parametrize(
    ("spoil", "where"),
    [
        ({"kind": "lake"}, "features[0].properties.kind"),
        ({"id": ""}, "features[0].properties.id"),
        ({"id": 7}, "features[0].properties.id"),
        ({"name": 7}, "features[0].properties.name"),
    ],
)
def test_spoilt_properties_are_told_by_place(spoil: dict[str, Any], where: str) -> None:
    collection = floor_collection(TWO_ROOMS.floor, TWO_ROOMS.exits)
    collection["features"][0]["properties"].update(spoil)
    with pytest.raises(Refused) as refusal:
        floor_from_collection(collection)
    assert [mistake.where for mistake in refusal.value.mistakes] == [where]


def test_all_mistakes_are_told_at_once() -> None:
    collection = floor_collection(TWO_ROOMS.floor, TWO_ROOMS.exits)
    features = collection["features"]
    features[0]["geometry"] = {"type": "Point", "coordinates": [0, 0]}
    features[1]["geometry"]["coordinates"][0][0] = [1, "two"]
    features[2]["properties"].update({"opening": "hatch", "rooms": "front", "width_m": "wide"})
    features[3]["geometry"] = None
    features.append("no feature")
    with pytest.raises(Refused) as refusal:
        floor_from_collection({**collection, "north_deg": "up"})
    assert [mistake.where for mistake in refusal.value.mistakes] == [
        "features[0].geometry",
        "features[1].geometry",
        "features[2].properties.opening",
        "features[2].properties.rooms",
        "features[2].properties.width_m",
        "features[3].geometry",
        "features[5]",
        "north_deg",
    ]


@pytest.mark.parametrize("width", [0, -0.9])
def test_an_opening_without_width_is_refused(width) -> None:
    collection = floor_collection(TWO_ROOMS.floor, TWO_ROOMS.exits)
    collection["features"][2]["properties"]["width_m"] = width
    with pytest.raises(Refused, match=f"an opening is not {width:g} m wide"):
        floor_from_collection(collection)


def test_a_collection_without_features_is_refused() -> None:
    with pytest.raises(Refused, match="no list of features"):
        floor_from_collection({"type": "FeatureCollection"})
