"""The sun's heat on each room's floor, hour by hour: what a model of the slab takes up."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

import numpy as np

from farwall.air.patches import by_room
from farwall.air.sun import absorbed_w_m2
from farwall.job.sunlight import Sunlight


def heat_by_room(
    sunlight: Sunlight,
    starts_at: datetime,
    hours: int,
    *,
    direct_w_m2: Sequence[float | None] | None = None,
) -> dict[str, tuple[float, ...]]:
    """What each room's floor takes up, mean over its floor, an hour each. [W/m²] Rank: guess.

    starts_at: start of the first hour. direct_w_m2: the beam of each hour as a weather file has
    it; a clear sky where None. The sun is looked at in the middle of each hour. Inside the patch
    it is that much more as the floor is larger than the patch. Rooms that no sun reaches are
    left out.
    """
    moments = [starts_at + timedelta(hours=n, minutes=30) for n in range(hours)]
    sun = sunlight.sun(moments)
    told = direct_w_m2 if direct_w_m2 is not None else [None] * hours
    flux = [
        absorbed_w_m2(float(clear) if one is None else one, float(high))
        for one, clear, high in zip(told, sun.direct_w_m2, sun.elevation_deg, strict=True)
    ]
    floors = {room: shape.area for one in sunlight.grounds.values()
              for room, shape in one.rooms.items()}  # fmt: skip
    heat: dict[str, np.ndarray] = {}
    for pane in sunlight.panes:
        for hour, light in enumerate(sunlight.light(pane, sun)):
            for room, parts in by_room(light, sunlight.grounds[pane.storey]).items():
                own = heat.setdefault(room, np.zeros(hours))
                own[hour] += flux[hour] * sum(part.area for part in parts) / floors[room]
    return {room: tuple(own.tolist()) for room, own in heat.items()}
