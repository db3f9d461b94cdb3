from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.strategies.walks import rectangle, walks

from farwall.floor.walk.adjust import adjusted
from farwall.floor.walk.lay import lay_of
from farwall.floor.walk.net import net_of
from farwall.floor.walk.nouns import Walk, WalkWay
from farwall.floor.walk.suspect import (
    by_danish,
    by_least_sum,
    by_weight,
    find,
    untold_from,
)


def found_in(walk, **more):
    net = net_of(walk, lay_of(walk))
    return net, find(walk, net, adjusted(net), **more)


def misread(walk, wall, by_m):
    room = walk.rooms[0]
    walls = list(room.walls)
    walls[wall] = replace(walls[wall], length_m=walls[wall].length_m + by_m)
    return replace(walk, rooms=(replace(room, walls=tuple(walls)), *walk.rooms[1:]))


@given(walks)
def test_an_exact_walk_gives_no_alarm(walk):
    _, found = found_in(walk)
    assert not found.alarm


@settings(max_examples=60)
@given(
    st.floats(2.0, 6.0), st.floats(0.5, 2.0), st.integers(0, 3), st.floats(0.25, 0.9),
    st.booleans(), st.booleans(),
)  # fmt: skip
def test_a_large_slip_in_a_wall_with_both_diagonals_is_named_first(
    high, ratio, wall, by_m, short, known
):
    walk = Walk((rectangle(high, high * ratio, diagonals=((0, 2), (1, 3))),))
    net, found = found_in(misread(walk, wall, -by_m if short else by_m), known=known)
    row = net.rows[found.suspects[0].row]
    assert found.alarm
    assert (row.kind, row.wall) == ("wall", wall)
    assert found.suspects[0].slip_m == pytest.approx(-by_m if short else by_m, abs=0.01)


def test_without_a_diagonal_opposite_walls_cannot_be_told_apart():
    walk = misread(Walk((rectangle(3.05, 4.21),)), 2, 0.17)
    net, found = found_in(walk, known=False)
    assert found.alarm
    named = {net.rows[one.row].wall for one in untold_from(found.suspects)[:2]}
    assert named == {0, 2}
    assert found.suspects[0].chance == pytest.approx(found.suspects[1].chance, rel=0.05)


def test_the_chances_add_up_to_one():
    _, found = found_in(misread(Walk((rectangle(3.0, 4.0, diagonals=((0, 2),)),)), 1, 0.3))
    assert sum(one.chance for one in found.suspects) == pytest.approx(1.0)


def test_the_plain_ways_name_the_wall_too_where_it_is_well_held():
    walk = misread(Walk((rectangle(3.0, 4.0, diagonals=((0, 2), (1, 3))),)), 1, 0.3)
    net, _ = found_in(walk)
    for way in (by_weight(adjusted(net), net), by_danish(net), by_least_sum(net)):
        assert {("wall", 1)} & {(net.rows[i].kind, net.rows[i].wall) for i in way[:3]}


def test_an_opening_that_would_stick_out_clears_the_wall():
    """A wall of 3 m is read 0.6 m; else its twin would be 0.6 m with a door 0.9 m wide in it."""
    room = replace(rectangle(3.0, 4.0), ways=(WalkWay(2, 0.5, 0.9, "outside"),))
    net, found = found_in(misread(Walk((room,)), 0, -2.4))
    assert (net.rows[found.suspects[0].row].kind, net.rows[found.suspects[0].row].wall) == (
        "wall",
        0,
    )
