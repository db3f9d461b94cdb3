from dataclasses import replace

from tests.strategies.walks import rectangle

from farwall.floor.walk.closed import close_walk
from farwall.floor.walk.nouns import Walk, WalkWall


def closed(room):
    return close_walk(Walk((room,)))


def test_without_a_diagonal_opposite_walls_are_mistaken_for_each_other():
    done = closed(rectangle(3.0, 4.0))
    assert all(one.seen and len(one.alike) == 1 for one in done.held)
    assert not any(one.sure for one in done.held)


def test_the_diagonal_that_is_asked_for_makes_all_four_walls_sure():
    asked = closed(rectangle(3.0, 4.0)).advice[0]
    assert (asked.more, asked.across) == (4, False)
    after = closed(rectangle(3.0, 4.0, diagonals=((asked.start, asked.end),)))
    assert all(one.sure for one in after.held)
    assert after.advice == ()


def test_a_wall_beside_one_that_was_not_measured_is_held_by_nothing():
    room = rectangle(3.0, 4.0)
    walls = (room.walls[0], WalkWall(None), *room.walls[2:])
    held = {one.wall: one for one in closed(replace(room, walls=walls)).held}
    assert set(held) == {0, 2, 3}
    assert not held[3].seen
    assert held[0].seen


def test_the_ends_of_a_long_hall_want_a_width_and_no_diagonal():
    done = closed(rectangle(1.2, 12.0, diagonals=((0, 2), (1, 3))))
    assert not any(one.seen for one in done.held if one.wall in (0, 2))
    assert [one.across for one in done.advice] == [True]
