"""A field swept by two: which band is halved, who has which half, and which way both go.

One always has the halves on the same side as the last, so that neither crosses the
other's way. Both begin a band in the same minute, at its ends or in its middle,
whichever keeps the live edges younger over the whole field (`turning`, exactly,
walks told straight). What two have no room for is sprayed by one.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

import numpy as np
import numpy.typing as npt
import shapely

from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.edges import Edge, Moments, moments_of, samples, shares
from farwall.spray.halves import Half, apart_all_along, halves_of
from farwall.spray.passes import Pass
from farwall.spray.routes import gap_m
from farwall.spray.sweep import Sweep
from farwall.spray.turning import Turnable, best_ways
from farwall.spray.world import rounded

_MEET_M = 0.005
_MOVES_M = 1e-6


@dataclass(frozen=True)
class Turn:
    """One band of the sweep: its passes are two halves, sprayed together, or one.

    `whole` is the band as one would spray it.
    """

    whole: Pass
    passes: tuple[Pass, ...]
    by: int | None = None
    """Who was planned to spray it alone; None: whoever is nearer."""

    @property
    def shared(self) -> bool:
        """Whether two spray it."""
        return len(self.passes) == 2

    def minutes(self, tools: PlanTools) -> float:
        """Until both are done."""
        return max(each.minutes(tools) for each in self.passes)


@dataclass(frozen=True)
class TwoSweep:
    """The bands in order, and where their passes, numbered in that order, meet."""

    turns: tuple[Turn, ...]
    moments: tuple[Moments, ...]
    pairs: tuple[tuple[int, int, float], ...]
    """Turns that meet, and the age of their edge when nothing interrupts. [min]"""

    @property
    def shared(self) -> bool:
        """Whether there is a band for two at all."""
        return any(turn.shared for turn in self.turns)


def swept_by_two(sweep: Sweep, tools: PlanTools) -> TwoSweep:
    """The same bands in the same order, halved where two have room."""
    laid = _Laid.of(sweep, tools)
    turnable = laid.turnable()
    count = len(laid.turns)
    known = [(0,) * count, tuple(int(turns) for turns in turnable.turns)]
    ways = best_ways(turnable, known).ways
    turns = tuple(_turned(turn, way) for turn, way in zip(laid.turns, ways, strict=True))
    passes = [each for turn in turns for each in turn.passes]
    moments = moments_of([_told(each, passes) for each in laid.edges], passes)
    starts = [0.0]
    for k in range(1, count):
        hop = float(turnable.hops_min[k][ways[k - 1], ways[k]])
        starts.append(starts[-1] + turnable.minutes[k - 1] + hop)
    pairs = tuple(
        (i, j, starts[j] - starts[i] + float(age[ways[i], ways[j]]))
        for (i, j), age in sorted(turnable.edges.items())
    )
    return TwoSweep(turns, moments, pairs)


def _turned(turn: Turn, way: int) -> Turn:
    if not way:
        return turn
    return replace(turn, passes=tuple(replace(each, path=each.path[::-1]) for each in turn.passes))


def _told(edge: Edge, passes: Sequence[Pass]) -> Edge:
    """The edge with its shares on these paths."""
    where = np.asarray(shapely.points(edge.points))
    return replace(
        edge,
        first_share=shares(passes[edge.first].path, where, standing=0.0),
        then_share=shares(passes[edge.then].path, where, standing=1.0),
    )


@dataclass(frozen=True)
class _Laid:
    """The bands before it is settled which way round each is walked."""

    turns: tuple[Turn, ...]
    turns_round: tuple[bool, ...]
    edges: tuple[Edge, ...]
    first: tuple[int, ...]
    """The number of the first pass of each turn."""
    tools: PlanTools

    @staticmethod
    def of(sweep: Sweep, tools: PlanTools) -> _Laid:
        turns, turns_round = [], []
        for each, path in zip(sweep.passes, _sides_kept(sweep.passes), strict=True):
            turn, both_ways = _turn(sweep, each, path, tools)
            turns.append(turn)
            turns_round.append(both_ways)
        first = np.concatenate([[0], np.cumsum([len(turn.passes) for turn in turns])]).tolist()
        edges = tuple(_sub_edges(sweep, turns, first))
        return _Laid(tuple(turns), tuple(turns_round), edges, tuple(first[:-1]), tools)

    def turnable(self) -> Turnable:
        """The turns as numbers; edges inside a band are left out, both being sprayed at once."""
        owner = [k for k, turn in enumerate(self.turns) for _ in turn.passes]
        passes = [each for turn in self.turns for each in turn.passes]
        edges: dict[tuple[int, int], npt.NDArray[np.float64]] = {}
        for edge in self.edges:
            pair = (owner[edge.first], owner[edge.then])
            if pair[0] == pair[1]:
                continue
            told = _told(edge, passes)
            made, met = np.array(told.first_share), np.array(told.then_share)
            m, n = (passes[i].minutes(self.tools) for i in (edge.first, edge.then))
            ages = [[(n * b - m * a).max() for b in (met, 1 - met)] for a in (made, 1 - made)]
            edges[pair] = np.maximum(edges.get(pair, -np.inf), np.array(ages))
        hops = [np.zeros((2, 2))]
        for one, two in pairwise(self.turns):
            hop = [[_hop_m(_turned(one, a), _turned(two, b)) for b in (0, 1)] for a in (0, 1)]
            hops.append(np.array(hop) / self.tools.walk_m_min)
        minutes = tuple(turn.minutes(self.tools) for turn in self.turns)
        return Turnable(minutes, tuple(hops), self.turns_round, edges)


def _sides_kept(passes: Sequence[Pass]) -> list[tuple[Point, ...]]:
    """Each path the way round in which its ends lie nearest to those of the one before."""
    paths: list[tuple[Point, ...]] = []
    for each in passes:
        path = each.path
        if paths:
            (a, b), (c, d) = (paths[-1][0], paths[-1][-1]), (path[0], path[-1])
            if gap_m(a, d) + gap_m(b, c) < gap_m(a, c) + gap_m(b, d):
                path = path[::-1]
        paths.append(path)
    return paths


def _turn(sweep: Sweep, each: Pass, path: tuple[Point, ...], tools: PlanTools) -> tuple[Turn, bool]:
    """A band halved, or whole; and whether it may be walked both ways round."""
    halves = halves_of(each, path, tools)
    if halves is not None:
        passes = _wetted(sweep, each, halves, tools)
        minutes = (passes[0].minutes(tools), passes[1].minutes(tools))
        inward, outward = (apart_all_along(halves, minutes, inward=way) for way in (True, False))
        turn = Turn(each, passes)
        if inward:
            return turn, outward
        if outward:
            return _turned(turn, 1), False
    return Turn(each, (each,)), each.length_m >= _MOVES_M


def _wetted(
    sweep: Sweep, each: Pass, halves: tuple[Half, Half], tools: PlanTools
) -> tuple[Pass, Pass]:
    """The halves as passes: the overlap on earlier bands shared out, and one laps on the other."""
    index = sweep.passes.index(each)
    points = [p for edge in sweep.edges if edge.then == index for p in edge.points]
    overlap_m2 = each.wetted_m2 - each.strip.area_m2
    shared_m2 = _between(halves[0], halves[1]).length * tools.overlap_m
    mine = float(np.mean(_nearer(halves, points))) if points else 0.5
    return (
        Pass(halves[0].strip, halves[0].path, halves[0].strip.area_m2 + mine * overlap_m2),
        Pass(
            halves[1].strip,
            halves[1].path,
            halves[1].strip.area_m2 + (1 - mine) * overlap_m2 + shared_m2,
        ),
    )


def _nearer(halves: Sequence[Half | Pass], points: Sequence[Point]) -> npt.NDArray[np.bool_]:
    """For each place whether the first half is the nearer one."""
    where = shapely.points(points)
    away = [shapely.distance(half.strip.shape, where) for half in halves]
    return np.asarray(away[0] <= away[1])


def _between(one: Half | Pass, two: Half | Pass) -> shapely.geometry.base.BaseGeometry:
    """Where two halves of a band meet."""
    return shapely.intersection(one.strip.shape.boundary, rounded(two.strip.shape, _MEET_M))


def _sub_edges(sweep: Sweep, turns: Sequence[Turn], first: Sequence[int]) -> Iterator[Edge]:
    """The edges of the sweep parted between the halves, and those between two halves.

    Of the latter either half may meet the other; both are told.
    """
    for edge in sweep.edges:
        groups: dict[tuple[int, int], list[Point]] = {}
        sides = [_side(turns[k], edge.points) for k in (edge.first, edge.then)]
        for point, a, b in zip(edge.points, *sides, strict=True):
            groups.setdefault((first[edge.first] + a, first[edge.then] + b), []).append(point)
        for (one, two), points in groups.items():
            yield Edge(one, two, (), (), tuple(points))
    for turn, number in zip(turns, first, strict=False):
        if turn.shared:
            line = _between(turn.passes[0], turn.passes[1])
            places = tuple((float(p.x), float(p.y)) for p in samples(line))
            if places:
                yield Edge(number, number + 1, (), (), places)
                yield Edge(number + 1, number, (), (), places)


def _side(turn: Turn, points: Sequence[Point]) -> list[int]:
    if not turn.shared:
        return [0] * len(points)
    return [int(not first) for first in _nearer(turn.passes, points)]


def _hop_m(one: Turn, two: Turn) -> float:
    """The longer of both walks between two bands; the shorter where one is sprayed by one."""
    gaps = [gap_m(a.path[-1], b.path[0]) for a in one.passes for b in two.passes]
    if one.shared and two.shared:
        return max(gaps[0], gaps[3])
    return min(gaps)
