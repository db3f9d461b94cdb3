"""What an IFC model puts on the slab or lets end in it: tubs, drains, taps, outlets, columns."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.reading import Note
from farwall.floor.geometry import polygon_geometry
from farwall.readers.ifc.frame import Frame
from farwall.readers.ifc.load import Entity, Model
from farwall.readers.ifc.shapes import Body
from farwall.readers.ifc.tree import placement, storey_of
from farwall.readers.told.nouns import ToldFixture, ToldSpace

_CLASSES = (
    "IfcFlowTerminal",
    "IfcFlowController",
    "IfcColumn",
)
"""Sanitary and waste terminals, outlets and valves are subtypes of these, or typed so in 2x3."""
_BY_CLASS = {
    "IfcSanitaryTerminal": "sanitary",
    "IfcWasteTerminal": "drain",
    "IfcOutlet": "outlet",
    "IfcValve": "",
    "IfcColumn": "column",
}
_BY_TYPE = {
    "BATH": "tub",
    "SHOWER": "shower",
    "WASHHANDBASIN": "sink",
    "SINK": "sink",
    "TOILETPAN": "toilet",
    "URINAL": "toilet",
    "BIDET": "toilet",
    "FAUCET": "tap",
    "DRAWOFFCOCK": "tap",
}
_POINTS = {"drain", "tap", "outlet"}
_POINT_M = 0.06
"""Half a side of the square that stands for what has no outline, or next to none."""
_IN_ROOM = 0.5
_STAIRS = ("IfcStairFlight", "IfcStair", "IfcRampFlight", "IfcRamp")
_FOOT_M, _AT_FOOT_M, _HEADROOM_M = 0.3, 0.6, 1.2
"""At its foot; how far a room may lie from it; under what nobody stands and sprays. Rank: guess."""


def fixture_elements(model: Model) -> list[Entity]:
    """The elements whose bodies are wanted."""
    return [e for name in _CLASSES for e in model.by_type(name) if _kind(e)]


def fixtures_of(
    elements: Sequence[Entity],
    bodies: Mapping[int, Body],
    frame: Frame,
    floors: Mapping[str, BaseGeometry],
) -> list[ToldFixture]:
    """Each with its outline in plan; columns only where most of them stands inside a room."""
    found = []
    for element in elements:
        kind, storey = _kind(element), storey_of(element)
        shape = _outline(element, kind, bodies.get(element.id()), frame)
        if shape is None:
            continue
        if kind == "column":
            floor = floors.get(storey)
            if floor is None or floor.intersection(shape).area < _IN_ROOM * shape.area:
                continue
        found.append(ToldFixture(kind, shape, storey))
    return found


def stair_elements(model: Model) -> list[Entity]:
    """Flights, and stairs and ramps that have a body of their own."""
    every = [e for name in _STAIRS for e in model.by_type(name)]
    return [e for e in every if getattr(e, "Representation", None) is not None]


def left_aside(
    model: Model,
    stairs: Sequence[Entity],
    bodies: Mapping[int, Body],
    frame: Frame,
    spaces: Sequence[ToldSpace],
) -> list[Note]:
    """What stands in the model and is not read: each stair by the room at its foot, furniture."""
    notes = []
    for element in stairs:
        body = bodies.get(element.id())
        if body is not None:
            notes.append(_stair(body, frame, spaces))
    count = len(model.by_type("IfcFurnishingElement"))
    if count:
        what = f"{count} × furniture, which is moved before a floor is stained."
        notes.append(Note("not-read", what))
    return notes


def _stair(body: Body, frame: Frame, spaces: Sequence[ToldSpace]) -> Note:
    """Where a flight meets the slab, and in which room."""
    low = body.corners[body.corners[:, 2] <= body.low_m + _FOOT_M]
    x, y = (float(value) for value in low[:, :2].mean(axis=0))
    foot = shapely.Point(x, y)
    near = [
        (float(space.shape.distance(foot)), space.name or space.id)
        for space in spaces
        if space.floor_m is None or abs(space.floor_m - body.low_m + frame.zero_m) <= _AT_FOOT_M
    ]
    away, name = min(near, default=(_AT_FOOT_M + 1, ""))
    at = f" in {name}" if away <= _AT_FOOT_M else ""
    what = f"A “stair” (a flight or a ramp) meets the floor{at}: what lies under it is kept dry."
    under = body.corners[body.corners[:, 2] <= body.low_m + _HEADROOM_M]
    hull = shapely.MultiPoint(under[:, :2]).convex_hull
    shape = (
        polygon_geometry(hull) if isinstance(hull, shapely.Polygon) and hull.area > 0.1 else None
    )
    return Note("stair", what, (round(x, 4), round(y, 4)), shape)


def _kind(element: Entity) -> str:
    """Our word for an element, by its class and its predefined type, or those of its type."""
    for one in (element, _type(element)):
        if one is None:
            continue
        told = _BY_TYPE.get(str(getattr(one, "PredefinedType", None) or ""))
        name = one.is_a().removesuffix("Type")
        if name in _BY_CLASS and (told or _BY_CLASS[name]):
            return told or _BY_CLASS[name]
    return ""


def _type(element: Entity) -> Entity | None:
    for inverse in ("IsTypedBy", "IsDefinedBy"):
        for relation in getattr(element, inverse, None) or ():
            kind: Entity | None = getattr(relation, "RelatingType", None)
            if kind is not None:
                return kind
    return None


def _outline(element: Entity, kind: str, body: Body | None, frame: Frame) -> shapely.Polygon | None:
    if body is not None:
        hull = shapely.MultiPoint(body.corners[:, :2]).convex_hull
        if isinstance(hull, shapely.Polygon) and hull.area >= (2 * _POINT_M) ** 2:
            return hull
        return _spot(hull.centroid)
    matrix = placement(element)
    if matrix is None or kind not in _POINTS:
        return None
    (x, y, *_), *_ = frame.plan([(0.0, 0.0, 0.0)], matrix)
    return _spot(shapely.Point(x, y))


def _spot(point: shapely.Point) -> shapely.Polygon:
    x, y = float(point.x), float(point.y)
    return shapely.box(x - _POINT_M, y - _POINT_M, x + _POINT_M, y + _POINT_M)
