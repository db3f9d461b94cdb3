"""Entries, facts and documents as canonical JSON (RFC 8785), and the hash of a row.

Canonical JSON knows one kind of number: 3.0 comes back as 3, which is the same number.
"""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Mapping
from dataclasses import fields
from datetime import datetime
from typing import Any, cast

import rfc8785

from farwall.errors import Mistake, Refused
from farwall.facts.log import Entry
from farwall.facts.plain import plain

_LARGEST_WHOLE = 2**53 - 1
_LIST = json.JSONEncoder(ensure_ascii=False, separators=(",", ":"))
_KEYS = {one.name for one in fields(Entry)}
_CONTROL = re.compile("[\x00-\x1f\x7f-\x9f\ud800-\udfff]")
LONGEST_ID = 200
MOST_BYTES = 50_000_000


def canonical(value: object, *, where: str) -> str:
    """The value as canonical JSON; raises Refused when JSON has no word for it or it is huge."""
    try:
        text = rfc8785.dumps(cast("Any", value)).decode()
    except (ValueError, RecursionError) as error:
        raise Refused(
            Mistake(where, f"cannot be written as JSON ({error}).", "Mend that value.")
        ) from None
    if len(text) > MOST_BYTES:
        raise Refused(Mistake(where, f"is larger than {MOST_BYTES // 1_000_000} MB of JSON."))
    return text


def values(text: str) -> dict[str, Any]:
    """A JSON object as plain values; a whole number beyond 2⁵³ is a float, as it was written."""
    found = json.loads(text, parse_int=_whole)
    if not isinstance(found, dict):
        raise ValueError("an object is expected")
    return found


def _whole(text: str) -> int | float:
    whole = int(text)
    return whole if abs(whole) <= _LARGEST_WHOLE else float(text)


def entry_values(entry: Entry) -> dict[str, Any]:
    """An entry as plain JSON values, keys in the order of the noun."""
    return cast("dict[str, Any]", plain(entry))


def entry_from(found: Mapping[str, Any]) -> Entry:
    """The entry in plain values; raises Refused for a key that an entry of ours does not have."""
    if unknown := sorted(found.keys() - _KEYS):
        what = f"carries {', '.join(unknown)}, which this Farwall does not know."
        raise Refused(Mistake(f"entry {found.get('id')}", what, "Use a later one."))
    return Entry(**found)


def entry_text(entry: Entry) -> str:
    """The canonical JSON of an entry; two entries are the same when this is."""
    try:
        found = entry_values(entry)
    except TypeError as error:
        raise Refused(Mistake(f"entry {entry.id}", f"{error}.")) from None
    return canonical(found, where=f"entry {entry.id}")


def row_hash(*parts: str | int) -> str:
    """SHA-256 of a row: the canonical JSON of a list of all that it says, in this order."""
    # Of texts and whole numbers the standard library writes the same, ten times as fast.
    return hashlib.sha256(_LIST.encode(parts).encode()).hexdigest()


def instant(text: str) -> datetime:
    """The instant of an ISO 8601 text with offset; raises ValueError for anything else."""
    found = datetime.fromisoformat(text)
    if found.tzinfo is None:
        raise ValueError("it names no offset from UTC")
    return found


def time_mistakes(where: str, text: str) -> list[Mistake]:
    """What is wrong with a time that goes into the book."""
    try:
        instant(text)
    except ValueError:
        example = "Write it so: 2026-05-04T07:00:00-05:00."
        return [Mistake(where, f"“{text[:60]}” is no time with its offset.", example)]
    return []


def id_mistakes(where: str, text: str) -> list[Mistake]:
    """What is wrong with an id that goes into the book."""
    if not text or len(text) > LONGEST_ID:
        return [Mistake(where, f"an id has 1 to {LONGEST_ID} characters.", "Choose another.")]
    if not text.isprintable() or text != text.strip():
        return [Mistake(where, f"the id {text!a} cannot be printed.", "Choose another.")]
    return []


def text_mistakes(where: str, text: str) -> list[Mistake]:
    """What is wrong with a name that goes into the book; it may be empty."""
    if len(text) > LONGEST_ID or _CONTROL.search(text):
        what = f"is longer than {LONGEST_ID} characters, or holds one that is no letter."
        return [Mistake(where, what, "Shorten or mend it.")]
    return []
