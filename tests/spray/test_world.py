"""The floor as a person meets it: pieces, seams, and ground that a body can stand on."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from shapely import box as rectangle
from shapely.affinity import rotate
from tests.shapes import (
    AWKWARD,
    ISLAND_KITCHEN,
    PLAIN_ROOM,
    TWO_ROOMS,
    WALLED_ROOMS,
    box,
    door,
    outside,
    place,
)
from tests.spray.hand_floors import (
    BLOCKED_DOOR,
    CLOSET_BEHIND_A_GAP,
    SPLIT_BY_A_COUNTER,
    hall,
    moved,
    world,
)
from tests.strategies.floors import OUTSIDE, House, Passage, turned

from farwall.floor.geometry import polygons_of
from farwall.floor.nouns import Exit, Fixture, Room, SawCut
from farwall.floor.thresholds import join_thresholds
from farwall.spray.routes import part_with
from farwall.spray.world import BODY_M, build_world

CUT = SawCut(((2.0, 0.0), (2.0, 3.0)), id="cut")


def ids(of):
    return sorted((s.id, s.kind, round(s.chord.length, 2)) for s in of.seams)


def area(of, piece):
    return of.pieces[piece].shape.area


def test_a_plain_room_is_one_piece_with_its_way_out():
    of = world(PLAIN_ROOM)
    assert list(of.pieces) == ["room"]
    assert ids(of) == [("front", "outside", 1.0)]
    assert of.seams[0].is_way_out


def test_a_saw_cut_parts_a_room_by_hand():
    """By hand: 4 x 3 m cut at x = 2 are two pieces of 6 m² along 3 m of cut."""
    of = world(PLAIN_ROOM, CUT)
    assert [area(of, name) for name in of.pieces] == pytest.approx([6.0, 6.0])
    assert ("cut", "saw cut", 3.0) in ids(of)
    assert {piece.room for piece in of.pieces.values()} == {"room"}


def test_a_cut_that_misses_the_wall_by_a_centimetre_still_parts_the_room():
    assert len(world(PLAIN_ROOM, SawCut(((2.0, 0.01), (2.0, 2.99)), id="cut")).pieces) == 2


@pytest.mark.parametrize(
    "line",
    [
        ((2.0, 0.0), (2.0, 1.5)),
        ((2.0, 0.1), (2.0, 2.9)),
        ((-1.0, 5.0), (9.0, 5.0)),
        ((0.0, 0.001), (4.0, 0.001)),
    ],
    ids=["ends in open floor", "stops short of both walls", "misses the room", "runs along a wall"],
)
def test_a_cut_that_parts_nothing_leaves_the_room_whole_and_is_told_as_unused(line):
    of = world(PLAIN_ROOM, SawCut(line, id="cut"))
    assert list(of.pieces) == ["room"]
    assert [s.id for s in of.seams] == ["front"]
    assert of.unused_cuts == ("cut",)


def test_a_cut_that_leaves_no_half_of_a_doorway_wide_enough_is_told_as_unused_by_hand():
    """By hand: a way out from x = 1 to 2 m, cut in the middle: two halves of 0.5 m, and a body
    needs 0.506 m. Cut at 1.2 m one half of 0.8 m is left, and the cut is good."""
    middle = SawCut(((1.5, 0.0), (1.5, 3.0)), id="middle")
    aside = SawCut(((1.2, 0.0), (1.2, 3.0)), id="aside")
    both = world(PLAIN_ROOM, middle, SawCut(((3.0, 0.0), (3.0, 3.0)), id="good"))
    assert world(PLAIN_ROOM, middle).unused_cuts == ("middle",)
    assert list(world(PLAIN_ROOM, middle).pieces) == ["room"]
    assert world(PLAIN_ROOM, aside).unused_cuts == ()
    assert len(world(PLAIN_ROOM, aside).pieces) == 2
    assert both.unused_cuts == ("middle",)
    assert len(both.pieces) == 2


def test_fixtures_are_left_out_by_hand():
    """By hand: 5 x 4 m less an island of 1.4 x 0.9 m."""
    assert area(world(ISLAND_KITCHEN), "kitchen") == pytest.approx(20 - 1.4 * 0.9)


def test_a_cut_under_an_island_is_a_seam_on_both_sides_of_it_by_hand():
    """By hand: of the 4 m of cut, 1.5 m lie before the island and 1.6 m behind it."""
    of = world(ISLAND_KITCHEN, SawCut(((2.5, 0.0), (2.5, 4.0)), id="cut"))
    lengths = sorted(s.chord.length for s in of.seams if s.id == "cut")
    assert lengths == pytest.approx([1.5, 1.6], abs=0.02)


def test_a_wide_opening_with_a_post_in_it_joins_its_rooms_on_both_sides():
    post = Fixture("post", box(1.8, 2.8, 2.2, 3.2), "post")
    rooms = [Room("near", box(0, 0, 4, 3)), Room("far", box(0, 3, 4, 6))]
    way = outside("front", ((1, 0), (2, 0)), "near")
    of = world(
        place(rooms, [way, door("wide", ((0, 3), (4, 3)), "near", "far", kind="wide")], (post,))
    )
    lengths = [s.chord.length for s in of.seams if s.id == "wide"]
    assert lengths == pytest.approx([1.8, 1.8], abs=0.03)


def test_a_counter_from_wall_to_wall_parts_a_room_without_a_seam():
    of = world(SPLIT_BY_A_COUNTER)
    assert sorted(of.pieces) == ["shop/1", "shop/2"]
    assert {s.id: s.b for s in of.seams} == {"west": "", "east": ""}
    assert {s.a for s in of.seams} == {"shop/1", "shop/2"}


def test_a_fixture_in_the_doorway_leaves_no_seam():
    assert ids(world(BLOCKED_DOOR)) == [("way-out", "outside", 0.9)]


def test_an_opening_from_a_room_to_itself_is_no_seam():
    rooms = [Room("room", box(0, 0, 4, 3))]
    inner = door("arch", ((2, 0), (2, 3)), "room", "room", kind="wide")
    of = world(place(rooms, [outside("front", ((1, 0), (2, 0)), "room"), inner]))
    assert [s.id for s in of.seams] == ["front"]


def test_an_outer_door_that_is_no_exit_is_no_way_out():
    floor = PLAIN_ROOM.floor
    of = build_world(floor, (Exit("other", "elsewhere"),))
    assert [(s.id, s.is_way_out) for s in of.seams] == [("front", False)]
    assert len(polygons_of(of.standing)) == 2, "indoors and outside are parted"


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


def test_the_way_out_ends_at_its_own_room():
    """Behind a room of 0.6 m the wall of the next one is no ground."""
    rooms = [Room("porch", box(0, 0, 4, 0.6)), Room("hall", box(0, 0.7, 4, 4))]
    ways = [
        outside("front", ((1, 0), (2, 0)), "porch"),
        door(
            "inner", ((2.5, 0.65), (3.5, 0.65)), "porch", "hall", threshold=box(2.5, 0.6, 3.5, 0.7)
        ),
    ]
    of = world(place(rooms, ways))
    assert of.standing.intersection(rectangle(0, 0.61, 2.5, 0.69)).area == 0
    assert of.outside.intersection(rectangle(0, 0.61, 2.5, 0.69)).area == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("name", AWKWARD)
def test_pieces_add_up_to_the_net_floor(name):
    of = world(AWKWARD[name])
    rooms = AWKWARD[name].floor
    net = shapely.union_all([room.polygon.shape for room in rooms.rooms])
    dry = shapely.union_all([fixture.polygon.shape for fixture in rooms.fixtures])
    thresholds = sum(o.threshold.shape.area for o in rooms.openings if o.threshold) / 2
    whole = sum(piece.shape.area for piece in of.pieces.values())
    assert net.difference(dry).area <= whole + 1e-6
    assert whole <= net.difference(dry).area + 2 * thresholds + 1e-6


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


def test_walls_that_nearly_line_up_leave_ground_outside():
    """Three rooms turned by 45 degrees: rounded to a tenth of a millimetre their common wall has
    legs of no length, at whose corners the library divided by zero."""
    bare = House((3.05, 5.6, 3.9), (3.15,), 0.15, ())
    ways = [Passage(((0, 0), OUTSIDE), "outside", 1.1, -0.15, 1.9, 0.0)]
    for one, two in [((0, 0), (1, 0)), ((1, 0), (2, 0))]:
        x = bare.box(one)[2]
        ways.append(Passage((one, two), "door", x, 1.175, round(x + 0.15, 4), 1.975))
    house = House(bare.columns, bare.rows, bare.wall, tuple(ways))
    of = build_world(join_thresholds(turned(house.floor(), 45.0)), house.exits())
    assert of.outside.area > 100
    assert of.outside.intersection(of.pieces["r10"].shape).area < 1e-6


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
