"""Ticks on the film: distances worked out by hand, and laws that hold for every cut floor."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.papers.invented_plan import Sweep, box_room, door, plan_of, refused, small_house

from farwall.facts.plan import Band, Field, Plan
from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Exit, Fixture, Opening, Room
from farwall.papers.wall_ticks import LETTERS, WallRun, wall_ticks


def plan_with(room: Room, bands: list[shapely.Polygon], **facts: object) -> tuple[Plan, Field]:
    """A plan of one room whose bands are these shapes, in this order."""
    way = door("d1", (room.id,), ((0.0, 0.2), (0.0, 0.9)), "outside")
    plan = plan_of(
        name="by hand",
        rooms=(room,),
        openings=(way,),
        exits=(Exit("e1", "d1"),),
        sweeps=(Sweep(((room.id, "e"),), "e1"),),
        **facts,  # type: ignore[arg-type]
    )
    (field,) = plan.fields
    laid = tuple(
        replace(field.bands[0], id=f"b{n}", order=n, polygon=polygon_geometry(shape))
        for n, shape in enumerate(bands, 1)
    )
    field = replace(field, bands=laid)
    return replace(plan, fields=(field,)), field


def told(runs: tuple[WallRun, ...]) -> dict[str, list[tuple[float | None, int, int]]]:
    """Letter to (distance to the millimetre, band before, band after)."""
    return {
        run.letter: [
            (None if t.at_m is None else round(t.at_m, 3), t.before, t.after) for t in run.ticks
        ]
        for run in runs
    }


def test_a_room_of_two_bands_by_hand():
    """A 4 by 3 m room cut at x = 1.5: the north wall runs from the west corner (left as one
    faces it) and is ticked at 1.5; the south wall runs from the east corner: 4 - 1.5 = 2.5."""
    plan, field = plan_with(
        box_room("r", "Room", 0, 0, 4, 3), [shapely.box(0, 0, 1.5, 3), shapely.box(1.5, 0, 4, 3)]
    )
    runs = wall_ticks(plan, field)
    assert told(runs) == {"A": [(1.5, 1, 2)], "B": [(2.5, 2, 1)]}
    assert runs[0].line == ((0.0, 3.0), (4.0, 3.0))
    assert runs[1].line == ((4.0, 0.0), (0.0, 0.0))
    assert runs[0].middle == (2.0, 3.0)


def test_a_slanting_edge_by_hand():
    """An edge from (1, 0) to (3, 3): the north wall is met at 3, the south wall at 4 - 1 = 3."""
    west = shapely.Polygon([(0, 0), (1, 0), (3, 3), (0, 3)])
    east = shapely.Polygon([(1, 0), (4, 0), (4, 3), (3, 3)])
    plan, field = plan_with(box_room("r", "Room", 0, 0, 4, 3), [west, east])
    assert told(wall_ticks(plan, field)) == {"A": [(3.0, 1, 2)], "B": [(3.0, 2, 1)]}


def test_an_edge_into_a_corner_leaves_no_tick_by_hand():
    """The diagonal of the room ends in two corners: nothing is to be measured."""
    plan, field = plan_with(
        box_room("r", "Room", 0, 0, 4, 3),
        [shapely.Polygon([(0, 0), (4, 3), (0, 3)]), shapely.Polygon([(0, 0), (4, 0), (4, 3)])],
    )
    assert wall_ticks(plan, field) == ()


def test_the_side_of_an_island_is_ticked_by_hand():
    """An island from (1.5, 1) to (2.5, 2), bands cut at y = 1.25 and 1.5 on its east side only.

    Its east side is faced from the east: the left corner is the southern one, (2.5, 1). Ticks at
    1.25 - 1 = 0.25 and 1.5 - 1 = 0.5."""
    island = shapely.box(1.5, 1, 2.5, 2)
    room = shapely.box(0, 0, 4, 3)
    east = shapely.box(2.5, 0, 4, 3)
    bands = [
        shapely.difference(shapely.difference(room, east), island),
        shapely.intersection(east, shapely.box(0, 0, 4, 1.25)),
        shapely.intersection(east, shapely.box(0, 1.25, 4, 1.5)),
        shapely.intersection(east, shapely.box(0, 1.5, 4, 3)),
    ]
    plan, field = plan_with(
        box_room("r", "Room", 0, 0, 4, 3),
        bands,
        fixtures=(Fixture("island", polygon_geometry(island), "x"),),
    )
    of_island = [run for run in wall_ticks(plan, field) if run.of == "island"]
    (run,) = of_island
    assert run.line == ((2.5, 1.0), (2.5, 2.0))
    assert [(round(t.at_m or 0, 3), t.before, t.after) for t in run.ticks] == [
        (0.25, 2, 3),
        (0.5, 3, 4),
    ]


def test_a_rebate_does_not_end_a_wall_by_hand():
    """The north wall of a 4 by 3 m room has a door's rebate 0.1 m deep from x = 1 to 2. The wall
    still runs from the west corner; an edge at x = 3 is ticked at 3, not at 3 - 2."""
    outline = shapely.union(shapely.box(0, 0, 4, 3), shapely.box(1, 3, 2, 3.1))
    room = Room("r", polygon_geometry(outline), "Room")
    bands = [shapely.intersection(outline, shapely.box(0, 0, 3, 4)), shapely.box(3, 0, 4, 3)]
    plan, field = plan_with(room, bands)
    north = next(run for run in wall_ticks(plan, field) if run.line[0] == (0.0, 3.0))
    assert north.line[-1] == (4.0, 3.0)
    assert [(round(t.at_m or 0, 3), t.before, t.after) for t in north.ticks] == [(3.0, 1, 2)]


def test_an_edge_inside_a_doorway_is_said_and_not_measured():
    """Two bands meet in the rebate of a door: there is no wall to tick."""
    outline = shapely.union(shapely.box(0, 0, 4, 3), shapely.box(1, 3, 2, 3.1))
    room = Room("r", polygon_geometry(outline), "Room")
    bands = [
        shapely.intersection(outline, shapely.box(0, 0, 1.5, 4)),
        shapely.intersection(outline, shapely.box(1.5, 0, 3, 4)),
        shapely.box(3, 0, 4, 3),
    ]
    plan, field = plan_with(room, bands)
    opening = Opening("d2", "door", ((1.0, 3.05), (2.0, 3.05)), ("r",))
    inputs = replace(plan.inputs, openings=(*plan.inputs.openings, opening))
    north = next(
        run for run in wall_ticks(replace(plan, inputs=inputs), field) if run.line[0] == (0, 3)
    )
    assert [(t.at_m, t.before, t.after) for t in north.ticks] == [(None, 1, 2), (3.0, 2, 3)]


def test_a_cabinet_against_the_wall_hides_it_by_hand():
    """A cabinet 0.6 deep stands on the west half of the north wall. Bands cut at x = 1 and 3:
    the wall itself is met only at 3; its west corner is behind the cabinet, so the tape is held
    to the cabinet's side: 3 - 2 = 1. The cabinet's front is met (from its west corner) at 1."""
    cabinet = shapely.box(0, 2.4, 2, 3)
    floor = shapely.difference(shapely.box(0, 0, 4, 3), cabinet)
    bands = [
        shapely.intersection(floor, shapely.box(0, 0, 1, 3)),
        shapely.intersection(floor, shapely.box(1, 0, 3, 3)),
        shapely.intersection(floor, shapely.box(3, 0, 4, 3)),
    ]
    plan, field = plan_with(
        box_room("r", "Room", 0, 0, 4, 3),
        bands,
        fixtures=(Fixture("cabinet", polygon_geometry(cabinet), "x"),),
    )
    by_wall = {(run.of, run.line[0]): run for run in wall_ticks(plan, field)}
    assert [t.at_m for t in by_wall[("", (2.0, 3.0))].ticks] == pytest.approx([1.0])
    assert [t.at_m for t in by_wall[("cabinet", (0.0, 2.4))].ticks] == pytest.approx([1.0])


def test_a_round_wall_is_measured_along_itself_by_hand():
    """A quarter round of radius 2 m in 18 chords of 5 degrees, cut at 45 degrees: nine chords of
    4·sin(2.5°) = 0.17448 m each, so 1.5703 m along the wall."""
    arc = [(2 * math.cos(math.radians(a)), 2 * math.sin(math.radians(a))) for a in range(0, 91, 5)]
    room = Room("r", polygon_geometry(shapely.Polygon([(0, 0), *arc])), "Niche")
    half = [(0, 0), *arc[:10]]
    rest = [(0, 0), *arc[9:]]
    plan, field = plan_with(room, [shapely.Polygon(half), shapely.Polygon(rest)])
    (run,) = wall_ticks(plan, field)
    (tick,) = run.ticks
    assert tick.at_m == pytest.approx(9 * 4 * math.sin(math.radians(2.5)), abs=0.001)
    assert (tick.before, tick.after) == (2, 1)


def test_a_shared_line_is_ticked_from_its_own_room():
    """Two rooms meet in the line x = 2 without a wall's depth. Each side shows its own bands."""
    west, east = box_room("w", "West", 0, 0, 2, 3), box_room("e", "East", 2, 0, 4, 3)
    way = door("d1", ("w",), ((0.0, 0.2), (0.0, 0.9)), "outside")
    plan = plan_of(
        name="shared",
        rooms=(west, east),
        openings=(way,),
        exits=(Exit("e1", "d1"),),
        sweeps=(Sweep((("e", "s"), ("w", "n")), "e1"),),
        tools=replace(small_house().inputs.tools, band_m=1.5),
    )
    (field,) = plan.fields
    assert [band.order for band in field.bands] == [1, 2, 3, 4]
    seen = {(run.room, t.before, t.after) for run in wall_ticks(plan, field) for t in run.ticks}
    assert {room for room, _, _ in seen} == {"w", "e"}
    assert all({before, after} <= {1, 2} for room, before, after in seen if room == "e")
    assert all({before, after} <= {3, 4} for room, before, after in seen if room == "w")


