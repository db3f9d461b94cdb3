"""The line about the other bands: its price in minutes and stain, or that there is none."""

from __future__ import annotations

from types import SimpleNamespace

from farwall.facts.plan import Choice
from farwall.papers.run_sheet.choice_words import choice_line

BEST = Choice("best", 2.0, 3.0, 10.0, 8.0, 7, chosen=True)


def line(*choices):
    return choice_line(SimpleNamespace(choices=choices), "metric")


def test_the_price_of_plain_bands_by_hand():
    plain = Choice("plain", 2.6, 2.4, 11.5, 8.5, 9, chosen=False)
    (told,) = line(BEST, plain)
    assert told.startswith("Plain straight bands instead: edge 2.6 min, 2.4 min to spare, 9 bands")
    assert "1.5 min more" in told
    assert "0.50 L" in told


def test_plain_bands_that_do_not_hold():
    plain = Choice("plain", 6.0, -1.0, 10.0, 8.0, 9, chosen=False)
    assert "1.0 min too many, 9 bands, as long" in line(BEST, plain)[0]


def test_the_best_are_named_where_plain_ones_are_taken():
    other = Choice("best", 2.0, 3.0, 10.0, 8.0, 7, chosen=False)
    plain = Choice("plain", 2.6, 2.4, 11.5, 8.5, 9, chosen=True)
    assert line(other, plain)[0].startswith("The best bands instead: edge 2.0 min")


def test_nothing_is_said_where_there_is_no_choice():
    assert line(BEST) == []
    assert line() == []
    same = Choice("plain", 2.0, 3.0, 10.0, 8.0, 7, chosen=False)
    assert "none better" in line(BEST, same)[0]
