"""Fixtures that stand on the slab: cabinets, tubs, islands, stairs, by their drawn outlines.

Lines of casework cut a room into the floor that its doors lead to and what stands along the
walls. Shelves in closets, overhangs and single symbols (a toilet, a washer) are not certain to
stand on the slab when it is stained: they are listed instead.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

import shapely

from farwall.facts.reading import Note
from farwall.floor.geometry import Point, polygon_geometry, polygons_of
from farwall.nouns import dataclass
from farwall.readers.lines.bounds import line, lines_of
from farwall.readers.lines.faces import breadth_m, polygons_between
from farwall.readers.lines.portals import Portal
from farwall.readers.lines.rooms import Found, side_share
from farwall.readers.lines.sheet import Block, Role, Sheet, Stroke
from farwall.readers.room_names import is_for_shelves

_RIM_M = 0.12
_CABINET_M = (0.42, 1.0)
"""Depths of base cabinets and vanities: 0.46 to 0.66 m (common practice, from memory)."""
_TUB_LONG_M, _TUB_WIDE_M = (1.3, 2.1), (0.6, 1.15)
_SMALLEST_M2 = 0.15


@dataclass(frozen=True)
class Standing:
    """A fixture found: what it is and its outline in metres."""

    kind: str
    shape: shapely.Polygon


def find_fixtures(
    sheet: Sheet, rooms: Sequence[Found], portals: Sequence[Portal]
) -> tuple[list[Standing], list[Note]]:
    """The fixtures in all rooms, and a note for whatever was left aside."""
    strokes = [s for s in sheet.strokes if _stands(s)]
    fixtures: list[Standing] = []
    left: list[Note] = []
    for room in rooms:
        near = [s for s in strokes if line(s).intersects(room.shape)]
        if near and is_for_shelves(room.name):
            left.append(_shelves(room))
        elif near:
            found, notes = _in_room(room, near, portals, sheet)
            fixtures += found
            left += notes
    return fixtures, [*left, *_symbols(sheet, rooms, fixtures), *_to_check(fixtures)]


def _stands(stroke: Stroke) -> bool:
    """Casework in whole lines; dashes tell of what hangs overhead."""
    return stroke.role in {Role.FIXTURE, Role.STAIR} and not stroke.dashed and not stroke.block


def _in_room(
    room: Found, strokes: list[Stroke], portals: Sequence[Portal], sheet: Sheet
) -> tuple[list[Standing], list[Note]]:
    lines = [shapely.LineString(ring.coords) for ring in _rings(room.shape)]
    faces = polygons_between([*lines, *lines_of(strokes)])
    inside = [f for f in faces if room.shape.covers(f.representative_point())]
    floor = [f for f in inside if _is_at_a_door(f, portals)] or inside[:1]
    kept = {id(f) for f in floor}
    rest = [f for f in inside if id(f) not in kept]
    walked = shapely.unary_union(floor)
    notes = [_note("casework-unclear", "casework between two doors", room, f) for f in floor[1:]]
    if not rest or not isinstance(walked, shapely.Polygon):
        return [], notes
    whole = [shapely.Polygon(face.exterior) for face in rest]
    hanging = [f for f in whole if _RIM_M < breadth_m(f) < _CABINET_M[0] and _borders(f, walked)]
    solid = shapely.unary_union([f for f in whole if not any(f is h for h in hanging)])
    notes += [_note("overhang", "a narrow strip of casework", room, f) for f in hanging]
    found = []
    for shape in polygons_of(solid):
        kind = _kind(shape, room, strokes, sheet)
        if kind:
            found.append(Standing(kind, shape))
        elif shape.area >= _SMALLEST_M2:
            notes.append(_note("casework-unclear", "a closed shape of casework", room, shape))
    return found, notes


def _rings(shape: shapely.Polygon) -> list[shapely.LinearRing]:
    return [shape.exterior, *shape.interiors]


def _is_at_a_door(face: shapely.Polygon, portals: Sequence[Portal]) -> bool:
    return any(
        side_share(face, side) > 0.3
        for portal in portals
        if face.distance(portal.shape) < 0.01
        for side in portal.faces
    )


def _borders(face: shapely.Polygon, floor: shapely.Polygon) -> bool:
    return face.boundary.intersection(floor.buffer(0.002)).length > 0.2


def _kind(shape: shapely.Polygon, room: Found, strokes: list[Stroke], sheet: Sheet) -> str:
    """What a closed shape along the wall is, or nothing when that is not certain."""
    here = [s for s in strokes if line(s).intersects(shape.buffer(0.01))]
    if any(s.role is Role.STAIR for s in here):
        return "stair"
    if shape.area < _SMALLEST_M2:
        return ""
    if _is_tub(shape, here):
        return "tub"
    if _holds_a_symbol(shape, sheet.blocks):
        return "cabinet"
    if shape.boundary.distance(room.shape.boundary) > 0.05:
        return "island"
    return "cabinet" if _CABINET_M[0] <= breadth_m(shape) <= _CABINET_M[1] else ""


def _is_tub(shape: shapely.Polygon, strokes: list[Stroke]) -> bool:
    """As large as a tub, with a rounded line inside."""
    x, y = shapely.get_coordinates(shape.minimum_rotated_rectangle)[:3].T
    sides = sorted(
        [float(((x[i + 1] - x[i]) ** 2 + (y[i + 1] - y[i]) ** 2) ** 0.5) for i in (0, 1)]
    )
    long, wide = sides[1], sides[0]
    rounded = [s for s in strokes if s.curve and shape.buffer(-0.02).intersects(line(s))]
    sized = _TUB_LONG_M[0] <= long <= _TUB_LONG_M[1] and _TUB_WIDE_M[0] <= wide <= _TUB_WIDE_M[1]
    return sized and len(rounded) > 8


def _holds_a_symbol(shape: shapely.Polygon, blocks: Sequence[Block]) -> bool:
    return any(shape.intersects(shapely.Point(_middle(block))) for block in blocks)


def _middle(block: Block) -> Point:
    return (block.low[0] + block.high[0]) / 2, (block.low[1] + block.high[1]) / 2


def _symbols(sheet: Sheet, rooms: Sequence[Found], fixtures: Sequence[Standing]) -> list[Note]:
    """Symbols that stand free in a room: named by the file, placed at the first of each."""
    free = [
        block
        for block in sheet.blocks
        if block.role is Role.FIXTURE
        and any(room.shape.intersects(shapely.Point(_middle(block))) for room in rooms)
        and not any(f.shape.intersects(shapely.Point(_middle(block))) for f in fixtures)
    ]
    counts = Counter(block.name for block in free)
    first = {block.name: _middle(block) for block in reversed(free)}
    return [
        Note("symbol", f"{count} × symbol “{name}” not kept dry: say so if it is set before the "
             "slab is stained.", first[name])
        for name, count in sorted(counts.items())
    ]  # fmt: skip


def _to_check(fixtures: Sequence[Standing]) -> list[Note]:
    if not fixtures:
        return []
    counts = Counter(fixture.kind for fixture in fixtures)
    said = ", ".join(f"{count} × {kind}" for kind, count in sorted(counts.items()))
    what = (
        f"{said} drawn: taken as standing on the slab and kept dry. Strike out what is not set "
        "when it is stained."
    )
    return [Note("fixtures-to-check", what)]


def _shelves(room: Found) -> Note:
    point = room.shape.representative_point()
    what = (
        f"Casework in {room.first_name or 'a closet'} was taken as shelves on the wall: the floor "
        "under it is sprayed."
    )
    return Note("shelves", what, (float(point.x), float(point.y)))


def _note(code: str, what: str, room: Found, shape: shapely.Polygon) -> Note:
    point = shape.representative_point()
    where = f" in {room.first_name}" if room.name else ""
    words = f"{what[:1].upper()}{what[1:]}{where} ({shape.area:.1f} m²) was not taken as a fixture."
    return Note(code, words, (float(point.x), float(point.y)), polygon_geometry(shape))
