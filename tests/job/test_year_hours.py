"""Hours of a year all at once: the same as hour by hour, by the rules of a plan."""

import math
from datetime import UTC, datetime, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.air.conditions import Conditions
from farwall.air.day import HourAtSlab
from farwall.air.learned import factor
from farwall.air.limits import slab_verdict
from farwall.air.sealers import BY_TYPE, UNKNOWN
from farwall.air.sealing import HourToSeal, may_seal
from farwall.air.waits import NEUTRALISE, RECOAT, through, worth_min
from farwall.facts import default_table as table
from farwall.job.year_hours import NEEDED_MIN, passed, seal_hours, stain_hours, until

BEGINS = datetime(2027, 3, 1, tzinfo=UTC)

conditions = st.builds(
    Conditions,
    surface_c=st.floats(5.0, 34.0),
    air_c=st.floats(2.0, 38.0),
    rh_percent=st.floats(5.0, 99.0),
    air_speed_m_s=st.floats(0.1, 1.0),
)
days = st.lists(conditions, min_size=48, max_size=48)


def round_and_round(hours, times=2):
    return [HourAtSlab(BEGINS + timedelta(hours=n), one, {}) for n, one in enumerate(hours * times)]


@settings(max_examples=25)
@given(days, st.integers(0, 47))
def test_a_wait_is_that_of_the_plan_s_own_course(hours, start):
    stain = stain_hours(hours)
    begins = BEGINS + timedelta(hours=start)
    for wait, per_l, end, found in (
        (RECOAT, None, "likely", stain.likely_min),
        (RECOAT, None, "high", stain.high_min),
        (NEUTRALISE, table.LATER_COAT_M2_PER_L.usual, "high", stain.rinse_min),
    ):
        worth = worth_min(wait, m2_per_l=per_l) * getattr(factor(wait.spread), end)
        told = through(wait, round_and_round(hours), begins=begins).until(worth)
        if told is None:
            assert math.isnan(found[start]) or found[start] == pytest.approx(1440, abs=1e-6)
        elif told < 1440 - 1e-6:
            assert found[start] == pytest.approx(told, rel=1e-9, abs=1e-6)


@settings(max_examples=40)
@given(days, st.sampled_from([UNKNOWN, BY_TYPE["water acrylic"], BY_TYPE["floor finish"]]))
def test_sealing_is_the_rule_hour_by_hour(hours, limits):
    told = may_seal(
        [HourToSeal(one.starts_at, one.conditions) for one in round_and_round(hours)], limits
    )
    found = seal_hours(hours, limits)
    for n in range(48):
        reasons = {one.partition(":")[0] for one in told[n].reasons}
        assert found.fine[n] == (told[n].word != "no"), reasons
        if told[n].word == "no":
            assert found.cold[n] == bool(reasons & {"too cold", "cold to come"})
            assert found.hot[n] == ("too warm" in reasons)
            assert found.damp[n] == bool(reasons & {"dew", "dew to come", "damp air"})
            assert found.cooling[n] == ("falling" in reasons)
        else:
            assert found.care[n] == (told[n].word == "care")


@given(days)
def test_a_slab_outside_its_limits_is_cold_or_hot(hours):
    stain = stain_hours(hours)
    for n, one in enumerate(hours):
        assert (stain.cold[n] or stain.hot[n]) == (
            slab_verdict(surface_c=one.surface_c).word == "no"
        )
        assert not stain.fine[n] or not (stain.cold[n] or stain.hot[n] or stain.slow[n])


def test_a_mild_day_dries_in_two_hours_by_hand():
    """By hand: usual 120 min at the mild day; the high end is that times exp(1.2816 sd)."""
    stain = stain_hours([Conditions()] * 48)
    spread = RECOAT.spread
    sd = math.hypot(spread.floor, spread.room, spread.occasion)
    assert stain.fine.all()
    assert stain.likely_min == pytest.approx(120.0, rel=0.01)
    assert stain.high_min == pytest.approx(120.0 * math.exp(1.2816 * sd), rel=0.02)


def test_the_edge_of_an_ordinary_room_by_hand():
    """By hand: 6 m by 1.1 m at 30 ft² (2.787 m²) a minute: 2.37 min."""
    assert pytest.approx(6.6 / 2.787, rel=1e-3) == NEEDED_MIN


def test_rinsing_next_morning_by_hand():
    """By hand: 10 h at the high end: from 21:00 it is 7:00, from 23:00 it is past 8:00."""
    stain = stain_hours([Conditions()] * 24)
    slow = type(stain)(
        stain.cold, stain.hot, stain.too_quick, stain.likely_min, stain.high_min,
        np.full(24, 600.0),
    )  # fmt: skip
    assert slow.rinsed_next_morning[21]
    assert slow.rinsed_next_morning[22]
    assert not slow.rinsed_next_morning[23]


def test_nothing_dries_where_water_condenses():
    wet = Conditions(15.0, 25.0, 95.0)
    course = passed(RECOAT, [wet] * 24)
    assert np.isnan(until(course, np.arange(24), 1.0, 1440.0)).all()
    assert stain_hours([wet] * 24).slow.all()
