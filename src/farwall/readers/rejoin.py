"""Rooms of one real space joined, one room split along a line: as the user says, on a reading.

Drawings and models cut one space in two by a virtual line, or draw two uses as one room. Both
functions give a new reading and tell under `mended` what was done; nothing else of it changes.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import dist, isfinite

import shapely
from shapely.ops import split

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading, Stated
from farwall.floor.geometry import DECIMALS, Point, polygon_geometry, polygons_of
from farwall.floor.nouns import Exit, Opening, Room
from farwall.readers.room_names import Ids

_WELD_M = 0.002
"""Rooms that meet are drawn that near to each other."""
_SMALLEST_M2 = 0.1
Line = tuple[Point, Point]


def joined_rooms(reading: Reading, ids: Sequence[str]) -> Reading:
    """The reading with rooms made one: the first id is kept, openings between them are floor.

    Stated areas are added where every room has one of one kind. Raises Refused for an unknown id,
    fewer than two rooms, rooms on two storeys or at two heights, and rooms that do not meet along
    an edge or through an opening with floor under it.
    """
    rooms = _rooms(reading, ids)
    wanted = {room.id for room in rooms}
    between = [o for o in reading.floor.openings if len(o.rooms) == 2 and set(o.rooms) <= wanted]
    floor = [o.threshold.shape for o in between if o.threshold is not None]
    shape = _welded([*(room.polygon.shape for room in rooms), *floor])
    if shape is None:
        what = f"{_said(rooms)} do not meet along an edge or through an opening."
        raise Refused(Mistake("rooms", what, "Join rooms that lie side by side."))
    first = rooms[0]
    name = " + ".join(dict.fromkeys(room.label for room in rooms))
    whole = replace(first, polygon=polygon_geometry(shape), name=name)
    own = dict.fromkeys(wanted, first.id)
    kept = [_renamed(o, own) for o in reading.floor.openings if o not in between]
    gone = {o.id for o in between}
    left = [whole if r.id == first.id else r for r in reading.floor.rooms
            if r.id == first.id or r.id not in wanted]  # fmt: skip
    windows = tuple(replace(w, room=own.get(w.room, w.room)) for w in reading.floor.windows)
    what = f"{_said(rooms)} were joined to one room of {shape.area:.2f} m², as told."
    return replace(
        reading,
        floor=replace(reading.floor, rooms=tuple(left), openings=tuple(kept), windows=windows),
        exits=tuple(way for way in reading.exits if way.opening not in gone),
        stated=_without(reading.stated, wanted) | _stated_together(reading, rooms),
        ceilings_m=_lowest(reading.ceilings_m, wanted, first.id),
        levels_m=_lowest(reading.levels_m, wanted, first.id),
        mended=(*reading.mended, Note("rooms-joined", what, _inside(shape))),
    )


def split_room(reading: Reading, room_id: str, line: Line) -> Reading:
    """The reading with one room cut in two along a line [m]; the larger part keeps its id.

    The cut becomes a wide opening, for no wall stands there. Raises Refused for an unknown id and
    for a line that does not cut the room into exactly two parts.
    """
    (room,) = _rooms(reading, [room_id], fewest=1)
    if not all(isfinite(v) for point in line for v in point) or dist(*line) == 0:
        raise Refused(Mistake("line", "The line has no length.", "Give two places in metres."))
    shape = room.polygon.shape
    parts = sorted(polygons_of(split(shape, shapely.LineString(line))), key=lambda p: -p.area)
    if len(parts) != 2 or parts[1].area < _SMALLEST_M2:
        what = f"The line does not cut {room.label} into two parts ({len(parts)} found)."
        raise Refused(Mistake("line", what, "Draw it straight from wall to wall across the room."))
    taken = Ids()
    for known in (*reading.floor.room_by_id, *reading.floor.opening_by_id):
        taken.take(known)
    second_id = taken.take(room.id)
    halves = [replace(room, polygon=polygon_geometry(parts[0])),
              Room(second_id, polygon_geometry(parts[1]), room.name, room.storey)]  # fmt: skip
    rooms: list[Room] = []
    for one in reading.floor.rooms:
        rooms += halves if one.id == room.id else [one]
    kept = [_shared_out(o, room.id, halves) for o in reading.floor.openings]
    seams = _seams(shape, line)
    cuts = [Opening(taken.take(f"wide-{room.id}-{second_id}"), "wide", seam, (room.id, second_id),
                    round(dist(*seam), DECIMALS)) for seam in seams]  # fmt: skip
    what = f"{room.label} was split into {parts[0].area:.2f} and {parts[1].area:.2f} m², as told."
    both = {key: known[room.id] for key, known in
            (("c", reading.ceilings_m), ("l", reading.levels_m)) if room.id in known}  # fmt: skip
    return replace(
        reading,
        floor=replace(reading.floor, rooms=tuple(rooms), openings=(*kept, *cuts)),
        exits=tuple(Exit(way.id, way.opening) for way in reading.exits),
        stated=_without(reading.stated, {room.id}),
        ceilings_m=reading.ceilings_m | ({second_id: both["c"]} if "c" in both else {}),
        levels_m=reading.levels_m | ({second_id: both["l"]} if "l" in both else {}),
        mended=(*reading.mended, Note("room-split", what, _inside(shape))),
    )


def _rooms(reading: Reading, ids: Sequence[str], *, fewest: int = 2) -> list[Room]:
    wanted = list(dict.fromkeys(ids))
    known = reading.floor.room_by_id
    said = ", ".join(known) or "none"
    mistakes = [
        Mistake("rooms", f"No room is called “{i}”.", f"The rooms are {said}.")
        for i in wanted
        if i not in known
    ]
    if len(wanted) < fewest:
        mistakes.append(Mistake("rooms", "One room alone cannot be joined.", "Name two or more."))
    rooms = [known[i] for i in wanted if i in known]
    if len({room.storey for room in rooms}) > 1:
        mistakes.append(Mistake("rooms", f"{_said(rooms)} are on different storeys."))
    heights = [reading.levels_m[room.id] for room in rooms if room.id in reading.levels_m]
    if heights and max(heights) - min(heights) > _WELD_M:
        what = f"{_said(rooms)} lie {max(heights) - min(heights):.3f} m apart in height."
        mistakes.append(Mistake("rooms", what, "A step parts them: leave them as they are."))
    if mistakes:
        raise Refused(*mistakes)
    return rooms


def _welded(shapes: Sequence[shapely.Polygon]) -> shapely.Polygon | None:
    """One polygon of all, hair-wide gaps between them closed; None when they stay apart."""
    half = _WELD_M / 2
    joints = [
        a.buffer(half, join_style="mitre").intersection(b.buffer(half, join_style="mitre"))
        for n, a in enumerate(shapes)
        for b in shapes[n + 1 :]
        if a.distance(b) <= _WELD_M and not a.intersects(b)
    ]
    whole = polygons_of(shapely.unary_union([*shapes, *joints]))
    return whole[0] if len(whole) == 1 else None


def _renamed(opening: Opening, own: dict[str, str]) -> Opening:
    return replace(opening, rooms=tuple(own.get(room, room) for room in opening.rooms))


def _shared_out(opening: Opening, room_id: str, halves: Sequence[Room]) -> Opening:
    """An opening of the room that was split, now of the part that it stands at."""
    if room_id not in opening.rooms:
        return opening
    middle = shapely.LineString(opening.line).interpolate(0.5, normalized=True)
    nearest = min(halves, key=lambda half: half.polygon.shape.distance(middle)).id
    return _renamed(opening, {room_id: nearest})


def _seams(shape: shapely.Polygon, line: Line) -> list[Line]:
    """The pieces of the line within the room."""
    cut = shapely.LineString(line).intersection(shape)
    parts = [part for part in shapely.get_parts(cut).tolist() if part.length > _WELD_M]
    return [(_rounded(part.coords[0]), _rounded(part.coords[-1])) for part in parts]


def _rounded(point: Sequence[float]) -> Point:
    return round(point[0], DECIMALS) + 0.0, round(point[1], DECIMALS) + 0.0


def _stated_together(reading: Reading, rooms: Sequence[Room]) -> dict[str, Stated]:
    known = [reading.stated.get(room.id) for room in rooms]
    told = [one for one in known if one is not None]
    if len(told) < len(rooms) or len({one.kind for one in told}) > 1:
        return {}
    text = " + ".join(one.text for one in told if one.text)
    return {rooms[0].id: Stated(round(sum(o.area_m2 for o in told), 4), told[0].kind, text)}


def _without(known: dict[str, Stated], ids: set[str]) -> dict[str, Stated]:
    return {key: value for key, value in known.items() if key not in ids}


def _lowest(known: dict[str, float], ids: set[str], first: str) -> dict[str, float]:
    """One figure for the rooms that were joined: the least, as a ceiling's is what counts."""
    here = [value for key, value in known.items() if key in ids]
    rest = {key: value for key, value in known.items() if key not in ids}
    return rest | ({first: min(here)} if here else {})


def _said(rooms: Sequence[Room]) -> str:
    return " and ".join(room.label for room in rooms)


def _inside(shape: shapely.Polygon) -> Point:
    point = shape.representative_point()
    return _rounded((float(point.x), float(point.y)))
