"""The JSON of the book, and the hash of a row."""

import hashlib

import pytest
import rfc8785
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.store.canonical import canonical, instant, row_hash, values

TEXT = st.text(st.characters(exclude_categories=["Cs"]))
WHOLE = st.integers(-(2**53) + 1, 2**53 - 1)


@given(st.lists(TEXT | WHOLE, max_size=8))
def test_the_hash_of_a_row_is_that_of_its_canonical_json(parts):
    assert row_hash(*parts) == hashlib.sha256(rfc8785.dumps(parts)).hexdigest()


def test_the_hash_of_a_row_by_hand():
    """The text hashed is [1,"a\\u0007\\"b"], written out here."""
    assert row_hash(1, 'a\x07"b') == hashlib.sha256(b'[1,"a\\u0007\\"b"]').hexdigest()


@given(st.dictionaries(TEXT, st.floats(allow_nan=False, allow_infinity=False) | WHOLE | TEXT))
def test_canonical_text_read_and_written_again_is_the_same(value):
    text = canonical(value, where="it")
    assert values(text) == value
    assert canonical(values(text), where="it") == text


@pytest.mark.parametrize("value", [float("inf"), 2**60, "\ud800", {1: 2}])
def test_what_json_has_no_word_for_is_refused(value):
    with pytest.raises(Refused, match="cannot be written as JSON"):
        canonical({"a": value}, where="it")


@pytest.mark.parametrize("text", ["2026-05-04", "2026-05-04T07:00:00", "soon", ""])
def test_a_time_without_its_offset_is_none(text):
    with pytest.raises(ValueError, match=r"offset|Invalid"):
        instant(text)
