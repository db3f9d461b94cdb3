"""A year of floors: counts by hand, the sun, and laws between houses and sealers."""

from datetime import datetime, timedelta, timezone

import numpy as np
import pytest
from tests.strategies.weather import epw_text

from farwall.air.conditions import Conditions
from farwall.air.day import hours_at_slab
from farwall.errors import Refused
from farwall.job.year import DAYS, both_coats, first_days, year_of
from farwall.job.year_hours import stain_hours
from farwall.readers.epw import parse_epw


@pytest.fixture(scope="module")
def weather():
    return parse_epw(epw_text(), name="invented")


@pytest.fixture(scope="module")
def year(weather):
    return year_of(weather)


def test_the_months_are_those_of_a_year_by_hand(year):
    assert first_days()[:4] == (0, 31, 59, 90)
    assert sum(one.days for one in year.months) == DAYS == 365
    for one in year.months:
        assert 0 <= one.both_coats <= one.stain <= one.days
        assert 0 <= one.seal <= one.days


def test_every_day_has_its_hours_and_its_chain(year):
    assert year.stain.fine.shape == year.seal.fine.shape == (365 * 24,)
    assert year.likely_days.shape == (365,)
    known = ~np.isnan(year.high_days)
    assert known.any()
    assert (year.high_days[known] >= year.likely_days[known]).all()


def test_a_quick_day_holds_two_coats_and_a_slow_one_does_not():
    """By hand: coat 1 from 8 to 10, 210 min at the high end to 14:00, coat 2 to 16:00. At a third
    of the pace the second coat could not begin before the evening."""
    mild = stain_hours([Conditions()] * 365 * 24)
    assert both_coats(mild).all()
    slow = type(mild)(
        mild.cold, mild.hot, mild.too_quick, 3 * mild.likely_min, 3 * mild.high_min, mild.rinse_min
    )
    assert not both_coats(slow).any()


def test_midsummer_s_day_is_longest_north_of_the_line(year):
    length = year.sunset_h - year.sunrise_h
    assert np.argmax(length) == pytest.approx(171, abs=3)
    assert length.min() > 8
    assert (np.abs(np.diff(year.sunrise_h)) < 0.04).all()


def test_a_heated_house_can_be_stained_on_no_fewer_days(weather, year):
    warm = year_of(weather, standing="heated")
    assert sum(x.stain for x in warm.months) > sum(x.stain for x in year.months)
    assert not warm.stain.cold.any()


def test_a_milder_sealer_is_held_back_no_more_often(weather, year):
    acrylic = year_of(weather, sealer="water acrylic")
    assert (acrylic.seal.fine | ~year.seal.fine).all()
    assert acrylic.limits.name == "water acrylic"


def test_a_file_of_a_few_days_is_refused():
    lines = epw_text().splitlines()
    with pytest.raises(Refused):
        year_of(parse_epw("\n".join(lines[: 8 + 24 * 40]) + "\n", name="short"))


def test_hours_begin_with_those_of_new_year_s_day(weather, year):
    """The first weeks, reckoned alone with the ten days before them, are the same hour by hour."""
    clock = timezone(timedelta(hours=weather.place.utc_offset_h))
    start = datetime(2027, 1, 1, tzinfo=clock)
    told = weather.weather(starts_at=start, hours=24 * 21, before_h=240)
    alone = hours_at_slab(told, before_h=240, ground_c=weather.mean_air_c)
    fresh = stain_hours([one.conditions for one in alone])
    until = 24 * 19
    for name in ("cold", "likely_min", "high_min", "rinse_min"):
        np.testing.assert_allclose(
            getattr(fresh, name)[:until], getattr(year.stain, name)[:until], rtol=1e-9
        )
