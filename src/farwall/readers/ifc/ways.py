"""Doors, windows, openings without a leaf and open edges of an IFC model."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import field
from math import dist, hypot

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.ifc.frame import Frame
from farwall.readers.ifc.load import Entity, Model
from farwall.readers.ifc.shapes import Body, line_of
from farwall.readers.ifc.tree import placement, properties, storey_of
from farwall.readers.told.nouns import ToldOpening, ToldWindow

_EXTERNAL = frozenset({"IsExternal"})
_LOWEST_HEAD_M = 1.6
_HIGHEST_SILL_M = 0.3
"""An opening that a person walks through: head and sill over the floor. Rank: guess."""
_NARROWEST_M = 0.4
_UNDER_FLOOR_M = 0.1
_FAR_WIDER, _PLAY_M = 1.4, 0.05
_FLAT_M = 0.05


@dataclass
class Bounds:
    """Who bounds whom: ids of spaces by number of the element, and the open edges."""

    spaces: dict[int, list[str]] = field(default_factory=dict)
    edges: list[Entity] = field(default_factory=list)


def bounds_of(model: Model) -> Bounds:
    """The space boundaries of the file."""
    found = Bounds()
    for boundary in model.by_type("IfcRelSpaceBoundary"):
        space, element = boundary.RelatingSpace, boundary.RelatedBuildingElement
        if space is None or not space.is_a("IfcSpace"):
            continue
        if element is not None:
            ids = found.spaces.setdefault(element.id(), [])
            if str(space.GlobalId) not in ids:
                ids.append(str(space.GlobalId))
        if boundary.PhysicalOrVirtualBoundary == "VIRTUAL":
            found.edges.append(boundary)
    return found


def opening_in(element: Entity) -> Entity | None:
    """The opening in the wall that a door or window fills."""
    fills = getattr(element, "FillsVoids", None)
    return fills[0].RelatingOpeningElement if fills else None


def doors_of(
    doors: Sequence[Entity], bodies: Mapping[int, Body], bounds: Bounds, frame: Frame
) -> list[ToldOpening]:
    """The doors, each with its line, its foot, its flag and the spaces it bounds."""
    found = []
    for door in doors:
        opening = opening_in(door)
        body = _body(door, opening, bodies)
        width, height = frame.length(door.OverallWidth), frame.length(door.OverallHeight)
        external = properties(door, named=_EXTERNAL).get("IsExternal")
        numbers = [door.id(), *([opening.id()] if opening is not None else [])]
        related = dict.fromkeys(s for n in numbers for s in bounds.spaces.get(n, []))
        found.append(
            ToldOpening(
                str(door.GlobalId or f"#{door.id()}"),
                _seam(door, body, width, frame),
                leaf=True,
                relations=tuple(related),
                storey=storey_of(door),
                width_m=width,
                height_m=height,
                said_outside=external if isinstance(external, bool) else None,
                foot_m=None if body is None else body.low_m - frame.zero_m,
            )
        )
    return found


def windows_of(
    windows: Sequence[Entity], bodies: Mapping[int, Body], bounds: Bounds, frame: Frame,
    heights: Mapping[str, float],
) -> list[ToldWindow]:  # fmt: skip
    """The windows whose place is told; sills over the storey's floor, `heights` by its id [m]."""
    found = []
    for window in windows:
        opening = opening_in(window)
        body = _body(window, opening, bodies)
        width, height = frame.length(window.OverallWidth), frame.length(window.OverallHeight)
        seam = _seam(window, body, width, frame)
        if seam is None:
            continue
        storey = storey_of(window)
        sill = None
        if body is not None and storey in heights:
            sill = _sill(body.low_m - frame.zero_m - heights[storey])
        rooms = bounds.spaces.get(window.id(), [])
        room = rooms[0] if len(rooms) == 1 else ""
        found.append(ToldWindow(seam, sill, height, storey, room))
    return found


def _sill(height_m: float) -> float | None:
    """A sill over the floor [m]; one that lies under it (a roof light, a shaft) is none."""
    return round(max(height_m, 0.0), 4) if height_m > -_UNDER_FLOOR_M else None


def bare_openings_of(
    openings: Sequence[Entity], bodies: Mapping[int, Body], bounds: Bounds, frame: Frame,
    heights: Mapping[str, float],
) -> list[ToldOpening]:  # fmt: skip
    """Openings in walls that nothing fills and that a person could walk through."""
    found = []
    for opening in openings:
        body, storey = bodies.get(opening.id()), storey_of(opening)
        if body is None:
            continue
        floor_m = heights.get(storey, body.low_m - frame.zero_m) + frame.zero_m
        walked = body.low_m <= floor_m + _HIGHEST_SILL_M and body.high_m >= floor_m + _LOWEST_HEAD_M
        seam = line_of(body, None, _x_axis(opening))
        if walked and seam is not None and dist(*seam) >= _NARROWEST_M:
            found.append(
                ToldOpening(
                    str(opening.GlobalId or f"#{opening.id()}"),
                    seam,
                    leaf=False,
                    relations=tuple(bounds.spaces.get(opening.id(), [])),
                    storey=storey,
                    height_m=round(body.high_m - body.low_m, 4),
                    foot_m=body.low_m - frame.zero_m,
                )
            )
    return found


def _body(element: Entity, opening: Entity | None, bodies: Mapping[int, Body]) -> Body | None:
    body = bodies.get(opening.id()) if opening is not None else None
    return body if body is not None else bodies.get(element.id())


def _seam(
    element: Entity, body: Body | None, width_m: float | None, frame: Frame
) -> tuple[Point, Point] | None:
    """By the body of the opening or of the element; else by its placement and its width.

    In an opening much wider than the leaf, the placement tells which part of it the leaf takes.
    """
    if body is None:
        return _placed(element, width_m, frame)
    along = _x_axis(element)
    seam = line_of(body, width_m, along)
    whole = line_of(body, None, along)
    if seam is None or whole is None or width_m is None or dist(*whole) <= _FAR_WIDER * width_m:
        return seam
    own = _placed(element, width_m, frame)
    return seam if own is None else _laid_along(own, whole) or seam


def _laid_along(own: tuple[Point, Point], whole: tuple[Point, Point]) -> tuple[Point, Point] | None:
    """The part of a line beside which another lies; None where that sticks out of it."""
    (ax, ay), (bx, by) = whole
    long = dist(*whole)
    ux, uy = (bx - ax) / long, (by - ay) / long
    low, high = sorted((x - ax) * ux + (y - ay) * uy for x, y in own)
    if low < -_PLAY_M or high > long + _PLAY_M or high - low < 0.9 * dist(*own):
        return None
    return (ax + ux * low, ay + uy * low), (ax + ux * high, ay + uy * high)


def _placed(element: Entity, width_m: float | None, frame: Frame) -> tuple[Point, Point] | None:
    """The line from an element's placement along its own x axis."""
    matrix = placement(element)
    if matrix is None or width_m is None:
        return None
    unit = width_m / frame.units.length_m
    a, b = frame.plan([(0.0, 0.0, 0.0), (unit, 0.0, 0.0)], matrix)
    return ((a[0], a[1]), (b[0], b[1])) if dist(a[:2], b[:2]) > 0.5 * width_m else None


def _x_axis(element: Entity) -> Point:
    """The element's own x axis in plan: the way of a door's width by the standard."""
    matrix = placement(element)
    if matrix is None:
        return 1.0, 0.0
    x, y = float(matrix[0, 0]), float(matrix[1, 0])
    long = hypot(x, y)
    return (x / long, y / long) if long > 1e-6 else (1.0, 0.0)
