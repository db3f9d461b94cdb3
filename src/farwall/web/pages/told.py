"""A sentence of the core on a page: in the page's language, else in English and marked so."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from markupsafe import Markup

from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, NAMES, in_spanish

_ENGLISH = frozenset(
    ("the", "of", "is", "are", "and", "with", "not", "to", "in", "on", "for", "it", "be", "no",
     "by", "at", "from", "or", "that", "this", "has", "have", "was", "were")
)  # fmt: skip
_SPANISH = frozenset(
    ("el", "la", "los", "las", "de", "del", "es", "son", "y", "con", "sin", "en", "para", "que",
     "un", "una", "por", "se", "al", "hay", "su")
)  # fmt: skip


def told_on_page(text: object) -> str:
    """The text as a page shows it; what the book of phrases lacks is marked as English.

    Names and what is Spanish already come back as they are.
    """
    words = text if isinstance(text, str) else str(text)
    if LANGUAGE.get() == "en" or isinstance(words, Markup):
        return words
    spanish = in_spanish(words, NAMES.get())
    if spanish is not None:
        return spanish
    return Markup('<span lang="en">{}</span>').format(words) if reads_english(words) else words


def reads_english(text: str) -> bool:
    """Whether a text has more small words of English than of Spanish."""
    words = re.findall(r"[^\W\d_]+", text.lower())
    return sum(one in _ENGLISH for one in words) > sum(one in _SPANISH for one in words)


@contextmanager
def names_kept(shown: Any) -> Iterator[None]:
    """While a house is put into words, what its rooms, stains and coats are called stays."""
    plan = getattr(shown, "plan", None)
    token = NAMES.set(names_in(plan) if plan is not None else frozenset())
    try:
        yield
    finally:
        NAMES.reset(token)
