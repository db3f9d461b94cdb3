"""One storey of a reading on the drawing: walls, rooms with their words, openings, pins."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.reading import Reading
from farwall.floor.geometry import Point
from farwall.floor.nouns import Opening, Room
from farwall.nouns import dataclass
from farwall.papers.drawing.board import Board, Words, centres_inside, ring_around
from farwall.papers.drawing.frame import Frame, path_data
from farwall.papers.drawing.walls import wall_mass
from farwall.papers.ink import DANGER, INK, LINE, PAPER, RAMP, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, clipped, text_width
from farwall.papers.reading.levels import Level, middle
from farwall.papers.svg import Svg
from farwall.units import ft2_from_m2

_TYPE = SCREEN_LETTERING
_SIZES = (_TYPE.body, _TYPE.small, 9.5)
_PIN = 8.0
_WIDEN = 1.22
"""The bold of common screen fonts runs wider than the papers' own."""


@dataclass(frozen=True)
class KeyRow:
    """A room whose words found no place on its floor: its letter stands there instead."""

    letter: str
    words: str


class LevelView:
    """Draws one storey with its upper left corner at a place, `scale` units to a metre."""

    def __init__(
        self,
        svg: Svg,
        level: Level,
        reading: Reading,
        *,
        left: float,
        top: float,
        scale: float,
        marked: set[str],
    ) -> None:
        west, _, _, north = level.bounds
        self.svg, self.level, self.reading, self.marked = svg, level, reading, marked
        self.frame = Frame(west=west, north=north, left=left, top=top, scale=scale)
        self.board = Board((-1e6, -1e6, 1e6, 1e6))
        self.exits = {way.opening for way in reading.exits}

    def draw(self) -> list[KeyRow]:
        """Draw it; returns the rooms whose words did not fit."""
        self._walls()
        self._fixtures()
        for window in self.level.windows:
            self._line("window", window.line)
        for cut in self.level.saw_cuts:
            self._line("cut", cut.line)
        for opening in self.level.openings:
            self._opening(opening)
        key = list(self._rooms())
        self._pins()
        return key

    def _walls(self) -> None:
        level = self.level
        try:
            mass = wall_mass(level.rooms, level.openings)
            self.svg.element("path", d=self.frame.path(mass), fill=LINE, fill_rule="evenodd")
        except shapely.errors.GEOSException:
            pass  # unsound outlines: the rooms' own lines still show them
        for room in level.rooms:
            shape = self.frame.shape(room.polygon.shape)
            self.svg.element("path", d=path_data(shape), fill=WHITE, fill_rule="evenodd",
                             stroke=INK, stroke_width=1.2)  # fmt: skip

    def _fixtures(self) -> None:
        for fixture in self.level.fixtures:
            self.marked.add("fixture")
            shape = self.frame.shape(fixture.polygon.shape)
            self._dry(path_data(shape))

    def _dry(self, path: str) -> None:
        hatch = f"url(#{self.svg.ident}-dry)"
        for fill in (PAPER, hatch):
            self.svg.element("path", d=path, fill=fill, fill_rule="evenodd", stroke=SOFT,
                             stroke_width=0.8)  # fmt: skip

    def _line(self, kind: str, line: Sequence[Point]) -> None:
        self.marked.add(kind)
        _mark(self.svg, kind, [self.frame.at(point) for point in line])

    def _opening(self, opening: Opening) -> None:
        kind = "exit" if opening.id in self.exits else opening.kind
        self.marked.add(kind)
        a, b = (self.frame.at(point) for point in opening.line)
        _mark(self.svg, kind, [a, b])
        if kind == "exit":
            self._way_out(a, b)

    def _way_out(self, a: Point, b: Point) -> None:
        """A filled arrow from the opening away from the floor."""
        x, y = middle((a, b))
        long = math.dist(a, b) or 1.0
        across = ((b[1] - a[1]) / long, -(b[0] - a[0]) / long)
        floor = self.frame.shape(self.level.ground)
        ahead, behind = (shapely.Point(x + far * across[0], y + far * across[1])
                         for far in (40, -40))  # fmt: skip
        side = 1.0 if floor.distance(ahead) >= floor.distance(behind) else -1.0
        wing = (-across[1], across[0])
        corners = [
            (x + side * 14 * across[0], y + side * 14 * across[1]),
            (x + side * 4 * across[0] + 6 * wing[0], y + side * 4 * across[1] + 6 * wing[1]),
            (x + side * 4 * across[0] - 6 * wing[0], y + side * 4 * across[1] - 6 * wing[1]),
        ]
        self.svg.element("path", d=path_data(shapely.Polygon(corners)), fill=INK)

    def _rooms(self) -> Iterator[KeyRow]:
        for opening in self.level.openings:
            self.board.take_line([self.frame.at(point) for point in opening.line], 2.0)
        dry = shapely.union_all(shapely.make_valid([f.polygon.shape for f in self.level.fixtures]))
        count = 0
        for room in self.level.rooms:
            free = shapely.make_valid(room.polygon.shape).difference(dry)
            shape = self.frame.shape(free if not free.is_empty else room.polygon.shape)
            name, area = room.label, self._area(room)
            if not self._lettered(shape, (name, area) if area else (name,)):
                letter, count = _letter(count), count + 1
                spot = shape.representative_point()
                self.board.take((spot.x - 6, spot.y - 6, spot.x + 6, spot.y + 6))
                self.svg.text((spot.x, spot.y + 4), letter, _TYPE.small, bold=True)
                yield KeyRow(letter, f"{name}  {area}".strip())

    def _area(self, room: Room) -> str:
        if self.reading.scale_m_per_unit is None:
            return ""
        area = room.polygon.shape.area
        return f"{area:.1f} m² · {ft2_from_m2(area):.0f} ft²"

    def _lettered(self, shape: BaseGeometry, lines: tuple[str, ...]) -> bool:
        """Write the lines inside the shape, in the largest type that finds a place."""
        for size in _SIZES:
            for told in (
                lines,
                (*lines[:1], *(part for one in lines[1:] for part in _parted(one))),
            ):
                words = Words(told, size, widen=_WIDEN)
                spot = self.board.place(words, centres_inside(words, shape, inset=2.0))
                if spot is not None:
                    for place, (at, line, high, _) in enumerate(words.baselines(spot)):
                        self.svg.text(
                            at, line, high, bold=place == 0, fill=INK if place == 0 else SOFT
                        )
                    return True
        return False

    def _pins(self) -> None:
        """Each pin at its place, or a little beside it with a line there, where that is taken."""
        mended = len(self.reading.mended)
        for number, note in self.level.pins:
            place = self.frame.at(note.where or (0.0, 0.0))
            kind = "mended" if number <= mended else "left"
            self.marked.add(kind)
            at = self._free_near(place)
            if math.dist(at, place) > _PIN:
                self.svg.line([place, at], stroke=SOFT, stroke_width=0.7)
                self.svg.element("circle", cx=place[0], cy=place[1], r=1.6, fill=SOFT)
            _pin(self.svg, kind, at, str(number))

    def _free_near(self, place: Point) -> Point:
        away = ring_around(place, start=1.5 * _PIN, step=_PIN, rings=6)
        edge = self.svg.width - _PIN
        for x, y in [place, *away]:
            box = (x - _PIN, y - _PIN, x + _PIN, y + _PIN)
            if _PIN <= x <= edge and self.board.free(box):
                self.board.take(box)
                return x, y
        return place

    @classmethod
    def sample(cls, svg: Svg, kind: str, at: Point) -> None:
        """One mark of a kind for the key, 30 units wide, its left middle at a place."""
        x, y = at
        if kind in {"mended", "left"}:
            return _pin(svg, kind, (x + 15, y), "7")
        if kind == "fixture":
            box = path_data(shapely.box(x + 4, y - 7, x + 28, y + 7))
            svg.element("path", d=box, fill=f"url(#{svg.ident}-dry)", stroke=SOFT, stroke_width=0.8)
            return None
        _mark(svg, kind, [(x + 2, y), (x + 30, y)])
        if kind == "exit":
            tip = [(x + 16, y - 14), (x + 10, y - 4), (x + 22, y - 4)]
            svg.element("path", d=path_data(shapely.Polygon(tip)), fill=INK)
        return None


