"""What a model tells, made into rooms and openings; houses drawn by hand, metres."""

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given
from shapely import box
from tests.strategies.floors import floors

from farwall.cli.read import one_storey
from farwall.facts.reading import Reading, Stated, Storey
from farwall.floor.faults import faults_of
from farwall.job.from_reading import job_from_reading
from farwall.readers.told.assemble import assemble
from farwall.readers.told.nouns import Told, ToldFixture, ToldOpening, ToldSpace, ToldWindow

HALL = ToldSpace("hall", box(0, 0, 4, 3), "Hall", "ground", 0.0, 2.5)
BATH = ToldSpace("bath", box(4.1, 0, 7, 3), "Bath", "ground", 0.0, 2.5)
GROUND = Storey("ground", "Ground", 0.0)
DOOR = ToldOpening("d1", ((4.05, 1.0), (4.05, 1.9)), True, ("hall", "bath"), "ground", 0.9)
FAR = np.array([5e5, 5.4e6])
FRONT = ToldOpening("front", ((0.0, 1.0), (0.0, 2.0)), True, ("hall",), "ground", 1.0)


def told(
    spaces: tuple[ToldSpace, ...] = (HALL, BATH),
    openings: tuple[ToldOpening, ...] = (DOOR, FRONT),
    **more: object,
) -> Told:
    plain = Told("IFC", "m", "m", 1.0, spaces, openings, storeys=(GROUND,))
    return replace(plain, **more)  # type: ignore[arg-type]


def codes(reading: Reading) -> set[str]:
    return {note.code for note in (*reading.left, *reading.mended, *reading.asks)}


def words(reading: Reading, code: str) -> str:
    return "\n".join(n.what for n in (*reading.left, *reading.mended, *reading.asks)
                     if n.code == code)  # fmt: skip


def test_rooms_and_doors_come_as_told() -> None:
    reading = assemble(told())
    assert [(room.id, room.name) for room in reading.floor.rooms] == [
        ("hall", "Hall"),
        ("bath", "Bath"),
    ]
    inside, front = reading.floor.openings
    assert (inside.kind, set(inside.rooms), inside.width_m) == ("door", {"hall", "bath"}, 0.9)
    assert inside.line == ((4.05, 1.0), (4.05, 1.9))
    assert (front.kind, front.rooms) == ("outside", ("hall",))
    assert [way.opening for way in reading.exits] == ["front"]
    assert reading.ceilings_m == {"hall": 2.5, "bath": 2.5}
    assert codes(reading) == {"north", "windows", "water"}  # what only sun, air and water need
    assert faults_of(reading.floor, reading.exits) == []


@pytest.mark.parametrize("turn_deg", [0, 33, 90, 200])
def test_doors_join_by_geometry_however_the_house_is_turned(turn_deg: float) -> None:
    c, s = math.cos(math.radians(turn_deg)), math.sin(math.radians(turn_deg))

    def turned(x: float, y: float) -> tuple[float, float]:
        return c * x - s * y, s * x + c * y

    spaces = tuple(
        replace(space, shape=shapely.transform(space.shape, lambda p: p @ [[c, s], [-s, c]]))
        for space in (HALL, BATH)
    )
    door = replace(DOOR, seam=(turned(4.05, 1.0), turned(4.05, 1.9)), relations=())
    (opening,) = assemble(told(spaces, (door,))).floor.openings
    assert set(opening.rooms) == {"hall", "bath"}


def test_geometry_goes_before_relations_and_both_answers_are_told() -> None:
    store = ToldSpace("store", box(0, 5, 2, 7), "Store", "ground")
    wrong = replace(DOOR, relations=("hall", "store"))
    reading = assemble(told((HALL, BATH, store), (wrong, FRONT)))
    assert set(reading.floor.openings[0].rooms) == {"hall", "bath"}
    said = words(reading, "door-disagrees")
    assert "Hall and Bath" in said or "Bath and Hall" in said
    assert "Hall and Store" in said


def test_a_third_space_in_the_relations_is_named() -> None:
    store = ToldSpace("store", box(0, 5, 2, 7), "Store", "ground")
    reading = assemble(
        told((HALL, BATH, store), (replace(DOOR, relations=("hall", "store", "bath")),))
    )
    assert set(reading.floor.openings[0].rooms) == {"hall", "bath"}
    assert "Store" in words(reading, "door-third-space")


