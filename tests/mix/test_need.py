"""How much mix a floor needs."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.mix.need import need

floors_m2 = st.floats(1, 1000)
coverages = st.floats(1, 20)
spreads = st.floats(0, 60)
certainties = st.floats(50, 99.99)


def test_the_need_by_hand():
    """Hand-worked: 100 m2 / 5 m2/L = 20 L; sigma = sqrt(ln 1.04) = 0.198042; z(99 %) = 2.326348;
    20 exp(0.460714) = 31.7043 L."""
    found = need(area_m2=100, m2_per_l=5, spread_percent=20, certainty_percent=99)
    assert found.likely_l == pytest.approx(20)
    assert found.mix_l == pytest.approx(31.7043, abs=2e-3)
    assert found.reserve_l == pytest.approx(11.7043, abs=2e-3)


@pytest.mark.common_practice
def test_fifteen_to_twenty_five_percent_more_is_what_finishers_carry_at_eighty_percent_certainty():
    """No source: +15 % on a sampled slab, +25 % on one that is not, lands between 74 and 91 %."""
    sampled = need(area_m2=100, m2_per_l=5, spread_percent=15, certainty_percent=83)
    unsampled = need(area_m2=100, m2_per_l=5, spread_percent=20, certainty_percent=87)
    assert sampled.reserve_l / sampled.likely_l == pytest.approx(0.15, abs=0.01)
    assert unsampled.reserve_l / unsampled.likely_l == pytest.approx(0.25, abs=0.01)


@given(floors_m2, coverages, spreads)
def test_at_even_odds_there_is_no_reserve(area, coverage, spread):
    found = need(area_m2=area, m2_per_l=coverage, spread_percent=spread, certainty_percent=50)
    assert found.reserve_l == pytest.approx(0, abs=1e-9 * found.likely_l)


@given(floors_m2, coverages, spreads, certainties, st.floats(1.01, 3))
def test_more_floor_needs_more_in_proportion(area, coverage, spread, certainty, times):
    one = need(area_m2=area, m2_per_l=coverage, spread_percent=spread, certainty_percent=certainty)
    more = need(
        area_m2=area * times, m2_per_l=coverage, spread_percent=spread, certainty_percent=certainty
    )
    assert more.mix_l == pytest.approx(one.mix_l * times, rel=1e-9)


@given(floors_m2, coverages, spreads, certainties, certainties)
def test_more_certainty_never_needs_less(area, coverage, spread, one, other):
    low, high = sorted((one, other))
    mixes = [
        need(area_m2=area, m2_per_l=coverage, spread_percent=spread, certainty_percent=c).mix_l
        for c in (low, high)
    ]
    assert mixes[0] <= mixes[1] * (1 + 1e-12)


def test_all_that_is_wrong_is_said_at_once():
    with pytest.raises(Refused) as refusal:
        need(area_m2=0, m2_per_l=math.nan, spread_percent=-1, certainty_percent=100)
    named = [one.where for one in refusal.value.mistakes]
    assert named == ["area_m2", "m2_per_l", "spread_percent", "certainty_percent"]
