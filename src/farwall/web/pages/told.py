"""A sentence of the core on a page: in the page's language, else in English and marked so."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from jinja2.ext import Extension
from markupsafe import Markup

from farwall.papers.words import names_in, unbroken
from farwall.phrasebook import LANGUAGE, NAMES, in_spanish

_ENGLISH = frozenset(
    ("the", "of", "is", "are", "and", "with", "not", "to", "in", "on", "for", "it", "be", "by",
     "at", "from", "or", "that", "this", "have", "was", "were", "as", "its", "your", "what")
)  # fmt: skip
_SPANISH = frozenset(
    ("el", "la", "los", "las", "de", "del", "es", "son", "y", "con", "sin", "en", "para", "que",
     "un", "una", "por", "se", "al", "hay", "su", "lo", "le", "o", "a", "no", "como", "más", "nada",
     "este", "esta", "sus")
)  # fmt: skip
"""Small words that one language has and the other has not, but for `no`, `a` and `me`."""


def told_on_page(text: object) -> str:
    """The text as a page shows it; what the book of phrases lacks is marked as English.

    Names and what is Spanish already come back as they are. No line ends between a number and its
    unit; markup, which holds attributes too, is left as it is.
    """
    words = text if isinstance(text, str) else str(text)
    if isinstance(words, Markup):
        return words
    if LANGUAGE.get() == "en":
        return unbroken(words)
    spanish = in_spanish(words, NAMES.get())
    if spanish is not None:
        return unbroken(spanish)
    bound = unbroken(words)
    return Markup('<span lang="en">{}</span>').format(bound) if reads_english(words) else bound


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


_PIECES = re.compile(
    r"\{%-?\s*(?P<block>\w+)\s*(?P<of>\w*).*?%\}|\{#.*?#\}|\{\{-?(?P<shown>.*?)-?\}\}"
    r"|<(?P<end>/?)(?P<tag>[a-zA-Z!][\w-]*)|(?P<close>>)",
    re.DOTALL,
)
_AS_IT_IS = frozenset(("title", "textarea", "script", "style", "option"))
"""Elements that hold no markup, or what a person typed."""


class ToldBetweenTags(Extension):
    """Whatever a template shows between tags is told in the page's language; attributes are not.

    So nobody who writes a template has to remember it, and no value of a form is touched.
    """

    def preprocess(self, source: str, name: str | None, filename: str | None = None) -> str:  # noqa: ARG002
        """The template with `|t` on what it shows between tags."""
        found, at, in_tag, raw = [], 0, False, ""
        for piece in _PIECES.finditer(source):
            found.append(source[at : piece.start()])
            at = piece.end()
            found.append(piece[0])
            if piece["close"]:
                in_tag = False
            elif piece["tag"]:
                in_tag = True
                tag = piece["tag"].lower()
                raw = tag if tag in _AS_IT_IS and not piece["end"] else "" if tag == raw else raw
            elif piece["block"]:
                title = piece["block"] == "block" and piece["of"] == "title"
                raw = "block" if title else "" if raw == "block" else raw
            elif piece["shown"] is not None and not in_tag and not raw:
                found[-1] = f"{{{{ ({piece['shown'].strip()})|t }}}}"
        return "".join([*found, source[at:]])
