"""Odd building models, each made for the one thing that it has."""

import builtins
import math
from pathlib import Path

import pytest

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.readers.any_plan import read_bytes

pytest.importorskip("ifcopenshell")

from tests.readers.ifc.making import Making, box

HALL, BATH = box(0, 0, 4, 3), box(4.1, 0, 7, 3)
IN_WALL = box(4.0, 1.0, 4.1, 1.9)
FRONT = box(-0.2, 1.0, 0.0, 2.0)


def scaled(points, by: float):
    return [(x * by, y * by) for x, y in points]


def house(**more) -> tuple[Making, object, object, object]:
    """Hall and bath, a door between them and one to the street."""
    made = Making(**more)
    by = {"m": 1.0, "mm": 1000.0, "cm": 100.0, "ft": 1 / 0.3048, "in": 1 / 0.0254}[made.unit]
    ground = made.storey("Ground")
    hall = made.space(ground, "1", scaled(HALL, by), height=2.5 * by, long="Hall")
    bath = made.space(ground, "2", scaled(BATH, by), height=2.5 * by, long="Bath")
    made.door(ground, scaled(IN_WALL, by), 0.9 * by, height=2.1 * by)
    made.door(ground, scaled(FRONT, by), 1.0 * by, height=2.1 * by, external=True)
    return made, ground, hall, bath


def codes(reading: Reading) -> set[str]:
    return {note.code for note in (*reading.left, *reading.mended, *reading.asks)}


def names(reading: Reading, opening) -> set[str]:
    return {reading.floor.room_by_id[room].name for room in opening.rooms}


@pytest.mark.parametrize("schema", ["IFC2X3", "IFC4", "IFC4X3"])
@pytest.mark.parametrize("unit", ["m", "mm", "cm", "ft", "in"])
def test_rooms_and_doors_come_in_metres_whatever_the_unit(schema: str, unit: str) -> None:
    reading = read_bytes(house(schema=schema, unit=unit)[0].data())
    assert (reading.format, reading.length_unit, reading.header_unit) == ("IFC", unit, unit)
    assert [room.polygon.shape.area for room in reading.floor.rooms] == pytest.approx([12, 8.7])
    assert list(reading.ceilings_m.values()) == pytest.approx([2.5, 2.5])
    inside, front = reading.floor.openings
    assert (inside.kind, names(reading, inside)) == ("door", {"Hall", "Bath"})
    assert inside.width_m == pytest.approx(0.9)
    assert (front.kind, names(reading, front)) == ("outside", {"Hall"})
    assert len(reading.exits) == 1
    assert faults_of(reading.floor, reading.exits) == []


def test_ids_are_the_files_own() -> None:
    made, _, hall, _ = house()
    assert read_bytes(made.data()).floor.rooms[0].id == hall.GlobalId


def test_a_turned_site_turns_rooms_and_doors_together() -> None:
    way = (math.cos(0.7), math.sin(0.7))
    reading = read_bytes(house(site_turn=way)[0].data())
    areas = [room.polygon.shape.area for room in reading.floor.rooms]
    assert areas == pytest.approx([12, 8.7], rel=1e-4)  # corners are kept to 0.1 mm
    assert names(reading, reading.floor.openings[0]) == {"Hall", "Bath"}
    (ax, ay), (bx, by) = reading.floor.openings[0].line
    assert abs((bx - ax) * way[0] + (by - ay) * way[1]) < 1e-3


def test_north_is_told_clockwise_from_up() -> None:
    reading = read_bytes(house(north=(0.5, math.sqrt(0.75)))[0].data())
    assert reading.floor.north_deg == pytest.approx(30.0)
    assert read_bytes(house()[0].data()).floor.north_deg is None


