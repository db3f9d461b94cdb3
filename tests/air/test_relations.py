"""Laws of every relation; printed values are in tests/published."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies import air

from farwall.air.conditions import Conditions
from farwall.air.relations import IN_MOVING_AIR, RELATIONS

each = st.sampled_from(sorted(RELATIONS))
moving = st.sampled_from(IN_MOVING_AIR)
HAIR = 1e-12


@given(each, air.conditions, air.rh_percent)
def test_damper_air_never_takes_up_more(name, now, damper):
    rate = RELATIONS[name].positive
    dry, damp = sorted((now.rh_percent, damper))
    less = rate(replace(now, rh_percent=damp))
    assert less <= rate(replace(now, rh_percent=dry)) + HAIR


@given(each, air.conditions, air.air_speed_m_s)
def test_more_wind_never_takes_up_less(name, now, windier):
    rate = RELATIONS[name].positive
    calm, windy = sorted((now.air_speed_m_s, windier))
    less = rate(replace(now, air_speed_m_s=calm))
    assert less <= rate(replace(now, air_speed_m_s=windy)) * (1 + HAIR) + HAIR


@given(moving, air.conditions, air.slab_c)
def test_a_warmer_slab_never_gives_off_less(name, now, warmer):
    rate = RELATIONS[name].positive
    cool, warm = sorted((now.surface_c, warmer))
    less = rate(replace(now, surface_c=cool))
    assert less <= rate(replace(now, surface_c=warm)) * (1 + HAIR) + HAIR


@given(st.sampled_from(["menzel", "carrier", "shah_quiet_air"]), air.slab_c)
def test_over_a_slab_as_warm_as_saturated_air_nothing_evaporates(name, slab_c):
    now = Conditions(surface_c=slab_c, air_c=slab_c, rh_percent=100)
    assert RELATIONS[name].rate(now) == pytest.approx(0, abs=1e-9)


@given(air.slab_c)
def test_the_relations_agree_within_a_factor_of_three_in_moving_air(slab_c):
    """What makes them rivals for one thing: the same order of size, in ordinary rooms."""
    now = Conditions(surface_c=slab_c, air_c=slab_c, rh_percent=50, air_speed_m_s=0.3)
    rates = [RELATIONS[name].rate(now) for name in IN_MOVING_AIR]
    assert max(rates) / min(rates) < 3


def test_none_takes_the_wind_of_a_weather_station():
    assert {one.wind_height_m for one in RELATIONS.values()} == {0.5, 0.0}


def test_each_says_what_it_was_made_for_and_what_it_was_not():
    for one in RELATIONS.values():
        assert "extrapolation" in one.made_for
        assert one.source


def test_a_relation_says_where_it_strays():
    cold = Conditions(surface_c=1, air_c=50, air_speed_m_s=20)
    told = RELATIONS["uno"].strays(cold)
    assert len(told) == 3
    assert "slab 4.4" in told[0]
    assert not RELATIONS["uno"].strays(Conditions())


def test_quiet_air_that_does_not_rise_is_not_what_shah_speaks_of():
    warm_air = Conditions(surface_c=18, air_c=24, rh_percent=60)
    assert any("rise" in one for one in RELATIONS["shah_quiet_air"].strays(warm_air))
