"""All words of the screens: a table for each screen and language, one language at a time.

The tables of a language lie in `en/`, `es/`: a module for each screen, its `WORDS` by key. English
is whole; a key that another language lacks is said in English.
"""

from __future__ import annotations

import pkgutil
import re
from functools import cache
from importlib import import_module

from farwall.phrasebook import LANGUAGE, LANGUAGES
from farwall.phrasebook.places import one_point

__all__ = ["LANGUAGE", "LANGUAGES", "said", "words"]
"""The language of the request that is being answered is set at the door of a page; it is the one
that the phrasebook speaks too."""


_OF_THE = re.compile(r"(?<!\w)(de|De|a|A) el (?=[a-zñáéíóú])")


@cache
def words(language: str) -> dict[str, str]:
    """All words of a language by key. Raises ValueError where two screens claim the same key."""
    package = import_module(f"{__name__}.{language}")
    found: dict[str, str] = {}
    for one in sorted(module.name for module in pkgutil.iter_modules(package.__path__)):
        told: dict[str, str] = import_module(f"{package.__name__}.{one}").WORDS
        if both := found.keys() & told.keys():
            raise ValueError(f"{language}/{one}: these keys are taken: {', '.join(sorted(both))}.")
        found |= told
    return found


def said(key: str, **values: object) -> str:
    """The words of a key with the values in their places. Raises KeyError for no such key.

    Spanish says `del`, `al` where a name
    that begins with `el` follows on `de`, `a`.
    """
    told = words(LANGUAGE.get()).get(key)
    whole = (words("en")[key] if told is None else told).format(**values)
    if LANGUAGE.get() == "es" and values:
        whole = _OF_THE.sub(r"\1l ", whole)
    return one_point(whole)


def said_or(key: str, default: str) -> str:
    """The words of a key that may have none of its own; then `default`."""
    return said(key) if key in words("en") else default
