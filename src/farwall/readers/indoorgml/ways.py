"""Transitions of IndoorGML as openings: where two cells touch, near where the path goes through."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import field
from itertools import count
from math import dist

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.indoorgml.cells import Cell
from farwall.readers.indoorgml.gml import faces_of, points_of, target
from farwall.readers.indoorgml.touch import shared_stretches
from farwall.readers.told.doorways import Line, farthest, middle_line
from farwall.readers.told.nouns import ToldOpening
from farwall.readers.told.shells import Point3
from farwall.readers.xml_text import Node

_STOREY_M = 1.5
_LONGEST = 10_000


@dataclass(frozen=True)
class Way:
    """A way between two cells, walked by one transition or by one each way."""

    ids: tuple[str, ...]
    cells: tuple[Cell, Cell]
    path: tuple[Point3, ...]
    boundary: Node | None = None


@dataclass
class Ways:
    """Openings; ways between storeys; and transitions that join nothing that is known."""

    openings: list[ToldOpening] = field(default_factory=list)
    between_storeys: list[Way] = field(default_factory=list)
    nowhere: list[str] = field(default_factory=list)
    placed: list[Way] = field(default_factory=list)
    unplaced: list[Way] = field(default_factory=list)
    total: int = 0


def ways_of(root: Node, cells: Sequence[Cell], by_id: Mapping[str, Node], unit_m: float) -> Ways:
    """All transitions, paired where one goes each way, each as an opening where it lies in plan."""
    found = Ways()
    by_state = _by_state(root, cells)
    for way in _pairs(root, by_state, by_id, unit_m, found):
        doors = [cell for cell in way.cells if cell.kind in ("door", "way out")]
        first, second = way.cells
        if abs(first.plan.floor_m - second.plan.floor_m) > _STOREY_M:
            found.between_storeys.append(way)
        elif not doors:
            _add(found, way, _seam(way, by_id, unit_m))
    _door_cells(cells, found, root, by_state)
    return found


def _add(found: Ways, way: Way, seam: Line | None) -> None:
    first, second = way.cells
    (found.placed if seam else found.unplaced).append(way)
    found.openings.append(
        ToldOpening(
            "+".join(way.ids),
            seam,
            leaf=False,
            relations=(first.id, second.id),
            storey=first.storey,
            width_m=round(dist(*seam), 4) if seam else None,
            said_outside=False,
            foot_m=max(first.plan.floor_m, second.plan.floor_m),
        )
    )


def _door_cells(
    cells: Sequence[Cell], found: Ways, root: Node, by_state: Mapping[str, Cell]
) -> None:
    """Cells that are doors themselves: a line in their middle, between the rooms they join."""
    joined: dict[str, list[str]] = {}
    for ends in _ends(root, by_state):
        for one, other in (ends, ends[::-1]):
            if one.kind in ("door", "way out") and other.kind == "room":
                joined.setdefault(one.id, []).append(other.id)
    rooms = [cell.plan.shape for cell in cells if cell.kind == "room"]
    for cell in cells:
        if cell.kind not in ("door", "way out"):
            continue
        seam = middle_line(cell.plan.shape, rooms)
        relations = tuple(dict.fromkeys(joined.get(cell.id, [])))[:2]
        outside = cell.kind == "way out" or None
        found.openings.append(
            ToldOpening(
                cell.id,
                seam,
                leaf=True,
                relations=relations,
                storey=cell.storey,
                width_m=round(dist(*seam), 4),
                height_m=cell.plan.height_m,
                said_outside=outside if len(relations) < 2 else False,
                foot_m=cell.plan.floor_m,
            )
        )


def _by_state(root: Node, cells: Sequence[Cell]) -> dict[str, Cell]:
    """Cells by the id of their state, told from either side."""
    by_cell = {cell.id: cell for cell in cells}
    found = {cell.state: cell for cell in cells if cell.state}
    for state in root.walk("State"):
        cell = by_cell.get(target(state.first("duality")))
        if cell is not None and state.get("id"):
            found[state.get("id")] = cell
    return found


def _ends(root: Node, by_state: Mapping[str, Cell]) -> Iterator[tuple[Cell, Cell]]:
    for node in root.walk("Transition"):
        ends = [by_state.get(target(end)) for end in node.all("connects")]
        if len(ends) == 2 and ends[0] is not None and ends[1] is not None:
            yield ends[0], ends[1]


def _pairs(
    root: Node,
    by_state: Mapping[str, Cell],
    by_id: Mapping[str, Node],
    unit_m: float,
    found: Ways,
) -> list[Way]:
    """Transitions that are known, the two directions of one path taken together."""
    ways: dict[tuple[object, ...], Way] = {}
    numbers = count(1)
    for node in root.walk("Transition"):
        found.total += 1
        own = node.get("id") or f"transition-{next(numbers)}"
        ends = [by_state.get(target(end)) for end in node.all("connects")]
        if len(ends) != 2 or ends[0] is None or ends[1] is None or ends[0] is ends[1]:
            found.nowhere.append(own)
            continue
        path = _path(node, unit_m)
        first, second = ends[0], ends[1]
        if first.id > second.id:
            first, second, path = second, first, path[::-1]
        middle = tuple((round(x, 3), round(y, 3), round(z, 3)) for x, y, z in path[1:-1])
        key = (first.id, second.id, middle)
        known = ways.get(key)
        ids = (*known.ids, own) if known else (own,)
        ways[key] = Way(ids, (first, second), path, by_id.get(target(node.first("duality"))))
    return list(ways.values())


def _path(node: Node, unit_m: float) -> tuple[Point3, ...]:
    line = next(node.walk("LineString", "Curve"), None)
    points = points_of(line) if line is not None else None
    return tuple((x * unit_m, y * unit_m, z * unit_m) for x, y, z in (points or [])[:_LONGEST])


def _seam(way: Way, by_id: Mapping[str, Node], unit_m: float) -> Line | None:
    """By the boundary that the transition stands for; else where both cells touch; else none."""
    if way.boundary is not None:
        faces, _ = faces_of(way.boundary, by_id)
        flat = [(x * unit_m, y * unit_m) for outer, _ in faces for x, y, _z in outer]
        line = farthest(flat) if flat else None
        if line is not None and dist(*line) < 20:
            return line
    stretches = shared_stretches(way.cells[0].outline, way.cells[1].outline)
    at = _through(way)
    if at is None:
        return stretches[0] if len(stretches) == 1 else None
    return min(stretches, key=lambda line: shapely.LineString(line).distance(at), default=None)


def _through(way: Way) -> shapely.Geometry | None:
    """Where the path goes from one cell to the other: its corners in between, or the path."""
    inner = [(x, y) for x, y, _ in way.path[1:-1]]
    if inner:
        return shapely.MultiPoint(inner)
    flat = [(x, y) for x, y, _ in way.path]
    return shapely.LineString(flat) if len(set(flat)) > 1 else None


def middle_of(way: Way) -> Point:
    """A point of the way for a note."""
    if way.path:
        x, y, _ = way.path[len(way.path) // 2]
        return x, y
    point = way.cells[0].plan.shape.representative_point()
    return float(point.x), float(point.y)
