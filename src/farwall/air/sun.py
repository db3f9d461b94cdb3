"""Where the sun stands, and what of it comes through glass onto a floor.

Position: the solar position algorithm [reda-andreas-2004] as pvlib has it. Clear sky: the
simplified Solis model [ineichen-2008] with a clean, fairly dry air (`air.clear_sky`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import datetime

import numpy as np
import numpy.typing as npt

from farwall.air.clear_sky import clear_beam_w_m2, position
from farwall.air.conditions import STANDARD_PRESSURE_PA
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

Floats = npt.NDArray[np.float64]

GLASS = 0.7
"""Share of the beam that two clear panes let through. Rank: guess; coated glass lets half through,
and low sun less than high."""
TAKEN_UP = 0.65
"""Share of it that bare grey concrete takes up; wet or dark it is more. Rank: from memory."""
LOWEST_DEG = 3.0
"""A sun lower than this is hidden by what stands around a house, and weak. Rank: guess."""
DELTA_T_S = 69.0
"""Earth's clock behind the atomic one, as of the 2020s [from-memory]. Two seconds of it move the
sun by 0.00003 degrees."""
_REFRACTION_DEG, _MILD_C = 0.5667, 12.0


@dataclass(frozen=True)
class Sun:
    """The sun at some moments: how high, where (clockwise from true north), its beam. [deg, W/m²]

    `direct_w_m2` is what falls on a face that looks at the sun under a clear sky.
    """

    elevation_deg: Floats
    azimuth_deg: Floats
    direct_w_m2: Floats

    def __len__(self) -> int:
        return len(self.elevation_deg)


def sun_at(
    moments: Sequence[datetime],
    *,
    latitude_deg: float,
    longitude_deg: float,
    elevation_m: float = 0.0,
    pressure_pa: float = STANDARD_PRESSURE_PA,
    air_c: float = _MILD_C,
    delta_t_s: float = DELTA_T_S,
) -> Sun:
    """The sun at these moments, as it is seen through the air.

    latitude_deg, longitude_deg: north and east positive. Raises `Refused` for a moment without
    an offset from UTC and for a place that is not on Earth. Below the horizon the beam is nothing.
    """
    _insist(moments, latitude_deg, longitude_deg)
    if not moments:
        nothing = np.zeros(0)
        return Sun(nothing, nothing, nothing)
    unix_s = np.array([moment.timestamp() for moment in moments])
    _, _, apparent, _, azimuth, _ = position().solar_position(
        unix_s, latitude_deg, longitude_deg, elevation_m, pressure_pa / 100, air_c, delta_t_s,
        _REFRACTION_DEG,
    )  # fmt: skip
    clear = clear_beam_w_m2(np.maximum(apparent, 0.0), pressure_pa=pressure_pa)
    direct = np.where(apparent > 0, np.nan_to_num(clear), 0.0)
    return Sun(np.asarray(apparent), np.asarray(azimuth), np.maximum(direct, 0.0))


def absorbed_w_m2(direct_w_m2: float, elevation_deg: float) -> float:
    """What a level floor takes up inside a patch of sun. [W/m²] Rank: guess.

    direct_w_m2: the beam outside, on a face that looks at the sun. The light of the sky beside
    it is left out: through a window it is spread over the whole room.
    """
    return direct_w_m2 * max(math.sin(math.radians(elevation_deg)), 0.0) * GLASS * TAKEN_UP


def _insist(moments: Sequence[datetime], latitude_deg: float, longitude_deg: float) -> None:
    mistakes = []
    if any(moment.tzinfo is None for moment in moments):
        told = "A moment has no offset from UTC."
        mistakes.append(Mistake("starts_at", told, "Write it like -06:00."))
    for name, value, most in (
        ("latitude_deg", latitude_deg, 90.0),
        ("longitude_deg", longitude_deg, 180.0),
    ):
        if not abs(value) <= most:
            mistakes.append(
                Mistake(f"place.{name}", f"{value:g} is none.", f"Give -{most:g} to {most:g}.")
            )
    if mistakes:
        raise Refused(*mistakes)