def test_a_file_without_a_unit_is_asked_for_it() -> None:
    data = house(unit_told=False)[0].data()
    reading = read_bytes(data)
    assert reading.scale_m_per_unit is None
    assert "scale" in codes(reading)
    told = read_bytes(data, scale_m_per_unit=0.3048)
    assert told.floor.rooms[0].polygon.shape.area == pytest.approx(12 * 0.3048**2, rel=1e-3)
    assert (told.length_unit, told.scale_m_per_unit) == ("ft", 0.3048)


def test_a_unit_that_no_person_could_live_in_is_doubted() -> None:
    made = Making(unit="mm")
    ground = made.storey("Ground")
    made.space(ground, "1", HALL)  # metres written as millimetres
    big = Making(unit="m")
    floor = big.storey("Ground")
    big.space(floor, "1", scaled(HALL, 1000), height=2500.0)
    big.door(floor, scaled(FRONT, 1000), 1000.0, height=2100.0)
    assert "unit-doubted" in codes(read_bytes(big.data()))
    assert "unit-doubted" not in codes(read_bytes(house()[0].data()))
    right = read_bytes(big.data(), scale_m_per_unit=0.001)
    assert right.floor.rooms[0].polygon.shape.area == pytest.approx(12)
    assert right.header_unit == "m"
    assert "unit-doubted" not in codes(right)
    assert read_bytes(made.data()).floor.rooms == ()


def test_a_body_drawn_downwards_has_its_floor_at_its_lowest_face() -> None:
    made = Making()
    ground = made.storey("Ground")
    made.space(ground, "1", HALL, height=-2.4, base=2.6)
    reading = read_bytes(made.data())
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(12)
    assert list(reading.levels_m.values()) == pytest.approx([0.2])
    assert list(reading.ceilings_m.values()) == pytest.approx([2.4])


@pytest.mark.parametrize("radius", [0.4, 0.6, 2.0, 9.0])
def test_a_round_room_keeps_its_area_to_a_tenth_of_a_percent(radius: float) -> None:
    made = Making()
    ground = made.storey("Ground")
    f = made.model
    middle = f.createIfcAxis2Placement2D(f.createIfcCartesianPoint((0.0, 0.0)), None)
    ring = f.createIfcCircleProfileDef("AREA", None, middle, radius)
    way = f.createIfcDirection((0.0, 0.0, 1.0))
    body = f.createIfcExtrudedAreaSolid(ring, made.axes(), way, 2.5)
    made.space(ground, "1", [], shape=made.shape(body))
    (room,) = read_bytes(made.data()).floor.rooms
    assert room.polygon.shape.area == pytest.approx(math.pi * radius**2, rel=1e-3)


def test_a_model_at_map_coordinates_is_read_to_the_millimetre() -> None:
    made = Making()
    made.building.ObjectPlacement = made.site_at = made.at((5e5, 5.4e6, 300.0), way=(0.8, 0.6))
    ground = made.storey("Ground")
    made.space(ground, "1", HALL, long="Hall")
    made.space(ground, "2", BATH, long="Bath")
    made.door(ground, IN_WALL, 0.9)
    reading = read_bytes(made.data())
    areas = [room.polygon.shape.area for room in reading.floor.rooms]
    assert areas == pytest.approx([12, 8.7], rel=1e-3)
    assert names(reading, reading.floor.openings[0]) == {"Hall", "Bath"}
    assert "origin-moved" in codes(reading)


def test_representations_are_not_added_up() -> None:
    made = Making()
    ground = made.storey("Ground")
    f = made.model
    corner = f.createIfcCartesianPoint((0.0, 0.0, 0.0))
    shapes = [
        f.createIfcShapeRepresentation(made.context, "Body", "SweptSolid", [made.block(HALL, 2.5)]),
        f.createIfcShapeRepresentation(
            made.context, "Box", "BoundingBox", [f.createIfcBoundingBox(corner, 9.0, 9.0, 3.0)]
        ),
        f.createIfcShapeRepresentation(
            made.context, "FootPrint", "Curve2D", [made.polyline(box(0, 0, 8, 8))]
        ),
    ]
    made.space(ground, "1", HALL, shape=f.createIfcProductDefinitionShape(None, None, shapes))
    assert read_bytes(made.data()).floor.rooms[0].polygon.shape.area == pytest.approx(12)


