"""Draws houses as DXF files the way offices do, so that the reader can be tried on them."""

import io
from dataclasses import dataclass
from itertools import pairwise
from math import cos, radians, sin
from typing import Any

import ezdxf
import shapely
from ezdxf.document import Drawing

from tests.strategies.floors import OUTSIDE, House, Passage, name

METRES = {"in": 0.0254, "ft": 0.3048, "mm": 0.001, "cm": 0.01, "m": 1.0}
HEADER = {"in": 1, "ft": 2, "mm": 4, "cm": 5, "m": 6, "": 0}


@dataclass(frozen=True)
class Manner:
    """How an office draws: its unit, what its header says, its layers, what it draws at doors."""

    unit: str = "mm"
    header: str | None = None
    wall_layer: str = "A-WALL"
    door_layer: str = "A-DOOR"
    head_layer: str = "A-HEADER"
    heads: bool = True
    swings: bool = True
    labels: bool = True
    sizes: bool = False
    origin: tuple[float, float] = (0.0, 0.0)
    turn_deg: float = 0.0
    short_m: float = 0.0
    """How much every wall line stops short at both ends."""
    one_layer: str = ""
    """The layer that everything is on, lettering too; nothing: each on its own."""
    hatch: bool = False
    furniture: bool = False
    dimensions: bool = False
    grid: bool = False
    border: bool = False
    """What else is drawn in loose lines, on no layer that tells it."""


def drawn(house: House, manner: Manner) -> bytes:
    """The house as the bytes of a DXF."""
    document = ezdxf.new("R2010", setup=False)
    header = manner.unit if manner.header is None else manner.header
    document.header["$INSUNITS"] = HEADER[header]
    Pen(document, manner).house(house)
    return as_bytes(document)


def as_bytes(document: Drawing) -> bytes:
    """The file that a drawing program would write."""
    stream = io.StringIO()
    document.write(stream)
    return stream.getvalue().encode("utf-8")


