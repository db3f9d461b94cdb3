"""Tells rooms from wall bodies, thresholds, shafts and outside slabs among the faces."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field, replace
from functools import cached_property

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.reading import Note
from farwall.floor.geometry import polygon_geometry
from farwall.nouns import dataclass
from farwall.readers.lines.faces import Face
from farwall.readers.lines.labels import Label, names_among
from farwall.readers.lines.portals import Portal
from farwall.readers.room_names import is_outdoors, is_room_word

ROOM_BREADTH_M = 0.45
"""Narrower faces are wall bodies: no closet is that shallow (common practice, no source)."""
_LEAF_M = 0.06
_HAIR_M = 0.005
_SHAFT_M2 = 1.5
_OPEN_SHARE = 0.2


@dataclass(frozen=True)
class Found:
    """A room face with what is lettered in it."""

    shape: shapely.Polygon
    labels: tuple[Label, ...] = ()
    storey: int = 0
    """Its place among the storeys."""

    @property
    def name(self) -> str:
        """All names in it, the largest stated size first."""
        names = [label.name for label in _by_size(self.labels) if label.name]
        return " + ".join(dict.fromkeys(names))

    @property
    def first_name(self) -> str:
        """The name of its largest labelled part."""
        return next((label.name for label in _by_size(self.labels) if label.name), "")


@dataclass
class Sorted:
    """The faces, each in its place."""

    rooms: list[Found] = field(default_factory=list)
    outdoors: list[Found] = field(default_factory=list)
    shafts: list[shapely.Polygon] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)
    lost_labels: list[Label] = field(default_factory=list)
    _rims: dict[int, BaseGeometry] = field(default_factory=dict)

    @cached_property
    def tree(self) -> shapely.STRtree:
        """The rooms' shapes, to be asked once all rooms are placed."""
        return shapely.STRtree([found.shape for found in self.rooms])

    def rim(self, place: int) -> BaseGeometry:
        """The strip along a room's edge, to be asked once all rooms are placed."""
        if place not in self._rims:
            self._rims[place] = _rim(self.rooms[place].shape)
        return self._rims[place]


def sort_faces(
    faces: Sequence[Face],
    portals: Sequence[Portal],
    labels: Sequence[Label],
    outline: Sequence[shapely.LineString] = (),
) -> Sorted:
    """Rooms and outside slabs among the faces, with what could not be placed.

    `outline` is what only the footprint of the house draws: no wall stands there.
    """
    footprint = shapely.unary_union(list(outline)).buffer(0.003)
    under = shapely.unary_union([portal.shape.buffer(0.01) for portal in portals])
    shapely.prepare(under)
    wide = [f for f in faces if f.breadth_m >= ROOM_BREADTH_M and not under.covers(f.shape)]
    leaves = [f.shape for f in faces if _HAIR_M < f.breadth_m < _LEAF_M]
    sorted_faces = Sorted()
    placed: set[int] = set()
    lettered = shapely.STRtree([shapely.Point(label.at) for label in labels])
    for face in wide:
        here = lettered.query(face.shape, "intersects")
        inside = [labels[i] for i in sorted(here.tolist())]
        placed.update(map(id, inside))
        found = Found(face.shape, tuple(names_among(inside)))
        if _is_outdoors(found, footprint):
            _set_outside(found, sorted_faces)
        else:
            _place(found, portals, sorted_faces)
    _fill_leaves(sorted_faces, leaves)
    sorted_faces.lost_labels = [
        label
        for label in labels
        if label.name
        and id(label) not in placed
        and (label.size or is_room_word(label.name))
        and not is_outdoors(label.name)
    ]
    return sorted_faces


def _is_outdoors(found: Found, footprint: BaseGeometry) -> bool:
    """Named like a deck or a porch; or nameless and open to one side but for the footprint."""
    names = [label.name for label in found.labels if label.name]
    if names:
        return all(is_outdoors(name) for name in names)
    edge = found.shape.boundary
    return float(edge.intersection(footprint).length) > _OPEN_SHARE * edge.length


def _set_outside(found: Found, into: Sorted) -> None:
    into.outdoors.append(found)
    name = found.name or "A nameless slab"
    area = found.shape.area
    what = f"{name} ({area:.1f} m²) is a slab outside the house: not among the rooms."
    into.left.append(
        Note("outside-slab", what, _place_of(found.shape), polygon_geometry(found.shape))
    )


def _place(found: Found, portals: Sequence[Portal], into: Sorted) -> None:
    if found.name or found.shape.area >= _SHAFT_M2 or _has_way_in(found.shape, portals):
        into.rooms.append(found)
        return
    into.shafts.append(found.shape)
    what = (
        f"A closed shape of {found.shape.area:.1f} m² without a name or a way in "
        "(a shaft or a chase?) was left out."
    )
    into.left.append(
        Note("closed-shape", what, _place_of(found.shape), polygon_geometry(found.shape))
    )


def _has_way_in(shape: shapely.Polygon, portals: Sequence[Portal]) -> bool:
    return any(
        shapely.dwithin(shape, portal.shape, 0.01)
        and max(side_share(shape, face) for face in portal.faces) > 0.5
        for portal in portals
    )


def side_share(
    shape: shapely.Polygon, side: tuple[tuple[float, float], tuple[float, float]]
) -> float:
    """How much of a portal's side runs along the edge of a shape, from 0 to 1."""
    return share_along(_rim(shape), side)


def share_along(rim: BaseGeometry, side: tuple[tuple[float, float], tuple[float, float]]) -> float:
    """As `side_share`, of the strip along a shape's edge."""
    line = shapely.LineString(side)
    return float(line.intersection(rim).length / line.length)


def _rim(shape: shapely.Polygon) -> BaseGeometry:
    return shape.boundary.buffer(0.006)


def _fill_leaves(into: Sorted, leaves: list[shapely.Polygon]) -> None:
    """A door's leaf drawn as a closed box is floor like the rest of its room."""
    for leaf in leaves:
        for index, room in enumerate(into.rooms):
            shared = room.shape.boundary.intersection(leaf.boundary.buffer(0.002)).length
            if shared > 0.55 * leaf.length:
                whole = room.shape.union(leaf)
                if isinstance(whole, shapely.Polygon):
                    into.rooms[index] = replace(room, shape=whole)


def _place_of(shape: shapely.Polygon) -> tuple[float, float]:
    point = shape.representative_point()
    return float(point.x), float(point.y)


def _by_size(labels: Sequence[Label]) -> list[Label]:
    return sorted(labels, key=lambda label: -_area(label))


def _area(label: Label) -> float:
    size = label.size
    if size is None:
        return 0.0
    sides = size.sides_m or size.bare
    return size.area_m2 or (sides[0] * sides[1] if sides else 0.0)
