"""Dew point rules as printed: the margin, the humidity, and the humidity at a surface."""

import re

import pytest
from tests.published.tables import table

from farwall.air import moist
from farwall.air.sealers import BY_TYPE, MARGIN_K, MOST_RH_PERCENT
from farwall.units import c_from_f

ROWS = {row["item"]: row["value"] for row in table("dew_point_margin_rule")}
BANDS = {
    int(found[1]): tuple(map(float, value.split()[0].split("-")))
    for item, value in ROWS.items()
    if (found := re.fullmatch(r"dew_point_spread_(\d+)F_gives_surface_RH", item))
}
SURFACES_F = (40, 50, 60, 70, 80)
"""The range that the note beside the table names."""
MISPRINT_F = 10
"""The note beside the table: printed 74-80, computed 66-72."""
OFF = 3.2
"""Points of humidity. The table prints whole ones and does not name its temperatures; at 40 to
80 °F psychrometry stays within 2 of its ends, at 35 °F apart within 3.2."""


def at_surfaces(spread_f):
    return [
        moist.rh_percent_from_dew_point(air_c=c_from_f(f), dew_point_c=c_from_f(f - spread_f))
        for f in SURFACES_F
    ]


def test_the_margin_is_the_printed_one():
    assert float(ROWS["surface_minus_dew_point_minimum"].split()[0]) == MARGIN_K
    assert all(one.least_margin_k == MARGIN_K for one in BY_TYPE.values())


def test_the_humidity_is_the_printed_one():
    assert float(ROWS["relative_humidity_maximum"].split()[0]) == MOST_RH_PERCENT


@pytest.mark.parametrize("spread_f", sorted(BANDS.keys() - {MISPRINT_F}))
def test_humidity_at_the_surface_lies_in_the_printed_band(spread_f):
    low, high = BANDS[spread_f]
    for percent in at_surfaces(spread_f):
        assert low - OFF <= percent <= high + OFF


def test_one_printed_band_is_not_what_psychrometry_gives():
    found = at_surfaces(MISPRINT_F)
    assert (round(min(found)), round(max(found))) == (66, 72)
    assert BANDS[MISPRINT_F] == (74, 80)
