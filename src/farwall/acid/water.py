"""Pure water, 0-100 °C: its density and its saturated vapour."""

from __future__ import annotations

from typing import Final

import numpy as np

from farwall.acid.activity import Floats

_CRITICAL_K, _CRITICAL_PA = 647.096, 22.064e6
_WAGNER: Final = (
    (-7.85951783, 1.0), (1.84408259, 1.5), (-11.7866497, 3.0),
    (22.6807411, 3.5), (-15.9618719, 4.0), (1.80122502, 7.5),
)  # fmt: skip


def saturation_pressure_pa(kelvin: Floats) -> Floats:
    """Vapour pressure of pure water, Pa, 273.16 to 647 K. Wagner and Pruss [iapws-saturation]."""
    far = 1 - kelvin / _CRITICAL_K
    series = sum(a * far**power for a, power in _WAGNER)
    out: Floats = _CRITICAL_PA * np.exp(_CRITICAL_K / kelvin * series)
    return out


def density_kg_l(temperature_c: float) -> float:
    """Density of pure water at one atmosphere, kg/L, 0 to 100 °C [laliberte-2004], equation 5."""
    t = temperature_c
    top = -2.8054253e-10 * t + 1.0556302e-7
    for term in (-4.6170461e-5, -0.0079870401, 16.945176, 999.83952):
        top = top * t + term
    return top / (1 + 0.01687985 * t) / 1000
