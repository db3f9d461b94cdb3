"""The weather sum on an invented file; the real ones are in tests/published."""

import pytest
from tests.strategies.weather import epw_text, plain_hour

from farwall.errors import Refused
from farwall.job.sums.noun import Given
from farwall.job.sums.registry import find
from farwall.readers.epw import parse_epw

FILE = parse_epw(epw_text(fields=32))


def told(**asked):
    values = {key: float(value) for key, value in asked.items()}
    return find("weather").reckon(Given({"file": FILE, **values}))


def test_a_month_by_hand():
    """The mean of the invented July, added up here from the recipe of the file itself."""
    hours = [plain_hour(7, day, hour) for day in range(1, 32) for hour in range(1, 25)]
    found = told(month=7)
    assert found["hours"] == 744
    assert found["air_mean_c"] == pytest.approx(sum(one["air_c"] for one in hours) / 744)
    assert found["air_max_c"] == max(one["air_c"] for one in hours)
    assert found["air_max_f"] == pytest.approx(found["air_max_c"] * 1.8 + 32)
    assert found["wind_mean_m_s"] == pytest.approx(sum(one["wind_m_s"] for one in hours) / 744)


def test_a_line_is_one_hour_with_its_own_values():
    found = told(line=9)
    assert found["hours"] == 1
    assert (found["month"], found["day"], found["hour"]) == (1, 1, 1)
    assert found["air_c"] == found["air_mean_c"] == plain_hour(1, 1, 1)["air_c"]
    assert found["wind_direction_deg"] == 10


def test_the_year_has_no_single_row():
    assert "wind_direction_deg" not in told()
    assert told()["hours"] == 8760


@pytest.mark.parametrize("asked", [{"line": 3}, {"line": 9000}, {"month": 2, "line": 9},
                                   {"month": 1.5}])  # fmt: skip
def test_hours_that_are_not_there_are_refused(asked):
    with pytest.raises(Refused):
        told(**asked)


def test_missing_values_are_left_out_of_the_means_and_counted():
    def hour(month, day, clock):
        return plain_hour(month, day, clock) | ({"wind_m_s": 999} if clock > 1 else {})

    file = parse_epw(epw_text(hour=hour))
    found = find("weather").reckon(Given({"file": file}))
    assert found["wind_mean_m_s"] == pytest.approx(plain_hour(1, 1, 1)["wind_m_s"])
    assert found["missing"]["wind_m_s"] == 365 * 23
