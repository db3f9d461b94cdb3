"""What this floor showed of how fast sheen goes: samples that were timed, sightings since.

Both the clock of open time (`job.waits`) and, once somebody has watched sheen
go on this floor, the budget of an edge (`job.lasting`) rest on these.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from farwall.air.clocks import LONGEST_UNTIMED_MIN
from farwall.air.conditions import Conditions
from farwall.air.learned import Factor, Watched, factor
from farwall.air.pace import sheen_loss_min
from farwall.air.waits import OPEN_TIME, OPEN_TIME_SPREAD
from farwall.evidence import Rank, Span
from farwall.facts.degrees import air_like_slab
from farwall.facts.job import Sighting
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.job.looks import paired


def conditions_of(one: Sighting, *, usual: Conditions) -> Conditions:
    """Those of the watching; what was not told is taken from `usual`, a plan's first hour."""

    def said(value: float | None, other: float) -> float:
        return other if value is None else value

    like_slab = usual.air_c if one.slab_c is None else air_like_slab(one.slab_c)
    air_c = said(one.air_c, like_slab)
    return Conditions(
        said(one.slab_c, air_c if one.air_c is not None else usual.surface_c),
        air_c,
        said(one.rh_percent, usual.rh_percent),
        said(one.air_speed_m_s, usual.air_speed_m_s),
    )


def usual_sheen_min(
    job: SettledJob,
    coat: SettledCoat,
    room: str | None,
    now: Conditions,
    *,
    drop_s: float | None = None,
) -> float:
    """Minutes until sheen goes, before this floor has told anything: the drop test as told."""
    found = job.survey.rooms.get(room) if room is not None else None
    if drop_s is None and found is not None and found.drop_told:
        drop_s = found.drop_s
    finish = found.finish if found is not None else None
    return sheen_loss_min(now, m2_per_l=coat.m2_per_l, drop_s=drop_s, finish=finish)[1]


def sheen_share(
    job: SettledJob, one: Sighting, coat: SettledCoat, minutes: float, *, usual: Conditions
) -> float:
    """So many minutes of a sighting against the usual open time of its spot and conditions."""
    seen_on = next((other for other in job.coats if other.id == one.coat), coat)
    now = conditions_of(one, usual=usual)
    return minutes / usual_sheen_min(job, seen_on, one.room, now, drop_s=one.drop_s)


def samples_timed(job: SettledJob, coat: SettledCoat, *, usual: Conditions) -> Iterator[Watched]:
    """Samples whose sheen was timed, each in a spot of its own unless it names a room."""
    for one in coat.samples:
        if one.sheen_loss_min is None:
            continue
        told = Sighting("open time", one.sheen_loss_min, room=one.room, coat=coat.id,
                        slab_c=one.slab_c, air_c=one.air_c, rh_percent=one.rh_percent,
                        air_speed_m_s=one.air_speed_m_s, drop_s=one.drop_s)  # fmt: skip
        laid = coat if one.m2_per_l is None else replace(coat, m2_per_l=one.m2_per_l)
        now = conditions_of(told, usual=usual)
        minutes = usual_sheen_min(job, laid, one.room, now, drop_s=one.drop_s)
        yield Watched(one.room or f"sample {one.id}", one.sheen_loss_min / minutes)


def sightings(job: SettledJob, coat: SettledCoat, *, usual: Conditions) -> Iterator[Watched]:
    """Sheen watched on the floor itself, as shares of what is usual there."""
    for one, since_min in paired(job.job.seen):
        if one.clock != OPEN_TIME:
            continue
        share = sheen_share(job, one, coat, one.after_min, usual=usual)
        since = sheen_share(job, one, coat, since_min, usual=usual) if since_min else 0.0
        yield Watched(one.room or f"another spot, {one.after_min:g}", share, one.ended, since)


def taught(job: SettledJob, coat: SettledCoat, room: str, *, usual: Conditions) -> Factor | None:
    """What samples and sightings make of the usual open time in `room`.

    None while nobody has watched sheen on the floor itself: a sample alone is
    weighed by the rule of half its time (`air.clocks.edge_budget`).
    """
    seen = list(sightings(job, coat, usual=usual))
    if not seen:
        return None
    return factor(OPEN_TIME_SPREAD, [*samples_timed(job, coat, usual=usual), *seen], room=room)


def learned_span(
    job: SettledJob,
    coat: SettledCoat,
    room: str,
    now: Conditions,
    found: Factor,
    *,
    drop_s: float | None = None,
) -> Span:
    """The open time of `room` now, low, likely and high, as this floor taught it. [min]

    drop_s: drop seconds of a spot in it, where they are other than the room's.

    While no end was seen (only "still wet at"), no end of it goes beyond
    `air.clocks.LONGEST_UNTIMED_MIN`, as without any watching.
    """
    minutes = usual_sheen_min(job, coat, room, now, drop_s=drop_s)
    timed = any(one.sheen_loss_min is not None for one in coat.samples)
    ended = any(one.ended for one in job.job.seen if one.clock == OPEN_TIME)
    longest = float("inf") if timed or ended else LONGEST_UNTIMED_MIN
    low, likely, high = (min(minutes * x, longest) for x in (found.low, found.likely, found.high))
    times = "once" if found.seen == 1 else f"{found.seen} times"
    source = f"common-practice, uno-1998, house-guess, watched {times} on this floor"
    return Span(low, likely, high, Rank.LEARNED, source)
