"""Why a house finds no days: the first step that lacks hours, and on which days it has them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Literal

import numpy as np

from farwall.days.chain import Link, Walked, links, walk
from farwall.days.clock import PER_DAY, SLOT_MIN, SiteClock, site_clock, working_day
from farwall.days.document import day_date
from farwall.days.nouns import House, Question, Step
from farwall.days.practice import LONG_LOCK_DAYS, chain_of
from farwall.days.words import date_words
from farwall.days.work_hours import EVENING_MIN, WORK_FROM_MIN, WORK_UNTIL_MIN
from farwall.errors import Unanswerable
from farwall.nouns import dataclass

Kind = Literal["long", "never", "window", "late", "trade"]
_TOLD_DAYS = 8


@dataclass(frozen=True)
class Lack:
    """A step that cannot be done where all before it can.

    kind: `long`, it is more than any day holds; `never`, no day has its hours on end; `window`,
    days have them, but none where the step before lets it; `late`, only before its turn, or too
    near the last day; `trade`, the hours suffice and other trades are in the way.
    `days`: those that have its hours, from 0. `best_min`: the longest stretch of any working
    day, on `best_day`.
    """

    house: House
    step: Step
    before: Step | None
    kind: Kind
    needed_min: float
    days: tuple[int, ...]
    work_days: int
    best_min: float
    best_day: int


class NoDays(Unanswerable):
    """Houses that fit nowhere into the days ahead; `lacks` says which step of each lacks what."""

    def __init__(self, question: Question, lacks: Sequence[Lack]) -> None:
        self.lacks = tuple(lacks)
        remedies = ["Wait for another season, warm or cool the house, or take more days (--days)."]
        if any(one.kind == "long" for one in lacks):
            remedies = ["A floor too large for one day of it has to be cut into zones."]
        more = f" And {len(lacks) - 5} more houses." if len(lacks) > 5 else ""
        reason = " ".join(lack_words(question, one) for one in lacks[:5]) + more
        super().__init__(reason, remedies=remedies)


def lack_of(question: Question, house: House, people: int) -> Lack:
    """The first step that a house with no chain of days cannot do in the days ahead."""
    shut = {away.day for away in question.away if away.house == house.id}
    ahead = question.ahead_of(house)
    clock = site_clock(ahead, shut)
    steps = chain_of(house)
    count = next(
        (n for n in range(1, len(steps)) if not _works(house, steps[:n], clock, people)), len(steps)
    )
    step, before = steps[count - 1], steps[count - 2] if count > 1 else None
    link = links((step,), clock, area_m2=house.area_m2, people=people)[0]
    days = sorted({int(one) // PER_DAY for one in np.flatnonzero(link.ends <= clock.count)})
    best_day, best = _longest(clock, step)
    evening = EVENING_MIN if step.place in {"coat", "rinse"} else WORK_UNTIL_MIN
    kind: Kind = "late"
    if not days:
        kind = "long" if link.slots * SLOT_MIN > evening - WORK_FROM_MIN else "never"
    elif _works(house, steps, clock, people):
        kind = "trade"
    elif _works(house, (*steps[: count - 1], _unbound(step)), clock, people):
        kind = "window"
    return Lack(
        house=house,
        step=step,
        before=before,
        kind=kind,
        needed_min=float(link.slots * SLOT_MIN),
        days=tuple(days),
        work_days=sum(working_day(ahead, n) and n not in shut for n in range(ahead.days)),
        best_min=float(best * SLOT_MIN),
        best_day=best_day,
    )


def first_chain(question: Question, house: House, people: int) -> list[Walked] | None:
    """The first chain that lasts no longer than `LONG_LOCK_DAYS`, None where there is none.

    Longer ones begin with cleaning and then wait for another season: no answer to anybody.
    """
    ahead = question.ahead_of(house)
    clock = site_clock(ahead)
    chain = links(chain_of(house), clock, area_m2=house.area_m2, people=people)
    for day in range(house.free_from_day, ahead.days):
        walked = walk(chain, day * PER_DAY + int(WORK_FROM_MIN) // SLOT_MIN, hold={})
        if walked and walked[-1].end - walked[0].start <= LONG_LOCK_DAYS * PER_DAY:
            return walked
    return None


def lack_words(question: Question, lack: Lack) -> str:
    """What lacks, on which days, in a sentence or three."""
    ahead = question.ahead_of(lack.house)
    if lack.kind == "trade":
        return (
            f"{lack.house.name}: no chain of days fits, for other trades have the house on days "
            "that lie between its cleaning and a day after its sealing."
        )
    evening = lack.step.place in {"coat", "rinse"}
    until = "18:30" if evening else "17:00"
    needs = f"it needs {lack.needed_min / 60:g} h on end between 7:30 and {until}"
    said = (
        f"{lack.house.name}: no chain of days fits into the {ahead.days} days from "
        f"{date_words(day_date(ahead, 0))} on. What lacks hours is “{lack.step.name}”: {needs}, "
    )
    if lack.kind == "long":
        return said + "which is more than a day."
    if lack.kind == "never":
        best = date_words(day_date(ahead, lack.best_day))
        most = (
            f"the most is {lack.best_min / 60:g} h, on {best}" if lack.best_min else "none has any"
        )
        return said + f"and no one of {lack.work_days} working days has so many; {most}."
    told = [date_words(day_date(ahead, day)) for day in lack.days]
    some = ", ".join(told[:_TOLD_DAYS]) + (" …" if len(told) > _TOLD_DAYS else "")
    said += f"which {len(told)} of {lack.work_days} working days have ({some}), "
    assert lack.before is not None, "a first step has no turn to miss"
    if lack.kind == "late":
        return said + f"none of them after “{lack.before.name}” and its waits."
    longest = min(one.longest_min for one in lack.step.waits if one.longest_min is not None)
    return said + f"none of them dry and within {longest / 60:g} h after “{lack.before.name}”."


def _works(house: House, steps: tuple[Step, ...], clock: SiteClock, people: int) -> bool:
    chain = links(steps, clock, area_m2=house.area_m2, people=people)
    return _first(chain, house) is not None


def _first(chain: tuple[Link, ...], house: House) -> int | None:
    first = chain[0].first
    start = int(first[min(house.free_from_day * PER_DAY, len(first) - 1)])
    return start if start < len(first) - 1 else None


def _unbound(step: Step) -> Step:
    """The step without an end by which it has to begin."""
    return replace(step, waits=tuple(replace(one, longest_min=None) for one in step.waits))


def _longest(clock: SiteClock, step: Step) -> tuple[int, int]:
    """The day with the longest stretch in which a step may be done, and its slots."""
    best_day, best = 0, 0
    for day, slots in enumerate(clock.open[step.place].reshape(-1, PER_DAY)):
        edges = np.flatnonzero(np.diff(np.r_[0, slots.astype(np.int8), 0]))
        longest = int((edges[1::2] - edges[::2]).max(initial=0))
        if longest > best:
            best_day, best = day, longest
    return best_day, best
