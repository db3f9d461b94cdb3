"""What masks the house, from its walls and openings."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.job.office.quantities.grounds import ground, lines, of_rooms, planned
from tests.shapes import box

from farwall.facts.supplies import Masking, MaskItem, Supplies
from farwall.floor.nouns import Room
from farwall.job.office import OfficeGround
from farwall.job.office.masking import masked_of
from farwall.job.office.quantities.mask import tape_m
from farwall.units import M_PER_FT


@pytest.mark.common_practice
def test_a_roll_of_180_ft_does_160_ft_of_wall_by_hand():
    """Common practice, no source: two rolls do 320 ft."""
    assert tape_m(320 * M_PER_FT) == pytest.approx(2 * 180 * M_PER_FT)


def test_tape_and_film_follow_the_wall_that_is_masked():
    of = ground()
    wall = masked_of(of).wall_m
    found = lines(of)
    assert found["tape"].likely == pytest.approx(wall * 9 / 8)
    assert wall < found["film"].likely < wall * 1.02
    for id_ in ("tape", "film"):
        assert math.fsum(one.ready for one in found[id_].shares) == pytest.approx(found[id_].ready)
        assert {one.room for one in found[id_].shares} == {"front", "back"}


def test_a_wall_masked_to_the_ceiling_takes_two_strips():
    """8 ft of film 4 ft tall, by hand."""
    tall = Supplies(masking=Masking(room_film_m={"back": 8 * M_PER_FT}))
    plain, high = lines(ground())["film"], lines(ground(supplies=tall))["film"]
    back = next(one for one in plain.shares if one.room == "back").likely
    assert high.likely == pytest.approx(plain.likely + back)


def test_a_room_that_is_not_masked_takes_none():
    bare = lines(ground(supplies=Supplies(masking=Masking(not_masked=("back",)))))
    assert [one.room for one in bare["tape"].shares] == ["front"]
    assert bare["tape"].ready < lines(ground())["tape"].ready


@settings(max_examples=25, deadline=None)
@given(st.lists(st.floats(1.0, 6.0), min_size=1, max_size=4))
def test_a_room_more_never_lowers_a_line_of_masking(widths):
    """The plan does not matter to masking: the first plan stands beside other floors."""
    told, plan = planned()
    rooms = tuple(
        Room(f"more-{n}", box(20 + 7 * n, 0, 20 + 7 * n + wide, 3)) for n, wide in enumerate(widths)
    )
    before = None
    for count in range(len(rooms) + 1):
        floor = replace(told.floor, rooms=(*told.floor.rooms, *rooms[:count]))
        now = {
            id_: one.ready
            for id_, one in lines(OfficeGround(replace(told, floor=floor), plan)).items()
            if one.moment == "mask"
        }
        if before is not None:
            assert all(now[id_] >= much for id_, much in before.items())
            assert now["tape"] > before["tape"]
        before = now


def test_what_is_told_of_kicks_and_drains_has_its_lines():
    items = (
        MaskItem("kick", "front", length_m=2.5), MaskItem("tub", "back", count=2, length_m=1.5),
        MaskItem("drain", "back", count=3), MaskItem("kick", "back", length_m=9.0, take_out=True),
    )  # fmt: skip
    found = lines(ground(supplies=Supplies(masking=Masking(items=items))))
    assert found["paper"].ready == pytest.approx(5.5)
    assert found["drain-plugs"].ready == 3
    assert not {"paper", "drain-plugs"} & set(lines(ground()))


def test_doors_and_ways_out_ask_for_foam_and_towels():
    """One door inside, one out, by hand: two gaps of 4.87 m, two towels."""
    found = lines(ground())
    assert found["door-foam"].ready == pytest.approx(2 * 4.87)
    assert found["dams"].ready == 2
    assert lines(of_rooms(4.0))["dams"].ready == 2
