"""The day reckoned in all its cases: ppm by room and minute, then two days of clearing."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from farwall.acid.film import Fate
from farwall.acid.house_air import HouseAir, Laid, Near, house_air
from farwall.acid.limits import L_PER_MOL
from farwall.acid.rooms import Rooms, step_of
from farwall.acid.vapour import LEAST_C, MOST_C, hcl_pressure_pa, water_pressure_pa
from farwall.acid.vapours import Vapours, vapours_at
from farwall.job.acid_day.fumes.cases import BY_PERSON, Cases, ends
from farwall.job.acid_day.fumes.ground_air import STAND_M, DayAir
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]
PPM = L_PER_MOL * 1000
"""mol/m³ to ppm at 25 °C and one atmosphere, the basis of the limits [osha-z1]."""
DRIES_MIN = 120.0
"""After the last stroke the film is drunk or dry; what is left on the floor then is told."""
CLEARING_MIN, CLEARING_STEP_MIN = 2880.0, 10.0


@dataclass(frozen=True)
class Course:
    """The day and what follows: minutes (N,), ppm by room low, likely, high (N, R), all cases.

    cases: (N, S, R). dense: of how many entries the day itself has, a minute apart.
    """

    minutes: Array
    low: Array
    likely: Array
    high: Array
    cases: Array
    run: HouseAir
    dense: int


def vapours_of(surface_c: float) -> Vapours:
    """The pressures over acid at the slab's warmth, kept within where they are known."""
    warm = min(max(surface_c, LEAST_C), MOST_C)

    def hcl(percent: Array, c: float) -> Array:
        return hcl_pressure_pa(hcl_percent=percent, temperature_c=np.full_like(percent, c))

    def water(percent: Array, c: float) -> Array:
        return water_pressure_pa(hcl_percent=percent, temperature_c=np.full_like(percent, c))

    return vapours_at(warm, hcl=hcl, water=water)


def course_of(
    laid: Laid, fate: Fate, rooms: Rooms, tried: Cases, air: DayAir, *, step_min: float = 1.0
) -> Course:
    """The day in every case, and the clearing with nothing more given off."""
    near = Near(float(np.pi) * STAND_M**2, air.by_person_m3_min * tried[BY_PERSON])
    last = float((laid.at_min + laid.spray_min).max())
    run = house_air(
        laid, fate, rooms, vapours_of(air.conditions.surface_c), near,
        outside_water_mol_m3=air.outside_water_mol_m3, until_min=last + DRIES_MIN,
        step_min=step_min,
    )  # fmt: skip
    clearing = step_of(rooms, CLEARING_STEP_MIN)
    later = [run.held[-1]]
    nothing = np.zeros_like(later[0])
    for _ in range(int(CLEARING_MIN / CLEARING_STEP_MIN)):
        later.append(clearing.after(later[-1], nothing))
    held = np.concatenate([run.held, np.stack(later[1:])]) * PPM
    minutes = np.concatenate(
        [
            np.arange(len(run.held)) * step_min,
            (len(run.held) - 1) * step_min + CLEARING_STEP_MIN * np.arange(1, len(later)),
        ]
    )
    low, likely, high = ends(np.swapaxes(held, 0, 1))
    return Course(minutes, low, likely, high, held, run, len(run.held))


def stays_below_from(
    minutes: Array, ppm: Array, limit_ppm: float, *, after_min: float = 0.0
) -> float | None:
    """The minute from which the air stays below a limit; None when it does not to the end.

    `after_min` when it never was above it from then on.
    """
    above = np.flatnonzero((ppm >= limit_ppm) & (minutes >= after_min))
    if len(above) == 0:
        return after_min
    last = int(above[-1])
    return None if last + 1 >= len(minutes) else float(minutes[last + 1])
