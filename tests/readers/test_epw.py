"""The weather-file reader: both layouts, missing values, and every kind of broken file."""

from collections.abc import Sequence
from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.weather import epw_text, plain_hour, row_text

from farwall.errors import Refused
from farwall.readers.epw import parse_epw, read_epw

WHOLE = epw_text()


def spoiled(line: int, text: str) -> str:
    lines = WHOLE.split("\n")
    lines[line - 1] = text
    return "\n".join(lines)


def refusal(text: str) -> list[str]:
    with pytest.raises(Refused) as refused:
        parse_epw(text, name="broken.epw")
    assert "broken.epw" in refused.value.about
    return [str(mistake) for mistake in refused.value.mistakes]


@pytest.mark.parametrize("fields", [35, 32])
@pytest.mark.parametrize("line_end", ["\n", "\r\n", "\r"])
def test_files_of_35_and_of_32_fields_say_the_same(fields, line_end):
    found = parse_epw(epw_text(fields=fields, line_end=line_end))
    assert len(found.hours) == 8760
    assert found.place.utc_offset_h == -6.0
    assert found.place.elevation_m == 200.0
    first, last = found.hours[0], found.hours[-1]
    assert (first.line, first.month, first.day, first.hour) == (9, 1, 1, 1)
    assert (last.line, last.month, last.day, last.hour) == (8768, 12, 31, 24)
    assert first.air_c == plain_hour(1, 1, 1)["air_c"]
    assert first.wind_direction_deg == 10
    assert last.wind_m_s == plain_hour(12, 31, 24)["wind_m_s"]


@pytest.mark.parametrize(
    ("name", "code"),
    [
        ("air_c", "99.9"),
        ("dew_point_c", "99.9"),
        ("rh_percent", "999"),
        ("pressure_pa", "999999"),
        ("wind_m_s", "999."),
        ("direct_w_m2", "9999"),
        ("diffuse_w_m2", "9999."),
        ("wind_direction_deg", "999"),
        ("wind_m_s", ""),
        ("air_c", "999"),
        ("dew_point_c", " 99.9 "),
        ("rh_percent", "999.0"),
        ("wind_m_s", "9999"),
        ("pressure_pa", "9999999"),
    ],
)
def test_a_missing_value_becomes_none_and_is_counted(name, code):
    def hour(month, day, clock):
        values = plain_hour(month, day, clock)
        return values | {name: code} if (month, clock) == (3, 12) else values

    found = parse_epw(epw_text(hour=hour))
    assert found.missing[name] == 31
    assert sum(found.missing.values()) == 31
    noon = [one for one in found.hours if (one.month, one.hour) == (3, 12)]
    assert all(getattr(one, name) is None for one in noon)


def test_the_beam_of_each_hour_is_told_on_the_files_own_clock():
    """Hour 15 of 1 July, from 14:00 to 15:00 of the file's clock: 20:00 to 21:00 UTC."""

    def hour(month, day, clock):
        return plain_hour(month, day, clock) | {"direct_w_m2": 10 * clock}

    found = parse_epw(epw_text(hour=hour))
    asked = datetime(2031, 7, 1, 20, 20, tzinfo=UTC)
    assert found.direct_w_m2(starts_at=asked, hours=2) == (150.0, 160.0)


def test_the_hour_names_its_end():
    """Hour 15 of 1 July is from 14:00 to 15:00."""
    found = parse_epw(WHOLE)
    asked = datetime(2031, 7, 1, 14, 20, tzinfo=timezone(timedelta(hours=-6)))
    day = found.weather(starts_at=asked, hours=2, before_h=1)
    assert day.starts_at == asked.replace(hour=13, minute=0)
    assert day.air_c == tuple(plain_hour(7, 1, hour)["air_c"] for hour in (14, 15, 16))


def test_a_start_in_another_offset_is_brought_to_the_clock_of_the_file():
    found = parse_epw(WHOLE)
    day = found.weather(starts_at=datetime(2031, 7, 1, 20, tzinfo=UTC), hours=1, before_h=0)
    assert day.air_c == (plain_hour(7, 1, 15)["air_c"],)


def test_the_day_before_new_year_comes_from_the_end_of_the_file():
    found = parse_epw(WHOLE)
    asked = datetime(2031, 1, 1, 0, tzinfo=timezone(timedelta(hours=-6)))
    day = found.weather(starts_at=asked, hours=1, before_h=24)
    assert day.air_c[0] == plain_hour(12, 31, 1)["air_c"]
    assert day.air_c[-1] == plain_hour(1, 1, 1)["air_c"]


def test_a_leap_day_is_read_and_where_there_is_none_the_28th_stands_in():
    asked = datetime(2032, 2, 29, 11, tzinfo=timezone(timedelta(hours=-6)))
    with_it = parse_epw(epw_text(leap_day=True))
    assert len(with_it.hours) == 8784
    assert with_it.weather(starts_at=asked, hours=1, before_h=0).air_c == (
        plain_hour(2, 29, 12)["air_c"],
    )
    without = parse_epw(WHOLE)
    assert without.weather(starts_at=asked, hours=1, before_h=0).air_c == (
        plain_hour(2, 28, 12)["air_c"],
    )


@pytest.mark.parametrize("fields", [35, 32])
@pytest.mark.parametrize("leap_day", [True, False])
def test_the_days_before_the_first_of_march_of_a_leap_year_are_whole(fields, leap_day):
    """A year without a 29th gives the 28th twice; either way no hour is missing or doubled."""
    found = parse_epw(epw_text(fields=fields, leap_day=leap_day, says_leap=leap_day))
    asked = datetime(2032, 3, 1, 0, tzinfo=timezone(timedelta(hours=-6)))
    days = found.weather(starts_at=asked, hours=24, before_h=48)
    stand_in = 29 if leap_day else 28
    expected = [
        plain_hour(month, day, hour)["air_c"]
        for month, day in ((2, 28), (2, stand_in), (3, 1))
        for hour in range(1, 25)
    ]
    assert days.air_c == tuple(expected)


