"""The order of rooms: nobody walks over a washed floor."""

from dataclasses import replace

import pytest
from tests.job.live.test_now import PLAN

from farwall.floor.nouns import Exit, Opening
from farwall.job.acid_day.washing.order import Ways, wash_order, ways_of


def walks_dry(plan):
    """By counting: from each room, when it is washed, a way leads out over rooms not yet washed."""
    ways, order = ways_of(plan), [room for room, _ in wash_order(plan)]
    for n, room in enumerate(order):
        free, seen, todo = set(order[n:]), {room}, [room]
        while todo:
            here = todo.pop()
            near = ways.beside[here] & (free - seen)
            seen |= near
            todo += near
        if not seen & set(ways.out):
            return room
    return None


def test_each_room_has_a_dry_way_out_when_it_is_washed():
    assert walks_dry(PLAN) is None
    assert sorted(room for room, _ in wash_order(PLAN)) == sorted(
        room.id for room in PLAN.inputs.floor.rooms
    )


def test_the_checker_sees_a_room_shut_in(monkeypatch):
    """Turned round, the same order shuts somebody in."""
    turned = wash_order(PLAN)[::-1]
    monkeypatch.setitem(walks_dry.__globals__, "wash_order", lambda plan: turned)
    assert walks_dry(PLAN) is not None


@pytest.mark.parametrize("exit_room", [room.id for room in PLAN.inputs.floor.rooms])
def test_so_it_is_for_any_way_out(exit_room):
    """The order of spraying then leads nowhere near the way out, and is mended."""
    out = Opening("other-way", "outside", ((0.0, 0.0), (1.0, 0.0)), (exit_room,))
    inputs = replace(PLAN.inputs, openings=(*PLAN.inputs.openings, out),
                     exits=(Exit("other", "other-way"),))  # fmt: skip
    plan = replace(PLAN, inputs=inputs)
    assert walks_dry(plan) is None
    assert wash_order(plan)[-1] == (exit_room, "other")


def test_without_any_way_out_every_room_is_still_washed():
    plan = replace(PLAN, inputs=replace(PLAN.inputs, exits=()))
    order = wash_order(plan)
    assert len(order) == len(PLAN.inputs.floor.rooms)
    assert {way for _, way in order} == {""}


def test_the_way_leads_over_free_rooms_only():
    ways = Ways(
        {"a": frozenset({"b", "c"}), "b": frozenset({"a", "d"}), "c": frozenset({"a", "d"}),
         "d": frozenset({"b", "c"})}, {"d": "front"},
    )  # fmt: skip
    assert ways.way("a", "abcd") == "b"
    assert ways.way("a", "acd") == "c"
    assert ways.way("a", "a") is None
    assert ways.way("d", "d") == "front"
