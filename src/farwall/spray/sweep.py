"""One field swept: its strips in order, the passes over them, and its live edges.

Nothing here knows the hour, the tank or the coat; `schedule` adds them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cached_property
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from farwall.facts.plan import Band, PlanTools
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.bands import Strips
from farwall.spray.bound import least_front_m, strongest_bound_m
from farwall.spray.edges import Edge, EdgeTable, Moments, flipped, moments_of
from farwall.spray.front import Front, Ground
from farwall.spray.passes import Pass
from farwall.spray.routes import gap_m
from farwall.spray.tank_run import TankRun
from farwall.spray.turning import Turnable, best_ways
from farwall.spray.world import Seam, World

_OVERLAP_SHARE = 1.25
_TANK_SHARE = 0.85
_STANDS_M = 1e-6


@dataclass(frozen=True)
class Sweep:
    """A field swept toward one seam."""

    pieces: tuple[str, ...]
    exit: Seam
    passes: tuple[Pass, ...]
    edges: tuple[Edge, ...]
    depth_m: float
    ground: Ground | None
    front: Front
    begun: tuple[Band, ...] = ()
    """In mid-day: the first of its bands, sprayed already, with their true times."""
    stops: tuple[int, ...] | None = None
    """In mid-day: before which passes it was planned to fill; kept where that still lasts."""
    told_bound_m: float | None = None
    """In mid-day: the bound that was proved in the morning; nobody draws its ground again."""

    @cached_property
    def table(self) -> EdgeTable:
        """Its edges, made ready to be asked for their age."""
        return EdgeTable(self.edges)

    @cached_property
    def moments(self) -> tuple[Moments, ...]:
        """When its passes reach their edges, exactly."""
        return moments_of(self.edges, self.passes)

    @cached_property
    def tank_runs(self) -> dict[tuple[float, bool, PlanTools], TankRun]:
        """As a tank sees it, found so far: by thirst [L/m2], whether tanks are swapped, tools."""
        return {}

    @cached_property
    def bound_m(self) -> float:
        """A front that no sweep of this field toward this exit can undercut (`bound`)."""
        if self.ground is None:
            return self.told_bound_m or 0.0
        bounds, depth_m = self.ground.bounds_m, self.ground.ball.depth_m
        if depth_m not in bounds:
            bounds[depth_m] = least_front_m(self.ground, depth_m)
        return bounds[depth_m]

    @cached_property
    def strongest_bound_m(self) -> float:
        """The same by every bound that is known: slower."""
        if self.ground is None:
            return self.bound_m
        return strongest_bound_m(self.ground, self.ground.ball.depth_m)

    @property
    def wetted_m2(self) -> float:
        """Floor and overlap together."""
        return sum(each.wetted_m2 for each in self.passes)

    @property
    def to_spray(self) -> tuple[Pass, ...]:
        """Its passes that are not yet sprayed."""
        return self.passes[len(self.begun) :]

    @property
    def left_m2(self) -> float:
        """Floor and overlap that are not yet sprayed."""
        return sum(each.wetted_m2 for each in self.to_spray)

    @property
    def area_m2(self) -> float:
        """Floor of the field."""
        return sum(each.strip.area_m2 for each in self.passes)


def one_tank_m2(tools: PlanTools, l_per_m2: float) -> float:
    """Floor that a full tank covers before its reserve, its overlaps counted. [m2]"""
    return tools.tank_l * _TANK_SHARE / (l_per_m2 * _OVERLAP_SHARE)


@dataclass(frozen=True)
class Laid:
    """A field cut into strips and put in order, before anybody walks on it.

    `world` is the house with the field's own saw cuts closed: inside a field
    nothing stops at them.
    """

    world: World
    pieces: tuple[str, ...]
    exit: Seam
    ground: Ground
    front: Front
    cut: Strips
    order: tuple[int, ...]
    longest_wait_min: float
    """From the start of a strip to the start of its neighbour: a first guess at the oldest edge."""

    @property
    def area_m2(self) -> float:
        """Floor of the field."""
        return sum(strip.area_m2 for strip in self.cut.strips)


def turn_passes(sweep: Sweep, tools: PlanTools) -> tuple[Sweep, tuple[float, float]]:
    """The sweep with each pass walked the way round that keeps the oldest edge youngest.

    With it that age, without refills, and all walking between passes. [min]
    Exact over all ways round, to 0.001 min (`turning`).
    """
    ways = best_ways(turnable(sweep, tools), _ways_round(sweep)).ways
    turned = [way == 1 for way in ways]
    found = as_turned(sweep, turned)
    return found, _oldest(sweep, turned, tools)


def as_turned(sweep: Sweep, turned: Sequence[bool]) -> Sweep:
    """The sweep with these passes walked the other way round."""
    passes = tuple(
        replace(each, path=each.path[::-1]) if flip else each
        for each, flip in zip(sweep.passes, turned, strict=True)
    )
    edges = tuple(
        replace(
            edge,
            first_share=flipped(edge.first_share, turned=turned[edge.first]),
            then_share=flipped(edge.then_share, turned=turned[edge.then]),
        )
        for edge in sweep.edges
    )
    return replace(sweep, passes=passes, edges=edges)


def _ways_round(sweep: Sweep) -> list[tuple[int, ...]]:
    """Ways to begin with: as laid; or so that all passes go one way; or all the other."""
    one_way: list[int] = []
    before: tuple[float, float] | None = None
    for each in sweep.passes:
        dx, dy = (b - a for a, b in zip(each.path[0], each.path[-1], strict=True))
        turn = before is not None and dx * before[0] + dy * before[1] < 0
        one_way.append(int(turn))
        if dx or dy:
            before = (-dx, -dy) if turn else (dx, dy)
    moves = [each.length_m >= _STANDS_M for each in sweep.passes]
    ways = [[0] * len(moves), one_way, [1 - turn for turn in one_way]]
    return [tuple(turn * move for turn, move in zip(way, moves, strict=True)) for way in ways]


def turnable(sweep: Sweep, tools: PlanTools) -> Turnable:
    """Its passes as numbers for `turning`."""
    minutes = tuple(each.minutes(tools) for each in sweep.passes)
    ends = [((p.path[0], p.path[-1]), (p.path[-1], p.path[0])) for p in sweep.passes]
    hops = [np.zeros((2, 2))]
    for one, two in pairwise(ends):
        hops.append(np.array([[gap_m(a[1], b[0]) for b in two] for a in one]) / tools.walk_m_min)
    edges: dict[tuple[int, int], npt.NDArray[np.float64]] = {}
    for edge in sweep.edges:
        made, met = np.array(edge.first_share), np.array(edge.then_share)
        m, n = minutes[edge.first], minutes[edge.then]
        ways = np.array([[(n * b - m * a).max() for b in (met, 1 - met)] for a in (made, 1 - made)])
        pair = (edge.first, edge.then)
        edges[pair] = np.maximum(edges[pair], ways) if pair in edges else ways
    turns = tuple(each.length_m >= _STANDS_M for each in sweep.passes)
    return Turnable(minutes, tuple(hops), turns, edges)


def _oldest(sweep: Sweep, turned: Sequence[bool], tools: PlanTools) -> tuple[float, float]:
    """Peak age without refills, then all walking between passes, in minutes."""
    start, now, walked = [], 0.0, 0.0
    last: Point | None = None
    for each, flip in zip(sweep.passes, turned, strict=True):
        path = each.path[::-1] if flip else each.path
        if last is not None:
            hop = gap_m(last, path[0]) / tools.walk_m_min
            now, walked = now + hop, walked + hop
        minutes = each.minutes(tools)
        start.append((now, minutes))
        now += minutes
        last = path[-1]
    return (round(sweep.table.peak_age_min(start, turned), 3), round(walked, 4))


def pause_min(tools: PlanTools, *, helper: bool, way_m: float) -> float:
    """What one refill adds to a live edge: a swap, or a walk out `way_m`, a filling, a walk in."""
    if helper:
        return tools.swap_min
    return tools.refill_min + 2 * way_m / tools.walk_m_min
