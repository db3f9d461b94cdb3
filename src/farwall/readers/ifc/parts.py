"""Whether the parts of a building model end: no thing is part of itself, by way of its parts.

The library that builds bodies follows what a thing is part of without an end to it, in compiled
code that nothing interrupts; so these relations are looked at beforehand.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.readers.ifc.load import Model

_WHOLES = ("RelatingObject", "RelatingStructure", "RelatingBuildingElement",
           "RelatingOpeningElement", "RelatingElement")  # fmt: skip
_PARTS = ("RelatedObjects", "RelatedElements", "RelatedOpeningElement",
          "RelatedBuildingElement", "RelatedFeatureElement")  # fmt: skip
_RELATIONS = ("IfcRelDecomposes", "IfcRelContainedInSpatialStructure", "IfcRelVoidsElement",
              "IfcRelFillsElement", "IfcRelProjectsElement")  # fmt: skip
_REMEDY = "Export the model anew as IFC 2x3 or IFC 4, or the floor plan as DXF."


def insist_parts_end(model: Model) -> None:
    """Raises Refused where something is part of itself."""
    parts: dict[int, set[int]] = {}
    for name in _RELATIONS:
        for relation in model.by_type(name):
            for whole in _numbers(_first(relation, _WHOLES)):
                parts.setdefault(whole, set()).update(_numbers(_first(relation, _PARTS)))
    ring = ring_in(parts)
    if ring is not None:
        what = f"#{ring} is part of itself, by way of its parts."
        raise Refused(Mistake(f"#{ring}", what, _REMEDY))


def ring_in(parts: dict[int, set[int]]) -> int | None:
    """A thing from which its own parts lead back to it; None where all parts end."""
    done: set[int] = set()
    for start, its in parts.items():
        if start in done:
            continue
        on_way, steps = {start}, [(start, iter(its))]
        while steps:
            at, inside = steps[-1]
            one = next(inside, None)
            if one is None:
                steps.pop()
                on_way.discard(at)
                done.add(at)
            elif one in on_way:
                return one
            elif one in parts and one not in done:
                on_way.add(one)
                steps.append((one, iter(parts[one])))
    return None


def _first(relation: Any, names: tuple[str, ...]) -> Any:
    return next((found for n in names if (found := getattr(relation, n, None)) is not None), None)


def _numbers(value: Any) -> Iterator[int]:
    things: Iterable[Any] = value if isinstance(value, tuple | list) else (value,)
    return (one.id() for one in things if hasattr(one, "id"))
