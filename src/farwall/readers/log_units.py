"""Units of what the log carries: bounds of each kind, US twins of the keys, amounts as typed."""

from __future__ import annotations

import re
from collections.abc import Callable

from farwall import units
from farwall.nouns import dataclass

BOUNDS: dict[str, tuple[float, float, str]] = {
    "litres": (0, 5_000, "L"),
    "minutes": (0, 60 * 24 * 30, "minutes"),
    "hours": (0, 1_000, "hours"),
    "celsius": (-30, 70, "°C"),
    "percent": (0, 100, "%"),
    "m_s": (0, 40, "m/s"),
    "kg_m2_h": (0, 5, "kg/m²h"),
    "kg": (0, 5_000, "kg"),
    "m2_per_l": (0.1, 200, "m²/L"),
    "ph": (0, 14, "pH"),
    "metres": (0, 1_000, "m"),
    "seconds": (0, 3_600, "s"),
    "l_min": (0, 200, "L/min"),
    "m2": (0.1, 100_000, "m²"),
    "count": (0, 1_000, ""),
    "lightness": (0, 100, ""),
    "colour_axis": (-150, 150, ""),
    "de": (0, 100, ""),
    "ml": (1, 20_000, "mL"),
    "spot_m2": (0.01, 20, "m²"),
    "place_m": (-10_000, 10_000, "m"),
}
"""The least and the most that is believed of a kind; beyond lies a slip of the finger. Guesses."""


@dataclass(frozen=True)
class Twin:
    """Another spelling of a key: how both end, what turns the one into the other, its unit."""

    ending: str
    other: str
    to_key: Callable[[float], float]
    unit: str

    def from_key(self, value: float) -> float:
        """What is spelt so for a value of the key; each unit is a multiple of the other, moved."""
        none = self.to_key(0.0)
        return (value - none) / (self.to_key(1.0) - none)


TWINS: dict[str, tuple[Twin, ...]] = {
    "litres": (
        Twin("_l", "_gal", units.l_from_gal, "gal"),
        Twin("litres", "gal", units.l_from_gal, "gal"),
        Twin("litres", "gallons", units.l_from_gal, "gal"),
    ),
    "celsius": (Twin("_c", "_f", units.c_from_f, "°F"),),
    "m_s": (
        Twin("_m_s", "_mph", lambda mph: mph * units.M_S_PER_MPH, "mph"),
        Twin("_m_s", "_ft_min", lambda ft: ft * units.M_PER_FT / 60, "ft/min"),
    ),
    "l_min": (Twin("_l_min", "_gal_min", units.l_from_gal, "gal/min"),),
    "m2": (Twin("_m2", "_ft2", lambda ft2: ft2 * units.M2_PER_FT2, "ft²"),),
    "metres": (Twin("_m", "_ft", lambda ft: ft * units.M_PER_FT, "ft"),),
    "spot_m2": (Twin("_m2", "_ft2", lambda ft2: ft2 * units.M2_PER_FT2, "ft²"),),
    "kg": (Twin("_kg", "_lb", lambda lb: lb * units.KG_PER_LB, "lb"),),
    "m2_per_l": (
        Twin("m2_per_l", "ft2_per_gal", units.m2_per_l_from_ft2_per_gal, "ft²/gal"),
    ),
}  # fmt: skip


def amount_text(text: str) -> str:
    """An amount as it was typed, in plain digits with a point; empty where it is none.

    A dollar sign and commas between thousands are left out; a comma before two digits is a point.
    """
    bare = text.replace("$", "").replace(" ", "").strip()
    if re.fullmatch(r"-?\d{1,3}(,\d{3})+(\.\d{1,2})?", bare, re.ASCII):
        bare = bare.replace(",", "")
    elif re.fullmatch(r"-?\d+,\d{1,2}", bare, re.ASCII):
        bare = bare.replace(",", ".")
    return bare if re.fullmatch(r"-?\d{1,12}(\.\d{1,2})?", bare, re.ASCII) else ""
