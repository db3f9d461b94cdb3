"""Other people's GeoJSON as what it tells of rooms, doors and windows, in local metres."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from typing import Any

import numpy as np
import shapely

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Storey
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.geo.doors import Bounds, Placed, placed
from farwall.readers.geo.frame import Frame, frame_of
from farwall.readers.geo.regions import name_of, regions_of
from farwall.readers.geo.things import MOST_POINTS, Thing, things_of
from farwall.readers.room_names import Ids, is_outdoors, slug
from farwall.readers.told.nouns import Told, ToldFixture, ToldSpace

_ONE_STOREY = "storey-1"
_LEAST_M2 = 0.01


@dataclass
class _Found:
    ids: Ids = field(default_factory=Ids)
    rooms: list[ToldSpace] = field(default_factory=list)
    mended: list[Note] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)


@np.errstate(all="ignore")  # sums of areas divide by nothing on some slivers, and say so
def told_of(collection: Mapping[str, Any], *, scale_m_per_unit: float | None = None) -> Told:
    """All that a collection of features tells. Raises Refused when no polygon is in it."""
    things, broken = things_of(collection["features"])
    points = [point for thing in things for point in thing.points]
    if not any(thing.rings for thing in things):
        raise Refused(Mistake("features", "there is no polygon in it.", "Give room polygons."))
    if len(points) > MOST_POINTS:
        what = f"it has {len(points):,} points, more than the rooms of a floor need."
        raise Refused(Mistake("features", what, "Give the rooms and doors of one house alone."))
    corners = [point for thing in things if thing.rings for point in thing.points]
    frame = frame_of(collection, corners, scale_m_per_unit)
    local = [_local(thing, frame) for thing in things]
    found = _Found()
    if broken:
        what = f"{broken} × feature without a geometry that can be read left aside."
        found.left.append(Note("not-read", what))
    _rooms(local, found)
    _regions(local, found)
    ways = [(t, _storey(t)) for t in local if t.kind in ("door", "window")]
    doors = placed(ways, found.rooms, _bounds(local))
    _say_doors(doors, found)
    _say_others(local, found)
    return Told(
        format="GeoJSON",
        length_unit=frame.unit,
        header_unit=frame.said,
        scale_m_per_unit=frame.scale[1],
        spaces=tuple(found.rooms),
        openings=tuple(doors.openings),
        windows=tuple(doors.windows),
        fixtures=tuple(
            ToldFixture("column", _polygon(t), _storey(t))
            for t in local
            if t.kind == "column" and t.rings
        ),
        storeys=_storeys(local, found.rooms),
        mended=(*frame.mended, *found.mended),
        left=tuple(found.left),
        asks=frame.asks,
    )


def _local(thing: Thing, frame: Frame) -> Thing:
    return replace(
        thing,
        rings=tuple(tuple(map(frame.at, ring)) for ring in thing.rings),
        line=tuple(map(frame.at, thing.line)),
        point=frame.at(thing.point) if thing.point is not None else None,
    )


def _storey(thing: Thing) -> str:
    return f"level-{thing.level}" if thing.level else _ONE_STOREY


def _storeys(things: Sequence[Thing], rooms: Sequence[ToldSpace]) -> tuple[Storey, ...]:
    used = {room.storey for room in rooms}
    names = {_storey(t): f"Level {t.level}" if t.level else "" for t in things}
    return tuple(Storey(own, name) for own, name in sorted(names.items()) if own in used)


def _bounds(things: Sequence[Thing]) -> dict[str, Bounds]:
    found: dict[str, Bounds] = {}
    for storey in dict.fromkeys(map(_storey, things)):
        own = [t for t in things if _storey(t) == storey and t.rings]
        found[storey] = Bounds(
            tuple(_polygon(t) for t in own if t.kind == "shaft"),
            tuple(_polygon(t) for t in own if t.kind == "outline"),
        )
    return found


def _rooms(things: Sequence[Thing], found: _Found) -> None:
    for thing in things:
        outdoors = thing.kind == "zone" and is_outdoors(thing.name)
        if not thing.rings or not (thing.kind in ("room", "stairs") or outdoors):
            continue
        shape = shapely.Polygon(thing.rings[0], thing.rings[1:])
        name = thing.name or ("Stairs" if thing.kind == "stairs" else "")
        if not shape.is_valid or shape.area < _LEAST_M2:
            what = f"The outline of “{name}” is not sound."
            found.left.append(Note("room-unsound", what, thing.rings[0][0]))
            continue
        own = found.ids.take(thing.id or slug(name or thing.word))
        outdoors = outdoors or is_outdoors(name)
        found.rooms.append(ToldSpace(own, shape, name, _storey(thing), outdoors=outdoors))
        if thing.kind == "stairs":
            what = f"“{name}” ({shape.area:.1f} m²) is read as a room, for one walks over it."
            found.left.append(Note("stairs-as-rooms", what, _middle(shape)))
        if thing.several:
            what = f"“{name or own}” stands on several levels; it was taken on the first."
            found.mended.append(Note("several-levels", what, _middle(shape)))


def _regions(things: Sequence[Thing], found: _Found) -> None:
    """Rooms out of what the outline of each storey holds beside all that is drawn in it."""
    for storey in dict.fromkeys(_storey(t) for t in things if t.kind == "outline" and t.rings):
        own = [t for t in things if _storey(t) == storey and t.rings]
        walls = [t for t in own if t.kind == "wall"]
        if not walls:
            continue
        solid = [
            _polygon(t) for t in own if t.kind in ("wall", "door", "window", "shaft")
        ] + [room.shape for room in found.rooms if room.storey == storey]  # fmt: skip
        regions = regions_of([_polygon(t) for t in own if t.kind == "outline"], solid)
        zones = [(t.name, _polygon(t)) for t in own if t.kind == "zone"]
        for number, region in enumerate(regions.shapes, start=1):
            name = name_of(region, zones)
            room = ToldSpace(found.ids.take(f"region-{number}"), region, name, storey)
            found.rooms.append(room)
            called = f"named “{name}” by a zone over it" if name else "without a name"
            what = (
                f"{region.area:.2f} m² between the walls have no room in the file: read as room "
                f"{room.id}, {called}. Refuse it where it is not walked on."
            )
            found.mended.append(Note("region-as-room", what, _middle(region)))
        if regions.slivers:
            what = (
                f"{regions.slivers} gaps between walls and outline, {regions.slivers_m2:.2f} m² in "
                "all, are too narrow for rooms; left aside."
            )
            found.left.append(Note("gaps", what))


def _polygon(thing: Thing) -> shapely.Polygon:
    shape = shapely.Polygon(thing.rings[0], thing.rings[1:])
    if shape.is_valid:
        return shape
    whole = shapely.make_valid(shape)
    parts = [p for p in shapely.get_parts(whole).tolist() if isinstance(p, shapely.Polygon)]
    return max(parts, key=lambda part: float(part.area), default=shapely.Polygon())


def _say_doors(doors: Placed, found: _Found) -> None:
    if doors.unmeasured:
        names = ", ".join(doors.unmeasured[:5]) + (" …" if len(doors.unmeasured) > 5 else "")
        what = f"{len(doors.unmeasured)} doors tell no width; 0.9 m was taken: {names}"
        found.mended.append(Note("door-width-taken", what))
    if doors.adrift:
        what = f"{len(doors.adrift)} × door at no outline of a room left aside."
        found.left.append(Note("not-read", what, doors.adrift[0].point))


def _say_others(things: Sequence[Thing], found: _Found) -> None:
    others: Counter[str] = Counter()
    for thing in things:
        if thing.kind in ("door", "window") or (thing.kind == "column" and thing.rings):
            continue
        if thing.kind == "zone" and is_outdoors(thing.name):
            continue
        if thing.kind not in ("room", "stairs") or not thing.rings:
            others[thing.word or "feature without a type"] += 1
    found.left += [
        Note("not-read", f"{count} × {kind} left aside.") for kind, count in sorted(others.items())
    ]


def _middle(shape: shapely.Polygon) -> Point:
    point = shape.representative_point()
    return float(point.x), float(point.y)
