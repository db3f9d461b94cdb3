"""The calendar file, read back by a strict reader of its own, rule by rule."""

from __future__ import annotations

import copy
import re
from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.days.shop import shop

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.papers.calendar_file import calendar_file, escaped, folded

STAMP = datetime.fromisoformat("2001-01-01T06:00:00+00:00")
LATER = STAMP + timedelta(days=1)
TOLD = document(calendar(shop(2)))


def text(told=TOLD, *, stamp=STAMP, earlier=""):
    return calendar_file(told, stamp=stamp, earlier=earlier)


def read(file):
    """Events by UID; every property once; raises where the form is broken."""
    assert file.endswith("\r\n")
    lines = re.sub("\r\n[ \t]", "", file).split("\r\n")[:-1]
    assert lines[0] == "BEGIN:VCALENDAR"
    assert lines[-1] == "END:VCALENDAR"
    events, event = {}, None
    for line in lines[1:-1]:
        name, colon, value = line.partition(":")
        assert colon
        if line == "BEGIN:VEVENT":
            event = {}
        elif line == "END:VEVENT":
            assert event["UID"] not in events
            events[event["UID"]] = event
            event = None
        elif event is not None:
            assert name not in event
            event[name] = value
    return events


def moved(*, days=1):
    told = copy.deepcopy(TOLD)
    step = told["houses"][0]["steps"][-1]
    for key in ("starts_at", "ends_at"):
        step[key] = (datetime.fromisoformat(step[key]) + timedelta(days=days)).isoformat()
    return told


def test_lines_end_in_crlf_and_no_bare_line_end_is_left():
    """Rule K1 of the format, RFC 5545 section 3.1."""
    file = text()
    assert "\n" not in file.replace("\r\n", "")
    assert "\r" not in file.replace("\r\n", "")


def test_no_line_is_longer_than_75_octets_whatever_the_letters():
    """Rule K2, RFC 5545 section 3.1: octets count, not letters."""
    told = copy.deepcopy(TOLD)
    told["houses"][0]["name"] = "Straße mit großen Bäumen · " * 6
    assert max(len(line.encode()) for line in text(told).split("\r\n")) <= 75
    summary = next(iter(read(text(told)).values()))["SUMMARY"]
    assert "großen Bäumen · Straße" in summary


@given(st.text(st.characters(exclude_characters="\r\n", exclude_categories=["Cs"]), max_size=300))
def test_unfolding_gives_the_line_back(line):
    assert folded(line).replace("\r\n ", "") == line
    assert all(len(part.encode()) <= 75 for part in folded(line).split("\r\n"))


def test_the_calendar_has_its_product_and_version():
    """Rule K3, RFC 5545 section 3.6."""
    assert text().startswith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Farwall//")


def test_each_event_has_uid_stamp_and_start():
    """Rule K4, RFC 5545 section 3.6.1."""
    for event in read(text()).values():
        assert {"UID", "DTSTAMP"} <= event.keys()
        assert {"DTSTART", "DTSTART;VALUE=DATE"} & event.keys()


def test_text_is_escaped():
    """Rule K5, RFC 5545 section 3.3.11."""
    assert escaped("a\\b;c,d\ne") == "a\\\\b\\;c\\,d\\ne"


def test_the_end_of_a_whole_day_is_the_day_after():
    """Rule K6, RFC 5545 section 3.6.1."""
    days = [one for one in read(text()).values() if "DTSTART;VALUE=DATE" in one]
    assert len(days) == 8
    for one in days:
        start, end = (datetime.strptime(one[f"{key};VALUE=DATE"], "%Y%m%d").astimezone()
                      for key in ("DTSTART", "DTEND"))  # fmt: skip
        assert (end.date() - start.date()).days == 1


def test_times_are_in_utc_so_that_no_zone_has_to_be_told():
    """Rule K7, RFC 5545 section 3.2.19: no TZID, so no VTIMEZONE. 7:30 at -06:00 is 13:30."""
    file = text()
    assert "TZID" not in file
    first = min(e["DTSTART"] for e in read(file).values() if "DTSTART" in e)
    assert first == "20010101T133000Z"


def test_nothing_recurs():
    assert "RRULE" not in text()


def test_the_same_calendar_again_changes_nothing_even_later():
    first = text()
    assert text(stamp=LATER, earlier=first) == first


def test_an_event_that_moved_keeps_its_uid_and_raises_its_sequence():
    first = read(text())
    then = read(text(moved(), stamp=LATER, earlier=text()))
    assert then.keys() == first.keys()
    changed = [uid for uid in first if then[uid] != first[uid]]
    assert changed == ["house-1.hand-over@farwall"] or len(changed) == 1
    assert then[changed[0]]["SEQUENCE"] == "1"
    assert then[changed[0]]["DTSTAMP"] > first[changed[0]]["DTSTAMP"]


def test_a_third_change_raises_it_again():
    second = text(moved(), earlier=text())
    third = read(text(moved(days=2), earlier=second))
    assert sorted(one["SEQUENCE"] for one in third.values())[-1] == "2"


def test_a_step_that_is_no_more_is_cancelled_and_comes_back_when_it_does():
    told = copy.deepcopy(TOLD)
    gone = told["houses"][0]["steps"].pop(2)
    uid = f"{told['houses'][0]['id']}.{gone['id']}@farwall"
    second = text(told, earlier=text())
    assert read(second)[uid]["STATUS"] == "CANCELLED"
    assert read(second)[uid]["SEQUENCE"] == "1"
    assert text(told, earlier=second) == second
    third = read(text(earlier=second))[uid]
    assert "STATUS" not in third
    assert third["SEQUENCE"] == "2"


def test_events_of_other_jobs_stay_as_they_are():
    one = copy.deepcopy(TOLD)
    one["houses"] = one["houses"][:1]
    first = text()
    assert read(text(one, stamp=LATER, earlier=first)) == read(first)


@pytest.mark.parametrize("junk", ["", "no calendar", "BEGIN:VEVENT\r\nUID:x\r\n"])
def test_a_file_that_is_no_calendar_is_written_anew(junk):
    assert text(earlier=junk) == text()
