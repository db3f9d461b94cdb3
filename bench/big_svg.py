"""What `farwall read` takes on an SVG of 1 MB: processor and wall seconds of cold processes.

python bench/big_svg.py [--once] [--write FILE]: the invented office wing of big_dxf.py, one
corridor, as a page at 1:100 with its layers as groups, its doors and chairs as symbols.
"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

from big_dxf import ROOMS_A_SIDE, Office
from timing import cold_reads

RATIO = 100.0


def shape(entity: Any) -> str:
    """One entity of the drawing as an element; y runs down a page, so its frame is turned over."""
    kind, layer = entity.dxftype(), entity.dxf.layer
    if kind == "LINE":
        (x0, y0, _), (x1, y1, _) = entity.dxf.start, entity.dxf.end
        return f'<path class="{layer}" d="M{x0:.6f},{y0:.6f}L{x1:.6f},{y1:.6f}"/>'
    if kind == "INSERT":
        x, y, _ = entity.dxf.insert
        place = f"translate({x:.3f} {y:.3f}) scale(1 {entity.dxf.get('yscale', 1.0):g})"
        return f'<use class="{layer}" href="#{entity.dxf.name}" transform="{place}"/>'
    if kind == "TEXT":
        x, y, _ = entity.dxf.get("align_point", entity.dxf.insert)
        place = f'transform="translate({x:.3f} {y:.3f}) scale(1 -1)" font-size="208"'
        return f'<text {place} text-anchor="middle" dy="75">{entity.dxf.text}</text>'
    return ""


def symbols() -> str:
    """A door and a chair."""
    door = '<g id="DOOR-900"><path d="M0,0V900"/><path d="M900,0A900,900 0 0 1 0,900"/></g>'
    rings = "".join(f'<circle r="{radius}"/>' for radius in (200, 220, 260))
    return f'<defs>{door}<g id="CHAIR">{rings}</g></defs>'


def drawn() -> bytes:
    """The page."""
    office = Office()
    office.wing(0.0)
    wide, high, left, low = 182_000.0, 16_000.0, -1000.0, -6500.0
    flip = f"matrix(1 0 0 -1 {-left:g} {high + low:g})"
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide / RATIO:g}mm" '
        f'height="{high / RATIO:g}mm" viewBox="0 0 {wide:g} {high:g}">'
    )
    body = "\n".join(filter(None, map(shape, office.space)))
    group = f'<g transform="{flip}" fill="none" stroke="#000" stroke-width="20">'
    scale = '<text x="2000" y="15800" font-size="208">SCALE 1:100</text>'
    return f"{head}{symbols()}{group}\n{body}\n</g>{scale}</svg>".encode()


def main() -> None:
    """Write the page, read it in cold processes, tell."""
    data = drawn()
    if "--write" in sys.argv:
        Path(sys.argv[sys.argv.index("--write") + 1]).write_bytes(data)
        return
    cold_reads(data, "office.svg", 2 * ROOMS_A_SIDE + 1)


if __name__ == "__main__":
    main()
