"""How much warmer the sun through windows makes the slab of each room, and what hangs on it.

The heat that `job.sun_heat` gives goes into the model of the slab under the
same air: by as much its face stands above that of a shaded room. Safe ends:
a clear sky every day, and what dries (recoat, dry-down) waits for the shade,
while open time, the limits of stain and those of sealer are held in the sun
as well. The mean of a room's floor: inside the patch it is more, for which
open time has its own share (`air.clocks.SUN`). The sun's warmth in the air of
the house is left out.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from functools import cache

import numpy as np

from farwall.air.conditions import SENSE, Conditions
from farwall.air.day import HourAtSlab
from farwall.air.sealing import Sealing
from farwall.air.slab import face_c
from farwall.job.sun_heat import heat_by_room
from farwall.job.sunlight import Sunlight
from farwall.nouns import dataclass

BEFORE_DAYS = 3
"""Days of sun before the first hour: what was taken up before them is less than a tenth."""
LOOK_DAYS = 7
"""The sun's path is looked at once a week: within 0.3 K of a look a day (a test)."""
TOLD_K = 0.5
"""Less than this is not worth a word."""
_DAY_H = 24
_BADNESS = {"go": 0, "care": 1, "no": 2}


@dataclass(frozen=True)
class SunWarmth:
    """By room, how much warmer its slab is than in the shade, an hour each from `starts_at`. [K]"""

    starts_at: datetime
    by_room: Mapping[str, tuple[float, ...]]

    def k(self, room: str, moment: datetime) -> float:
        """In the hour that `moment` falls in; before the first the first, after the last the last.

        Nothing for a room that no sun reaches.
        """
        warmth = self.by_room.get(room)
        if warmth is None:
            return 0.0
        hour = (moment - self.starts_at) // timedelta(hours=1)
        return warmth[min(max(hour, 0), len(warmth) - 1)]

    def hours(self, shaded: Sequence[HourAtSlab]) -> dict[str, tuple[HourAtSlab, ...]]:
        """The same hours in each room that the sun reaches."""
        return {
            room: tuple(
                replace(one, conditions=warmed(one.conditions, self.k(room, one.starts_at)))
                for one in shaded
            )
            for room in self.by_room
        }


def sun_warmth(
    sunlight: Sunlight | None, starts_at: datetime, hours: int, *, every_days: int = LOOK_DAYS
) -> SunWarmth:
    """The sun's warmth in the slab of each room that it reaches. Rank: guess.

    every_days: for how many days one look at the sun's path stands; it moves by up to 0.4° a day.
    """
    first = starts_at.replace(minute=0, second=0, microsecond=0)
    if sunlight is None:
        return SunWarmth(first, {})
    begins = first - timedelta(days=BEFORE_DAYS)
    count = hours + BEFORE_DAYS * _DAY_H
    heat: dict[str, list[float]] = {}
    for at in range(0, count, every_days * _DAY_H):
        length = min(every_days * _DAY_H, count - at)
        found = heat_by_room(sunlight, begins + timedelta(hours=at), min(_DAY_H, length))
        for room, flux in found.items():
            own = heat.setdefault(room, [0.0] * count)
            own[at : at + length] = [flux[n % _DAY_H] for n in range(length)]
    return SunWarmth(
        first,
        {
            room: tuple(np.convolve(flux, _answer(count))[BEFORE_DAYS * _DAY_H : count].tolist())
            for room, flux in heat.items()
        },
    )


@cache
def _answer(hours: int) -> np.ndarray:
    """What one hour of 1 W/m² does to the face in each hour from then on. [K]

    The model of the slab is linear and the same at any hour, so that the sun's warmth is the sum
    of what each of its hours does (a test holds it to the model itself).
    """
    return np.array(face_c([0.0] * hours, ground_c=0.0, absorbed_w_m2=[1.0] + [0.0] * (hours - 1)))


def warmed(now: Conditions, by_k: float) -> Conditions:
    """The same air over a slab that is so much warmer, kept where it has a meaning."""
    if by_k <= 0:
        return now
    return replace(now, surface_c=min(now.surface_c + by_k, max(SENSE["surface_c"][1],
                                                                now.surface_c)))  # fmt: skip


def worse(shaded: Sequence[Sealing], lit: Sequence[Sealing], room: str) -> tuple[Sealing, ...]:
    """Of two rooms' words for each hour the worse, with where it is the sunlit one's reasons."""
    return tuple(
        replace(sun, reasons=tuple(f"{one} (in the sun, {room})" for one in sun.reasons))
        if _BADNESS[sun.word] > _BADNESS[here.word]
        else here
        for here, sun in zip(shaded, lit, strict=True)
    )
