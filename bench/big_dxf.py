"""What `farwall read` takes on a DXF of 5 MB: processor and wall seconds of cold processes.

python bench/big_dxf.py [--once] [--write FILE]: an invented office wing of 288 rooms on both sides
of three corridors, furniture in loose lines, doors as blocks, dimensions, hatched walls, notes.
"""

from __future__ import annotations

import io
import sys
from pathlib import Path
from typing import Any

import ezdxf
from timing import cold_reads

WALL, OUTER, ROOM, DEEP, CORRIDOR = 120.0, 300.0, 3600.0, 4800.0, 2000.0
ROOMS_A_SIDE, WINGS, DOOR = 48, 3, 900.0


class Office:
    """Draws the wing in millimetres."""

    def __init__(self) -> None:
        self.document = ezdxf.new("R2010", setup=False)
        self.document.header["$INSUNITS"] = 4
        self.space: Any = self.document.modelspace()
        self.blocks()

    def blocks(self) -> None:
        """A door 900 mm wide, and a chair."""
        door = self.document.blocks.new("DOOR-900")
        door.add_line((0, 0), (0, DOOR))
        door.add_arc((0, 0), DOOR, 0, 90)
        chair = self.document.blocks.new("CHAIR")
        for radius in (200, 220, 260):
            chair.add_circle((0, 0), radius)

    def line(self, layer: str, x0: float, y0: float, x1: float, y1: float) -> None:
        """One stroke."""
        self.space.add_line((x0, y0), (x1, y1), dxfattribs={"layer": layer})

    def ring(self, layer: str, x0: float, y0: float, x1: float, y1: float) -> None:
        """A box of four loose lines, as exploded symbols come."""
        self.line(layer, x0, y0, x1, y0)
        self.line(layer, x1, y0, x1, y1)
        self.line(layer, x1, y1, x0, y1)
        self.line(layer, x0, y1, x0, y0)

    def wing(self, base: float) -> None:
        """A corridor with rooms on both sides, its ends shut, a way out at the left."""
        long = ROOMS_A_SIDE * (ROOM + WALL) - WALL
        for number in range(ROOMS_A_SIDE):
            left = number * (ROOM + WALL)
            self.room(left, base - WALL - DEEP, base - WALL, base, f"{number:02d}A")
            self.room(left, base + CORRIDOR + WALL, base + CORRIDOR, base + CORRIDOR + WALL,
                      f"{number:02d}B")  # fmt: skip
        self.line("A-WALL", long, base, long, base + CORRIDOR)
        exit_low, exit_high = base + 550, base + 550 + DOOR
        self.line("A-WALL", 0, base, 0, exit_low)
        self.line("A-WALL", 0, exit_high, 0, base + CORRIDOR)
        for y in (exit_low, exit_high):
            self.line("A-WALL", -OUTER, y, 0, y)
        low, high = base - WALL - DEEP - OUTER, base + CORRIDOR + WALL + DEEP + OUTER
        self.line("A-WALL", -OUTER, low, long + OUTER, low)
        self.line("A-WALL", long + OUTER, low, long + OUTER, high)
        self.line("A-WALL", long + OUTER, high, -OUTER, high)
        self.line("A-WALL", -OUTER, high, -OUTER, exit_high)
        self.line("A-WALL", -OUTER, exit_low, -OUTER, low)
        self.space.add_blockref("DOOR-900", (0, exit_low), dxfattribs={"layer": "A-DOOR"})
        self.words(f"CORRIDOR {base:.0f}", long / 2, base + CORRIDOR / 2)

    def room(self, x: float, y: float, face: float, far: float, name: str) -> None:
        """A room over or under its corridor, its door in the wall from `face` to `far`."""
        right, top = x + ROOM, y + DEEP
        below = face >= top
        near, back = (top, y) if below else (y, top)
        hinge, latch = x + 400, x + 400 + DOOR
        self.line("A-WALL", x, y, x, top)
        self.line("A-WALL", right, y, right, top)
        self.line("A-WALL", x, back, right, back)
        side = far if below else face
        wide = 0 if x == 0 else WALL
        for level, start in ((near, x), (side, x - wide)):
            self.line("A-WALL", start, level, hinge, level)
            self.line("A-WALL", latch, level, right, level)
        for jamb in (hinge, latch):
            self.line("A-WALL", jamb, near, jamb, side)
        turn = {"layer": "A-DOOR", "rotation": 0.0, "yscale": -1.0 if below else 1.0}
        self.space.add_blockref("DOOR-900", (hinge, near), dxfattribs=turn)
        self.words(f"OFFICE {name}", x + ROOM / 2, y + DEEP / 2)
        self.furniture(x, y)
        dimension = self.space.add_linear_dim(
            base=(x, y + 400),
            p1=(x, y + 300),
            p2=(right, y + 300),
            dimstyle="Standard",
            dxfattribs={"layer": "A-DIMS"},
        )
        dimension.render()

    def furniture(self, x: float, y: float) -> None:
        """Desks, shelves with boards, chairs; hatching of a rug."""
        for desk in range(3):
            low = y + 900 + 1200 * desk
            self.ring("A-FURN", x + 150, low, x + 950, low + 1000)
            for drawer in range(5):
                self.ring("A-FURN", x + 170, low + 190 * drawer, x + 500, low + 180 + 190 * drawer)
            self.space.add_blockref("CHAIR", (x + 1300, low + 500), dxfattribs={"layer": "A-FURN"})
        for step in range(36):
            self.line("A-PATT", x + 1800, y + 800 + 60 * step, x + 3000, y + 800 + 60 * step)

    def words(self, text: str, x: float, y: float) -> None:
        """A name with its middle at a place."""
        lettering = self.space.add_text(text, height=150, dxfattribs={"layer": "A-ANNO"})
        lettering.set_placement((x, y), align=ezdxf.enums.TextEntityAlignment.MIDDLE_CENTER)

    def drawn(self) -> bytes:
        """The bytes of the file."""
        for wing in range(WINGS):
            self.wing(wing * (CORRIDOR + 2 * DEEP + 2 * WALL + 2 * OUTER + 3000.0))
        stream = io.StringIO()
        self.document.write(stream)
        return stream.getvalue().encode()


def main() -> None:
    """Write the drawing, read it in cold processes, tell."""
    data = Office().drawn()
    if "--write" in sys.argv:
        Path(sys.argv[sys.argv.index("--write") + 1]).write_bytes(data)
        return
    cold_reads(data, "office.dxf", 2 * ROOMS_A_SIDE * WINGS + WINGS)


if __name__ == "__main__":
    main()