def test_a_space_with_a_footprint_alone_is_a_room() -> None:
    made = Making()
    ground = made.storey("Ground")
    curve = made.model.createIfcGeometricCurveSet([made.polyline(HALL)])
    made.space(ground, "1", [], shape=made.shape(curve, kind="GeometricCurveSet", name="FootPrint"))
    reading = read_bytes(made.data())
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(12)
    assert "footprint-taken" in codes(reading)


def test_a_space_without_a_shape_is_told() -> None:
    made = Making()
    ground = made.storey("Ground")
    made.space(ground, "1", HALL, long="Hall")
    corner = made.model.createIfcCartesianPoint((0.0, 0.0, 0.0))
    only_box = made.model.createIfcBoundingBox(corner, 9.0, 9.0, 3.0)
    made.space(ground, "2", [], shape=made.shape(only_box, kind="BoundingBox", name="Box"))
    reading = read_bytes(made.data())
    assert [room.name for room in reading.floor.rooms] == ["Hall"]
    assert any("“2”" in note.what for note in reading.left if note.code == "room-unsound")


def test_a_clipped_body_keeps_its_floor() -> None:
    made = Making()
    ground = made.storey("Attic")
    f = made.model
    plane = f.createIfcPlane(
        f.createIfcAxis2Placement3D(
            f.createIfcCartesianPoint((0.0, 0.0, 1.0)),
            f.createIfcDirection((-0.6, 0.0, 0.8)),
            f.createIfcDirection((0.8, 0.0, 0.6)),
        )
    )
    half = f.createIfcHalfSpaceSolid(plane, False)
    cut = f.createIfcBooleanClippingResult("DIFFERENCE", made.block(HALL, 5.0), half)
    made.space(ground, "1", [], shape=made.shape(cut, kind="Clipping"))
    reading = read_bytes(made.data())
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(12)


def test_faces_without_a_solid_give_a_floor() -> None:
    made = Making()
    ground = made.storey("Ground")
    f = made.model
    low, high = ([(x, y, z) for x, y in HALL] for z in (0.0, 2.5))
    rings = [low, high[::-1], *([low[i], low[i - 1], high[i - 1], high[i]] for i in range(4))]
    faces = [
        f.createIfcFace(
            [
                f.createIfcFaceOuterBound(
                    f.createIfcPolyLoop(
                        [f.createIfcCartesianPoint(tuple(map(float, p))) for p in ring]
                    ),
                    True,
                )
            ]
        )
        for ring in rings
    ]
    model = f.createIfcFaceBasedSurfaceModel([f.createIfcConnectedFaceSet(faces)])
    made.space(ground, "1", [], shape=made.shape(model, kind="SurfaceModel"))
    assert read_bytes(made.data()).floor.rooms[0].polygon.shape.area == pytest.approx(12)


def test_a_floor_on_two_levels_is_one_room_and_said() -> None:
    made = Making()
    ground = made.storey("Ground")
    solids = made.block(box(0, 0, 4, 3), 2.5), made.block(box(4, 0, 6, 3), 2.3, 0.2)
    made.space(ground, "1", [], shape=made.shape(*solids))
    reading = read_bytes(made.data())
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(18)
    assert "floor-stepped" in codes(reading)


def test_a_window_seat_is_no_floor() -> None:
    made = Making()
    ground = made.storey("Ground")
    solids = made.block(box(0, 0, 4, 3), 2.5), made.block(box(1, 3, 3, 3.4), 1.6, 0.8)
    made.space(ground, "1", [], shape=made.shape(*solids))
    assert read_bytes(made.data()).floor.rooms[0].polygon.shape.area == pytest.approx(12)


