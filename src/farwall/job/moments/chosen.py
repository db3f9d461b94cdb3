"""Which minutes of a coat tell most: even shares of the floor, and the oldest edge of all."""

from __future__ import annotations

import numpy as np

from farwall.facts.plan import Plan
from farwall.job.moments.edge import oldest_edge

_BEFORE_MIN = 0.02
"""The picture of an edge at its oldest is taken just before it is met."""


def telling_moments(plan: Plan, coat: str, count: int = 6) -> tuple[float, ...]:
    """`count` minutes of a coat, rising: even parts of its floor sprayed between them.

    The one nearest to the minute at which the coat's oldest edge is met gives
    way to that minute. Fields that cannot be done are left out; () when no
    other is in the coat.
    """
    fields = [f for f in plan.fields if f.coat == coat and f.verdict != "cannot"]
    bands = sorted((band for f in fields for band in f.bands), key=lambda band: band.start_min)
    if not bands:
        return ()
    areas = np.cumsum([band.polygon.shape.area for band in bands])
    when = np.column_stack([[b.start_min for b in bands], [b.end_min for b in bands]]).ravel()
    sprayed = np.column_stack([np.concatenate([[0.0], areas[:-1]]), areas]).ravel()
    shares = (np.arange(count) + 0.5) / count
    minutes = np.interp(shares * areas[-1], sprayed, when)
    worst = max(fields, key=lambda field: field.peak_age_min / max(field.open_time_min.low, 1e-9))
    edge = oldest_edge(worst)
    if edge is not None:
        minutes[int(np.abs(minutes - edge.at_min).argmin())] = edge.at_min - _BEFORE_MIN
    return tuple(sorted(round(float(minute), 3) for minute in minutes))
