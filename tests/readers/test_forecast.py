"""The forecast reader: CSV and JSON, either system of units, every mistake at once."""

import json
from contextlib import suppress
from datetime import datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.weather import Forecast
from farwall.errors import Refused
from farwall.readers.any_weather import read_weather
from farwall.readers.forecast import parse_forecast

CSV = """# issued_at: 2027-05-03T23:00-06:00
time,temperature_f,humidity_percent,wind_mph,cloud_percent
2027-05-04T06:00-06:00,50,80,5,100
2027-05-04T07:00-06:00,53.6,70,10,50
2027-05-04T08:00-06:00,59,60,,0
"""
HEAD = "time,temperature_c,humidity,wind_m_s\n"
HERE = timezone(timedelta(hours=-6))


def refusal(text):
    with pytest.raises(Refused) as refused:
        parse_forecast(text, name="friday.csv")
    assert "friday.csv" in refused.value.about
    return [str(one) for one in refused.value.mistakes]


def test_a_table_in_us_units_by_hand():
    """By hand: 50, 53.6 and 59 °F are 10, 12 and 15 °C; 5 and 10 mph 2.2352 and 4.4704 m/s."""
    found = parse_forecast(CSV)
    assert found.starts_at == datetime(2027, 5, 4, 6, tzinfo=HERE)
    assert found.air_c == pytest.approx((10.0, 12.0, 15.0))
    assert found.rh_percent == (80.0, 70.0, 60.0)
    assert found.wind_m_s == pytest.approx((2.2352, 4.4704, None))
    assert found.cloud_percent == (100.0, 50.0, 0.0)
    assert found.age_h(datetime(2027, 5, 4, 8, tzinfo=HERE)) == 9.0


@pytest.mark.parametrize(
    "header",
    [
        "time;temperature_c;rh_percent;wind_m_s",
        "Time;Temperature (°C);Humidity (%);Wind (m/s)",
        "time;temp_celsius;relative_humidity;wind_speed_mps",
        "TIME;air_c;humidity;Wind m/s",
    ],
)
def test_headers_are_understood_as_people_write_them(header):
    text = f"# utc_offset: -06:00\n{header}\n2027-05-04T06:00;10;80;2\n"
    found = parse_forecast(text)
    assert (found.air_c, found.rh_percent, found.wind_m_s) == ((10.0,), (80.0,), (2.0,))
    assert found.starts_at.utcoffset() == timedelta(hours=-6)


@pytest.mark.parametrize("as_columns", [False, True])
def test_json_says_the_same_as_the_table(as_columns):
    rows = [
        {"time": "2027-05-04T06:00-06:00", "temperature_f": 50, "humidity": 80, "wind_mph": 5},
        {"time": "2027-05-04T07:00-06:00", "temperature_f": 53.6, "humidity": 70, "wind_mph": 10},
    ]
    told = {key: [row[key] for row in rows] for key in rows[0]} if as_columns else {"hours": rows}
    told["issued_at"] = "2027-05-03T23:00-06:00"
    found = parse_forecast(json.dumps(told))
    table = parse_forecast(CSV)
    assert found.air_c == pytest.approx(table.air_c[:2])
    assert found.wind_m_s == pytest.approx(table.wind_m_s[:2])
    assert found.issued_at == table.issued_at


def test_steps_of_three_hours_are_joined_by_lines_by_hand():
    """By hand: from 10 to 16 °C in three hours are 12 and 14 between."""
    text = (
        "time,temperature_c,humidity,wind_km_h\n"
        "2027-05-04T06:00Z,10,80,3.6\n2027-05-04T09:00Z,16,50,7.2\n"
    )
    found = parse_forecast(text)
    assert found.air_c == pytest.approx((10, 12, 14, 16))
    assert found.wind_m_s == pytest.approx((1, 4 / 3, 5 / 3, 2))


