"""The painted shapes of a PDF page, taken out of nested forms, with their colours and layers.

Through PDFium's plain interface. Every walk is bounded.
"""

from __future__ import annotations

import ctypes
from collections import Counter
from collections.abc import Iterator
from dataclasses import field
from math import inf
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.hand import Subpath
from farwall.readers.lines.matrices import IDENTITY, Matrix, bezier, placed, times
from farwall.readers.lines.pen import Piece

MOST_OBJECTS = 200_000
DEEPEST_FORM = 12
Box = tuple[float, float, float, float]
"""Left, bottom, right, top."""
EVERYWHERE: Box = (-inf, -inf, inf, inf)


@dataclass(frozen=True)
class Shape:
    """A painted path on the page: its lines, colours (nothing for none), dashes, layer, window."""

    paths: list[Subpath]
    stroke: str
    fill: str
    dashed: bool
    layer: str
    window: Box


@dataclass
class Objects:
    """Walks the objects of pages; `pictures` are the boxes of images met."""

    pictures: list[Box] = field(default_factory=list)
    aside: Counter[str] = field(default_factory=Counter)
    seen: int = 0

    def of(self, page: Any) -> Iterator[Shape]:
        """All painted shapes of a page, in the order they are painted."""
        import pypdfium2.raw as pdf

        raw = page.raw
        count = pdf.FPDFPage_CountObjects(raw)
        for index in range(count):
            yield from self._one(pdf, pdf.FPDFPage_GetObject(raw, index), IDENTITY, "", 0)

    def _one(self, pdf: Any, item: Any, outer: Matrix, layer: str, depth: int) -> Iterator[Shape]:
        self.seen += 1
        if self.seen > MOST_OBJECTS:
            what = f"The PDF paints more than {MOST_OBJECTS:,} things."
            raise Refused(Mistake("", what, "Save the page with the floor plan alone."))
        kind = pdf.FPDFPageObj_GetType(item)
        layer = _layer(pdf, item) or layer
        if kind == pdf.FPDF_PAGEOBJ_PATH:
            yield from _shape(pdf, item, outer, layer)
        elif kind == pdf.FPDF_PAGEOBJ_FORM:
            if depth >= DEEPEST_FORM:
                self.aside["form nested too deep"] += 1
                return
            matrix = times(outer, _matrix(pdf, item))
            for index in range(max(pdf.FPDFFormObj_CountObjects(item), 0)):
                inner = pdf.FPDFFormObj_GetObject(item, index)
                yield from self._one(pdf, inner, matrix, layer, depth + 1)
        elif kind == pdf.FPDF_PAGEOBJ_IMAGE:
            self.pictures.append(_bounds(pdf, item, outer))


def _shape(pdf: Any, item: Any, outer: Matrix, layer: str) -> Iterator[Shape]:
    mode, strokes = ctypes.c_int(), ctypes.c_int()
    pdf.FPDFPath_GetDrawMode(item, mode, strokes)
    stroke = _colour(pdf.FPDFPageObj_GetStrokeColor, item) if strokes.value else ""
    fill = _colour(pdf.FPDFPageObj_GetFillColor, item) if mode.value else ""
    window = _window(pdf, item, outer)
    if not (stroke or fill) or not _overlap(window, _bounds(pdf, item, outer)):
        return
    matrix = times(outer, _matrix(pdf, item))
    dashed = pdf.FPDFPageObj_GetDashCount(item) > 0
    yield Shape(_lines(pdf, item, matrix), stroke, fill, dashed, layer, window)


