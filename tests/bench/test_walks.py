from dataclasses import replace

import pytest

from farwall.bench.walk_slips import slipped, slipped_beside
from farwall.bench.walks import walked
from farwall.floor.walk.closed import close_walk
from farwall.floor.walk.held import Advice
from farwall.floor.walk.lay import lay_of


@pytest.mark.parametrize("seed", range(6))
def test_a_drawn_house_is_one_group_of_twelve_rooms_that_nearly_closes(seed):
    walk = walked(seed)
    lay = lay_of(walk)
    assert len(walk.rooms) == 12
    assert set(lay.parts) == {0}
    assert lay.loose == ()
    assert max(one.miss.far for one in close_walk(walk).rooms if one.miss) < 0.25


def test_no_room_closes_to_the_last_digit():
    assert all(one.miss.far > 1e-4 for one in close_walk(walked(0)).rooms if one.miss)


def test_a_seed_gives_the_same_walk():
    assert walked(3) == walked(3)
    assert walked(3) != walked(4)


@pytest.mark.parametrize(("checks", "each"), [("none", 0), ("one", 1), ("two", 2), ("across", 1)])
def test_as_many_diagonals_as_told(checks, each):
    assert {len(room.diagonals) for room in walked(1, checks=checks).rooms} == {each}


def test_widths_are_measured_in_narrow_rooms_only():
    walk = walked(1, checks="across")
    assert {room.name for room in walk.rooms if room.across} >= {"hall-1"}
    for room in walk.rooms:
        if room.across:
            lengths = sorted(wall.length_m for wall in room.walls)
            assert lengths[0] < lengths[-1] / 2.8


def test_a_check_more_leaves_all_other_readings_as_they_were():
    plain = walked(2)
    more = walked(2, more=[Advice(0, 1, 3, 1), Advice(1, 0, 2, 1, across=True)])
    assert len(more.rooms[0].diagonals) == 2
    assert len(more.rooms[1].across) == 1
    back = [replace(room, diagonals=room.diagonals[:1], across=()) for room in more.rooms]
    assert tuple(back) == plain.rooms


@pytest.mark.parametrize("seed", range(12))
def test_one_wall_is_misread_by_100_mm_or_more(seed):
    plain = walked(0)
    walk, slip = slipped(plain, seed)
    changed = [
        (n, k, walk.rooms[n].walls[k].length_m - wall.length_m)
        for n, room in enumerate(plain.rooms)
        for k, wall in enumerate(room.walls)
        if walk.rooms[n].walls[k] != wall
    ]
    assert changed == [(slip.room, slip.wall, pytest.approx(slip.by_m))]
    assert abs(slip.by_m) >= 0.0999


@pytest.mark.parametrize("seed", range(6))
def test_a_slip_beside_the_walls_leaves_the_walls(seed):
    plain = walked(0)
    walk, slip = slipped_beside(plain, seed)
    assert [one.walls for one in walk.rooms] == [one.walls for one in plain.rooms]
    assert walk != plain
    assert abs(slip.by_m) >= 0.0999
