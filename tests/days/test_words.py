"""Days and times in words."""

from datetime import date, datetime

from farwall.days.words import date_words
from farwall.units import clock_words


def test_words_are_the_same_on_every_machine():
    assert date_words(date(2026, 5, 14)) == "Thu 14 May"
    assert clock_words(datetime.fromisoformat("2026-05-14T07:05:00-06:00")) == "7:05"


def test_a_time_is_told_by_the_manner_of_the_job():
    told = {
        hour: clock_words(datetime.fromisoformat(f"2026-05-14T{hour:02d}:05:00-06:00"), us=True)
        for hour in (0, 11, 12, 18)
    }
    assert told == {0: "12:05 am", 11: "11:05 am", 12: "12:05 pm", 18: "6:05 pm"}
