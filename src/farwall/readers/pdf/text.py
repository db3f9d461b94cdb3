"""Lettering of a PDF page: each glyph a run, where it stands on the page."""

from __future__ import annotations

import ctypes
from math import degrees, hypot, isfinite
from typing import Any

from farwall.readers.lines.lettering import MOST_RUNS, Run
from farwall.readers.lines.matrices import Matrix, placed


def runs_of(page: Any, upright: Matrix) -> list[Run]:
    """The glyphs of a page; `upright` turns the page as it is shown."""
    import pypdfium2.raw as pdf

    text = pdf.FPDFText_LoadPage(page.raw)
    if not text:
        return []
    try:
        count = min(max(pdf.FPDFText_CountChars(text), 0), MOST_RUNS)
        glyphs = [_run(pdf, text, index, upright) for index in range(count)]
    finally:
        pdf.FPDFText_ClosePage(text)
    return [glyph for glyph in glyphs if glyph is not None]


def _run(pdf: Any, text: Any, index: int, upright: Matrix) -> Run | None:
    code = pdf.FPDFText_GetUnicode(text, index)
    if pdf.FPDFText_IsGenerated(text, index) == 1 or code < 32 or 0xD800 <= code < 0xE000:
        return None
    x, y, m = ctypes.c_double(), ctypes.c_double(), pdf.FS_MATRIX()
    if not pdf.FPDFText_GetCharOrigin(text, index, x, y):
        return None
    size = pdf.FPDFText_GetFontSize(text, index)
    if pdf.FPDFText_GetMatrix(text, index, m):
        size *= hypot(m.c, m.d)
    angle = pdf.FPDFText_GetCharAngle(text, index)
    if not all(map(isfinite, (x.value, y.value, size, angle))):
        return None
    turned = degrees(angle) if angle >= 0 else 0.0
    turned += {(0.0, -1.0): -90.0, (-1.0, 0.0): 180.0, (0.0, 1.0): 90.0}.get(upright[:2], 0.0)
    width = _width(pdf, text, index, turned_in_page=degrees(max(angle, 0.0)))
    at = placed(upright, (x.value, y.value))
    return Run(chr(min(code, 0x10FFFF)), at, size, round(turned, 2) % 360, "", width)


def _width(pdf: Any, text: Any, index: int, *, turned_in_page: float) -> float | None:
    box = pdf.FS_RECTF()
    if not pdf.FPDFText_GetLooseCharBox(text, index, box):
        return None
    across, up = float(abs(box.right - box.left)), float(abs(box.top - box.bottom))
    quarter = round(turned_in_page / 90) % 2
    return up if quarter else across
