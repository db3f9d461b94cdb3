"""Letters that the fonts of the papers have no shape for: named in words, never left as a box."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Iterator
from functools import cache
from importlib.resources import as_file, files

from farwall.phrasebook import told

FONTS = (
    "OpenSans-Regular.ttf", "NotoSansArabic-Regular.ttf", "NotoSansHebrew-Regular.ttf",
    "DroidSansFallback.ttf",
)  # fmt: skip
"""The fonts in the order in which they are asked; `families` of parts.typ has the same."""
_PLAIN_LATIN = 0x17F
_NO_SHAPE = {"Cc", "Cf", "Zl", "Zp", "Zs", "Mn", "Me"}
_NAMED = 12


@cache
def shapes(font: str) -> frozenset[int]:
    """Code points that a font of `FONTS` has a shape for."""
    from fontTools.ttLib import TTFont

    one = files("farwall.papers.run_sheet") / "fonts" / font
    with as_file(one) as path, TTFont(path, lazy=True) as found:
        return frozenset(found.getBestCmap())


def without_shape(texts: Iterable[str]) -> tuple[str, ...]:
    """Letters of these texts that no font of ours can print, in the order of their code points.

    The large fonts are opened only for what the small ones lack.
    """
    asked = {letter for text in texts for letter in text if ord(letter) > _PLAIN_LATIN}
    left = {ord(one) for one in asked if unicodedata.category(one) not in _NO_SHAPE}
    for font in FONTS:
        if left:
            left -= shapes(font)
    return tuple(chr(one) for one in sorted(left))


def strings_in(value: object) -> Iterator[str]:
    """Every text in nested dicts and lists."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for one in value.values():
            yield from strings_in(one)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from strings_in(one)


def missing_words(texts: Iterable[str]) -> str:
    """What the paper says where letters have no shape, in its language; empty where all have."""
    lacking = without_shape(texts)
    if not lacking:
        return ""
    codes = ", ".join(f"U+{ord(one):04X}" for one in lacking[:_NAMED])
    more = " …" if len(lacking) > _NAMED else ""
    return told(f"No font here has these letters; write them in by hand: {codes}{more}")
