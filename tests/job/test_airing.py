"""What passing air can carry off, by hand, and the house that is too shut for its wet floor."""

import pytest
from tests.job.test_slab_words import START, forecast
from tests.spray.hand_floors import job, row

from farwall.air.conditions import Conditions
from farwall.facts.defaults import settle
from farwall.facts.job import Site, Survey
from farwall.job.airing import airing_warnings, carried_kg_h
from farwall.job.lasting import lasting_of


def test_what_air_carries_by_hand():
    """By hand: 20 °C, 2338.8 Pa (ASHRAE 2017); half of it is 1169.4 Pa, 8.644 g/m³; 2 x 100 m³."""
    now = Conditions(20.0, 20.0, 50.0, 0.1)
    told = carried_kg_h(now, air_changes_h=2.0, volume_m3=100.0)
    assert told == pytest.approx(0.5 * 2338.8 / (461.5 * 293.15) * 200, rel=1e-3)
    assert carried_kg_h(Conditions(10.0, 20.0, 90.0), air_changes_h=2.0, volume_m3=1.0) == 0


def said(weather, **site):
    facts = job(row(3, 3, 3), survey=Survey(), starts_at=START, site=Site(**site))
    settled = settle(facts)
    return airing_warnings(lasting_of(settled, weather), settled.coats[0])


def test_a_shut_house_is_told_what_its_air_cannot_carry():
    (told,) = said(forecast())
    assert "shut" in told
    assert "fans blowing out" in told


def test_fans_that_blow_out_are_enough_for_a_few_rooms():
    assert said(forecast(), house="open", fans=3) == ()


def test_without_weather_nothing_is_known_of_the_air_that_passes():
    assert said(None) == ()
