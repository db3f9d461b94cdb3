"""Spaces of an IFC model as rooms that are told: outline, heights, names, stated areas."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from math import isfinite

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.reading import Note
from farwall.nouns import dataclass
from farwall.readers.ifc.footprint import footprint_of
from farwall.readers.ifc.frame import Frame
from farwall.readers.ifc.load import Entity
from farwall.readers.ifc.shapes import Body, floor_of
from farwall.readers.ifc.stated import Sizes, sizes_of, stated_of
from farwall.readers.ifc.tree import storey_of
from farwall.readers.room_names import is_outdoors
from farwall.readers.told.nouns import ToldSpace

_ROOFS = {"roof", "dach", "toit", "techo", "azotea", "tetto"}


@dataclass
class Spaces:
    """The spaces told, and what is to be said of them."""

    spaces: list[ToldSpace] = field(default_factory=list)
    mended: list[Note] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)


def spaces_of(elements: Sequence[Entity], bodies: Mapping[int, Body], frame: Frame) -> Spaces:
    """The spaces in the order of the file, each part of a parted one by itself."""
    found = Spaces()
    names = _names(elements)
    sizes: dict[str, Sizes] = {}
    for element in elements:
        key = _key(element)
        sizes[key] = sizes_of(element, frame.units)
        found.spaces += _told(element, names[element.id()], bodies, frame, found)
    areas: dict[str, float] = {}
    for space in found.spaces:
        areas.setdefault(space.id, space.shape.area)
    stated, notes = stated_of(sizes, areas)
    found.left += notes
    found.spaces = [
        replace(space, stated=stated.get(space.id), height_m=_height(space, sizes))
        for space in found.spaces
    ]
    return found


def _told(
    element: Entity,
    name: str,
    bodies: Mapping[int, Body],
    frame: Frame,
    found: Spaces,
) -> list[ToldSpace]:
    """The space, in parts when its floor is parted; none when it has no floor that can be read."""
    key = _key(element)
    body = bodies.get(element.id())
    floor = floor_of(body) if body is not None else None
    if floor is None or body is None:
        return _from_footprint(element, name, frame, found)
    space = ToldSpace(
        key,
        floor.parts[0],
        name,
        storey_of(element),
        floor.levels_m[0] - frame.zero_m,
        round(body.high_m - floor.levels_m[0], 4),
        outdoors=_is_outdoors(element),
    )
    point = floor.parts[0].representative_point()
    where = (round(float(point.x), 4), round(float(point.y), 4))
    if floor.sloped:
        what = f"The floor of “{name}” is not level in the file; it is taken as seen from above."
        found.left.append(Note("floor-sloped", what, where))
    if len(floor.levels_m) > 1:
        rise = floor.levels_m[-1] - floor.levels_m[0]
        what = (
            f"The floor of “{name}” lies at {len(floor.levels_m)} heights, up to {rise:.2f} m "
            "apart: it is one room here, with a step in it."
        )
        found.left.append(Note("floor-stepped", what, where))
    if not space.outdoors and _sounds_outdoors(name):
        what = f"“{name}” is a space of the file like a room; leave it out if it lies outdoors."
        found.left.append(Note("perhaps-outdoors", what, where))
    if len(floor.parts) > 1:
        what = f"The floor of “{name}” comes in {len(floor.parts)} parts: each is a room here."
        found.mended.append(Note("room-parted", what, where))
    parts = [
        replace(space, id=f"{key}-part-{number}", shape=shape)
        for number, shape in enumerate(floor.parts[1:], start=2)
    ]
    return [space, *parts]


def _from_footprint(element: Entity, name: str, frame: Frame, found: Spaces) -> list[ToldSpace]:
    key = _key(element)
    shape, low_m = footprint_of(element, frame)
    if shape is None:
        what = f"“{name}” has no body and no footprint that could be read: no floor of it."
        found.left.append(Note("room-unsound", what))
        return []
    what = f"“{name}” has no body; its footprint was taken."
    point = shape.representative_point()
    found.mended.append(Note("footprint-taken", what, (float(point.x), float(point.y))))
    floor_m = None if low_m is None else low_m - frame.zero_m
    return [ToldSpace(key, shape, name, storey_of(element), floor_m, None,
                      outdoors=_is_outdoors(element))]  # fmt: skip


def _height(space: ToldSpace, sizes: Mapping[str, Sizes]) -> float | None:
    """The stated clear height, else that of the body."""
    told = sizes[space.id].height_m if space.id in sizes else None
    height = told if told is not None else space.height_m
    return height if height is not None and isfinite(height) and height > 0 else None


def _names(elements: Sequence[Entity]) -> dict[int, str]:
    """What a person calls each space: its long name, with its number where several share it."""
    pairs = {e.id(): (_text(e.LongName), _text(e.Name)) for e in elements}
    often = Counter(long for long, _ in pairs.values() if long)
    return {
        number: (f"{long} {short}".strip() if often[long] > 1 else long)
        if long
        else short or f"Space {number}"
        for number, (long, short) in pairs.items()
    }


def _key(element: Entity) -> str:
    return str(element.GlobalId or f"#{element.id()}")


def _text(value: object) -> str:
    return " ".join(str(value or "").split())[:120]


def _is_outdoors(element: Entity) -> bool:
    """The file's own word: `EXTERNAL` as inside-or-outside flag or as predefined type."""
    for attribute in ("InteriorOrExteriorSpace", "PredefinedType"):
        if str(getattr(element, attribute, None) or "").startswith("EXTERNAL"):
            return True
    return False


def _sounds_outdoors(name: str) -> bool:
    return is_outdoors(name) or bool(_ROOFS & {word.lower() for word in name.split()})


def shapes_by_storey(spaces: Sequence[ToldSpace]) -> dict[str, BaseGeometry]:
    """The floor of each storey as one shape."""
    by_storey: dict[str, list[shapely.Polygon]] = {}
    for space in spaces:
        by_storey.setdefault(space.storey, []).append(space.shape)
    return {storey: shapely.union_all(shapes) for storey, shapes in by_storey.items()}
