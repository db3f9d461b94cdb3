"""The one place where feet, gallons and degrees Fahrenheit exist.

Inside, everything is SI (metres, litres, degrees Celsius, minutes for times
of the day). Factors are exact by definition unless a line says otherwise.
Source: NIST Handbook 44 appendix C and NIST SP 811 appendix B [nist-hb44].
"""

from __future__ import annotations

import re
from datetime import datetime

M_PER_FT = 0.3048
M_PER_IN = 0.0254
M2_PER_FT2 = M_PER_FT**2
L_PER_US_GAL = 3.785411784
L_PER_US_FL_OZ = L_PER_US_GAL / 128
KG_PER_LB = 0.45359237
M_S_PER_MPH = 0.44704
MM_PER_MIL = 0.0254
KG_M2_PER_LB_FT2 = KG_PER_LB / M2_PER_FT2
_NOON_H = 12
PA_PER_PSI = KG_PER_LB * 9.80665 / M_PER_IN**2

_FRACTIONS = "½¼¾⅛⅜⅝⅞"
_FIGURE = rf"(?:\d+\s\d/\d+|\d[\d.,]*(?:/\d+)?[{_FRACTIONS}]?|[{_FRACTIONS}])"
"""A whole number, decimals, `1/8`, `4 1/2`, `3½`."""
_US_FIRST = re.compile(
    rf"(?P<us>(?:(?<![\d.,:/]){_FIGURE}(?:\s(?:and|to|y|a|±|×)\s{_FIGURE})?\s"
    r"(?:°F|ft²/gal|ft²|ft|in|gal/min|gal|gpm|cfm|lb(?:\s(?:in|en)\s5\sgal)?"
    r"|tablespoons to the gallon|cucharadas por galón)"
    r"|half an inch|media pulgada|a quart|un cuarto de galón|several ft²|varios ft²|a foot|un pie))"
    r"\s\((?P<si>(?:\d[^()]*?\s|half a |medio )"
    r"(?:°C|m²/L|m²|m³/h|cm|mm|m|L|L/min|kg|g/L))\)"
)
"""A measure told in US units with the metric one behind it, in English or Spanish prose."""
_SPAN = re.compile(r"\s(?:and|to|y|a|±|×)\s")


def ft2_from_m2(area_m2: float) -> float:
    """Square feet."""
    return area_m2 / M2_PER_FT2


def ft_from_m(length_m: float) -> float:
    """Feet."""
    return length_m / M_PER_FT


def gal_from_l(volume_l: float) -> float:
    """US gallons."""
    return volume_l / L_PER_US_GAL


def l_from_gal(volume_gal: float) -> float:
    """Litres from US gallons."""
    return volume_gal * L_PER_US_GAL


def c_from_f(temperature_f: float) -> float:
    """Degrees Celsius from degrees Fahrenheit."""
    return (temperature_f - 32.0) / 1.8


def f_from_c(temperature_c: float) -> float:
    """Degrees Fahrenheit from degrees Celsius."""
    return temperature_c * 1.8 + 32.0


def m2_per_l_from_ft2_per_gal(coverage: float) -> float:
    """Square metres a litre covers, from square feet a US gallon covers."""
    return coverage * M2_PER_FT2 / L_PER_US_GAL


def ft2_per_gal_from_m2_per_l(coverage: float) -> float:
    """Square feet a US gallon covers, from square metres a litre covers."""
    return coverage * L_PER_US_GAL / M2_PER_FT2


def cfm_from_m3_min(flow_m3_min: float) -> float:
    """Cubic feet a minute, as fans are sold."""
    return flow_m3_min / M_PER_FT**3


def feet_and_inches(length_m: float) -> str:
    """A tape reading to the nearest half inch, such as `12' 3½"`; `8"` below a foot."""
    halves = round(length_m / M_PER_IN * 2)
    sign = "-" if halves < 0 else ""
    feet, rest = divmod(abs(halves), 24)
    inches, half = divmod(rest, 2)
    whole = "" if half and not feet and not inches else str(inches)
    short = f'{whole}{"½" if half else ""}"'
    return f"{sign}{feet}' {short}" if feet else f"{sign}{short}"


def length_words(length_m: float, *, us: bool) -> str:
    """A length both ways, the reader's own first: `3' 4" (1.02 m)`, `1.02 m (3' 4")`."""
    tape, metric = feet_and_inches(length_m), f"{length_m:.2f} m"
    return f"{tape} ({metric})" if us else f"{metric} ({tape})"


def volume_words(volume_l: float, *, us: bool = True) -> str:
    """A volume both ways, the reader's own first: `2.8 gal (10.6 L)`, `10.6 L (2.8 gal)`."""
    gallons, metric = f"{gal_from_l(volume_l):.1f} gal", f"{volume_l:.1f} L"
    return f"{gallons} ({metric})" if us else f"{metric} ({gallons})"


def measures_own_first(text: str, *, us: bool) -> str:
    """Prose that tells measures both ways, the reader's own first: `60 °F (16 °C)` is told as
    `16 °C (60 °F)` to a metric reader. All other words are left as they are."""
    return text if us else _US_FIRST.sub(_swapped, text)


def _swapped(found: re.Match[str]) -> str:
    """The pair turned round. A span belongs to it only where the metric measure is one too: in `1 a
    302 ft² (28 m²)` it is the figure before `a` that stands by itself."""
    us, si = found["us"], found["si"]
    parts = _SPAN.split(us)
    if len(parts) == 1 or _SPAN.search(si):
        return f"{si} ({us})"
    return f"{us.removesuffix(parts[-1])}{si} ({parts[-1]})"


def clock_words(at: datetime, *, us: bool = False) -> str:
    """A time of day: `19:30`; `7:30 pm` in US manner."""
    if not us:
        return f"{at.hour}:{at.minute:02d}"
    half = "am" if at.hour < _NOON_H else "pm"
    return f"{(at.hour - 1) % _NOON_H + 1}:{at.minute:02d} {half}"


def counted(count: int, word: str, several: str = "") -> str:
    """A number of things, in words: `1 room`, `4 rooms`; `several` where an s is not enough."""
    return f"{count} {word if count == 1 else several or word + 's'}"
