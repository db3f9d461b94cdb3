"""Fillings of a field that was planned before, the first of its passes maybe sprayed."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.routes import gap_m
from farwall.spray.sweep import Sweep

if TYPE_CHECKING:
    from farwall.spray.refills import Flow

_FEW = 2000
_HAIR_L = 1e-9
_SLACK_L = 0.01
"""Litres in a plan's file are rounded, so that a filling planned tightly may miss by this."""

Stops = tuple[int, ...]


@dataclass(frozen=True)
class _Tank:
    """What each pass takes, and what the tank gives before its reserve: now, and when filled."""

    need_l: tuple[float, ...]
    have_l: float
    filled_l: float

    def lasts(self, stops: Sequence[int]) -> bool:
        """Whether no stretch between fillings takes more than the tank gives."""
        cuts = [0, *stops, len(self.need_l)]
        gives = [self.have_l, *([self.filled_l] * len(stops))]
        return all(
            sum(self.need_l[a:b]) <= tank + _HAIR_L
            for (a, b), tank in zip(itertools.pairwise(cuts), gives, strict=True)
        )

    def latest(self) -> Stops | None:
        """The fewest fillings, each as late as can be; None when the first pass cannot be done."""
        left, stops = self.have_l, []
        for index, need in enumerate(self.need_l):
            if need > left + _HAIR_L:
                if index == 0:
                    return None
                stops.append(index)
                left = self.filled_l
            left -= need
        return tuple(stops)


def stops_again(sweep: Sweep, now_l: float, flow: Flow, now_min: float) -> frozenset[int]:
    """Before which of its passes the tank is filled that gives `now_l` at `now_min`.

    Those planned before are kept while they last: they were weighed with the whole coat.
    In mid-field every filling costs a live edge. Every pass must fit a full tank.
    """
    need = tuple(each.wetted_m2 * flow.l_per_m2 for each in sweep.to_spray)
    if not need:
        return frozenset()
    tank = _Tank(need, now_l, flow.filled_l)
    first = len(sweep.begun)
    options: list[Stops] = []
    for begin in (False, True):
        gives = _Tank(need, tank.filled_l if begin else tank.have_l, tank.filled_l)
        latest = gives.latest()
        if latest is not None:
            options.append((0, *latest) if begin else latest)
    fewest = min(len(stops) for stops in options)
    planned = tuple(stop - first for stop in sweep.stops or () if stop >= first)
    from farwall.spray.refills import DIP

    more_l = DIP * flow.tools.tank_l + _SLACK_L
    slack = _Tank(need, tank.have_l + more_l, tank.filled_l + more_l)
    if slack.lasts(planned):
        return frozenset(stop + first for stop in planned)
    ways: list[Stops] = [stops for stops in options if len(stops) == fewest]
    if math.comb(len(need), fewest) <= _FEW:
        every = itertools.combinations(range(len(need)), fewest)
        ways = [stops for stops in every if tank.lasts(stops)] or ways
    whole = [tuple(stop + first for stop in stops) for stops in ways]
    return frozenset(min((_aged_from(sweep, stops, flow, now_min), stops) for stops in whole)[1])


def _aged_from(sweep: Sweep, stops: Stops, flow: Flow, now_min: float) -> float:
    """The oldest edge from now on. A filling before the first stroke of a field costs none."""
    live = stops if sweep.begun else tuple(stop for stop in stops if stop)
    return round(_age_min(sweep, live, flow, now_min), 2)


def _age_min(sweep: Sweep, stops: Iterable[int], flow: Flow, now_min: float) -> float:
    """The oldest edge when fillings fall before these passes, walks out and in guessed. [min]"""
    from farwall.spray.refills import pause_before_min

    places = set(stops)
    now = now_min
    times = [(band.start_min, band.end_min - band.start_min) for band in sweep.begun]
    last: Point | None = sweep.begun[-1].path[-1][:2] if sweep.begun else None
    for index, each in enumerate(sweep.to_spray, len(times)):
        if last is not None:
            now += gap_m(last, each.path[0]) / flow.tools.walk_m_min
        if index in places:
            now += pause_before_min(sweep, index, flow)
        minutes = each.minutes(flow.tools)
        times.append((now, minutes))
        now += minutes
        last = each.path[-1]
    return sweep.table.peak_age_min(times)
