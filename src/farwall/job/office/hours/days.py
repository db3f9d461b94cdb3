"""Working days on site of one house: from a calendar that holds it, else alone with mild days."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from typing import Any

from farwall.days.chain import End, Walked, day_of, links, walk
from farwall.days.clock import site_clock
from farwall.days.hours import mild
from farwall.days.nouns import House
from farwall.days.practice import chain_of
from farwall.job.lessons import labour_of
from farwall.job.office.ground import OfficeGround
from farwall.job.office.scope import Scope
from farwall.price.hours import Three

_AHEAD_DAYS = 45
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
    return (min(low, likely), likely, max(likely, high))


def worked_days(house: House, people: int, end: End) -> list[int]:
    """The days from the first, 0, on which somebody works; a high end that is never reached within
    the days ahead counts all of them that were walked."""
    begins = _monday(datetime.fromisoformat("2001-01-01T00:00:00+00:00"))
    clock = site_clock(mild(begins, _AHEAD_DAYS))
    chain = links(chain_of(house), clock, area_m2=house.area_m2, people=people, end=end)
    start = int(chain[0].first[0])
    walked = walk(chain, start, hold={})
    if walked is None:
        return list(range(_AHEAD_DAYS * 5 // 7))
    return sorted({day for one in walked for day in _days(one) if _works(begins, day)})


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


def _works(begins: datetime, day: int) -> bool:
    return (begins.weekday() + day) % 7 < 5


def _monday(moment: datetime) -> datetime:
    return moment - timedelta(days=moment.weekday())