def test_a_door_without_a_hole_lies_where_it_is_placed() -> None:
    made = Making()
    ground = made.storey("Ground")
    made.space(ground, "1", HALL, long="Hall")
    made.space(ground, "2", box(0, 3.1, 4, 6), long="Bath")
    made.door(ground, None, 0.9, at=(1.0, 3.05))
    reading = read_bytes(made.data())
    (opening,) = reading.floor.openings
    assert names(reading, opening) == {"Hall", "Bath"}
    assert opening.line == ((1.0, 3.05), (1.9, 3.05))


def test_a_door_in_a_wide_front_lies_where_it_is_placed_in_it() -> None:
    made = Making()
    ground = made.storey("Ground")
    made.space(ground, "1", HALL, long="Hall")
    made.door(ground, box(0.5, -0.2, 3.5, 0.0), 1.0, at=(2.3, -0.1), external=True)
    (opening,) = read_bytes(made.data()).floor.openings
    assert sorted(x for x, _ in opening.line) == pytest.approx([2.3, 3.3])
    assert opening.width_m == 1.0


def test_relations_that_name_another_room_are_told_beside_the_geometry() -> None:
    made, ground, hall, _ = house()
    store = made.space(ground, "3", box(0, 8, 3, 10), long="Store")
    door = made.model.by_type("IfcDoor")[0]
    made.bound(hall, door)
    made.bound(store, door)
    reading = read_bytes(made.data())
    assert names(reading, reading.floor.openings[0]) == {"Hall", "Bath"}
    assert "door-disagrees" in codes(reading)


def test_an_outside_flag_between_rooms_is_told() -> None:
    made, *_ = house()
    door = made.model.by_type("IfcDoor")[0]
    made.told(door, "Pset_DoorCommon", IsExternal=made.model.createIfcBoolean(True))
    reading = read_bytes(made.data())
    assert reading.floor.openings[0].kind == "door"
    assert "door-flag" in codes(reading)


@pytest.mark.parametrize(("base", "height", "found"), [(0.0, 2.1, True), (0.9, 1.2, False)])
def test_a_hole_without_a_leaf_is_a_passage_when_it_is_walked_through(
    base: float, height: float, found: bool
) -> None:
    made = Making()
    ground = made.storey("Ground")
    made.space(ground, "1", HALL, long="Hall")
    made.space(ground, "2", BATH, long="Bath")
    made.opening(ground, IN_WALL, base=base, height=height)
    openings = read_bytes(made.data()).floor.openings
    assert [opening.kind for opening in openings] == (["cased"] if found else [])


def test_a_virtual_boundary_is_a_wide_opening_once() -> None:
    made = Making()
    ground = made.storey("Ground")
    hall = made.space(ground, "1", HALL, long="Hall")
    bath = made.space(ground, "2", box(4, 0, 7, 3), long="Bath")
    made.bound(hall, None, edge=[(4, 0), (4, 3)])
    made.bound(bath, None, edge=[(4, 3), (4, 0)])
    made.bound(bath, None, edge=[(4, 0), (4, 3)], height=0.9)  # a parapet
    reading = read_bytes(made.data())
    assert [(o.kind, o.width_m, names(reading, o)) for o in reading.floor.openings] == [
        ("wide", 3.0, {"Hall", "Bath"})
    ]


def test_an_edge_written_in_another_frame_is_put_beside_its_space() -> None:
    made = Making()
    ground = made.storey("Ground")
    hall = made.space(ground, "1", HALL, long="Hall")
    bath = made.space(ground, "2", box(0, 0, 3, 3), long="Bath")
    bath.ObjectPlacement = made.at((4.0, 0.0, 0.0), ground.ObjectPlacement)
    made.bound(bath, None, edge=[(4, 0), (4, 3)])  # the storey's frame, not the space's
    reading = read_bytes(made.data())
    assert [names(reading, o) for o in reading.floor.openings] == [{"Hall", "Bath"}]
    assert "edge-reframed" in codes(reading)
    made.bound(hall, None, edge=[(40, 0), (40, 3)])
    assert "edge-unplaced" in codes(read_bytes(made.data()))


