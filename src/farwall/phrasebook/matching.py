"""Finding the Spanish of a sentence: by its pattern, its sentences one by one, its parts.

A pattern is English with places: `{1}` a phrase, said by the same book · `{#1}` a quantity ·
`{@1}` a name, kept · `{&1}` a word of a file, `{$1}` an address in it, `{*1}` anything of it, kept.
The Spanish names the same places, in any order. The pattern with the most letters of its own wins.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache, lru_cache

from farwall.nouns import dataclass
from farwall.phrasebook.patterns import PLACE, Pattern, pattern_of
from farwall.phrasebook.phrases import phrases
from farwall.phrasebook.places import (
    CITED,
    HOLE,
    name_in_spanish,
    names_in_spanish,
    one_point,
    quantity_in_spanish,
)

Names = frozenset[str]

_DEEPEST = 6
_LONGEST = 600
"""Letters up to which a text is held against patterns and cut in two in every way: a key of
twenty-five long names took minutes. A longer one is said by its sentences and its parts."""
_HEAD = 3
"""First letters of a text by which the patterns are parted."""
_ENDS = re.compile(r"(?<=[.!?]) (?=[^a-zà-ÿ])")
_JOINS = ("; ", " · ", ", ", " and ", " y ", " or ")
_SPANISH_JOINS = {" and ": " y ", " or ": " o "}
_ROW = re.compile(r"(, | and | or )")
OUR_STAINS = frozenset({"light colour", "dark colour"})
"""Stains that a job names nothing of."""
_BEFORE_UNIT = re.compile(r"(\d) (gal|L|m|min|ft²|m²)\b")
_FIRST_MARK = 0xE100
"""The first of the private letters that stand for names."""
_KEY = re.compile(r"[a-z_]+")
_LETTERS = re.compile(r"[^\W\d_]")


def in_spanish(text: str, names: Names = frozenset()) -> str | None:
    """The text in Spanish, every part of it; None where the book does not hold it whole.

    names: what people call rooms, stains and coats here; they stay as they are.
    """
    bare = text.strip()
    if not bare:
        return text
    marked, marks = _marked(bare.replace("\u00a0", " "), names)
    found = _spanish(marked, 0, names.union(marks) if marks else names)
    if found is None:
        return None
    for mark, name in marks.items():
        found = found.replace(mark, name)
    if "\u00a0" in bare:
        found = _BEFORE_UNIT.sub("\\1\u00a0\\2", found)
    found = one_point(found)
    return text.replace(bare, found, 1) if bare != text else found


def _marked(text: str, names: Names) -> tuple[str, dict[str, str]]:
    """The text with a private letter for each name that joins words of its own, and what it stands
    for: `between Kitchen and dining and Bath` would be parted at the first `and`."""
    joining = [one for one in names if one in text and any(join in one for join in _JOINS)]
    marks: dict[str, str] = {}
    for name in sorted(joining, key=lambda one: (-len(one), one)):
        mark = chr(_FIRST_MARK + len(marks))
        whole = re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", mark, text)
        if whole != text:
            text, marks[mark] = whole, name
    return text, marks


@lru_cache(maxsize=16384)
def _spanish(text: str, depth: int, names: Names) -> str | None:
    if not _LETTERS.search(text) or CITED.fullmatch(text):
        return text
    if (known := names_in_spanish(text, names)) is not None:
        return known
    exact = _book().exact.get(text) or quantity_in_spanish(text)
    if exact is not None or depth > _DEEPEST:
        return exact
    return (
        _by_pattern(text, depth, names)
        or _by_other_case(text, depth, names)
        or _without_its_stop(text, depth, names)
        or _by_place(text, depth, names)
        or _by_sentences(text, depth, names)
        or _by_parts(text, depth, names)
        or _by_pattern(text, depth, names, worded=False)
    )


def _by_pattern(text: str, depth: int, names: Names, *, worded: bool = True) -> str | None:
    """By a pattern with words of its own, or by one that has none: `{1} {2}` parts anything, also
    two colours in a row, and is tried when all else failed."""
    if len(text) > _LONGEST:
        return None
    several = _ENDS.search(text) is not None
    for pattern in _beginning(text[:_HEAD]):
        if pattern.worded != worded or pattern.longest not in text or (several and not worded):
            continue  # what has no word of its own must not part two sentences anywhere
        parts = pattern.parts_of(text)
        if parts is not None and (found := _filled(pattern, parts, depth, names)) is not None:
            return found
    return None


@cache
def _beginning(head: str) -> tuple[Pattern, ...]:
    """The patterns that a text with these first letters may match, heaviest first."""
    book = _book()
    starts = {head[:count] for count in range(_HEAD + 1)}
    found = sorted(place for one in starts for place in book.heads.get(one, ()))
    return tuple(book.patterns[place] for place in found)


def _filled(pattern: Pattern, parts: Sequence[str], depth: int, names: Names) -> str | None:
    said: dict[str, str] = {}
    for place, part in zip(pattern.places, parts, strict=True):
        found = _place(place[0], part, depth, names)
        if found is None:
            return None
        said[place] = found
    return PLACE.sub(lambda one: said[(one[1] or " ") + one[2]], pattern.spanish)


def _place(kind: str, part: str, depth: int, names: Names) -> str | None:
    if part == HOLE or kind in {"&", "$", "*"}:
        return part
    if kind == "#":
        return quantity_in_spanish(part)
    if kind == "@":
        return _name(part, names) or _our_stains(part, names)
    return _spanish(part, depth + 1, names)


def _name(part: str, names: Names) -> str | None:
    return names_in_spanish(part, names) or name_in_spanish(part, _book().words)


def _our_stains(part: str, names: Names) -> str | None:
    """Our own names of stains among others in a row: those are words, and are said in Spanish."""
    pieces = _ROW.split(part)
    if OUR_STAINS.isdisjoint(pieces):
        return None
    said = [
        _SPANISH_JOINS.get(one, one) if _ROW.fullmatch(one)
        else _book().exact[one] if one in OUR_STAINS
        else _name(one, names)
        for one in pieces
    ]  # fmt: skip
    return None if None in said else "".join(one or "" for one in said)


def _by_other_case(text: str, depth: int, names: Names) -> str | None:
    first = text[0]
    if not first.isalpha() or text[1:2].isupper():
        return None
    turned = first.swapcase() + text[1:]
    found = _book().exact.get(turned) or _by_pattern(turned, depth, names)
    return None if found is None else _as(first, found)


def _as(first: str, spanish: str) -> str:
    """The Spanish beginning with a letter as large as `first`."""
    return (spanish[0].upper() if first.isupper() else spanish[0].lower()) + spanish[1:]


def _without_its_stop(text: str, depth: int, names: Names) -> str | None:
    if not text.endswith(".") or ". " in text:
        return None
    found = _spanish(text[:-1], depth + 1, names)
    return None if found is None else f"{found}."


def _by_place(text: str, depth: int, names: Names) -> str | None:
    """`Kitchen: …` or `exits: …`: a name that is known, or a key of a file, before a sentence."""
    head, colon, tail = text.partition(": ")
    if not colon or not tail:
        return None
    place = names_in_spanish(head, names)
    if place is None and tail.endswith(".") and _KEY.fullmatch(head) and head not in _book().exact:
        place = head
    found = None if place is None else _spanish(tail, depth + 1, names)
    return None if found is None else f"{place}: {found}"


def _by_sentences(text: str, depth: int, names: Names) -> str | None:
    """Sentence by sentence, the most of them taken together first."""
    ends = [one.start() for one in _ENDS.finditer(text)]
    for end in reversed(ends):
        head = _spanish(text[:end], depth + 1, names)
        if head is not None:
            tail = _spanish(text[end + 1 :], depth + 1, names)
            if tail is not None:
                return f"{head} {tail}"
    return None


def _by_parts(text: str, depth: int, names: Names) -> str | None:
    for join in _JOINS:
        parts = text.split(join)
        if len(parts) == 1 or not all(parts):
            continue
        if (found := _joined(parts, join, depth, names)) is not None:
            return found
        if len(text) > _LONGEST:
            continue
        head, _, tail = text.partition(join)
        if (found := _joined([head, tail], join, depth, names)) is not None:
            return found
    return None


def _joined(parts: list[str], join: str, depth: int, names: Names) -> str | None:
    """The parts said and joined; None at the first of them that the book does not hold."""
    said = []
    for part in parts:
        found = _spanish(part, depth + 1, names)
        if found is None:
            return None
        said.append(found)
    return _SPANISH_JOINS.get(join, join).join(said)


@dataclass(frozen=True)
class Book:
    """exact: without a place · patterns: the others, heaviest first · words: of English.

    heads: places among the patterns by the first letters of each, at most `_HEAD`.
    """

    exact: dict[str, str]
    patterns: tuple[Pattern, ...]
    words: frozenset[str]
    heads: Mapping[str, Sequence[int]]


@cache
def _book() -> Book:
    """The book, read once."""
    pairs = phrases()
    told = {one: spanish for one, spanish in pairs.items() if not PLACE.search(one)}
    others = sorted(
        (one for one in pairs if PLACE.search(one)), key=lambda one: -len(PLACE.sub("", one))
    )
    words = {word.lower() for one in pairs for word in re.findall(r"[^\W\d_]{3,}", one)}
    patterns = tuple(pattern_of(one, pairs[one]) for one in others)
    heads: dict[str, list[int]] = {}
    for place, one in enumerate(patterns):
        heads.setdefault(one.literals[0][:_HEAD], []).append(place)
    return Book(told, patterns, frozenset(words), heads)
