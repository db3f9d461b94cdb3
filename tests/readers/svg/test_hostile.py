"""Spoilt and hostile SVG: a calm refusal, or a reading with a word for what was left."""

import gzip

import pytest

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.svg.walk import MOST_DRAWN

HEAD = (
    b'<svg xmlns="http://www.w3.org/2000/svg" xmlns:x="http://www.w3.org/1999/xlink" '
    b'width="100mm" height="100mm" viewBox="0 0 100 100">'
)
LINE = b'<path d="M0 0L9 9" stroke="#000"/>'


def page(inner: bytes) -> bytes:
    return HEAD + inner + b"</svg>"


def told(data: bytes) -> str:
    reading = read_bytes(data)
    return " ".join(note.what for note in (*reading.left, *reading.asks))


def doubling() -> bytes:
    """Symbols that set ten of the next: a thousand million lines, counted out."""
    levels = [
        b'<g id="u%d">%s</g>' % (level, b'<use x:href="#u%d"/>' % (level + 1) * 10)
        for level in range(9)
    ]
    return page(b"<defs>%s</defs>%s" % (b"".join(levels), b'<use href="#u0"/>'))


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"<svg>\x00\x00</svg>", "broken"),
        (HEAD + LINE, "broken"),
        (page(b"<g>" * 3_000_000), "nested more than"),
        (page(b"<g>" * 300_000 + b"</g>" * 300_000), "nested more than"),
        (page(LINE * 210_000), "elements"),
        (b'<!DOCTYPE svg [<!ENTITY a "aa">]>' + page(b"<text>&a;</text>"), "entities"),
        (b'<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///x">]>' + page(b"&a;"), "entities"),
        (page(b'<path stroke="#000" d="M0 0' + b"l1 1" * 210_000 + b'"/>'), "pieces of lines"),
        (page(b'<path stroke="#000" d="M0 0' + b"c1 1 2 2 3 3" * 20_000 + b'"/>'), "pieces of"),
        (doubling(), f"{MOST_DRAWN:,} things"),
        (gzip.compress(page(LINE)), "compressed"),
    ],
)
def test_what_cannot_be_read_is_refused_calmly(data: bytes, words: str) -> None:
    with pytest.raises(Refused, match=words):
        read_bytes(data)


@pytest.mark.parametrize(
    ("inner", "words"),
    [
        (b'<g id="a"><use href="#a"/></g>', "holds itself"),
        (b'<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>', "holds itself"),
        (b'<use href="#nowhere"/>', "not in the file"),
        (b'<use href="other.svg#x"/>', "other.svg"),
        (b'<style>@import url("http://x.example/y.css");</style>', "y.css"),
        (b"<style>g > path {fill:red}</style>", "style sheet"),
        (b'<path stroke="#000" d="NaN"/>', "could not be read"),
        (b'<line x1="NaN" y2="inf" stroke="#000"/>', "could not be read"),
        (b'<rect x="1e400" width="1" height="1" stroke="red"/>', "could not be read"),
        (b'<path stroke="#000" d="M0 0L1e300 1e300"/>', "could not be read"),
        (b'<g transform="rotate(foo)"><path stroke="#000" d="M0 0L1 1"/></g>', "frame"),
        (b'<svg width="1e400" viewBox="0 0 1 1"/>', "frame"),
        (b"<foreignObject/>", "foreign content"),
    ],
)
def test_what_is_passed_over_is_told(inner: bytes, words: str) -> None:
    assert words in told(page(inner))


@pytest.mark.parametrize(
    "data",
    [
        page(b""),
        b"<svg/>",
        b'<svg viewBox="0 0 -5 nan" width="-3mm" height="0"><line x2="3" stroke="#000"/></svg>',
        page(b"<text>" + b"<tspan>" * 100 + b"x" + b"</tspan>" * 100 + b"</text>"),
        page(b'<path stroke="#000" d="M0 0A1e200 1e-200 0 0 1 3 4"/>'),
        page(b'<rect width="5" height="5" rx="1e9" stroke="#000"/>'),
        page(b"<style>" + b".a{stroke:#000}" * 20_000 + b"</style>" + LINE),
        ("<?xml version='1.0' encoding='utf-16'?>" + page(LINE).decode()).encode("utf-16"),
    ],
)
def test_an_odd_page_without_a_floor_asks_to_be_traced(data: bytes) -> None:
    assert "tracing" in {note.code for note in read_bytes(data).asks}
