"""office_floor2.geojson (CC BY 4.0): rooms, doors and unnamed regions of a real office floor.

Source: areas of the nine rooms and counts in reference_xml.json, reckoned apart, to 0.01 m2.
"""

import itertools
import json
from collections import Counter

import pytest
from tests.published.packed_plans import packed, reference

from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes

NAME = "office_floor2.geojson"
KNOWN = reference(NAME)


@pytest.fixture(scope="module")
def office() -> Reading:
    return read_bytes(packed(NAME))


def test_the_nine_rooms_have_their_areas(office: Reading) -> None:
    found = {room.id: room.polygon.shape.area for room in office.floor.rooms}
    wanted = {str(room["id"]): room["area_m2"] for room in KNOWN["rooms"]}
    assert len(wanted) == 9
    assert {own: found[own] for own in wanted} == pytest.approx(wanted, abs=0.01)


def test_all_25_doors_are_openings_with_a_room_on_each_side(office: Reading) -> None:
    """One leads from a corridor into a shaft: a room on one side, and no way out."""
    assert len(office.floor.openings) == KNOWN["door_count"]
    assert Counter(len(set(o.rooms)) for o in office.floor.openings) == {2: 24, 1: 1}
    assert office.exits == ()
    assert all(0.7 < (o.width_m or 0) < 1.9 for o in office.floor.openings)


def test_all_windows_come_out(office: Reading) -> None:
    assert len(office.floor.windows) == KNOWN["counts"]["window"]


def test_every_region_without_a_room_is_said(office: Reading) -> None:
    regions = [room for room in office.floor.rooms if room.id.startswith("region-")]
    said = [note.what for note in office.mended if note.code == "region-as-room"]
    assert len(regions) == len(said) == 14
    assert {room.name for room in regions} == {"", "Unit 1", "Unit 3", "Unit 4"}
    for room, what in zip(regions, said, strict=True):
        assert f"{room.polygon.shape.area:.2f}"[:-1] in what


def test_rooms_regions_and_walls_fill_the_outline(office: Reading) -> None:
    """What is neither room, wall nor shaft is less than half a hundredth of the outline."""
    rooms = sum(room.polygon.shape.area for room in office.floor.rooms)
    features = json.loads(packed(NAME))["features"]
    solid = {"wall", "door", "window", "elevator", "inaccessible_space"}
    kinds = Counter(f["properties"]["type"] for f in features)
    assert kinds == KNOWN["counts"]
    left = KNOWN["outline_m2"] - rooms - _area(features, solid) - 28.78
    assert abs(left) < 0.006 * KNOWN["outline_m2"]


def _area(features: list[dict], kinds: set[str]) -> float:  # type: ignore[type-arg]
    """Sum of the areas of features of some kinds by the shoelace formula [m2]."""
    total = 0.0
    for feature in features:
        if feature["properties"]["type"] in kinds:
            ring = feature["geometry"]["coordinates"][0]
            x0, y0 = ring[0]
            flat = [((x - x0) * 61649.1, (y - y0) * 111350.2) for x, y in ring]
            total += abs(sum(a[0] * b[1] - b[0] * a[1]
                             for a, b in itertools.pairwise(flat))) / 2  # fmt: skip
    return total


def test_what_is_no_floor_is_counted(office: Reading) -> None:
    told = [note.what for note in office.left if note.code == "not-read"]
    assert "1 × elevator left aside." in told
    assert "2 × inaccessible_space left aside." in told
    assert "outside-slab" in {note.code for note in office.left}
    assert [note.code for note in office.left].count("stairs-as-rooms") == 4
