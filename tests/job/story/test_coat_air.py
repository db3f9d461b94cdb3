"""Slab and air at a coat of sealer: which reading counts, by hand; both papers say the same."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.moist import dew_point_c
from farwall.job.story.coat_air import NEAR_MIN, coat_air
from farwall.job.story.noun import Happened, Reading


def read(at_min, room="", *, slab_c=18.0, air_c=22.0, rh_percent=60.0):
    return Reading(at_min, room, slab_c, air_c, rh_percent, None)


def coat(at_min=1000.0, **about):
    return Happened("a", "sealed", at_min, about)


def test_the_last_reading_of_its_room_or_of_none_counts():
    readings = (read(900, "hall"), read(950, ""), read(960, "bath"), read(1001, "hall"))
    assert coat_air(readings, coat(room="hall")).reading == readings[1]
    assert coat_air(readings, coat(room="bath")).reading == readings[2]
    assert coat_air(readings, coat(), room="hall").reading == readings[1]
    assert coat_air(readings, coat()).reading == readings[2]  # all rooms: any of them


def test_too_old_too_late_or_half_a_reading_tells_nothing():
    for one in (read(1000 - NEAR_MIN - 1), read(1000.5), read(990, rh_percent=None)):
        found = coat_air((one,), coat())
        assert (found.reading, found.dew_c, found.margin_k) == (None, None, None)
    assert coat_air((), coat(slab_c=15.0)).slab_c == 15.0


def test_the_margin_by_hand_and_the_slab_entered_with_the_coat_wins():
    """22 °C at 60 %: dew point 13.9 °C; slab 18 °C as read, 16 °C as entered."""
    readings = (read(990),)
    assert coat_air(readings, coat()).margin_k == pytest.approx(18.0 - 13.9, abs=0.1)
    assert coat_air(readings, coat(slab_c=16.0)).margin_k == pytest.approx(16.0 - 13.9, abs=0.1)


@given(
    st.lists(
        st.builds(
            read, st.floats(0, 2000), st.sampled_from(["", "hall", "bath"]),
            rh_percent=st.one_of(st.none(), st.floats(5, 100)),
        ),
        max_size=8,
    ),
    st.sampled_from(["", "hall", "bath"]),
)  # fmt: skip
def test_it_is_never_after_the_coat_nor_of_another_room(readings, room):
    found = coat_air(sorted(readings, key=lambda one: one.at_min), coat(room=room))
    if found.reading is not None:
        assert 0 <= 1000.0 - found.reading.at_min <= NEAR_MIN
        assert not room or found.reading.room in {"", room}
        assert found.dew_c == dew_point_c(air_c=22.0, rh_percent=found.reading.rh_percent)
