"""Whether the materials of a job agree with the rest of it: stains that exist, names that fit."""

from __future__ import annotations

from collections.abc import Iterator
from typing import get_args

from farwall.errors import Mistake
from farwall.facts.materials import MaterialKind, plain_name
from farwall.readers.json_text import Place, place_text
from farwall.readers.shape import did_you_mean
from farwall.readers.wording import shown

_OF_STAIN = ("stain", "mixed stain", "dried stain")
_KINDS = frozenset(get_args(MaterialKind))


def material_mistakes(raw: dict[str, object], stains: list[str]) -> Iterator[Mistake]:
    """Materials of a stain that is not there, stains told of what is none, misleading names.

    `stains`: ids of the stains of the job. A bottle of bleach that is called water would be asked
    about as water.
    """
    listed = raw.get("materials")
    for number, row in enumerate(listed if isinstance(listed, list) else []):
        if isinstance(row, dict):
            at: Place = ("materials", number)
            yield from _stain(row, at, stains)
            yield from _called(row, at)


def _stain(row: dict[str, object], at: Place, stains: list[str]) -> Iterator[Mistake]:
    stain, kind = row.get("stain"), row.get("kind")
    if not isinstance(stain, str) or not stain:
        return
    if stain not in stains:
        said = f"There is no stain {shown(stain)}."
        yield Mistake(place_text((*at, "stain")), said, did_you_mean(stain, stains))
    elif isinstance(kind, str) and kind in _KINDS and kind not in _OF_STAIN:
        said = f"This is {kind}, and the stain {shown(stain)} is told of it."
        yield Mistake(place_text((*at, "stain")), said, "Leave the stain out, or change the kind.")


def _called(row: dict[str, object], at: Place) -> Iterator[Mistake]:
    kind = row.get("kind")
    for key in ("id", "name"):
        word = row.get(key)
        if not isinstance(word, str) or not isinstance(kind, str):
            continue
        meant = next((one for one in _KINDS if plain_name(one) == plain_name(word)), None)
        if meant is not None and meant != kind:
            said = f"It is called {shown(word)}, and its kind is {kind}."
            yield Mistake(place_text((*at, key)), said, "Call it what it is.")
        elif key == "id" and plain_name(word) == "into":
            yield Mistake(place_text((*at, key)), 'Nothing can be called "into".', "Rename it.")
