"""One well-mixed room: what its air holds while something is given off, and how it clears.

Closed forms: C = G/Q·(1 - exp(-Q·t/V)) from clean air [hygiene-basics], p. 163, equations 3 to 5;
t = V/Q·ln(C1/C2) when nothing more is given off [mmwr-1994], table S3-1. A real room mixes badly:
its times go up to ten times the mixed ones [mmwr-1994], and over the wet floor there is more.
"""

from __future__ import annotations

import math

MOST_MIXING = 10.0
"""The most that the footnote of table S3-1 gives for air that stands in corners [mmwr-1994]."""


def steady_mg_m3(*, release_g_min: float, flow_m3_min: float) -> float:
    """What the air ends at while the release goes on. [mg/m³] flow_m3_min: above 0."""
    return release_g_min * 1000 / flow_m3_min


def held_mg_m3(
    *, release_g_min: float, flow_m3_min: float, volume_m3: float, minutes: float,
    at_first_mg_m3: float = 0.0,
) -> float:  # fmt: skip
    """What the air holds after minutes of a steady release. [mg/m³] flow_m3_min: above 0."""
    left = math.exp(-flow_m3_min * minutes / volume_m3)
    steady = steady_mg_m3(release_g_min=release_g_min, flow_m3_min=flow_m3_min)
    return at_first_mg_m3 * left - steady * math.expm1(-flow_m3_min * minutes / volume_m3)


def minutes_to_fall(
    *, from_mg_m3: float, to_mg_m3: float, air_changes_h: float, mixing: float = 1.0
) -> float:
    """Minutes until the air has cleared from one figure to a lower one; 0 when it is there. [min]

    Once nothing more is given off. air_changes_h and to_mg_m3: above 0. mixing: 1 where air mixes
    at once, up to 10.
    """
    if from_mg_m3 <= to_mg_m3:
        return 0.0
    return mixing * math.log(from_mg_m3 / to_mg_m3) / air_changes_h * 60


def purge_min(*, air_changes_h: float, removal_percent: float, mixing: float = 1.0) -> float:
    """Minutes to remove this share of what was in the air. [min] removal_percent: below 100."""
    return mixing * -math.log1p(-removal_percent / 100) / air_changes_h * 60


def air_changes_for(*, release_g_min: float, volume_m3: float, limit_mg_m3: float) -> float:
    """Air changes an hour that hold the steady air at a limit, n = 60·G/(V·C). [1/h]"""
    return release_g_min * 1000 * 60 / (volume_m3 * limit_mg_m3)
