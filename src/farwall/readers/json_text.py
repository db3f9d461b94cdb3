"""JSON text to plain values, with every fault of the text named by its place.

Stricter than the standard library: no key twice, no NaN or Infinity, no
number beyond a float, no characters that cannot be printed, no nesting that
only an accident (or an attack) makes.
"""

from __future__ import annotations

import codecs
import json
import math
import re
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

Place = tuple[str | int, ...]

MOST_BYTES = 50_000_000
DEEPEST = 60
LONGEST_TEXT = 20_000

# C0 controls but tab and line ends, DEL, lone surrogates, the two non-characters XML refuses.
_UNPRINTABLE = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff\ufffe\uffff]")


@dataclass(frozen=True)
class JsonText:
    """Parsed values with the faults found in them; faulty values are replaced by None."""

    data: object
    mistakes: tuple[Mistake, ...]
    spoilt: frozenset[Place]


class _Object(dict[str, object]):
    """A JSON object that remembers which keys its text held twice."""

    doubled: tuple[str, ...] = ()


def place_text(place: Place) -> str:
    """A place as people write it: `floor.rooms[2].polygon`."""
    text = ""
    for step in place:
        if isinstance(step, int):
            text += f"[{step}]"
        else:
            word = step if len(step) <= 60 else f"{step[:60]}…"
            text += f".{word}" if text else word
    return text


def read_text(path: Path) -> str:
    """The text of a JSON file; Refused when it is not there, not text or far too big.

    UTF-8; UTF-16 or UTF-32, as some editors save it, is known by where its zeros stand, also
    without a byte-order mark.
    """
    about = f"{path.name} cannot be read."
    raw = _bytes(path, about)
    try:
        return raw.decode(
            "utf-8-sig" if raw.startswith(codecs.BOM_UTF8) else json.detect_encoding(raw)
        )
    except UnicodeDecodeError as error:
        why = Mistake(f"byte {error.start}", "This is not UTF-8 text.", "Save it as UTF-8 JSON.")
        raise Refused(why, about=about) from None


def read_table_text(path: Path) -> str:
    """The text of a table as spreadsheets save it; Refused when it is not there or far too big.

    UTF-8, UTF-16 with its mark, else the Western code page, of which a table of weather has no more
    than a degree sign.
    """
    raw = _bytes(path, f"{path.name} cannot be read.")
    if raw[:2] in {b"\xff\xfe", b"\xfe\xff"}:
        return raw.decode("utf-16", errors="replace")
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError:
        return raw.decode("cp1252", errors="replace")


def _bytes(path: Path, about: str) -> bytes:
    try:
        if path.stat().st_size > MOST_BYTES:
            size = Mistake("", f"It is larger than {MOST_BYTES // 1_000_000} MB.", "Is it a job?")
            raise Refused(size, about=about)
        return path.read_bytes()
    except IsADirectoryError:
        raise Refused(Mistake("", "This is a folder.", _inside(path)), about=about) from None
    except OSError as error:
        why = Mistake("", f"{error.strerror or error}.", "Check the name and the folder.")
        raise Refused(why, about=about) from None


def _inside(folder: Path) -> str:
    """Which file of a folder is meant, as far as that can be told."""
    there = [name for name in ("plan.json", "job.json") if (folder / name).is_file()]
    named = " or ".join(f"{folder.name}/{name}" for name in there)
    return f"Name the file in it: {named}." if there else "Name a file."


def parse(text: str, *, about: str) -> JsonText:
    """The values of a JSON text; Refused when it is not JSON at all."""
    try:
        data = json.loads(text, object_pairs_hook=_object, parse_int=_whole)
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        remedy = "Look for a missing comma, quote or bracket just before this place."
        raise Refused(Mistake(where, f"Not JSON: {error.msg}.", remedy), about=about) from None
    except RecursionError:
        raise Refused(_too_deep(()), about=about) from None
    return inspect(data, about=about)


def inspect(data: object, *, about: str) -> JsonText:
    """Plain values checked for what JSON may not hold; Refused when nested beyond reason."""
    holder: dict[str, object] = {"": data}
    mistakes: list[Mistake] = []
    spoilt: set[Place] = set()
    waiting: list[tuple[Place, object, dict[str, object] | list[object], str | int]]
    waiting = [((), data, holder, "")]
    while waiting:
        place, value, parent, key = waiting.pop()
        if len(place) > DEEPEST:
            raise Refused(_too_deep(place[:3]), about=about)
        found = list(_faults(place, value))
        mistakes += found
        if found and not isinstance(value, dict):
            spoilt.add(place)
            parent[key] = None  # type: ignore[index]
            continue
        if isinstance(value, dict):
            parent[key] = copy = dict(value)  # type: ignore[index]
            waiting += [((*place, k), v, copy, k) for k, v in reversed(value.items())]
        elif isinstance(value, list | tuple):
            parent[key] = row = list(value)  # type: ignore[index]
            waiting += [((*place, i), v, row, i) for i, v in reversed(list(enumerate(value)))]
    return JsonText(holder[""], tuple(mistakes), frozenset(spoilt))


def _faults(place: Place, value: object) -> Iterator[Mistake]:
    where = place_text(place)
    if isinstance(value, float) and not math.isfinite(value):
        yield Mistake(where, "This number is not finite, or too large.", "Write a plain number.")
    elif isinstance(value, str) and (found := _UNPRINTABLE.search(value)):
        code = f"U+{ord(found.group()):04X}"
        yield Mistake(
            where, f"The text holds a character that cannot be printed ({code}).", "Take it out."
        )
    elif isinstance(value, str) and len(value) > LONGEST_TEXT:
        yield Mistake(where, f"The text is {len(value)} characters long.", "Shorten it.")
    elif isinstance(value, dict):
        for key in getattr(value, "doubled", ()):
            yield Mistake(where, f"The key `{key}` is there twice.", "Keep one of the two.")
        for key in value:
            if not isinstance(key, str) or _UNPRINTABLE.search(key):
                yield Mistake(where, f"The key {key!a} cannot be printed.", "Rename it.")
    elif not (value is None or isinstance(value, bool | int | float | str | list | tuple)):
        yield Mistake(where, f"{type(value).__name__} is not a JSON value.", "Use plain JSON.")


def _object(pairs: list[tuple[str, object]]) -> _Object:
    made = _Object(pairs)
    if len(made) < len(pairs):
        counts = Counter(key for key, _ in pairs)
        made.doubled = tuple(key for key, count in counts.items() if count > 1)
    return made


def _whole(text: str) -> int | float:
    # Beyond 18 digits a whole number is no measure of a floor; as a float it is found too large.
    return int(text) if len(text) <= 18 else float(text)


def _too_deep(place: Place) -> Mistake:
    return Mistake(place_text(place), "Nested too deeply for a job.", "Is this the right file?")
