"""The checker holds each edge to the open time of its own room and minute."""

from __future__ import annotations

from copy import deepcopy
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.hand_plans import PLANS

from farwall.spray.check import check_plan, replay_ages
from farwall.spray.check.edges import edges_of
from farwall.spray.check.lives import worst_by_edge
from farwall.spray.check.reading import read_plan
from farwall.spray.check.world import world_of

NAME = "two rooms sprayed as one"


def told(*open_times, low=None, name=NAME):
    """That plan with open times told by room, minute and patch."""
    plan = deepcopy(PLANS[name]())
    field = plan["fields"][0]
    field["open_times"] = [
        {"room": room, "from_min": at, "low": minutes, "likely": 20, "high": 30, **more}
        for room, at, minutes, *rest in open_times
        for more in [rest[0] if rest else {}]
    ]
    field["open_time_min"]["low"] = min(one[2] for one in open_times) if low is None else low
    return plan


def codes(plan):
    return [fault.code for fault in check_plan(plan)]


def peaks():
    """The oldest edge in each of the two rooms, by the checker's own exact ages."""
    plan = read_plan(told(("bed", 0, 0.0), ("hall", 0, 0.0)))
    edges = edges_of(plan.bands, world_of(plan.house, np.empty((0, 2))))
    oldest = {"bed": 0.0, "hall": 0.0}
    for edge in edges:
        room = "bed" if edge.line.centroid.y > 3.01 else "hall"
        if abs(edge.line.centroid.y - 3) > 0.01:
            found = worst_by_edge(
                plan.fields[0], [edge], world_of(plan.house, np.empty((0, 2))), strict=False
            )
            oldest[room] = max(oldest[room], found[0][1].age_min)
    return oldest


def test_a_plan_that_tells_open_times_like_its_field_stands():
    low = PLANS[NAME]()["fields"][0]["open_time_min"]["low"]
    assert codes(told(("bed", 0, low), ("hall", 0, low))) == []


def test_a_room_with_less_open_time_has_its_dead_edges_told():
    bed = peaks()["bed"]
    faults = check_plan(told(("bed", 0, bed - 0.5), ("hall", 0, 60.0)))
    assert {fault.code for fault in faults} == {"dead-edge"}
    assert all("bed" in fault.what for fault in faults)
    peak = max(replay_ages(PLANS[NAME]()).values())
    assert codes(told(("bed", 0, peak + 0.01), ("hall", 0, 60.0))) == []


def test_an_edge_that_has_outlived_one_room_may_live_on_in_another():
    """The oldest edge lies under the opening: both rooms hold it, so both must bear it."""
    plan = PLANS[NAME]()
    peak = max(replay_ages(plan).values())
    hall = peaks()["hall"]
    assert hall < peak - 1
    assert "dead-edge" in codes(told(("bed", 0, peak + 1), ("hall", 0, hall + 0.1)))
    patch = {"polygon": {"type": "Polygon", "coordinates": [[[0, 0], [3, 0], [3, 2.5], [0, 2.5],
                                                           [0, 0]]]}}  # fmt: skip
    gone = {**patch, "to_min": 0.5}
    own = (("bed", 0, peak + 1), ("hall", 0, peak + 1), ("hall", 0, hall - 1, gone))
    assert codes(told(*own)) == []
    own = (*own[:2], ("hall", 0, hall + 0.1, patch))
    assert codes(told(*own)) == []
    assert "dead-edge" in codes(told(*own[:2], ("hall", 0, hall - 1, patch)))


def test_minutes_in_which_no_edge_waits_do_not_matter():
    end = max(band["end_min"] for band in PLANS[NAME]()["fields"][0]["bands"])
    late = [("bed", end + 1, 0.1), ("hall", end + 1, 0.1)]
    assert codes(told(("bed", 0, 60.0), ("hall", 0, 60.0), *late)) == []
    soon = [(room, end - 2, low) for room, _, low in late]
    assert "dead-edge" in codes(told(("bed", 0, 60.0), ("hall", 0, 60.0), *soon))


def test_an_open_time_of_the_field_below_all_its_rooms_rules():
    assert {"dead-edge", "edited"} <= set(codes(told(("bed", 0, 60), ("hall", 0, 50), low=0.2)))


@pytest.mark.parametrize(
    ("times", "words"),
    [
        ([("bed", 0, 60.0)], "no open time for room 'hall'"),
        ([("bed", 0, 60.0), ("hall", 0, 60.0), ("attic", 0, 60.0)], "'attic', which is not in it"),
    ],
    ids=["a room left out", "a strange room"],
)
def test_open_times_that_do_not_fit_the_field_are_told(times, words):
    assert any(words in fault.what for fault in check_plan(told(*times)))


def test_a_tightest_edge_that_is_none_is_told():
    for rooms in ((60.0, 60.0), (60.0, 50.0)):
        plan = told(*((room, 0, low) for room, low in zip(("bed", "hall"), rooms, strict=True)))
        plan["fields"][0]["tightest"] = {"spare_min": 1.0}
        assert any("tightest edge" in fault.what for fault in check_plan(plan))


def worst_sampled(field, edges, world):
    """The latest place by plain sampling: nearest moments on a fine comb, room by room."""
    rooms = {room.id: room.shape for room in world.house.rooms}
    worst = -np.inf
    for edge in edges:
        for part in edge.line.geoms:
            for share in np.linspace(0, 1, 200):
                spot = part.interpolate(share, normalized=True)
                made, met = (moment(band.path, spot) for band in (edge.earlier, edge.later))
                made, met = min(made, met), max(made, met)
                for one in field.open_times:
                    after = [
                        o.from_min
                        for o in field.open_times
                        if o.room == one.room and o.from_min > one.from_min
                    ]
                    begins = one.from_min if one.from_min > 0 else -np.inf
                    rules = made < min(after, default=np.inf) and met >= begins
                    if rules and rooms[one.room].distance(spot) < 0.001:
                        worst = max(worst, met - made - one.low_min)
    return worst


def moment(path, spot):
    best = (np.inf, 0.0)
    for (x0, y0, t0), (x1, y1, t1) in pairwise(path):
        way = np.array([x1 - x0, y1 - y0])
        square = max(float(way @ way), 1e-12)
        share = min(max(float((np.array([spot.x - x0, spot.y - y0]) @ way) / square), 0.0), 1.0)
        away = np.hypot(spot.x - x0 - share * way[0], spot.y - y0 - share * way[1])
        best = min(best, (away, t0 + share * (t1 - t0)))
    return best[1]


@settings(max_examples=15)
@given(st.floats(3, 12), st.floats(3, 12), st.floats(3, 12), st.floats(5, 15))
def test_the_worst_place_is_never_milder_than_plain_sampling_finds(bed, hall, later, at_min):
    times = [("bed", 0, bed), ("hall", 0, hall), ("bed", at_min, later), ("hall", at_min, later)]
    plan = read_plan(told(*times))
    field = plan.fields[0]
    world = world_of(plan.house, np.empty((0, 2)))
    edges = [e for e in edges_of(plan.bands, world) if e.later.path[0, 2] != e.later.path[-1, 2]]
    found = worst_by_edge(field, edges, world, strict=True)[0][1].late_min
    sampled = worst_sampled(field, edges, world)
    assert found >= sampled - 1e-6
    lenient = worst_by_edge(field, edges, world, strict=False)[0][1].late_min
    assert lenient <= found + 1e-9
    assert lenient <= sampled + 0.1
