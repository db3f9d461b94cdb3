"""What is drawn and lettered at a portal: swing, panels, glass, size code."""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.bounds import lines_of
from farwall.readers.lines.portals import Portal
from farwall.readers.lines.sheet import Sheet, Stroke, Swing, Words
from farwall.readers.lines.swings import door_swings, shuts
from farwall.readers.sizes import DoorCode, door_code

_CODE_REACH_M = 0.65  # from the seam to the middle of a size code (measured on plans)
_DOOR_HEIGHT_M = 1.95
_GLASS_WORDS = {"XO", "OX", "OXO", "XOX", "SH", "DH", "FX", "FIX", "FIXED", "CSMT", "CASEMENT",
                "AWN", "AWNING", "SLIDER", "SL", "TRANSOM", "PW", "PIC", "HOPPER"}  # fmt: skip
_DOOR_WORDS = ("DOOR", "DR", "S.G.D", "SGD", "O.H.", "OH", "BIFOLD", "BI-FOLD", "POCKET", "BYPASS")


@dataclass(frozen=True)
class Signs:
    """What speaks for a door or a window at one portal."""

    swing: bool = False
    panels: bool = False
    glass: bool = False
    code_text: str = ""
    code_says: str = ""
    """`door`, `window` or nothing."""
    height_m: float | None = None

    @property
    def leaf(self) -> bool:
        """Something that opens and shuts is drawn here."""
        return self.swing or self.panels

    @property
    def window(self) -> bool:
        """More a window than a door."""
        if self.swing:
            return False
        return self.code_says == "window" or (self.glass and self.code_says != "door")


class Doorwork:
    """All that is drawn and lettered of doors and windows; `strokes` are theirs and the walls'."""

    def __init__(self, sheet: Sheet, strokes: Sequence[Stroke]) -> None:
        self._strokes = strokes
        self._tree = shapely.STRtree(lines_of(strokes))
        self._swings = door_swings(sheet)
        self._hinges = shapely.STRtree([shapely.Point(s.centre) for s in self._swings])
        found = ((words, door_code(words.text)) for words in sheet.words)
        self._codes = [(words, code) for words, code in found if code]

    def signs_at(self, portal: Portal) -> Signs:
        """The signs at a portal."""
        text, says, height = _code_at(portal, self._codes)
        reach = portal.depth_m / 2 + 0.1
        near = self._tree.query(shapely.LineString(portal.seam), "dwithin", reach)
        strokes = [self._strokes[int(i)] for i in near]
        spans = [span for stroke in strokes if (span := _span(portal, stroke)) is not None]
        return Signs(
            swing=any(shuts(s, portal) for s in self._swings_near(portal)),
            panels=any(_is_panel(portal, *span) for span in spans),
            glass=any(_is_glass(portal, *span) for span in spans),
            code_text=text,
            code_says=says,
            height_m=height,
        )

    def _swings_near(self, portal: Portal) -> list[Swing]:
        reach = portal.width_m + portal.depth_m + 0.2
        near = self._hinges.query(shapely.Point(portal.middle), "dwithin", reach)
        return [self._swings[i] for i in near.tolist()]


Span = tuple[float, float, float]
"""Where a stroke runs in the portal's own frame: from and to along the seam, and aside of it."""


def _span(portal: Portal, stroke: Stroke) -> Span | None:
    (ax, ay), (bx, by) = portal.seam
    ux, uy = (bx - ax) / portal.width_m, (by - ay) / portal.width_m

    def frame(point: Point) -> Point:
        dx, dy = point[0] - ax, point[1] - ay
        return dx * ux + dy * uy, -dx * uy + dy * ux

    (start, aside), (end, aside_end) = frame(stroke.start), frame(stroke.end)
    if abs(aside - aside_end) > 0.01 or abs(aside) > portal.depth_m / 2 + 0.06:
        return None
    return min(start, end), max(start, end), aside


def _is_panel(portal: Portal, start: float, end: float, aside: float) -> bool:
    """A sliding or folding panel: in or at the depth of the wall, shorter than the opening."""
    length = end - start
    inside = min(end, portal.width_m) - max(start, 0.0)
    drawn = 0.3 <= length / portal.width_m <= 1.02 and inside > 0.2 * portal.width_m
    full = abs(length - portal.width_m) < 0.02 and abs(start) < 0.02
    del aside
    return drawn and not full


def _is_glass(portal: Portal, start: float, end: float, aside: float) -> bool:
    """A line from jamb to jamb within the depth of the wall."""
    whole = abs(start) < 0.03 and abs(end - portal.width_m) < 0.03
    return whole and abs(aside) < portal.depth_m / 2 - 0.015


def _code_at(
    portal: Portal, codes: Sequence[tuple[Words, DoorCode]]
) -> tuple[str, str, float | None]:
    """The nearest size code that has this portal's width: its text, what it says, its height."""
    found = []
    for words, code in codes:
        away = _away(portal, words.at)
        for width, height in code.sizes_m if away < _CODE_REACH_M else ():
            if abs(width / portal.width_m - 1) < 0.03:
                found.append((away, words.text, _says(code.words, height), height))
    return min(found)[1:] if found else ("", "", None)


def _away(portal: Portal, point: Point) -> float:
    (ax, ay), (bx, by) = portal.seam
    along = ((point[0] - ax) * (bx - ax) + (point[1] - ay) * (by - ay)) / portal.width_m**2
    foot = min(max(along, 0.0), 1.0)
    return hypot(point[0] - ax - foot * (bx - ax), point[1] - ay - foot * (by - ay))


def _says(words: str, height_m: float) -> str:
    upper = words.upper()
    if any(word in upper for word in _DOOR_WORDS):
        return "door"
    if set(upper.replace(".", "").split()) & _GLASS_WORDS:
        return "window"
    return "door" if height_m >= _DOOR_HEIGHT_M else "window"