class Pen:
    """Puts strokes on the sheet in the office's unit."""

    def __init__(self, document: Drawing, manner: Manner) -> None:
        self.space: Any = document.modelspace()
        self.manner = manner
        self.factor = 1.0 / METRES[manner.unit]

    def on(self, layer: str) -> dict[str, str]:
        """The layer that something goes on."""
        return {"layer": self.manner.one_layer or layer}

    def at(self, x: float, y: float) -> tuple[float, float]:
        """A place in metres, in drawing units."""
        ox, oy = self.manner.origin
        turn = radians(self.manner.turn_deg)
        across, up = x * cos(turn) - y * sin(turn), x * sin(turn) + y * cos(turn)
        return (across + ox) * self.factor, (up + oy) * self.factor

    def line(self, layer: str, x0: float, y0: float, x1: float, y1: float) -> None:
        """One upright or level stroke, its ends as short as the manner has it."""
        length = abs(x1 - x0) + abs(y1 - y0)
        if length > 3 * self.manner.short_m + 1e-9:
            dx, dy = (self.manner.short_m * d / length for d in (x1 - x0, y1 - y0))
            x0, y0, x1, y1 = x0 + dx, y0 + dy, x1 - dx, y1 - dy
            self.space.add_line(self.at(x0, y0), self.at(x1, y1), dxfattribs=self.on(layer))

    def ring(self, layer: str, x0: float, y0: float, x1: float, y1: float) -> None:
        """A closed box."""
        corners = [self.at(x0, y0), self.at(x1, y0), self.at(x1, y1), self.at(x0, y1)]
        self.space.add_lwpolyline(corners, close=True, dxfattribs=self.on(layer))

    def words(self, layer: str, text: str, x: float, y: float, height: float = 0.15, *,
              along: bool = False) -> None:  # fmt: skip
        """One line of lettering, its middle at the place; level, or along the house's own side."""
        lettering = self.space.add_text(
            text, height=height * self.factor, dxfattribs=self.on(layer)
        )
        lettering.dxf.rotation = self.manner.turn_deg if along else 0.0
        lettering.set_placement(self.at(x, y), align=ezdxf.enums.TextEntityAlignment.MIDDLE_CENTER)

    def house(self, house: House) -> None:
        """Inner and outer wall faces with gaps at the passages, doors, labels."""
        for cell in house.cells:
            self.room(house, cell)
        self.outer_faces(house)
        for passage in house.passages:
            self.passage(passage)
        Stuff(self, house).draw()

    def room(self, house: House, cell: tuple[int, int]) -> None:
        """Four wall faces and what is lettered between them."""
        x0, y0, x1, y1 = house.box(cell)
        here = [p for p in house.passages if cell in p.cells]
        for x in (x0, x1):
            gaps = [(p.y0, p.y1) for p in here if p.upright and x in (p.x0, p.x1)]
            self.broken(
                lambda a, b, x=x: self.line(self.manner.wall_layer, x, a, x, b), y0, y1, gaps
            )
        for y in (y0, y1):
            gaps = [(p.x0, p.x1) for p in here if not p.upright and y in (p.y0, p.y1)]
            self.broken(
                lambda a, b, y=y: self.line(self.manner.wall_layer, a, y, b, y), x0, x1, gaps
            )
        middle = (x0 + x1) / 2, (y0 + y1) / 2
        if self.manner.labels:
            self.words("A-TEXT", f"ROOM {name(cell)[1:]}", middle[0], middle[1] + 0.15)
        if self.manner.sizes:
            self.words("A-TEXT", f"{x1 - x0:.2f} m x {y1 - y0:.2f} m", middle[0], middle[1] - 0.1)

    def outer_faces(self, house: House) -> None:
        """The outside of the house, broken at its ways out."""
        x0, y0, x1, y1 = -house.wall, -house.wall, 0.0, 0.0
        for cell in house.cells:
            _, _, cx, cy = house.box(cell)
            x1, y1 = max(x1, cx + house.wall), max(y1, cy + house.wall)
        layer = self.manner.wall_layer
        gaps = [(p.x0, p.x1) for p in house.passages if p.cells[1] == OUTSIDE]
        self.broken(lambda a, b: self.line(layer, a, y0, b, y0), x0, x1, gaps)
        self.line(layer, x0, y0, x0, y1)
        self.line(layer, x1, y0, x1, y1)
        self.line(layer, x0, y1, x1, y1)

    def broken(self, draw: Any, low: float, high: float, gaps: list[tuple[float, float]]) -> None:
        """A straight face with gaps left out."""
        for start, end in sorted(gaps):
            draw(low, start)
            low = end
        draw(low, high)

    def passage(self, passage: Passage) -> None:
        """The jambs, and by manner the head and the leaf with its swing."""
        layer = self.manner.wall_layer
        x0, y0, x1, y1 = passage.x0, passage.y0, passage.x1, passage.y1
        if passage.upright:
            self.line(layer, x0, y0, x1, y0)
            self.line(layer, x0, y1, x1, y1)
        else:
            self.line(layer, x0, y0, x0, y1)
            self.line(layer, x1, y0, x1, y1)
        if self.manner.heads:
            self.ring(self.manner.head_layer, x0, y0, x1, y1)
        if self.manner.swings and passage.kind != "cased":
            self.leaf(passage)

    def leaf(self, passage: Passage) -> None:
        """A leaf standing open at a right angle, with its swing."""
        layer, wide = self.manner.door_layer, passage.width
        x, y = (passage.x1, passage.y0) if passage.upright else (passage.x0, passage.y1)
        if passage.upright:
            self.line(layer, x, y, x + wide, y)
        else:
            self.line(layer, x, y, x, y + wide)
        turn, radius = self.manner.turn_deg, wide * self.factor
        self.space.add_arc(self.at(x, y), radius, turn, turn + 90, dxfattribs=self.on(layer))


