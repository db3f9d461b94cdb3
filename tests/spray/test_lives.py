"""Open times by room and minute: by hand, and laws that hold for any of them."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.spray.hand_floors import job, row
from tests.strategies.weather import epw_text

from farwall.facts.job import RoomSurvey, Survey
from farwall.facts.plain import plain
from farwall.facts.plan import RoomOpenTime
from farwall.facts.samples import Sample
from farwall.floor.geometry import polygon_geometry
from farwall.job.plan_job import plan_job
from farwall.readers.epw import parse_epw
from farwall.spray.check import check_plan
from farwall.spray.edges import Moments
from farwall.spray.lives import Lives, held_to

FLOORS = {"left": shapely.box(0, 0, 3, 2), "right": shapely.box(3, 0, 6, 2)}


def lasts(room, low, from_min=0.0, polygon=None):
    return RoomOpenTime(room, from_min, low, 2 * low, 3 * low, polygon=polygon)


def lives(*open_times):
    return Lives(open_times, FLOORS)


def edge(*places):
    """An edge between passes 0 and 1: places told as x, share when made, share when met."""
    made = np.array([[share for _, share, _ in places]] * 2, dtype=float)
    met = np.array([[share for _, _, share in places]] * 2, dtype=float)
    return Moments(0, 1, made, met, np.array([[x, 1.0] for x, _, _ in places], dtype=float))


ACROSS = (edge((1.0, 0.0, 0.0), (5.0, 1.0, 1.0)),)
"""x = 1 is made at the start of the first pass and met at the start of the second, x = 5 at their
ends."""
TIMES = [(0.0, 4.0), (4.0, 6.0)]
"""By hand: x = 1 waits 4 min from 0, x = 5 from 4 to 10: 6 min."""


def test_each_room_holds_its_own_edges_by_hand():
    """By hand: left 4 of 5 min, right 6 of 9: the left one has the least to spare."""
    held = held_to(lives(lasts("left", 5.0), lasts("right", 9.0)), ACROSS, TIMES)
    assert (held.tightest.room, held.tightest.age_min, held.tightest.low_min) == ("left", 4.0, 5.0)
    assert held.tightest.spare_min == pytest.approx(1.0)
    assert (held.tightest.made_min, held.tightest.met_min) == (0.0, 4.0)
    assert held.tightest.at == (1.0, 1.0)


def test_an_older_edge_in_a_slow_room_tells_the_open_time_of_the_field_by_hand():
    """By hand: all hold, and the oldest edge, 6 min, is beyond the 5 of the left room: 9."""
    held = held_to(lives(lasts("left", 5.0), lasts("right", 9.0)), ACROSS, TIMES)
    assert held.open_time.low == 9.0


def test_where_an_edge_dies_its_own_open_time_is_told_by_hand():
    """By hand: 4 of 3 min on the left: a minute too old, though the right one holds."""
    held = held_to(lives(lasts("left", 3.0), lasts("right", 9.0)), ACROSS, TIMES)
    assert held.open_time.low == 3.0
    assert held.spare_min == pytest.approx(-1.0)


def test_the_shortest_of_all_minutes_of_a_wait_counts_by_hand():
    """By hand: from minute 6 on edges live 5 min; x = 5 waits from 4 to 10, so it has died."""
    steps = [lasts(room, low, at) for room in FLOORS for low, at in ((9.0, 0.0), (5.0, 6.0))]
    held = held_to(lives(*steps), ACROSS, TIMES)
    assert (held.tightest.room, held.spare_min) == ("right", -1.0)
    later = [replace(one, from_min=10.5) if one.from_min else one for one in steps]
    assert held_to(lives(*later), ACROSS, TIMES).spare_min == pytest.approx(3.0)


def test_a_patch_of_sun_shortens_only_what_lies_in_it_by_hand():
    """By hand: a patch around x = 5 with 4 min; the edge there is 6 min old."""
    rooms = [lasts("left", 9.0), lasts("right", 9.0)]
    sun = polygon_geometry(shapely.box(4.5, 0.5, 5.5, 1.5))
    assert held_to(lives(*rooms, lasts("right", 4.0, polygon=sun)), ACROSS, TIMES).spare_min == -2
    aside = polygon_geometry(shapely.box(3.5, 0.5, 4.5, 1.5))
    assert held_to(lives(*rooms, lasts("right", 4.0, polygon=aside)), ACROSS, TIMES).spare_min == 3


def test_a_patch_holds_between_its_own_minutes_only_by_hand():
    """By hand: x = 5 waits from 4 to 10; a patch of before 4 or of after 10 passes it by."""
    rooms = [lasts("left", 9.0), lasts("right", 9.0)]
    sun = lasts("right", 4.0, polygon=polygon_geometry(shapely.box(4.5, 0.5, 5.5, 1.5)))
    for begin, end, spare in (
        (0, 3.9, 3),
        (0, 4.1, -2),
        (9.9, 20, -2),
        (10.1, 20, 3),
        (9, None, -2),
    ):
        patch = replace(sun, from_min=begin, to_min=end)
        assert held_to(lives(*rooms, patch), ACROSS, TIMES).spare_min == spare


def test_under_an_opening_both_rooms_count():
    here = (edge((3.01, 0.0, 0.0)),)
    assert held_to(lives(lasts("left", 5.0), lasts("right", 9.0)), here, TIMES).spare_min == 1.0


def test_without_edges_nothing_dies():
    held = held_to(lives(lasts("left", 5.0), lasts("right", 9.0)), (), TIMES)
    assert (held.tightest, held.spare_min, held.open_time.low) == (None, 5.0, 5.0)


low = st.floats(0.0, 12.0).map(lambda value: round(value, 2))
places = st.lists(st.tuples(st.floats(0, 6), st.floats(0, 1), st.floats(0, 1)), min_size=1)


@given(places, low, low, low, st.floats(0, 10), st.floats(0, 5))
def test_more_open_time_never_leaves_less_to_spare(found, left, right, later, at_min, more):
    edges = (edge(*found),)
    short = [lasts("left", left), lasts("right", right), lasts("left", later, at_min)]
    spare = held_to(lives(*short), edges, TIMES).spare_min
    for number, one in enumerate(short):
        longer = [*short[:number], replace(one, low=one.low + more), *short[number + 1 :]]
        assert held_to(lives(*longer), edges, TIMES).spare_min >= spare - 1e-9


@given(places, low, low)
def test_the_oldest_edge_is_within_the_told_open_time_just_when_all_hold(found, left, right):
    edges = (edge(*found),)
    held = held_to(lives(lasts("left", left), lasts("right", right)), edges, TIMES)
    peak = round(max(0.0, edges[0].oldest_min(TIMES)), 4)
    assert (peak <= held.open_time.low) == (held.spare_min >= 0)


@given(places, low)
def test_rooms_alike_are_judged_by_the_oldest_edge_alone(found, same):
    edges = (edge(*found),)
    held = held_to(lives(lasts("left", same), lasts("right", same)), edges, TIMES)
    assert held.open_time.low == same
    assert held.spare_min == pytest.approx(same - edges[0].oldest_min(TIMES), abs=1e-3)


SIX = (Sample("board", coat="one", sheen_loss_min=6.0),)


def three(rooms, **more):
    """Three rooms without doors between them, as one field; half of 6 min is the budget."""
    told = Survey(slab_c=21.0, air_c=21.0, rooms=rooms)
    place = row(4, 4, 3, depth=4.5, kind="wide")
    return plan_job(job(place, samples=SIX, survey=told, **more))


@pytest.mark.parametrize("room", ["a", "b", "c"])
def test_a_sunny_room_is_held_to_less_and_the_rest_is_not(room):
    """By hand: 0.55 of 3 min are 1.65 in the sun."""
    plan = three({room: RoomSurvey(sun=True)})
    field = plan.fields[0]
    lows = {one.room: one.low for one in field.open_times}
    assert lows == {"a": 3.0, "b": 3.0, "c": 3.0} | {room: 1.65}
    assert field.verdict == "fits"
    assert field.peak_age_min <= field.open_time_min.low
    assert check_plan(plain(plan)) == []


def test_only_the_tight_room_decides_how_narrow_bands_are():
    """Held as a whole to 1.65 min the bands of all three rooms would be as narrow as the first's.

    With the last room, farthest from the door, in the sun older edges in the others still hold.
    """
    plan = three({"c": RoomSurvey(sun=True, draught=True)})
    field = plan.fields[0]
    assert field.tightest.room == "c"
    assert field.tightest.low_min == pytest.approx(1.24)
    assert field.tightest.spare_min >= 0


def test_rooms_alike_are_planned_as_if_there_were_one_open_time():
    field = three({}).fields[0]
    assert {one.low for one in field.open_times} == {3.0}
    assert field.open_time_min.low == 3.0
    assert field.tightest.age_min == field.peak_age_min
    assert field.tightest.spare_min == pytest.approx(3.0 - field.peak_age_min, abs=1e-4)


@pytest.fixture(scope="module")
def warming():
    """An invented May day, planned from eleven in the morning: it grows drier."""
    place = row(9, 9, 9, depth=6, kind="wide")
    facts = job(place, survey=Survey(), starts_at="2027-05-04T11:30:00-06:00")
    return plan_job(facts, weather=parse_epw(epw_text()))


def test_open_times_change_at_full_hours_by_hand(warming):
    """By hand: a start at half past eleven meets hours at minutes 30, 90, …"""
    steps = [one for one in warming.fields[0].open_times if one.room == "a"]
    assert [one.from_min for one in steps[:2]] == [0.0, 30.0]
    assert [one.low for one in steps] == sorted((one.low for one in steps), reverse=True)


def test_the_checker_finds_the_same_tightest_edge_on_such_a_day(warming):
    faults = check_plan(plain(warming))
    late = [field for field in warming.fields if field.tightest.spare_min < -0.05]
    assert {fault.field for fault in faults} == {field.id for field in late}
    assert {fault.code for fault in faults} <= {"dead-edge"}


@pytest.mark.parametrize("sunny", ["a", "b"])
def test_more_open_time_in_one_room_never_makes_a_verdict_worse(sunny):
    rank = {"fits": 0, "helper": 1, "two": 2, "stop-line": 3, "cannot": 4}
    verdicts = [
        rank[three({sunny: RoomSurvey(drop_s=12.0, sun=sun, draught=draught)}).fields[0].verdict]
        for sun, draught in ((False, False), (True, False), (True, True))
    ]
    assert verdicts == sorted(verdicts)
