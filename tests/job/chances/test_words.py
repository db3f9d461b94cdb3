"""Shares of days in words that claim no more than ten thousand draws can tell."""

from __future__ import annotations

import pytest

from farwall.job.chances.words import share_words


@pytest.mark.parametrize(
    ("share", "words"),
    [
        (0.0, "under 0.1 %"),
        (0.00099, "under 0.1 %"),
        (0.001, "0.1 %"),
        (0.0284, "2.8 %"),
        (0.0909, "9 %"),
        (0.5, "50 %"),
        (0.9995, "over 99.9 %"),
        (1.0, "over 99.9 %"),
    ],
)
def test_shares_by_hand(share, words):
    assert share_words(share) == words


def test_a_sign_where_room_is_short():
    assert share_words(0.0, under="< ") == "< 0.1 %"
    assert share_words(1.0, under="< ") == "> 99.9 %"
