"""How long edges live, in the words of the papers."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.papers.invented_plan import small_house

from farwall.facts.plan import RoomOpenTime, Tightest
from farwall.floor.geometry import PolygonGeometry
from farwall.papers.run_sheet.edge_words import edges_live, rooms_differ, tight_edge, why_edge
from farwall.papers.wall_clock import plan_clock

PLAN = small_house()
FIELD = max(PLAN.fields, key=lambda field: len(field.rooms))
CLOCK = plan_clock(PLAN, "us")


def lasting(*told, **more):
    times = tuple(
        RoomOpenTime(room, at, low, 9.0, 12.0, "guess", "house-guess") for room, at, low in told
    )
    return replace(FIELD, open_times=times, **more)


def names(*rooms):
    return {room.id: room.label for room in PLAN.inputs.floor.rooms if room.id in rooms}


ONE, TWO = FIELD.rooms[:2]
CALLED = names(ONE, TWO)


def test_rooms_alike_need_no_words():
    alike = lasting((ONE, 0.0, 5.0), (TWO, 0.0, 5.0))
    assert edges_live(PLAN, alike, CLOCK) == ""
    assert not rooms_differ(alike)
    assert edges_live(PLAN, FIELD, CLOCK) == "", "a plan that tells one figure only"


def test_the_tightest_room_comes_first_and_by_name():
    mixed = lasting((ONE, 0.0, 5.0), (TWO, 0.0, 2.75))
    assert edges_live(PLAN, mixed, CLOCK) == (
        f"Edges live 2.8 min in {CALLED[TWO]}; 5.0 min in {CALLED[ONE]}."
    )


def test_an_hour_that_changes_them_is_told_by_the_clock():
    later = lasting((ONE, 0.0, 5.0), (ONE, 60.0, 4.0), (TWO, 0.0, 5.0), (TWO, 60.0, 4.0))
    assert edges_live(PLAN, later, CLOCK) == f"Edges live 5.0 min, 4.0 from {CLOCK.time(60.0)}."


def test_of_the_patches_of_a_room_the_shortest_is_told():
    ring = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 0.0))
    rooms = lasting((ONE, 0.0, 5.0), (TWO, 0.0, 5.0))
    patches = tuple(
        RoomOpenTime(ONE, at, low, 9.0, 12.0, polygon=PolygonGeometry((ring,)), to_min=at + 60)
        for at, low in ((0.0, 3.0), (60.0, 2.5))
    )
    sunny = replace(rooms, open_times=(*rooms.open_times, *patches))
    assert edges_live(PLAN, sunny, CLOCK) == (
        f"Edges live 2.5 min in part of {CALLED[ONE]}; 5.0 min in {CALLED[ONE]} and {CALLED[TWO]}."
    )


def tight(low, age):
    return Tightest(TWO, (1.0, 1.0), 10.0, 10.0 + age, age, low, low - age)


@pytest.mark.parametrize(("age", "words"), [(2.0, "0.8 min to spare"), (3.0, "0.2 min too many")])
def test_the_tightest_edge_is_told_with_its_room_where_rooms_differ(age, words):
    mixed = lasting((ONE, 0.0, 5.0), (TWO, 0.0, 2.75), tightest=tight(2.75, age))
    told = why_edge(PLAN, mixed, CLOCK)
    assert told.startswith(f"Tightest edge, in {CALLED[TWO]} at {CLOCK.time(10.0 + age)},")
    assert words in told
    assert "likely 9, at most 12" in told
    assert tight_edge(PLAN, mixed).room == CALLED[TWO]


def test_a_plan_with_one_figure_tells_its_oldest_edge_as_before():
    edge = tight_edge(PLAN, FIELD)
    assert (edge.age_min, edge.low_min) == (FIELD.peak_age_min, FIELD.open_time_min.low)
    assert why_edge(PLAN, FIELD, CLOCK).startswith(f"Oldest edge {FIELD.peak_age_min:.1f} min of ")
