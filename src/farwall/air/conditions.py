"""What the slab and the air over it are like at one moment."""

from __future__ import annotations

from dataclasses import fields

from farwall.errors import Mistake, Refused
from farwall.facts import default_table as table
from farwall.facts.degrees import COLDEST_C, HOTTEST_AIR_C, HOTTEST_SLAB_C
from farwall.nouns import dataclass

STANDARD_PRESSURE_PA = 101325.0

SENSE: dict[str, tuple[float, float, str]] = {
    "surface_c": (COLDEST_C, HOTTEST_SLAB_C, "°C"),
    "air_c": (COLDEST_C, HOTTEST_AIR_C, "°C"),
    "rh_percent": (0.0, 100.0, "%"),
    "air_speed_m_s": (0.0, 40.0, "m/s"),
    "pressure_pa": (50_000.0, 115_000.0, "Pa"),
}
"""Beyond these no relation here has a meaning, and a reading is probably a slip of the pen."""


@dataclass(frozen=True)
class Conditions:
    """Slab and air at one moment, over the floor itself (not at an airport).

    Left out, a value is the default of `facts.default_table`: 21 °C, 45 % RH,
    still air (common practice, no source), and standard pressure.
    Raises `Refused` naming every value that no relation can be asked with.
    """

    surface_c: float = table.SLAB_C.usual
    air_c: float = table.AIR_C.usual
    rh_percent: float = table.RH_PERCENT.usual
    air_speed_m_s: float = table.AIR_SPEED_M_S.usual
    pressure_pa: float = STANDARD_PRESSURE_PA

    def __post_init__(self) -> None:
        mistakes = []
        for each in fields(self):
            value = getattr(self, each.name)
            low, high, unit = SENSE[each.name]
            if not low <= value <= high:
                mistakes.append(
                    Mistake(
                        each.name,
                        f"{value:g} {unit} lies outside {low:g} to {high:g} {unit}.",
                        "Read the instrument again, and check the unit.",
                    )
                )
        if mistakes:
            raise Refused(*mistakes, about="These conditions cannot be reckoned with.")


REFERENCE = Conditions()
"""The mild day that common practice speaks of: 70 °F, about 45 % RH, still air."""