def test_relations_hold_where_the_wall_is_deeper_than_the_probe() -> None:
    bath = replace(BATH, shape=box(4.7, 0, 7, 3))
    door = replace(DOOR, seam=((4.0, 1.0), (4.0, 1.9)))
    reading = assemble(told((HALL, bath), (door, FRONT), wall_m=0.5))
    assert set(reading.floor.openings[0].rooms) == {"hall", "bath"}
    assert "door-by-relation" in codes(reading)


def test_a_cubicle_door_has_its_room_on_both_sides() -> None:
    door = ToldOpening("c", ((2.0, 0.0), (2.0, 0.7)), True, ("hall",), "ground", 0.7)
    reading = assemble(told(openings=(door, FRONT)))
    assert reading.floor.openings[0].rooms == ("hall", "hall")
    assert reading.floor.openings[0].kind == "door"


@pytest.mark.parametrize("width", [1e12, -3.0, 0.01, float("nan"), float("inf")])
def test_a_told_width_that_cannot_be_is_not_believed(width: float) -> None:
    reading = assemble(told(openings=(replace(DOOR, width_m=width), FRONT)))
    assert reading.floor.openings[0].width_m == pytest.approx(0.9)


def test_a_seam_beside_its_wall_is_seated_in_it() -> None:
    door = replace(DOOR, seam=((3.9, 1.0), (3.9, 1.9)), relations=())
    (opening,) = assemble(told(openings=(door,))).floor.openings
    assert set(opening.rooms) == {"hall", "bath"}
    assert 4.0 <= opening.line[0][0] <= 4.1


@pytest.mark.parametrize(("gap", "kind"), [(0.0, "wide"), (0.1, "cased")])
def test_an_opening_without_a_leaf_is_cased_in_a_wall_and_wide_without_one(
    gap: float, kind: str
) -> None:
    bath = replace(BATH, shape=box(4 + gap, 0, 7, 3))
    way = ToldOpening("v", ((4 + gap / 2, 0.0), (4 + gap / 2, 3.0)), False, (), "ground")
    reading = assemble(told((HALL, bath), (way, FRONT)))
    assert [(o.kind, set(o.rooms)) for o in reading.floor.openings if o.id == "v"] == [
        (kind, {"hall", "bath"})
    ]
    assert faults_of(reading.floor, reading.exits) == []


def test_a_virtual_boundary_told_from_both_sides_is_one_opening() -> None:
    bath = replace(BATH, shape=box(4, 0, 7, 3))
    both = tuple(
        ToldOpening(name, ((4.0, 0.0), (4.0, 3.0)), False, (name,), "ground")
        for name in ("hall", "bath")
    )
    reading = assemble(told((HALL, bath), both))
    assert len(reading.floor.openings) == 1


def test_a_long_edge_opens_piece_by_piece_where_the_rooms_change() -> None:
    low, high = (
        ToldSpace("low", box(4, 0, 7, 1.5), "Low", "ground"),
        ToldSpace("high", box(4, 1.5, 7, 3), "High", "ground"),
    )
    way = ToldOpening("v", ((4.0, 0.0), (4.0, 3.0)), False, (), "ground")
    reading = assemble(told((HALL, low, high), (way,)))
    assert [set(o.rooms) for o in reading.floor.openings] == [{"hall", "low"}, {"hall", "high"}]
    assert [o.width_m for o in reading.floor.openings] == [1.5, 1.5]


def test_a_flag_that_the_rooms_speak_against_is_told() -> None:
    reading = assemble(told(openings=(replace(DOOR, said_outside=True), FRONT)))
    assert set(reading.floor.openings[0].rooms) == {"hall", "bath"}
    assert "door-flag" in codes(reading)


def test_a_door_called_inside_with_nothing_behind_is_no_way_out() -> None:
    reading = assemble(told(openings=(DOOR, replace(FRONT, said_outside=False))))
    assert reading.exits == ()
    assert {"way-out-unsure", "way-out"} <= codes(reading)


def test_a_door_into_floor_that_nobody_tells_is_no_way_out() -> None:
    ring = [
        ToldSpace("a", box(0, 0, 9, 2), "A", "ground"),
        ToldSpace("b", box(0, 2.1, 2, 6), "B", "ground"),
        ToldSpace("c", box(7, 2.1, 9, 6), "C", "ground"),
        ToldSpace("d", box(0, 6.1, 9, 8), "D", "ground"),
    ]
    door = ToldOpening("x", ((4.0, 2.05), (5.0, 2.05)), True, (), "ground", 1.0)
    reading = assemble(told(tuple(ring), (door,)))
    assert reading.floor.openings == ()
    assert "opening-to-unclosed" in codes(reading)
    court = assemble(told(tuple(ring), (replace(door, said_outside=True),)))
    assert [o.kind for o in court.floor.openings] == ["outside"]