def _mark(svg: Svg, kind: str, line: Sequence[Point]) -> None:
    """A line of an opening, window or cut in the manner of its kind."""
    if kind == "window":
        svg.line(line, stroke=RAMP[4], stroke_width=5)
        svg.line(line, stroke=WHITE, stroke_width=1.6)
        return
    if kind == "cut":
        svg.line(line, stroke=SOFT, stroke_width=1, stroke_dasharray="8 3 1 3")
        return
    svg.line(line, stroke=WHITE, stroke_width=5)
    if kind == "door":
        svg.line(line, stroke=INK, stroke_width=2.4)
    elif kind == "cased":
        svg.line(line, stroke=INK, stroke_width=1.2, stroke_dasharray="5 3")
    elif kind == "wide":
        svg.line(line, stroke=SOFT, stroke_width=1.2, stroke_dasharray="1 3")
    else:
        for ink, width in ((INK, 5.0), (WHITE, 2.2)):
            svg.line(line, stroke=ink, stroke_width=width)
    for x, y in (line[0], line[-1]):
        svg.element("circle", cx=x, cy=y, r=1.8, fill=INK)


def _pin(svg: Svg, kind: str, at: Point, number: str) -> None:
    x, y = at
    fill, ink = (WHITE, DANGER) if kind == "left" else (WHITE, SOFT)
    wide = max(_PIN, text_width(number, 10, bold=True) / 2 + 4)
    svg.element("rect", x=x - wide, y=y - _PIN, width=2 * wide, height=2 * _PIN,
                rx=_PIN if kind == "mended" else 2, fill=fill, stroke=ink,
                stroke_width=1.6 if kind == "left" else 1.1)  # fmt: skip
    svg.text((x, y + 3.6), number, 10, bold=True, fill=ink)


def _parted(area: str) -> list[str]:
    return area.split(" · ")


def _letter(number: int) -> str:
    """a, b, … z, aa: so are rooms called whose words stand beside the floor."""
    text, rest = "", number + 1
    while rest:
        rest, place = divmod(rest - 1, 26)
        text = chr(97 + place) + text
    return text


def draw_key(svg: Svg, key: Sequence[KeyRow], *, left: float, top: float, width: float) -> float:
    """The rooms that are lettered, in columns; returns where they end."""
    if not key:
        return top
    size = 10.5
    widest = max(text_width(row.words, size) for row in key) * _WIDEN
    column = min(widest + 36, width)
    columns = max(1, int(width // column))
    deep = -(-len(key) // columns)
    for place, row in enumerate(key):
        x, y = left + (place // deep) * column, top + (place % deep + 1) * size * 1.35
        svg.text((x, y), row.letter, size, anchor="start", bold=True)
        svg.text((x + 18, y), clipped(row.words, column - 30, size), size, anchor="start")
    return top + deep * size * 1.35
