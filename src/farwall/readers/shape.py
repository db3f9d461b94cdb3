"""What keys a noun has, and where its nouns lie inside plain JSON values.

Reads the types written on the frozen dataclasses, so that a new fact is known
to every check of a file on the day it is added.
"""

from __future__ import annotations

import types
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from functools import cache
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from farwall.near_word import near_word
from farwall.nouns import dataclass
from farwall.readers.json_text import Place


@dataclass(frozen=True)
class Entry:
    """One JSON object that stands for a noun: its place, the noun's type, its keys and values."""

    place: Place
    noun: type
    values: dict[str, object]


@cache
def keys_of(noun: type) -> dict[str, Any]:
    """The keys of a noun with their types, in the noun's own order."""
    hints = get_type_hints(noun, include_extras=True)
    return {entry.name: hints[entry.name] for entry in fields(noun)}


def entries(value: object, hint: Any, place: Place = ()) -> Iterator[Entry]:
    """Every JSON object in `value` that stands for a noun, outermost first."""
    hint = bare(hint)
    if is_dataclass(hint) and isinstance(hint, type):
        if isinstance(value, dict):
            yield Entry(place, hint, value)
            for key, inner in keys_of(hint).items():
                if key in value:
                    yield from entries(value[key], inner, (*place, key))
        return
    origin, parts = get_origin(hint), get_args(hint)
    if origin is tuple and parts[-1] is ... and isinstance(value, list):
        for number, item in enumerate(value):
            yield from entries(item, parts[0], (*place, number))
    elif origin is dict and isinstance(value, dict):
        for key, item in value.items():
            yield from entries(item, parts[1], (*place, key))


def bare(hint: Any) -> Any:
    """A type without its bounds and without `| None`."""
    while True:
        if get_origin(hint) is Annotated:
            hint = get_args(hint)[0]
        elif get_origin(hint) in {Union, types.UnionType}:
            known = [part for part in get_args(hint) if part is not type(None)]
            if len(known) != 1:
                return hint
            hint = known[0]
        else:
            return hint


def did_you_mean(word: str, known: list[str]) -> str:
    """A remedy for an unknown word: the nearest known one, else all of them."""
    near = near_word(word, known)
    if near is not None:
        return f"Did you mean `{near}`?"
    return "Known here: " + ", ".join(known) + "." if known else "Nothing may stand here."


def text_of(row: Mapping[str, object], key: str) -> str | None:
    """The text under a key; None where there is none, or none that says anything."""
    value = row.get(key)
    return value if isinstance(value, str) and value else None