def test_the_mean_of_the_year_is_told_only_of_a_year():
    found = parse_epw(WHOLE)
    known = [one.air_c for one in found.hours]
    assert found.mean_air_c == pytest.approx(sum(known) / len(known))
    assert parse_epw(epw_text(months=(6, 7))).mean_air_c is None


def test_a_file_of_part_of_a_year_is_read_and_says_what_it_does_not_hold():
    found = parse_epw(epw_text(months=(6, 7)))
    assert len(found.hours) == 61 * 24
    with pytest.raises(Refused, match="does not hold 01 August"):
        found.weather(starts_at=datetime(2031, 8, 1, 12, tzinfo=UTC))


def test_a_start_without_an_offset_is_refused():
    naive = datetime(2031, 8, 1, 12)  # noqa: DTZ001
    with pytest.raises(Refused, match="no offset"):
        parse_epw(WHOLE).weather(starts_at=naive)


def test_all_faults_of_a_file_come_at_once_with_their_lines():
    lines = WHOLE.split("\n")
    lines[0] = "LOCATION,Nowhere,ZZ,ZZZ,invented,000000,140.0,-90.0,x,200.0"
    lines[20] = "1990,1,1"
    lines[30] = lines[30].replace("1991,1,", "1991,13,", 1)
    lines[40] = row_text(1, 2, 9, plain_hour(1, 2, 9) | {"air_c": "warm"})
    lines[50] = row_text(1, 2, 19, plain_hour(1, 2, 19) | {"rh_percent": 180})
    told = "\n".join(refusal("\n".join(lines)))
    for part in ("latitude", "UTC offset", "line 21", "line 31", "line 41", "air_c", "line 51"):
        assert part in told
    assert len(told.split("\n")) == 6


def test_one_fault_on_every_line_is_one_sentence():
    def hour(month, day, clock):
        return plain_hour(month, day, clock) | {"pressure_pa": 3}

    told = refusal(epw_text(hour=hour))
    assert len(told) == 1
    assert told[0].startswith("lines 9, 10, 11 and 8757 more: pressure_pa")


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("", "empty"),
        ("\n\n \n", "empty"),
        ("not weather at all", "LOCATION"),
        ("\x00\x01\x02" * 50, "LOCATION"),
        ("\n".join(WHOLE.split("\n")[:8]), "no hours"),
        ("\n".join(WHOLE.split("\n")[1:]), "LOCATION"),
        (spoiled(8, "DATA PERIODS,1,4,Data,Sunday, 1/ 1,12/31"), "4 records an hour"),
        (spoiled(1, "LOCATION,Nowhere"), "elevation"),
        (spoiled(100, "1,2,3"), "3 fields"),
        (spoiled(100, ",".join("0" * 32)), "32 fields, the first one 35"),
        (spoiled(100, row_text(1, 4, 20, plain_hour(1, 4, 20) | {"air_c": "nan"})), "air_c"),
        (spoiled(100, row_text(1, 4, 20, plain_hour(1, 4, 20) | {"air_c": "1e400"})), "air_c"),
        (spoiled(100, row_text(1, 4, 25, plain_hour(1, 4, 20))), "no such date"),
        (spoiled(100, row_text(2, 30, 1, plain_hour(1, 4, 20))), "no such date"),
        (spoiled(100, row_text(1, 5, 20, plain_hour(1, 5, 20))), "does not follow"),
        (spoiled(100, "x,1,4,20," + "0," * 30 + "0"), "whole numbers"),
        (epw_text(leap_day=False, says_leap=True), "does not follow"),
    ],
)
def test_broken_files_are_refused_calmly(text, part):
    assert any(part in told for told in refusal(text))


@given(st.binary(max_size=400))
def test_noise_is_refused_and_never_a_traceback(noise):
    with pytest.raises(Refused):
        parse_epw(noise.decode("latin-1"))


@given(
    st.integers(0, len(WHOLE) - 1),
    st.integers(0, 40),
    st.text("0123456789.,-eN\n\r\x00\x85é", max_size=6),
)
def test_a_file_with_one_scar_is_read_or_refused(at, length, scar):
    text = "\n".join(WHOLE.split("\n")[:200])
    at %= len(text)
    assert read_or_faults(text[:at] + scar + text[at + length :])


def read_or_faults(text: str) -> Sequence[object]:
    """The hours of the file, or what is wrong with it: never nothing, never a traceback."""
    try:
        return parse_epw(text).hours
    except Refused as refused:
        return refused.mistakes


def test_a_file_that_is_not_there_or_is_a_folder_is_refused(tmp_path):
    for path in (tmp_path / "none.epw", tmp_path):
        with pytest.raises(Refused):
            read_epw(path)


def test_an_old_file_with_other_letters_in_the_name_of_its_place_is_read(tmp_path):
    path = tmp_path / "old.epw"
    path.write_bytes(WHOLE.replace("Nowhere", "Nirgendsbrück").encode("latin-1"))
    assert read_epw(path).place.city == "Nirgendsbrück"


def test_a_mark_at_the_start_of_the_file_does_not_matter(tmp_path):
    path = tmp_path / "marked.epw"
    path.write_bytes(WHOLE.encode("utf-8-sig"))
    assert len(read_epw(path).hours) == 8760
