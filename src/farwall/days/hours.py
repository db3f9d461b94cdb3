"""From slab and air hour by hour to what may be done, how fast waits run, what may be lost.

Waits run at the paces of `air.waits`, stain goes by `air.limits`, sealer by
`air.sealing` with the limits of the job's own sealer: through the six hours
ahead and never on a slab that cools.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta

from farwall.air.conditions import Conditions
from farwall.air.day import HourAtSlab
from farwall.air.limits import slab_verdict
from farwall.air.sealers import SealerLimits
from farwall.air.sealing import AHEAD_H, HourToSeal, Sealing, may_seal
from farwall.air.waits import evaporating, knitting, out_of_the_skin
from farwall.days.local_hours import by_the_clock
from farwall.days.nouns import MILD_HOUR, Ahead, HourAhead, Question
from farwall.days.waits import USUAL_SEALER
from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.nouns import dataclass

WET_PACE = 0.4
"""On a wet day with doors shut waits run at no more than this: between "dry-down twice as
long" of common practice and our own caution. A guess."""
NEAR_DAYS = 10
"""Days of the weather file before and after a date that tell how often such a day is lost."""
_ENOUGH_H = 3
_FROM_H, _TO_H = 8, 17
_ANY_MOMENT = datetime(2001, 1, 1, tzinfo=UTC)


@dataclass(frozen=True)
class Chances:
    """For each day, the chance that stain, or sealer, cannot go down."""

    coat: tuple[float, ...]
    seal: tuple[float, ...]


def seal_hours(hours: Sequence[HourAtSlab], limits: SealerLimits) -> list[bool]:
    """For each hour whether sealer may be laid in it, by `air.sealing` and what lies ahead."""
    return [one.word != "no" for one in sealings(hours, limits)]


def sealings(hours: Sequence[HourAtSlab], limits: SealerLimits) -> list[Sealing]:
    """Each hour's word and reasons; a day at a time, which no hour's word depends on."""
    asked = [HourToSeal(one.starts_at, one.conditions) for one in hours]
    found: list[Sealing] = []
    for first in range(0, len(asked), 24):
        found += may_seal(asked[first : first + 25 + AHEAD_H], limits)[:24]
    return found


def hour_ahead(now: Conditions, limits: SealerLimits = USUAL_SEALER) -> HourAhead:
    """What an hour of conditions that stay allows, and its paces against the mild day."""
    alone = (HourToSeal(_ANY_MOMENT, now),)
    return replace(_paced(now), seal=may_seal(alone, limits)[0].word != "no")


def _paced(now: Conditions) -> HourAhead:
    return HourAhead(
        coat=slab_verdict(surface_c=now.surface_c).word != "no",
        seal=False,
        film=evaporating(now),
        slab=out_of_the_skin(now),
        sealer=knitting(now),
    )


def mild(begins: datetime, days: int) -> Ahead:
    """Mild days without end: what is taken when no weather was told."""
    hours = by_the_clock((MILD_HOUR,) * (24 * days + 2), first=0, begins=begins, days=days)
    return Ahead(begins, hours, Rank.PRACTICE, f"{PRACTICE}: a mild day")


def ahead_from(
    hours: Sequence[HourAtSlab],
    *,
    begins: datetime,
    days: int,
    limits: SealerLimits = USUAL_SEALER,
    sunlit: Sequence[Sequence[HourAtSlab]] = (),
    told_by: str = "weather file",
    years: bool = True,
) -> Ahead:
    """The hours from `begins` on; those before and after it tell the chances of each day.

    limits: of the sealer. sunlit: the same hours of rooms that the sun reaches; stain and sealer
    have to be allowed there too, while waits run as in the shade, which dries last. told_by: what
    the hours come from. years: they are those of a year, whose near days tell what may be lost.
    """
    told = [_paced(one.conditions) for one in hours]
    may = seal_hours(hours, limits)
    for room in sunlit:
        also = seal_hours(room, limits)
        for n, one in enumerate(room):
            told[n] = replace(told[n], coat=told[n].coat and _paced(one.conditions).coat)
            may[n] = may[n] and also[n]
    told = [replace(one, seal=seal) for one, seal in zip(told, may, strict=True)]
    since = begins.astimezone(UTC) - hours[0].starts_at.astimezone(UTC)
    first = round(since / timedelta(hours=1))
    chances = chances_of(told, first=first, days=days) if years else Chances((), ())
    return Ahead(
        begins,
        by_the_clock(told, first=first, begins=begins, days=days),
        Rank.GUESS,
        f"{told_by}, {OUR_GUESS}",
        chances.coat,
        chances.seal,
    )


def chances_of(hours: Sequence[HourAhead], *, first: int, days: int) -> Chances:
    """How often a day near each date gives no three hours on end for stain, or for sealer.

    first: index of the midnight of day 0. A guess: near days stand for other years.
    """
    around = range(-NEAR_DAYS, days + NEAR_DAYS)
    inside = [n for n in around if first + 24 * n >= 0 and first + 24 * (n + 1) <= len(hours)]
    of_day = {n: hours[first + 24 * n + _FROM_H : first + 24 * n + _TO_H] for n in inside}
    coat = {n: not _on_end([one.coat for one in day]) for n, day in of_day.items()}
    seal = {n: not _on_end([one.seal for one in day]) for n, day in of_day.items()}
    return Chances(_shares(coat, days), _shares(seal, days))


def _on_end(fine: Sequence[bool]) -> bool:
    return any(all(fine[n : n + _ENOUGH_H]) for n in range(len(fine) - _ENOUGH_H + 1))


def _shares(lost: dict[int, bool], days: int) -> tuple[float, ...]:
    shares = []
    for day in range(days):
        near = [lost[n] for n in range(day - NEAR_DAYS, day + NEAR_DAYS + 1) if n in lost]
        shares.append(sum(near) / len(near) if near else 0.0)
    return tuple(shares)


def with_rain(ahead: Ahead, days: Collection[int]) -> Ahead:
    """The same hours with rain on these days: doors shut, no stain, no sealer, slow waits.

    Rain brings mud in and shuts the doors that fumes need: common practice, no
    source; how much it slows a wait is a guess.
    """
    hours = [_rained(one) if n // 24 in days else one for n, one in enumerate(ahead.hours)]
    return replace(ahead, hours=tuple(hours))


def rained_on(question: Question, days: Collection[int]) -> Question:
    """The question with rain on these days, for every house."""
    houses = tuple(
        one if one.ahead is None else replace(one, ahead=with_rain(one.ahead, days))
        for one in question.houses
    )
    return replace(question, houses=houses, ahead=with_rain(question.ahead, days))


def _rained(one: HourAhead) -> HourAhead:
    paces = {name: min(getattr(one, name), WET_PACE) for name in ("film", "slab", "sealer")}
    return replace(one, coat=False, seal=False, wet=True, **paces)
