"""What an IFC model puts on the slab or lets end in it: tubs, drains, taps, outlets, columns."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.reading import Note
from farwall.readers.ifc.frame import Frame
from farwall.readers.ifc.load import Entity, Model
from farwall.readers.ifc.shapes import Body
from farwall.readers.ifc.tree import placement, storey_of
from farwall.readers.told.nouns import ToldFixture

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
_POINT_M = 0.05
_IN_ROOM = 0.5
_LEFT_ASIDE = {
    "IfcFurnishingElement": "furniture, which is moved before a floor is stained",
    "IfcStair": "stair: keep its foot dry",
    "IfcRamp": "ramp: look where it meets the floor",
}


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


def left_aside(model: Model) -> list[Note]:
    """What stands in the model and is not read, counted by kind."""
    notes = []
    for name, words in _LEFT_ASIDE.items():
        count = Counter(storey_of(element) for element in model.by_type(name)).total()
        if count:
            notes.append(Note("not-read", f"{count} × {words}."))
    return notes


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
        if isinstance(hull, shapely.Polygon) and hull.area > _POINT_M**2:
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
