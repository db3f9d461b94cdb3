"""Units as people write them, with exact factors to SI, for `convert` and for arguments.

Factors are exact by definition (fractions, no float in between) unless a line
says otherwise. Sources: NIST Handbook 44 appendix C and NIST SP 811 appendix B
[nist-hb44]; combinations of exact units are exact.
"""

from __future__ import annotations

import difflib
from fractions import Fraction

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

_IN_M = Fraction("0.0254")
_FT_M = 12 * _IN_M
_FT2_M2 = _FT_M**2
_GAL_M3 = 231 * _IN_M**3
_IMPERIAL_GAL_M3 = Fraction("0.00454609")
_LB_KG = Fraction("0.45359237")
_GRAVITY = Fraction("9.80665")
_HOUR_S = Fraction(3600)
_LITRE_M3 = Fraction(1, 1000)


@dataclass(frozen=True)
class Unit:
    """A unit: SI value = (value + offset) · factor, within its dimension."""

    name: str
    dimension: str
    factor: Fraction
    offset: Fraction = Fraction(0)
    exact: bool = True


_FACTORS: dict[str, dict[str, Fraction | int]] = {
    "length": {
        "m": 1,
        "km": 1000,
        "cm": Fraction(1, 100),
        "mm": Fraction(1, 1000),
        "um": Fraction(1, 10**6),
        "in": _IN_M,
        "ft": _FT_M,
        "yd": 3 * _FT_M,
        "mi": 5280 * _FT_M,
        "mil": _IN_M / 1000,
    },
    "area": {
        "m2": 1,
        "cm2": Fraction(1, 10**4),
        "in2": _IN_M**2,
        "ft2": _FT2_M2,
        "yd2": 9 * _FT2_M2,
    },
    "volume": {
        "m3": 1,
        "L": _LITRE_M3,
        "mL": _LITRE_M3 / 1000,
        "cm3": Fraction(1, 10**6),
        "in3": _IN_M**3,
        "ft3": _FT_M**3,
        "yd3": 27 * _FT_M**3,
        "US gal": _GAL_M3,
        "US qt": _GAL_M3 / 4,
        "US pt": _GAL_M3 / 8,
        "US cup": _GAL_M3 / 16,
        "US fl oz": _GAL_M3 / 128,
        "Imperial gal": _IMPERIAL_GAL_M3,
        "Imperial fl oz": _IMPERIAL_GAL_M3 / 160,
    },
    "mass": {
        "kg": 1,
        "g": Fraction(1, 1000),
        "mg": Fraction(1, 10**6),
        "t": 1000,
        "lb": _LB_KG,
        "oz": _LB_KG / 16,
    },
    "time": {"s": 1, "min": 60, "h": _HOUR_S, "d": 24 * _HOUR_S},
    "speed": {
        "m/s": 1,
        "m/min": Fraction(1, 60),
        "km/h": 1000 / _HOUR_S,
        "mph": 5280 * _FT_M / _HOUR_S,
        "ft/s": _FT_M,
        "ft/min": _FT_M / 60,
        "kn": 1852 / _HOUR_S,
    },
    "pressure": {
        "Pa": 1,
        "hPa": 100,
        "kPa": 1000,
        "bar": 10**5,
        "mbar": 100,
        "atm": 101325,
        "psi": _LB_KG * _GRAVITY / _IN_M**2,
        # Conventional millimetre of mercury: 13.5951 times water, at standard gravity.
        "mmHg": Fraction("133.322387415"),
        "inHg": Fraction("133.322387415") * Fraction("25.4"),
    },
    "volume flow": {
        "m3/s": 1,
        "m3/h": 1 / _HOUR_S,
        "L/s": _LITRE_M3,
        "L/min": _LITRE_M3 / 60,
        "cfm": _FT_M**3 / 60,
        "US gal/min": _GAL_M3 / 60,
    },
    "mass in a volume": {
        "kg/m3": 1,
        "kg/L": 1000,
        "g/L": 1,
        "g/mL": 1000,
        "mg/m3": Fraction(1, 10**6),
        "lb/US gal": _LB_KG / _GAL_M3,
        "oz/US gal": _LB_KG / 16 / _GAL_M3,
        "lb/ft3": _LB_KG / _FT_M**3,
    },
    "mass on an area": {
        "kg/m2": 1,
        "g/m2": Fraction(1, 1000),
        "lb/ft2": _LB_KG / _FT2_M2,
    },
    "mass leaving an area": {
        "kg/m2/h": 1 / _HOUR_S,
        "g/m2/h": 1 / _HOUR_S / 1000,
        "ug/m2/s": Fraction(1, 10**9),
        "lb/ft2/h": _LB_KG / _FT2_M2 / _HOUR_S,
        "lb/1000 ft2/24 h": _LB_KG / (1000 * _FT2_M2) / (24 * _HOUR_S),
    },
    "coverage": {
        "m2/L": 1 / _LITRE_M3,
        "ft2/US gal": _FT2_M2 / _GAL_M3,
    },
    "volume on an area": {
        "L/m2": _LITRE_M3,
        "US gal/ft2": _GAL_M3 / _FT2_M2,
        "US gal/1000 ft2": _GAL_M3 / _FT2_M2 / 1000,
    },
    "volume in a volume": {
        "mL/L": Fraction(1, 1000),
        "US fl oz/US gal": Fraction(1, 128),
    },
    "area in a time": {
        "m2/s": 1,
        "m2/min": Fraction(1, 60),
        "m2/h": 1 / _HOUR_S,
        "ft2/min": _FT2_M2 / 60,
        "ft2/h": _FT2_M2 / _HOUR_S,
    },
    "share": {"1": 1, "%": Fraction(1, 100), "ppm": Fraction(1, 10**6)},
}

