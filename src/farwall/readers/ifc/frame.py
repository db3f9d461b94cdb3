"""How figures of an IFC file become metres of the floor's frame, and which way north lies."""

from __future__ import annotations

from collections.abc import Sequence
from math import atan2, degrees, isfinite

import numpy as np

from farwall.facts.reading import Storey
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.ifc.load import Entity, Model
from farwall.readers.ifc.tree import Matrix, placement
from farwall.readers.ifc.unit import Units


@dataclass(frozen=True)
class Frame:
    """The file's unit as used [m], and the height of the building's own zero [m].

    `units` are those used; `factor` is 1 but where the user's own scale overrules the file's.
    """

    units: Units
    factor: float
    zero_m: float

    def plan(self, points: Sequence[Sequence[float]], matrix: Matrix) -> list[tuple[float, ...]]:
        """Points of an element's own frame, in units of the file, as world points [m]."""
        flat = np.array([[*p, 0.0, 0.0][:3] for p in points], dtype=np.float64).reshape(-1, 3)
        world = (flat @ matrix[:3, :3].T + matrix[:3, 3]) * self.units.length_m
        return [tuple(row) for row in world.tolist()]

    def length(self, value: object) -> float | None:
        """A length of the file in metres; None for what is no positive number."""
        if not isinstance(value, float | int) or not isfinite(value) or value <= 0:
            return None
        return round(float(value) * self.units.length_m, 4)


def zero_of(model: Model, units: Units) -> float:
    """Height of the first building's placement [m]: storey elevations count from there."""
    for building in model.by_type("IfcBuilding"):
        matrix = placement(building)
        if matrix is not None:
            return float(matrix[2, 3]) * units.length_m
    return 0.0


def storeys_of(model: Model, frame: Frame) -> tuple[Storey, ...]:
    """The storeys from the lowest up, those without an elevation last."""
    found = []
    for storey in model.by_type("IfcBuildingStorey"):
        told = storey.Elevation
        if isinstance(told, float | int) and isfinite(told):
            height: float | None = round(float(told) * frame.units.length_m, 4) + 0.0
        else:
            matrix = placement(storey)
            height = None
            if matrix is not None:
                height = round(float(matrix[2, 3]) * frame.units.length_m - frame.zero_m, 4) + 0.0
        name = " ".join(str(storey.LongName or storey.Name or "").split())[:120]
        name = " ".join(str(storey.Name or "").split())[:120] or name
        found.append(Storey(str(storey.GlobalId or f"#{storey.id()}"), name, height))
    return tuple(sorted(found, key=lambda s: (s.elevation_m is None, s.elevation_m or 0.0)))


def north_of(model: Model) -> float | None:
    """Where north lies, degrees clockwise from the plan's up; None where the file does not say.

    IfcGeometricRepresentationContext.TrueNorth is the direction of north in the model's x and y.
    Source: [iso-16739].
    """
    for context in model.by_type("IfcGeometricRepresentationContext", include_subtypes=False):
        north = _ratios(context.TrueNorth)
        if north is not None:
            return round(degrees(atan2(north[0], north[1])) % 360, 4)
    return None


def _ratios(direction: Entity | None) -> Point | None:
    ratios = getattr(direction, "DirectionRatios", None)
    if not ratios or len(ratios) < 2:
        return None
    x, y = float(ratios[0]), float(ratios[1])
    return (x, y) if isfinite(x) and isfinite(y) and (x or y) else None
