"""When an entry came into the book is told by the clock of the floor, not by that of the book."""

from dataclasses import replace

from farwall.facts.log import Entry, Kept
from farwall.web.pages.log_lines import Told, lines_of


def made(at, received_at, zone=""):
    entry = Entry("p-1", "two", "note", at, "", "phone", 1, 0, {"text": "x"})
    kept = [Kept(entry, 1, received_at, 0.0)]
    told = Told.bare(kept)
    if zone:
        told = replace(told, starts_at=f"2026-06-08T07:00:00{zone}")
    (line,) = lines_of(told, kept, None, "us")
    return line.made


def test_both_clocks_are_told_in_the_zone_of_the_entry():
    told = made("2026-06-08T08:00:10-06:00", "2026-06-08T14:31:00+00:00")
    assert "Mon 8 Jun 2026, 8:00 am; came into the book Mon 8 Jun 2026, 8:31 am" in told


def test_the_same_minute_is_told_once_whatever_the_zone():
    told = made("2026-06-08T08:00:10-06:00", "2026-06-08T14:00:50+00:00")
    assert "in the book in the same minute" in told


def test_a_phone_of_another_zone_is_told_by_the_hours_of_the_floor():
    told = made("2026-06-08T10:00:10-04:00", "2026-06-08T14:31:00+00:00", zone="-06:00")
    assert "Mon 8 Jun 2026, 8:00 am; came into the book Mon 8 Jun 2026, 8:31 am" in told
