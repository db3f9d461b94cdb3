"""Days and times in words."""

from datetime import date, datetime

from farwall.days.words import clock_words, date_words


def test_words_are_the_same_on_every_machine():
    assert date_words(date(2026, 5, 14)) == "Thu 14 May"
    assert clock_words(datetime.fromisoformat("2026-05-14T07:05:00-06:00")) == "7:05"
