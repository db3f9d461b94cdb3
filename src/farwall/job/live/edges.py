"""The wet edge of the field in hand: by when the next band must be begun. Pure.

A band meets the edges sprayed before it at ages that the plan knows. Laid at the day's true
minutes, what is left of an edge's open time less the work until it is met is the time
that may still be lost.
"""

from __future__ import annotations

from farwall.facts.plan import Band, Field
from farwall.job.live.standing import Standing
from farwall.nouns import dataclass


@dataclass(frozen=True)
class EdgeDue:
    """The edge with the least time: go on by `at_min`, or it is dead when `band` meets it."""

    at_min: float
    band: str
    next_band: str
    low_min: float


def edge_due(standing: Standing, field: Field, low_min: float) -> EdgeDue | None:
    """The edge of `field` that must be met soonest; None when none is open, or it was feathered
    out."""
    left = sorted(standing.left_of(field), key=lambda band: band.start_min)
    done = [band for band in field.bands if band.id in standing.done]
    if not left or not done or standing.stands_feathered:
        return None
    feathered = standing.feathered_min
    next_start = left[0].start_min
    made_by = max(band.end_min for band in done)
    due: EdgeDue | None = None
    for band in left:
        made = band.end_min - band.edge_age_min
        if band.edge_age_min <= 0 or made > made_by + 1e-6:
            continue  # its edge is not sprayed yet
        late = _late_min(standing, done, made)
        if feathered is not None and made + late <= feathered:
            continue  # it was given up, and the seam is known
        at_min = next_start + late + low_min - band.edge_age_min
        if due is None or at_min < due.at_min:
            due = EdgeDue(round(at_min, 2), band.id, left[0].id, low_min)
    return due if due is not None else _from_the_last(standing, done, left[0], low_min)


def _from_the_last(
    standing: Standing, done: list[Band], following: Band, low_min: float
) -> EdgeDue:
    """Where the oldest edge of every band to come lies in that band itself.

    What was sprayed last is live all the same: its edge is counted from its first stroke.
    """
    last = max((standing.done[band.id] for band in done), key=lambda one: one.end_min)
    return EdgeDue(round(last.start_min + low_min, 2), following.id, following.id, low_min)


def _late_min(standing: Standing, done: list[Band], planned_min: float) -> float:
    """How late the band was that was sprayed at this minute of the plan."""
    band = min(done, key=lambda one: max(one.start_min - planned_min, planned_min - one.end_min))
    true = standing.done[band.id]
    lasts = max(band.end_min - band.start_min, 1e-9)
    share = min(max((planned_min - band.start_min) / lasts, 0.0), 1.0)
    at_min = true.start_min + share * (true.end_min - true.start_min)
    return at_min - (band.start_min + share * lasts)
