"""From sunset to sunrise at the place of a house, for the tape: only where the place is known."""

from __future__ import annotations

from datetime import timedelta

import numpy as np

from farwall.facts.job import Place
from farwall.papers.wall_clock import WallClock

_STEP_MIN = 10.0
_HALF_SUN_DEG = 0.2667
"""The sun is down when its upper limb is: half its usual width below the horizon [from-memory]."""


def nights_of(
    place: Place, clock: WallClock, from_min: float, to_min: float
) -> tuple[tuple[float, float], ...]:
    """The nights between two minutes of a plan, to ten minutes, over a level horizon."""
    if place.latitude_deg is None or place.longitude_deg is None or not clock.day_told:
        return ()
    from farwall.air.sun import sun_at

    minutes = np.arange(from_min - _STEP_MIN, to_min + 2 * _STEP_MIN, _STEP_MIN)
    moments = [clock.starts_at + timedelta(minutes=float(one)) for one in minutes]
    sun = sun_at(moments, latitude_deg=place.latitude_deg, longitude_deg=place.longitude_deg)
    dark = np.concatenate([[False], sun.elevation_deg < -_HALF_SUN_DEG, [False]])
    turns = np.flatnonzero(np.diff(dark.astype(int)))
    ends = [float(minutes[min(int(one), len(minutes) - 1)]) for one in turns]
    return tuple(zip(ends[::2], ends[1::2], strict=True))
