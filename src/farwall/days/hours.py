"""From slab and air hour by hour to what may be done, how fast waits run, what may be lost.

How stain dries goes with evaporation [uno-1998]. Half of what holds water
back in a slab, or keeps a sealer soft, does not depend on the air: a guess.
Where a better rule for sealer is at hand (one that looks at the hours after,
say) it is handed over as `seal_hours`.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from farwall.air import moist
from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.day import HourAtSlab
from farwall.air.limits import slab_verdict
from farwall.air.relations import uno
from farwall.days.nouns import MILD_HOUR, Ahead, HourAhead
from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.units import c_from_f

SEAL_COLDEST_C, SEAL_HOTTEST_C = c_from_f(50), c_from_f(90)
DEW_MARGIN_K = 3.0
SEAL_DAMPEST_PERCENT = 85.0
"""Slab over dew point and relative humidity: a coatings rule for steel [iso-8502-4], borrowed."""
WET_PACE = 0.4
"""On a wet day with doors shut waits run at no more than this: between "dry-down twice as
long" of common practice and our own caution. A guess."""
FASTEST = 4.0
NEAR_DAYS = 10
"""Days of the weather file before and after a date that tell how often such a day is lost."""
_ENOUGH_H = 3
_FROM_H, _TO_H = 8, 17

SealHours = Callable[[Sequence[HourAtSlab]], Sequence[bool]]
"""For each hour whether sealer may go down in it."""


@dataclass(frozen=True)
class Chances:
    """For each day, the chance that stain, or sealer, cannot go down."""

    coat: tuple[float, ...]
    seal: tuple[float, ...]


def may_seal(now: Conditions) -> bool:
    """Whether sealer may go down: 50-90 °F slab, 3 K over dew point, at most 85 % RH.

    The temperatures are common practice, no source; margin and humidity are a rule
    for coatings on steel [iso-8502-4]. The sealer's label wins.
    """
    if not SEAL_COLDEST_C <= now.surface_c <= SEAL_HOTTEST_C:
        return False
    if now.rh_percent > SEAL_DAMPEST_PERCENT:
        return False
    dew_c = moist.dew_point_c(air_c=now.air_c, rh_percent=max(now.rh_percent, 1.0))
    return now.surface_c - dew_c >= DEW_MARGIN_K


def seal_hours(hours: Sequence[HourAtSlab]) -> list[bool]:
    """`may_seal` of each hour by itself."""
    return [may_seal(one.conditions) for one in hours]


def hour_ahead(now: Conditions) -> HourAhead:
    """What one hour of these conditions allows, and its paces against the mild day."""
    film = min(max(0.0, uno(now)) / uno(REFERENCE), FASTEST)
    inner = 0.0 if film <= 0 else 1.0 / (0.5 / film + 0.5)
    coat = slab_verdict(surface_c=now.surface_c).word != "no"
    return HourAhead(coat=coat, seal=may_seal(now), film=film, slab=inner, sealer=inner)


def mild(begins: datetime, days: int) -> Ahead:
    """Mild days without end: what is taken when no weather was told."""
    return Ahead(begins, (MILD_HOUR,) * (24 * days), Rank.PRACTICE, f"{PRACTICE}: a mild day")


def ahead_from(
    hours: Sequence[HourAtSlab], *, begins: datetime, days: int, seal_rule: SealHours = seal_hours
) -> Ahead:
    """The hours from `begins` on; those before and after it tell the chances of each day."""
    told = [
        replace(hour_ahead(one.conditions), seal=bool(may))
        for one, may in zip(hours, seal_rule(hours), strict=True)
    ]
    first = round((begins - hours[0].starts_at) / timedelta(hours=1))
    chances = chances_of(told, first=first, days=days)
    return Ahead(
        begins,
        tuple(told[first : first + 24 * days]),
        Rank.GUESS,
        f"weather file, {OUR_GUESS}",
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


def _rained(one: HourAhead) -> HourAhead:
    paces = {name: min(getattr(one, name), WET_PACE) for name in ("film", "slab", "sealer")}
    return replace(one, coat=False, seal=False, wet=True, **paces)