def test_windows_have_sill_height_and_room() -> None:
    made, ground, *_ = house()
    made.door(ground, box(5, 3, 6, 3.2), 1.0, kind="IfcWindow", base=0.9, height=1.2)
    reading = read_bytes(made.data())
    (window,) = reading.floor.windows
    assert (window.sill_m, window.height_m) == (0.9, 1.2)
    assert reading.floor.room_by_id[window.room].name == "Bath"


def test_a_roof_light_under_its_storey_has_no_sill() -> None:
    made, ground, *_ = house()
    made.door(ground, box(5, 1, 6, 1.2), 1.0, kind="IfcWindow", base=-1.0, height=0.3)
    made.door(ground, box(5, 3, 6, 3.2), 1.0, kind="IfcWindow", base=-0.01, height=2.3)
    assert [window.sill_m for window in read_bytes(made.data()).floor.windows] == [None, 0.0]


def test_storeys_stand_at_their_elevations_over_a_building_on_a_hill() -> None:
    made = Making()
    made.building.ObjectPlacement = made.site_at = made.at((0.0, 0.0, 110.0))
    ground, upper = made.storey("Ground", 0.0), made.storey("Upper", 2.8)
    made.space(ground, "1", HALL)
    made.space(upper, "2", HALL)
    reading = read_bytes(made.data())
    assert [(s.name, s.elevation_m) for s in reading.storeys] == [("Ground", 0.0), ("Upper", 2.8)]
    assert list(reading.levels_m.values()) == pytest.approx([0.0, 2.8])


def test_spaces_called_external_are_told_and_not_rooms() -> None:
    for schema in ("IFC2X3", "IFC4"):
        made, ground, *_ = house(schema=schema)
        made.space(ground, "9", box(-3, 0, -0.2, 3), long="Deck", outside=True)
        reading = read_bytes(made.data())
        assert "Deck" not in {room.name for room in reading.floor.rooms}
        assert "outside-slab" in codes(reading)


def test_stated_areas_have_the_class_of_their_name() -> None:
    made, _, hall, bath = house()
    made.sized(hall, "Qto_SpaceBaseQuantities", GrossFloorArea=12.0, NetFloorArea=11.4)
    made.sized(bath, "Other", GSA_BIM_Area=9.5)
    reading = read_bytes(made.data())
    assert [(s.kind, s.area_m2) for s in reading.stated.values()] == [
        ("gross", 12.0),
        ("wall-centre", 9.5),
    ]
    assert {"stated-net-too", "stated-class", "stated-differs"} <= codes(reading)
    assert [room.polygon.shape.area for room in reading.floor.rooms] == pytest.approx([12, 8.7])


def test_drains_taps_and_tubs_are_fixtures() -> None:
    made, ground, *_ = house()
    f = made.model
    for kind, told, at in (
        ("IfcSanitaryTerminal", "BATH", (5.0, 0.5)),
        ("IfcWasteTerminal", "FLOORTRAP", (6.0, 1.0)),
        ("IfcValve", "FAUCET", (6.5, 2.0)),
        ("IfcOutlet", "POWEROUTLET", (1.0, 1.0)),
    ):
        place = made.at((*at, 0.0), ground.ObjectPlacement)
        one = f.create_entity(
            kind, made.guid(), None, "x", PredefinedType=told, ObjectPlacement=place
        )
        if told == "BATH":
            one.Representation = made.shape(made.block(box(0, 0, 1.7, 0.75), 0.5))
        made.contain(ground, one)
    kinds = {fixture.kind for fixture in read_bytes(made.data()).floor.fixtures}
    assert kinds == {"tub", "drain", "tap", "outlet"}


