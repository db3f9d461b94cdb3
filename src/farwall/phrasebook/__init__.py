"""A phrasebook: the sentences that the core says in English, each with its Spanish.

Only the doors ask it (papers, pages, phone, command line). A sentence is said in Spanish whole or
not at all: what the book does not hold comes back in English, and whoever shows it can tell.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import partial
from typing import Any, Literal

from farwall.phrasebook.matching import in_spanish

Language = Literal["en", "es"]
LANGUAGES: tuple[Language, ...] = ("en", "es")
LANGUAGE: ContextVar[Language] = ContextVar("language", default="en")
"""The language in which is spoken now: set at a door, asked by whatever puts words before eyes."""

NAMES: ContextVar[frozenset[str]] = ContextVar("names", default=frozenset())
"""What people call the rooms, stains and coats that are spoken of: these stay as they are."""

__all__ = [
    "LANGUAGE",
    "LANGUAGES",
    "NAMES",
    "Language",
    "beside_in",
    "in_spanish",
    "said_whole",
    "speaking",
    "told",
]


@contextmanager
def speaking(language: Language, names: Iterable[str] = ()) -> Iterator[None]:
    """What is said meanwhile is said in this language; `names` stay as they are."""
    spoken, known = LANGUAGE.set(language), NAMES.set(frozenset(filter(None, names)))
    try:
        yield
    finally:
        LANGUAGE.reset(spoken)
        NAMES.reset(known)


def told(text: str) -> str:
    """The text in the language that is spoken; in English where the book does not hold it whole."""
    if LANGUAGE.get() == "en":
        return text
    return in_spanish(text, NAMES.get()) or text


def said_whole(text: str) -> bool:
    """Whether `told` gives this text in the language that is spoken."""
    return LANGUAGE.get() == "en" or in_spanish(text, NAMES.get()) is not None


def beside_in(
    language: Language,
    names: Iterable[str],
    beside: Callable[[Callable[[], Any]], Callable[[], Any]],
) -> Callable[[Callable[[], Any]], Callable[[], Any]]:
    """The same `beside`, its work done in this language wherever it is done."""
    kept = tuple(names)
    return lambda work: beside(partial(_spoken, language, kept, work))


def _spoken(language: Language, names: tuple[str, ...], work: Callable[[], Any]) -> Any:
    with speaking(language, names):
        return work()
