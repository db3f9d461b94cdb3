"""A field parted at a seam: who goes first, and that everybody gets out."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import box as floor_box
from tests.shapes import outside, place
from tests.spray.hand_floors import row, seam, world

from farwall.floor.nouns import Room, SawCut
from farwall.spray.remedies.parts import parts_at

HALL = place(
    [Room("hall", floor_box(0, 0, 9, 5))],
    [outside("end", ((0, 2), (0, 3)), "hall")],
)


def test_the_far_half_goes_first_and_leaves_by_the_cut():
    house = world(HALL, SawCut(((4.5, 0), (4.5, 5)), id="cut"))
    far, near = parts_at(house, frozenset(house.pieces), seam(house, "end"), {"cut"})
    assert [way.id for way in far.ways] == ["cut"]
    assert [way.id for way in near.ways] == ["end"]
    assert house.pieces[next(iter(far.pieces))].shape.bounds[0] == 4.5


def test_a_line_that_parts_nothing_gives_no_parts():
    house = world(HALL)
    assert parts_at(house, frozenset(house.pieces), seam(house, "end"), {"cut"}) == ()


@given(st.integers(2, 6), st.data())
def test_in_a_row_of_rooms_each_part_leaves_outside_or_into_a_later_one(rooms, data):
    house = world(row(*[3.0] * rooms))
    inner = [one.id for one in house.seams if one.b]
    closed = set(data.draw(st.lists(st.sampled_from(inner), min_size=1, unique=True)))
    way = next(one for one in house.seams if one.is_way_out)
    parts = parts_at(house, frozenset(house.pieces), way, closed)
    assert len(parts) == len(closed) + 1
    later: set[str] = set()
    for part in reversed(parts):
        assert any(one.is_way_out or {one.a, one.b} & later for one in part.ways), (
            "nobody is shut in"
        )
        later |= part.pieces
    assert later == set(house.pieces), "and no floor is lost"
