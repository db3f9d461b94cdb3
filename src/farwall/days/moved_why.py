"""Why a house moved: what first drove it off its day, and what stands against each day between.

Nothing is searched: each working day between the old first day and the new one is tried as a
first day, and the first thing in its way is named.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise
from typing import Literal

from farwall.days.chain import Link, Walked, links, walk
from farwall.days.changes import Change
from farwall.days.clock import PER_DAY, SLOT_MIN, half_days, site_clock, working_day
from farwall.days.columns import HOLDS, held, meets
from farwall.days.nouns import Ahead, Away, Calendar, House, Step
from farwall.days.practice import chain_of
from farwall.days.work_hours import NOON_MIN, WORK_FROM_MIN
from farwall.nouns import dataclass

Kind = Literal["trade", "hours", "window", "crew", "waits", "no sooner"]
_MUCH_LATER = 2
"""Fewer working days are a night or a Sunday, which everybody sees."""
_STARTS = (int(WORK_FROM_MIN) // SLOT_MIN, int(NOON_MIN) // SLOT_MIN)


@dataclass(frozen=True)
class Against:
    """What stands against a first day.

    kind: `trade`, another trade would be inside during the lock or before hand-over; `hours`, a
    step finds none of its place's hours; `window`, a step would come later than the one
    before lets it; `crew`, all crews are elsewhere; `waits`, a step would wait two days and more
    for its place's hours; `no sooner`, it could be done, to no one's gain. step: that lacks hours.
    """

    kind: Kind
    step: Step | None = None


@dataclass(frozen=True)
class Late:
    """A step that falls further behind than the one before it. ready, start: days from 0.

    kind: `hours`, it finds none of its place's hours before; `rest`, what follows it would find
    none; `crew`, it is held back for the crew.
    """

    kind: Literal["hours", "rest", "crew"]
    step: Step
    ready: int
    start: int


@dataclass(frozen=True)
class Why:
    """Why a house moved.

    trades: in the house inside its old lock or before its hand-over. rain: days, from 0, with rain
    that there was not before, inside the old chain. against: working days between by what
    stands against them, most days first. late: steps further behind than those before them, that
    wait two working days and more beyond their waits.
    """

    trades: tuple[Away, ...]
    rain: tuple[int, ...]
    days: int
    against: tuple[tuple[Against, int], ...]
    late: tuple[Late, ...] = ()


def why_moved(first: Calendar, then: Calendar, change: Change) -> Why:
    """What moved a house of `first` to where it is in `then`."""
    house = change.house.house
    was = next(one for one in first.houses if one.house.id == house.id)
    shut = [one for one in then.question.away if one.house == house.id]
    until = max(was.lock_end_min, was.steps[-1].end_min)
    trades = [
        one for one in shut if one.day * 1440 < until and (one.day + 1) * 1440 > was.lock_start_min
    ]
    lie = range(int(was.steps[0].start_min // 1440), was.last_day + 1)
    rain = [day for day in lie if _wet(then, house, day) and not _wet(first, was.house, day)]
    old, new = (int(one.steps[0].start_min // 1440) for one in (was, change.house))
    between = range(old, new) if new > old else range(new + 1, old + 1)
    ahead = then.question.ahead_of(house)
    days = [day for day in between if working_day(ahead, day)]
    found = _Tried.of(then, change)
    counted = Counter(found.against(day) for day in days)
    late = tuple(_late(found, change))
    return Why(tuple(trades), tuple(rain), len(days), tuple(counted.most_common()), late)


def _late(tried: _Tried, change: Change) -> Iterator[Late]:
    by = {one.step.id: one.days for one in change.moved}
    steps = change.house.steps
    for n, (last, placed) in enumerate(pairwise(steps), start=1):
        start = int(placed.start_min) // SLOT_MIN
        ready = int(last.end_min if placed.ready_min is None else placed.ready_min) // SLOT_MIN
        behind = by.get(placed.id, 0) > by.get(last.id, 0)
        if behind and tried.work_days(ready, start) >= _MUCH_LATER:
            step, alone, _ = tried.cut[n]
            kind: Literal["hours", "rest", "crew"] = "crew"
            if int(alone[-1].first[ready]) >= start:
                kind = "hours"
            elif int(tried.whole[n].first[ready]) >= start:
                kind = "rest"
            yield Late(kind, step, ready // PER_DAY, start // PER_DAY)


def _wet(told: Calendar, house: House, day: int) -> bool:
    at_home = next(one for one in told.question.houses if one.id == house.id)
    hours = told.question.ahead_of(at_home).hours[24 * day : 24 * day + 24]
    return any(one.wet for one in hours)


@dataclass(frozen=True)
class _Tried:
    """A house's chain whole and cut short after each step, to be begun on any day."""

    whole: tuple[Link, ...]
    cut: tuple[tuple[Step, tuple[Link, ...], tuple[Link, ...]], ...]
    shut: frozenset[int]
    taken: tuple[frozenset[int], ...]
    ahead: Ahead

    @classmethod
    def of(cls, then: Calendar, change: Change) -> _Tried:
        question, house = then.question, change.house.house
        clock = site_clock(question.ahead_of(house))
        steps, people = chain_of(house), change.house.crew.people

        def chain(some: tuple[Step, ...]) -> tuple[Link, ...]:
            return links(some, clock, area_m2=house.area_m2, people=people)

        cut = []
        for n in range(1, len(steps) + 1):
            unbound = replace(
                steps[n - 1],
                waits=tuple(replace(one, longest_min=None) for one in steps[n - 1].waits),
            )
            cut.append((steps[n - 1], chain(steps[:n]), chain((*steps[: n - 1], unbound))))
        shut = frozenset(one.day for one in question.away if one.house == house.id)
        taken = tuple(_taken(then, crew.id, house.id) for crew in question.crews)
        return cls(chain(steps), tuple(cut), shut, taken, question.ahead_of(house))

    def against(self, day: int) -> Against:
        """What stands against this first day: of its starts and holds the last to be told."""
        walked = [
            one
            for start in _STARTS
            for hold in HOLDS
            if (one := walk(self.whole, day * PER_DAY + start, hold=held(hold))) is not None
        ]
        if not walked:
            return self._lack(day * PER_DAY + _STARTS[0])
        apart = [one for one in walked if not meets(one, self.shut)]
        if not apart:
            return Against("trade")
        if all(_at(one) & busy for one in apart for busy in self.taken):
            return Against("crew")
        slow = [one for one in apart[0] if self.work_days(one.ready, one.start) >= _MUCH_LATER]
        return Against("waits", slow[0].step) if slow else Against("no sooner")

    def work_days(self, ready: int, start: int) -> int:
        """Working days from the slot in which a step could begin to that in which it does."""
        days = range(ready // PER_DAY, start // PER_DAY)
        return sum(working_day(self.ahead, day) for day in days)

    def _lack(self, start: int) -> Against:
        for step, chain, unbound in self.cut:
            if walk(chain, start, hold={}) is None:
                bound = walk(unbound, start, hold={}) is not None
                return Against("window" if bound else "hours", step)
        return Against("hours", self.cut[-1][0])


def _at(walked: list[Walked]) -> frozenset[int]:
    return frozenset(half for one in walked for half in half_days(one.start, one.end))


def _taken(told: Calendar, crew: str, but: str) -> frozenset[int]:
    """Half days on which a crew is at other houses."""
    return frozenset(
        half
        for one in told.houses
        if one.crew.id == crew and one.house.id != but
        for step in one.steps
        for half in half_days(int(step.start_min) // SLOT_MIN, int(step.end_min) // SLOT_MIN)
    )
