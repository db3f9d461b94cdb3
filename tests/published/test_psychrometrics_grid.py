"""Moist air on a grid against two libraries: PsychroLib (also ours, so a guard on how it is
asked) and CoolProp (real-gas humid air, an independent formulation)."""

import pytest
from tests.published.tables import table

from farwall.job.sums.arguments import given
from farwall.job.sums.registry import find

GRID = table("psychrometrics_grid")
KEYS = {
    "dew_point_c": "dew_point_degC",
    "wet_bulb_c": "wet_bulb_degC",
    "vapour_pressure_pa": "vapour_pressure_Pa",
    "humidity_ratio": "humidity_ratio_kg_per_kg",
}
# PsychroLib: half of the last figure that the table keeps (its wet bulb stops iterating within
# 0.001 K). CoolProp: the spread that was found between the two formulations, real gas against
# ideal: 0.012 K, 0.024 K, 0.5 %, 0.53 %.
SAME = {
    "dew_point_c": 0.0011, "wet_bulb_c": 0.0015, "vapour_pressure_pa": 0.006,
    "humidity_ratio": 6e-8,
}  # fmt: skip
APART = {
    "dew_point_c": {"abs": 0.0125}, "wet_bulb_c": {"abs": 0.0245},
    "vapour_pressure_pa": {"rel": 0.0055}, "humidity_ratio": {"rel": 0.0055},
}  # fmt: skip


def asked(row):
    raw = {"air_c": row["dry_bulb_degC"], "rh_percent": row["rh_percent"],
           "pressure_pa": row["pressure_Pa"]}  # fmt: skip
    air = find("air")
    return air.reckon(given(air, raw))


def test_the_grid_is_the_whole_of_it():
    assert len(GRID) == 74


@pytest.mark.parametrize("key", KEYS)
def test_psychrolib_grid(key):
    for row in GRID:
        printed = float(row[f"{KEYS[key]}_psychrolib"])
        assert asked(row)[key] == pytest.approx(printed, abs=SAME[key]), row


@pytest.mark.parametrize("key", KEYS)
def test_coolprop_grid(key):
    for row in GRID:
        printed = float(row[f"{KEYS[key]}_coolprop"])
        assert asked(row)[key] == pytest.approx(printed, **APART[key]), row
