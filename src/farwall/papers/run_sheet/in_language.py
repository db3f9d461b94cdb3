"""The words of a paper as its templates set them, in the language that is spoken."""

from __future__ import annotations

import re
from functools import cache
from importlib.resources import files
from typing import Any

from farwall.papers.long_words import breakable
from farwall.papers.wall_clock import Units
from farwall.papers.words import own_first, unbroken
from farwall.phrasebook import LANGUAGE, told

_AS_IT_IS = frozenset(
    {"job", "notes", "map", "floor", "tape", "strip", "pictures", "paper", "layout"}
)
"""What the user wrote, and drawings, whose words are said where they are drawn."""
_OWN_TEXT = frozenset({"job", "notes"})
_ASKED = re.compile(r'w\("([^"]+)"\)')


def in_language(data: dict[str, Any], units: Units = "us") -> dict[str, Any]:
    """The same data with all its words told, each number tied to its unit and what is told both
    ways in these units first; with `lang`, and `phrases` for the templates' own."""
    said = _said(data, units)
    as_they_stand = LANGUAGE.get() == "en" and units == "us"
    own = {} if as_they_stand else {w: own_first(told(w), units) for w in template_words()}
    return {**said, "lang": LANGUAGE.get(), "phrases": own}


def _said(value: Any, units: Units) -> Any:
    if isinstance(value, str):
        return breakable(unbroken(own_first(told(value), units)))
    if isinstance(value, list | tuple):
        return [_said(one, units) for one in value]
    if isinstance(value, dict):
        return {
            key: _kept(key, one) if key in _AS_IT_IS else _said(one, units)
            for key, one in value.items()
        }
    return value


def _kept(key: str, value: Any) -> Any:
    """What is not told again: the user's own text may break its long words, drawings stay."""
    return breakable(value) if key in _OWN_TEXT and isinstance(value, str) else value


_TEMPLATES = ("run_sheet", "chain")
"""Folders of this package with templates that ask for words by `w`."""


@cache
def template_words() -> frozenset[str]:
    """The words that the templates themselves set: those that they ask for by `w`."""
    home = files("farwall.papers")
    found = [one for name in _TEMPLATES for one in (home / name).iterdir()]
    texts = [one.read_text("utf-8") for one in found if one.name.endswith(".typ")]
    return frozenset(word for text in texts for word in _ASKED.findall(text))
