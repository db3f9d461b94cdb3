"""The three real weather files: figures of the year, of each month, and single rows.

The tables were computed from, or read from, the files themselves with other code. Only the first
day of one file is copied here; without ../shared the other tests are skipped aloud.
"""

import pytest
from tests.published.tables import DATA, table

from farwall.air import moist
from farwall.job.sums.noun import Given
from farwall.job.sums.registry import find
from farwall.readers.epw import read_epw

YEARS = table("weather_file_summary")
MONTHS = table("weather_monthly_means")
ROWS = table("weather_point_rows")
NAMES = [row["file"] for row in YEARS]

FIRST_DAY = "USA_TX_Houston.722430_TMY2_32field.first_day.epw"


@pytest.fixture(scope="module")
def files(shared):
    return {name: read_epw(shared(f"data/weather/{name}")) for name in NAMES}


def told(file, **asked):
    numbers = {key: float(value) for key, value in asked.items()}
    return find("weather").reckon(Given({"file": file, **numbers}))


@pytest.mark.needs_shared
@pytest.mark.parametrize("row", YEARS, ids=NAMES)
def test_weather_file_summary(files, row):
    """Means are printed to six decimals (pressure three): half of the last."""
    found = told(files[row["file"]])
    assert found["hours"] == int(row["hour_rows"])
    for key, column in (
        ("latitude_deg", "latitude_deg"),
        ("longitude_deg", "longitude_deg"),
        ("utc_offset_h", "utc_offset_h"),
        ("elevation_m", "elevation_m"),
        ("air_min_c", "dry_bulb_min_degC"),
        ("air_max_c", "dry_bulb_max_degC"),
    ):
        assert found[key] == float(row[column]), key
    for key, column in (
        ("air_mean_c", "dry_bulb_mean_degC"),
        ("dew_point_mean_c", "dew_point_mean_degC"),
        ("rh_mean_percent", "rh_mean_percent"),
        ("wind_mean_m_s", "wind_mean_m_per_s"),
    ):
        assert found[key] == pytest.approx(float(row[column]), abs=5.1e-7), key
    assert found["pressure_mean_pa"] == pytest.approx(float(row["pressure_mean_Pa"]), abs=5.1e-4)


@pytest.mark.needs_shared
@pytest.mark.parametrize("row", YEARS, ids=NAMES)
def test_weather_file_counts(files, row):
    hours = files[row["file"]].hours
    assert sum(one.wind_m_s == 0 for one in hours) == int(row["hours_wind_zero"])
    assert sum(one.air_c < 10 for one in hours) == int(row["hours_below_10C"])
    assert sum(one.air_c > 32 for one in hours) == int(row["hours_above_32C"])
    assert sum(one.rh_percent >= 85 for one in hours) == int(row["hours_rh_85_or_more"])
    assert max(one.wind_m_s for one in hours) == float(row["wind_max_m_per_s"])
    missing = files[row["file"]].missing
    named = ("air_c", "rh_percent", "wind_m_s", "pressure_pa")
    assert sum(missing[name] for name in named) == int(row["missing_values_T_RH_wind_P"])


@pytest.mark.needs_shared
@pytest.mark.parametrize("row", MONTHS, ids=lambda row: f"{row['file'][4:6]}-{row['month']}")
def test_weather_monthly_means(files, row):
    """Printed to four decimals: half of the last."""
    file = files[row["file"]]
    found = told(file, month=row["month"])
    for key, column in (
        ("air_mean_c", "dry_bulb_degC"),
        ("dew_point_mean_c", "dew_point_degC"),
        ("rh_mean_percent", "rh_percent"),
        ("wind_mean_m_s", "wind_m_per_s"),
        ("pressure_mean_pa", "pressure_Pa"),
    ):
        assert found[key] == pytest.approx(float(row[column]), abs=5.1e-5), key
    years = {one.year for one in file.hours if one.month == int(row["month"])}
    assert years == {int(row["source_years"])}


@pytest.mark.needs_shared
@pytest.mark.parametrize(
    "row", ROWS, ids=lambda row: f"{row['file'][4:6]}-{row['line_number_1_based']}"
)
def test_weather_point_rows(files, row):
    """Read from the file: exact."""
    same_hour(told(files[row["file"]], line=row["line_number_1_based"]), row)


def test_weather_point_rows_of_the_first_day_of_a_32_field_file():
    """The two rows of the table that lie in the day copied here: exact."""
    file = read_epw(DATA / "weather" / FIRST_DAY)
    rows = [row for row in ROWS if "_TX_" in row["file"] and int(row["line_number_1_based"]) <= 32]
    assert len(rows) == 2
    for row in rows:
        same_hour(told(file, line=row["line_number_1_based"]), row)


def same_hour(found, row):
    for key, column in (
        ("month", "month"),
        ("day", "day"),
        ("hour", "hour_1_to_24"),
        ("air_c", "dry_bulb_degC"),
        ("dew_point_c", "dew_point_degC"),
        ("rh_percent", "rh_percent"),
        ("pressure_pa", "pressure_Pa"),
        ("wind_m_s", "wind_m_per_s"),
        ("wind_direction_deg", "wind_direction_deg"),
    ):
        assert found[key] == float(row[column]), key


@pytest.mark.needs_shared
@pytest.mark.parametrize("name", NAMES)
def test_the_dew_points_of_the_file_agree_with_moist_air(files, name):
    """Within 1 K (root mean square over the hours above freezing), so no column is mistaken.

    The files print whole percents of humidity, which is why the dry place misses most; below
    freezing they mean dew over water and our relation frost over ice.
    """
    hours = [one for one in files[name].hours if one.dew_point_c > 0]
    own = {
        pair: moist.dew_point_c(air_c=pair[0], rh_percent=pair[1])
        for pair in {(one.air_c, one.rh_percent) for one in hours}
    }
    errors = [own[one.air_c, one.rh_percent] - one.dew_point_c for one in hours]
    assert (sum(e * e for e in errors) / len(errors)) ** 0.5 < 1.0