def test_letters_leave_out_what_reads_as_a_figure():
    assert not set("ILO") & set(LETTERS)
    plan = small_house()
    letters = [run.letter for run in wall_ticks(plan, plan.fields[4])]
    assert letters == list(LETTERS[: len(letters)])


def test_a_field_without_bands_has_no_ticks():
    plan = refused()
    bare = replace(plan.fields[4], bands=())
    assert wall_ticks(plan, bare) == ()


cuts = st.lists(st.floats(0.1, 5.9), min_size=1, max_size=12, unique_by=lambda x: round(x, 1))


@given(cuts, st.floats(1.0, 8.0))
def test_law_every_cut_across_a_room_is_ticked_on_both_long_walls(xs: list[float], deep: float):
    """Cut a 6 m room across anywhere: both walls tell the same cuts, one read from each end."""
    xs = sorted(x for k, x in enumerate(sorted(xs)) if k == 0 or x - sorted(xs)[k - 1] > 0.03)
    edges = [0.0, *xs, 6.0]
    bands = [shapely.box(a, 0, b, deep) for a, b in pairwise(edges)]
    plan, field = plan_with(box_room("r", "Room", 0, 0, 6, deep), bands)
    north, south = wall_ticks(plan, field)
    assert [t.at_m for t in north.ticks] == pytest.approx(xs, abs=2e-4)
    assert [t.at_m for t in south.ticks] == pytest.approx([6 - x for x in reversed(xs)], abs=2e-4)
    assert [t.before for t in north.ticks] == list(range(1, len(xs) + 1))
    assert all(t.after == t.before + 1 for t in north.ticks)


