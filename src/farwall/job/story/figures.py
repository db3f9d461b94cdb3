"""Figures of a log as a job has them: its own units first, the other beside. Pure."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

from farwall.units import (
    KG_PER_LB,
    M2_PER_FT2,
    M_PER_FT,
    f_from_c,
    ft2_per_gal_from_m2_per_l,
    ft_from_m,
    gal_from_l,
    measures_own_first,
)

_S_PER_MIN = 60
_LITRES = re.compile(r"(?<![\d.(])(\d+(?:\.\d+)?) L\b(?!\))")


def volume(litres: float, *, us: bool = True) -> str:
    """Gallons with litres beside them; the other way round in a metric job."""
    return _first(f"{gal_from_l(litres):.1f} gal", f"{litres:.1f} L", us=us)


def temperature(celsius: float, *, us: bool = True) -> str:
    """Fahrenheit with Celsius beside it; the other way round in a metric job."""
    return _first(f"{f_from_c(celsius):.0f} °F", f"{celsius:.0f} °C", us=us)


def coverage(l_per_m2: float, *, us: bool = True) -> str:
    """What a litre a square metre is as floor covered by a gallon; metric first in a metric job."""
    covered = f"{ft2_per_gal_from_m2_per_l(1 / l_per_m2):.0f} ft²/gal"
    return _first(covered, f"{l_per_m2:.3f} L/m²", us=us)


def figure(kind: str, value: float, *, us: bool) -> str:
    """A value that a word carries, by its kind; the bare number where that has no unit."""
    if kind in _EITHER:
        american, metric = _EITHER[kind]
        return _first(american(value), metric(value), us=us)
    return _SAME[kind].format(value) if kind in _SAME else f"{value:g}"


def litres_told(text: str, *, us: bool) -> str:
    """A sentence whose litres alone are told, with gallons first in a job in feet; one that tells
    both, with litres first in a metric job."""
    if not us:
        return measures_own_first(text, us=False)
    return _LITRES.sub(lambda found: volume(float(found[1])), text)


def _first(american: str, metric: str, *, us: bool) -> str:
    return f"{american} ({metric})" if us else f"{metric} ({american})"


_Told = Callable[[float], str]
_EITHER: Mapping[str, tuple[_Told, _Told]] = {
    "litres": (lambda v: f"{gal_from_l(v):.1f} gal", lambda v: f"{v:.1f} L"),
    "celsius": (lambda v: f"{f_from_c(v):.0f} °F", lambda v: f"{v:.0f} °C"),
    "m_s": (lambda v: f"{v / M_PER_FT * _S_PER_MIN:.0f} ft/min", lambda v: f"{v:.1f} m/s"),
    "metres": (lambda v: f"{ft_from_m(v):.0f} ft", lambda v: f"{v:.1f} m"),
    "l_min": (lambda v: f"{gal_from_l(v):.2f} gal/min", lambda v: f"{v:.1f} L/min"),
    "m2": (lambda v: f"{v / M2_PER_FT2:.0f} ft²", lambda v: f"{v:.1f} m²"),
    "spot_m2": (lambda v: f"{v / M2_PER_FT2:.1f} ft²", lambda v: f"{v:.2f} m²"),
    "kg": (lambda v: f"{v / KG_PER_LB:.2f} lb", lambda v: f"{v:.3f} kg"),
    "place_m": (lambda v: f"{ft_from_m(v):.1f} ft", lambda v: f"{v:.2f} m"),
}
_SAME = {
    "minutes": "{:g} min", "hours": "{:g} h", "percent": "{:g} %", "seconds": "{:g} s",
    "ml": "{:g} mL",
}  # fmt: skip
