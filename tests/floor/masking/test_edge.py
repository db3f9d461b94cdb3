"""The edge of rooms: runs and mouths make up the outline, in whatever way the floor is told."""

import math
from dataclasses import replace

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate, scale
from tests.strategies.floors import houses

from farwall.bench.generator import house_of
from farwall.floor.geometry import polygon_geometry
from farwall.floor.masking import edges_of
from farwall.floor.nouns import Fixture, Floor, Opening, Room
from farwall.floor.takeoff import net_shape, take_off
from farwall.floor.thresholds import join_thresholds

FLOORS = st.builds(
    lambda rooms, seed: house_of(rooms, seed).job.floor, st.integers(3, 14), st.integers(0, 400)
)

FEW = settings(max_examples=30)


def box(x0, y0, x1, y1):
    return polygon_geometry(shapely.box(x0, y0, x1, y1))


def moved(floor, change):
    """The floor with every shape and line changed."""

    def line(points):
        return tuple((x, y) for x, y in change(shapely.LineString(points)).coords)

    def shape(one):
        return polygon_geometry(change(one.shape), decimals=9)

    return replace(
        floor,
        rooms=tuple(replace(one, polygon=shape(one.polygon)) for one in floor.rooms),
        openings=tuple(
            replace(
                one, line=line(one.line), threshold=one.threshold and shape(one.threshold)
            )
            for one in floor.openings
        ),
        fixtures=tuple(replace(one, polygon=shape(one.polygon)) for one in floor.fixtures),
        saw_cuts=(),
    )  # fmt: skip


def lengths(floor):
    """Lengths by room and kind, sorted; and of the mouths by opening."""
    return {
        one.room: (
            sorted((run.kind, round(run.length_m, 4)) for run in one.runs),
            sorted((mouth.opening, round(mouth.length_m, 4)) for mouth in one.mouths),
            one.corners,
        )
        for one in edges_of(floor)
    }


@FEW
@given(FLOORS)
def test_runs_and_mouths_are_the_outline_of_the_net_floor_to_a_millimetre(floor):
    joined = join_thresholds(floor)
    for edge in edges_of(floor):
        outline = net_shape(joined.room_by_id[edge.room], joined).length
        made = math.fsum([*(r.length_m for r in edge.runs), *(m.length_m for m in edge.mouths)])
        assert made == pytest.approx(outline, abs=0.001)


@FEW
@given(FLOORS)
def test_every_opening_lies_once_in_the_edge_of_each_of_its_rooms(floor):
    seen = sorted((m.opening, e.room) for e in edges_of(floor) for m in e.mouths)
    assert seen == sorted((one.id, room) for one in floor.openings for room in one.rooms)
    widths = {one.id: math.dist(*one.line) for one in floor.openings}
    for edge in edges_of(floor):
        for mouth in edge.mouths:
            assert mouth.length_m == pytest.approx(widths[mouth.opening], abs=0.001)


@FEW
@given(FLOORS)
def test_no_run_crosses_an_opening(floor):
    joined = join_thresholds(floor)
    ways = [shapely.LineString(one.line) for one in joined.openings]
    for edge in edges_of(floor):
        for run in edge.runs:
            line = shapely.LineString(run.line)
            for way in ways:
                assert line.intersection(way.buffer(1e-4, cap_style="flat")).length < 0.001


@FEW
@given(FLOORS)
def test_runs_are_the_take_off_of_the_joined_floor(floor):
    """An independent sum: the take-off measures with shapely and knows no runs."""
    mask_m = {one.room: one.mask_m for one in take_off(join_thresholds(floor)).rooms}
    for edge in edges_of(floor):
        assert math.fsum(r.length_m for r in edge.runs) == pytest.approx(
            mask_m[edge.room], abs=0.002 * (1 + len(edge.mouths))
        )


@FEW
@given(FLOORS, st.randoms(use_true_random=False))
def test_the_order_in_which_the_floor_is_told_changes_nothing(floor, dice):
    shuffled = replace(
        floor,
        rooms=tuple(dice.sample(floor.rooms, len(floor.rooms))),
        openings=tuple(
            replace(one, rooms=one.rooms[::-1], line=one.line[::-1])
            for one in dice.sample(floor.openings, len(floor.openings))
        ),
    )
    assert lengths(shuffled) == lengths(floor)


@FEW
@given(FLOORS)
def test_a_mirrored_floor_has_the_same_lengths(floor):
    assert lengths(moved(floor, lambda one: scale(one, -1, 1, origin=(0, 0)))) == lengths(floor)


