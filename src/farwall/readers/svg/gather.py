"""From the tree of an SVG to a sheet: strokes, arcs and lettering in the page's own units."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field

from farwall.errors import Refused
from farwall.facts.reading import Note
from farwall.floor.geometry import Point
from farwall.readers.lines.lettering import Run, words_of
from farwall.readers.lines.page import Page
from farwall.readers.lines.pen import Pen, Piece
from farwall.readers.lines.sheet import Sheet
from farwall.readers.svg.frames import Box, Matrix, view_box
from farwall.readers.svg.paths import Subpath
from farwall.readers.svg.shapes import drawn
from farwall.readers.svg.style import read_sheets
from farwall.readers.svg.text import runs_of
from farwall.readers.svg.tree import Node
from farwall.readers.svg.units import M_PER_IN, PAPER_UNITS, PX_PER_IN, length, unit_of
from farwall.readers.svg.walk import Drawn, Walker, style_texts

_UP: Matrix = (1.0, 0.0, 0.0, -1.0, 0.0, 0.0)
_WHOLE_PAGE = 0.95
_LETTER = 0.02  # of the page: outlines of letters are smaller than that


def gather(root: Node) -> Page:
    """Everything on the page that a floor can be read from."""
    sheets = read_sheets(style_texts(root))
    box, paper = page_of(root)
    walker = Walker(root, sheets)
    hand = _Hand(box)
    for thing in walker.things(_UP, (box.wide, box.high)):
        if thing.node.tag == "text":
            hand.runs += runs_of(thing, sheets)
        elif thing.style.visible:
            hand.draw(thing)
    sheet = Sheet(
        strokes=tuple(hand.pen.strokes),
        swings=tuple(hand.pen.swings),
        rings=tuple(hand.pen.rings),
        words=tuple(words_of(hand.runs)),
        skipped=tuple(sorted(hand.skipped.items())),
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


@dataclass
class _Hand:
    """Draws what is seen: strokes, and the edges of filled shapes that have none."""

    page: Box
    pen: Pen = field(default_factory=Pen)
    runs: list[Run] = field(default_factory=list)
    skipped: Counter[str] = field(default_factory=Counter)
    aside: Counter[str] = field(default_factory=Counter)
    ground: str = "#ffffff"

    def draw(self, thing: Drawn) -> None:
        """One shape; what cannot be read is counted, not lost in silence."""
        style = thing.style
        inked = style.stroke not in {"", self.ground}
        filled = style.fill if thing.node.tag != "line" else ""
        if not inked and filled in {"", self.ground}:
            return
        try:
            paths = [_seen(path, thing.matrix) for path in drawn(thing.node, thing.view)]
            if filled and self._is_ground(paths):
                self.ground = filled
                return
            if not inked and self._is_letters(paths):
                self.aside["shape like a letter's outline"] += 1
                return
            for path in paths:
                self._trace(path, thing, fill_only=not inked)
        except Refused:
            raise
        except (ValueError, OverflowError, ZeroDivisionError):
            self.skipped[f"<{thing.node.tag}>"] += 1

    def _trace(self, path: Subpath, thing: Drawn, *, fill_only: bool) -> None:
        self.pen.trace(
            path.pieces,
            layer=thing.layer.name,
            role=thing.layer.role,
            dashed=thing.style.dashed and not fill_only,
            closed=path.closed or fill_only,
            sliver=max(self.page.wide, self.page.high) * 0.0012 if fill_only else 0.0,
        )

    def _is_ground(self, paths: Sequence[Subpath]) -> bool:
        """A filled shape over the whole page is the paper that all else is drawn on."""
        if len(paths) != 1 or self.pen.strokes:
            return False
        wide, high = _size(paths)
        return wide >= _WHOLE_PAGE * self.page.wide and high >= _WHOLE_PAGE * self.page.high

    def _is_letters(self, paths: Sequence[Subpath]) -> bool:
        small = _LETTER * max(self.page.wide, self.page.high)
        curved = any(piece.curve for path in paths for piece in path.pieces)
        return curved and bool(paths) and max(_size(paths)) < small


def _seen(path: Subpath, matrix: Matrix) -> Subpath:
    """A connected line as it lies on the page."""
    a, b, c, d, e, f = matrix
    pieces = [
        Piece([(a * x + c * y + e, b * x + d * y + f) for x, y in piece.points], piece.curve)
        for piece in path.pieces
    ]
    return Subpath(pieces, path.closed)


def _size(paths: Sequence[Subpath]) -> tuple[float, float]:
    points: list[Point] = [p for path in paths for piece in path.pieces for p in piece.points]
    if not points:
        return 0.0, 0.0
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return max(xs) - min(xs), max(ys) - min(ys)


def _import(name: str) -> Note:
    what = f"The style sheet {name[:80]} is not inside the file and was not fetched."
    return Note("import-missing", f"{what} What it hides or draws otherwise is not known here.")


def _outside(name: str) -> Note:
    where = f"the file {name}" if name else "no place"
    return Note("link-outside", f"A symbol is linked to {where}: links are not followed.")


def _aside(kind: str, count: int) -> Note:
    return Note("left-aside", f"{count} × {kind} was left aside." if count == 1
                else f"{count} × {kind} were left aside.")  # fmt: skip
