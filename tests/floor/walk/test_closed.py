import pytest
from tests.floor.walk.test_suspect import misread
from tests.strategies.walks import rectangle

from farwall.floor.walk.closed import MOST_SLIPS, close_walk
from farwall.floor.walk.nouns import Walk, WalkRoom, WalkWall


def test_a_slip_is_named_and_left_out_of_the_corners():
    walk = misread(Walk((rectangle(3.0, 4.0, diagonals=((0, 2), (1, 3))),)), 2, 0.3)
    done = close_walk(walk)
    assert [done.row(one.suspects[0].row).wall for one in done.found] == [2]
    (x0, y0), (x1, y1) = done.corner(0, 2), done.corner(0, 3)
    assert ((x0 - x1) ** 2 + (y0 - y1) ** 2) ** 0.5 == pytest.approx(3.0, abs=0.005)
    assert done.rooms[0].miss.far == pytest.approx(0.3, abs=1e-9)
    assert done.rooms[0].added_m[2] == pytest.approx(-0.3, abs=0.005)


def test_two_slips_in_two_rooms_are_named_one_after_the_other():
    rooms = tuple(rectangle(3.0, 4.0, diagonals=((0, 2), (1, 3)), name=one) for one in "AB")
    walk = misread(Walk(rooms), 1, -0.5)
    other = misread(Walk(tuple(reversed(walk.rooms))), 2, 0.4)
    done = close_walk(other)
    named = {(done.row(f.suspects[0].row).room, done.row(f.suspects[0].row).wall)
             for f in done.found}  # fmt: skip
    assert named == {(0, 2), (1, 1)}


def test_nonsense_ends_after_a_few_slips():
    walls = tuple(WalkWall(one) for one in (3.0, 9.0, 5.0, 2.0))
    assert len(close_walk(Walk((WalkRoom("Den", walls),))).found) <= MOST_SLIPS


def test_a_wall_not_measured_leaves_no_misclosure_to_tell():
    walls = tuple(WalkWall(one) for one in (3.0, None, 3.0, 2.0))
    closing = close_walk(Walk((WalkRoom("Den", walls),))).rooms[0]
    assert (closing.miss, closing.simple, closing.added_m[1]) == (None, (), None)
