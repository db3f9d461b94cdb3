"""The floor as a person meets it: pieces, seams, and ground that a body can stand on."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from shapely import box as rectangle
from shapely.affinity import rotate
from tests.shapes import (
    AWKWARD,
    TWO_ROOMS,
    WALLED_ROOMS,
)
from tests.spray.hand_floors import (
    CLOSET_BEHIND_A_GAP,
    hall,
    moved,
    world,
)

from farwall.floor.geometry import polygons_of
from farwall.floor.nouns import SawCut
from farwall.spray.routes import part_with
from farwall.spray.world import BODY_M


@pytest.mark.parametrize("rooms", [TWO_ROOMS, WALLED_ROOMS], ids=["thin walls", "thick walls"])
def test_a_body_gets_through_a_door_and_nowhere_else_through_a_wall(rooms):
    of = world(rooms)
    wall = rectangle(-0.1, 2.99, 4.1, 3.13)
    there = of.standing.intersection(wall)
    assert polygons_of(of.standing)[0].covers(there)
    x0, _, x1, _ = there.bounds
    assert (x0, x1) == pytest.approx((2 + BODY_M, 2.8 - BODY_M), abs=0.01)


@pytest.mark.parametrize("name", AWKWARD)
def test_no_place_to_stand_is_nearer_to_a_wall_or_fixture_than_a_body(name):
    of = world(AWKWARD[name])
    indoors = shapely.union_all([piece.shape for piece in of.pieces.values()])
    solid = shapely.union_all([piece.shape.boundary for piece in of.pieces.values()])
    open_ways = shapely.union_all([s.chord.buffer(0.02) for s in of.seams])
    walls = solid.difference(open_ways)
    standing = of.standing.intersection(indoors)
    assert standing.distance(walls) >= BODY_M
    assert standing.area > 0.1


def test_a_gap_narrower_than_a_body_keeps_it_out():
    of = world(CLOSET_BEHIND_A_GAP)
    room = part_with(of.standing, (2.0, 1.5))
    assert room is not None
    assert room.intersection(rectangle(3.95, 0.5, 4.7, 1.7)).is_empty


def test_the_other_side_of_a_seam():
    of = world(TWO_ROOMS)
    between = next(s for s in of.seams if s.id == "between")
    assert (between.other("front"), between.other("back")) == ("back", "front")
    assert [s.id for s in of.seams_of("back")] == ["between"]


@pytest.mark.parametrize("degrees", range(1, 90, 4))
def test_a_turned_room_made_a_hair_narrower_loses_a_hair(degrees):
    """By hand: 8 m x 2 m less half a millimetre along 20 m of wall, 0.01 m². Files keep tenths of
    millimetres: on that grid the library's narrower rectangle came out empty at some angles."""
    turned = moved(hall(8, 2), lambda shape: rotate(shape, degrees, origin=(0, 0)))
    piece = world(turned).pieces["hall"]
    assert piece.shape.area - piece.inner.area == pytest.approx(0.01, rel=0.01)


def test_pieces_and_rooms_are_called_what_people_call_them_and_each_once():
    cut = SawCut(((3.0, -0.1), (3.0, 2.1)), id="middle")
    whole = hall(6.0, 2.0)
    halved = replace(whole, floor=replace(whole.floor, saw_cuts=(cut,)))
    of = world(halved)
    assert len(of.pieces) == 2
    assert of.called(of.pieces) == "Hall"
    assert of.called(["hall", "elsewhere"]) == "Hall, elsewhere"
    rooms = (replace(whole.floor.rooms[0], name=""),)
    nameless = world(replace(halved, floor=replace(halved.floor, rooms=rooms)))
    assert nameless.called(nameless.pieces) == "hall"
