"""A floor from sizes: what was told is there, nothing lies on anything, everybody gets out."""

import math
from itertools import combinations

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.floor.faults import faults_of
from farwall.floor.from_sizes import LEAST_M, MOST_M, WIDTH_M, SizedRoom, floor_from_sizes


def room(name, long_m, wide_m, leads=None, way="door"):
    return SizedRoom(name, name.title(), long_m, wide_m, leads, way)


def laid(rooms):
    """The floor and its exits, or none and why."""
    try:
        return *floor_from_sizes(rooms), set()
    except Refused as error:
        return None, (), {one.what for one in error.mistakes}


@st.composite
def houses(draw):
    """Up to seven rooms, each with its door to one before it or outside, the first outside."""
    count = draw(st.integers(1, 7))
    sides = st.floats(1.5, 7.0).map(lambda side: round(side, 2))
    rooms = []
    for n in range(count):
        leads = None if n == 0 else draw(st.sampled_from([None, *range(n)]))
        way = draw(st.sampled_from(["door", "cased", "wide"]))
        rooms.append(room(f"r{n}", draw(sides), draw(sides), leads, way))
    return rooms


@settings(max_examples=60, deadline=None)
@given(houses())
def test_rooms_keep_their_sizes_and_nothing_lies_on_anything(rooms):
    floor, exits, refused = laid(rooms)
    assert refused <= {"no-wall"}
    if floor is None:
        return
    for told, made in zip(rooms, floor.rooms, strict=True):
        x0, y0, x1, y1 = made.polygon.shape.bounds
        sides = sorted([x1 - x0, y1 - y0])
        assert sides == pytest.approx(sorted([told.long_m, told.wide_m]), abs=2e-4)
    for one, other in combinations(floor.rooms, 2):
        assert one.polygon.shape.intersection(other.polygon.shape).area < 1e-3
    assert faults_of(floor, exits) == []
    assert [one.rooms for one in floor.openings] == [
        (told.id,) if told.leads is None else (told.id, rooms[told.leads].id) for told in rooms
    ]
    for opening in floor.openings:
        line = shapely.LineString(opening.line)
        assert 0.3 < line.length <= WIDTH_M[opening.kind] + 1e-3
        for name in opening.rooms:
            wall = floor.room_by_id[name].polygon.shape.exterior
            assert wall.buffer(1e-3).covers(line)


@settings(max_examples=60, deadline=None)
@given(houses())
def test_no_room_lies_behind_a_way_out(rooms):
    floor, _, _ = laid(rooms)
    if floor is None:
        return
    ground = shapely.union_all([one.polygon.shape for one in floor.rooms])
    for opening in floor.openings:
        if opening.kind == "outside":
            wall = shapely.LineString(opening.line)
            behind = wall.buffer(0.3, cap_style="flat").difference(ground.buffer(1e-3))
            assert behind.area == pytest.approx(0.3 * wall.length, rel=0.05)


def test_a_hall_takes_five_doors_by_hand():
    """A hall of 5 × 1.2 m has 12.4 m of wall: five doors need 5 × 0.96 m and fit."""
    rooms = [room("great", 6, 5), room("hall", 5, 1.2, 0, "cased")]
    rooms += [room(f"bed{n}", 3.6, 3.2, 1) for n in range(3)]
    rooms += [room("bath", 2.4, 1.6, 1), room("closet", 1.8, 0.9, 1)]
    floor, exits = floor_from_sizes(rooms)
    assert len(floor.openings) == 7
    assert [one.opening for one in exits] == ["out-great"]


def test_all_that_cannot_be_is_told_at_once():
    rooms = [room("a", 0.1, 3), room("b", 3, 70, 5), room("c", 3, 3, 2)]
    with pytest.raises(Refused) as refused:
        floor_from_sizes(rooms)
    told = [(one.where, one.what) for one in refused.value.mistakes]
    assert told == [("0", "size"), ("1", "size"), ("1", "leads-nowhere")]


@pytest.mark.parametrize(
    ("rooms", "told"),
    [
        ([room("a", 3, 3, 0)], [("", "no-way-out")]),
        ([room("a", 3, 3), room("b", 3, 3, 2), room("c", 3, 3, 1)], [("1", "shut"), ("2", "shut")]),
        ([room("a", 1, 1)] + [room(f"b{n}", 9, 9, 0) for n in range(6)], None),
    ],
)
def test_nobody_is_shut_in_and_walls_are_not_endless(rooms, told):
    with pytest.raises(Refused) as refused:
        floor_from_sizes(rooms)
    found = [(one.where, one.what) for one in refused.value.mistakes]
    assert found == told if told is not None else found[0][1] == "no-wall"


def test_the_ends_of_a_length_are_taken():
    floor, _ = floor_from_sizes([room("a", LEAST_M, MOST_M)])
    assert math.isclose(floor.rooms[0].polygon.shape.area, LEAST_M * MOST_M)
