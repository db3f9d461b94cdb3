"""Moist air against ASHRAE Fundamentals 2017 chapter 1, as quoted by the tests of PsychroLib."""

import pytest
from tests.published.tables import table

from farwall.air import moist
from farwall.job.sums.arguments import given
from farwall.job.sums.registry import find

TABLES = table("psychrometrics_ashrae_tables")
EXAMPLE = {row["quantity"]: row for row in table("psychrometrics_ashrae_example1")}

# quantity -> (key of the sum, key it is asked with, relative tolerance)
# Pressure: the table prints 3-6 figures and rests on another formulation of the vapour curve: the
# ideal relations of the chapter agree within 300 ppm where enough figures are printed. Humidity
# ratio and enthalpy: the table is for real air, the relations for an ideal gas, which the library
# states as up to 1 % apart.
ASKED = {
    "saturation_vapour_pressure_Pa": ("saturation_pressure_pa", "air_c", 300e-6),
    "saturation_humidity_ratio_kg_per_kg_at_101325Pa": (
        "saturation_humidity_ratio", "air_c", 0.01,
    ),
    "saturation_enthalpy_J_per_kg_dry_air_at_101325Pa": (
        "saturation_enthalpy_j_per_kg", "air_c", 0.01,
    ),
    "standard_atmosphere_Pa_at_altitude_m": ("standard_pressure_pa", "altitude_m", 20e-6),
}  # fmt: skip


@pytest.mark.parametrize(
    "row", TABLES, ids=lambda r: f"{r['quantity'][:24]}-{r['temperature_degC_or_altitude_m']}"
)
def test_ashrae_2017_ch1_tables_1_to_3(row):
    key, asked_with, rel = ASKED[row["quantity"]]
    printed = float(row["table_value"])
    # Half of the last printed figure: the row at -60 °C prints only 1.08.
    decimals = len(row["table_value"].partition(".")[2])
    half = 0.5 * 10.0**-decimals
    asked = find("saturation")
    raw = {asked_with: row["temperature_degC_or_altitude_m"]}
    found = asked.reckon(given(asked, raw))[key]
    assert found == pytest.approx(printed, rel=rel, abs=half)


def test_ashrae_2017_ch1_example_1():
    """40 °C dry bulb, 20 °C wet bulb: the printed state, each within its printed tolerance."""
    value = {name: float(row["value"]) for name, row in EXAMPLE.items()}
    within = {name: float(row["tolerance"]) for name, row in EXAMPLE.items()}
    # The humidity whose wet bulb is 20 °C, found by halving; the example goes the same way round.
    low, high = 0.1, 100.0
    for _ in range(60):
        rh_percent = (low + high) / 2
        wet_c = moist.wet_bulb_c(air_c=value["dry_bulb_degC"], rh_percent=rh_percent)
        low, high = (rh_percent, high) if wet_c < value["wet_bulb_degC"] else (low, rh_percent)
    air = {"air_c": value["dry_bulb_degC"], "rh_percent": rh_percent}
    assert rh_percent / 100 == pytest.approx(
        value["relative_humidity_fraction"], abs=within["relative_humidity_fraction"]
    )
    assert moist.humidity_ratio(**air) == pytest.approx(
        value["humidity_ratio_kg_per_kg"], abs=within["humidity_ratio_kg_per_kg"]
    )
    assert moist.dew_point_c(**air) == pytest.approx(
        value["dew_point_degC"], abs=within["dew_point_degC"]
    )
    # 1 m³ of this air holds 1/0.896 kg of dry air.
    dry_air = moist.dry_air_kg_m3(**air, pressure_pa=value["pressure_Pa"])
    assert 1 / dry_air == pytest.approx(
        value["specific_volume_m3_per_kg"], abs=within["specific_volume_m3_per_kg"]
    )
