"""What a room's air holds of hydrogen chloride given off steadily, and how long it lingers."""

from __future__ import annotations

import math

from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum

MG_M3_PER_PPM = 1.49
"""Hydrogen chloride at 25 °C and one atmosphere: 36.46 g/mol over 24.45 L/mol [arithmetic]."""
CEILING_PPM = 5.0
ROOM_VOLUME = {"m3": "m3", "ft3": "ft3"}
VOLUME = Argument("volume", ROOM_VOLUME, Bounds(0.0, 1e6, above=True), needed=True)
RELEASE = Argument("release_g_min", bounds=Bounds(0.0, 1e6), needed=True)
MIXED = (
    "The room is taken as well mixed; over the wet floor and in corners there is more. How much "
    "is given off is the caller's figure. Ventilation and respirator are for a hygienist to settle."
)


def reckon(given: Given) -> Result:
    """Concentration after `minutes`, or the steady one. Sources: [hygiene-basics], [mmwr-1994].

    C = G/Q·(1 - exp(-Q·t/V)), from clean air; after the release stops,
    t = V/Q·ln(C/C_stop).
    """
    volume_m3 = given.number("volume_m3")
    flow_m3_min = given.number("air_changes_per_h") * volume_m3 / 60
    steady = given.number("release_g_min") * 1000 / flow_m3_min
    minutes = given.maybe("minutes")
    held = steady if minutes is None else -steady * math.expm1(-flow_m3_min * minutes / volume_m3)
    warnings: list[object] = [MIXED]
    if held / MG_M3_PER_PPM > CEILING_PPM:
        warnings.append(
            "Above 5 ppm (7 mg/m³), the ceiling that may not be passed for a moment [osha-hcl]."
        )
    return {
        "mg_m3": held,
        "ppm": held / MG_M3_PER_PPM,
        "steady_mg_m3": steady,
        "steady_ppm": steady / MG_M3_PER_PPM,
        "minutes_to_stop_at": _lingers(given, held, volume_m3 / flow_m3_min),
        "rank": Rank.PUBLISHED.value,
        "source": "hygiene-basics, mmwr-1994, osha-hcl",
        "warnings": warnings,
    }


def _lingers(given: Given, held: float, change_min: float) -> float | None:
    """Minutes after the release has stopped; None when no figure to stop at was given."""
    stop_at = given.maybe("stop_at_mg_m3")
    if stop_at is None:
        return None
    return max(0.0, change_min * math.log(held / stop_at)) if held > 0 else 0.0


SUM = Sum(
    name="room-air",
    what="hydrogen chloride in a room's air, given off steadily and aired",
    arguments=(
        VOLUME,
        RELEASE,
        Argument("air_changes_per_h", bounds=Bounds(0.0, 1000.0, above=True), needed=True),
        Argument("minutes", bounds=Bounds(0.0, 1e6)),
        Argument("stop_at_mg_m3", bounds=Bounds(0.0, 1e6, above=True)),
    ),
    reckon=reckon,
)
