"""Limits as data: each with its source, and the two federal tests of a water."""

import re
from pathlib import Path

import pytest

from farwall.acid.waste_limits import (
    FEDERAL,
    LOCAL,
    LOCAL_PH,
    METALS,
    corrosive_by_ph,
    toxic_by_chromium,
)

SOURCES = (Path(__file__).parents[2] / "docs" / "sources.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("one", [*FEDERAL.values(), *LOCAL.values()], ids=lambda one: one.source)
def test_every_limit_stands_in_the_bibliography(one):
    assert re.search(rf"^\| {one.source.partition(',')[0]} \|", SOURCES, re.MULTILINE)


@pytest.mark.parametrize(
    ("ph", "hazardous"),
    [(0, True), (2, True), (2.01, False), (7, False), (12.49, False), (12.5, True), (14, True)],
)
def test_corrosive_at_and_beyond_the_ends(ph, hazardous):
    assert corrosive_by_ph(ph) is hazardous


def test_a_ph_that_no_strip_shows_is_refused():
    with pytest.raises(ValueError, match="between 0 and 14"):
        corrosive_by_ph(14.2)


def test_chromium_at_five_is_hazardous_by_40_cfr_261_24():
    assert toxic_by_chromium(5.0)
    assert not toxic_by_chromium(4.99)
    with pytest.raises(ValueError, match="nothing"):
        toxic_by_chromium(-1)


def test_six_tables_of_local_limits_as_noted():
    """Ranges as noted from six US tables, 1991 to 2021; copper lies a hundredfold apart."""
    assert set(LOCAL) == set(METALS)
    assert LOCAL["copper"].high / LOCAL["copper"].low == pytest.approx(100)
    assert (LOCAL["chromium"].low, LOCAL["chromium"].high) == (0.05, 5.0)
    assert (LOCAL["chromium(VI)"].low, LOCAL["chromium(VI)"].high) == (0.5, 4.8)
    assert (LOCAL["manganese"].high, LOCAL["iron"].high) == (4.0, 32.0)
    assert {(5.0, 10.0), (5.5, 9.5), (5.5, 11.0)} < set(LOCAL_PH)


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("acid-ph", 2.0),
        ("alkaline-ph", 12.5),
        ("steel-mm-year", 6.35),
        ("chromium-leachate", 5.0),
        ("sewer-ph", 5.0),
        ("sewer-c", 40.0),
        ("small-generator-kg", 100.0),
    ],
)
def test_federal_limits_as_the_code_of_regulations_prints_them(key, value):
    """40 CFR 261.22, 261.24, 403.5 and 260.10; a quarter of an inch of steel a year is 6.35 mm."""
    assert FEDERAL[key].value == value


def test_no_water_holds_less_than_nothing_and_clean_water_is_no_waste():
    assert not toxic_by_chromium(0.0)
    assert not toxic_by_chromium(0.5)
    with pytest.raises(ValueError, match="less than nothing"):
        toxic_by_chromium(-0.1)


def test_no_local_band_goes_below_the_federal_floor():
    assert min(low for low, _ in LOCAL_PH) >= FEDERAL["sewer-ph"].value