_TEMPERATURES = (
    Unit("C", "temperature", Fraction(1), Fraction("273.15")),
    Unit("F", "temperature", Fraction(5, 9), Fraction("459.67")),
    Unit("K", "temperature", Fraction(1)),
)

UNITS: dict[str, Unit] = {
    **{
        name: Unit(name, dimension, Fraction(factor), exact=name not in {"mmHg", "inHg"})
        for dimension, units in _FACTORS.items()
        for name, factor in units.items()
    },
    **{unit.name: unit for unit in _TEMPERATURES},
}

_ALSO = {
    "°C": "C", "degC": "C", "°F": "F", "degF": "F", "μm": "um", "µm": "um", "l": "L", "ml": "mL",
    "m²": "m2", "ft²": "ft2", "m³": "m3", "ft³": "ft3", "sec": "s", "hr": "h", "day": "d",
    "min.": "min", "gpm": "US gal/min", "kph": "km/h", "ft3/min": "cfm",
    "ft2/gal": "ft2/US gal", "US gal/1,000 ft2": "US gal/1000 ft2", "kg/(m2 h)": "kg/m2/h",
    "lb/(ft2 h)": "lb/ft2/h", "thou": "mil", "percent": "%",
}  # fmt: skip

_UNCLEAR = {
    "gal": ("US gal", "Imperial gal"),
    "qt": ("US qt",),
    "pt": ("US pt",),
    "fl oz": ("US fl oz", "Imperial fl oz"),
    "gallon": ("US gal", "Imperial gal"),
}


def unit(name: str, *, where: str = "unit") -> Unit:
    """The unit written `name`. Raises `Refused` with the nearest known one."""
    plain = " ".join(name.replace("_", " ").split())
    found = UNITS.get(_ALSO.get(plain, plain))
    if found is not None:
        return found
    near = _UNCLEAR.get(plain.lower()) or difflib.get_close_matches(plain, UNITS, n=3, cutoff=0.5)
    remedy = f"Nearest: {', '.join(near)}." if near else f"Known: {', '.join(UNITS)}."
    raise Refused(Mistake(where, f"There is no unit written {_quoted(name)}.", remedy))


def converted(value: Fraction, source: Unit, target: Unit) -> Fraction:
    """`value` of one unit in another of the same dimension, exactly.

    Raises `Refused` for two dimensions, and for a temperature below absolute zero.
    """
    if source.dimension != target.dimension:
        raise Refused(
            Mistake(
                "to",
                f"{source.name} is {source.dimension}, {target.name} is {target.dimension}.",
                f"Choose one of {', '.join(of_dimension(source.dimension))}.",
            )
        )
    si = (value + source.offset) * source.factor
    if source.dimension == "temperature" and si < 0:
        raise Refused(
            Mistake("value", f"{float(value):g} {source.name} is below absolute zero.", "")
        )
    return si / target.factor - target.offset


def of_dimension(dimension: str) -> list[str]:
    """The names of all units of a dimension."""
    return [one.name for one in UNITS.values() if one.dimension == dimension]


def _quoted(text: str) -> str:
    return f'"{text[:40]}"'
