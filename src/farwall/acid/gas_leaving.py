"""How long carbon dioxide takes to leave still water after the fizz: why pH goes on rising."""

from __future__ import annotations

from itertools import pairwise
from math import exp, log

from farwall.acid.equilibrium import AIR_CO2_PPM, equilibrium
from farwall.acid.equilibrium_species import Totals
from farwall.errors import Mistake, Refused

STILL_M_H = 0.0207
"""Metres an hour that gas crosses the face of still water, for a gas of Schmidt number 600: carbon
dioxide at 20 °C, lakes without wind [cole-caraco-1998]. A pail is no lake;
stirring is many times that."""
STEPS_A_DECADE = 12


def transfer_m_h(temperature_c: float) -> float:
    """Metres an hour at a temperature, 0 to 30 °C: as the root of 600 over the Schmidt number
    [wanninkhof-1992], table A1, fresh water, **from memory**."""
    t = temperature_c
    schmidt = 1911.1 - 118.11 * t + 3.4527 * t**2 - 0.04132 * t**3
    return float(STILL_M_H * (600 / schmidt) ** 0.5)


def hours_until(
    totals: Totals,
    left_atm: float,
    *,
    depth_m: float,
    temperature_c: float = 20.0,
    air_ppm: float = AIR_CO2_PPM,
) -> float:
    """Hours from fresh fizz (1 atm) until the gas in still water presses `left_atm`.

    totals: the water's acid and base; its carbon does not matter, for the gas is what the pressure
    says. left_atm: above that of the air, at most 1. The carbon that has to leave, dC, leaves at
    (k/d)·(c - c of the air): dt = d/k·dC/(c - c_air), summed over even steps of log pressure. Holds
    for water mixed in itself; at pH above 9 the true rate is somewhat higher. Raises `Refused`
    for a pressure outside, and as `equilibrium` does.
    """
    air_atm = air_ppm * 1e-6
    if not air_atm < left_atm <= 1:
        raise Refused(
            Mistake("left_atm", f"{left_atm:g} atm is not between the air's and 1.", "Give 0.01.")
        )
    if left_atm == 1:
        return 0.0
    steps = max(2, round(-log(left_atm) / log(10) * STEPS_A_DECADE) + 1)
    held = [_held(totals, exp(log(left_atm) * n / steps), temperature_c) for n in range(steps + 1)]
    at_air = _held(totals, air_atm, temperature_c)[1]
    hours = 0.0
    for (carbon, gas), (less, below) in pairwise(held):
        # between two steps the carbon is taken as straight in the gas: then the sum is a logarithm
        slope = (carbon - less) / (gas - below)
        hours += slope * log((gas - at_air) / (below - at_air))
    return hours * depth_m / transfer_m_h(temperature_c)


def _held(totals: Totals, atm: float, temperature_c: float) -> tuple[float, float]:
    """Dissolved carbon and carbon dioxide beside that pressure, mol/kg."""
    found = equilibrium(totals, co2="open", temperature_c=temperature_c, air_ppm=atm * 1e6)
    return found.dissolved_carbon, found.species.co2
