"""A field that two spray, on many days: each at a pace of his own, both waiting for each other.

Halves of a band are begun in one minute and the next band when both are done, as in the plan.
Rate of each: the day's factor, common to both, and one of his own in each field. Walks, waits
and fillings go with the day. A tank that would run dry is filled while the other waits.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from farwall.facts.plan import Band, Field, PlanTools, Refill
from farwall.floor.geometry import Point
from farwall.job.chances.drawn_days import Floats
from farwall.job.chances.replay import CROW, length_m
from farwall.job.chances.stretched import Factors, Pause, Stretched
from farwall.nouns import dataclass

_GRAIN = 1e-3
_TOGETHER_MIN = 1e-3


@dataclass(frozen=True)
class TwoCourse:
    """A field's course in the plan: `turns` of bands sprayed at once, by their place in the field.

    A figure a band: minutes to spray it and to walk along it, litres, who sprays it (0 or 1), a
    walk to the tub. A figure a turn: minutes to walk and wait before it, and to fill; both tanks'
    content after filling (turns x 2, NaN where one is not filled). [min, L, m]
    """

    turns: tuple[tuple[int, ...], ...]
    spray: Floats
    along: Floats
    litres: Floats
    who: tuple[int, ...]
    away_m: Floats
    walk: Floats
    fill: Floats
    filled_l: Floats


def turns_of(bands: Sequence[Band]) -> tuple[tuple[int, ...], ...]:
    """The bands, in order, that are begun in one minute by both; the others one by one."""
    found: list[tuple[int, ...]] = []
    for place, band in enumerate(bands):
        before = bands[found[-1][0]] if found and len(found[-1]) == 1 else None
        if (
            before is not None
            and before.sprayer != band.sprayer
            and abs(before.start_min - band.start_min) < _TOGETHER_MIN
        ):
            found[-1] = (*found[-1], place)
        else:
            found.append((place,))
    return tuple(found)


def course_of_two(
    field: Field, tools: PlanTools, l_per_m2: float, tank_l: tuple[float, float], tub: Point
) -> TwoCourse:
    """The course of a field that is begun with so much in each tank."""
    bands = field.bands
    turns = turns_of(bands)
    walk, fill, filled = [], [], []
    before, content = field.start_min, list(tank_l)
    waiting = sorted(field.refills, key=lambda refill: refill.at_min)
    for turn in turns:
        start = bands[turn[0]].start_min
        own = [one for one in waiting if one.at_min <= start + _GRAIN]
        waiting = waiting[len(own) :]
        full = [np.nan, np.nan]
        for one in own:
            content[_whose(one)] += one.litres
            full[_whose(one)] = content[_whose(one)]
        fill.append(_lasts_min(own))
        filled.append(full)
        walk.append(max(0.0, start - before - fill[-1]))
        for place in turn:
            content[bands[place].sprayer - 1] -= bands[place].litres
        before = max(bands[place].end_min for place in turn)
    away = [float(np.hypot(b.path[0][0] - tub[0], b.path[0][1] - tub[1])) * CROW for b in bands]
    return TwoCourse(
        turns,
        np.array([band.litres / l_per_m2 / tools.spray_m2_min for band in bands]),
        np.array([length_m(band) / tools.walk_m_min for band in bands]),
        np.array([band.litres for band in bands]),
        tuple(band.sprayer - 1 for band in bands),
        np.array(away),
        np.array(walk),
        np.array(fill),
        np.array(filled),
    )


def left_of_two(field: Field, tank_l: tuple[float, float]) -> tuple[float, float]:
    """What both tanks hold after a field. [L]"""
    left = list(tank_l)
    for refill in field.refills:
        left[_whose(refill)] += refill.litres
    for band in field.bands:
        left[band.sprayer - 1] -= band.litres
    return left[0], left[1]


def _whose(refill: Refill) -> int:
    return int(refill.by.endswith("sprayer 2"))


def _lasts_min(refills: Sequence[Refill]) -> float:
    """Minutes in which somebody fills: at once side by side, or one after the other."""
    lasts, until = 0.0, -np.inf
    for one in refills:
        ends = one.at_min + one.minutes
        lasts += max(0.0, ends - max(one.at_min, until))
        until = max(until, ends)
    return lasts


def stretched_by_two(
    course: TwoCourse, days: Factors, second: Floats, tank_l: Floats, pause: Pause, *, swaps: bool
) -> Stretched:
    """The field on all days, begun with `tank_l` in the tanks (2 x days).

    second: the second sprayer's minutes a square metre over the likely ones, a day each; those of
    the first are `days.spraying`. swaps: a helper fills one tank after the other.
    """
    bands, count = len(course.litres), tank_l.shape[1]
    start, minutes = np.empty((bands, count)), np.empty((bands, count))
    now, content = np.zeros(count), tank_l.copy()
    paces = (days.spraying, second)
    for number, turn in enumerate(course.turns):
        if number:
            now = now + course.walk[number] * days.walking + course.fill[number] * days.filling
        for who in (0, 1):
            if not np.isnan(course.filled_l[number, who]):
                content[who] = course.filled_l[number, who]
        waits: list[Floats] = []
        for place in turn:
            who = course.who[place]
            need = course.litres[place] * days.thirst
            dry = need > content[who] + 1e-9
            way = pause.walk_min_m * course.away_m[place] * days.walking
            waits.append(np.where(dry, pause.fill_min * days.filling + way, 0.0))
            content[who] = np.where(dry, pause.tank_l, content[who]) - need
        if number:
            now = now + (np.sum(waits, axis=0) if swaps else np.max(waits, axis=0))
        for place in turn:
            start[place] = now
            spraying = course.spray[place] * paces[course.who[place]]
            minutes[place] = np.maximum(spraying, course.along[place] * days.walking)
        now = now + np.max([minutes[place] for place in turn], axis=0)
    return Stretched(start, minutes, content)
