"""One well-mixed room, by its own closed forms."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid import room

RELEASE = st.floats(1e-3, 10)
FLOW, VOLUME, MINUTES = st.floats(0.1, 100), st.floats(10, 1000), st.floats(0.5, 600)


@given(RELEASE, FLOW, VOLUME, MINUTES)
def test_the_law_of_the_room_holds(release_g_min, flow_m3_min, volume_m3, minutes):
    """V dC/dt = G - Q C, by a small difference on either side."""
    told = {"release_g_min": release_g_min, "flow_m3_min": flow_m3_min, "volume_m3": volume_m3}
    dt = 1e-3
    before, now, after = (
        room.held_mg_m3(**told, minutes=minutes + step) for step in (-dt, 0.0, dt)
    )
    change = volume_m3 * (after - before) / (2 * dt)
    assert change == pytest.approx(
        release_g_min * 1000 - flow_m3_min * now, abs=1e-4 * release_g_min * 1000
    )


@given(FLOW, VOLUME, st.floats(1.01, 1e4))
def test_what_falls_in_the_time_told_is_there(flow_m3_min, volume_m3, times):
    minutes = room.minutes_to_fall(
        from_mg_m3=times, to_mg_m3=1.0, air_changes_h=flow_m3_min * 60 / volume_m3
    )
    held = room.held_mg_m3(
        release_g_min=0.0, flow_m3_min=flow_m3_min, volume_m3=volume_m3, minutes=minutes,
        at_first_mg_m3=times,
    )  # fmt: skip
    assert held == pytest.approx(1.0, rel=1e-6)


def test_what_is_below_already_needs_no_time():
    assert room.minutes_to_fall(from_mg_m3=1.0, to_mg_m3=2.0, air_changes_h=0.3) == 0


@given(RELEASE, VOLUME, st.floats(0.5, 100))
def test_air_for_a_limit_ends_at_it(release_g_min, volume_m3, limit_mg_m3):
    an_hour = room.air_changes_for(
        release_g_min=release_g_min, volume_m3=volume_m3, limit_mg_m3=limit_mg_m3
    )
    steady = room.steady_mg_m3(release_g_min=release_g_min, flow_m3_min=an_hour * volume_m3 / 60)
    assert steady == pytest.approx(limit_mg_m3)


def test_poor_mixing_lengthens_the_purge():
    """By hand: ln 100 of an hour at one change is 276.3 min, three times that at mixing 3."""
    assert room.purge_min(air_changes_h=1, removal_percent=99) == pytest.approx(276.31, abs=0.01)
    assert room.purge_min(air_changes_h=1, removal_percent=99, mixing=3) == pytest.approx(
        3 * 276.31, abs=0.03
    )