def test_the_foot_of_a_stair_is_told_with_its_room() -> None:
    made, ground, *_ = house()
    place = made.at((0.0, 0.0, 0.0), ground.ObjectPlacement)
    steps = [made.block(box(5 + 0.3 * n, 1, 5.3 + 0.3 * n, 2), 0.2, 0.2 * n) for n in range(6)]
    flight = made.model.create_entity(
        "IfcStairFlight", made.guid(), None, "f", ObjectPlacement=place,
        Representation=made.shape(*steps),
    )  # fmt: skip
    made.contain(ground, flight)
    (note,) = [note for note in read_bytes(made.data()).left if note.code == "stair"]
    assert "in Bath" in note.what
    assert note.where == pytest.approx((5.3, 1.5), abs=0.35)
    assert note.shape is not None
    assert note.shape.shape.bounds == pytest.approx((5.0, 1.0, 6.8, 2.0))


def test_a_model_without_spaces_asks_for_a_tracing() -> None:
    made = Making()
    made.storey("Ground")
    reading = read_bytes(made.data())
    assert reading.floor.rooms == ()
    assert "tracing" in codes(reading)


def test_names_that_several_rooms_share_get_their_number() -> None:
    made = Making()
    ground = made.storey("Ground")
    made.space(ground, "101", HALL, long="Office")
    made.space(ground, "102", BATH, long="Office")
    made.space(ground, "103", box(0, 4, 3, 6))
    rooms = read_bytes(made.data()).floor.rooms
    assert [room.name for room in rooms] == ["Office 101", "Office 102", "103"]


HEADER = (
    "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\n"
)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("ISO-10303-21;", "names no schema"),
        (HEADER + "FILE_SCHEMA(('AUTOMOTIVE_DESIGN'));\nENDSEC;\nDATA;\nENDSEC;", "no building"),
        (HEADER + "FILE_SCHEMA(('IFC2X2_FINAL'));\nENDSEC;\nDATA;\nENDSEC;", "older IFC"),
        (
            HEADER + "FILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\nENDSEC;\nEND-ISO-10303-21;",
            "no project",
        ),
        (HEADER + "FILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n#1=IFCWALL(", "no project"),
        (HEADER + "FILE_SCHEMA(('IFC4'));", "no project"),
    ],
)
def test_what_is_no_building_model_is_refused_calmly(text: str, said: str) -> None:
    with pytest.raises(Refused, match=said):
        read_bytes(text.encode())


def test_placements_in_a_circle_are_refused() -> None:
    made, _, hall, _ = house()
    hall.ObjectPlacement.PlacementRelTo = hall.ObjectPlacement
    with pytest.raises(Refused, match="round in a circle"):
        read_bytes(made.data())


def test_broken_off_files_are_read_or_refused() -> None:
    data = house()[0].data()
    for cut in range(200, len(data), 997):
        try:
            reading = read_bytes(data[:cut])
        except Refused:
            continue
        assert reading.left or reading.asks or reading.mended


def test_numbers_that_are_none_are_told() -> None:
    made, *_ = house()
    text = made.data().decode()
    for bad in ("1.E400", "-1.E308", "NAN", "$"):
        try:
            reading = read_bytes(text.replace("(7.,3.)", f"({bad},3.)").encode())
        except Refused:
            continue
        assert reading.left or reading.asks


def test_without_the_library_the_way_to_get_it_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    data = house()[0].data()
    real = builtins.__import__

    def hidden(name: str, *rest, **more):
        if name.split(".", maxsplit=1)[0] == "ifcopenshell":
            raise ImportError(name)
        return real(name, *rest, **more)

    monkeypatch.setattr(builtins, "__import__", hidden)
    with pytest.raises(Refused, match="pip install ifcopenshell"):
        read_bytes(data)


def test_persons_and_firms_of_the_header_are_not_shown(tmp_path: Path) -> None:
    data = house(schema="IFC2X3")[0].data()
    named = data.replace(b"IFCORGANIZATION($,'o'", b"IFCORGANIZATION($,'Secret and Sons'")
    assert named != data
    assert "Secret" not in repr(read_bytes(named))
