"""Door heads drawn over the openings: rectangles on a layer for headers."""

from __future__ import annotations

from math import dist

import shapely

from farwall.readers.lines.bounds import Bounds, lines_of
from farwall.readers.lines.faces import Nets, polygons_between, polygons_in
from farwall.readers.lines.portals import PASSAGE_M, WALL_DEPTH_M, Portal, clear_of
from farwall.readers.lines.sheet import Role, Swing
from farwall.readers.lines.swings import shuts


def head_portals(bounds: Bounds) -> list[Portal]:
    """A portal for every rectangle that the head lines close."""
    lines = lines_of(s for s in bounds.strong if s.role is Role.HEADER)
    faces = polygons_between(lines) if lines else []
    portals = [portal for face in faces if (portal := rectangle(face, "head")) is not None]
    return sorted(portals, key=lambda portal: portal.seam)


def shut_portals(
    lines: list[shapely.LineString], nets: Nets, swings: list[Swing], known: list[Portal]
) -> list[Portal]:
    """A portal for every closed rectangle in the walls that a leaf shuts, whatever its layer."""
    found: list[Portal] = []
    for face in polygons_in(nets.of(lines)) if swings else []:
        portal = rectangle(face, "head")
        here = portal is not None and any(shuts(swing, portal) for swing in swings)
        if portal is not None and here and clear_of(portal, known + found):
            found.append(portal)
    return sorted(found, key=lambda portal: portal.seam)


def rectangle(face: shapely.Polygon, found_by: str) -> Portal | None:
    """The portal of a face that is a rectangle as deep as a wall, or None."""
    box = face.minimum_rotated_rectangle
    if not isinstance(box, shapely.Polygon) or face.area < 0.97 * box.area:
        return None
    corners = [(float(x), float(y)) for x, y in shapely.get_coordinates(box)[:4]]
    a, b, c, d = corners
    if dist(a, b) < dist(b, c):
        a, b, c, d = b, c, d, a
    portal = Portal(((a, b), (d, c)), found_by)
    deep = WALL_DEPTH_M[0] <= portal.depth_m <= WALL_DEPTH_M[1]
    return portal if deep and PASSAGE_M[0] <= portal.width_m <= PASSAGE_M[1] else None
