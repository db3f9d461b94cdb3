"""A field stretched by each day's factors: when its bands begin, how old its edges get."""

from __future__ import annotations

import numpy as np

from farwall.job.chances.drawn_days import Floats
from farwall.job.chances.replay import Course, Edges, Ints
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Factors:
    """A day's figures over the likely ones, a day each: minutes a square metre, minutes a metre
    walked, minutes a filling, litres a square metre."""

    spraying: Floats
    walking: Floats
    filling: Floats
    thirst: Floats


@dataclass(frozen=True)
class Pause:
    """What a filling takes that nobody planned: its own minutes, and minutes a metre to the tub."""

    fill_min: float
    walk_min_m: float
    tank_l: float


@dataclass(frozen=True)
class Stretched:
    """Starts and minutes of the bands (bands x days), and what the tank holds after them. [L]"""

    start: Floats
    minutes: Floats
    left_l: Floats


def stretched(course: Course, days: Factors, tank_l: Floats, pause: Pause) -> Stretched:
    """The field on all days, begun with `tank_l` in the tank.

    A planned filling brings the tank to what the plan says. Where the slab has drunk so much
    more that a band would run the tank dry, it is filled before that band: the gauge is looked
    at before each. The tank is then full.
    """
    bands, count = len(course.litres), len(tank_l)
    start, minutes = np.empty((bands, count)), np.empty((bands, count))
    now, content = np.zeros(count), tank_l.copy()
    for band in range(bands):
        if band:
            now += course.walk[band] * days.walking + course.fill[band] * days.filling
        if not np.isnan(course.filled_l[band]):
            content = np.full(count, course.filled_l[band])
        need = course.litres[band] * days.thirst
        dry = need > content + 1e-9
        if dry.any():
            content[dry] = pause.tank_l
            if band:
                way = pause.walk_min_m * course.away_m[band] * days.walking[dry]
                now[dry] += pause.fill_min * days.filling[dry] + way
        content -= need
        start[band] = now
        minutes[band] = np.maximum(
            course.spray[band] * days.spraying, course.along[band] * days.walking
        )
        now = now + minutes[band]
    return Stretched(start, minutes, content)


def worst(edges: Edges, on: Stretched, open_min: Floats) -> tuple[Floats, Ints]:
    """The greatest age over open time of a field's edges, a day each, and which edge has it.

    open_min: open times x days. [min]
    """
    count = on.start.shape[1]
    most, which = np.zeros(count), np.zeros(count, dtype=np.intp)
    for row, (first, then, made, met, number) in enumerate(edges.rows()):
        age = on.start[then] - on.start[first]
        age = age + met * on.minutes[then] - made * on.minutes[first]
        share = age / open_min[number]
        more = share > most
        np.copyto(most, share, where=more)
        np.copyto(which, row, where=more)
    return most, which
