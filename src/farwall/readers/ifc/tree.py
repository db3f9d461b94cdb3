"""Where elements belong in an IFC model: storeys, placements, property sets."""

from __future__ import annotations

from collections.abc import Iterator
from math import isfinite
from typing import Any

import numpy as np
import numpy.typing as npt

from farwall.readers.ifc.load import Entity

_DEEPEST = 32
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
    import ifcopenshell.util.placement as util

    try:
        matrix = np.asarray(util.get_local_placement(element.ObjectPlacement), dtype=np.float64)
    except (AttributeError, TypeError, ValueError, RecursionError, RuntimeError, IndexError):
        return None
    return matrix if matrix.shape == (4, 4) and np.isfinite(matrix).all() else None


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