def test_a_cupboard_door_to_a_shaft_in_the_core_is_no_way_out() -> None:
    ring = [
        ToldSpace("a", box(0, 0, 6, 2), "A", "ground"),
        ToldSpace("b", box(0, 2.1, 2.6, 2.7), "B", "ground"),
        ToldSpace("c", box(3.4, 2.1, 6, 2.7), "C", "ground"),
        ToldSpace("d", box(0, 2.8, 6, 5), "D", "ground"),
    ]
    door = ToldOpening("x", ((2.75, 2.05), (3.25, 2.05)), True, (), "ground", 0.6)
    reading = assemble(told(tuple(ring), (door,)))
    assert reading.floor.openings == ()
    assert "opening-to-unclosed" in codes(reading)


def test_a_relation_without_a_place_is_put_on_the_shared_wall() -> None:
    reading = assemble(told(openings=(replace(DOOR, seam=None), FRONT)))
    opening = reading.floor.openings[0]
    assert set(opening.rooms) == {"hall", "bath"}
    assert opening.width_m == pytest.approx(0.9)
    assert "door-placed" in codes(reading)
    far = replace(BATH, shape=box(9, 0, 12, 3))
    reading = assemble(told((HALL, far), (replace(DOOR, seam=None), FRONT)))
    assert [o.id for o in reading.floor.openings] == ["front"]
    assert "door-unplaced" in codes(reading)


def test_rooms_without_any_opening_are_named() -> None:
    reading = assemble(told(openings=(FRONT,)))
    assert "Bath" in words(reading, "no-way-in")
    assert "Hall" not in words(reading, "no-way-in")


def test_a_space_drawn_twice_is_one_room_and_its_relations_hold() -> None:
    twin = replace(BATH, id="bath-again")
    reading = assemble(
        told((HALL, BATH, twin), (replace(DOOR, relations=("hall", "bath-again")), FRONT))
    )
    assert [room.id for room in reading.floor.rooms] == ["hall", "bath"]
    assert "room-doubled" in codes(reading)
    assert "door-disagrees" not in codes(reading)


def test_a_zone_over_rooms_is_no_room() -> None:
    zone = ToldSpace("zone", box(0, 0, 7, 3), "Flat", "ground")
    reading = assemble(told((zone, HALL, BATH)))
    assert [room.id for room in reading.floor.rooms] == ["hall", "bath"]
    assert "Flat" in words(reading, "zone-over-rooms")


def test_shared_floor_goes_to_the_smaller_room() -> None:
    bath = replace(BATH, shape=box(3.5, 0, 6, 3))
    reading = assemble(told((HALL, bath), (FRONT,)))
    assert [room.polygon.shape.area for room in reading.floor.rooms] == pytest.approx([10.5, 7.5])
    assert "overlap-cut" in codes(reading)
    assert faults_of(reading.floor, reading.exits) == []


def test_a_room_above_another_of_its_storey_gets_a_storey_of_its_own() -> None:
    loft = ToldSpace("loft", box(0, 0, 4, 3), "Loft", "ground", 2.6)
    reading = assemble(told((HALL, BATH, loft)))
    assert len({room.storey for room in reading.floor.rooms}) == 2
    assert "storey-split" in codes(reading)
    assert set(reading.floor.openings[0].rooms) == {"hall", "bath"}


def test_spaces_without_a_storey_are_shelved_by_height() -> None:
    upper = ToldSpace("upper", box(0, 0, 4, 3), "Upper", "", 2.8)
    half = ToldSpace("half", box(4.1, 0, 7, 3), "Half", "", 0.9)
    reading = assemble(
        told(
            (replace(HALL, storey=""), half, upper),
            (replace(DOOR, storey="", relations=()),),
            storeys=(),
        )
    )
    by_id = reading.floor.room_by_id
    assert by_id["hall"].storey == by_id["half"].storey != by_id["upper"].storey
    assert [s.elevation_m for s in reading.storeys] == [0.0, 2.8]


