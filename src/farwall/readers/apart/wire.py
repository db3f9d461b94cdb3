"""A reading as JSON text between the two processes, and back, the same to the last bit.

Who answers is not trusted: a hostile file may have taken the reader over. So nothing is unpickled,
the size and the number of brackets are bounded before anything is parsed, and every value has to
be of the type that the nouns name.
"""

from __future__ import annotations

import json
import math
import types
from collections.abc import Callable
from dataclasses import fields, is_dataclass
from functools import cache
from typing import Any, Literal, Union, get_args, get_origin, get_type_hints

from farwall.errors import Mistake, Refused
from farwall.facts.plain import plain
from farwall.facts.reading import Reading
from farwall.readers.apart.limits import MOST_ANSWER_BYTES
from farwall.readers.colour_photo.packed import PackedPhoto
from farwall.readers.floor_photo.nouns import FloorLook, FloorSeen
from farwall.readers.photo.nouns import Shown
from farwall.readers.price_list.noun import ListRead

MOST_BRACKETS = 3_000_000

Decoder = Callable[[Any], Any]


class Unsound(Exception):
    """The answer is no reading: spoilt, or made up by whoever took the reader over."""


def reading_text(reading: Reading) -> bytes:
    """The answer of a reader that read. Raises ValueError where a number is not finite."""
    return _text({"reading": plain(reading)})


def photo_text(shown: Shown) -> bytes:
    """The answer of one that looked at a photo. Raises ValueError for a number not finite."""
    return _text({"photo": plain(shown)})


def prices_text(read: ListRead) -> bytes:
    """The answer of one that read a price list. Raises ValueError for a number not finite."""
    return _text({"prices": plain(read)})


def colours_text(photo: PackedPhoto) -> bytes:
    """The answer of one that read a photo's colours. Raises ValueError for a number not finite."""
    return _text({"colours": plain(photo)})


def floor_text(found: FloorLook | FloorSeen) -> bytes:
    """The answer of one that looked at a floor. Raises ValueError for what is not finite."""
    return _text({"look" if isinstance(found, FloorLook) else "floor": plain(found)})


def refusal_text(refusal: Refused) -> bytes:
    """The answer of a reader that refused."""
    mistakes = [[m.where, m.what, m.remedy] for m in refusal.mistakes]
    return _text({"refused": {"about": refusal.about, "mistakes": mistakes}})


def broken_text(what: str) -> bytes:
    """The answer of a reader that broke; `what` is for whoever mends the reader."""
    return _text({"broke": what})


def _text(answer: object) -> bytes:
    return json.dumps(answer, allow_nan=False, separators=(",", ":")).encode("ascii")


Found = Reading | Shown | ListRead | PackedPhoto | FloorLook | FloorSeen
_KINDS: dict[str, type] = {
    "reading": Reading, "photo": Shown, "prices": ListRead, "colours": PackedPhoto,
    "look": FloorLook, "floor": FloorSeen,
}  # fmt: skip
"""What an answer may hold, by its key."""


def answer_in(text: bytes) -> Found | Refused | str:
    """What a reader answered: reading, photo, prices, colours, floor, refusal, or what it broke on.

    Raises Unsound.
    """
    if len(text) > MOST_ANSWER_BYTES or text.count(b"[") + text.count(b"{") > MOST_BRACKETS:
        raise Unsound("too large")
    try:
        answer = json.loads(text, parse_constant=_no_constant)
    except (ValueError, RecursionError) as error:
        raise Unsound("no JSON") from error
    if not isinstance(answer, dict) or len(answer) != 1:
        raise Unsound("no answer")
    for key, kind in _KINDS.items():
        if key in answer:
            found: Found = _decoder(kind)(answer[key])
            assert isinstance(found, kind)
            return found
    if "refused" in answer:
        return _refused(answer["refused"])
    return str(_plain(str)(answer.get("broke")))[:400]


def _no_constant(name: str) -> float:
    raise Unsound(name)


def _refused(value: Any) -> Refused:
    told = value.get("mistakes") if isinstance(value, dict) else None
    rows = _decoder(tuple[tuple[str, str, str], ...])(told)
    return Refused(*(Mistake(*row) for row in rows), about=_plain(str)(value.get("about")))


@cache
def _decoder(kind: Any) -> Decoder:
    """What makes a value of this type out of plain JSON, or raises Unsound."""
    origin, inner = get_origin(kind), get_args(kind)
    if is_dataclass(kind):
        return _noun(kind)
    if origin is tuple:
        return _row(inner)
    if origin is dict:
        return _table(_decoder(inner[0]), _decoder(inner[1]))
    if origin is Literal:
        return _one_of(inner)
    if origin in (Union, types.UnionType):
        return _either(tuple(inner))
    return _plain(kind)


def _noun(kind: Any) -> Decoder:
    hints = get_type_hints(kind)
    decoders = {entry.name: _decoder(hints[entry.name]) for entry in fields(kind)}

    def decode(value: Any) -> Any:
        if not isinstance(value, dict) or value.keys() != decoders.keys():
            raise Unsound(kind.__name__)
        return kind(**{name: decoder(value[name]) for name, decoder in decoders.items()})

    return decode


def _row(inner: tuple[Any, ...]) -> Decoder:
    if len(inner) == 2 and inner[1] is Ellipsis:
        one = _decoder(inner[0])
        return lambda value: tuple(map(one, _list(value)))
    each = [_decoder(kind) for kind in inner]

    def decode(value: Any) -> Any:
        if len(_list(value)) != len(each):
            raise Unsound("length of a row")
        return tuple(decoder(item) for decoder, item in zip(each, value, strict=True))

    return decode


def _list(value: Any) -> list[Any]:
    if not isinstance(value, list):
        raise Unsound("a row")
    return value


def _table(key: Decoder, entry: Decoder) -> Decoder:
    def decode(value: Any) -> Any:
        if not isinstance(value, dict):
            raise Unsound("a table")
        return {key(k): entry(v) for k, v in value.items()}

    return decode


def _one_of(known: tuple[Any, ...]) -> Decoder:
    def decode(value: Any) -> Any:
        if not isinstance(value, str) or value not in known:
            raise Unsound("a word")
        return value

    return decode


def _either(kinds: tuple[Any, ...]) -> Decoder:
    others = [_decoder(kind) for kind in kinds if kind is not types.NoneType]
    if len(others) != 1 or types.NoneType not in kinds:
        raise TypeError(f"no one way to read {kinds}")
    return lambda value: None if value is None else others[0](value)


def _plain(kind: Any) -> Decoder:
    if kind not in (str, float, int, bool):
        raise TypeError(f"no fact of a reading: {kind}")

    def decode(value: Any) -> Any:
        # A whole number may stand where a float is told, as Python has it; a truth value may not.
        fits = type(value) in ((float, int) if kind is float else (kind,))
        if not fits or (kind is float and not math.isfinite(value)):
            raise Unsound(f"no {kind.__name__}")
        return value

    return decode