def test_all_mistakes_come_at_once_with_their_places():
    told = refusal(
        "# issued_at: yesterday\n"
        "time,temperature,humidity,wind_mph\n"
        "2027-05-04T06:00,50,80,5\n"
        "noon,50,x,5\n"
        "2027-05-04T05:00-06:00,50,80,500\n"
        "2027-05-04T06:00-06:00,50,80\n"
    )
    text = "\n".join(told)
    for part in (
        "issued_at", "column temperature", "temperature_c or temperature_f", "line 3",
        "no offset", "line 4", "not ISO 8601", "line 4, humidity", "not a number",
        "line 5, wind_mph", "500", "line 6", "3 cells",
    ):  # fmt: skip
        assert part in text, part


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("", "no hours"),
        ("# issued_at: 2027-05-04T05:00Z\n", "no hours"),
        ("time,temperature_c,humidity,wind_m_s\n", "no hours"),
        ("[]", "no hours"),
        ("{}", "no hours"),
        ('{"hours": [3]}', "no hour"),
        ("temperature_c,humidity,wind_m_s\n1,2,3\n", "called time"),
        ("time,temperature_c,wind_m_s\n2027-05-04T06:00Z,1,3\n", "humidity"),
        ("time,temperature_c,air_f,humidity,wind_m_s\n2027-05-04T06:00Z,1,3,4,5\n", "the same"),
        ("time,temperature_c,humidity,wind_furlongs\n2027-05-04T06:00Z,1,3,4\n", "unit"),
        (
            HEAD + "2027-05-04T06:00Z,1,3,4\n2027-05-04T06:00Z,1,3,4\n",
            "Sort",
        ),
        (
            HEAD + "2027-05-04T06:00Z,1,3,4\n2027-05-04T16:00Z,1,3,4\n",
            "6 h",
        ),
        ("time,temperature_c,humidity,wind_m_s\n2027-05-04T06:00Z,90,3,4\n", "outside"),
        ("# utc_offset: west\ntime,temperature_c,humidity,wind_m_s\n2027-05-04T06:00,1,3,4\n",
         "offset"),
        ('{"time": ["2027-05-04T06:00Z"], "temperature_c": [1, 2]}', "equally long"),
        ('{"hours": [{"time": 7}', "JSON"),
    ],
)  # fmt: skip
def test_what_cannot_be_used_is_told_calmly(text, part):
    assert part in "\n".join([*refusal(text)]) or part in str(refusal(text))


def test_one_fault_of_many_rows_is_one_sentence():
    rows = "".join(f"2027-05-04T{n:02d}:00Z,warm,50,1\n" for n in range(20))
    told = refusal("time,temperature_c,humidity,wind_m_s\n" + rows)
    assert len(told) == 1
    assert "17 more" in told[0]


@given(st.text(max_size=300))
def test_no_text_makes_it_stumble(text):
    with suppress(Refused):
        assert parse_forecast(text).air_c


def test_a_forecast_gives_the_hours_there_are():
    found = parse_forecast(CSV)
    part = found.weather(starts_at=datetime(2027, 5, 4, 7, 30, tzinfo=HERE), hours=50, before_h=50)
    assert part.starts_at == found.starts_at
    assert len(part) == 3
    for us, hour in ((False, "19:00"), (True, "7:00 pm")):
        with pytest.raises(Refused, match=f"and does not hold 2027-05-05 {hour}"):
            found.weather(starts_at=datetime(2027, 5, 5, 19, tzinfo=HERE), us=us)
    with pytest.raises(Refused, match="no offset"):
        found.weather(starts_at=datetime(2027, 5, 4, 7))  # noqa: DTZ001


def test_any_weather_is_told_apart_by_its_beginning(tmp_path):
    from tests.strategies.weather import epw_text

    (tmp_path / "a.csv").write_text(CSV)
    (tmp_path / "b.txt").write_text(epw_text(months=(5,)))
    assert isinstance(read_weather(tmp_path / "a.csv"), Forecast)
    assert len(read_weather(tmp_path / "b.txt").hours) == 31 * 24
    with pytest.raises(Refused):
        read_weather(tmp_path / "none.csv")


