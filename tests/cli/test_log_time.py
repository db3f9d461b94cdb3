"""Which minute is meant by `at=`: am and pm, and a twelve-hour clock without either."""

from datetime import datetime, timedelta

import pytest
from tests.midday import day_of

from farwall.cli.log_time import moment_of
from farwall.errors import Refused

PLAN = day_of("quince-street")
START = datetime.fromisoformat(PLAN.starts_at)  # 8:00
AT_THE_DESK = START + timedelta(days=200)


def meant(text, clock=AT_THE_DESK):
    return f"{moment_of([('at', text)], PLAN, [], clock).astimezone(START.tzinfo):%H:%M}"


@pytest.mark.parametrize(
    ("text", "clock"),
    [
        ("9:12", "09:12"), ("12:30 pm", "12:30"), ("12:30", "12:30"), ("1:30pm", "13:30"),
        ("1:30", "13:30"), ("01:30", "01:30"), ("1:30 am", "01:30"), ("6:40", "06:40"),
        ("7:50", "07:50"), ("13:30", "13:30"),
    ],
)  # fmt: skip
def test_a_time_of_the_first_day(text, clock):
    assert meant(text) == clock


def test_what_is_yet_to_come_by_the_clock_on_the_wall_is_not_meant():
    """At 5:31 in the morning 5:30 was a minute ago; at 17:40 it was ten minutes ago."""
    assert meant("5:30", START.replace(hour=5, minute=31)) == "05:30"
    assert meant("5:30", START.replace(hour=17, minute=40)) == "17:30"


def test_on_a_later_day_it_stays_as_it_is_written():
    assert meant("6:30", START.replace(hour=20) + timedelta(days=1)) == "06:30"


@pytest.mark.parametrize("text", ["13:30 pm", "24:00", "noon", "0:10 am"])
def test_what_is_no_time_is_refused_with_an_example(text):
    with pytest.raises(Refused, match="at=1:30pm"):
        meant(text)
