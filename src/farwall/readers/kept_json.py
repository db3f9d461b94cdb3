"""An entry as a log keeps it, to plain values and back: one form for files and for the door."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.facts.log import Kept
from farwall.readers.log_json import entries_from, entry_to_dict


def kept_to_dict(kept: Kept) -> dict[str, Any]:
    """The entry with its place, when it came, and how far its device's clock is off."""
    return {
        "entry": entry_to_dict(kept.entry),
        "place": kept.place,
        "received_at": kept.received_at,
        "clock_off_s": kept.clock_off_s,
    }


def kept_from(data: object) -> Kept:
    """The same again. Raises Refused with every mistake in it."""
    if not isinstance(data, Mapping):
        raise Refused(Mistake("", "it is an object.", "It holds an entry and its place."))
    entry = entries_from(data.get("entry"))[0]
    place, off, received = data.get("place"), data.get("clock_off_s"), data.get("received_at")
    mistakes = []
    if not isinstance(place, int) or isinstance(place, bool):
        mistakes.append(Mistake("place", "it is a count.", ""))
    if not isinstance(off, float | int | None) or isinstance(off, bool):
        mistakes.append(Mistake("clock_off_s", "it is a number, or null.", ""))
    if not isinstance(received, str):
        mistakes.append(Mistake("received_at", "it is a moment, ISO 8601.", ""))
    if mistakes:
        raise Refused(*mistakes)
    assert isinstance(place, int)
    assert isinstance(received, str)
    return Kept(entry, place, received, None if off is None else float(off))
