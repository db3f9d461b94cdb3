"""Sound rooms of told spaces: outlines mended, twins and zones over rooms taken out and named."""

from __future__ import annotations

from dataclasses import field, replace

import shapely

from farwall.facts.reading import Note, Storey
from farwall.floor.geometry import DECIMALS, Point, polygon_geometry, polygons_of
from farwall.floor.nouns import Room
from farwall.nouns import dataclass
from farwall.readers.room_names import Ids
from farwall.readers.told.nouns import ToldSpace
from farwall.readers.told.storeys import STOREY_RISE_M, shelved

SMALLEST_M2 = 0.05
_KINK_M = 0.0005
_OVERLAP_M2 = 0.005
_TWIN = 0.95
_INSIDE = 0.9
_ZONE = 0.7
"""A space covered so far by two or more others is a zone drawn over them. Rank: guess."""
_MENDED = 0.001
_LIFTED = "-at-"


@dataclass
class Rooms:
    """The rooms, the space that each came from, and where the ids of the file lead.

    `by_told`: id of the file to id of a room; spaces outdoors and those taken out lead to None.
    """

    rooms: list[Room] = field(default_factory=list)
    spaces: dict[str, ToldSpace] = field(default_factory=dict)
    by_told: dict[str, str | None] = field(default_factory=dict)
    outdoors: list[ToldSpace] = field(default_factory=list)
    storeys: list[Storey] = field(default_factory=list)
    mended: list[Note] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)

    def label(self, room_id: str) -> str:
        """What a person calls a room."""
        return self.spaces[room_id].name or room_id

    def known(self, told_id: str) -> str | None:
        """The room that an id of the file leads to, a twin's to its room; None for no room."""
        room = self.by_told.get(told_id)
        return room if room in self.spaces else None


def rooms_of(spaces: tuple[ToldSpace, ...], storeys: tuple[Storey, ...]) -> Rooms:
    """The rooms of the spaces, none over another on its storey."""
    found = Rooms()
    put = shelved(spaces, storeys)
    found.storeys = put.storeys
    sound = [mended for space in put.spaces if (mended := _mended(space, found)) is not None]
    for space in sound:
        if space.outdoors:
            found.outdoors.append(space)
            found.by_told.setdefault(space.id, None)
            what = f"“{space.name or space.id}” lies outdoors: told, not stained."
            found.left.append(
                Note("outside-slab", what, _middle(space.shape), polygon_geometry(space.shape))
            )
    indoors = _apart([space for space in sound if not space.outdoors], found)
    ids = Ids()
    for space in indoors:
        room_id = ids.take(space.id)
        if room_id != space.id:
            what = f"The id “{space.id}” is used twice; the second is called “{room_id}” here."
            found.mended.append(Note("id-twice", what, _middle(space.shape)))
        found.by_told.setdefault(space.id, room_id)
        found.spaces[room_id] = space
        found.rooms.append(Room(room_id, polygon_geometry(space.shape), space.name, space.storey))
    return found


def _mended(space: ToldSpace, found: Rooms) -> ToldSpace | None:
    """The space with a sound outline on the grid of the files, or None when it has no floor."""
    name, before = space.name or space.id, space.shape.area
    shape = _whole(space.shape)
    if shape is None or shape.area < SMALLEST_M2:
        found.by_told.setdefault(space.id, None)
        found.left.append(Note("room-unsound", f"The outline of “{name}” holds no floor."))
        return None
    if not space.shape.is_valid or abs(shape.area - before) > _MENDED * max(before, shape.area):
        what = f"The outline of “{name}” crossed or touched itself; its largest part was taken."
        found.mended.append(Note("outline-mended", what, _middle(shape)))
    return replace(space, shape=shape)


def _whole(shape: shapely.Polygon) -> shapely.Polygon | None:
    """The largest sound polygon in an outline, rounded as the files keep it."""
    for _ in range(3):
        parts = polygons_of(shape if shape.is_valid else shapely.make_valid(shape))
        if not parts:
            return None
        largest = max(parts, key=lambda part: part.area).simplify(_KINK_M)
        rounded = [polygon for polygon in polygons_of(largest) if polygon.area > 0]
        if not rounded:
            return None
        shape = polygon_geometry(rounded[0], decimals=DECIMALS).shape
        if shape.is_valid:
            return shape
    return None


def _apart(spaces: list[ToldSpace], found: Rooms) -> list[ToldSpace]:
    """The spaces without twins, zones and shared floor, each on a storey where it is alone."""
    kept = _without_twins(spaces, found)
    kept = _without_zones(kept, found)
    shapes = [space.shape for space in kept]
    for i, j in _pairs(kept):
        shared = shapely.intersection(shapes[i], shapes[j]).area
        if kept[i].storey != kept[j].storey or shared < _OVERLAP_M2:
            continue
        if _one_above(kept[i], kept[j]):
            upper = i if (kept[i].floor_m or 0) > (kept[j].floor_m or 0) else j
            kept[upper] = _lifted(kept[upper], found)
            continue
        large, small = (i, j) if shapes[i].area >= shapes[j].area else (j, i)
        shapes[large] = _cut(kept[large], shapes[large], kept[small], shapes[small], found)
    return [replace(space, shape=shape) for space, shape in zip(kept, shapes, strict=True)]