@given(houses(), st.floats(0, 360))
def test_a_turned_floor_has_the_same_lengths(house, angle):
    turned = moved(house.floor(), lambda one: rotate(one, angle, origin=(0, 0)))
    here, there = lengths(house.floor()), lengths(turned)
    for room, (runs, mouths, corners) in here.items():
        told, seen, turns = there[room]
        assert turns == corners
        for made, wanted in ((told, runs), (seen, mouths)):
            assert [one[0] for one in made] == [one[0] for one in wanted]
            assert [one[1] for one in made] == pytest.approx([one[1] for one in wanted], abs=0.002)


@given(houses())
def test_a_floor_drawn_to_its_seams_comes_out_as_one_drawn_to_its_wall_faces(house):
    assert lengths(join_thresholds(house.floor())) == lengths(house.floor())


def test_an_l_shaped_hall_by_hand():
    """L of 4 by 3 m less 2 by 2 m: outline 14 m. A door of 0.80 m on the south wall cuts the 4 m
    into 1.0 and 2.2: seven runs, six corners, 13.2 m of wall."""
    hall = Room("hall", polygon_geometry(
        shapely.Polygon([(0, 0), (4, 0), (4, 1), (2, 1), (2, 3), (0, 3)])
    ))  # fmt: skip
    door = Opening("d", "door", ((1.0, 0.0), (1.8, 0.0)), ("hall",), 0.8)
    (edge,) = edges_of(Floor((hall,), (door,)))
    found = sorted(round(run.length_m, 6) for run in edge.runs)
    assert found == [1.0, 1.0, 2.0, 2.0, 2.0, 2.2, 3.0]
    assert edge.corners == 6
    assert math.fsum(run.length_m for run in edge.runs) == pytest.approx(13.2)


def test_a_door_in_a_wall_of_12_cm_has_two_reveals_of_half_of_it_in_each_room_by_hand():
    rooms = (Room("a", box(0, 0, 3, 3)), Room("b", box(3.12, 0, 6, 3)))
    door = Opening(
        "d", "door", ((3.06, 1.0), (3.06, 1.8)), ("a", "b"), 0.8, box(3.0, 1.0, 3.12, 1.8)
    )
    for edge in edges_of(Floor(rooms, (door,))):
        assert [(r.of, round(r.length_m, 4)) for r in edge.of_kind("reveal")] == [("d", 0.06)] * 2
        assert edge.corners == 4


def test_a_cabinet_against_a_wall_gives_its_own_foot_and_hides_the_wall_by_hand():
    """Room 4 by 3, cabinets 4 by 0.6 along the north wall: 4 m of foot, 4 + 2.4 + 2.4 of wall."""
    floor = Floor((Room("k", box(0, 0, 4, 3)),), fixtures=(Fixture("cabinet", box(0, 2.4, 4, 3)),))
    (edge,) = edges_of(floor)
    assert sum(r.length_m for r in edge.of_kind("fixture")) == pytest.approx(4)
    assert sum(r.length_m for r in edge.of_kind("wall")) == pytest.approx(8.8)


def test_a_cabinet_drawn_a_centimetre_off_the_wall_is_masked_as_one_against_it():
    floor = Floor(
        (Room("k", box(0, 0, 4, 3)),), fixtures=(Fixture("cabinet", box(1, 2.39, 3, 2.99)),)
    )
    (edge,) = edges_of(floor)
    shown = {kind: sum(r.length_m for r in edge.of_kind(kind)) for kind in ("wall", "fixture")}
    assert shown["fixture"] == pytest.approx(2 + 2 * 0.6)
    assert shown["wall"] == pytest.approx(14 - 2)
    assert sum(r.length_m for r in edge.of_kind("hidden")) == pytest.approx(4)


def test_a_round_post_is_one_run():
    post = polygon_geometry(shapely.Point(2, 1.5).buffer(0.2, quad_segs=16))
    floor = Floor((Room("k", box(0, 0, 4, 3)),), fixtures=(Fixture("post", post),))
    (edge,) = edges_of(floor)
    (run,) = edge.of_kind("fixture")
    assert run.length_m == pytest.approx(2 * math.pi * 0.2, rel=0.002)  # a ring of 64 corners


def test_an_opening_without_its_depth_before_a_wall_face_lies_on_that_face():
    room = Room("a", box(0, 0, 3, 3))
    line = ((3.06, 1.0), (3.06, 1.8))
    (edge,) = edges_of(Floor((room,), (Opening("d", "outside", line, ("a",)),)))
    (mouth,) = edge.mouths
    assert mouth.length_m == pytest.approx(0.8)
