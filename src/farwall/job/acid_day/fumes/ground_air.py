"""The house as its fumes feel it: rooms, doors, air that passes, warmth and damp of the day."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from math import hypot

import numpy as np
import numpy.typing as npt

from farwall.acid.masses import WATER_G_MOL
from farwall.acid.rooms import Rooms, doorway_m3_min
from farwall.acid.vapours import R_J_MOL_K
from farwall.air import moist
from farwall.air.conditions import Conditions
from farwall.air.day import at
from farwall.air.evaporation import evaporation
from farwall.air.house import CEILING_M, House, air_changes_h
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.floor.nouns import Opening, Room
from farwall.job.acid_day.fumes.cases import AIR, DOORS, Cases
from farwall.job.lasting import Lasting
from farwall.job.site import house_of
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]
APART_K, WIND_M_S = 5.0, 2.0
"""Between inside and out, and the wind, where no weather was given: a mild day, a guess."""
STAND_M = 1.0
"""Half a sphere about the breath of who sprays, down to the floor: a guess [nicas-2024]."""
LEAST_M_S = 0.05


@dataclass(frozen=True)
class DayAir:
    """Warmth, damp and moving air of the day, and how often it changes as the house stands."""

    conditions: Conditions
    house: House
    air_changes_h: float

    @property
    def kelvin(self) -> float:
        """Of the slab's face."""
        return self.conditions.surface_c + 273.15

    @property
    def outside_water_mol_m3(self) -> float:
        """What the house's air holds of water before the floor is wet, as moles."""
        held = moist.vapour_pressure_pa(
            air_c=self.conditions.air_c, rh_percent=self.conditions.rh_percent
        )
        return held / (R_J_MOL_K * self.kelvin)

    @property
    def water_m_s(self) -> float:
        """Transfer of water vapour: what dry air would take, over what stands at the surface.

        By the same relation as the drying of the floor (`air.evaporation`).
        """
        rate = evaporation(replace(self.conditions, rh_percent=0.0)).rate_kg_m2_h / 3600
        over = moist.saturation_pressure_pa(air_c=self.conditions.surface_c)
        return rate / (over * WATER_G_MOL / 1000 / (R_J_MOL_K * self.kelvin))

    @property
    def by_person_m3_min(self) -> float:
        """Air that passes near who sprays: half of the free surface times speed [nicas-2024]."""
        speed = max(self.conditions.air_speed_m_s, LEAST_M_S)
        return 0.5 * 2 * np.pi * STAND_M**2 * speed * 60

    def changes_if(self, standing: str, fans: int) -> float:
        """Air changes an hour, were the house to stand so: by the guess of a mild day, in scale."""
        other = replace(self.house, standing="open" if standing == "open" else "shut", fans=fans)
        return self.air_changes_h * _usual(other) / _usual(self.house)


def day_air(lasting: Lasting, job: Job, plan: Plan) -> DayAir:
    """The day at the middle of its spraying; air changes by the weather where some was given."""
    first, last = plan.fields[0].start_min, max(field.end_min for field in plan.fields)
    middle = (first + last) / 2
    house = house_of(job)
    changes = _usual(house)
    if lasting.hours:
        moment = lasting.starts_at + timedelta(minutes=middle)
        changes = at(lasting.hours, moment).air_changes_h or changes
    return DayAir(lasting.conditions(middle), house, changes)


def _usual(house: House) -> float:
    return air_changes_h(house, inside_c=21.0, outside_c=21.0 - APART_K, wind_m_s=WIND_M_S)


def rooms_of(
    rooms: Sequence[Room], openings: Sequence[Opening], tried: Cases, changes_h: Array
) -> Rooms:
    """The rooms of the house in every case. changes_h: (S,), before the doubt about it.

    Doors stand open: nobody shuts one on a wet floor. Ceilings 2.5 m, a guess.
    """
    volume = np.array([max(room.polygon.shape.area, 0.1) * CEILING_M for room in rooms])
    where = {room.id: n for n, room in enumerate(rooms)}
    width = np.zeros((len(rooms), len(rooms)))
    for opening in openings:
        pair = sorted({where[one] for one in opening.rooms if one in where})
        if opening.kind != "outside" and len(pair) == 2:
            width[pair[0], pair[1]] += _width_m(opening)
    width = width + width.T
    through = np.array([doorway_m3_min(width_m=1.0, warmer_k=one) for one in tried[DOORS]])
    out = (changes_h * tried[AIR])[:, None] * volume / 60
    return Rooms(volume, out, through[:, None, None] * width)


def _width_m(opening: Opening) -> float:
    if opening.width_m is not None:
        return opening.width_m
    (ax, ay), (bx, by) = opening.line
    return hypot(bx - ax, by - ay)


def starts(plan: Plan) -> datetime:
    """The first stroke."""
    return datetime.fromisoformat(plan.starts_at)
