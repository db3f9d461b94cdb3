from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies import air

from farwall.air.clocks import DAY_MIN, Timed, dry_to_recoat
from farwall.air.conditions import Conditions
from farwall.air.day import HourAtSlab
from farwall.air.drying import dry_through
from farwall.errors import Unanswerable

EIGHT = datetime(2031, 5, 3, 8, tzinfo=UTC)
DAMP = Conditions(surface_c=15, air_c=25, rh_percent=95)


def day(*conditions: Conditions) -> list[HourAtSlab]:
    return [HourAtSlab(EIGHT + timedelta(hours=n), now, {}) for n, now in enumerate(conditions)]


@given(air.conditions, air.m2_per_l, st.integers(0, 179), st.integers(1, 30))
def test_hours_all_alike_give_the_plain_wait(now, m2_per_l, late_min, hours):
    found = dry_through(
        day(*[now] * hours), begins=EIGHT + timedelta(minutes=late_min), m2_per_l=m2_per_l
    )
    plain = dry_to_recoat(now, m2_per_l=m2_per_l)
    for end in ("low", "likely", "high"):
        expected = getattr(plain, end)
        assert getattr(found, end) == (None if expected is None else pytest.approx(expected))
    assert found.rank is plain.rank


def test_two_paces_by_hand():
    """A wait of 240 min for the first 90 min does 3/8; one of 80 min does the other 5/8 in 50."""
    mild = Conditions()
    slow = Timed(240.0, mild)
    brisk = Conditions(air_speed_m_s=(3 * (0.36 + 4) - 4) / 3.6)  # Uno's wind term, three times
    found = dry_through(
        day(mild, mild, brisk, brisk, brisk), begins=EIGHT + timedelta(minutes=30), timed=slow
    )
    assert found.likely == pytest.approx(90 + 50)


@given(st.lists(air.conditions, min_size=1, max_size=6), air.m2_per_l)
def test_low_likely_and_high_come_in_that_order(conditions, m2_per_l):
    never = float("inf")
    found = dry_through(day(*conditions), begins=EIGHT, m2_per_l=m2_per_l)
    ends = [never if one is None else one for one in (found.low, found.likely, found.high)]
    assert ends == sorted(ends)
    assert 0 < found.low <= DAY_MIN


def test_a_damp_morning_only_delays():
    mild = Conditions()
    assert dry_to_recoat(DAMP).likely is None
    found = dry_through(day(DAMP, DAMP, mild), begins=EIGHT)
    assert found.likely == pytest.approx(120 + 120)


def test_a_slab_too_cold_at_the_start_is_a_no_and_later_is_only_slow():
    mild, cold = Conditions(), Conditions(surface_c=8, air_c=8)
    with pytest.raises(Unanswerable):
        dry_through(day(cold), begins=EIGHT)
    found = dry_through(day(mild, cold, cold), begins=EIGHT)
    assert found.likely is None or found.likely > 120
