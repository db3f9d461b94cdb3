"""What is wrong with a floor, all of it at once, each with its place and remedy."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from math import hypot, isfinite

import shapely
from shapely.validation import explain_validity

from farwall.errors import Mistake
from farwall.floor.geometry import Point, PolygonGeometry
from farwall.floor.nouns import Exit, Floor, Opening, Room
from farwall.floor.thresholds import DEEPEST_WALL_M

OVERLAP_M2 = 0.01
FARTHEST_M = 5000.0
_SMALLEST_M2 = 0.01
_SHORTEST_M = 0.05
_INSIDE_M = 0.02
_LONGEST = 60
"""Letters of a name in a sentence."""
_IDS = "Give each one an id of its own."
_METRES = "Coordinates are metres: check the unit."
_HOW_MANY = (
    "An outside door has one room, any other opening two; the same one twice where both sides are "
    "one room."
)


def faults_of(floor: Floor, exits: Sequence[Exit] = ()) -> list[Mistake]:
    """Every fault of a floor and its exits; an empty list means that it can be planned on."""
    polygons = list(_polygon_faults(floor))
    faults = [*_id_faults(floor, exits), *polygons]
    if not polygons:
        faults += [*_overlaps(floor.rooms), *_fixture_faults(floor)]
    faults += [*_opening_faults(floor, on_walls=not polygons), *_exit_faults(floor, exits)]
    return faults


def _id_faults(floor: Floor, exits: Sequence[Exit]) -> Iterator[Mistake]:
    if not floor.rooms:
        yield Mistake("floor.rooms", "the floor has no room.", "Give at least one room.")
    lists: tuple[tuple[str, Iterable[str]], ...] = (
        ("floor.rooms", (room.id for room in floor.rooms)),
        ("floor.openings", (opening.id for opening in floor.openings)),
        ("floor.fixtures", (fixture.id for fixture in floor.fixtures if fixture.id)),
        ("floor.saw_cuts", (cut.id for cut in floor.saw_cuts if cut.id)),
        ("exits", (way.id for way in exits)),
    )
    for where, ids in lists:
        for name, count in Counter(ids).items():
            if not name:
                yield Mistake(where, "an id is empty.", _IDS)
            elif count > 1:
                yield Mistake(where, f"the id {_q(name)} is used {count} times.", _IDS)


def _polygon_faults(floor: Floor) -> Iterator[Mistake]:
    for index, room in enumerate(floor.rooms):
        yield from _polygon(f"floor.rooms[{index}].polygon", room.polygon, f"room {_q(room.id)}")
    for index, fixture in enumerate(floor.fixtures):
        where = f"floor.fixtures[{index}].polygon"
        yield from _polygon(where, fixture.polygon, f"fixture {_q(fixture.kind)}")
    for index, opening in enumerate(floor.openings):
        if opening.threshold is not None:
            where = f"floor.openings[{index}].threshold"
            yield from _polygon(where, opening.threshold, f"the threshold of {_q(opening.id)}")


def _polygon(where: str, polygon: PolygonGeometry, what: str) -> Iterator[Mistake]:
    rings = polygon.coordinates
    points = [point for ring in rings for point in ring]
    if not rings or any(len(ring) < 4 for ring in rings):
        said = f"{what} has a ring of fewer than four points."
        yield Mistake(where, said, "A ring is three corners and the first of them again.")
    elif not all(isfinite(x) and isfinite(y) for x, y in points):
        yield Mistake(where, f"{what} has a coordinate that is no number.", "Measure it again.")
    elif max(max(abs(x), abs(y)) for x, y in points) > FARTHEST_M:
        yield Mistake(where, f"{what} lies more than {FARTHEST_M:g} m from the origin.", _METRES)
    elif any(ring[0] != ring[-1] for ring in rings):
        said = f"{what} has a ring that does not close."
        yield Mistake(where, said, "Repeat the first point at the end of the ring.")
    else:
        yield from _shape(where, polygon.shape, what)


def _shape(where: str, shape: shapely.Polygon, what: str) -> Iterator[Mistake]:
    if not shape.is_valid:
        said = f"the outline of {what} is not sound: {explain_validity(shape)}."
        yield Mistake(where, said, "Its line must not cross or touch itself.")
    elif shape.area < _SMALLEST_M2:
        yield Mistake(where, f"{what} has an area of {shape.area:.4f} m².", _METRES)
    elif not shapely.is_ccw(shape.exterior):
        said = f"the outer ring of {what} runs clockwise."
        yield Mistake(where, said, "Turn the order of its points round.")


def _overlaps(rooms: Sequence[Room]) -> Iterator[Mistake]:
    if len(rooms) < 2:
        return
    shapes = [room.polygon.shape for room in rooms]
    near = shapely.STRtree(shapes).query(shapes, predicate="intersects").T.tolist()
    for first, second in ((rooms[a], rooms[b]) for a, b in sorted(near) if a < b):
        if first.storey != second.storey:
            continue
        shared = first.polygon.shape.intersection(second.polygon.shape).area
        if shared > OVERLAP_M2:
            said = f"{_q(first.id)} and {_q(second.id)} overlap by {shared:.2f} m²."
            yield Mistake("floor.rooms", said, "Each piece of floor belongs to one room.")


def _fixture_faults(floor: Floor) -> Iterator[Mistake]:
    for index, fixture in enumerate(floor.fixtures):
        shape = fixture.polygon.shape
        if not any(shape.intersects(room.polygon.shape) for room in floor.rooms):
            said = f"fixture {_q(fixture.kind)} stands in no room."
            yield Mistake(f"floor.fixtures[{index}]", said, "Move it, or leave it out.")


def _opening_faults(floor: Floor, *, on_walls: bool) -> Iterator[Mistake]:
    for index, opening in enumerate(floor.openings):
        where = f"floor.openings[{index}]"
        unknown = [room for room in dict.fromkeys(opening.rooms) if room not in floor.room_by_id]
        for room in unknown:
            said = f"opening {_q(opening.id)} names a room {_q(room)} that is not there."
            yield Mistake(f"{where}.rooms", said, _known(floor.room_by_id))
        if len(opening.rooms) != (1 if opening.kind == "outside" else 2):
            said = f"opening {_q(opening.id)} ({opening.kind}) names {len(opening.rooms)} rooms."
            yield Mistake(f"{where}.rooms", said, _HOW_MANY)
        if not _line_is_sound(opening.line):
            said = f"the line of opening {_q(opening.id)} has no length."
            yield Mistake(f"{where}.line", said, "Give its two ends in metres.")
        elif on_walls and not unknown:
            yield from _off_wall(f"{where}.line", opening, floor)


def _line_is_sound(line: tuple[Point, Point]) -> bool:
    (ax, ay), (bx, by) = line
    return all(map(isfinite, (ax, ay, bx, by))) and hypot(bx - ax, by - ay) >= _SHORTEST_M


def _off_wall(where: str, opening: Opening, floor: Floor) -> Iterator[Mistake]:
    line = shapely.LineString(opening.line)
    one_room = len(set(opening.rooms)) < len(opening.rooms)
    for room_id in dict.fromkeys(opening.rooms):
        room = floor.room_by_id[room_id].polygon.shape
        within = room.boundary.buffer(DEEPEST_WALL_M).covers(line)
        if one_room:  # both sides are the same floor: the line crosses it from wall to wall
            ends = shapely.MultiPoint(list(opening.line))
            within = room.boundary.buffer(DEEPEST_WALL_M).covers(ends)
        through = 0.0 if one_room else line.intersection(room.buffer(-_INSIDE_M)).length
        if not within or through > _SHORTEST_M:
            said = f"opening {_q(opening.id)} does not lie on a wall of {_q(room_id)}."
            yield Mistake(where, said, "Move its line to the wall, or name the right room.")


def _exit_faults(floor: Floor, exits: Sequence[Exit]) -> Iterator[Mistake]:
    for index, way in enumerate(exits):
        where = f"exits[{index}].opening"
        opening = floor.opening_by_id.get(way.opening)
        if opening is None:
            outside = [o.id for o in floor.openings if o.kind == "outside"]
            said = f"exit {_q(way.id)} names an opening {_q(way.opening)} that is not there."
            yield Mistake(where, said, _known(outside))
        elif opening.kind != "outside":
            said = f"exit {_q(way.id)} uses {_q(way.opening)}, which leads to another room."
            yield Mistake(where, said, "An exit is an outside opening.")


def _known(items: Iterable[str]) -> str:
    names = list(items)
    shown = ", ".join(
        f"{one[:_LONGEST]}…" if len(one) > _LONGEST else one for one in names[:12]
    ) + (" …" if len(names) > 12 else "")
    return f"There are: {shown}." if names else "There are none."


def _q(text: str) -> str:
    """A name in quotation marks, cut where a sentence could no longer be read for it."""
    return f"“{_cut(text)}”"


def _cut(text: str) -> str:
    return text if len(text) <= _LONGEST else f"{text[:_LONGEST]}…"
