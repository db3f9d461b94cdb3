"""Plain lines are taken out of a file as they stand, the rest is left for the library."""

from math import ulp

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.dxf.bulk import Loose, taken_out, tidied

HEAD, TAIL = b"  0\nSECTION\n  2\nENTITIES\n", b"  0\nENDSEC\n  0\nEOF\n"
ENDS = b" 10\n1.5\n 20\n-0.0\n 11\n4.25\n 21\n3\n"
MADE = ((1.5, 0.0), (4.25, 3.0))


def line(more: bytes = b"", ends: bytes = ENDS) -> bytes:
    return b"  0\nLINE\n  8\nWALLS \n" + more + ends


def test_a_line_with_its_layer_and_line_type() -> None:
    bulk = taken_out(HEAD + line() + line(b"  6\nDASHED\n") + TAIL)
    assert bulk.lines[""] == [Loose(b"WALLS", b"", MADE), Loose(b"WALLS", b"DASHED", MADE)]
    assert bulk.rest == HEAD + TAIL


def test_of_a_code_that_is_there_twice_the_last_holds() -> None:
    bulk = taken_out(HEAD + line(ends=b" 10\n9\n" + ENDS) + TAIL)
    assert bulk.lines[""] == [Loose(b"WALLS", b"", MADE)]


@pytest.mark.parametrize("more", [b" 67\n1\n", b"1001\nFARWALL\n"])
def test_a_line_of_the_paper_or_with_our_mark_is_left_in_the_file(more: bytes) -> None:
    data = HEAD + line(more) + TAIL
    assert taken_out(data).rest == data


def test_a_line_that_is_not_shown_is_taken_out_and_not_kept() -> None:
    bulk = taken_out(HEAD + line(b" 60\n1\n") + TAIL)
    assert (bulk.rest, bulk.lines) == (HEAD + TAIL, {})


@pytest.mark.parametrize("x", [b"nan", b"1e12", b"inf", b"4,25", b""])
def test_a_spoilt_line_is_counted(x: bytes) -> None:
    bulk = taken_out(HEAD + line() + line(ends=ENDS.replace(b"4.25", x)) + TAIL)
    assert (bulk.count, bulk.spoilt["LINE"]) == (1, 1)


@given(st.floats(-8e6, 8e6))
def test_coordinates_are_rounded_to_nine_decimals(value: float) -> None:
    """As `round` does it, but where the tenth stands in the middle: there to one of both sides."""
    assert tidied(value) == pytest.approx(round(value, 9), abs=1e-9 + 2 * ulp(value), rel=0)
    assert str(tidied(-0.0)) == "0.0"


@given(st.integers(-(10**15), 10**15))
def test_what_has_nine_decimals_keeps_them(billionths: int) -> None:
    value = billionths / 1e9
    assert tidied(value) == value


@given(st.floats(8e6, 1e11))
def test_far_coordinates_stay_as_they_are(value: float) -> None:
    assert (tidied(value), tidied(-value)) == (value, -value)
