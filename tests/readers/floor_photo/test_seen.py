"""What comes of a floor's photo."""

from __future__ import annotations

import base64

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.floor_photos import PATCH, ROOM, SHINE, camera, jpeg, pairs

from farwall.colour.marks.nouns import Mark
from farwall.errors import Refused
from farwall.readers.floor_photo.nouns import Pair
from farwall.readers.floor_photo.seen import (
    floor_look,
    floor_seen,
    pairs_from,
    pairs_text,
    points_from,
)

PLACE = st.floats(0, 9_000).map(lambda v: round(v, 1))
METRE = st.floats(-90, 90).map(lambda v: round(v, 3))


def test_the_floor_from_above_with_the_marks_that_were_found():
    mark = Mark("drip", PATCH, (PATCH, (3.3, 2.4), (3.2, 2.5)), 0.7, -3.0, 0.1, 0.1, "it is round")
    seen = floor_seen(jpeg(), pairs(camera()), ROOM, lambda _: (mark,))
    assert seen.marks == (mark,)
    assert seen.saw(*PATCH)
    assert not seen.saw(*SHINE)
    assert not seen.saw(-3.0, 2.0)
    assert base64.b64decode(seen.picture_base64).startswith(b"\xff\xd8\xff")
    assert len(seen.seen) == pytest.approx(seen.high_m / 0.1, abs=1)


def test_a_page_gets_a_photo_that_fits_it():
    look = floor_look(jpeg())
    assert (look.width_px, look.height_px) == (1600, 1200)
    assert look.file_px == pytest.approx(1.25)


@given(st.lists(st.tuples(PLACE, PLACE, METRE, METRE), min_size=1, max_size=12))
def test_pairs_come_back_as_they_were_written(told):
    there = tuple(Pair((a, b), (c, d), chr(65 + n)) for n, (a, b, c, d) in enumerate(told))
    assert pairs_from(pairs_text(there)) == there


def test_all_that_is_no_pair_is_told_at_once():
    with pytest.raises(Refused) as refusal:
        pairs_from("1,2=3,4;5,6;x,1=2,3;inf,1=2,3")
    assert len(refusal.value.mistakes) == 3
    assert pairs_from("10,20=1,2;30,40=3,4")[1].name == "B"
    with pytest.raises(Refused) as both:
        points_from("5,6;target=1")
    assert len(both.value.mistakes) == 2
