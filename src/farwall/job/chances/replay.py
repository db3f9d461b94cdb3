"""One field on many days: its bands, walks and fillings stretched, and its edges as old as then.

From the plan's own moments, not from a proxy. Band i takes max(s·x, p·y) minutes: s what
spraying takes, p what walking along it takes, x and y the inverses of rate and pace. Between
bands lie w·y + f·z: walks and waits, fillings. A place of an edge is made at the share a of its
first band and met at the share b of the next, so its age is

    start[then] + b · minutes[then] − start[first] − a · minutes[first],

linear in a and b: of all places of one edge only the corners of the hull of (a, b) can be oldest.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
import numpy.typing as npt

from farwall.facts.plan import Band, Field, PlanTools
from farwall.floor.geometry import Point
from farwall.job.chances.drawn_days import Floats
from farwall.nouns import dataclass
from farwall.spray.edges import Moments
from farwall.spray.lives import Lives

CROW = 1.3
"""A walk through the house over the straight line: a guess, for fillings that nobody planned."""
_GRAIN = 1e-3

Ints = npt.NDArray[np.intp]


@dataclass(frozen=True)
class Edges:
    """Corners of edges as columns: first and later band, shares made and met, open time number."""

    first: Ints
    then: Ints
    made: Floats
    met: Floats
    open_time: Ints

    def only(self, rows: Ints) -> Edges:
        """Some of them."""
        return Edges(
            self.first[rows],
            self.then[rows],
            self.made[rows],
            self.met[rows],
            self.open_time[rows],
        )

    def rows(self) -> Iterator[tuple[int, int, float, float, int]]:
        """One after the other."""
        columns = (self.first, self.then, self.made, self.met, self.open_time)
        yield from zip(*(column.tolist() for column in columns), strict=True)


@dataclass(frozen=True)
class Course:
    """A field's course in the plan, a figure a band: minutes to spray it and to walk along it,
    to walk and wait before it, to fill before it; litres; the tank's content after filling (NaN
    where it is not filled); a walk to the tub. `tank_l`: the content at the start. [min, L, m]"""

    spray: Floats
    along: Floats
    walk: Floats
    fill: Floats
    litres: Floats
    filled_l: Floats
    away_m: Floats


def course_of(field: Field, tools: PlanTools, l_per_m2: float, tank_l: float, tub: Point) -> Course:
    """The course of a field that is begun with `tank_l` in the tank."""
    bands = sorted(field.bands, key=lambda band: band.start_min)
    walk, fill, filled = [], [], []
    before, content = field.start_min, tank_l
    waiting = sorted(field.refills, key=lambda refill: refill.at_min)
    for band in bands:
        own = [one for one in waiting if one.at_min <= band.start_min + _GRAIN]
        waiting = waiting[len(own) :]
        minutes = sum(one.minutes for one in own)
        content += sum(one.litres for one in own)
        fill.append(minutes)
        filled.append(content if own else np.nan)
        walk.append(max(0.0, band.start_min - before - minutes))
        content -= band.litres
        before = band.end_min
    along = [length_m(band) / tools.walk_m_min for band in bands]
    wetted = [band.litres / l_per_m2 for band in bands]
    away = [float(np.hypot(b.path[0][0] - tub[0], b.path[0][1] - tub[1])) * CROW for b in bands]
    columns = ([m2 / tools.spray_m2_min for m2 in wetted], along, walk, fill)
    rest = ([band.litres for band in bands], filled, away)
    return Course(*(np.array(column, dtype=float) for column in (*columns, *rest)))


def left_l(field: Field, tank_l: float) -> float:
    """What the tank holds after a field that was begun with `tank_l`. [L]"""
    taken = sum(band.litres for band in field.bands)
    return tank_l + sum(refill.litres for refill in field.refills) - taken


def length_m(band: Band) -> float:
    """The way walked along a band. [m]"""
    return float(np.hypot(*np.diff(np.array(band.path)[:, :2], axis=0).T).sum())


def edges_of(moments: Sequence[Moments], lives: Lives, field: Field) -> Edges:
    """The corners of all edges of a field, each with the open time that it is held to."""
    times = [(band.start_min, band.end_min - band.start_min) for band in field.bands]
    rows: list[tuple[int, int, float, float, int]] = []
    for each in moments:
        made, met = each.made.min(axis=0), each.met.max(axis=0)
        which = lives.held(each.points, *each.waits_min(times))
        for number in sorted(set(which.tolist())):
            own = which == number
            corners = _corners(made[own], met[own])
            rows += [(each.first, each.then, a, b, number) for a, b in corners]
    first, then, made_, met_, open_time = zip(*rows, strict=True) if rows else ((),) * 5
    return Edges(
        np.array(first, dtype=np.intp),
        np.array(then, dtype=np.intp),
        np.array(made_, dtype=float),
        np.array(met_, dtype=float),
        np.array(open_time, dtype=np.intp),
    )


def _corners(made: Floats, met: Floats) -> list[tuple[float, float]]:
    """The corners of the hull of these shares that can be oldest: early made, late met."""
    near = zip(np.round(made, 4).tolist(), np.round(met, 4).tolist(), strict=True)
    places = sorted(set(near))
    hull: list[tuple[float, float]] = []
    for a, b in places:  # from early made on, each must be met later than all before
        if hull and b <= hull[-1][1]:
            continue
        while len(hull) > 1 and _bends_in(hull[-2], hull[-1], (a, b)):
            hull.pop()
        hull.append((a, b))
    return hull


def _bends_in(
    one: tuple[float, float], two: tuple[float, float], three: tuple[float, float]
) -> bool:
    """Whether the middle one lies below the line between the others."""
    cross = (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])
    return cross >= 0
