"""A field planned for two, taken up again: its halves as planned, its fillings while they last.

Nothing is halved anew. Both begin the halves of a band together, as in the morning; where one
has left, the other sprays the halves one after the other.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import replace

from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.nouns import dataclass
from farwall.spray.bands import Strip
from farwall.spray.kept_pass import KeptPass
from farwall.spray.passes import Pass
from farwall.spray.refills import DIP, TANK_RESERVE, Flow
from farwall.spray.routes import gap_m
from farwall.spray.schedule import Day
from farwall.spray.sweep import Sweep, as_turned, turnable
from farwall.spray.turning import best_ways
from farwall.spray.two_sweep import Turn, TwoSweep

_FEW = 2000
_HAIR_L = 1e-9
_SLACK_L = 0.01
"""Litres in a plan's file are rounded, so that a filling planned tightly may miss by this."""

Stops = tuple[int, ...]


def crew_told(sweep: Sweep) -> int | None:
    """How many the plan has put on this field; None where that is not settled yet."""
    kept = [each for each in sweep.passes if isinstance(each, KeptPass)]
    if any(each.sprayer == 2 for each in kept):
        return 2
    return 1 if any(each.crew == 2 for each in kept) or sweep.begun else None


def kept_by_two(sweep: Sweep) -> TwoSweep:
    """The turns that are still to spray, as planned."""
    turns: list[Turn] = []
    passes = list(sweep.to_spray)
    while passes:
        each = passes.pop(0)
        if isinstance(each, KeptPass) and each.with_next and passes:
            pair = (each, passes.pop(0))
            one, two = pair if each.sprayer == 1 else pair[::-1]
            turns.append(Turn(_whole(one, two), (one, two)))
        else:
            by = each.sprayer if isinstance(each, KeptPass) else None
            turns.append(Turn(each, (each,), by))
    return TwoSweep(tuple(turns), sweep.moments, ())


def _whole(one: Pass, two: Pass) -> Pass:
    strip = Strip((*one.strip.parts, *two.strip.parts), one.strip.level)
    return Pass(strip, one.path, one.wetted_m2 + two.wetted_m2)


def one_by_one(sweep: Sweep, tools: PlanTools, *, as_walked: bool = False) -> Sweep:
    """The halves that are left for one person: one after the other, each walked the better way.

    Where none is left for two the sweep is as it was. as_walked: each the way that was planned.
    """
    first = len(sweep.begun)
    if not any(isinstance(each, KeptPass) and each.with_next for each in sweep.to_spray):
        return sweep
    edges = tuple(e for e in sweep.edges if e.then < first or e.first < e.then)
    alone = replace(sweep, edges=edges)
    if as_walked:
        return alone
    onward = replace(sweep, edges=tuple(edge for edge in edges if edge.first < edge.then))
    told = turnable(onward, tools)
    free = tuple(turns and k >= first for k, turns in enumerate(told.turns))
    ways = best_ways(replace(told, turns=free), [(0,) * len(free)]).ways
    return as_turned(alone, [way == 1 for way in ways])


@dataclass(frozen=True)
class _Tanks:
    """What each turn takes of either tank, and what both give before their reserve. [L]"""

    needs_l: tuple[tuple[float, ...], tuple[float, ...]]
    have_l: tuple[float, float]
    filled_l: float

    @property
    def count(self) -> int:
        return len(self.needs_l[0])

    def last(self, stops: Sequence[int], *, more_l: float = 0.0) -> bool:
        """Whether no stretch between fillings takes more than a tank gives."""
        cuts = [0, *stops, self.count]
        for needs, have in zip(self.needs_l, self.have_l, strict=True):
            gives = [have, *([self.filled_l] * len(stops))]
            for (a, b), litres in zip(itertools.pairwise(cuts), gives, strict=True):
                need = sum(needs[a:b])
                if need > max(litres + more_l, 0.0) + _HAIR_L:
                    return False
        return True

    def latest(self, *, full: bool) -> Stops | None:
        """The fewest fillings, each as late as can be; None when the first turn cannot be done."""
        left = [self.filled_l] * 2 if full else list(self.have_l)
        stops: list[int] = [0] if full else []
        for index in range(self.count):
            need = [needs[index] for needs in self.needs_l]
            if any(n > max(has, 0.0) + _HAIR_L for n, has in zip(need, left, strict=True)):
                if index == 0:
                    return None
                stops.append(index)
                left = [self.filled_l] * 2
            left = [has - n for has, n in zip(left, need, strict=True)]
        return tuple(stops)


