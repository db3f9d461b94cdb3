"""A reading goes over the wire and comes back the same; whatever is no reading is told as such."""

import json
import math
import types
from dataclasses import fields, is_dataclass
from typing import Any, Literal, get_args, get_origin, get_type_hints

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawings import Manner, drawn
from tests.strategies.floors import House

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.floor.nouns import Floor
from farwall.readers.any_plan import read_bytes
from farwall.readers.apart import wire

NUMBERS = st.floats(allow_nan=False, allow_infinity=False)
TEXTS = st.text(st.characters(codec=None), max_size=6)  # lone halves of a pair too
PLAIN = {str: TEXTS, float: NUMBERS, int: st.integers(), bool: st.booleans()}
SMALL = Reading("DXF", "m", "", 1.0, Floor(()))


def any_of(kind: Any) -> st.SearchStrategy[Any]:
    """Anything of a type that a reading holds."""
    origin, inner = get_origin(kind), get_args(kind)
    if is_dataclass(kind):
        hints = get_type_hints(kind)
        return st.builds(kind, **{one.name: any_of(hints[one.name]) for one in fields(kind)})
    if origin is tuple and inner[1:] == (Ellipsis,):
        return st.lists(any_of(inner[0]), max_size=3).map(tuple)
    if origin is tuple:
        return st.tuples(*map(any_of, inner))
    if origin is dict:
        return st.dictionaries(any_of(inner[0]), any_of(inner[1]), max_size=3)
    if origin is Literal:
        return st.sampled_from(inner)
    if origin is types.UnionType:
        return st.one_of(*(st.none() if one is types.NoneType else any_of(one) for one in inner))
    return PLAIN[kind]


def exactly(value: Any) -> Any:
    """The value with its types and the sign of its zeros, to be compared."""
    if is_dataclass(value):
        return [(one.name, exactly(getattr(value, one.name))) for one in fields(value)]
    if isinstance(value, dict):
        return [(key, exactly(item)) for key, item in value.items()]
    if isinstance(value, tuple):
        return tuple(map(exactly, value))
    return type(value), repr(value)


@given(any_of(Reading))
def test_any_reading_comes_back_the_same(reading: Reading) -> None:
    back = wire.answer_in(wire.reading_text(reading))
    assert back == reading
    assert exactly(back) == exactly(reading)


def test_a_drawn_house_comes_back_the_same() -> None:
    reading = read_bytes(drawn(House((4.0, 3.0), (3.0,), 0.1, ()), Manner(sizes=True)))
    assert len(reading.floor.rooms) == 2
    assert exactly(wire.answer_in(wire.reading_text(reading))) == exactly(reading)


@given(st.lists(st.builds(Mistake, TEXTS, TEXTS, TEXTS), max_size=3), TEXTS)
def test_any_refusal_comes_back_the_same(mistakes: list[Mistake], about: str) -> None:
    back = wire.answer_in(wire.refusal_text(Refused(*mistakes, about=about)))
    assert isinstance(back, Refused)
    assert (tuple(back.mistakes), back.about) == (tuple(mistakes), about)


def test_what_broke_comes_back_as_its_word() -> None:
    assert wire.answer_in(wire.broken_text("KeyError at read.py:3")) == "KeyError at read.py:3"


@pytest.mark.parametrize("number", [math.nan, math.inf, -math.inf])
def test_a_number_that_is_none_is_not_sent(number: float) -> None:
    with pytest.raises(ValueError, match="not JSON compliant"):
        wire.reading_text(Reading("DXF", "m", "", number, Floor(())))


def changed(**new: object) -> bytes:
    told = json.loads(wire.reading_text(SMALL))
    return json.dumps({"reading": told["reading"] | new}).encode()


@pytest.mark.parametrize(
    "text",
    [
        b"",
        b"nothing",
        b"[]",
        b"{}",
        b"1",
        b'{"reading":{}}',
        b'{"reading":null}',
        b'{"refused":{}}',
        b'{"refused":{"about":"","mistakes":[["a","b"]]}}',
        b'{"refused":[]}',
        b'{"broke":3}',
        b'{"other":{}}',
        b"[" * 100_000,
        b'{"broke":"' + b"[" * (wire.MOST_BRACKETS + 1) + b'"}',
        b'{"broke":"' + b" " * wire.MOST_ANSWER_BYTES + b'"}',
        changed(more=1),
        changed(format=None),
        changed(scale_m_per_unit=True),
        changed(scale_m_per_unit=math.nan),
        changed(scale_m_per_unit="1"),
        changed(mended={}),
        changed(mended=[{"code": "a", "what": "b", "where": [1.0], "shape": None}]),
        changed(mended=[{"code": "a", "what": "b", "where": [1.0, 2.0, 3.0], "shape": None}]),
        changed(stated={"a": {"area_m2": 1.0, "kind": "made-up", "text": ""}}),
        changed(stated=[]),
        changed(exits=[["a", "b"]]),
        changed(ceilings_m={"a": "high"}),
        changed(scale_m_per_unit=12345).replace(b"12345", b"1e999"),
    ],
)  # fmt: skip
def test_what_is_no_answer_is_unsound(text: bytes) -> None:
    with pytest.raises(wire.Unsound):
        wire.answer_in(text)


def test_a_sound_change_is_taken() -> None:
    """So that the row of unsound ones fails for its own reasons."""
    back = wire.answer_in(
        changed(mended=[{"code": "a", "what": "b", "where": [1.0, 2], "shape": None}])
    )
    assert isinstance(back, Reading)
    assert back.mended == (Note("a", "b", (1.0, 2)),)
