"""Ghilani and Wolf, Elementary Surveying, chapter 10: the five-sided traverse ABCDE.

All values from memory (13th edition, tables of departures and latitudes and of their balancing by
the compass rule), and consistent: each side's departure and latitude give its length to 0.005 ft.
Tolerance: half of the last printed digit, twice that where two rounded values were added.
"""

from math import hypot

import pytest

from farwall.floor.walk.simple import bowditch, misclosure

LENGTHS_FT = {"AB": 647.25, "BC": 203.03, "CD": 720.35, "DE": 610.24, "EA": 285.13}
LEGS_FT = {
    "AB": (517.451, -388.815),
    "BC": (5.966, -202.942),
    "CD": (192.889, 694.045),
    "DE": (-590.565, 153.708),
    "EA": (-125.715, -255.919),
}
BALANCED_FT = {
    "AB": (517.444, -388.835),
    "BC": (5.964, -202.948),
    "CD": (192.881, 694.022),
    "DE": (-590.571, 153.689),
    "EA": (-125.718, -255.928),
}


def test_departures_and_latitudes_have_the_printed_lengths():
    for side, (x, y) in LEGS_FT.items():
        assert hypot(x, y) == pytest.approx(LENGTHS_FT[side], abs=0.006)


def test_the_misclosure_is_the_printed_one():
    miss = misclosure(list(LEGS_FT.values()))
    assert (miss.x, miss.y) == (pytest.approx(0.026, abs=5e-4), pytest.approx(0.077, abs=5e-4))
    assert miss.far == pytest.approx(0.081, abs=5e-4)
    assert miss.around == pytest.approx(2466.00, abs=0.01)
    assert miss.one_in == pytest.approx(30_000, rel=0.02)  # printed as 1 in 30,000


def test_the_compass_rule_balances_it_as_printed():
    added = bowditch(list(LEGS_FT.values()))
    for (side, (x, y)), (dx, dy) in zip(LEGS_FT.items(), added, strict=True):
        printed = BALANCED_FT[side]
        assert (x + dx, y + dy) == (
            pytest.approx(printed[0], abs=1.1e-3),
            pytest.approx(printed[1], abs=1.1e-3),
        )