def test_a_cell_without_end_is_refused():
    with pytest.raises(Refused) as refusal:
        parse_forecast("time,temperature_c\n" + "x" * 140_000 + ",1")
    assert "cannot be parted into columns" in str(refusal.value)


def as_saved(rows, *, mark=",", comma=".", quote="", tail=""):
    """A table of two hours as some spreadsheet program saves it."""
    head = mark.join(("Time", "Air temperature (°F)", "Humidity (%)", "Wind speed (mph)"))
    lines = [head]
    for time, *values in rows:
        cells = [quote + f"{one:.1f}".replace(".", comma) + quote for one in values]
        lines.append(mark.join([time, *cells]) + tail)
    return "\r\n".join(lines)


ROWS = (("2027-05-04T06:00-06:00", 50.5, 80.0, 5.5), ("2027-05-04T07:00-06:00", 53.6, 70.0, 10.0))


@pytest.mark.parametrize(
    "saved",
    [
        {"mark": ";", "comma": ","},
        {"mark": "\t", "comma": ","},
        {"quote": '"', "comma": ","},
        {"tail": ","},
        {"mark": ";", "comma": ",", "tail": ";;"},
    ],
)
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_a_table_reads_the_same_as_any_spreadsheet_saves_it(saved, encoding, tmp_path):
    plain, other = tmp_path / "plain.csv", tmp_path / "other.csv"
    plain.write_text(as_saved(ROWS), encoding="utf-8")
    other.write_bytes(as_saved(ROWS, **saved).encode(encoding))
    read = read_weather(other)
    assert read.air_c == read_weather(plain).air_c == pytest.approx((10.2778, 12.0), abs=1e-4)
    assert read.wind_m_s == pytest.approx((5.5 * 0.44704, 4.4704))


@pytest.mark.parametrize(
    "more", ["wind_gust_mph", "wind_direction", "air_pressure_hpa", "temperature_feels_like_f"]
)
@pytest.mark.parametrize("first", [False, True])
def test_columns_of_other_things_are_left_aside(more, first):
    plain = "time,temperature_c,humidity_percent,wind_m_s\n2027-05-04T06:00Z,10,80,2\n"
    lines = plain.splitlines()
    added = [f"{new},{old}" if first else f"{old},{new}"
             for old, new in zip(lines, (more, "999"), strict=True)]  # fmt: skip
    assert parse_forecast("\n".join(added)) == parse_forecast(plain)


@pytest.mark.parametrize("name", ["wind_direction", "wind_direction_deg", "wind_from", "wind_dir"])
def test_where_the_wind_comes_from_is_not_taken_for_its_speed(name):
    told = f"time,temperature_c,humidity_percent,{name}\n2027-05-04T06:00Z,10,80,270\n"
    with pytest.raises(Refused, match=r"No column tells the wind\. Call it wind_m_s") as refusal:
        parse_forecast(told)
    assert "Its unit is not known" not in str(refusal.value)


def test_shares_are_not_taken_for_percent():
    """0.45 is 45 % to whoever wrote it; as half a percent the floor would dry at once."""
    told = "time,temperature_c,humidity,wind_m_s\n2027-05-04T06:00Z,10,0.45,2\n"
    with pytest.raises(Refused, match=r"Multiply it by 100: 45 for 0\.45"):
        parse_forecast(told)
    assert parse_forecast(told.replace("0.45", "45")).rh_percent == (45.0,)


def test_json_may_call_its_hours_hourly_and_is_told_what_json_holds():
    columns = {"time": ["2027-05-04T06:00Z"], "temperature_c": [10], "humidity": [80],
               "wind_m_s": [2]}  # fmt: skip
    assert parse_forecast(json.dumps({"hourly": columns})) == parse_forecast(json.dumps(columns))
    with pytest.raises(Refused, match="Write `hours`, a list of objects"):
        parse_forecast(json.dumps({"list": "none"}))
