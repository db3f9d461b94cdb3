"""Waits that begin on another day are told by how long they are."""

import pytest

from farwall.facts.plan import Clock
from farwall.papers.run_sheet.day_page import _for_long


@pytest.mark.parametrize(
    ("ends", "words"),
    [
        ((720.0, 1440.0, 4320.0), "dry-down 12 to 72 h, likely 24 (guess)"),
        ((1260.0, 3300.0, None), "dry-down 21 h to open end, likely 55 (guess)"),
        ((50.0, 90.0, 150.0), "dry-down 50 to 150 min, likely 90 (guess)"),
        ((0.0, None, None), "dry-down: not in these conditions"),
    ],
)
def test_a_long_wait_in_words(ends, words):
    assert _for_long(Clock("two", "dry-down", *ends, "guess", "", 60.0)) == words


def test_a_prescribed_wait_says_so_and_has_a_usual_middle():
    dwell = Clock("two", "dwell", 240.0, 480.0, 1440.0, "common practice", "prescribed: x", 60.0)
    assert _for_long(dwell) == "dwell 4 to 24 h, usual 8 (common practice, prescribed)"
