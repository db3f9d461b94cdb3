"""Spaces of gbXML as rooms: their floors, heights, storeys and stated areas."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import field, replace

import shapely

from farwall.facts.reading import Note, Stated, StatedKind, Storey
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.gbxml.shapes import loops_of, outer_faces, shell_faces
from farwall.readers.gbxml.units import Units, area_at, metres, number
from farwall.readers.room_names import is_outdoors
from farwall.readers.told.levels import by_height, floor_words, pieces_of, settled
from farwall.readers.told.nouns import ToldSpace
from farwall.readers.told.shells import Plan, floor_of
from farwall.readers.xml_text import Node

_TOUCH_M = 0.005
_SAME_SHARE = 0.005
_OVER = 0.99
_LIKE = 0.02


@dataclass(frozen=True)
class Misplaced:
    """A floor polygon that does not lie over its shell, and what its space states."""

    shape: shapely.Polygon
    stated: Stated | None


@dataclass
class Spaces:
    """Rooms and storeys, with what was mended and what was left.

    `pieces`: by the id of a space the room or the rooms that were made of it. `misplaced`: by the
    same id a floor polygon that has the area of its shell and lies elsewhere. `unsure`: names that
    several spaces bear.
    """

    rooms: list[ToldSpace] = field(default_factory=list)
    pieces: dict[str, list[ToldSpace]] = field(default_factory=dict)
    misplaced: dict[str, Misplaced] = field(default_factory=dict)
    unsure: set[str] = field(default_factory=set)
    storeys: list[Storey] = field(default_factory=list)
    mended: list[Note] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)
    asks: list[Note] = field(default_factory=list)


def spaces_of(root: Node, units: Units) -> Spaces:
    """All spaces of the file."""
    found = Spaces()
    _storeys(root, units, found)
    by_shell: list[tuple[float, float]] = []
    names = Counter(space.word("Name") for space in root.walk("Space"))
    found.unsure = {name for name, count in names.items() if count > 1}
    for place, space in enumerate(root.walk("Space")):
        pieces = _rooms(space, place, units, found, by_shell)
        found.rooms += pieces
        if pieces:
            found.pieces.setdefault(space.get("id"), []).extend(pieces)
    if by_shell:
        found.mended.append(Note("floor-from-shell", _shell_words(by_shell)))
    found.rooms, storeys, word = by_height(found.rooms, {storey.id for storey in found.storeys})
    found.storeys += storeys
    found.mended += word
    placed = {room.id: room for room in found.rooms}
    found.pieces = {own: [placed[p.id] for p in ps] for own, ps in found.pieces.items()}
    _stated_kinds(found)
    return found


def _storeys(root: Node, units: Units, found: Spaces) -> None:
    for place, storey in enumerate(root.walk("BuildingStorey")):
        own = storey.get("id") or f"storey-{place + 1}"
        if any(known.id == own for known in found.storeys):
            continue
        level = metres(storey.word("Level"), units.length_m or 1.0)
        found.storeys.append(Storey(own, storey.word("Name") or own, level))


def _rooms(
    space: Node, place: int, units: Units, found: Spaces, by_shell: list[tuple[float, float]]
) -> list[ToldSpace]:
    """A space as a room, or as several where its floor lies in pieces."""
    own = space.get("id") or f"space-{place + 1}"
    name = space.word("Name") or own
    called = f"{name} {own}" if name in found.unsure else name
    faces, broken = shell_faces(space, units)
    stated = _stated(space, units)
    shell = floor_of(faces, stated_m2=stated.area_m2 if stated else None)
    planar = floor_of([(loop, ()) for loop in loops_of(space.first("PlanarGeometry"), units)])
    plan = _chosen(called, planar, shell, found)
    if planar and shell and plan is shell and _alike(planar, shell):
        found.misplaced[own] = Misplaced(planar.shape, stated)
    if plan is None:
        what = f"“{called}” (line {space.line}) has no floor that can be read; it is left out."
        found.left.append(Note("room-without-floor", what))
        return []
    if planar is None:
        by_shell.append((plan.area_m2, _outer_area(space, units)))
    found.left += floor_words(called, plan, stated.area_m2 if stated else None)
    if broken:
        what = f"{broken} faces of “{called}” have too few points or no numbers; passed over."
        found.mended.append(Note("face-broken", what))
    room = ToldSpace(
        own,
        plan.shape,
        name,
        _storey(called, space, found),
        plan.floor_m,
        plan.height_m,
        stated,
        is_outdoors(name),
    )
    room, moved = settled(room, found.storeys)
    found.mended += moved
    return pieces_of(room, plan, found.storeys)


def _storey(name: str, space: Node, found: Spaces) -> str:
    storey = space.get("buildingStoreyIdRef")
    if storey and all(level.id != storey for level in found.storeys):
        what = f"“{name}” lies on a storey that the file does not describe: {storey}."
        found.mended.append(Note("storey-unknown", what))
        found.storeys.append(Storey(storey, storey))
    return storey


def _chosen(name: str, planar: Plan | None, shell: Plan | None, found: Spaces) -> Plan | None:
    """The floor polygon with the shell's height; the shell's floor where the polygon is not it.

    Some files keep a polygon of the right area that lies elsewhere. The walls and doors go with
    the shell.
    """
    if planar is None or shell is None:
        return planar or shell
    whole = shapely.union_all([shell.shape, *(part.shape for part in shell.parts)])
    shared = float(planar.shape.intersection(whole).area) / float(planar.shape.area)
    if shared >= _OVER and not shell.parts:
        return replace(planar, height_m=shell.height_m, floor_m=shell.floor_m, steps=shell.steps)
    if not _alike(planar, shell):
        what = (
            f"The floor polygon of “{name}” has {planar.area_m2:.2f} m², its shell "
            f"{shell.area_m2:.2f} m², and they do not lie over each other. The shell was taken."
        )
        found.left.append(Note("two-floors", what, _middle(shell)))
    else:
        what = (
            f"The floor polygon of “{name}” has the area of its shell ({shell.area_m2:.2f} m²) but "
            f"covers {100 * shared:.0f} % of it. The shell was taken: walls and doors fit it."
        )
        found.mended.append(Note("polygon-misplaced", what, _middle(shell)))
    return shell


def _alike(planar: Plan, shell: Plan) -> bool:
    return abs(shell.area_m2 / planar.area_m2 - 1) <= _LIKE


def _middle(plan: Plan) -> Point:
    point = plan.shape.representative_point()
    return float(point.x), float(point.y)


def _outer_area(space: Node, units: Units) -> float:
    """The floor to the middle of the walls [m2], where the file tells it beside the inner one."""
    outer = floor_of(outer_faces(space, units))
    return outer.area_m2 if outer is not None else 0.0


def _shell_words(by_shell: Sequence[tuple[float, float]]) -> str:
    what = (
        f"{len(by_shell)} rooms have no floor polygon; theirs was taken from the lowest faces of "
        "their shells."
    )
    both = [(inner, outer) for inner, outer in by_shell if outer > inner * (1 + _SAME_SHARE)]
    if not both:
        return what
    inner, outer = (sum(pair[i] for pair in both) for i in (0, 1))
    return (
        f"{what} The file draws them to the middle of the walls as well: {outer:.2f} m² against "
        f"{inner:.2f} m² between the wall faces."
    )


def _stated(space: Node, units: Units) -> Stated | None:
    area = space.first("Area")
    value = number(area.text) if area is not None else None
    unit = area_at(area, units) if area is not None else None
    if value is None or unit is None or not 0 < value * unit < 1e7:
        return None
    return Stated(value * unit, "gross", "Space/Area")


def _stated_kinds(found: Spaces) -> None:
    """What the stated areas measure, seen by whether rooms touch and how both figures differ."""
    touching = _touching(found.rooms)
    gross = len(touching) * 2 >= len(found.rooms)
    found.rooms[:] = [
        replace(room, stated=replace(room.stated, kind=_kind(room, touching, gross=gross)))
        if room.stated
        else room
        for room in found.rooms
    ]
    if touching:
        what = (
            f"{len(touching)} rooms touch their neighbours: their outlines run in the middle of "
            "the walls, and each is larger than its slab by half a wall all round. Say how thick "
            "the walls are, or measure one room."
        )
        found.asks.append(Note("wall-centres", what))


def _kind(room: ToldSpace, touching: set[str], *, gross: bool) -> StatedKind:
    """Net: less than the outline, or the same as an outline along the faces of the walls."""
    stated, drawn = room.stated, float(room.shape.area)
    if stated is None or stated.area_m2 < drawn * (1 - _SAME_SHARE):
        return "net"
    if room.id in touching:
        return "wall-centre"
    return "gross" if gross or stated.area_m2 > drawn * (1 + _SAME_SHARE) else "net"


def _touching(rooms: Iterable[ToldSpace]) -> set[str]:
    """Ids of rooms that share a stretch of wall line with a room of their storey."""
    listed = list(rooms)
    tree = shapely.STRtree([room.shape for room in listed])
    found: set[str] = set()
    for room in listed:
        near = shapely.buffer(room.shape, _TOUCH_M)
        for other in (listed[i] for i in tree.query(near)):
            if other is room or other.storey != room.storey:
                continue
            if other.shape.area < room.shape.area and room.shape.covers(other.shape):
                continue  # a gallery over it, not a neighbour
            if near.intersection(other.shape.boundary).length > 0.3:
                found |= {room.id, other.id}
    return found