class Stuff:
    """What is no wall: hatching, furniture, dimensions, a grid, a border, all in loose lines."""

    def __init__(self, pen: Pen, house: House) -> None:
        self.pen, self.house = pen, house
        boxes = [house.box(cell) for cell in house.cells]
        self.wide, self.high = max(b[2] for b in boxes), max(b[3] for b in boxes)

    def draw(self) -> None:
        """All that the manner has; furniture where no open leaf reaches it."""
        manner = self.pen.manner
        for number, cell in enumerate(self.house.cells):
            x0, y0, x1, y1 = self.house.box(cell)
            if manner.hatch and number % 2:
                self.hatch(x0, y0, x1, y1)
            if manner.furniture and min(x1 - x0, y1 - y0) > 4.2:
                self.furniture(x0, y0, x1, y1)
        if manner.dimensions:
            self.dimensions()
        if manner.grid:
            self.grid()
        if manner.border:
            self.border()

    def line(self, x0: float, y0: float, x1: float, y1: float) -> None:
        """One whole stroke on a layer that says nothing."""
        start, end = self.pen.at(x0, y0), self.pen.at(x1, y1)
        self.pen.space.add_line(start, end, dxfattribs=self.pen.on("0"))

    def box(self, x0: float, y0: float, x1: float, y1: float) -> None:
        """Four loose strokes."""
        for a, b in (((x0, y0), (x1, y0)), ((x1, y0), (x1, y1)), ((x1, y1), (x0, y1)),
                     ((x0, y1), (x0, y0))):  # fmt: skip
            self.line(*a, *b)

    def hatch(self, x0: float, y0: float, x1: float, y1: float) -> None:
        """Boards from wall to wall, 0.15 m apart."""
        y = y0 + 0.1
        while y < y1 - 0.05:
            self.line(x0, y, x1, y)
            y += 0.15

    def furniture(self, x0: float, y0: float, x1: float, y1: float) -> None:
        """A table with two chairs free in the room, a bed with pillows in its upper corner."""
        x, y = (x0 + x1) / 2, (y0 + y1) / 2 - 0.4
        self.box(x - 0.5, y - 0.35, x + 0.5, y + 0.35)
        for left in (x - 0.4, x + 0.05):
            self.box(left, y - 0.75, left + 0.38, y - 0.4)
            self.line(left, y - 0.7, left + 0.38, y - 0.7)
        bed = shapely.box(x1 - 1.2, y1 - 2.1, x1 + 0.3, y1 + 0.3)
        if any(bed.intersects(shapely.box(p.x0, p.y0, p.x1, p.y1)) for p in self.house.passages):
            return  # nobody puts a bed before a door
        self.line(x1 - 1.0, y1, x1 - 1.0, y1 - 1.9)
        self.line(x1 - 1.0, y1 - 1.9, x1, y1 - 1.9)
        self.box(x1 - 0.9, y1 - 0.45, x1 - 0.1, y1 - 0.1)

    def dimensions(self) -> None:
        """Chains under the house and at its left, with ticks, witnesses and numbers in metres."""
        low = -self.house.wall - 1.0
        edges = sorted({v for c in self.house.cells for v in self.house.box(c)[0:3:2]})
        self.line(edges[0], low, edges[-1], low)
        for x in edges:
            self.line(x, low + 0.4, x, low - 0.15)
            self.line(x - 0.06, low - 0.06, x + 0.06, low + 0.06)
        for a, b in pairwise(edges):
            if b - a > 0.5:
                self.pen.words(
                    "0", f"{b - a:.2f} m", (a + b) / 2, low + 0.12, height=0.12, along=True
                )

    def grid(self) -> None:
        """Two lines each way across the whole house, a lettered circle at one end of each."""
        reach = self.house.wall + 2.0
        for number, share in enumerate((0.31, 0.77)):
            x, y = self.wide * share, self.high * share
            self.line(x, -reach, x, self.high + reach)
            self.line(-reach, y, self.wide + reach, y)
            radius = 0.35 * self.pen.factor
            self.pen.space.add_circle(
                self.pen.at(x, self.high + reach + 0.35), radius, dxfattribs=self.pen.on("0")
            )
            self.pen.words("0", "AB"[number], x, self.high + reach + 0.35, height=0.25)

    def border(self) -> None:
        """Two frames and a title block in the lower right corner of the sheet."""
        x0, y0, x1, y1 = -3.5, -3.5, self.wide + 3.5, self.high + 3.5
        self.box(x0, y0, x1, y1)
        self.box(x0 + 0.3, y0 + 0.3, x1 - 0.3, y1 - 0.3)
        left, low = x1 - 2.3, y0 + 0.3
        self.line(left, low, left, low + 0.8)
        self.line(left, low + 0.8, x1 - 0.3, low + 0.8)
        self.line(left, low + 0.4, x1 - 0.3, low + 0.4)
        for place, text in enumerate(("SCALE 1:50", "SHEET A-1")):
            self.pen.words("0", text, left + 1.0, low + 0.2 + 0.4 * place, height=0.15)
