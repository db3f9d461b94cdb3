"""Canonical JSON after RFC 8785, held to the RFC's own samples and to another implementation."""

from __future__ import annotations

import json
import math
import struct

import pytest
import rfc8785
from hypothesis import given
from hypothesis import strategies as st

from farwall.spray.check.canonical import NotCanonical, canonical, number_text, sha256_hex

whole = st.integers(-(2**53) + 1, 2**53 - 1)
text = st.text(st.characters(exclude_categories=["Cs"]))
values = st.recursive(
    st.none() | st.booleans() | whole | st.floats(allow_nan=False, allow_infinity=False) | text,
    lambda inner: st.lists(inner) | st.dictionaries(text, inner),
)


@given(values)
def test_canonical_json_agrees_with_an_implementation_that_is_not_ours(value):
    assert canonical(value) == rfc8785.dumps(value)


@pytest.mark.parametrize(
    ("bits", "written"),
    [
        ("0000000000000000", "0"),
        ("8000000000000000", "0"),
        ("0000000000000001", "5e-324"),
        ("8000000000000001", "-5e-324"),
        ("7fefffffffffffff", "1.7976931348623157e+308"),
        ("4340000000000000", "9007199254740992"),
        ("4430000000000000", "295147905179352830000"),
        ("44b52d02c7e14af5", "9.999999999999997e+22"),
        ("44b52d02c7e14af6", "1e+23"),
        ("444b1ae4d6e2ef4e", "999999999999999700000"),
        ("444b1ae4d6e2ef50", "1e+21"),
        ("3eb0c6f7a0b5ed8c", "9.999999999999997e-7"),
        ("3eb0c6f7a0b5ed8d", "0.000001"),
        ("41b3de4355555553", "333333333.3333332"),
        ("becbf647612f3696", "-0.0000033333333333333333"),
        ("43143ff3c1cb0959", "1424953923781206.2"),
    ],
)
def test_numbers_rfc8785_appendix_b(bits, written):
    """Bits of a double beside its text; exact, for a hash forgives nothing."""
    assert number_text(struct.unpack(">d", bytes.fromhex(bits))[0]) == written


def test_sorting_rfc8785_section_3_2_3():
    """Keys in the order of their UTF-16 code units: an emoji sorts before a letter above it."""
    keys = ["\u20ac", "\r", "\ufb33", "1", "\U0001f600", "\u0080", "\u00f6"]
    wanted = ["\r", "1", "\u0080", "\u00f6", "\u20ac", "\U0001f600", "\ufb33"]
    assert list(json.loads(canonical(dict.fromkeys(keys, 0)))) == wanted


def test_a_whole_float_is_written_like_an_integer():
    assert canonical({"b": 1.0, "a": [1e21, 1e20, 0.1]}) == (
        b'{"a":[1e+21,100000000000000000000,0.1],"b":1}'
    )


def test_the_hash_of_an_empty_object_by_hand():
    """SHA-256 of the two bytes {} is a printed value of every test of the hash."""
    assert sha256_hex({}) == "44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a"


@pytest.mark.parametrize(
    "value", [math.nan, math.inf, -math.inf, "\ud800", {"\udfff": 1}, {1: 2}, object(), 10**400]
)
def test_what_is_no_json_is_refused(value):
    with pytest.raises(NotCanonical):
        canonical([value])


def test_endless_nesting_is_refused_calmly():
    value = []
    for _ in range(100_000):
        value = [value]
    with pytest.raises(NotCanonical, match="deep"):
        canonical(value)
