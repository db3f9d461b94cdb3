"""Any house, written as a building model, comes back with its rooms and openings."""

import pytest
import shapely
from hypothesis import given, settings
from tests.strategies.floors import floors

from farwall.floor.faults import faults_of
from farwall.floor.nouns import Opening
from farwall.readers.any_plan import read_bytes

pytest.importorskip("ifcopenshell")

from tests.readers.ifc.making import Making


def hole(opening: Opening) -> list[tuple[float, float]]:
    """The floor under an opening, or 0.1 m of wall about its line."""
    if opening.threshold is not None:
        shape = opening.threshold.shape
    else:
        shape = shapely.LineString(opening.line).buffer(0.05, cap_style="flat")
    return [(float(x), float(y)) for x, y in shape.exterior.coords[:-1]]


@settings(max_examples=25)
@given(floors())
def test_rooms_and_openings_come_back(drawn) -> None:
    floor, exits = drawn
    made = Making()
    ground = made.storey("Ground")
    ids = {}
    for room in floor.rooms:
        points = [(x, y) for x, y in room.polygon.coordinates[0][:-1]]
        ids[made.space(ground, room.id, points).GlobalId] = room.id
    for opening in floor.openings:
        if opening.kind in {"door", "outside"}:
            outside = opening.kind == "outside"
            made.door(ground, hole(opening), opening.width_m, external=outside)
        else:
            made.opening(ground, hole(opening))
    reading = read_bytes(made.data())
    for room in reading.floor.rooms:
        same = floor.room_by_id[ids[room.id]].polygon.shape
        assert room.polygon.shape.symmetric_difference(same).area < 2e-3
    found = sorted(
        (one.kind == "outside", sorted(ids[room] for room in one.rooms))
        for one in reading.floor.openings
    )
    assert found == sorted((one.kind == "outside", sorted(one.rooms)) for one in floor.openings)
    assert faults_of(reading.floor, reading.exits) == []
    assert len(reading.exits) >= len(exits)
