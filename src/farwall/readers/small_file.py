"""A small file of one noun, judged: twins converted, unknown keys named, every mistake at once."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import TYPE_CHECKING, Any, TypeVar

from farwall.errors import Mistake, Refused
from farwall.readers.json_text import Place, place_text
from farwall.readers.shape import did_you_mean, entries, keys_of
from farwall.readers.twins import TWINS, Twin, convert
from farwall.readers.wording import in_words, shown

if TYPE_CHECKING:
    from pydantic import TypeAdapter

T = TypeVar("T")


def judged(
    data: dict[str, Any], noun: type[T], adapter: TypeAdapter[T], *, newest: int
) -> tuple[T | None, list[Mistake]]:
    """The noun in plain values, None where it is none, and every mistake in them.

    newest: the latest version of such files that is known here.
    """
    from pydantic import ValidationError

    raw = json.loads(json.dumps(data))
    mistakes: list[Mistake] = []
    written: dict[Place, tuple[Place, Twin]] = {}
    for entry in list(entries(raw, noun)):
        doubled, there = convert(entry)
        mistakes += doubled
        written |= there
        known = list(keys_of(entry.noun))
        for key in [key for key in entry.values if key not in known]:
            del entry.values[key]
            spellings = known + [twin.other for twin in TWINS.get(entry.noun, ())]
            what = f"`{shown(key).strip(chr(34))}` is not a key here."
            mistakes.append(Mistake(place_text(entry.place), what, did_you_mean(key, spellings)))
    version = raw.get("version", newest)
    if isinstance(version, int) and version > newest:
        what = f"it was written by a later Farwall (version {version})."
        mistakes.append(Mistake("version", what, "Use that Farwall."))
    try:
        return adapter.validate_json(json.dumps(raw), strict=True), mistakes
    except ValidationError as error:
        return None, [*mistakes, *in_words(error.errors(include_url=False), written)]


def of_object(
    data: Any,
    noun: type[T],
    adapter: TypeAdapter[T],
    *,
    newest: int,
    about: str,
    sense: Callable[[T], list[Mistake]],
) -> T:
    """The noun in plain values that have to be an object. Raises Refused with every mistake.

    about: what the refusal says first. sense: the mistakes that no schema sees, of a noun whose
    every value is one.
    """
    if not isinstance(data, dict):
        raise Refused(Mistake("", f"It is an object, not {shown(data)}."), about=about)
    read = judged(data, noun, adapter, newest=newest)
    found, mistakes = read
    if found is not None:
        mistakes += sense(found)
    if mistakes or found is None:
        raise Refused(*mistakes, about=about)
    return found