def test_a_door_between_rooms_of_two_storeys_at_one_height_joins_them() -> None:
    half = Storey("half", "Half a stair up", 0.5)
    bath = replace(BATH, storey="half", floor_m=0.5)
    reading = assemble(
        told((HALL, bath), (replace(DOOR, foot_m=0.0), FRONT), storeys=(GROUND, half))
    )
    assert set(reading.floor.openings[0].rooms) == {"hall", "bath"}
    assert faults_of(reading.floor, reading.exits) == []


def test_steps_stand_where_rooms_of_two_heights_meet() -> None:
    sunken = replace(BATH, floor_m=-0.15)
    reading = assemble(told((HALL, sunken)))
    (step,) = reading.steps
    # The seam runs up the sheet: the hall lies to its left, and higher.
    assert step.rise_m == pytest.approx(0.15)
    assert reading.levels_m == {"hall": 0.0, "bath": -0.15}
    assert assemble(told((HALL, replace(BATH, floor_m=0.006)))).steps == ()


def test_outside_doors_above_the_ground_are_no_ways_out() -> None:
    upper = Storey("up", "Up", 3.0)
    room = ToldSpace("bed", box(0, 0, 4, 3), "Bed", "up", 3.0)
    balcony = ToldOpening("b", ((0.0, 1.0), (0.0, 2.0)), True, ("bed",), "up", 1.0)
    reading = assemble(told((HALL, BATH, room), (DOOR, FRONT, balcony), storeys=(GROUND, upper)))
    assert [o.rooms for o in reading.floor.openings if o.kind == "outside"] == [
        ("hall",),
        ("bed",),
    ]
    assert [way.opening for way in reading.exits] == ["front"]
    assert "Up" in words(reading, "way-out")


def test_stated_areas_are_compared_once_a_class_and_never_used() -> None:
    spaces = (
        replace(HALL, stated=Stated(13.0, "wall-centre")),
        replace(BATH, stated=Stated(9.8, "wall-centre")),
    )
    reading = assemble(told(spaces))
    assert [room.polygon.shape.area for room in reading.floor.rooms] == pytest.approx([12, 8.7])
    said = words(reading, "stated-differs")
    assert "wall centres" in said
    assert "88.8 to 92.3 %" in said
    same = assemble(told((replace(HALL, stated=Stated(12.0, "net")), BATH)))
    assert "stated-differs" not in codes(same)


def test_what_sun_air_and_water_need_is_asked_for_where_it_is_not_told() -> None:
    window = ToldWindow(((5.0, 3.2), (6.0, 3.2)), None, 1.2, "ground")
    things = tuple(
        ToldFixture(kind, box(1, 1, 1.2, 1.2), "ground") for kind in ("drain", "tap", "outlet")
    )
    full = told(north_deg=30.0, windows=(replace(window, sill_m=0.9),), fixtures=things)
    assert assemble(full).asks == ()
    bare = assemble(
        told((replace(HALL, height_m=None), BATH), windows=(window,), fixtures=things[:1])
    )
    assert [note.code for note in bare.asks] == ["north", "windows", "ceilings", "water"]
    assert "outlet, tap" in words(bare, "water")
    assert "1 of 2 rooms" in words(bare, "ceilings")


def test_windows_light_the_room_at_their_wall() -> None:
    window = ToldWindow(((5.0, 3.2), (6.0, 3.2)), 0.9, 1.2, "ground")
    reading = assemble(told(windows=(window,)))
    assert [(w.room, w.sill_m, w.height_m) for w in reading.floor.windows] == [("bath", 0.9, 1.2)]


def test_fixtures_in_no_room_are_told_and_left_out() -> None:
    drain = ToldFixture("drain", box(5, 1, 5.2, 1.2), "ground")
    lost = ToldFixture("drain", box(50, 1, 50.2, 1.2), "ground")
    reading = assemble(told(fixtures=(drain, lost)))
    assert [f.kind for f in reading.floor.fixtures] == ["drain"]
    assert "fixture-nowhere" in codes(reading)


def test_a_small_drain_is_drawn_large_enough_to_be_held() -> None:
    drain = ToldFixture("drain", box(5, 1, 5.08, 1.08), "ground")
    reading = assemble(told(fixtures=(drain,)))
    (fixture,) = reading.floor.fixtures
    assert fixture.polygon.shape.bounds == pytest.approx((4.98, 0.98, 5.1, 1.1))
    assert faults_of(reading.floor, reading.exits) == []


