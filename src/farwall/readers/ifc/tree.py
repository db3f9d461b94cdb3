"""Where elements belong in an IFC model: storeys, placements, property sets."""

from __future__ import annotations

from collections.abc import Iterator
from math import isfinite
from typing import Any

import numpy as np
import numpy.typing as npt

from farwall.readers.ifc.load import Entity

_DEEPEST, _DEEPEST_PLACEMENT = 32, 500
_SHORT = 1e-9
Matrix = npt.NDArray[np.float64]


def storey_of(element: Entity) -> str:
    """The id of the storey that an element stands in, through openings, walls and spaces; or ""."""
    for _ in range(_DEEPEST):
        if element is None:
            return ""
        if element.is_a("IfcBuildingStorey"):
            return str(element.GlobalId or "")
        element = _parent(element)
    return ""


def _parent(element: Entity) -> Entity | None:
    for inverse, attribute in (
        ("ContainedInStructure", "RelatingStructure"),
        ("Decomposes", "RelatingObject"),
        ("FillsVoids", "RelatingOpeningElement"),
        ("VoidsElements", "RelatingBuildingElement"),
    ):
        relations = getattr(element, inverse, None)
        if relations:
            parent: Entity | None = getattr(relations[0], attribute, None)
            if parent is not None:
                return parent
    return None


def placement(element: Entity) -> Matrix | None:
    """The world placement of an element in units of the file, (4, 4); None where it is unsound."""
    return placement_matrix(getattr(element, "ObjectPlacement", None))


def placement_matrix(one: Entity | None) -> Matrix | None:
    """A placement in the world, in units of the file, (4, 4); None where it is unsound.

    Placements on grids and along lines of the way are not followed.
    """
    matrix = np.eye(4)
    for _ in range(_DEEPEST_PLACEMENT):
        if one is None:
            return matrix if np.isfinite(matrix).all() else None
        if not one.is_a("IfcLocalPlacement"):
            return None
        own = axes_matrix(one.RelativePlacement)
        if own is None:
            return None
        matrix = own @ matrix
        one = one.PlacementRelTo
    return None


def axes_matrix(position: Entity | None) -> Matrix | None:
    """The frame of an axis placement in the frame around it, (4, 4); None where it is unsound.

    Its z is `Axis`, its x `RefDirection` made square to that. Source: [iso-16739]
    IfcBuildAxes and IfcBuild2Axes.
    """
    matrix = np.eye(4)
    if position is None:
        return matrix
    origin = _triple(position.Location, "Coordinates", (0.0, 0.0, 0.0))
    up = _triple(getattr(position, "Axis", None), "DirectionRatios", (0.0, 0.0, 1.0))
    way = _triple(getattr(position, "RefDirection", None), "DirectionRatios", (1.0, 0.0, 0.0))
    up = up / np.linalg.norm(up)
    way = way - (way @ up) * up
    if np.linalg.norm(way) < _SHORT:  # no way of its own across its up: any that is square to it
        way = np.eye(3)[np.argmin(np.abs(up))]
        way = way - (way @ up) * up
    way = way / np.linalg.norm(way)
    matrix[:3, 0], matrix[:3, 1], matrix[:3, 2] = way, np.cross(up, way), up
    matrix[:3, 3] = origin
    return matrix if np.isfinite(matrix).all() else None


def _triple(one: Entity | None, attribute: str, otherwise: tuple[float, float, float]) -> Matrix:
    values = getattr(one, attribute, None) or otherwise
    return np.array([*map(float, values), 0.0, 0.0][:3], dtype=np.float64)


def properties(element: Entity, *, named: frozenset[str]) -> dict[str, Any]:
    """The values of the wanted properties of an element and of its type, its own first."""
    found: dict[str, Any] = {}
    for group in _groups(element):
        for single in getattr(group, "HasProperties", None) or ():
            name = getattr(single, "Name", None)
            value = getattr(getattr(single, "NominalValue", None), "wrappedValue", None)
            if name in named and value is not None:
                found.setdefault(name, value)
    return found


def quantities(element: Entity) -> Iterator[tuple[str, str, float]]:
    """Set, name and value of the areas and lengths that a file states of an element."""
    for group in _groups(element):
        for quantity in getattr(group, "Quantities", None) or ():
            value = getattr(quantity, "AreaValue", None)
            value = getattr(quantity, "LengthValue", None) if value is None else value
            if isinstance(value, float | int) and isfinite(value):
                yield str(group.Name or ""), str(quantity.Name or ""), float(value)


def _groups(element: Entity) -> Iterator[Entity]:
    for relation in getattr(element, "IsDefinedBy", None) or ():
        if relation.is_a("IfcRelDefinesByProperties"):
            group = relation.RelatingPropertyDefinition
            if group is not None:
                yield group
        elif relation.is_a("IfcRelDefinesByType") and relation.RelatingType is not None:
            yield from getattr(relation.RelatingType, "HasPropertySets", None) or ()
    for relation in getattr(element, "IsTypedBy", None) or ():
        if relation.RelatingType is not None:
            yield from getattr(relation.RelatingType, "HasPropertySets", None) or ()
