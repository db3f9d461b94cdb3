"""Furniture stands inside its room, away from the hall, and can be walked round."""

from hypothesis import given
from hypothesis import strategies as st

from farwall.bench.generator import house_of

CLEAR_M = 0.85


@given(st.integers(3, 30), st.integers(0, 2**32))
def test_fixtures_stand_in_one_room_and_islands_free_of_its_walls(rooms, seed):
    floor = house_of(rooms, seed).job.floor
    for fixture in floor.fixtures:
        room = floor.room_by_id[fixture.id.removeprefix(f"{fixture.kind}-")].polygon.shape
        assert room.buffer(1e-6).covers(fixture.polygon.shape)
        gap = fixture.polygon.shape.distance(room.exterior)
        assert (gap >= CLEAR_M) == (fixture.kind == "island")


@given(st.integers(3, 30), st.integers(0, 2**32))
def test_a_saw_cut_runs_from_wall_to_wall(rooms, seed):
    floor = house_of(rooms, seed).job.floor
    for cut in floor.saw_cuts:
        room = floor.room_by_id[cut.id.removeprefix("cut-")].polygon.shape
        (x0, _), (x1, _) = cut.line
        assert [min(x0, x1), max(x0, x1)] == [room.bounds[0], room.bounds[2]]
