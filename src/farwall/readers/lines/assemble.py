"""Gives ids, shifts the origin, and puts the reading together."""

from __future__ import annotations

from dataclasses import replace

import shapely
from shapely.affinity import translate

from farwall.facts.reading import Note, Reading, Stated, Storey
from farwall.floor.geometry import DECIMALS, Point, polygon_geometry
from farwall.floor.nouns import Exit, Fixture, Floor, Opening, Room, Window
from farwall.nouns import dataclass
from farwall.readers.lines.fixtures import Standing
from farwall.readers.lines.rooms import Found, Sorted
from farwall.readers.lines.sheet import Sheet
from farwall.readers.lines.unit import UnitFinding
from farwall.readers.lines.ways import Way, Ways, is_exit
from farwall.readers.room_names import Ids, slug
from farwall.readers.sizes import StatedSize
from farwall.units import M_PER_FT

_CLOSET_M2 = 4.0
_KINK_M = 0.0005
"""Corners nearer than this to a straight line come from rounding, not from the drawing."""


@dataclass(frozen=True)
class Parts:
    """What was found on the sheet, in metres of the drawing's own frame."""

    faces: Sorted
    ways: Ways
    standing: list[Standing]
    mended: list[Note]
    storeys: tuple[Storey, ...]
    asks: tuple[Note, ...]


def assemble(sheet: Sheet, unit: UnitFinding, parts: Parts) -> Reading:
    """The reading, its lower left corner at the origin."""
    faces, ways = parts.faces, parts.ways
    storeys = [storey.id for storey in parts.storeys]
    found_rooms, order = _in_reading_order(faces.rooms)
    corner = _corner(faces)
    names, guessed = _names(found_rooms)
    ids = Ids()
    room_ids = [
        ids.take(slug(found.first_name or name))
        for found, name in zip(found_rooms, names, strict=True)
    ]
    rooms = tuple(
        Room(
            room_id,
            polygon_geometry(_shifted(found.shape, corner)),
            name,
            storeys[found.storey],
        )
        for room_id, found, name in zip(room_ids, found_rooms, names, strict=True)
    )
    openings, exits = _openings(ways.openings, room_ids, order, corner)
    floor = Floor(
        rooms=rooms,
        openings=openings,
        fixtures=_fixtures(parts.standing, corner),
        windows=tuple(
            Window(_line(way, corner), None, _rounded(way.signs.height_m))
            for way in _placed(ways.windows)
        ),
        north_deg=sheet.north_deg,
    )
    stated = {
        room_id: known
        for room_id, found in zip(room_ids, found_rooms, strict=True)
        if (known := _stated(found, unit)) is not None
    }
    notes = [*unit.mended, *parts.mended, *_origin(corner, rooms)]
    left = [*unit.left, *faces.left, *ways.left, *guessed, *_left(sheet, faces)]
    return Reading(
        format=sheet.format,
        length_unit=unit.unit,
        header_unit=unit.header,
        scale_m_per_unit=unit.scale,
        floor=floor,
        exits=exits,
        storeys=parts.storeys if rooms else (),
        stated=stated,
        mended=tuple(_moved(note, corner) for note in notes),
        left=tuple(_moved(note, corner) for note in left),
        asks=(*unit.asks, *parts.asks, *_asks(rooms, exits, faces)),
        shapes_m_per_unit=unit.working_scale if unit.scale is None else None,
        origin_m=corner,
    )


def _in_reading_order(rooms: list[Found]) -> tuple[list[Found], dict[int, int]]:
    """Rooms from the top left on, and where each one went."""

    def place(index: int) -> tuple[float, float]:
        low_x, _, _, high_y = rooms[index].shape.bounds
        return -round(high_y, 1), round(low_x, 1)

    order = sorted(range(len(rooms)), key=place)
    return [rooms[i] for i in order], {old: new for new, old in enumerate(order)}


def _corner(faces: Sorted) -> Point:
    shapes = [found.shape for found in faces.rooms] or [found.shape for found in faces.outdoors]
    if not shapes:
        return 0.0, 0.0
    low_x, low_y, _, _ = shapely.unary_union(shapes).bounds
    return round(low_x, DECIMALS), round(low_y, DECIMALS)


def _shifted(shape: shapely.Polygon, corner: Point) -> shapely.Polygon:
    plain = shape.simplify(_KINK_M)
    moved = translate(plain, -corner[0], -corner[1])
    if not isinstance(moved, shapely.Polygon):
        raise TypeError("a polygon stays a polygon when it is shifted")
    return moved


