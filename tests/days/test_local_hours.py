"""The hours of a day by the clock on the wall, over the changes to summer time and back."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.days.shop import typical

from farwall.days.calendar import calendar
from farwall.days.check import check_days
from farwall.days.document import document, moment
from farwall.days.hours import mild
from farwall.days.local_hours import by_the_clock
from farwall.days.nouns import MILD_HOUR, HourAhead

CHICAGO = ZoneInfo("America/Chicago")
SPRING = datetime(2026, 3, 7, tzinfo=CHICAGO)  # forward on Sunday 8 March at 2:00
AUTUMN = datetime(2026, 10, 31, tzinfo=CHICAGO)  # back on Sunday 1 November at 2:00

ZONES = (
    "America/Chicago",
    "Australia/Sydney",
    "Australia/Lord_Howe",
    "Asia/Kolkata",
    "Africa/Cairo",
)


def counted(count):
    """Hours whose paces are their number, so that each can be told from all others."""
    return [HourAhead(coat=True, seal=n != 26, film=n, slab=n, sealer=n) for n in range(count)]


def test_in_spring_nothing_passes_in_the_hour_that_is_left_out():
    hours = by_the_clock(counted(72), first=0, begins=SPRING, days=2)
    assert [one.film for one in hours[24:29]] == [24, 25, 0, 26, 27]
    gap = hours[26]
    assert (gap.clock, gap.coat, gap.seal) == (0, False, False)


def test_in_autumn_two_hours_pass_in_one_and_both_have_to_allow_it():
    hours = by_the_clock(counted(72), first=0, begins=AUTUMN, days=2)
    assert [one.film for one in hours[24:28]] == [24, 25 + 26, 27, 28]
    assert (hours[25].clock, hours[25].coat, hours[25].seal) == (2, True, False)


def test_where_the_clock_does_not_change_the_hours_are_those_that_pass():
    hours = by_the_clock(counted(72), first=10, begins=datetime(2026, 6, 8, tzinfo=UTC), days=2)
    assert list(hours) == counted(72)[10:58]


@given(
    zone=st.sampled_from(ZONES),
    day=st.integers(0, 364),
    days=st.integers(1, 200),
)
def test_no_hour_is_lost_and_none_is_counted_twice(zone, day, days):
    begins = datetime(2026, 1, 1, tzinfo=ZoneInfo(zone)) + timedelta(days=day)
    hours = by_the_clock([MILD_HOUR] * (24 * days + 2), first=0, begins=begins, days=days)
    ends = begins + timedelta(days=days)
    lived_h = (ends.astimezone(UTC) - begins.astimezone(UTC)) // timedelta(hours=1)
    assert len(hours) == 24 * days
    assert sum(one.clock for one in hours) == sum(one.film for one in hours) == lived_h


def test_half_past_seven_stays_half_past_seven():
    ahead = mild(AUTUMN, 3)
    told = [moment(ahead, 450 + 1440 * n).isoformat() for n in (0, 2)]
    assert told == ["2026-10-31T07:30:00-05:00", "2026-11-02T07:30:00-06:00"]


@pytest.mark.parametrize("begins", [SPRING - timedelta(days=2), AUTUMN - timedelta(days=2)])
def test_the_checker_holds_a_calendar_over_the_change_to_the_same(begins):
    told = document(calendar(typical(mild(begins, 30))))
    assert check_days(told) == []
    offsets = {one["starts_at"][-6:] for house in told["houses"] for one in house["steps"]}
    assert len(offsets) == 2
