"""Entries of the log from JSON and from words: checked against the table of words, all at once.

JSON is one entry, a list of them, or a line for each. Words are for a hand in a wet glove:
`band-done band=first.6.4 tank_gal=1.5 at=9:12`. Where there is a plan the ids of its fields, bands,
rooms and coats are checked against it.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import fields
from datetime import datetime
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.facts.log import LOG_VERSION, Entry
from farwall.facts.log_words import WORDS, Word
from farwall.facts.plain import Plain, plain
from farwall.facts.plan import Plan
from farwall.nouns import dataclass
from farwall.readers import json_text
from farwall.readers.json_text import Place, place_text
from farwall.readers.log_values import Ids, checked, typed
from farwall.readers.shape import did_you_mean
from farwall.readers.wording import shown

ABOUT = "This cannot be entered:"
_KEYS = tuple(one.name for one in fields(Entry))
_MUST = ("id", "job", "word", "at")
_TEXTS = ("id", "job", "word", "at", "who", "device")
_COUNTS = ("number", "era", "version")
_LONGEST = 200


@dataclass(frozen=True)
class Head:
    """What the door knows of an entry before a word is read: made where it is tapped."""

    id: str
    job: str
    at: str
    who: str = ""
    device: str = ""
    number: int = 0
    era: int = 0


def word_named(text: str) -> Word:
    """The word of that name; dash, underscore and space are one. Raises Refused."""
    name = "-".join(text.replace("_", " ").replace("-", " ").lower().split())
    if name in WORDS:
        return WORDS[name]
    remedy = did_you_mean(name, list(WORDS))
    raise Refused(Mistake(text[:40], "this is no word of the log.", remedy), about=ABOUT)


def entry_from_words(word: str, told: Sequence[str], head: Head, plan: Plan | None = None) -> Entry:
    """The entry that `word` and its `key=value` tell. Raises Refused with every mistake."""
    mistakes: list[Mistake] = []
    try:
        known = word_named(word)
    except Refused as refusal:
        mistakes.extend(refusal.mistakes)
        known = Word("", "")
    raw: dict[str, Plain] = {}
    for each in told:
        key, equals, text = each.partition("=")
        key = key.strip().replace("-", "_").lower()
        if not equals:
            mistakes.append(Mistake(each[:40], "this is no key=value.", _such(known)))
        elif key in raw:
            mistakes.append(Mistake(key, "it is told twice.", "Keep one of the two."))
        else:
            raw[key] = text.strip()
    about: dict[str, Plain] = {}
    if known.name:
        about, wrong = checked(known, typed(known, raw), Ids.of(plan, typed=True), ())
        mistakes += wrong
    if mistakes:
        raise Refused(*mistakes, about=ABOUT)
    return Entry(
        head.id, head.job, known.name, head.at, head.who, head.device, head.number, head.era, about
    )


def entries_from_text(text: str, plan: Plan | None = None) -> tuple[Entry, ...]:
    """The entries in a text: one JSON object, a list of them, or JSON lines. Raises Refused."""
    stripped = text.strip()
    if not stripped:
        raise Refused(Mistake("", "there is nothing in it.", "One JSON object is an entry."))
    try:
        parsed = json_text.parse(stripped, about=ABOUT)
    except Refused:
        lines = [line for line in stripped.splitlines() if line.strip()]
        if len(lines) == 1 or not stripped.startswith("{"):
            raise
        return _from_lines(lines, plan)
    if parsed.mistakes:
        raise Refused(*parsed.mistakes, about=ABOUT)
    return entries_from(parsed.data, plan)


def entries_from(data: object, plan: Plan | None = None) -> tuple[Entry, ...]:
    """The entries in plain values: one object or a list of them. Raises Refused."""
    many = data if isinstance(data, list) else [data]
    found: list[Entry] = []
    mistakes: list[Mistake] = []
    ids = Ids.of(plan)
    for number, one in enumerate(many):
        place: Place = (number,) if isinstance(data, list) else ()
        entry, wrong = _entry(one, ids, place)
        mistakes += wrong
        found += [entry] if entry is not None else []
    if mistakes:
        raise Refused(*mistakes, about=ABOUT)
    return tuple(found)


def entry_to_dict(entry: Entry) -> dict[str, Plain]:
    """The entry as plain JSON values."""
    return {
        key: plain(dict(value) if isinstance(value, Mapping) else value)
        for key, value in ((key, getattr(entry, key)) for key in _KEYS)
    }


def entry_to_line(entry: Entry) -> str:
    """The entry as one line of JSON, without its end."""
    return json.dumps(entry_to_dict(entry), ensure_ascii=False, allow_nan=False)


def _such(word: Word) -> str:
    example = next((one.key for one in word.carried), "note")
    return f"Write key=value, such as {example}=…"


def _from_lines(lines: Sequence[str], plan: Plan | None) -> tuple[Entry, ...]:
    found: list[Entry] = []
    mistakes: list[Mistake] = []
    ids = Ids.of(plan)
    for number, line in enumerate(lines, 1):
        where = f"line {number}"
        try:
            parsed = json_text.parse(line, about=ABOUT)
        except Refused as refusal:
            mistakes += [Mistake(f"{where}: {m.where}", m.what, m.remedy) for m in refusal.mistakes]
            continue
        mistakes += [Mistake(f"{where}: {m.where}", m.what, m.remedy) for m in parsed.mistakes]
        entry, wrong = _entry(parsed.data, ids, (where,))
        mistakes += [] if parsed.mistakes else wrong
        found += [entry] if entry is not None else []
    if mistakes:
        raise Refused(*mistakes, about=ABOUT)
    return tuple(found)


def _entry(raw: object, ids: Ids, place: Place) -> tuple[Entry | None, list[Mistake]]:
    where = place_text(place)
    if not isinstance(raw, dict):
        what = f"an entry is an object, not {shown(raw)}."
        return None, [Mistake(where, what, 'Such as {"id": …, "job": …, "word": …, "at": …}.')]
    mistakes = list(_head_mistakes(raw, place))
    name = raw.get("word")
    known: Word | None = None
    if isinstance(name, str) and name:
        try:
            known = word_named(name)
        except Refused as refusal:
            wrong = refusal.mistakes[0]
            mistakes.append(Mistake(place_text((*place, "word")), wrong.what, wrong.remedy))
    about_raw = raw.get("about", {})
    about: dict[str, Plain] = {}
    if not isinstance(about_raw, dict):
        what = f"an object is expected here, not {shown(about_raw)}."
        mistakes.append(Mistake(place_text((*place, "about")), what, "Write { … }."))
    elif known is not None:
        about, wrong_here = checked(known, dict(about_raw), ids, (*place, "about"))
        mistakes += wrong_here
    if mistakes or known is None:
        return None, mistakes
    values = {key: raw[key] for key in _KEYS if key in raw and key not in {"word", "about"}}
    return Entry(word=known.name, about=about, **values), []


def _head_mistakes(raw: Mapping[str, Any], place: Place) -> Iterator[Mistake]:
    here = place_text(place)
    for key in raw:
        if key not in _KEYS:
            what = f"`{str(key)[:40]}` is not a key here."
            yield Mistake(here, what, did_you_mean(str(key), [*_KEYS]))
    for key in _MUST:
        if key not in raw:
            yield Mistake(here, f"`{key}` is missing.", "Add it.")
    for key in _TEXTS:
        if key in raw:
            yield from _text_mistakes(raw[key], place_text((*place, key)), empty=key not in _MUST)
    for key in _COUNTS:
        yield from _count_mistakes(raw.get(key, 0), place_text((*place, key)))
    version = raw.get("version", 0)
    if isinstance(version, int) and version > LOG_VERSION:
        what = f"it was written by a later Farwall ({version})."
        yield Mistake(place_text((*place, "version")), what, "Use that one.")
    at = raw.get("at")
    if isinstance(at, str) and at and not is_moment(at):
        remedy = "Such as 2026-05-14T09:12:00-06:00, with the offset."
        yield Mistake(place_text((*place, "at")), f"{shown(at)} is no moment.", remedy)


def _text_mistakes(value: object, there: str, *, empty: bool) -> Iterator[Mistake]:
    if not isinstance(value, str):
        yield Mistake(there, f"text is expected here, not {shown(value)}.", "Put it in quotes.")
    elif len(value) > _LONGEST:
        yield Mistake(there, f"this text is too long: at most {_LONGEST} characters.")
    elif not value and not empty:
        yield Mistake(there, "this text is empty.", "Give it at least one letter.")


def _count_mistakes(value: object, there: str) -> Iterator[Mistake]:
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value < 2**63:
        what = f"a whole number from 0 on is expected here, not {shown(value)}."
        yield Mistake(there, what, "Write a whole number.")


def is_moment(text: str) -> bool:
    """Whether the text is ISO 8601 with an offset."""
    try:
        return datetime.fromisoformat(text).tzinfo is not None
    except ValueError:
        return False
