"""Our own SVG after another program had it: read exactly, or refused with what was changed."""

import pytest
from tests.shapes import TWO_ROOMS

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.papers.exchange.files import SVG, exchange_files
from farwall.readers.any_plan import read_bytes

READING = Reading("SVG", "m", "m", 1.0, TWO_ROOMS.floor, TWO_ROOMS.exits)
DATA = exchange_files(READING)[SVG]


def test_it_comes_back_whatever_was_drawn_beside_it() -> None:
    beside = DATA.replace(b"</svg>", b'<path d="M0,0 1,1"/><g><text>Sofa</text></g></svg>')
    assert read_bytes(beside).floor == READING.floor


@pytest.mark.parametrize(
    ("old", "new", "what"),
    [
        (b'd="M', b'd="m', "the path of room"),
        (b'<path d="M', b'<path transform="scale(2)" d="M', "the path of room"),
        (b"data-farwall=", b"data-farwall='x' data-old=", "words for the whole floor are gone"),
        (b"</svg>", b"", "no sound XML"),
        (b"<svg", b'<!DOCTYPE svg [<!ENTITY a "b">]><svg', "names entities"),
        (b'"kind":"opening"', b'"kind":"lake"', "lake"),
    ],
)
def test_what_was_changed_is_told(old: bytes, new: bytes, what: str) -> None:
    spoilt = DATA.replace(old.replace(b'"kind"', b"&quot;kind&quot;"), new, 1)
    if spoilt == DATA:
        spoilt = DATA.replace(old, new, 1)
    assert spoilt != DATA
    with pytest.raises(Refused) as refusal:
        read_bytes(spoilt, name="floor.svg")
    assert what in str(refusal.value)
    assert "again" in str(refusal.value) or "There are" in str(refusal.value)


def test_what_was_taken_out_since_is_told() -> None:
    """The way out taken away by hand: its floor is read, and a word says that something is gone."""
    start = DATA.index(b"<path", DATA.index(b'id="ways-out"'))
    reading = read_bytes(DATA[:start] + DATA[DATA.index(b"/>", start) + 2 :])
    assert (reading.floor, reading.exits) == (READING.floor, ())
    assert [note.code for note in reading.left] == ["changed-since-export"]


def test_it_takes_no_other_scale() -> None:
    with pytest.raises(Refused, match="one unit of it is a metre"):
        read_bytes(DATA, scale_m_per_unit=0.3)
    assert read_bytes(DATA, scale_m_per_unit=1.0).floor == READING.floor
