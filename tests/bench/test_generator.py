"""Generated houses: as many rooms as asked, sound, the same each time, open to a body."""

import subprocess
import sys
from itertools import combinations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.bench.bodies import AT_DOOR_M, middle, reached_rooms, standing

from farwall.bench.generator import house_of
from farwall.floor.faults import faults_of
from farwall.floor.thresholds import join_thresholds

SEEDS = st.integers(0, 2**32)


@given(st.integers(3, 60), SEEDS)
def test_a_house_has_the_rooms_asked_for_and_no_fault(rooms, seed):
    job = house_of(rooms, seed).job
    assert len(job.floor.rooms) == rooms
    assert [str(one) for one in faults_of(job.floor, job.exits)] == []


@given(st.integers(3, 60), SEEDS)
def test_a_body_reaches_every_room_and_gets_round_in_it(rooms, seed):
    job = house_of(rooms, seed).job
    exits = tuple(one.opening for one in job.exits)
    assert reached_rooms(job.floor, exits) == set(job.floor.room_by_id)
    floor = join_thresholds(job.floor)
    for room in floor.room_by_id:
        stands = [part for part in shapely.get_parts(standing(floor, room)) if part.area > 1e-6]
        assert len(stands) == 1, room
        doors = [one for one in floor.openings if room in one.rooms]
        assert all(middle(one).distance(stands[0]) < AT_DOOR_M for one in doors)


@given(st.integers(3, 40), SEEDS)
def test_rooms_never_lie_on_each_other(rooms, seed):
    shapes = [room.polygon.shape for room in house_of(rooms, seed).job.floor.rooms]
    for one, other in combinations(shapes, 2):
        assert one.intersection(other).area < 1e-6


def test_two_hundred_rooms_are_sound_and_all_reached():
    job = house_of(200, 7).job
    assert len(job.floor.rooms) == 200
    assert faults_of(job.floor, job.exits) == []
    exits = tuple(one.opening for one in job.exits)
    assert reached_rooms(job.floor, exits) == set(job.floor.room_by_id)


@given(st.integers(3, 30), SEEDS)
def test_a_seed_is_always_the_same_house(rooms, seed):
    assert house_of(rooms, seed) == house_of(rooms, seed)


def test_another_process_with_other_hashing_draws_the_same_house():
    code = "from farwall.bench.generator import house_of; print(repr(house_of(30, 4)))"
    drawn = {
        subprocess.run(
            [sys.executable, "-c", code],
            check=True, capture_output=True, text=True, env={"PYTHONHASHSEED": number},
        ).stdout
        for number in ("1", "2")
    }  # fmt: skip
    assert drawn == {repr(house_of(30, 4)) + "\n"}


def test_other_seeds_are_other_houses():
    assert len({repr(house_of(9, seed)) for seed in range(30)}) == 30


@pytest.mark.parametrize("ways_out", [1, 2, 3])
def test_it_has_the_ways_out_asked_for(ways_out):
    assert len(house_of(8, 5, ways_out=ways_out).job.exits) == ways_out


@pytest.mark.parametrize("rooms", [2, 201])
def test_a_number_of_rooms_that_is_not_drawn_is_refused(rooms):
    with pytest.raises(ValueError, match="3 to 200 rooms"):
        house_of(rooms, 1)
