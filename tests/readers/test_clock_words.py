"""Times of day as people write them."""

import pytest

from farwall.readers.clock_words import Clock, clock_of


@pytest.mark.parametrize(
    ("text", "hour", "minute", "half_told"),
    [
        ("9:12", 9, 12, False), ("12:30", 12, 30, False), ("09:12", 9, 12, True),
        ("13:30", 13, 30, True), ("0:05", 0, 5, True), ("12:30 pm", 12, 30, True),
        ("12:30pm", 12, 30, True), ("12:30 AM", 0, 30, True), ("12am", 0, 0, True),
        ("1 p.m.", 13, 0, True), ("1:30 p. m.", 13, 30, True), (" 9:12 am ", 9, 12, True),
    ],
)  # fmt: skip
def test_a_time_of_day(text, hour, minute, half_told):
    assert clock_of(text) == Clock(hour, minute, half_told)


@pytest.mark.parametrize(
    "text", ["", "9", "912", "noon", "9:1", "9:12:30", "9h12", "٩:١٢", "9:12 xm"]
)
def test_what_is_no_time_of_day(text):
    assert clock_of(text) is None


@pytest.mark.parametrize("text", ["24:00", "9:60", "13:00 pm", "0:30 am", "25pm"])
def test_what_no_clock_shows_is_refused_in_words(text):
    with pytest.raises(ValueError, match="is no time of day"):
        clock_of(text)
