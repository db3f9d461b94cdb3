"""Whether the references of an IFC file can be followed: of the right kind, no circle, no bomb.

The library that builds bodies is compiled and trusts them: one that points to the wrong kind of
thing, or round in a circle, ends the whole process. So all are looked at beforehand.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import field
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.readers.ifc.load import Entity, Model

MOST_ENTITIES = 3_000_000
_DEEPEST = 500
_MOST_PARTS = 5e7
"""Parts that one thing of the file may unfold into, counted with every repetition."""
_SPARE = ("IfcRepresentationItem", "IfcRepresentation", "IfcProfileDef", "IfcProductRepresentation")
_PARTS = (
    ("IfcRelAggregates", "RelatedObjects", "RelatingObject"),
    ("IfcRelNests", "RelatedObjects", "RelatingObject"),
    ("IfcRelContainedInSpatialStructure", "RelatedElements", "RelatingStructure"),
    ("IfcRelVoidsElement", "RelatedOpeningElement", "RelatingBuildingElement"),
    ("IfcRelFillsElement", "RelatedBuildingElement", "RelatingOpeningElement"),
)
_REMEDY = "Export the model anew as IFC 2x3 or IFC 4, or the floor plan as DXF."


@dataclass
class Graph:
    """Who refers to whom, by number; `broken`: entities of a body that refer to what cannot be."""

    children: dict[int, list[int]] = field(default_factory=dict)
    broken: set[int] = field(default_factory=set)

    def leads_to_broken(self, number: int) -> bool:
        """Whether something broken hangs under an entity."""
        if not self.broken:
            return False
        seen, waiting = {number}, [number]
        while waiting:
            at = waiting.pop()
            if at in self.broken:
                return True
            fresh = [child for child in self.children.get(at, ()) if child not in seen]
            seen.update(fresh)
            waiting += fresh
        return False


def graph_of(model: Model) -> Graph:
    """The references of a model; raises Refused when following them would not end well."""
    rules = _Rules(model)
    graph = Graph()
    for count, entity in enumerate(model):
        if count > MOST_ENTITIES:
            what = f"The file holds more than {MOST_ENTITIES:,} entities."
            raise Refused(Mistake("DATA", what, "Export the storey to be stained alone."))
        if not rules.refers(entity):
            continue
        children, sound = rules.look(entity)
        number = entity.id()
        if children:
            graph.children[number] = children
        if not sound:
            if not any(entity.is_a(kind) for kind in _SPARE):
                what = f"this {entity.is_a()} refers to something of another kind."
                raise Refused(Mistake(f"#{number}", what, _REMEDY))
            graph.broken.add(number)
    _check_ends(graph.children)
    _check_ends(_wholes(model))
    return graph


def _wholes(model: Model) -> dict[int, list[int]]:
    """What each thing is a part of, stands in, or fills: relations are followed upwards too."""
    above: dict[int, list[int]] = {}
    for name, parts, whole in _PARTS:
        for relation in model.by_type(name):
            over = getattr(relation, whole)
            for part in _flat(getattr(relation, parts)):
                if part is not None and over is not None:
                    above.setdefault(part.id(), []).append(over.id())
    return above


class _Rules:
    """What each attribute may refer to, by the schema; kept by class for speed."""

    def __init__(self, model: Model) -> None:
        import ifcopenshell.ifcopenshell_wrapper as wrapper

        self._schema: Any = wrapper.schema_by_name(model.schema_identifier)
        self._attributes: dict[str, list[tuple[int, Any, bool]]] = {}
        self._allowed: dict[tuple[str, str], bool] = {}

    def refers(self, entity: Entity) -> bool:
        """Whether an entity may refer to others at all: points and numbers do not."""
        return bool(self._of(entity.is_a()))

    def look(self, entity: Entity) -> tuple[list[int], bool]:
        """The numbers that an entity refers to, and whether all are of the right kind."""
        children: list[int] = []
        sound = True
        for place, wanted, needed in self._of(entity.is_a()):
            value = entity[place]
            if value is None:
                sound = sound and not needed
                continue
            for one in _flat(value):
                if not hasattr(one, "is_a"):
                    sound = False
                    continue
                number = one.id()
                if number:
                    children.append(number)
                sound = sound and self._fits(wanted, one.is_a())
        return children, sound

    def _of(self, name: str) -> list[tuple[int, Any, bool]]:
        """The attributes of a class that refer to entities: place, kind, and whether needed."""
        if name not in self._attributes:
            entity = self._schema.declaration_by_name(name).as_entity()
            body = any(self._is(name, kind) for kind in _SPARE)
            found = []
            for place, (one, derived) in enumerate(
                zip(entity.all_attributes(), entity.derived(), strict=True)
            ):
                kind = _kind(one.type_of_attribute())
                if kind is not None and not derived:
                    found.append((place, kind, body and not one.optional()))
            self._attributes[name] = found
        return self._attributes[name]

    def _is(self, name: str, above: str) -> bool:
        try:
            return bool(self._schema.declaration_by_name(name)._is(above))
        except (RuntimeError, TypeError):
            return False

    def _fits(self, wanted: Any, name: str) -> bool:
        key = wanted.name(), name
        if key not in self._allowed:
            self._allowed[key] = self._holds(wanted, name)
        return self._allowed[key]

    def _holds(self, wanted: Any, name: str) -> bool:
        choices = wanted.as_select_type()
        if choices is None:
            return self._is(name, wanted.name())
        return any(self._holds(one, name) for one in choices.select_list())


def _kind(parameter: Any) -> Any:
    """The class or choice of classes that an attribute refers to; None for plain values."""
    while (group := parameter.as_aggregation_type()) is not None:
        parameter = group.type_of_element()
    named = parameter.as_named_type()
    if named is None:
        return None
    declared = named.declared_type()
    return declared if declared.as_entity() or declared.as_select_type() else None


def _flat(value: object) -> Iterator[Any]:
    if isinstance(value, tuple | list):
        for one in value:
            yield from _flat(one)
    else:
        yield value


def _check_ends(children: dict[int, list[int]]) -> None:
    """Raises Refused for circles, for what hangs too deep and for what unfolds without measure."""
    parts: dict[int, float] = {}
    depth: dict[int, int] = {}

    def settle(at: int, below: Sequence[int]) -> None:
        parts[at] = 1.0 + sum(parts[child] for child in below)
        depth[at] = 1 + max((depth[child] for child in below), default=0)
        if depth[at] > _DEEPEST or parts[at] > _MOST_PARTS:
            what = (
                f"what hangs under it is {depth[at]} deep and unfolds into {parts[at]:.0f} "
                "parts: more than a building needs."
            )
            raise Refused(Mistake(f"#{at}", what, _REMEDY))

    for at in sorted({child for below in children.values() for child in below} | children.keys()):
        below = children.get(at, ())
        if all(child in parts for child in below):  # most files refer backwards only
            settle(at, below)
    for start in children:
        waiting = [start]
        open_: set[int] = set()
        while waiting:
            at = waiting[-1]
            if at in parts:
                waiting.pop()
                continue
            below = children.get(at, ())
            if at not in open_:
                open_.add(at)
                fresh = [child for child in below if child not in parts]
                if any(child in open_ for child in fresh):
                    what = "this leads round in a circle to itself."
                    raise Refused(Mistake(f"#{at}", what, _REMEDY))
                waiting += fresh
                continue
            waiting.pop()
            open_.discard(at)
            settle(at, below)
