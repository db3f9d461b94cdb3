"""The acid day in short: the units of its job first, in Spanish as well."""

import re

import pytest
from tests.job.acid_day.waste_house import ground

from farwall.job.acid_day.day import acid_day
from farwall.job.acid_day.in_short import in_short
from farwall.phrasebook import in_spanish

FIRST = {
    "us": (" cfm, ", " gal of water", " a gallon ("),
    "metric": (" m³/h, ", " L of water", " a litre ("),
}


@pytest.fixture(scope="module")
def day():
    return acid_day(ground())


@pytest.mark.parametrize("units", ["us", "metric"])
def test_air_water_and_base_are_told_in_the_units_of_the_job(day, units):
    lines = [one.text for _, _, part in in_short(day, us=units == "us") for one in part]
    for told in FIRST[units]:
        assert any(told in one for one in lines), told
    for told in FIRST["metric" if units == "us" else "us"]:
        assert not any(told in one for one in lines), told


def test_both_tell_the_same_figures(day):
    """What stands first in one stands in brackets in the other."""
    us, metric = (
        [one.text for key, _, part in in_short(day, us=us) for one in part if key == "washing"]
        for us in (True, False)
    )
    gal, litres = re.search(r"About (\d+) gal of water, .* \((\d+) L;", us[1]).groups()
    assert re.search(rf"About {litres} L of water, .* \({gal} gal;", metric[1])


def test_the_metric_lines_are_spanish_too(day):
    names = frozenset(one.name for one in day.neutralising.stains)
    told = [
        one.text
        for key, _, part in in_short(day, us=False)
        for one in part
        if key in {"washing", "neutralising"}
    ]
    assert len(told) >= 3
    assert [one for one in told if in_spanish(one, names) is None] == []
