"""A coat dries through changing hours: morning damp holds it up, the afternoon makes up for it.

Each hour does its share: a wait of four hours at the conditions of this hour
means that the hour does a quarter of the drying. Dew that forms meanwhile does
no drying, and is not counted as new water (a first form).
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from farwall.air.clocks import DAY_MIN, Timed, recoat_wait, within_a_day
from farwall.air.conditions import Conditions
from farwall.air.day import HourAtSlab, at
from farwall.air.limits import insist, slab_verdict
from farwall.evidence import Span
from farwall.facts import default_table as table

_HOUR_MIN = 60.0


def dry_through(
    hours: Sequence[HourAtSlab],
    *,
    begins: datetime,
    m2_per_l: float = table.FIRST_COAT_M2_PER_L.usual,
    timed: Timed | None = None,
) -> Span:
    """Minutes from `begins` until the coat is dry for the next, hour by hour: low, likely, high.

    hours: conditions at the slab, in order (`day.hours_at_slab`); before the
    first and after the last they are taken to stay as they are. begins: when
    the coat was sprayed, with its offset. m2_per_l, timed: as
    `clocks.dry_to_recoat`, whose answer this is when the hours are all alike.
    `None` where it is not dry within a day. Raises `Unanswerable` when the
    slab is outside 50-85 °F at `begins`; a slab that cools below it during
    the night still dries, slowly.
    """
    insist(slab_verdict(surface_c=at(hours, begins).conditions.surface_c))
    waits = _waits(hours, begins, m2_per_l, timed)
    low, likely, high = (
        _minutes([(length, wait[end]) for length, wait in waits]) for end in range(3)
    )
    first = recoat_wait(at(hours, begins).conditions, m2_per_l=m2_per_l, timed=timed)
    return within_a_day(
        Span(
            low=DAY_MIN if low is None else low,
            likely=likely,
            high=high,
            rank=first.rank,
            source=first.source,
        )
    )


_Wait = tuple[float | None, float | None, float | None]


def _waits(
    hours: Sequence[HourAtSlab], begins: datetime, m2_per_l: float, timed: Timed | None
) -> list[tuple[float, _Wait]]:
    """Stretches of a day after `begins`: their minutes, and the wait at their conditions."""
    told: dict[Conditions, _Wait] = {}
    stretches = []
    moment, until = begins, begins + timedelta(minutes=DAY_MIN)
    while moment < until:
        passed = moment.minute + moment.second / 60 + moment.microsecond / 6e7
        length = min(_HOUR_MIN - passed, (until - moment) / timedelta(minutes=1))
        now = at(hours, moment).conditions
        if now not in told:
            span = recoat_wait(now, m2_per_l=m2_per_l, timed=timed)
            told[now] = (span.low, span.likely, span.high)
        stretches.append((length, told[now]))
        moment += timedelta(minutes=length)
    return stretches


def _minutes(stretches: Sequence[tuple[float, float | None]]) -> float | None:
    """When the shares of the stretches add up to one, None when they do not within them."""
    share, passed = 0.0, 0.0
    for length, wait in stretches:
        if wait is not None:
            done = length / wait
            if share + done >= 1:
                return passed + (1 - share) * wait
            share += done
        passed += length
    return None
