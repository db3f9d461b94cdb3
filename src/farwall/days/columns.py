"""All ways a house may lie in the calendar: a start, sealer held back or not, a size of crew.

Each way is a column: the half days in which a crew is at the house, those in
which its floor is fresh and has to be guarded, and what it costs.
"""

from __future__ import annotations

from collections.abc import Collection

from farwall.days.chain import Walked, links, walk
from farwall.days.clock import PER_DAY, SLOT_MIN, half_days, site_clock, working_day
from farwall.days.nouns import Ahead, Before, DayCrew, House, Question
from farwall.days.practice import LOCK_AFTER_SEAL_MIN, LONG_LOCK_DAYS, chain_of
from farwall.days.work_hours import NOON_MIN, WORK_FROM_MIN
from farwall.nouns import dataclass

Hold = tuple[int, int]

LATE_DAY = 10.0
"""A day beyond the day due counts like so many days of waiting: a guess of ours."""
MOVED_STEP, MOVED_DAY = 0.2, 0.2
LONG_LOCK = 0.1
"""A day that a house is shut beyond `LONG_LOCK_DAYS`, against beginning later: a guess of ours."""
MOVED_CREW = 2.0
"""Against an answer given before: each step that changes its day, and by how many days; a house
that changes its crew. So few days change, and none by much for little: guesses of ours."""
HOLDS: tuple[Hold, ...] = ((0, 0), (0, 1), (0, 2), (1, 0), (2, 0), (3, 0), (4, 0), (1, 1))
"""Days that the first coat, and the first sealer, may be held back longer than need be, so that
a crew can be at another house meanwhile."""
FEW_HOLDS: tuple[Hold, ...] = ((0, 0), (0, 1), (1, 0), (3, 0))
_MANY_HOUSES = 60
_AFTERNOON = int(NOON_MIN) // SLOT_MIN
_MORNING = int(WORK_FROM_MIN) // SLOT_MIN


@dataclass(frozen=True)
class Column:
    """One way of one house with crews of `people`: what it takes and what it costs. [days]

    `at`: half days with the crew there; `fresh`: half days with a fresh floor;
    `sprays`: days on which stain goes down.
    """

    house: int
    people: int
    start: int
    hold: Hold
    at: frozenset[int]
    fresh: frozenset[int]
    sprays: frozenset[int]
    cost_days: float


def columns(question: Question, *, holds: tuple[Hold, ...] | None = None) -> list[Column]:
    """Every column of every house, by house and size of crew; a way that is no better is left out.

    Starts are at morning and noon of working days. holds: by default `HOLDS`, for a shop of
    more than sixty houses `FEW_HOLDS`.
    """
    if holds is None:
        holds = HOLDS if len(question.houses) <= _MANY_HOUSES else FEW_HOLDS
    found: list[Column] = []
    for number, house in enumerate(question.houses):
        for people in sorted({crew.people for crew in question.crews}):
            found += _of_house(question, number, house, people, holds)
    return found


def _of_house(
    question: Question, number: int, house: House, people: int, holds: tuple[Hold, ...]
) -> list[Column]:
    shut = {away.day for away in question.away if away.house == house.id}
    clock = site_clock(question.ahead_of(house), shut)
    steps = links(chain_of(house), clock, area_m2=house.area_m2, people=people)
    best: dict[tuple[frozenset[int], frozenset[int]], Column] = {}
    for day in range(house.free_from_day, question.ahead.days):
        if not working_day(question.ahead, day):
            continue
        for start in (day * PER_DAY + _MORNING, day * PER_DAY + _AFTERNOON):
            for hold in holds:
                walked = walk(steps, start, hold=held(hold))
                if walked is None or meets(walked, shut):
                    continue
                column = _column(question, number, walked, people=people, hold=hold)
                key = (column.at, column.fresh)
                if key not in best or column.cost_days < best[key].cost_days:
                    best[key] = column
    return list(best.values())


def held(hold: Hold) -> dict[str, int]:
    """The slots by which steps are held back, by their ids."""
    return {"coat-1": hold[0] * PER_DAY, "seal-1": hold[1] * PER_DAY}


def lock_slots(walked: list[Walked]) -> tuple[int, int]:
    """Other trades are out from the start of cleaning to the last sealer or finish + 24 h."""
    last = max(one.end for one in walked if one.step.place == "seal")
    return walked[0].start, last + int(LOCK_AFTER_SEAL_MIN) // SLOT_MIN


def meets(walked: list[Walked], shut: Collection[int]) -> bool:
    """Whether another trade would be inside on one of its days: in the lock or before hand-over.

    A floor that is still masked, or not yet looked at with its owner, is nobody else's to walk on.
    """
    first, locked = lock_slots(walked)
    last = max(locked, walked[-1].end)
    return any(day * PER_DAY < last and (day + 1) * PER_DAY > first for day in shut)


def _column(
    question: Question, number: int, walked: list[Walked], *, people: int, hold: Hold
) -> Column:
    house = question.houses[number]
    coats = [one for one in walked if one.step.place == "coat"]
    rinse = next(one for one in walked if one.step.place == "rinse")
    at: set[int] = set()
    for one in walked:
        at.update(half_days(one.start, one.end))
    fresh = frozenset(half_days(coats[0].start, rinse.start))
    sprays = frozenset(one.start // PER_DAY for one in coats)
    finish = (walked[-1].end - 1) // PER_DAY
    cost = finish + 1.0
    if house.due_day is not None:
        cost += LATE_DAY * max(0, finish - house.due_day)
    cost += lost_chance(question.ahead_of(house), walked) or 0.0
    shut = finish - walked[0].start // PER_DAY + 1
    cost += LONG_LOCK * max(0, shut - LONG_LOCK_DAYS)
    before = question.before.get(house.id)
    if before is not None:
        cost += moved_cost(before, walked)
    return Column(number, people, walked[0].start, hold, frozenset(at), fresh, sprays, cost)


def moved_cost(before: Before, walked: list[Walked]) -> float:
    """What it costs that steps begin on other days than before. [days]"""
    by = [
        abs(one.start // PER_DAY - int(before.starts_min[one.step.id] // 1440))
        for one in walked
        if one.step.id in before.starts_min
    ]
    return sum(MOVED_STEP + MOVED_DAY * days for days in by if days)


def lost_chance(ahead: Ahead, walked: list[Walked]) -> float | None:
    """The chance that at least one of its days for stain or sealer is lost; None when unknown."""
    if not ahead.coat_lost:
        return None
    kept = 1.0
    days = {(one.start // PER_DAY, one.step.place) for one in walked}
    for day, place in days:
        if place == "coat":
            kept *= 1 - ahead.coat_lost[day]
        elif place == "seal":
            kept *= 1 - ahead.seal_lost[day]
    return 1 - kept


def crew_change(question: Question, house: House, crew: DayCrew) -> float:
    """What it costs to give a house another crew than before."""
    before = question.before.get(house.id)
    return MOVED_CREW if before is not None and before.crew != crew.id else 0.0
