"""Units of an IFC model: of length and area, tested against its doors and ceilings."""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite
from statistics import median

from farwall.facts.reading import Note
from farwall.nouns import dataclass
from farwall.readers.ifc.load import Model
from farwall.units import M_PER_FT

_NAMES = {1.0: "m", 0.001: "mm", 0.01: "cm", M_PER_FT: "ft", M_PER_FT / 12: "in"}
_DOOR_M = (0.5, 4.0)
_CEILING_M = (1.5, 25.0)
"""Middle widths of doors and heights of rooms that a person can live with. Rank: guess."""


@dataclass(frozen=True)
class Units:
    """Metres a unit of length is, square metres a unit of area; `declared`: by the file."""

    length_m: float
    area_m2: float
    name: str
    declared: bool

    @staticmethod
    def named(length_m: float) -> str:
        """The name of a unit by its length [m]; "" for an uncommon one."""
        for scale, name in _NAMES.items():
            if abs(length_m / scale - 1) < 1e-4:
                return name
        return ""


def units_of(model: Model) -> Units:
    """The units that the project declares; metres, and not declared, where it does not."""
    import ifcopenshell.util.unit as util

    declared = bool(_declared(model, "LENGTHUNIT"))
    try:
        length = float(util.calculate_unit_scale(model)) if declared else 1.0
        area_told = bool(_declared(model, "AREAUNIT"))
        area = float(util.calculate_unit_scale(model, "AREAUNIT")) if area_told else length**2
    except (AttributeError, KeyError, TypeError, ValueError, ZeroDivisionError, RuntimeError):
        return Units(1.0, 1.0, "", declared=False)
    if not (isfinite(length) and 1e-6 <= length <= 1000 and isfinite(area) and area > 0):
        return Units(1.0, 1.0, "", declared=False)
    return Units(length, area, Units.named(length), declared)


def unit_notes(units: Units, door_widths: Sequence[float], heights: Sequence[float]) -> list[Note]:
    """A doubt when doors or rooms come out in sizes that no person could use [m]."""
    doubts = []
    for what, values, (low, high) in (
        ("doors", door_widths, _DOOR_M),
        ("rooms", heights, _CEILING_M),
    ):
        if values and not low <= median(values) <= high:
            side = "wide" if what == "doors" else "high"
            doubts.append(f"its {what} come out {median(values):.3g} m {side} in the middle")
    if not doubts:
        return []
    said = f"The file says {units.name or 'no known unit'}, yet {' and '.join(doubts)}."
    return [Note("unit-doubted", f"{said} Say the metres of a unit with --scale.")]


def _declared(model: Model, kind: str) -> bool:
    for project in model.by_type("IfcProject"):
        assigned = project.UnitsInContext
        for unit in (assigned.Units if assigned else None) or ():
            if getattr(unit, "UnitType", None) == kind:
                return True
    return False