def test_outdoor_spaces_are_told_and_lead_outside() -> None:
    deck = ToldSpace("deck", box(-3, 0, -0.1, 3), "Deck", "ground", 0.0, outdoors=True)
    front = replace(FRONT, seam=((-0.05, 1.0), (-0.05, 2.0)), relations=("hall", "deck"))
    reading = assemble(told((HALL, BATH, deck), (DOOR, front)))
    assert [room.id for room in reading.floor.rooms] == ["hall", "bath"]
    assert reading.floor.openings[1].kind == "outside"
    assert len(reading.exits) == 1
    assert "outside-slab" in codes(reading)


def test_no_number_and_no_outline_are_told_calmly() -> None:
    nan = float("nan")
    with np.errstate(invalid="ignore"):
        no_number = shapely.Polygon([(0, 0), (nan, 0), (1, 1)])
    spaces = (
        HALL,
        ToldSpace("x", no_number, "No number"),
        ToldSpace("y", shapely.Polygon(), "Nothing"),
        ToldSpace("z", shapely.Polygon([(9, 0), (10, 1), (10, 0), (9, 1)]), "Crossed", "ground"),
    )
    broken = ToldOpening("o", ((nan, 0.0), (1.0, 0.0)), True, (), "ground")
    reading = assemble(told(spaces, (broken, FRONT)))
    assert {"room-unsound", "opening-unsound", "outline-mended"} <= codes(reading)
    assert faults_of(reading.floor, reading.exits) == []
    assert assemble(told((), ())).floor.rooms == ()


def test_a_model_at_map_coordinates_is_brought_near() -> None:
    def far(space: ToldSpace) -> ToldSpace:
        return replace(space, shape=shapely.transform(space.shape, lambda p: p + FAR))

    door = replace(DOOR, seam=((500004.05, 5400001.0), (500004.05, 5400001.9)))
    reading = assemble(told((far(HALL), far(BATH)), (door,)))
    assert reading.floor.rooms[0].polygon.shape.bounds == (0.0, 0.0, 4.0, 3.0)
    assert set(reading.floor.openings[0].rooms) == {"hall", "bath"}
    assert "origin-moved" in codes(reading)


@given(floors())
def test_houses_told_without_relations_come_back_with_their_openings(made) -> None:
    floor, _ = made
    spaces = tuple(ToldSpace(r.id, r.polygon.shape, r.name, "s") for r in floor.rooms)
    openings = tuple(
        ToldOpening(o.id, o.line, o.kind in {"door", "outside"}, (), "s", o.width_m)
        for o in floor.openings
    )
    reading = assemble(Told("IFC", "m", "m", 1.0, spaces, openings, storeys=(Storey("s", "S"),)))
    assert {r.id: r.polygon for r in reading.floor.rooms}.keys() == floor.room_by_id.keys()
    for room in reading.floor.rooms:
        same = floor.room_by_id[room.id].polygon.shape
        assert room.polygon.shape.symmetric_difference(same).area < 1e-3
    joined = sorted((o.kind == "outside", sorted(o.rooms)) for o in reading.floor.openings)
    assert joined == sorted((o.kind == "outside", sorted(o.rooms)) for o in floor.openings)
    assert faults_of(reading.floor, reading.exits) == []


def test_a_job_of_one_storey_takes_its_own_windows_and_fixtures_alone() -> None:
    upper = Storey("up", "Up", 3.0)
    above = ToldSpace("bed", box(0, 0, 4, 3), "Bed", "up", 3.0)
    things = (
        ToldFixture("tub", box(1, 1, 2, 2), "ground"),
        ToldFixture("tub", box(1.5, 1, 2.5, 2), "up"),
    )
    panes = tuple(
        ToldWindow(((1.0, 3.0), (2.0, 3.0)), 0.9, 1.2, storey) for storey in ("ground", "up")
    )
    reading = assemble(
        told((HALL, BATH, above), storeys=(GROUND, upper), fixtures=things, windows=panes)
    )
    assert list(reading.fixture_storeys.values()) == ["ground", "up"]
    job = job_from_reading(reading, storey="Ground")
    assert [fixture.id for fixture in job.floor.fixtures] == ["tub"]
    assert [window.room for window in job.floor.windows] == ["hall"]
    assert [fixture.id for fixture in one_storey(reading, "Up").floor.fixtures] == ["tub-2"]
    assert [window.room for window in one_storey(reading, "Up").floor.windows] == ["bed"]
