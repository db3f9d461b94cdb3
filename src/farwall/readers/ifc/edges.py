"""Virtual boundaries of an IFC model: open edges between spaces that no wall parts."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import field
from math import hypot

import numpy as np
import shapely

from farwall.facts.reading import Note
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.ifc.curves import Points, surface_points
from farwall.readers.ifc.frame import Frame
from farwall.readers.ifc.load import Entity
from farwall.readers.ifc.tree import Matrix, placement, placement_matrix, storey_of
from farwall.readers.ifc.ways import Bounds
from farwall.readers.told.nouns import ToldOpening

_LEAST_HIGH_M = 1.6
"""An open edge lower than this is a hatch or a parapet. Rank: guess."""
_NARROWEST_M = 0.4
_FLAT_M = 0.05
_BESIDE_M = 0.5


@dataclass
class Edges:
    """The open edges told, from one side each, and what is to be said of them."""

    openings: list[ToldOpening] = field(default_factory=list)
    mended: list[Note] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)


def open_edges_of(bounds: Bounds, frame: Frame, shapes: Mapping[str, shapely.Polygon]) -> Edges:
    """Virtual boundaries that stand upright: open edges between spaces.

    By the standard their points count in the frame of their space; some programs write them in that
    of the storey or of the world. `shapes`, the floors by id of the space, tell which it is.
    """
    found = Edges()
    strange = lost = 0
    for boundary in bounds.edges:
        space, geometry = boundary.RelatingSpace, boundary.ConnectionGeometry
        points = surface_points(getattr(geometry, "SurfaceOnRelatingElement", None))
        if len(points) < 3 or str(space.GlobalId) not in shapes:
            continue
        seam, place = _seated(points, space, frame, shapes[str(space.GlobalId)])
        if seam is None:
            lost += place > 0
            continue
        strange += place > 0
        element = boundary.RelatedBuildingElement
        related = [str(space.GlobalId)]
        if element is not None:
            related = list(dict.fromkeys([*related, *_others(element, boundary)]))
        found.openings.append(
            ToldOpening(
                str(boundary.GlobalId or f"#{boundary.id()}"),
                seam,
                leaf=False,
                relations=tuple(related),
                storey=storey_of(space),
            )
        )
    if strange:
        what = f"{strange} × open edge is written in another frame than its space’s; put in place."
        found.mended.append(Note("edge-reframed", what))
    if lost:
        what = f"{lost} × open edge lies nowhere near its space: left out."
        found.left.append(Note("edge-unplaced", what))
    return found


def _seated(
    points: Points, space: Entity, frame: Frame, shape: shapely.Polygon
) -> tuple[tuple[Point, Point] | None, int]:
    """The line of an edge in plan, and the place of the frame that puts it beside its space.

    0: the space's own frame; None with 0: the surface lies flat; None with 1: it lies nowhere near.
    """
    upright = False
    for place, matrix in enumerate(_frames(space)):
        seam = _upright(np.array(frame.plan(points, matrix)))
        if seam is not None:
            upright = True
            if shape.distance(shapely.LineString(seam)) <= _BESIDE_M:
                return seam, place
    return None, int(upright)


def _frames(space: Entity) -> Iterator[Matrix]:
    own = placement(space)
    if own is not None:
        yield own
    above = getattr(getattr(space, "ObjectPlacement", None), "PlacementRelTo", None)
    outer = placement_matrix(above)
    if outer is not None:
        yield outer
    yield np.eye(4)


def _others(element: Entity, own: Entity) -> list[str]:
    """The spaces of other boundaries by the same virtual element."""
    return [
        str(one.RelatingSpace.GlobalId)
        for one in getattr(element, "ProvidesBoundaries", None) or ()
        if one != own and one.RelatingSpace is not None and one.RelatingSpace.is_a("IfcSpace")
    ]


def _upright(
    world: np.ndarray[tuple[int, int], np.dtype[np.float64]],
) -> tuple[Point, Point] | None:
    """The line in plan of corners that stand upright over it; None for a lying surface."""
    if np.ptp(world[:, 2]) < _LEAST_HIGH_M:
        return None
    plan = world[:, :2]
    a = plan[np.argmax(np.hypot(*(plan - plan[0]).T))]
    b = plan[np.argmax(np.hypot(*(plan - a).T))]
    long = hypot(*(b - a))
    if long < _NARROWEST_M:
        return None
    aside = np.abs((plan - a) @ np.array([-(b - a)[1], (b - a)[0]])) / long
    if aside.max() > _FLAT_M:
        return None
    return (float(a[0]), float(a[1])), (float(b[0]), float(b[1]))
