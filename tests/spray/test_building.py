"""A house built of the facts of a floor: its pieces, its seams, the ground outside."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from shapely import box as rectangle
from tests.shapes import (
    AWKWARD,
    ISLAND_KITCHEN,
    PLAIN_ROOM,
    TWO_ROOMS,
    box,
    door,
    outside,
    place,
)
from tests.spray.hand_floors import (
    BLOCKED_DOOR,
    SPLIT_BY_A_COUNTER,
    world,
)
from tests.strategies.floors import OUTSIDE, House, Passage, turned
from tests.strategies.houses import house

from farwall.floor.geometry import polygons_of
from farwall.floor.nouns import Exit, Fixture, Room, SawCut
from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from
from farwall.spray.building import build_world, with_cut

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


def parts_of(of):
    """All that a house is made of, to the last digit, in its order."""
    pieces = [
        (name, piece.id, piece.room, piece.called, piece.shape.wkb)
        for name, piece in of.pieces.items()
    ]
    return pieces, of.seams, of.outside.wkb, of.unused_cuts


def crossing(floor, across, share):
    """A cut from side to side of the house at a share of its width or depth."""
    west, south, east, north = shapely.total_bounds([r.polygon.shape for r in floor.rooms]).tolist()
    if across:
        y = south + share * (north - south)
        return SawCut(((west - 1, y), (east + 1, y)), id="more")
    x = west + share * (east - west)
    return SawCut(((x, south - 1), (x, north + 1)), id="more")


@pytest.mark.parametrize("seed", range(12))
def test_a_house_with_one_cut_more_is_the_house_built_with_it(seed):
    """Both ways of building agree to the last digit, whatever the cut runs through."""
    job = job_from(house(seed), "a drawn house")
    floor, exits = join_thresholds(job.floor), job.exits
    bare = build_world(floor, exits)
    parted = 0
    for across in (False, True):
        for share in (0.2, 0.35, 0.5, 0.65, 0.8):
            cut = crossing(floor, across, share)
            whole = build_world(replace(floor, saw_cuts=(*floor.saw_cuts, cut)), exits)
            assert parts_of(with_cut(bare, floor, exits, cut)) == parts_of(whole)
            parted += len(whole.pieces) > len(bare.pieces)
    assert parted


def test_a_cut_more_in_one_room_leaves_the_others_as_they_are():
    floor, exits = TWO_ROOMS.floor, TWO_ROOMS.exits
    bare = build_world(floor, exits)
    x0, y0, x1, y1 = floor.room_by_id["back"].polygon.shape.bounds
    middle = (x0 + x1) / 2
    cut = SawCut(((middle, y0 + 0.1), (middle, y1)), id="more")
    reached = {name for name, one in bare.pieces.items() if one.shape.bounds[3] >= y0 + 0.08}
    of = with_cut(bare, floor, exits, cut)
    assert {name for name, one in of.pieces.items() if one is bare.pieces.get(name)} == (
        set(bare.pieces) - reached
    )


def test_a_cut_more_that_narrows_a_doorway_is_told_as_unused():
    floor, exits = TWO_ROOMS.floor, TWO_ROOMS.exits
    bare = build_world(floor, exits)
    (x0, y0), (x1, _) = floor.opening_by_id["between"].line
    middle = (x0 + x1) / 2
    north = floor.room_by_id["back"].polygon.shape.bounds[3]
    cut = SawCut(((middle, y0), (middle, north)), id="more")
    assert with_cut(bare, floor, exits, cut).unused_cuts == ("more",)


def test_a_house_with_an_unused_cut_is_built_whole_with_one_more():
    """What two cuts part together is found, though the first alone was not used."""
    floor, exits = TWO_ROOMS.floor, TWO_ROOMS.exits
    (x0, y0), (x1, _) = floor.opening_by_id["between"].line
    north = floor.room_by_id["back"].polygon.shape.bounds[3]
    middle = (x0 + x1) / 2
    narrowing = SawCut(((middle, y0), (middle, north)), id="first")
    floor = replace(floor, saw_cuts=(narrowing,))
    cut = SawCut(((middle - 1, y0 + 1), (middle + 1, y0 + 1)), id="more")
    whole = build_world(replace(floor, saw_cuts=(narrowing, cut)), exits)
    of = with_cut(build_world(floor, exits), floor, exits, cut)
    assert parts_of(of) == parts_of(whole)