def _names(rooms: list[Found]) -> tuple[list[str], list[Note]]:
    names, notes = [], []
    for found in rooms:
        name = found.name
        if not name and found.shape.area < _CLOSET_M2:
            name = "Closet"
            point = found.shape.representative_point()
            what = (
                f"A room of {found.shape.area:.1f} m² has no name in the drawing; called a closet."
            )
            notes.append(Note("name-guessed", what, (float(point.x), float(point.y))))
        names.append(name)
    return names, notes


def _openings(
    ways: list[Way], room_ids: list[str], order: dict[int, int], corner: Point
) -> tuple[tuple[Opening, ...], tuple[Exit, ...]]:
    opening_ids, exit_ids = Ids(), Ids()
    openings, exits = [], []
    for way in _placed(ways):
        rooms = tuple(room_ids[order[place]] for place in way.rooms)
        opening_id = opening_ids.take(f"{way.kind}-{'-'.join(dict.fromkeys(rooms))}")
        shape = way.portal.shape
        threshold = None if way.portal.thin else polygon_geometry(_shifted(shape, corner))
        openings.append(
            Opening(
                opening_id,
                way.kind,
                _line(way, corner),
                rooms,
                round(way.portal.width_m, DECIMALS),
                threshold,
            )
        )
        if is_exit(way):
            exits.append(Exit(exit_ids.take(f"exit-{rooms[0]}"), opening_id))
    return tuple(openings), tuple(exits)


def _fixtures(standing: list[Standing], corner: Point) -> tuple[Fixture, ...]:
    ids = Ids()
    ordered = sorted(standing, key=lambda f: (-round(f.shape.bounds[3], 1), f.shape.bounds[0]))
    return tuple(
        Fixture(f.kind, polygon_geometry(_shifted(f.shape, corner)), ids.take(f.kind))
        for f in ordered
    )


def _placed(ways: list[Way]) -> list[Way]:
    return sorted(ways, key=lambda w: (-round(w.portal.middle[1], 1), round(w.portal.middle[0], 1)))


def _line(way: Way, corner: Point) -> tuple[Point, Point]:
    a, b = way.portal.seam
    return _at(a, corner), _at(b, corner)


def _rounded(length_m: float | None) -> float | None:
    return None if length_m is None else round(length_m, DECIMALS)


def _at(point: Point, corner: Point) -> Point:
    return (
        round(point[0] - corner[0], DECIMALS) + 0.0,
        round(point[1] - corner[1], DECIMALS) + 0.0,
    )


def _moved(note: Note, corner: Point) -> Note:
    where = None if note.where is None else _at(note.where, corner)
    shape = note.shape and polygon_geometry(translate(note.shape.shape, -corner[0], -corner[1]))
    return replace(note, where=where, shape=shape)


def _stated(found: Found, unit: UnitFinding) -> Stated | None:
    areas = [_area_m2(label.size, unit) for label in found.labels if label.size]
    if not areas or any(area is None for area in areas):
        return None
    text = " + ".join(label.size.text for label in found.labels if label.size)
    return Stated(round(sum(area for area in areas if area), 4), "size-text", text)


def _area_m2(size: StatedSize, unit: UnitFinding) -> float | None:
    if size.area_m2:
        return size.area_m2
    if size.sides_m:
        return size.sides_m[0] * size.sides_m[1]
    if size.bare and unit.scale:
        side = M_PER_FT if unit.unit in {"in", "ft"} else 1.0
        return size.bare[0] * size.bare[1] * side**2
    return None


def _origin(corner: Point, rooms: tuple[Room, ...]) -> list[Note]:
    if not rooms or max(map(abs, corner)) < 10**-DECIMALS:
        return []
    what = (
        f"The rooms' lower left corner, {corner[0]:.3f} m right and {corner[1]:.3f} m up in the "
        "drawing, was made the origin."
    )
    return [Note("origin-moved", what, corner)]


def _left(sheet: Sheet, faces: Sorted) -> list[Note]:
    notes = [
        Note("label-lost", f"“{label.name}” is lettered where no walls close a room.", label.at)
        for label in faces.lost_labels
    ]
    notes += [
        Note("not-read", f"{count} × {kind} could not be read and were passed over.")
        for kind, count in sheet.skipped
    ]
    if sheet.aside:
        said = ", ".join(f"{count} × {kind}" for kind, count in sheet.aside)
        notes.append(Note("set-aside", f"{said}: no walls, and left aside."))
    return notes


def _asks(rooms: tuple[Room, ...], exits: tuple[Exit, ...], faces: Sorted) -> list[Note]:
    if not rooms:
        return [Note("tracing", "No lines close a room here. Trace the rooms by hand.")]
    asks = []
    if faces.lost_labels:
        names = ", ".join(dict.fromkeys(label.name for label in faces.lost_labels))
        asks.append(Note("tracing", f"No walls close {names}. Trace what is missing by hand."))
    if not exits:
        asks.append(Note("way-out", "No door leads outside. Say which opening is the way out."))
    return asks
