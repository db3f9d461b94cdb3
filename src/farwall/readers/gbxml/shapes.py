"""Points, loops and rectangles of gbXML, in metres."""

from __future__ import annotations

from math import cos, dist, radians, sin

from farwall.floor.geometry import Point
from farwall.readers.gbxml.units import Units, length_at, metres, number
from farwall.readers.told.doorways import Line, farthest
from farwall.readers.told.shells import Face, Point3
from farwall.readers.xml_text import Node

Loop = list[Point3]


def point_of(node: Node, unit_m: float) -> Point3 | None:
    """A CartesianPoint; the third coordinate may be missing. None when one is no number."""
    told = [metres(child.text, unit_m) for child in node.all("Coordinate")][:3]
    if len(told) < 2 or None in told:
        return None
    x, y, *rest = [value for value in told if value is not None]
    return x, y, rest[0] if rest else 0.0


def loop_of(node: Node, units: Units) -> Loop | None:
    """The points of a PolyLoop or PlanarGeometry; None when one is no number or under three."""
    unit_m = length_at(node, units)
    loop = node if node.name == "PolyLoop" else node.first("PolyLoop")
    points = [point_of(child, unit_m) for child in (loop or node).all("CartesianPoint")]
    if len(points) < 3 or None in points:
        return None
    return [point for point in points if point is not None]


def loops_of(node: Node | None, units: Units) -> list[Loop]:
    """Every loop directly in a PlanarGeometry or a shell."""
    if node is None:
        return []
    found = (loop_of(child, units) for child in node.all("PolyLoop"))
    return [loop for loop in found if loop is not None]


def shell_faces(space: Node, units: Units) -> tuple[list[Face], int]:
    """The faces of a space's shell, and how many of them are no faces.

    The closed shell is the inside of the room; an analytical shell runs in the middle of the walls
    and is taken only without the other. Source: [gbxml-schema], its words on both (from memory).
    """
    inside = _faces(space, units, inside=True)
    return inside if any(inside) else _faces(space, units, inside=False)


def outer_faces(space: Node, units: Units) -> list[Face]:
    """The faces in the middle of the walls, where the file has them beside the inner ones."""
    return _faces(space, units, inside=False)[0]


def _faces(space: Node, units: Units, *, inside: bool) -> tuple[list[Face], int]:
    faces: list[Face] = []
    broken = 0
    for shell in space.all("ShellGeometry"):
        own = Units(units.name, length_at(shell, units), units.area_m2)
        for part in shell.children:
            if (part.name == "ClosedShell") is not inside:
                continue
            for loop in [part] if part.name == "PolyLoop" else part.walk("PolyLoop"):
                points = loop_of(loop, own)
                if points is None:
                    broken += 1
                else:
                    faces.append((points, ()))
    return faces, broken


def seam_of(opening: Node, surface: Node, units: Units) -> tuple[Line | None, Loop]:
    """The line of an opening in plan and its corners in space, by polygon or by rectangle.

    A rectangle lies from the lower left corner of its surface, seen from outside; the bearing of
    the surface counts clockwise from the model's y. Source: [gbxml-schema], its words on
    RectangularGeometry. Line None: it lies flat, or nothing says where it is.
    """
    planar = opening.first("PlanarGeometry")
    corners = loop_of(planar, units) if planar is not None else None
    if corners is None:
        corners = _rectangle(opening, surface, units)
    if not corners:
        return None, []
    return upright_line(corners), corners


def upright_line(corners: Loop) -> Line | None:
    """The line in plan of an upright face; None when it lies flat or leans much."""
    flat: list[Point] = [(x, y) for x, y, _ in corners]
    line = farthest(flat)
    if line is None:
        return None
    (x1, y1), (x2, y2) = line
    length = dist(*line)
    lean = max(abs((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)) / length for x, y in flat)
    tall = height_of(corners)
    return line if lean <= 0.02 or lean < 0.1 * tall else None


def foot_of(corners: Loop) -> float:
    """The lowest height of a face [m]."""
    return min(z for _, _, z in corners)


def height_of(corners: Loop) -> float:
    """How tall a face stands [m]."""
    heights = [z for _, _, z in corners]
    return max(heights) - min(heights)


def _rectangle(opening: Node, surface: Node, units: Units) -> Loop | None:
    own, wall = opening.first("RectangularGeometry"), surface.first("RectangularGeometry")
    if own is None:
        return None
    unit_m = length_at(own, units)
    at = own.first("CartesianPoint")
    place = point_of(at, unit_m) if at is not None else (0.0, 0.0, 0.0)
    wide, tall = (metres(own.word(name), unit_m) for name in ("Width", "Height"))
    start = _start(wall, units)
    if place is None or not wide or not tall or start is None:
        return None
    (x, y, z), along = start
    along_m, up_m, _ = place
    ends = [(x + along[0] * far, y + along[1] * far) for far in (along_m, along_m + wide)]
    low, high = z + up_m, z + up_m + tall
    return [(*ends[0], low), (*ends[1], low), (*ends[1], high), (*ends[0], high)]


def _start(wall: Node | None, units: Units) -> tuple[Point3, Point] | None:
    """Lower left corner of a surface, and the direction to its right, both seen from outside."""
    corner = None
    if wall is not None and (at := wall.first("CartesianPoint")) is not None:
        corner = point_of(at, length_at(wall, units))
    bearing = number(wall.word("Azimuth")) if wall is not None else None
    if corner is None or bearing is None:
        return None
    tilt = number(wall.word("Tilt")) if wall is not None else None
    if tilt is not None and not 80 <= tilt <= 100:
        return None
    return corner, (-cos(radians(bearing)), sin(radians(bearing)))
