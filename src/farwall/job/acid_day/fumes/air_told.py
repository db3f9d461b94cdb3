"""What more air does: ways to let the house stand, and the air that a limit asks for."""

from __future__ import annotations

import numpy as np

from farwall.acid.limits import CEILING_MIN, LIMITS
from farwall.acid.masses import HCL_G_MOL
from farwall.job.acid_day.fumes.cases import ends
from farwall.job.acid_day.fumes.course import stays_below_from
from farwall.job.acid_day.fumes.day_of import Day, short
from farwall.job.acid_day.fumes.noun import AirNeeded, Range, Way
from farwall.units import cfm_from_m3_min

MIXING = 3.0
"""How many times the air of a well-mixed house is asked for: common practice, within the 1 to 10
of [mmwr-1994]."""
LIMIT = "hcl-hygienists"


def ways_told(day: Day) -> tuple[Way, ...]:
    """As the house stands and other ways; how far the ends lie apart is taken from the first."""
    course, told = day.course, []
    peaks = course.cases.max(axis=0)
    low, likely, high = (float(one) for one in ends(peaks.max(axis=1)))
    for n, (standing, fans) in enumerate(day.ways):
        case = day.tried.first_extra + n
        ppm = course.cases[:, case].max(axis=1)
        peak = float(ppm.max())
        clear = stays_below_from(
            course.minutes, ppm, LIMITS[LIMIT].ppm or 0.0, after_min=day.ends_min
        )
        told.append(
            Way(
                key=standing if not fans else f"{standing}-fans",
                stands=(standing, fans) == (day.air.house.standing, day.air.house.fans),
                fans=fans,
                air_changes_h=short(float(day.changes_h[case])),
                peak_ppm=Range(
                    short(peak * low / likely), short(peak), short(peak * high / likely)
                ),
                clear_min=None if clear is None else round(clear - day.ends_min, 0),
            )
        )
    return tuple(told)


def air_needed(day: Day) -> AirNeeded:
    """Air for the hygienists' ceiling: the film gives off the most, the house mixes badly.

    G/C for the greatest mean release over 15 minutes [hygiene-basics], times the mixing.
    """
    run, limit = day.course.run, LIMITS[LIMIT]
    whole = run.released.sum(axis=2)
    steps = min(round(CEILING_MIN / run.step_min), len(whole))
    total = np.concatenate([np.zeros_like(whole[:1]), np.cumsum(whole, axis=0)])
    mean = (total[steps:] - total[:-steps]).max(axis=0) / steps * HCL_G_MOL
    free = float(mean[-1])
    low, likely, high = (float(one) for one in ends(mean))
    release = (free * low / likely, free, free * high / likely)
    flow = [MIXING * g * 1000 * 60 / limit.mg_m3 for g in release]
    volume = float(day.volume_m3.sum())
    return AirNeeded(
        LIMIT,
        Range(*(short(one) for one in release)),
        MIXING,
        Range(*(short(one) for one in flow)),
        Range(*(short(cfm_from_m3_min(one / 60)) for one in flow)),
        Range(*(short(one / volume) for one in flow)),
    )
