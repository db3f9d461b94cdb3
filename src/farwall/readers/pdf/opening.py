"""Opens a PDF from strangers, and tells what can be done where it will not open."""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from farwall.errors import Mistake, Refused

MOST_BYTES = 100_000_000
_MOST_UNPACKED = 20_000_000
_USER_UNIT = re.compile(rb"/UserUnit\s*([+-]?\d*\.?\d+)")
_PACKED = re.compile(rb"/ObjStm\b.{0,400}?stream\r?\n", re.DOTALL)


@contextmanager
def opened(data: bytes) -> Iterator[Any]:
    """The document, closed afterwards. Raises Refused where it is locked, broken or too large."""
    import pypdfium2

    if len(data) > MOST_BYTES:
        what = f"The PDF has {len(data):,} bytes, more than is read here."
        raise Refused(Mistake("", what, "Save the page with the floor plan alone."))
    try:
        document = pypdfium2.PdfDocument(data)
        pages = len(document)
    except pypdfium2.PdfiumError as error:
        if "password" in str(error).lower():
            what = "The PDF is locked with a password."
            raise Refused(Mistake("", what, "Open it and save it without one.")) from error
        what = "This looks like a PDF, but it is too damaged to open."
        raise Refused(Mistake("", what, "Print it to a new PDF and send that.")) from error
    try:
        if not pages:
            raise Refused(Mistake("", "There is no page in this PDF.", "Ask for it again."))
        yield document
    finally:
        document.close()


def points_per_unit(data: bytes) -> float | None:
    """How many points of 1/72 inch a unit of its pages is; None where its pages differ."""
    found = {float(match) for match in _USER_UNIT.findall(data)}
    for match in _PACKED.finditer(data):
        try:
            plain = zlib.decompressobj().decompress(data[match.end() :], _MOST_UNPACKED)
        except zlib.error:
            continue
        found |= {float(number) for number in _USER_UNIT.findall(plain)}
    units = {unit for unit in found if 0 < unit <= 75_000}
    if not units:
        return 1.0
    return units.pop() if len(units) == 1 else None
