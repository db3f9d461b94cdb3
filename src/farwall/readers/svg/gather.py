"""From the tree of an SVG to a sheet: strokes, arcs and lettering in the page's own units."""

from __future__ import annotations

from collections import Counter

from farwall.facts.reading import Note
from farwall.readers.lines.hand import Hand, Ink, Subpath
from farwall.readers.lines.lettering import words_of
from farwall.readers.lines.matrices import Matrix
from farwall.readers.lines.page import Page
from farwall.readers.lines.pen import Piece
from farwall.readers.lines.sheet import Sheet
from farwall.readers.svg.frames import Box, view_box
from farwall.readers.svg.shapes import drawn
from farwall.readers.svg.style import read_sheets
from farwall.readers.svg.text import runs_of
from farwall.readers.svg.tree import Node
from farwall.readers.svg.units import M_PER_IN, PAPER_UNITS, PX_PER_IN, length, unit_of
from farwall.readers.svg.walk import Drawn, Walker, style_texts

_UP: Matrix = (1.0, 0.0, 0.0, -1.0, 0.0, 0.0)


def gather(root: Node) -> Page:
    """Everything on the page that a floor can be read from."""
    sheets = read_sheets(style_texts(root))
    box, paper = page_of(root)
    walker = Walker(root, sheets)
    hand, runs, skipped = Hand((box.wide, box.high)), [], Counter[str]()
    for thing in walker.things(_UP, (box.wide, box.high)):
        if thing.node.tag == "text":
            runs += runs_of(thing, sheets)
            continue
        try:
            _draw(hand, thing)
        except (ValueError, OverflowError, ZeroDivisionError):
            skipped[f"<{thing.node.tag}>"] += 1
    sheet = Sheet(
        strokes=tuple(hand.pen.strokes),
        swings=tuple(hand.pen.swings),
        rings=tuple(hand.pen.rings),
        words=tuple(words_of(runs)),
        skipped=tuple(sorted(skipped.items())),
        format="SVG",
    )
    pictures = walker.aside.pop("picture", 0)
    notes = [_import(name) for name in dict.fromkeys(sheets.imports)]
    notes += [_outside(name) for name in walker.outside]
    notes += [_aside(kind, count) for kind, count in sorted((walker.aside + hand.aside).items())]
    if sheets.passed_over:
        what = f"{sheets.passed_over} rules of its style sheet are of a kind that is not followed."
        notes.append(Note("style-passed-over", what))
    return Page(sheet, tuple(notes), paper, pictures)


def page_of(root: Node) -> tuple[Box, float | None]:
    """The page in user units, and the length of one of them on paper [m] where the file says it."""
    box = view_box(root.get("viewBox"))
    wide, high = length(root.get("width") or "100%"), length(root.get("height") or "100%")
    if box is None:
        box = Box(0.0, 0.0, wide or 100.0, high or 100.0)
        named = unit_of(root.get("width")) in PAPER_UNITS
        return box, M_PER_IN / PX_PER_IN if named and wide else None
    if unit_of(root.get("width")) in PAPER_UNITS and wide:
        across = wide / box.wide
        down = high / box.high if high and unit_of(root.get("height")) in PAPER_UNITS else across
        if abs(across / down - 1) < 0.01:
            return box, across * M_PER_IN / PX_PER_IN
    return box, None


def _draw(hand: Hand, thing: Drawn) -> None:
    """One shape, where it is seen."""
    style = thing.style
    fill = style.fill if thing.node.tag != "line" else ""
    ink = Ink(style.stroke, fill, thing.layer.name, thing.layer.role, style.dashed)
    if style.visible and hand.sees(ink):
        hand.draw([_seen(path, thing.matrix) for path in drawn(thing.node, thing.view)], ink)


def _seen(path: Subpath, matrix: Matrix) -> Subpath:
    """A connected line as it lies on the page."""
    a, b, c, d, e, f = matrix
    pieces = [
        Piece([(a * x + c * y + e, b * x + d * y + f) for x, y in piece.points], piece.curve)
        for piece in path.pieces
    ]
    return Subpath(pieces, path.closed)


def _import(name: str) -> Note:
    what = f"The style sheet {name[:80]} is not inside the file and was not fetched."
    return Note("import-missing", f"{what} What it hides or draws otherwise is not known here.")


def _outside(name: str) -> Note:
    where = f"the file {name}" if name else "no place"
    return Note("link-outside", f"A symbol is linked to {where}: links are not followed.")


def _aside(kind: str, count: int) -> Note:
    return Note("left-aside", f"{count} × {kind} was left aside." if count == 1
                else f"{count} × {kind} were left aside.")  # fmt: skip
