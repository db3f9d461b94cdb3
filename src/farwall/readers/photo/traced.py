"""A flattened picture as a sheet of lines, as if it had been drawn: walls, swings, glass."""

from __future__ import annotations

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Role, Sheet, Stroke, Swing
from farwall.readers.photo.flatten import Flat
from farwall.readers.photo.leaves import find_glass, find_leaves, thin_ink
from farwall.readers.photo.light import even_light
from farwall.readers.photo.outline import find_outlines
from farwall.readers.photo.solid import find_solid

_USUAL_LEAF_M, _USUAL_WALL_M = 0.82, 0.13
"""Middle of usual single leaves and of usual walls: common practice, no source. They only choose
how near lines must be to close a room while the true scale is unknown."""


@dataclass(frozen=True)
class Traced:
    """`sheet` in millimetres of paper, or in pixels where its size is unknown, y up.

    `working_m_per_unit` closes rooms when nobody has told the scale; no size is reckoned by it.
    """

    sheet: Sheet
    style: str
    working_m_per_unit: float


def trace(flat: Flat, format_name: str) -> Traced:
    """The walls of a flattened picture."""
    even = even_light(flat.grey)
    solid = find_solid(even)
    high = flat.grey.shape[0]
    unit = 1 / (flat.px_per_mm or 1.0)

    def at(point: Point) -> Point:
        return (point[0] + 0.5) * unit, (high - point[1] - 0.5) * unit

    if solid.style == "single":
        return Traced(Sheet(format=format_name), solid.style, unit)
    outlines = find_outlines(even, solid)
    thin = thin_ink(even, solid)
    leaves = find_leaves(outlines, thin, solid)
    strokes = [
        Stroke(at(e.start), at(e.end), "walls", Role.WALL) for edges in outlines for e in edges
    ]
    strokes += [
        Stroke(at(a), at(b), "glass", Role.OPENING) for a, b in find_glass(outlines, thin, solid)
    ]
    swings = tuple(
        Swing(at(one.hinge), (at(one.ends[0]), at(one.ends[1])), one.radius * unit, 90.0, "leaves",
              Role.OPENING)
        for one in leaves
    )  # fmt: skip
    radii = sorted(one.radius for one in leaves)
    usual = _USUAL_LEAF_M / radii[len(radii) // 2] if radii else _USUAL_WALL_M / solid.deep_px
    return Traced(Sheet(tuple(strokes), swings, format=format_name), solid.style, usual / unit)
