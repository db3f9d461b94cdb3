"""From the bytes of an IndoorGML file to what it tells of rooms and ways, and to a reading."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from statistics import median

import numpy as np

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading, Storey
from farwall.floor.geometry import Point
from farwall.readers.indoorgml.cells import Cell, cells_of
from farwall.readers.indoorgml.ways import Way, Ways, middle_of, ways_of
from farwall.readers.room_names import is_outdoors
from farwall.readers.told.doorways import Line
from farwall.readers.told.levels import by_height, floor_words, pieces_of
from farwall.readers.told.nouns import Told, ToldSpace
from farwall.readers.told.scale import honest_about_scale, unit_named
from farwall.readers.xml_text import Node, parse_xml

_ROOTS = ("IndoorFeatures", "PrimalSpaceFeatures")
_WALL_M = 0.6


def read_indoorgml(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floors in an IndoorGML file.

    `scale_m_per_unit` [m] is the user's own word for its unit; without one metres are taken and
    said. Raises Refused when it is no such file.
    """
    from farwall.readers.told.assemble import assemble

    return honest_about_scale(assemble(told_of(data, scale_m_per_unit=scale_m_per_unit)))


@np.errstate(all="ignore")  # sums of areas divide by nothing on some slivers, and say so
def told_of(data: bytes, *, scale_m_per_unit: float | None = None) -> Told:
    """All that an IndoorGML file tells, in metres."""
    root = parse_xml(data)
    if root.name not in _ROOTS:
        raise Refused(Mistake("", f"Its root is {root.name}.", "Give an IndoorGML file."))
    by_id = _by_id(root)
    unit_m = scale_m_per_unit or 1.0
    cells, bare = cells_of(root, by_id, unit_m)
    ways = ways_of(root, cells, by_id, unit_m)
    rooms, storeys, by_level = by_height(_rooms(cells), set())
    floors = {room.id: room.storey for room in rooms}
    named = _named_storeys(cells)
    asked = _unit_asked(cells) if scale_m_per_unit is None else ()
    return Told(
        format="IndoorGML",
        length_unit=unit_named(unit_m),
        header_unit="",
        scale_m_per_unit=unit_m,
        spaces=tuple(rooms),
        openings=tuple(
            replace(way, storey=floors.get(next(iter(way.relations), ""), way.storey))
            for way in ways.openings
        ),
        storeys=(*named, *storeys),
        mended=(*_unit_said(root, scale_m_per_unit), *by_level, *_paired(ways)),
        left=(*_cells_left(cells, bare), *_ways_left(ways), *_bare(ways)),
        asks=(*asked, *_leaves(ways)),
        wall_m=_WALL_M,
    )


def _by_id(root: Node) -> Mapping[str, Node]:
    stack = [root]
    found: dict[str, Node] = {}
    while stack:
        node = stack.pop()
        if own := node.get("id"):
            found.setdefault(own, node)
        stack += node.children
    return found


def _rooms(cells: Sequence[Cell]) -> list[ToldSpace]:
    return [piece for cell in cells if cell.kind == "room" for piece in _pieces(cell)]


def _pieces(cell: Cell) -> list[ToldSpace]:
    room = ToldSpace(
        cell.id,
        cell.plan.shape,
        cell.name,
        cell.storey,
        cell.plan.floor_m,
        cell.plan.height_m,
        outdoors=is_outdoors(cell.name),
    )
    return pieces_of(room, cell.plan, ())


def _named_storeys(cells: Sequence[Cell]) -> list[Storey]:
    lowest: dict[str, float] = {}
    for cell in cells:
        if cell.storey:
            lowest[cell.storey] = min(cell.plan.floor_m, lowest.get(cell.storey, float("inf")))
    return [Storey(name, name, height) for name, height in lowest.items()]


