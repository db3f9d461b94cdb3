"""Frozen sets of invented houses for the calendar: same seed, same houses, in every Python.

Houses of 60-220 m² with two coats or (one in five) three come free over the
time in which the crews can just about do them, and are due three to seven
weeks later. Days are mild, so that what is scored is the calendar and not the
weather.
"""

from __future__ import annotations

from datetime import datetime

from farwall.bench.dice import Dice
from farwall.days.hours import mild
from farwall.days.nouns import DayCrew, House, Question

SEED = 11
_BEGINS = datetime.fromisoformat("2001-01-01T00:00:00+00:00")


def day_question(houses: int, crews: int, *, seed: int = SEED, people: int = 2) -> Question:
    """So many invented houses for so many crews."""
    dice = Dice(seed * 1000 + houses)
    span = 7 * houses // crews
    made = []
    for number in range(1, houses + 1):
        free = dice.between(0, span)
        made.append(
            House(
                id=f"house-{number}",
                name=f"House {number}",
                area_m2=float(dice.between(60, 220)),
                coats=3 if dice.happens(0.2) else 2,
                free_from_day=free,
                due_day=free + dice.between(21, 49),
            )
        )
    vans = tuple(DayCrew(f"crew {n}", people) for n in range(1, crews + 1))
    return Question(tuple(made), vans, mild(_BEGINS, 8 * houses // crews + 60))
