"""Hours as they pass laid onto the hours that the clock on the wall shows.

The calendar counts by the clock on the wall: half past seven is half past
seven before and after summer time begins. A day then has one hour that nobody
lives through, or one that is lived through twice.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import pairwise

from farwall.days.nouns import HourAhead

_HOUR = timedelta(hours=1)


def by_the_clock(
    hours: Sequence[HourAhead], *, first: int, begins: datetime, days: int
) -> tuple[HourAhead, ...]:
    """The hours of `days` days from midnight `begins` on, 24 a day whatever the clock does.

    hours: as they pass; `first`, the number of that which begins at `begins`. Where the clock is
    put forward, nothing passes and nothing may be done in the hour left out; where it is put back,
    two hours pass in one, and what both allow may be done. The last hour stands for those lacking.
    """
    since = [_passed_h(begins, n) for n in range(24 * days + 1)]
    return tuple(
        _as_one(hours[first + at : first + upto] or hours[-1:], upto - at)
        for at, upto in pairwise(since)
    )


def _passed_h(begins: datetime, hour: int) -> int:
    """Whole hours that pass from `begins` until the clock shows so many hours more."""
    shown = begins + hour * _HOUR  # by the clock: the zone, not the sum, tells the offset
    return (shown.astimezone(UTC) - begins.astimezone(UTC)) // _HOUR


def _as_one(hours: Sequence[HourAhead], count: int) -> HourAhead:
    if count == 1:
        return hours[0]
    both = hours[:count]
    return replace(
        hours[0],
        coat=count > 0 and all(one.coat for one in both),
        seal=count > 0 and all(one.seal for one in both),
        film=float(sum(one.film for one in both)),
        slab=float(sum(one.slab for one in both)),
        sealer=float(sum(one.sealer for one in both)),
        clock=float(count),
    )
