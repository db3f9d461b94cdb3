"""Small invented IFC models, written entity by entity; lengths in the unit that is asked for."""

from dataclasses import dataclass, field
from typing import Any

import ifcopenshell
import ifcopenshell.guid

Pair = tuple[float, float]


@dataclass
class Making:
    """A model in the making: one building, its storeys, and what is put into them."""

    schema: str = "IFC4"
    unit: str = "m"
    unit_told: bool = True
    north: Pair | None = None
    site_turn: Pair = (1.0, 0.0)
    model: Any = field(init=False)

    def __post_init__(self) -> None:
        self.model = f = ifcopenshell.file(schema=self.schema)
        north = f.createIfcDirection(self.north) if self.north else None
        self.context = f.createIfcGeometricRepresentationContext(
            None, "Model", 3, 1e-5, self.axes(), north
        )
        units = f.createIfcUnitAssignment(self._units()) if self.unit_told else None
        self.project = f.createIfcProject(
            self.guid(), self.owner(), "House", None, None, None, None, [self.context], units
        )
        self.site_at = self.at((0.0, 0.0, 0.0), way=self.site_turn)
        self.building = f.createIfcBuilding(
            self.guid(), self.owner(), "B", None, None, self.site_at, None, None, "ELEMENT"
        )
        self.gather(self.project, [self.building])

    def owner(self) -> Any:
        """The owner history that 2x3 wants of every entity."""
        if self.schema != "IFC2X3":
            return None
        found = self.model.by_type("IfcOwnerHistory")
        if found:
            return found[0]
        f = self.model
        person = f.createIfcPerson("p")
        firm = f.createIfcOrganization(None, "o")
        both = f.createIfcPersonAndOrganization(person, firm)
        program = f.createIfcApplication(firm, "1", "test", "test")
        return f.createIfcOwnerHistory(both, program, None, "NOCHANGE", None, None, None, 0)

    def guid(self) -> str:
        """A new id, the same ones in every run."""
        count = len(self.model.by_type("IfcRoot")) if hasattr(self, "model") else 0
        return f"{count:022d}"

    def _units(self) -> list[Any]:
        f = self.model
        prefix = {"mm": "MILLI", "cm": "CENTI"}.get(self.unit)
        metre = f.createIfcSIUnit(None, "LENGTHUNIT", prefix, "METRE")
        area = f.createIfcSIUnit(None, "AREAUNIT", None, "SQUARE_METRE")
        if self.unit in {"ft", "in"}:
            name, factor = {"ft": ("FOOT", 0.3048), "in": ("INCH", 0.0254)}[self.unit]
            power = f.createIfcDimensionalExponents(1, 0, 0, 0, 0, 0, 0)
            value = f.createIfcMeasureWithUnit(f.createIfcLengthMeasure(factor), metre)
            return [f.createIfcConversionBasedUnit(power, "LENGTHUNIT", name, value), area]
        return [metre, area]

    def axes(self, point: tuple[float, ...] = (0.0, 0.0, 0.0), way: Pair = (1.0, 0.0)) -> Any:
        """A position in space, its x axis turned in plan."""
        f = self.model
        return f.createIfcAxis2Placement3D(
            f.createIfcCartesianPoint(tuple(map(float, point))),
            f.createIfcDirection((0.0, 0.0, 1.0)),
            f.createIfcDirection((float(way[0]), float(way[1]), 0.0)),
        )

    def at(self, point: tuple[float, ...], to: Any = None, way: Pair = (1.0, 0.0)) -> Any:
        """A placement relative to another."""
        return self.model.createIfcLocalPlacement(to, self.axes(point, way))

    def gather(self, whole: Any, parts: list[Any]) -> None:
        """Parts of a whole: aggregation."""
        self.model.createIfcRelAggregates(self.guid(), self.owner(), None, None, whole, parts)

    def storey(self, name: str, elevation: float | None = 0.0) -> Any:
        """A storey of the building at its elevation."""
        place = self.at((0.0, 0.0, elevation or 0.0), self.site_at)
        one = self.model.createIfcBuildingStorey(
            self.guid(), self.owner(), name, None, None, place, None, None, "ELEMENT", elevation
        )
        self.gather(self.building, [one])
        return one

    def polyline(self, points: list[Pair], *, closed: bool = True) -> Any:
        """A line of straight pieces in plan."""
        f = self.model
        made = [f.createIfcCartesianPoint(tuple(map(float, p))) for p in points]
        return f.createIfcPolyline([*made, made[0]] if closed else made)

    def block(self, points: list[Pair], height: float, base: float = 0.0) -> Any:
        """An outline drawn up by a height; down where it is negative."""
        f = self.model
        profile = f.createIfcArbitraryClosedProfileDef("AREA", None, self.polyline(points))
        way = f.createIfcDirection((0.0, 0.0, 1.0 if height > 0 else -1.0))
        return f.createIfcExtrudedAreaSolid(profile, self.axes((0.0, 0.0, base)), way, abs(height))

    def shape(self, *items: Any, kind: str = "SweptSolid", name: str = "Body") -> Any:
        """A product's shape of one representation."""
        f = self.model
        one = f.createIfcShapeRepresentation(self.context, name, kind, list(items))
        return f.createIfcProductDefinitionShape(None, None, [one])

    def space(self, storey: Any, name: str, points: list[Pair], *, height: float = 2.5,
              base: float = 0.0, shape: Any = None, long: str | None = None,
              outside: bool = False) -> Any:  # fmt: skip
        """A space of a storey."""
        body = shape or self.shape(self.block(points, height, base))
        place = self.at((0.0, 0.0, 0.0), storey.ObjectPlacement)
        one = self.model.createIfcSpace(
            self.guid(), self.owner(), name, None, None, place, body, long, "ELEMENT"
        )
        if self.schema == "IFC2X3":
            one.InteriorOrExteriorSpace = "EXTERNAL" if outside else "INTERNAL"
        elif outside:
            one.PredefinedType = "EXTERNAL"
        self.gather(storey, [one])
        return one

    def contain(self, storey: Any, one: Any) -> Any:
        """The element, put on a storey."""
        self.model.createIfcRelContainedInSpatialStructure(
            self.guid(), self.owner(), None, None, [one], storey
        )
        return one

    def wall(self, storey: Any) -> Any:
        """A wall without a body: what openings are cut into."""
        place = self.at((0.0, 0.0, 0.0), storey.ObjectPlacement)
        wall = self.model.createIfcWall(self.guid(), self.owner(), "wall", None, None, place)
        return self.contain(storey, wall)

    def opening(self, storey: Any, points: list[Pair], *, base: float = 0.0,
                height: float = 2.1) -> Any:  # fmt: skip
        """A hole through a wall of its own."""
        f, wall = self.model, self.wall(storey)
        place = self.at((0.0, 0.0, 0.0), storey.ObjectPlacement)
        body = self.shape(self.block(points, height, base))
        hole = f.createIfcOpeningElement(self.guid(), self.owner(), "hole", None, None, place, body)
        f.createIfcRelVoidsElement(self.guid(), self.owner(), None, None, wall, hole)
        return hole

    def door(self, storey: Any, points: list[Pair] | None, width: float, *, kind: str = "IfcDoor",
             base: float = 0.0, height: float = 2.1, external: bool | None = None,
             at: Pair = (0.0, 0.0)) -> Any:  # fmt: skip
        """A door, or a window, in a hole of its own; without points, by its placement alone."""
        f = self.model
        place = self.at((*at, base), storey.ObjectPlacement)
        one = f.create_entity(kind, self.guid(), self.owner(), "d", ObjectPlacement=place)
        one.OverallWidth, one.OverallHeight = float(width), float(height)
        self.contain(storey, one)
        if points:
            hole = self.opening(storey, points, base=base, height=height)
            f.createIfcRelFillsElement(self.guid(), self.owner(), None, None, hole, one)
        if external is not None:
            self.told(one, "Pset_DoorCommon", IsExternal=f.createIfcBoolean(external))
        return one

    def told(self, one: Any, group: str, **values: Any) -> None:
        """Properties of an element."""
        f = self.model
        singles = [f.createIfcPropertySingleValue(k, None, v, None) for k, v in values.items()]
        own = f.createIfcPropertySet(self.guid(), self.owner(), group, None, singles)
        f.createIfcRelDefinesByProperties(self.guid(), self.owner(), None, None, [one], own)

    def sized(self, one: Any, group: str, **areas: float) -> None:
        """Stated areas of a space."""
        f = self.model
        made = [f.createIfcQuantityArea(k.replace("_", " "), None, None, v)
                for k, v in areas.items()]  # fmt: skip
        own = f.createIfcElementQuantity(self.guid(), self.owner(), group, None, None, made)
        f.createIfcRelDefinesByProperties(self.guid(), self.owner(), None, None, [one], own)

    def bound(self, space: Any, element: Any, *, edge: list[Pair] | None = None,
              height: float = 2.5) -> Any:  # fmt: skip
        """A boundary of a space: by an element, or virtual along an edge."""
        f = self.model
        geometry = None
        if edge is not None:
            line = self.polyline(edge, closed=False)
            profile = f.createIfcArbitraryOpenProfileDef("CURVE", None, line)
            surface = f.createIfcSurfaceOfLinearExtrusion(
                profile, self.axes(), f.createIfcDirection((0.0, 0.0, 1.0)), height
            )
            geometry = f.createIfcConnectionSurfaceGeometry(surface, None)
        return f.createIfcRelSpaceBoundary(
            self.guid(), self.owner(), None, None, space, element, geometry,
            "PHYSICAL" if edge is None else "VIRTUAL", "INTERNAL",
        )  # fmt: skip

    def data(self) -> bytes:
        """The file, the same at any hour."""
        self.model.header.file_name.time_stamp = "2026-01-01T00:00:00"
        return str(self.model.to_string()).encode()


def box(x0: float, y0: float, x1: float, y1: float) -> list[Pair]:
    """The corners of an upright rectangle."""
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
