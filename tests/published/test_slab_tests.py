"""Counts of slab tests and the vapour rate against the standards' figures, as quoted row by row."""

import pytest
from tests.job.sums.sums import reckon
from tests.published.tables import table

from farwall.job.sums.vapour_rate import LONGEST_H, SHORTEST_H

LIMITS = {(row["standard"], row["item"]): float(row["value"]) for row in table("slab_test_limits")
          if row["value"].replace(".", "").isdigit()}  # fmt: skip
CONVERSIONS = {
    (row["item"], row["unit"]): float(row["value"]) for row in table("slab_test_conversions")
}
ONE_LB = "1 lb/1000 ft2/24 h"


@pytest.mark.parametrize(
    "row", table("slab_test_count_cases"), ids=lambda row: row["floor_area_ft2"]
)
def test_counts_by_area(row):
    """Whole numbers: no tolerance."""
    found = reckon("slab-tests", area_ft2=row["floor_area_ft2"])
    assert found["f1869_tests"] == int(row["F2170_or_F1869_tests"])
    assert found["f2170_tests"] == int(row["F2170_or_F1869_tests"])
    assert found["d4262_readings"] == int(row["D4262_pH_readings_min"])


@pytest.mark.parametrize("area_ft2", [500, 1000, 2000, 1500])
def test_a_whole_part_asks_for_no_test_more_by_hand(area_ft2):
    """By hand: 1,000 ft² are one thousand, in feet or in metres; 500 ft² ask for two readings."""
    counts = {500: (3, 2), 1000: (3, 4), 2000: (4, 8), 1500: (4, 6)}[area_ft2]
    for raw in ({"area_ft2": area_ft2}, {"area_m2": area_ft2 * 0.3048**2}):
        found = reckon("slab-tests", **raw)
        assert (found["f1869_tests"], found["d4262_readings"]) == counts


@pytest.mark.parametrize("standard", ["F2170", "F1869"])
def test_the_rule_of_the_standard_is_the_rule_here(standard):
    first = LIMITS[standard, "tests_first_1000_ft2"]
    each = LIMITS[standard, "tests_each_further_1000_ft2"]
    key = f"{standard.lower()}_tests"
    assert reckon("slab-tests", area_ft2=1000)[key] == first
    assert reckon("slab-tests", area_ft2=5000)[key] == first + 4 * each


def test_the_kit_constant_of_f1869():
    """Kit instructions after F1869-04: gain in grams times 117.909 over hours, as printed."""
    found = reckon("vapour-rate", gain_g=1, hours=66)
    assert found["lb_1000ft2_24h"] == pytest.approx(LIMITS["F1869", "kit_constant"] / 66, rel=1e-9)


def test_the_rate_in_si():
    """Computed rows, six figures printed."""
    found = reckon("vapour-rate", gain_g=2, hours=66)
    rate = found["lb_1000ft2_24h"]
    assert found["ug_m2_s"] / rate == pytest.approx(CONVERSIONS[ONE_LB, "ug/(s m2)"], rel=1e-5)
    assert found["g_m2_24h"] / rate == pytest.approx(CONVERSIONS[ONE_LB, "g/(m2 d)"], rel=1e-5)


def test_the_dome_behind_the_constant():
    """By hand: a gram an hour under 0.44874 ft² is 117.909 lb/(1000 ft²·24 h)."""
    dome_ft2 = CONVERSIONS["dome area implied by the kit constant", "ft2"]
    assert 24 / 453.59237 / dome_ft2 * 1000 == pytest.approx(117.909, rel=2e-5)


@pytest.mark.parametrize(("hours", "told"), [(59.9, 1), (60, 0), (72, 0), (72.1, 1)])
def test_a_test_too_short_or_too_long_is_told(hours, told):
    assert (LIMITS["F1869", "exposure_min"], LIMITS["F1869", "exposure_max"]) == (
        SHORTEST_H,
        LONGEST_H,
    )
    assert len(reckon("vapour-rate", gain_g=0.5, hours=hours)["warnings"]) == told


def test_above_the_usual_limit_is_told():
    limit = LIMITS["F1869", "usual_limit"]
    gain_g = limit * 66 / 117.909
    assert reckon("vapour-rate", gain_g=gain_g * 0.99, hours=66)["warnings"] == []
    assert reckon("vapour-rate", gain_g=gain_g * 1.01, hours=66)["warnings"]
