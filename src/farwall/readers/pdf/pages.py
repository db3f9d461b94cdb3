"""A page of a PDF as a sheet, in points, as it is shown: turned upright, its corner at nought."""

from __future__ import annotations

from typing import Any

from farwall.facts.reading import Note
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.hand import Hand, Ink, Subpath
from farwall.readers.lines.lettering import words_of
from farwall.readers.lines.matrices import Matrix, placed, times
from farwall.readers.lines.page import Page
from farwall.readers.lines.pen import Piece
from farwall.readers.lines.roles import role_of
from farwall.readers.lines.sheet import Sheet
from farwall.readers.lines.windows import within
from farwall.readers.pdf.objects import Box, Objects
from farwall.readers.pdf.text import runs_of

M_PER_POINT = 0.0254 / 72
"""[pdf-17] 8.3.2.3."""
_PICTURE = 0.4  # of the page: a picture as large may be a scan of the plan


@dataclass(frozen=True)
class Taken:
    """A page taken apart, how large its largest picture is beside it, and its walls' length."""

    page: Page
    picture_share: float
    wall_length: float

    @property
    def is_scan(self) -> bool:
        """Whether its plan is a picture and not lines."""
        return self.picture_share >= _PICTURE and self.wall_length < 1.0


def take_page(page: Any, points_per_unit: float | None) -> Taken:
    """One page taken apart. Raises Refused past the bounds of what is read."""
    frame, size = _shown(page)
    hand, objects, spoilt = Hand(size), Objects(), 0
    page_box: Box = (0.0, 0.0, *size)
    for shape in objects.of(page):
        ink = Ink(shape.stroke, shape.fill, shape.layer, role_of(shape.layer), shape.dashed)
        if hand.sees(ink):
            try:
                seen = [_moved(path, frame) for path in within(shape.paths, shape.window)]
                hand.draw(within(seen, page_box), ink)
            except ValueError:
                spoilt += 1
    sheet = Sheet(
        strokes=tuple(hand.pen.strokes),
        swings=tuple(hand.pen.swings),
        rings=tuple(hand.pen.rings),
        words=tuple(words_of(runs_of(page, frame))),
        skipped=(("path", spoilt),) if spoilt else (),
        format="PDF",
    )
    aside = sorted((hand.aside + objects.aside).items())
    notes = tuple(Note("left-aside", f"{count} × {kind}: left aside.") for kind, count in aside)
    paper = M_PER_POINT * points_per_unit if points_per_unit else None
    share = max((_area(box) / (size[0] * size[1]) for box in objects.pictures), default=0.0)
    return Taken(Page(sheet, notes, paper, len(objects.pictures)), share, _wall_length(sheet, size))


def _shown(page: Any) -> tuple[Matrix, tuple[float, float]]:
    """From the page's own frame to how it is shown, and its size then."""
    left, bottom, right, top = page.get_cropbox()
    wide, high = abs(right - left) or 1.0, abs(top - bottom) or 1.0
    to_corner: Matrix = (1.0, 0.0, 0.0, 1.0, -min(left, right), -min(bottom, top))
    turned: dict[int, tuple[Matrix, tuple[float, float]]] = {
        90: ((0.0, -1.0, 1.0, 0.0, 0.0, wide), (high, wide)),
        180: ((-1.0, 0.0, 0.0, -1.0, wide, high), (wide, high)),
        270: ((0.0, 1.0, -1.0, 0.0, high, 0.0), (high, wide)),
    }
    turn, size = turned.get(page.get_rotation(), ((1.0, 0.0, 0.0, 1.0, 0.0, 0.0), (wide, high)))
    return times(turn, to_corner), size


def _moved(path: Subpath, frame: Matrix) -> Subpath:
    def at(point: Point) -> Point:
        return placed(frame, point)

    pieces = [Piece([at(point) for point in piece.points], piece.curve) for piece in path.pieces]
    return Subpath(pieces, path.closed)


def _wall_length(sheet: Sheet, size: tuple[float, float]) -> float:
    """Length of all straight lines as walls have them, in sides of the page."""
    whole = max(size)
    long = (s.length for s in sheet.strokes if not (s.dashed or s.curve))
    return sum(length for length in long if 0.01 * whole < length < 0.7 * whole) / whole


def _area(box: Box) -> float:
    return max(box[2] - box[0], 0.0) * max(box[3] - box[1], 0.0)
