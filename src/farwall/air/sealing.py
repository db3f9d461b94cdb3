"""When a slab may be sealed: hour by hour, with the reason, and the windows that come of it.

A coat may begin in an hour when the slab stands clear of the dew point now
and through the hours that the film is young (the night counts), is not
cooling, lies in the sealer's own limits, and the air is not too damp.
Pure: it takes hours of conditions, from wherever they come.
Sources: margin of 3 K (5 °F) and 85 % [iso-8502-4]; rising, not falling, and
the six hours ahead [trade-press, common-practice]. The label wins.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Literal

from farwall.air import moist
from farwall.air.conditions import Conditions
from farwall.air.limits import in_both
from farwall.air.sealers import GOOD_RH_PERCENT, SealerLimits, apart_words, wanted_words
from farwall.nouns import dataclass
from farwall.units import clock_words

AHEAD_H = 6
"""The margin has to hold for so long from the start of a coat on [common-practice]."""
FALLING_K_PER_H = 0.25
"""A slab that cools faster counts as falling: what an infrared gun can tell apart. A guess."""
_HAIR = 1e-6
Word = Literal["go", "care", "no"]


@dataclass(frozen=True)
class HourToSeal:
    """Slab and air for one hour from `starts_at` on."""

    starts_at: datetime
    conditions: Conditions


@dataclass(frozen=True)
class Sealing:
    """Whether a coat may begin in this hour, with every reason against it."""

    starts_at: datetime
    word: Word
    reasons: tuple[str, ...]
    slab_c: float
    dew_point_c: float
    rh_percent: float

    @property
    def margin_k(self) -> float:
        """How far the slab stands above the dew point. [K]"""
        return self.slab_c - self.dew_point_c


@dataclass(frozen=True)
class Window:
    """A stretch of hours of one word; of a no, what stands against its first hour."""

    starts_at: datetime
    ends_at: datetime
    word: Word
    reasons: tuple[str, ...]

    @property
    def hours(self) -> float:
        """Its length. [h]"""
        return (self.ends_at - self.starts_at) / timedelta(hours=1)

    @property
    def kinds(self) -> tuple[str, ...]:
        """What kinds of reason stand against its hours, without their figures."""
        return tuple(dict.fromkeys(one.partition(":")[0] for one in self.reasons))


def may_seal(
    hours: Sequence[HourToSeal], limits: SealerLimits, *, ahead_h: int = AHEAD_H, us: bool = False
) -> tuple[Sealing, ...]:
    """Each hour's word and reasons; us: °F and am, pm are said first, as in a job in feet.

    hours: in order, one apart; one hour stands for conditions that stay. An hour
    whose next `ahead_h` hours are not all known is judged by those that are, and
    says so by a `care`.
    """
    found = []
    dews = [_dew_point_c(one.conditions) for one in hours]
    margins = [one.conditions.surface_c - dew for one, dew in zip(hours, dews, strict=True)]
    for n, hour in enumerate(hours):
        against, mind = _now(hour.conditions, limits, margins[n], us=us)
        if len(hours) > 1:
            more, less_sure = _ahead(hours, margins, n, limits, ahead_h=ahead_h, us=us)
            against += more
            mind += less_sure
        word: Word = "no" if against else "care" if mind else "go"
        now = hour.conditions
        found.append(
            Sealing(
                hour.starts_at, word, tuple(against or mind),
                now.surface_c, dews[n], now.rh_percent,
            )
        )  # fmt: skip
    return tuple(found)


def windows(hours: Sequence[Sealing]) -> tuple[Window, ...]:
    """Hours of one word and one kind of reason run together."""
    found: list[Window] = []
    for hour in hours:
        ends = hour.starts_at + timedelta(hours=1)
        last = found[-1] if found else None
        if last is not None and last.word == hour.word and last.ends_at == hour.starts_at:
            told = tuple(dict.fromkeys((*last.reasons, *hour.reasons)))
            found[-1] = Window(last.starts_at, ends, last.word, _first_of_each(told))
        else:
            found.append(Window(hour.starts_at, ends, hour.word, hour.reasons))
    return tuple(found)


def coats_in(hours: Sequence[Sealing], limits: SealerLimits) -> tuple[datetime, ...]:
    """The earliest hours in which all coats may begin, each within the recoat window of the last.

    Empty when no such row of hours is known. Only hours of `go` or `care` count.
    """
    open_at = [one.starts_at for one in hours if one.word != "no"]
    after, before = _h(limits.recoat_from_h), _h(limits.recoat_to_h)
    rest: dict[datetime, tuple[datetime, ...]] = {one: (one,) for one in open_at}
    for _ in range(limits.coats - 1):
        longer = {}
        for first in open_at:
            next_one = next((t for t in rest if after <= t - first <= before), None)
            if next_one is not None:
                longer[first] = (first, *rest[next_one])
        rest = longer
    return next(iter(rest.values()), ())


def _now(
    now: Conditions, limits: SealerLimits, margin: float, *, us: bool
) -> tuple[list[str], list[str]]:
    against: list[str] = []
    mind: list[str] = []
    slab_c, rh = now.surface_c, now.rh_percent
    if slab_c < limits.least_slab_c - _HAIR:
        against.append(
            f"too cold: the slab is at {in_both(slab_c, us=us)}, below "
            f"{in_both(limits.least_slab_c, us=us)} of a "
            f"{limits.name}, whatever the air reads"
        )
    if slab_c > limits.most_slab_c + _HAIR:
        against.append(
            f"too warm: the slab is at {in_both(slab_c, us=us)}, above "
            f"{in_both(limits.most_slab_c, us=us)}"
        )
    if margin < limits.least_margin_k - _HAIR:
        against.append(
            f"dew: the slab is {apart_words(margin, us=us)} above the dew point, less than "
            f"{wanted_words(limits.least_margin_k, margin, us=us)}"
        )
    if rh > limits.most_rh_percent + _HAIR:
        against.append(f"damp air: {rh:.0f} % humidity, above {limits.most_rh_percent:g} %")
    elif rh > min(GOOD_RH_PERCENT, limits.most_rh_percent) + _HAIR:
        mind.append(f"damp air: {rh:.0f} % humidity; below {GOOD_RH_PERCENT:g} % is better")
    return against, mind


def _ahead(
    hours: Sequence[HourToSeal],
    margins: Sequence[float],
    n: int,
    limits: SealerLimits,
    *,
    ahead_h: int,
    us: bool,
) -> tuple[list[str], list[str]]:
    against: list[str] = []
    mind: list[str] = []
    here = hours[n]
    # Hours are one apart, so that no more of them lie ahead than `ahead_h`.
    within = [
        (one, margin)
        for one, margin in zip(
            hours[n : n + ahead_h + 1], margins[n : n + ahead_h + 1], strict=True
        )
        if one.starts_at - here.starts_at <= _h(ahead_h)
    ]
    dew = [one for one in within if one[1] < limits.least_margin_k - _HAIR]
    if dew and dew[0][0] is not here:
        first, margin = dew[0]
        against.append(
            f"dew to come: at {clock_words(first.starts_at, us=us)} the slab is "
            f"{apart_words(margin, us=us)} above the dew point, and the film is still young"
        )
    cold = [one for one, _ in within if one.conditions.surface_c < limits.least_slab_c - _HAIR]
    if cold and cold[0] is not here:
        against.append(
            f"cold to come: the slab is below {in_both(limits.least_slab_c, us=us)} at "
            f"{clock_words(cold[0].starts_at, us=us)}"
        )
    coming = hours[n + 1].conditions if n + 1 < len(hours) else here.conditions
    if coming.surface_c < here.conditions.surface_c - FALLING_K_PER_H:
        against.append("falling: the slab cools, and has to rise or stand still while it is sealed")
    if hours[-1].starts_at - here.starts_at < _h(ahead_h):
        mind.append(f"not known: fewer than {ahead_h} hours lie ahead in this weather")
    return against, mind


def _first_of_each(reasons: tuple[str, ...]) -> tuple[str, ...]:
    kinds: dict[str, str] = {}
    for reason in reasons:
        kinds.setdefault(reason.partition(":")[0], reason)
    return tuple(kinds.values())


def _dew_point_c(now: Conditions) -> float:
    return moist.dew_point_c(air_c=now.air_c, rh_percent=max(now.rh_percent, 0.1))


def _h(hours: float) -> timedelta:
    return timedelta(hours=hours)
