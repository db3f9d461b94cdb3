"""What a user wrote, made to fit: any length, any word, without a page more or a letter outside."""

from __future__ import annotations

import re

from farwall.papers.lettering import clipped
from farwall.papers.svg import plain
from farwall.phrasebook import speaking

_PIECE = 14
_LONG = re.compile(rf"\S{{{_PIECE}}}(?=\S{{4}})")
_BREAK = "\u200b"
"""Zero-width space: where a word may be broken without a mark."""


def as_written(text: str) -> str:
    """The text on one line's worth of spaces, with places to break in words that are too long."""
    return _LONG.sub(lambda piece: piece[0] + _BREAK, " ".join(plain(text).split()))


def shortened(text: str, width: float, size: float, *, bold: bool = False) -> str:
    """The same, cut with an ellipsis where it is wider than `width`, both in the unit of `size`."""
    with speaking("en"):
        return as_written(clipped(" ".join(plain(text).split()), width, size, bold=bold))
