"""Spoilt, locked and hostile PDF: a calm refusal, or a reading with words."""

import zlib

import pytest
from tests.pages import Look, file_of, pdf_file, stream

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.hints import Hints
from farwall.readers.pdf.read import is_scan, read_pdf

CATALOG = b"<< /Type /Catalog /Pages 2 0 R >>"
PAGES = b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>"
LINES = b"".join(b"%d 10 m %d 300 l S " % (x, x) for x in range(20, 100, 8))


def page(paint: bytes, count: int = 1) -> bytes:
    return pdf_file([(paint, (500.0, 400.0))] * count, Look())


def raw(given: bytes, **more: bytes) -> bytes:
    objects = {1: CATALOG, 2: PAGES, 3: b"<< /Type /Page /Parent 2 0 R " + given + b" >>"}
    return file_of(objects | {int(key[1:]): body for key, body in more.items()})


def scan() -> bytes:
    image = "/Type /XObject /Subtype /Image /Width 2 /Height 2 /BitsPerComponent 8"
    return raw(
        b"/MediaBox [0 0 100 100] /Contents 4 0 R /Resources << /XObject << /I 5 0 R >> >>",
        o4=stream("", b"q 100 0 0 100 0 0 cm /I Do Q"),
        o5=stream(f"{image} /ColorSpace /DeviceGray", b"\x00\xff\x00\xff"),
    )


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"%PDF-1.7\n", "damaged"),
        (b"%PDF-1.7\n" + bytes(range(256)) * 100, "damaged"),
        (page(LINES)[:700], "damaged"),
        (file_of({1: CATALOG, 2: b"<< /Type /Pages /Kids [] /Count 0 >>"}), "damaged|no page"),
        (file_of({1: CATALOG, 2: b"<< /Type /Pages /Kids [2 0 R] /Count 1 >>"}), "damaged"),
        (page(b"0 0 m 1 1 l S " * 210_000), "more than"),
        (page(b"0 0 m " + b"1 1 l 2 3 l " * 110_000 + b" S"), "more than"),
    ],
)
def test_what_cannot_be_read_is_refused_calmly(data: bytes, words: str) -> None:
    with pytest.raises(Refused, match=words):
        read_bytes(data)


@pytest.mark.parametrize(
    "data",
    [
        page(b""),
        page(b"nan nan m inf 1e400 l S 1e38 1e38 m -1e38 5 l S"),
        raw(b"/MediaBox [0 0 0 0] /Contents 4 0 R", o4=stream("", b"0 0 m 5 5 l S")),
        raw(b"/Contents 4 0 R", o4=stream("", b"0 0 m 5 5 l S")),
        raw(
            b"/MediaBox [0 0 9 9] /Contents 4 0 R",
            o4=stream("/Filter /FlateDecode", zlib.compress(b"0 0 m 5 5 l S ")[:-8]),
        ),
    ],
)
def test_an_odd_page_without_a_floor_asks_to_be_traced(data: bytes) -> None:
    assert "tracing" in {note.code for note in read_bytes(data).asks}


def test_ten_thousand_pages_are_not_all_looked_at() -> None:
    codes = {note.code for note in read_bytes(page(LINES, 10_000)).left}
    assert {"pages-left", "pages-not-looked-at"} <= codes


def test_a_scan_is_known() -> None:
    assert is_scan(scan())
    assert not is_scan(page(LINES))


def test_a_page_that_is_not_there_is_refused() -> None:
    with pytest.raises(Refused, match="no page 5"):
        read_pdf(page(LINES), hints=Hints(page=5))
