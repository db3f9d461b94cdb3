"""One field swept: its strips in order, the passes over them, and its live edges.

Nothing here knows the hour, the tank or the coat; `schedule` adds them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point
from farwall.spray.bands import Strips
from farwall.spray.bound import least_front_m, strongest_bound_m
from farwall.spray.edges import Edge, EdgeTable, Moments, flipped, moments_of
from farwall.spray.front import Front, Ground
from farwall.spray.passes import Pass
from farwall.spray.routes import gap_m
from farwall.spray.world import Seam, World

_OVERLAP_SHARE = 1.25
_TANK_SHARE = 0.85
_STANDS_M = 1e-6
_ROUNDS = 3
_CLIMBS = 2


@dataclass(frozen=True)
class Sweep:
    """A field swept toward one seam."""

    pieces: tuple[str, ...]
    exit: Seam
    passes: tuple[Pass, ...]
    edges: tuple[Edge, ...]
    depth_m: float
    ground: Ground
    front: Front

    @cached_property
    def table(self) -> EdgeTable:
        """Its edges, made ready to be asked for their age."""
        return EdgeTable(self.edges)

    @cached_property
    def moments(self) -> tuple[Moments, ...]:
        """When its passes reach their edges, exactly."""
        return moments_of(self.edges, self.passes)

    @cached_property
    def bound_m(self) -> float:
        """A front that no sweep of this field toward this exit can undercut (`bound`)."""
        return least_front_m(self.ground, self.ground.ball.depth_m)

    @cached_property
    def strongest_bound_m(self) -> float:
        """The same by every bound that is known: slower."""
        return strongest_bound_m(self.ground, self.ground.ball.depth_m)

    @property
    def wetted_m2(self) -> float:
        """Floor and overlap together."""
        return sum(each.wetted_m2 for each in self.passes)

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
    """
    starts = sorted((_oldest(sweep, turned, tools), turned) for turned in _ways_round(sweep))
    best, turned = min(_climbed(sweep, way, age, tools) for age, way in starts[:_CLIMBS])
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
    return replace(sweep, passes=passes, edges=edges), best


def _ways_round(sweep: Sweep) -> list[list[bool]]:
    """Which passes to turn to begin with: none; or so that all go one way; or all the other."""
    one_way: list[bool] = []
    before: tuple[float, float] | None = None
    for each in sweep.passes:
        dx, dy = (b - a for a, b in zip(each.path[0], each.path[-1], strict=True))
        turn = before is not None and dx * before[0] + dy * before[1] < 0
        one_way.append(turn)
        if dx or dy:
            before = (-dx, -dy) if turn else (dx, dy)
    moves = [each.length_m >= _STANDS_M for each in sweep.passes]
    ways = [[False] * len(moves), one_way, [not turn for turn in one_way]]
    return [[turn and move for turn, move in zip(way, moves, strict=True)] for way in ways]


def _climbed(
    sweep: Sweep, turned: list[bool], best: tuple[float, float], tools: PlanTools
) -> tuple[tuple[float, float], list[bool]]:
    """Passes turned one or two at a time as long as that makes the oldest edge younger."""
    moves = [each.length_m >= _STANDS_M for each in sweep.passes]
    for _ in range(_ROUNDS):
        before = best
        for index in (i for i, move in enumerate(moves) if move):
            for span in (1, 2):
                trial = list(turned)
                for each in range(index, min(index + span, len(turned))):
                    trial[each] = trial[each] != moves[each]
                found = _oldest(sweep, trial, tools)
                if found < best:
                    turned, best = trial, found
        if best == before:
            break
    return best, turned


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


def swept_age_min(sweep: Sweep, tools: PlanTools) -> float:
    """The oldest edge of the sweep when nothing interrupts it, in minutes."""
    return _oldest(sweep, [False] * len(sweep.passes), tools)[0]


def pause_min(tools: PlanTools, *, helper: bool, way_m: float) -> float:
    """What one refill adds to a live edge: a swap, or a walk out `way_m`, a filling, a walk in."""
    if helper:
        return tools.swap_min
    return tools.refill_min + 2 * way_m / tools.walk_m_min
