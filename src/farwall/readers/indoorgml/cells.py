"""Cells of IndoorGML as rooms, and as doors where the navigation module names them so.

Source of the names: [indoorgml-103], core and navigation modules (from memory).
"""

from __future__ import annotations

import re
from collections.abc import Mapping

import shapely

from farwall.nouns import dataclass
from farwall.readers.indoorgml.gml import faces_of, target
from farwall.readers.told.shells import Face, Plan, floor_of, outline_of
from farwall.readers.xml_text import Node

_DOORWAY_M2 = 4.0
"""A gate of 4 m in a wall of 1 m (guess)."""
_SOLID = {"NonNavigableSpace", "ObjectSpace", "Obstacle"}
_STOREY = re.compile(r"storey\s*=\s*\"?([^\":;]+)", re.I)


@dataclass(frozen=True)
class Cell:
    """A cell: its floor, and `outline`, the plan of all that is in it at any height.

    kind: room, door, way out or solid. `state` is the id of its state; `other` the name of the
    object in another file that it stands for.
    """

    id: str
    name: str
    kind: str
    plan: Plan
    outline: shapely.Polygon
    storey: str = ""
    state: str = ""
    other: str = ""
    broken: int = 0


def cells_of(
    root: Node, by_id: Mapping[str, Node], unit_m: float
) -> tuple[list[Cell], list[tuple[str, int]]]:
    """All cells with a floor, and the names and lines of those without."""
    cells: list[Cell] = []
    bare: list[tuple[str, int]] = []
    seen: set[str] = set()
    for member in root.walk("cellSpaceMember"):
        node = member.children[0] if member.children else by_id.get(target(member))
        if node is None:
            continue
        own = node.get("id") or f"cell-{len(cells) + 1}"
        name = node.word("name") or own
        cell = _cell(node, own, name, by_id, unit_m) if own not in seen else None
        seen.add(own)
        if cell is None:
            bare.append((name, node.line))
        else:
            cells.append(cell)
    return cells, bare


def _cell(node: Node, own: str, name: str, by_id: Mapping[str, Node], unit_m: float) -> Cell | None:
    geometry = node.first("cellSpaceGeometry", "Geometry3D", "Geometry2D")
    if geometry is None:
        return None
    flat = next(geometry.walk("Geometry2D"), None) if geometry.name != "Geometry2D" else geometry
    solid = next(geometry.walk("Geometry3D"), None)
    faces, broken = faces_of(solid or geometry, by_id, 2 if solid is None and flat else 3)
    faces = [_scaled(face, unit_m) for face in faces]
    plan = floor_of(faces)
    outline = outline_of(faces)
    if plan is None or outline is None:
        return None
    storey = _STOREY.search(node.word("description"))
    return Cell(
        own,
        name,
        _kind(node, name, float(plan.shape.area)),
        plan,
        outline,
        storey[1].strip() if storey else "",
        target(node.first("duality")),
        _other(node),
        broken,
    )


def _scaled(face: Face, unit_m: float) -> Face:
    if unit_m == 1.0:
        return face
    outer, holes = face
    return [(x * unit_m, y * unit_m, z * unit_m) for x, y, z in outer], [
        [(x * unit_m, y * unit_m, z * unit_m) for x, y, z in hole] for hole in holes
    ]


def _kind(node: Node, name: str, area_m2: float) -> str:
    """What a cell is; one larger than any doorway is a room, whatever it is called."""
    if area_m2 < _DOORWAY_M2:
        if node.name == "AnchorSpace":
            return "way out"
        if node.name == "ConnectionSpace" or re.search(r"\bdoor\b", name, re.I):
            return "door"
    return "solid" if node.name in _SOLID else "room"


def _other(node: Node) -> str:
    reference = node.first("externalReference")
    told = next(reference.walk("name", "uri"), None) if reference is not None else None
    return told.text if told is not None else ""
