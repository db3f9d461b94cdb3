"""Working days on site of one house: from a calendar that holds it, else alone with mild days."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from functools import cache, lru_cache
from typing import Any

from farwall.days.chain import End, Walked, day_of, links, walk
from farwall.days.clock import SATURDAY, SiteClock, site_clock
from farwall.days.hours import mild
from farwall.days.nouns import House
from farwall.days.practice import chain_of
from farwall.evidence import Span
from farwall.job.lessons import labour_of
from farwall.job.office.ground import OfficeGround
from farwall.job.office.scope import Scope, scope_of
from farwall.job.plan_days import house_ids
from farwall.price.hours import Three

_AHEAD_DAYS = 45
_Sizes = tuple[float, int, int, tuple[tuple[str, Span], ...]]
ALONE = "one house alone, mild days"
CALENDAR = "the calendar"


def site_days(ground: OfficeGround, scope: Scope, *, area_m2: float, people: int) -> Three:
    """Days with work on site, low, likely, high; begun on a Monday morning.

    A house of no coat is only cleaned, sealed and finished: it still has the days of one coat.
    """
    house = House(
        "house", "", max(area_m2, 1.0), coats=max(len(scope.coats), 1),
        seal_coats=max(scope.sealer_coats, 1), labour_h=labour_of(ground.lessons),
    )  # fmt: skip
    ends: tuple[End, End, End] = ("low", "likely", "high")
    low, likely, high = (float(len(worked_days(house, people, end))) for end in ends)
    known = _whole_in_calendar(ground, scope)
    likely = likely if known is None else float(known)
    return (min(low, likely), likely, max(likely, high))


def days_from(ground: OfficeGround, scope: Scope) -> str:
    """What the days are taken from."""
    return ALONE if _whole_in_calendar(ground, scope) is None else CALENDAR


def _whole_in_calendar(ground: OfficeGround, scope: Scope) -> int | None:
    """Days of the whole job in the calendar; a part of it is not what the calendar holds."""
    found = calendar_days(ground.calendar, house_ids([ground.job])[0])
    if found is None or scope.rooms != scope_of(ground).rooms:
        return None
    return found[2] if scope.coats == scope_of(ground).coats else None


def worked_days(house: House, people: int, end: End) -> list[int]:
    """The days from the first, 0, on which somebody works; a high end that is never reached within
    the days ahead counts all of them. `waits`, dates and hours of the house are not looked at."""
    sizes = (house.area_m2, house.coats, house.seal_coats, house.labour_h)
    return list(_worked(sizes, people, end))


@lru_cache(maxsize=512)
def _worked(sizes: _Sizes, people: int, end: End) -> tuple[int, ...]:
    area_m2, coats, seal_coats, labour_h = sizes
    house = House("", "", area_m2, coats=coats, seal_coats=seal_coats, labour_h=labour_h)
    chain = links(chain_of(house), _clock(), area_m2=area_m2, people=people, end=end)
    walked = walk(chain, int(chain[0].first[0]), hold={})
    if walked is None:
        return tuple(range(_AHEAD_DAYS * 5 // 7))
    return tuple(sorted({day for one in walked for day in _days(one) if day % 7 < SATURDAY}))


@cache
def _clock() -> SiteClock:
    """Mild days from a Monday on: 1 January 2001 was one."""
    return site_clock(mild(datetime(2001, 1, 1, tzinfo=UTC), _AHEAD_DAYS))


def calendar_days(calendar: dict[str, Any] | None, house: str) -> tuple[date, date, int] | None:
    """First and last day of a house in a days document, and on how many it is worked on."""
    found = [one for one in (calendar or {}).get("houses", []) if one.get("id") == house]
    if not found:
        return None
    days: set[date] = set()
    for step in found[0]["steps"]:
        first = datetime.fromisoformat(step["starts_at"]).date()
        last = (datetime.fromisoformat(step["ends_at"]) - timedelta(minutes=1)).date()
        days |= {first + timedelta(days=n) for n in range((last - first).days + 1)}
    worked = sorted(day for day in days if day.weekday() < 5)
    return (worked[0], worked[-1], len(worked)) if worked else None


def _days(one: Walked) -> range:
    return range(day_of(one.start), day_of(max(one.end - 1, one.start)) + 1)
