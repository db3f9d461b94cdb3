"""Units of gbXML: told at the root, and sometimes again at a single element.

Source of the words: [gbxml-schema], the lists lengthUnitEnum and areaUnitEnum (from memory).
"""

from __future__ import annotations

from math import isfinite

from farwall.nouns import dataclass
from farwall.readers.told.scale import GRID_DECIMALS
from farwall.readers.xml_text import Node

_LENGTHS = {
    "kilometers": ("m", 1000.0), "meters": ("m", 1.0), "centimeters": ("cm", 0.01),
    "millimeters": ("mm", 0.001), "feet": ("ft", 0.3048), "inches": ("in", 0.0254),
    "yards": ("yd", 0.9144), "miles": ("mi", 1609.344),
}  # fmt: skip
_AREAS = {
    "squarekilometers": 1e6, "squaremeters": 1.0, "squarecentimeters": 1e-4,
    "squaremillimeters": 1e-6, "squarefeet": 0.3048**2, "squareinches": 0.0254**2,
    "squareyards": 0.9144**2, "squaremiles": 1609.344**2,
}  # fmt: skip
_FARTHEST_M = 1e7
"""No point lies farther from the origin of a survey grid than a quarter of a meridian."""


@dataclass(frozen=True)
class Units:
    """Metres in the file's unit of length, square metres in its unit of area; None: not known."""

    name: str
    length_m: float | None
    area_m2: float | None
    said: str = ""


def units_of(root: Node) -> Units:
    """The units told at the root."""
    said = root.get("lengthUnit")
    name, length_m = _LENGTHS.get(said.lower(), ("", None))
    return Units(name, length_m, _AREAS.get(root.get("areaUnit").lower()), said)


def length_at(node: Node, units: Units) -> float:
    """Metres in the unit at one element, which may say its own."""
    own = _LENGTHS.get(node.get("unit").lower())
    return own[1] if own else (units.length_m or 1.0)


def area_at(node: Node, units: Units) -> float | None:
    """Square metres in the unit at one element; None when nobody says."""
    own = _AREAS.get(node.get("unit").lower())
    if own is not None or units.area_m2 is not None:
        return own or units.area_m2
    return units.length_m**2 if units.length_m else None


def number(text: str) -> float | None:
    """A finite number, or None; commas for the point are taken as points."""
    try:
        value = float(text.strip().replace(",", "."))
    except ValueError:
        return None
    return value if isfinite(value) else None


def metres(text: str, unit_m: float) -> float | None:
    """A length [m]; None when it is no number or farther than any building."""
    value = number(text)
    if value is None or abs(value * unit_m) > _FARTHEST_M:
        return None
    return round(value * unit_m, GRID_DECIMALS)
