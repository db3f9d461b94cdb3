"""Put a clock on the sweeps: who stands where in which minute, with what in the tank.

The state of the day is a value that each field hands on: where the sprayer
stands, what the tank holds, which ground is still free. Every walk is part of
the plan, the helper's too.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import shapely
import shapely.ops

from farwall.errors import Unanswerable
from farwall.facts.plan import Band, Refill, TimedPoint, Walk
from farwall.floor.geometry import Point, polygon_geometry
from farwall.nouns import dataclass
from farwall.spray.dry import DryGround
from farwall.spray.edges import Moments, ages_by_pass_min
from farwall.spray.passes import Pass
from farwall.spray.refills import TANK_RESERVE, Flow, refill_stops
from farwall.spray.routes import gap_m, length_m, nearest_on, part_with
from farwall.spray.sweep import Sweep
from farwall.spray.whole import one_polygon

_HELPER_STANDS_OFF_M = 0.7


@dataclass(frozen=True)
class Second:
    """The second sprayer: where he stands, what his tank holds, and his place beside the tub."""

    at: Point
    tank_l: float
    base: Point


@dataclass(frozen=True)
class Day:
    """Where the day stands: minute, sprayer's place, tank, ground still free, the tub's place."""

    minute: float
    at: Point
    tank_l: float
    free: DryGround
    base: Point
    helper_free_min: float = 0.0
    """From when on the helper may set out: back from the last swap, and not before the coat."""
    second: Second | None = None
    """Where two spray."""


@dataclass(frozen=True)
class Timed:
    """A sweep with times: its bands, refills, walks and the oldest edge."""

    bands: tuple[Band, ...]
    refills: tuple[Refill, ...]
    walks: tuple[Walk, ...]
    peak_age_min: float
    moments: tuple[Moments, ...] = ()
    """When its bands reach the places of their edges, as shares of their times."""


def time_sweep(sweep: Sweep, day: Day, flow: Flow, *, field_id: str) -> tuple[Timed, Day]:
    """The sweep on the clock, beginning at `day`, and the day after it.

    What of it is sprayed already keeps its times; edges to it age from those.
    """
    stops = refill_stops(sweep, day.tank_l, flow, now_min=day.minute)
    clock = _Clock(day, flow)
    bands = list(sweep.begun)
    for index, each in enumerate(sweep.to_spray, len(bands)):
        clock.spray(each, refill=index in stops, number=index + 1, field_id=field_id)
        bands.append(clock.band)
    times = [(band.start_min, band.end_min - band.start_min) for band in bands]
    ages = ages_by_pass_min(sweep.moments, times)
    timed = Timed(
        tuple(
            replace(band, edge_age_min=round(age, 4)) for band, age in zip(bands, ages, strict=True)
        ),
        tuple(clock.refills),
        tuple(clock.walks),
        round(max(ages), 4),
        sweep.moments,
    )
    return timed, clock.day


class _Clock:
    """Walks through the passes of one field, writing down what happens."""

    def __init__(self, day: Day, flow: Flow) -> None:
        self.day = day
        self.flow = flow
        self.tools = flow.tools
        self.left_l = flow.still_to_spray_l
        self.refills: list[Refill] = []
        self.walks: list[Walk] = []
        self.band: Band

    def spray(self, each: Pass, *, refill: bool, number: int, field_id: str) -> None:
        litres = each.wetted_m2 * self.flow.l_per_m2
        start = each.path[0]
        after = self.day.free.without(each.strip)
        if refill and self.flow.swaps:
            self._walk_to(start)
            self._swap(after)
        elif refill:
            self._walk_to(self.day.base)
            self._fill(self.tools.refill_min, by="sprayer")
        self._walk_to(start)
        minutes = each.minutes(self.tools)
        self.band = band_of(
            each,
            start=self.day.minute,
            minutes=minutes,
            litres=litres,
            number=number,
            field_id=field_id,
        )
        self.left_l -= litres
        self.day = replace(
            self.day,
            minute=self.band.end_min,
            at=each.path[-1],
            tank_l=self.day.tank_l - self.band.litres,
            free=after,
        )

    def _walk_to(self, place: Point) -> None:
        if gap_m(self.day.at, place) < 0.001:
            return
        path = route(self.day.free, self.day.at, place)
        walk = timed_path(path, self.day.minute, self.tools.walk_m_min)
        self.walks.append(Walk("sprayer", walk))
        self.day = replace(self.day, minute=walk[-1][2], at=place)

    def _fill(self, minutes: float, *, by: str) -> None:
        litres = self._wanted_l()
        self.refills.append(Refill(self.day.minute, minutes, self.day.at, litres, by))
        self.day = replace(
            self.day,
            minute=round(self.day.minute + minutes, 4),
            tank_l=round(self.day.tank_l + litres, 4),
        )

    def _wanted_l(self) -> float:
        """Enough for all that is left and a reserve, at most what the tank takes."""
        need = self.left_l * (1 + TANK_RESERVE) + TANK_RESERVE * self.tools.tank_l
        room = self.tools.tank_l - self.day.tank_l
        return round(max(0.0, min(room, need - self.day.tank_l)), 4)

    def _swap(self, after: DryGround) -> None:
        """The helper comes with the full tank, stands a little off, and goes back."""
        come = helpers_way(self.day.base, self.day.at, after)
        if come is None:
            self._walk_to(self.day.base)
            self._fill(self.tools.refill_min, by="sprayer")
            return
        minutes = length_m(come) / self.tools.walk_m_min
        leave = max(round(self.day.minute - minutes, 4), self.day.helper_free_min)
        arrive = timed_path(come, leave, self.tools.walk_m_min)
        self.day = replace(self.day, minute=max(self.day.minute, arrive[-1][2]))
        self.walks.append(Walk("helper", arrive))
        self._fill(self.tools.swap_min, by="helper")
        back = timed_path(tuple(reversed(come)), self.day.minute, self.tools.walk_m_min)
        self.walks.append(Walk("helper", back))
        self.day = replace(self.day, helper_free_min=back[-1][2])


def helpers_way(base: Point, at: Point, after: DryGround) -> tuple[Point, ...] | None:
    """From the tub to just short of the sprayer, on ground that stays dry for the way back."""
    ground = part_with(after.shape, base)
    if ground is None:
        return None
    place = nearest_on(ground, at)
    way = after.walk(base, place)
    if way is None or gap_m(place, at) > 0.4:
        return None
    line = shapely.LineString(way)
    short = max(0.0, line.length - _HELPER_STANDS_OFF_M)
    if short < 0.01:
        return (way[0],)
    kept = shapely.ops.substring(line, 0.0, short)
    return tuple((round(float(x), 4), round(float(y), 4)) for x, y in kept.coords)


def band_of(
    each: Pass,
    *,
    start: float,
    minutes: float,
    litres: float,
    number: int,
    field_id: str,
    sprayer: int = 1,
) -> Band:
    """A pass on the clock as a band of the plan; its edge has no age yet."""
    start = round(start, 4)
    end = round(start + minutes, 4)
    return Band(
        id=f"{field_id}.{number}",
        order=number,
        sprayer=sprayer,
        polygon=polygon_geometry(one_polygon(each.strip.shape)),
        path=paced(each.path, start, end),
        litres=round(litres, 4),
        start_min=start,
        end_min=end,
    )


def paced(path: Sequence[Point], start: float, end: float) -> tuple[TimedPoint, ...]:
    """The path walked at one speed from `start` to `end`; standing still when it is a point."""
    if len(path) == 1 or length_m(path) < 1e-6:
        x, y = path[0]
        return ((x, y, start), (x, y, end))
    xy = np.asarray(path)
    run = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(xy, axis=0).T))])
    when = start + (end - start) * run / run[-1]
    return tuple(
        (float(x), float(y), round(float(t), 4)) for (x, y), t in zip(xy, when, strict=True)
    )


def timed_path(path: Sequence[Point], start: float, pace_m_min: float) -> tuple[TimedPoint, ...]:
    """A walk on the clock at a steady pace."""
    start = round(start, 4)
    return paced(path, start, round(start + length_m(path) / pace_m_min + 0.00005, 4))


class NoDryWay(Unanswerable):
    """Nobody gets dry from `start` to `end`, points of the floor. [m]"""

    def __init__(self, start: Point, end: Point) -> None:
        self.start, self.end = start, end
        super().__init__(
            f"No dry way from ({start[0]:.2f}, {start[1]:.2f}) to ({end[0]:.2f}, {end[1]:.2f}) m."
        )


def route(free: DryGround, start: Point, end: Point) -> tuple[Point, ...]:
    """The shortest dry walk. Raises `NoDryWay` when there is none."""
    path = free.walk(start, end)
    if path is None:
        raise NoDryWay(start, end)
    return rounded(path)


def rounded(path: Sequence[Point]) -> tuple[Point, ...]:
    """Points to a tenth of a millimetre, as plans keep them. [m]"""
    return tuple((round(x, 4), round(y, 4)) for x, y in path)