def _pairs(spaces: list[ToldSpace]) -> list[tuple[int, int]]:
    """Places of spaces whose outlines meet, in the order of the file."""
    if not spaces:
        return []
    tree = shapely.STRtree([space.shape for space in spaces])
    ones, others = tree.query([space.shape for space in spaces], predicate="intersects")
    return sorted((int(i), int(j)) for i, j in zip(ones, others, strict=True) if i < j)


def _one_above(one: ToldSpace, other: ToldSpace) -> bool:
    if one.floor_m is None or other.floor_m is None:
        return False
    return abs(one.floor_m - other.floor_m) >= STOREY_RISE_M


def _lifted(space: ToldSpace, found: Rooms) -> ToldSpace:
    """The space on a storey of its own height, for another of its storey lies under it."""
    at = round(space.floor_m or 0.0, 2)
    storey_id = f"{space.storey}{_LIFTED}{at:g}"
    if all(storey.id != storey_id for storey in found.storeys):
        name = next((s.name for s in found.storeys if s.id == space.storey), "")
        found.storeys.append(Storey(storey_id, f"{name} at {at:g} m".strip(), space.floor_m))
    what = (
        f"“{space.name or space.id}” lies above another room of its storey; it was put on a "
        f"storey of its own, at {at:g} m."
    )
    found.mended.append(Note("storey-split", what, _middle(space.shape)))
    return replace(space, storey=storey_id)


def unlifted(storey: str) -> str:
    """The storey of the file that a storey made for rooms above others came from."""
    return storey.split(_LIFTED, maxsplit=1)[0]


def _without_twins(spaces: list[ToldSpace], found: Rooms) -> list[ToldSpace]:
    gone: set[int] = set()
    for i, j in _pairs(spaces):
        one, other = spaces[i], spaces[j]
        if {i, j} & gone or one.storey != other.storey or _one_above(one, other):
            continue
        shared = shapely.intersection(one.shape, other.shape).area
        if shared < _TWIN * max(one.shape.area, other.shape.area):
            continue
        gone.add(j)
        found.by_told.setdefault(other.id, one.id)
        what = (
            f"“{one.name or one.id}” and “{other.name or other.id}” are drawn over the same "
            "floor: it is taken once, under the first name."
        )
        found.left.append(Note("room-doubled", what, _middle(one.shape)))
    return [space for index, space in enumerate(spaces) if index not in gone]


def _without_zones(spaces: list[ToldSpace], found: Rooms) -> list[ToldSpace]:
    inside: dict[int, list[int]] = {}
    for i, j in _pairs(spaces):
        if spaces[i].storey != spaces[j].storey or _one_above(spaces[i], spaces[j]):
            continue
        shared = shapely.intersection(spaces[i].shape, spaces[j].shape).area
        for large, small in ((i, j), (j, i)):
            if shared >= _INSIDE * spaces[small].shape.area:
                inside.setdefault(large, []).append(small)
    zones = set()
    for large, smalls in sorted(inside.items()):
        covered = sum(spaces[small].shape.area for small in smalls)
        if len(smalls) >= 2 and covered >= _ZONE * spaces[large].shape.area:
            zones.add(large)
            zone = spaces[large]
            names = ", ".join(spaces[small].name or spaces[small].id for small in smalls[:6])
            what = f"“{zone.name or zone.id}” is drawn over {names}: a zone, taken for no room."
            found.by_told.setdefault(zone.id, None)
            found.left.append(Note("zone-over-rooms", what, _middle(zone.shape)))
    return [space for index, space in enumerate(spaces) if index not in zones]


def _cut(
    large: ToldSpace,
    shape: shapely.Polygon,
    small: ToldSpace,
    taken: shapely.Polygon,
    found: Rooms,
) -> shapely.Polygon:
    parts = polygons_of(shapely.difference(shape, taken))
    rest = _whole(max(parts, key=lambda part: part.area)) if parts else None
    if rest is None or rest.area < SMALLEST_M2:
        return shape
    what = (
        f"“{large.name or large.id}” and “{small.name or small.id}” share "
        f"{shapely.intersection(shape, taken).area:.2f} m² in the file: it was given to the "
        "smaller one. Look at the place."
    )
    found.mended.append(Note("overlap-cut", what, _middle(taken)))
    return rest


def _middle(shape: shapely.Polygon) -> Point:
    point = shape.representative_point()
    return round(float(point.x), DECIMALS), round(float(point.y), DECIMALS)
