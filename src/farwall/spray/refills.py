"""When to fill the tank: as seldom as can be, and where it ages the live edges least."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point
from farwall.spray.routes import gap_m
from farwall.spray.sweep import Sweep

TANK_RESERVE = 0.15
"""Share of a tank that the plan keeps unspent: a slab may drink more. Rank: guess."""
_FEW = 2000
_SHIFTS = (-2, -1, 1, 2)
_HAIR_L = 1e-9
_SLACK_L = 0.01
"""Litres in a plan's file are rounded, so that a filling planned tightly may miss by this."""

Stops = tuple[int, ...]


@dataclass(frozen=True)
class Flow:
    """What a coat drinks and who brings it."""

    coat: str
    l_per_m2: float
    helper: bool
    tools: PlanTools
    still_to_spray_l: float
    """What this field and all later ones of the coat are likely to need."""


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


def refill_stops(
    sweep: Sweep, tank_l: float, flow: Flow, *, now_min: float = 0.0
) -> frozenset[int]:
    """Before which passes the tank, holding `tank_l` now, is filled.

    A filling before the first pass costs no live edge. The fewest fillings
    inside the field; among those, all are tried when they are few, else the
    latest ones are shifted as long as that keeps the edges younger. In
    mid-field (`sweep.begun`, at `now_min`) every filling costs a live edge, and
    those planned before are kept while they last and are as few. Raises
    `Unanswerable` when one band alone needs more than a tank.
    """
    need = tuple(each.wetted_m2 * flow.l_per_m2 for each in sweep.to_spray)
    if not need:
        return frozenset()
    filled = flow.tools.tank_l * (1 - TANK_RESERVE)
    if max(need) > filled + _HAIR_L:
        raise Unanswerable(
            f"One band takes {max(need):.1f} L and a tank gives {filled:.1f} L before its reserve.",
            remedies=["Narrower bands, or a larger tank."],
        )
    now = tank_l - TANK_RESERVE * flow.tools.tank_l
    if sum(need) <= now + _HAIR_L:
        return frozenset()
    if sweep.begun or sweep.stops is not None:
        return _in_mid_day(sweep, _Tank(need, now, filled), flow, now_min)
    options = []
    for begin in (True, False):
        tank = _Tank(need, filled if begin else now, filled)
        latest = tank.latest()
        if latest is not None:
            age, stops = _best(sweep, tank, latest, flow)
            options.append((age, len(stops) + begin, (0, *stops) if begin else stops))
    return frozenset(min(options)[2])


def _in_mid_day(sweep: Sweep, tank: _Tank, flow: Flow, now_min: float) -> frozenset[int]:
    """The fillings of a field that was planned before, the first of its passes maybe sprayed."""
    first = len(sweep.begun)
    options: list[Stops] = []
    for begin in (False, True):
        gives = _Tank(tank.need_l, tank.filled_l if begin else tank.have_l, tank.filled_l)
        latest = gives.latest()
        if latest is not None:
            options.append((0, *latest) if begin else latest)
    fewest = min(len(stops) for stops in options)
    planned = tuple(stop - first for stop in sweep.stops or () if stop >= first)
    slack = _Tank(tank.need_l, tank.have_l + _SLACK_L, tank.filled_l + _SLACK_L)
    if len(planned) <= fewest and slack.lasts(planned):
        return frozenset(stop + first for stop in planned)
    ways: list[Stops] = [stops for stops in options if len(stops) == fewest]
    if math.comb(len(tank.need_l), fewest) <= _FEW:
        every = itertools.combinations(range(len(tank.need_l)), fewest)
        ways = [stops for stops in every if tank.lasts(stops)] or ways
    whole = [tuple(stop + first for stop in stops) for stops in ways]
    return frozenset(min((_aged_from(sweep, stops, flow, now_min), stops) for stops in whole)[1])


def _aged_from(sweep: Sweep, stops: Stops, flow: Flow, now_min: float) -> float:
    """The oldest edge from now on. A filling before the first stroke of a field costs none."""
    live = stops if sweep.begun else tuple(stop for stop in stops if stop)
    return round(age_with_min(sweep, live, flow, now_min=now_min), 2)


def _best(sweep: Sweep, tank: _Tank, latest: Stops, flow: Flow) -> tuple[float, Stops]:
    """The oldest edge and the places of as many fillings as `latest` has."""

    def aged(stops: Stops) -> tuple[float, Stops]:
        return round(age_with_min(sweep, stops, flow), 2), stops

    inner = range(1, len(tank.need_l))
    if math.comb(len(inner), len(latest)) <= _FEW:
        return min(
            aged(stops) for stops in itertools.combinations(inner, len(latest)) if tank.lasts(stops)
        )
    best = aged(latest)
    while True:
        better = min(map(aged, _shifted(best[1], tank)), default=best)
        if better >= best:
            return best
        best = better


def _shifted(stops: Stops, tank: _Tank) -> Iterator[Stops]:
    for index, shift in itertools.product(range(len(stops)), _SHIFTS):
        moved = (*stops[:index], stops[index] + shift, *stops[index + 1 :])
        rising = all(a < b for a, b in itertools.pairwise((0, *moved, len(tank.need_l))))
        if rising and tank.lasts(moved):
            yield moved


def age_with_min(sweep: Sweep, stops: Iterable[int], flow: Flow, *, now_min: float = 0.0) -> float:
    """The oldest edge when fillings fall before these passes, walks out and in guessed. [min]"""
    places = set(stops)
    now = now_min
    times = [(band.start_min, band.end_min - band.start_min) for band in sweep.begun]
    last: Point | None = sweep.begun[-1].path[-1][:2] if sweep.begun else None
    for index, each in enumerate(sweep.to_spray, len(times)):
        if last is not None:
            now += gap_m(last, each.path[0]) / flow.tools.walk_m_min
        if index in places:
            now += _pause_min(sweep, index, flow)
        minutes = each.minutes(flow.tools)
        times.append((now, minutes))
        now += minutes
        last = each.path[-1]
    return sweep.table.peak_age_min(times)


def _pause_min(sweep: Sweep, index: int, flow: Flow) -> float:
    if flow.helper:
        return flow.tools.swap_min
    way_out_m = sweep.depth_m * (len(sweep.passes) - index)
    return flow.tools.refill_min + 2 * way_out_m / flow.tools.walk_m_min
