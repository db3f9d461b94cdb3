"""Places and lengths of the marks' forms in the units of the job, kept in metres."""

from __future__ import annotations

from farwall.papers.wall_clock import Units
from farwall.units import M_PER_FT, M_PER_IN
from farwall.web.pages.typed_lengths import length_of
from farwall.web.words import said

DRAWN = ("x_m", "y_m", "length_m", "width_m")
"""Blanks of a mark drawn by hand, by the key that the log keeps them under."""
_MINUS = ("-", "\N{MINUS SIGN}")


def unit_m(units: Units) -> float:
    """What a bare number stands for. [m]"""
    return M_PER_FT if units == "us" else 1.0


def unit_told(units: Units) -> str:
    """Its name beside a blank."""
    return said("unit-ft" if units == "us" else "unit-m")


def place_of(text: str, units: Units) -> float | None:
    """Metres of a typed place, which may lie below zero; None for what is none."""
    bare = text.strip()
    below = bare.startswith(_MINUS)
    found = length_of(bare[1:] if below else bare, us=units == "us")
    return found if found is None or not below else -found


def place_told(metres: float, units: Units) -> str:
    """A place as it stands in a blank, to a hundredth of the unit at least."""
    return f"{metres / unit_m(units):.3f}".rstrip("0").rstrip(".")


def off_told(off_mm: float, units: Units) -> str:
    """How far a point is off: `0.4 in`, `11 mm`."""
    return f"{off_mm / 1000 / M_PER_IN:.1f} in" if units == "us" else f"{off_mm:.0f} mm"