@given(st.floats(0, 2 * math.pi), st.floats(-20, 20), st.floats(-20, 20))
def test_law_turning_and_shifting_the_house_moves_no_tick(turn: float, dx: float, dy: float):
    """Distances belong to the wall, not to the drawing's frame (to the rounding of 0.1 mm)."""
    room = shapely.box(0, 0, 4, 3)
    bands = [shapely.box(0, 0, 1.3, 3), shapely.box(1.3, 0, 4, 3)]

    def moved(shape: shapely.Polygon) -> shapely.Polygon:
        c, s = math.cos(turn), math.sin(turn)
        return shapely.affinity.affine_transform(shape, [c, -s, s, c, dx, dy])

    plan, field = plan_with(
        Room("r", polygon_geometry(moved(room)), "Room"), [moved(band) for band in bands]
    )
    distances = sorted(t.at_m or 0 for run in wall_ticks(plan, field) for t in run.ticks)
    assert distances == pytest.approx([1.3, 2.7], abs=5e-4)


def test_every_tick_of_the_small_house_lies_on_its_wall_between_its_two_bands():
    plan = small_house()
    for field in plan.fields:
        shape: dict[int, Band] = {band.order: band for band in field.bands}
        for run in wall_ticks(plan, field):
            line = shapely.LineString(run.line)
            for tick in run.ticks:
                if tick.at_m is None:
                    continue
                at = line.interpolate(tick.at_m)
                for order in (tick.before, tick.after):
                    assert shape[order].polygon.shape.distance(at) < 0.006


def test_a_field_beyond_a_saw_cut_is_measured_from_the_cut_by_hand():
    """Half a room beyond a saw cut at x = 2: its bands touch the north wall from 2 to 4, parted at
    3. The west corner lies in the other field, so the tape is held to the cut: 3 - 2 = 1. The
    south wall is faced the other way, from the east corner: 4 - 3 = 1."""
    plan, field = plan_with(
        box_room("r", "Room", 0, 0, 4, 3), [shapely.box(2, 0, 3, 3), shapely.box(3, 0, 4, 3)]
    )
    north, south = wall_ticks(plan, field)
    assert north.line == ((2.0, 3.0), (4.0, 3.0))
    assert [(round(t.at_m or 0, 3), t.before, t.after) for t in north.ticks] == [(1.0, 1, 2)]
    assert south.line[0] == (4.0, 0.0)
    assert [(round(t.at_m or 0, 3), t.before, t.after) for t in south.ticks] == [(1.0, 2, 1)]