def _unit_said(root: Node, scale_m_per_unit: float | None) -> tuple[Note, ...]:
    if scale_m_per_unit is not None:
        return (Note("unit-overruled", f"{scale_m_per_unit:g} m a unit was said by you."),)
    frames = {node.get("srsName") for node in root.walk("Envelope", "Solid", "Polygon")} - {""}
    told = f" Its frame: {', '.join(sorted(frames)[:3])}." if frames else ""
    return (Note("unit-metres", f"The file tells no unit of length; metres were taken.{told}"),)


def _unit_asked(cells: Sequence[Cell]) -> tuple[Note, ...]:
    """Asked only when rooms would not stand as high as rooms do."""
    heights = [cell.plan.height_m for cell in cells if cell.plan.height_m]
    if not heights or 1.9 <= median(heights) <= 8.0:
        return ()
    what = (
        f"In metres its rooms would stand {median(heights):.2f} m high. Say how long one unit is."
    )
    return (Note("scale", what),)


def _paired(ways: Ways) -> tuple[Note, ...]:
    if not ways.total:
        return ()
    placed, storeys, lost = len(ways.placed), len(ways.between_storeys), len(ways.unplaced)
    count = placed + storeys + lost
    what = (
        f"{ways.total} transitions make {count} way{'' if count == 1 else 's'} between two cells, "
        f"those in both directions counted once: {placed} in plan as openings, {storeys} from "
        f"storey to storey, {lost} without a place."
    )
    return (Note("transitions-paired", what),)


def _cells_left(cells: Sequence[Cell], bare: Sequence[tuple[str, int]]) -> list[Note]:
    notes = [
        Note("room-without-floor", f"The cell “{name}” (line {line}) has no floor; left out.")
        for name, line in bare
    ]
    others = sum(bool(cell.other) for cell in cells)
    if others:
        what = f"{others} × object of another file left aside: that file was not opened."
        notes.append(Note("not-read", what))
    for cell in cells:
        middle = cell.plan.shape.representative_point()
        at = float(middle.x), float(middle.y)
        if cell.kind == "solid":
            notes.append(Note("not-walked", f"The cell “{cell.name}” is nothing to walk in.", at))
        notes += floor_words(cell.name, cell.plan)
        if cell.broken:
            what = f"{cell.broken} faces of “{cell.name}” are no faces; passed over."
            notes.append(Note("face-broken", what, at))
    return notes


def _ways_left(ways: Ways) -> list[Note]:
    notes = [
        Note(
            "between-storeys",
            f"{_joined(way)} leads from storey to storey: a stair, not an opening in plan.",
            middle_of(way),
        )
        for way in ways.between_storeys
    ]
    notes += [
        Note("opening-nowhere", f"{_joined(way)} is told, but not where.", middle_of(way))
        for way in ways.unplaced
    ]
    if ways.nowhere:
        names = ", ".join(ways.nowhere[:5]) + (" …" if len(ways.nowhere) > 5 else "")
        what = f"{len(ways.nowhere)} transitions join no two cells that are known: {names}"
        notes.append(Note("not-read", what))
    return notes


def _joined(way: Way) -> str:
    first, second = way.cells
    return f"The way between “{first.name}” and “{second.name}” ({', '.join(way.ids)})"


def _leaves(ways: Ways) -> tuple[Note, ...]:
    if not ways.placed:
        return ()
    what = (
        f"The file does not say in which of {len(ways.placed)} openings a leaf hangs; all were "
        "taken as open. Say which are doors: a seam can hide under a leaf."
    )
    return (Note("leaf", what),)


def _bare(ways: Ways) -> list[Note]:
    """One line for each opening whose leaf is not told, so that each can be answered."""
    names = {"+".join(way.ids): way.cells for way in ways.placed}
    return [
        Note(
            "no-leaf",
            f"The opening {way.width_m or 0:.2f} m wide between “{names[way.id][0].name}” and "
            f"“{names[way.id][1].name}” is taken as open: no leaf is told in it.",
            _between(way.seam),
        )
        for way in ways.openings
        if way.id in names and way.seam is not None
    ]


def _between(seam: Line) -> Point:
    (x1, y1), (x2, y2) = seam
    return (x1 + x2) / 2, (y1 + y2) / 2
