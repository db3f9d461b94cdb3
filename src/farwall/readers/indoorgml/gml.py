"""Points, rings and faces of GML as far as IndoorGML uses them.

Source of the spellings: [gml-322] (from memory).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import isfinite

from farwall.readers.told.scale import GRID_DECIMALS
from farwall.readers.told.shells import Face, Point3
from farwall.readers.xml_text import Node

_FARTHEST = 1e8
_HREFS = 8
"""A chain of references longer than this goes in a circle."""


def target(node: Node | None) -> str:
    """The id that an element points to, or nothing."""
    return node.get("href").removeprefix("#") if node is not None else ""


def numbers(text: str) -> list[float] | None:
    """Finite numbers parted by blanks or commas; None when one is not."""
    try:
        found = [round(float(word), GRID_DECIMALS) for word in text.replace(",", " ").split()]
    except (ValueError, OverflowError):
        return None
    sound = all(isfinite(value) and abs(value) < _FARTHEST for value in found)
    return found if sound else None


def points_of(node: Node, deep: int = 3) -> list[Point3] | None:
    """The points of a ring or line: `pos` by `pos`, or one list; None when one is no number."""
    found: list[Point3] = []
    for child in node.children:
        if child.name == "pos":
            told = numbers(child.text)
            if told is None or len(told) < 2:
                return None
            found.append((told[0], told[1], told[2] if len(told) > 2 else 0.0))
        elif child.name in ("posList", "coordinates"):
            told = numbers(child.text)
            step = _dimension(child, node, deep)
            if told is None or len(told) % step:
                return None
            found += [
                (told[i], told[i + 1], told[i + 2] if step == 3 else 0.0)
                for i in range(0, len(told), step)
            ]
        elif child.name in ("pointProperty", "Point"):
            inner = points_of(child, deep)
            if inner is None:
                return None
            found += inner
    return found


def _dimension(child: Node, parent: Node, deep: int) -> int:
    said = child.get("srsDimension") or parent.get("srsDimension")
    return int(said) if said in ("2", "3") else deep


def faces_of(node: Node, by_id: Mapping[str, Node], deep: int = 3) -> tuple[list[Face], int]:
    """All polygons below a node, also those that it only points to; and how many are broken."""
    faces: list[Face] = []
    broken = 0
    for polygon in _polygons(node, by_id):
        face = _face(polygon, deep)
        if face is None:
            broken += 1
        else:
            faces.append(face)
    return faces, broken


def _polygons(node: Node, by_id: Mapping[str, Node]) -> Iterator[Node]:
    yield from node.walk("Polygon", "PolygonPatch")
    for member in node.walk("surfaceMember", "baseSurface", "exterior"):
        seen, at = 0, by_id.get(target(member))
        while at is not None and at.name not in ("Polygon", "PolygonPatch") and seen < _HREFS:
            inner = next(at.walk("Polygon"), None) or by_id.get(target(at.first("baseSurface")))
            at, seen = inner, seen + 1
        if at is not None and at.name in ("Polygon", "PolygonPatch"):
            yield at


def _face(polygon: Node, deep: int) -> Face | None:
    exterior = polygon.first("exterior", "outerBoundaryIs")
    outer = _ring(exterior, deep)
    if outer is None or len(outer) < 3:
        return None
    holes = [_ring(node, deep) for node in polygon.all("interior", "innerBoundaryIs")]
    return outer, [hole for hole in holes if hole is not None and len(hole) > 2]


def _ring(node: Node | None, deep: int) -> list[Point3] | None:
    ring = node.first("LinearRing") if node is not None else None
    return points_of(ring, deep) if ring is not None else None
