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
from farwall.job.office.quantities.mask import strips
from farwall.units import M_PER_FT, M_PER_IN


def test_tape_and_film_are_those_of_the_masking():
    of = ground()
    masked, found = masked_of(of), lines(of)
    assert found["tape"].likely == pytest.approx(masked.tape_m)
    assert found["tape"].low == pytest.approx(min(masked.wall_m / 0.9, masked.tape_m))
    hung = sum(long for _, long in masked.film_lengths_m)
    assert found["film"].likely == pytest.approx(hung + masked.dam_m)
    for id_ in ("tape", "film"):
        assert math.fsum(one.ready for one in found[id_].shares) == pytest.approx(found[id_].ready)
    assert {one.room for one in found["tape"].shares} == {"front", "back", ""}


@pytest.mark.common_practice
def test_160_of_180_ft_of_tape_by_hand():
    """Common practice, no source: a tenth of a roll is lost; 160 ft of wall take 178 ft."""
    line, wall = lines(ground())["tape"], masked_of(ground()).wall_m
    assert line.low / wall * 160 == pytest.approx(178, abs=0.5)


@pytest.mark.parametrize(("inches", "count"), [(24, 1), (48, 1), (49, 2), (96, 2), (97, 3)])
def test_strips_of_film_one_above_the_other_by_hand(inches, count):
    assert strips(inches * M_PER_IN) == count


def test_a_wall_masked_to_the_ceiling_takes_two_strips():
    """The back room at 8 ft: its film twice, of what is hung there."""
    tall = Supplies(masking=Masking(room_film_m={"back": 8 * M_PER_FT}))
    of = ground(supplies=tall)
    lengths = dict(masked_of(of).film_lengths_m)
    high = lengths[max(lengths)]
    rest = sum(long for tall_m, long in lengths.items() if tall_m < 2)
    assert lines(of)["film"].likely == pytest.approx(2 * high + rest + masked_of(of).dam_m)


def test_a_room_that_is_not_masked_takes_none():
    bare = lines(ground(supplies=Supplies(masking=Masking(not_masked=("back",)))))
    assert "back" not in [one.room for one in bare["tape"].shares]
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


def test_what_is_told_of_drains_and_low_things_has_its_lines():
    items = (
        MaskItem("drain", "back", count=3), MaskItem("drain", "back", take_out=True),
        MaskItem("stair", "front", length_m=2.5, height_m=0.2),
    )  # fmt: skip
    of = ground(supplies=Supplies(masking=Masking(items=items)))
    found = lines(of)
    assert found["drain-plugs"].ready == 3
    assert found.get("paper", found["tape"]).ready in {masked_of(of).paper_m, found["tape"].ready}
    assert "drain-plugs" not in lines(ground())


def test_frames_doors_and_ways_out():
    """One door inside, one out, by hand: wrapped from both rooms and from inside, two feet each;
    two gaps; two towels."""
    of = ground()
    masked, found = masked_of(of), lines(of)
    assert masked.jambs == 3
    assert found["jamb-putty"].likely == pytest.approx(6 * 0.05)
    assert "door-foam" not in found
    assert masked.doors == 2
    assert found["dams"].ready == 2
    assert lines(of_rooms(4.0))["dams"].ready == 2


def test_gaps_of_doors_are_closed_by_tape_or_by_foam_and_never_by_both():
    """Foam takes the tape of the gaps out of the list, a tenth of a roll with it: gap / 0.9."""
    taped = ground()
    foamed = ground(supplies=Supplies(masking=Masking(gaps="foam")))
    gap_m = masked_of(taped).gap_m
    assert gap_m > 0
    with_tape, with_foam = lines(taped), lines(foamed)
    assert "door-foam" not in with_tape
    assert with_foam["door-foam"].ready == pytest.approx(gap_m)
    assert with_tape["tape"].ready - with_foam["tape"].ready == pytest.approx(gap_m / 0.9)
    assert "gaps at doors" in with_tape["tape"].rule
    assert "gaps at doors" not in with_foam["tape"].rule
    assert math.fsum(one.ready for one in with_foam["tape"].shares) == pytest.approx(
        with_foam["tape"].ready
    )
    same = lines(ground(supplies=Supplies(masking=Masking(gaps="tape"))))
    assert same["tape"] == with_tape["tape"]


def test_before_board_there_is_next_to_nothing_to_mask():
    stage = Supplies(masking=Masking(stage="before board"))
    found = lines(ground(supplies=stage))
    after = lines(ground())
    assert found["tape"].ready < after["tape"].ready / 2
    assert found["dams"].ready == after["dams"].ready
