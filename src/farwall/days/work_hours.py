"""Hours of work and of a working day: common practice, no source.

Apart from the chain of steps, for the clocks of one floor ask for them too.
"""

from __future__ import annotations

from farwall.evidence import Rank, Span
from farwall.facts.default_table import PRACTICE
from farwall.units import M2_PER_FT2

TYPICAL_M2 = 1500 * M2_PER_FT2
FIXED_SHARE = 0.2
"""Part of a task that does not shrink with the floor (set-up, hoses, washing up): a guess."""
HOUR_MIN, DAY_MIN = 60.0, 1440.0
WORK_FROM_MIN, WORK_UNTIL_MIN = 7.5 * 60, 17 * 60.0
EVENING_MIN = 18.5 * 60
"""Stain and rinsing may run on into the evening, no further: light to judge by. A guess."""
NOON_MIN = 12 * 60.0

RINSE_LABOUR_H = Span(11, 15.5, 20, Rank.PRACTICE, PRACTICE)
"""Judging, neutralising, scrubbing and rinsing, hours of work at 1,500 ft²: the calendar's step and
the clocks' own rinse are the same work."""


def work_min(labour_h: float, *, area_m2: float, people: int, most: int | None = None) -> float:
    """Minutes on the clock for so many hours of work at 1,500 ft², by floor and people.

    A share stays whatever the floor; the rest goes with the area. `most`: more
    people than this do not speed it. A guess.
    """
    hands = min(people, most) if most is not None else people
    scale = FIXED_SHARE + (1 - FIXED_SHARE) * area_m2 / TYPICAL_M2
    return labour_h * HOUR_MIN * scale / hands


def rinsing_min(*, area_m2: float, people: int) -> float:
    """Minutes from judging to the last rinse, likely; a day's hours of rinsing at most. [min]"""
    likely_h = RINSE_LABOUR_H.likely or 0.0
    worked = work_min(likely_h, area_m2=area_m2, people=people)
    return min(worked, EVENING_MIN - WORK_FROM_MIN)