def _lines(pdf: Any, item: Any, matrix: Matrix) -> list[Subpath]:
    """The connected lines of a path, as they lie on the page."""
    paths: list[Subpath] = []
    straight: list[Point] = []
    control: list[Point] = []
    x, y = ctypes.c_float(), ctypes.c_float()

    def lift() -> None:
        if len(straight) > 1:
            paths[-1].pieces.append(Piece(tuple(straight)))

    for index in range(pdf.FPDFPath_CountSegments(item)):
        segment = pdf.FPDFPath_GetPathSegment(item, index)
        pdf.FPDFPathSegment_GetPoint(segment, x, y)
        point, kind = placed(matrix, (x.value, y.value)), pdf.FPDFPathSegment_GetType(segment)
        if kind == pdf.FPDF_SEGMENT_MOVETO or not paths:
            lift()
            paths.append(Subpath())
            straight, control = [point], []
        elif kind == pdf.FPDF_SEGMENT_BEZIERTO:
            control.append(point)
            if len(control) == 3:
                lift()
                paths[-1].pieces.append(Piece(bezier([straight[-1], *control]), curve=True))
                straight, control = [point], []
        else:
            straight.append(point)
        if pdf.FPDFPathSegment_GetClose(segment):
            paths[-1].closed = True
    lift()
    return [path for path in paths if path.pieces]


def _matrix(pdf: Any, item: Any) -> Matrix:
    m = pdf.FS_MATRIX()
    if not pdf.FPDFPageObj_GetMatrix(item, m):
        return IDENTITY
    return m.a, m.b, m.c, m.d, m.e, m.f


def _colour(ask: Any, item: Any) -> str:
    """The colour as `#rrggbb`, nothing where it lets all through."""
    parts = [ctypes.c_uint() for _ in range(4)]
    if not ask(item, *parts):
        return "#000000"
    red, green, blue, cover = (part.value for part in parts)
    return f"#{red:02x}{green:02x}{blue:02x}" if cover else ""


def _bounds(pdf: Any, item: Any, outer: Matrix) -> Box:
    sides = [ctypes.c_float() for _ in range(4)]
    if not pdf.FPDFPageObj_GetBounds(item, *sides):
        return EVERYWHERE
    left, bottom, right, top = (side.value for side in sides)
    return _boxed([placed(outer, p) for p in ((left, bottom), (right, top), (left, top),
                                              (right, bottom))])  # fmt: skip


def _window(pdf: Any, item: Any, outer: Matrix) -> Box:
    """What the clip leaves to be seen, as a box."""
    clip = pdf.FPDFPageObj_GetClipPath(item)
    if not clip:
        return EVERYWHERE
    window, x, y = EVERYWHERE, ctypes.c_float(), ctypes.c_float()
    for path in range(min(max(pdf.FPDFClipPath_CountPaths(clip), 0), 20)):
        points = []
        for index in range(min(max(pdf.FPDFClipPath_CountPathSegments(clip, path), 0), 1000)):
            segment = pdf.FPDFClipPath_GetPathSegment(clip, path, index)
            if segment and pdf.FPDFPathSegment_GetPoint(segment, x, y):
                points.append(placed(outer, (x.value, y.value)))
        if points:
            window = _both(window, _boxed(points))
    return window


def _layer(pdf: Any, item: Any) -> str:
    """The name of the optional content group that a thing is marked with."""
    for index in range(min(max(pdf.FPDFPageObj_CountMarks(item), 0), 8)):
        mark = pdf.FPDFPageObj_GetMark(item, index)
        for key in (b"Name", b"Title"):
            text = _mark_text(pdf, mark, key)
            if text:
                return text[:80]
    return ""


def _mark_text(pdf: Any, mark: Any, key: bytes) -> str:
    length = ctypes.c_ulong()
    if not pdf.FPDFPageObjMark_GetParamStringValue(mark, key, None, 0, length):
        return ""
    buffer = ctypes.create_string_buffer(min(length.value, 1024))
    typed = ctypes.cast(buffer, ctypes.POINTER(pdf.FPDF_WCHAR))
    if not pdf.FPDFPageObjMark_GetParamStringValue(mark, key, typed, len(buffer), length):
        return ""
    return buffer.raw.decode("utf-16-le", "replace").rstrip("\x00")


def _boxed(points: list[Point]) -> Box:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)


def _both(first: Box, second: Box) -> Box:
    return (max(first[0], second[0]), max(first[1], second[1]),
            min(first[2], second[2]), min(first[3], second[3]))  # fmt: skip


def _overlap(first: Box, second: Box) -> bool:
    low_x, low_y, high_x, high_y = _both(first, second)
    return low_x <= high_x and low_y <= high_y