def stops_for_two(sweep: Sweep, two: TwoSweep, day: Day, flow: Flow) -> frozenset[int]:
    """Before which of the turns left both fill: as planned while that lasts, else chosen again.

    Each choice counts the live edges, walks out and in guessed. Raises `Unanswerable` where one
    half takes more than a tank.
    """
    assert day.second is not None
    reserve = TANK_RESERVE * flow.tools.tank_l
    have = (day.tank_l - reserve, day.second.tank_l - reserve)
    own = _Tanks((_needs(two, flow, 1), _needs(two, flow, 2)), have, flow.filled_l)
    planned = _planned(sweep, two)
    if own.last(planned, more_l=DIP * flow.tools.tank_l + _SLACK_L):
        return frozenset(planned)
    # Either may spray what is for one: both tanks must hold it.
    tanks = replace(
        own, needs_l=(_needs(two, flow, 1, either=True), _needs(two, flow, 2, either=True))
    )
    if max(map(max, tanks.needs_l)) > flow.filled_l + _HAIR_L:
        raise Unanswerable("One half of a band takes more than a tank.")
    options = [found for full in (False, True) if (found := tanks.latest(full=full)) is not None]
    fewest = min(map(len, options))
    ways = [stops for stops in options if len(stops) == fewest]
    if math.comb(tanks.count, fewest) <= _FEW:
        every = itertools.combinations(range(tanks.count), fewest)
        ways = [stops for stops in every if tanks.last(stops)] or ways
    aged = [(_age_min(sweep, two, stops, flow, day.minute), stops) for stops in ways]
    return frozenset(min(aged)[1])


def _needs(two: TwoSweep, flow: Flow, sprayer: int, *, either: bool = False) -> tuple[float, ...]:
    return tuple(
        flow.l_per_m2 * turn.passes[sprayer - 1 if turn.shared else 0].wetted_m2
        if turn.shared or either or turn.by in (None, sprayer)
        else 0.0
        for turn in two.turns
    )


def _planned(sweep: Sweep, two: TwoSweep) -> Stops:
    """The planned fillings by turns that are left."""
    found, number = [], len(sweep.begun)
    for index, turn in enumerate(two.turns):
        inside = range(number, number + len(turn.passes))
        if any(stop in inside for stop in sweep.stops or ()):
            found.append(index)
        number += len(turn.passes)
    return tuple(found)


def _age_min(sweep: Sweep, two: TwoSweep, stops: Stops, flow: Flow, now_min: float) -> float:
    """The oldest edge from now on, to 0.01 min. Before the first stroke a filling costs none."""
    now = now_min
    times = [(band.start_min, band.end_min - band.start_min) for band in sweep.begun]
    tools, count = flow.tools, len(two.turns)
    before: Turn | None = None
    for index, turn in enumerate(two.turns):
        if before is not None:
            now += _hop_m(before, turn) / tools.walk_m_min
        if index in stops and (index or sweep.begun):
            pause = 2 * tools.swap_min if flow.swaps else tools.refill_min
            now += pause + 2 * sweep.depth_m * (count - index) / tools.walk_m_min
        times += [(now, each.minutes(tools)) for each in turn.passes]
        now += turn.minutes(tools)
        before = turn
    return round(sweep.table.peak_age_min(times), 2)


def _hop_m(one: Turn, two: Turn) -> float:
    gaps = [gap_m(a.path[-1], b.path[0]) for a in one.passes for b in two.passes]
    return max(gaps[0], gaps[3]) if len(gaps) == 4 else min(gaps)
