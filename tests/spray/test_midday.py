"""The order of what is left when rooms are closed: a hall with three rooms, by hand."""

from math import inf

import pytest
from tests.strategies.jobs import box

from farwall.facts.plan import PlanTools
from farwall.floor.nouns import Exit, Floor, Opening, Room
from farwall.spray.building import build_world
from farwall.spray.midday import Shut, Waiting, in_turn
from farwall.spray.sweeps import Sweeps

TOOLS = PlanTools(10.0, 1.0, 3.0, 40.0, 3.0, 0.5, 0.1, 1.8)


@pytest.fixture(scope="module")
def house():
    """Rooms a, b, c along a hall; the hall alone leads out, by the front."""
    rooms = [Room(name, box(3.0 * n, 2.0, 3.0, 3.0)) for n, name in enumerate("abc")]
    hall = Room("hall", box(0.0, 0.0, 9.0, 2.0))
    doors = [
        Opening(f"d-{name}", "door", ((3.0 * n + 1, 2.0), (3.0 * n + 2, 2.0)), (name, "hall"))
        for n, name in enumerate("abc")
    ]
    front = Opening("front", "outside", ((0.0, 0.5), (0.0, 1.5)), ("hall",))
    world = build_world(Floor((*rooms, hall), (*doors, front)), (Exit("front", "front"),))
    return Sweeps(world, TOOLS, 0.2, helper=False)


def waiting(house, names, *, live=""):
    seams = {seam.id: seam for seam in house.world.seams}
    return [
        Waiting(
            name,
            frozenset({name}),
            seams["front" if name == "hall" else f"d-{name}"],
            5.0,
            name,
            patience_min=3.0 if name == live else 0.0,
        )
        for name in names
    ]


def shut(room, until=inf):
    return Shut(room, frozenset({room}), until)


def turned(house, names, closed=(), *, now=10.0, live="", wet=()):
    found = in_turn(waiting(house, names, live=live), frozenset(wet), closed, house, now_min=now)
    return [(turn.id, turn.not_before_min) for turn in found.turns], dict(found.left)


def test_with_nothing_closed_the_planned_order_is_kept(house):
    assert turned(house, ["b", "a", "c", "hall"]) == (
        [("b", 10), ("a", 10), ("c", 10), ("hall", 10)],
        {},
    )


def test_a_closed_room_comes_when_it_is_free_and_the_hall_after_it(house):
    order, left = turned(house, ["a", "b", "c", "hall"], [shut("a", 30.0)])
    assert order == [("b", 10), ("c", 10), ("a", 30.0), ("hall", 10)]
    assert not left


def test_who_stands_in_a_done_room_with_no_door_out_is_nobody_to_wait_for(house):
    """The room is wet: its floor says so elsewhere; nobody is kept waiting for a way out of it."""
    order, _ = turned(house, ["b", "hall"], [shut("a")], wet=["a"])
    assert [name for name, _ in order] == ["b", "hall"]


def test_closed_all_day_it_is_left_and_so_is_the_only_way_out(house):
    order, left = turned(house, ["a", "b", "hall"], [shut("a")])
    assert order == [("b", 10)]
    assert set(left) == {"a", "hall"}
    assert "closed" in left["a"]


def test_the_hall_waits_for_who_goes_out_through_it(house):
    order, left = turned(house, ["hall"], [shut("c", 25.0)], wet=["a", "b"])
    assert order == [("hall", 25.0)]
    assert not left


def test_a_live_edge_is_waited_for_while_it_lives(house):
    order, _ = turned(house, ["a", "b", "hall"], [shut("a", 12.0)], live="a")
    assert order[0] == ("a", 12.0)


def test_a_live_edge_that_will_die_anyway_does_not_hold_up_the_others(house):
    order, _ = turned(house, ["a", "b", "hall"], [shut("a", 20.0)], live="a")
    assert [name for name, _ in order] == ["b", "a", "hall"]


def test_nothing_is_sprayed_that_shuts_in_floor_still_to_do(house):
    """A plan that had the hall first would shut in the rooms; they come first."""
    order, _ = turned(house, ["hall", "a", "b"], wet=["c"])
    assert [name for name, _ in order] == ["a", "b", "hall"]
