"""The minute that is meant: `at=9:12` by the clock on the wall, `at_min=72`, a whole moment."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from farwall.errors import Mistake, Refused
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.readers.clock_words import Clock, clock_of

KEYS = ("at", "at_min")
_SUCH = "Such as at=9:12, at=1:30pm, at_min=72 or at=2026-05-15T09:12."
_LASTS = timedelta(days=30)
_BEFORE = timedelta(days=1)
_SLACK = timedelta(minutes=5)
_EARLY = timedelta(hours=2)
"""So long before the plan begins people are on the slab to measure and mix. Rank: guess."""


def moment_of(told: Sequence[tuple[str, str]], plan: Plan, kept: Sequence[Kept],
              clock: datetime) -> datetime:  # fmt: skip
    """The moment that is told, with an offset; the clock's own when none is. Raises Refused.

    A time of day is of the day that it is, while the plan's days last; else (a day tried
    out at the desk) of the last day entered, or the plan's first. `1:30` is in the afternoon
    where the night of the plan's first day would be meant else.
    """
    start = datetime.fromisoformat(plan.starts_at)
    if len(told) > 1:
        raise Refused(Mistake("at", "the minute is told twice.", "Keep one of the two."))
    if not told:
        return clock
    key, text = told[0]
    if key == "at_min":
        return start + timedelta(minutes=_number(text))
    try:
        found = clock_of(text)
    except ValueError as error:
        raise Refused(Mistake("at", f"{error}.", _SUCH)) from None
    if found is None:
        return _moment(text, start)
    return _at(found, _day(plan, kept, clock), start, clock if is_on(plan, clock) else None)


def _at(told: Clock, day: datetime, start: datetime, clock: datetime | None) -> datetime:
    """That time of that day; of a twelve-hour clock's two the one that can be meant."""
    found = day.replace(hour=told.hour, minute=told.minute, second=0, microsecond=0)
    if told.half_told or not 1 <= told.hour <= 6 or day.date() != start.date():
        return found
    later = found + timedelta(hours=12)
    yet_to_come = clock is not None and later > clock + _SLACK
    return found if yet_to_come or start - found <= _EARLY else later


def is_on(plan: Plan, clock: datetime) -> bool:
    """Whether the plan's days are on: the clock tells something of it."""
    start = datetime.fromisoformat(plan.starts_at)
    return start - _BEFORE <= clock <= start + _LASTS


def _day(plan: Plan, kept: Sequence[Kept], clock: datetime) -> datetime:
    start = datetime.fromisoformat(plan.starts_at)
    if is_on(plan, clock):
        return clock.astimezone(start.tzinfo)
    days = [datetime.fromisoformat(one.entry.at).astimezone(start.tzinfo) for one in kept]
    return max([start, *days])


def _moment(text: str, start: datetime) -> datetime:
    try:
        found = datetime.fromisoformat(text)
    except ValueError:
        raise Refused(Mistake("at", f"{text[:40]} is no time.", _SUCH)) from None
    return found if found.tzinfo is not None else found.replace(tzinfo=start.tzinfo)


def _number(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        value = float("nan")
    if not abs(value) < 60 * 24 * 60:
        what = f"{text[:40]} is no minute of the plan."
        raise Refused(Mistake("at_min", what, "Such as at_min=72."))
    return value
