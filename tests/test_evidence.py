"""Ranks and sources in words."""

from __future__ import annotations

import pytest

from farwall.evidence import rank_words


@pytest.mark.parametrize(
    ("rank", "source", "told"),
    [
        ("measured here", "told as survey.slab_c", "measured here"),
        ("measured here", "sample closet-1", "measured here, sample closet-1"),
        ("common practice", "common practice, no source", "common practice, no source"),
        ("common practice", "common-practice", "common practice, no source"),
        ("guess", "house-guess", "guess"),
        ("published", "uno-1998", "published, Uno 1998"),
        ("learned", "", "learned"),
        (
            "common practice",
            "trade-press, common-practice; the label wins",
            "trade press, common practice, no source; the label wins",
        ),
    ],
)
def test_a_rank_is_always_told_and_never_twice(rank: str, source: str, told: str):
    assert rank_words(rank, source) == told
