"""Live edges: where two passes meet, and how old the first is when the second arrives."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.bands import Strips
from farwall.spray.passes import Pass
from farwall.spray.routes import length_m

_EDGE_STEP_M = 0.04
_LEAP_M = 0.3
"""Where the nearest place of a path moves on by more than this, it leaps to another part of it."""
_HALVINGS = 18
_HAIR_M = 1e-6

Places = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Edge:
    """A live edge: passes `first` and `then` meet at points, each at these shares of its path."""

    first: int
    then: int
    first_share: tuple[float, ...]
    then_share: tuple[float, ...]
    points: tuple[Point, ...] = ()


def edges_of(cut: Strips, order: Sequence[int], passes: Sequence[Pass]) -> tuple[Edge, ...]:
    """Every live edge of the passes, the pass sprayed first named first."""
    position = {strip: place for place, strip in enumerate(order)}
    edges = []
    for border in cut.borders:
        first, then = sorted((position[border.far], position[border.near]))
        points = samples(border.line)
        edges.append(
            Edge(
                first,
                then,
                shares(passes[first].path, points, standing=0.0),
                shares(passes[then].path, points, standing=1.0),
                tuple((x, y) for x, y in shapely.get_coordinates(points).tolist()),
            )
        )
    return tuple(edges)


def samples(line: BaseGeometry) -> npt.NDArray[np.object_]:
    """Places along a line, a few centimetres apart."""
    dense = shapely.segmentize(line, _EDGE_STEP_M)
    return np.asarray(shapely.points(shapely.get_coordinates(dense)))


def shares(
    path: Sequence[Point], points: npt.NDArray[np.object_], *, standing: float
) -> tuple[float, ...]:
    """For each point the share (0 to 1) of the path walked when the path is nearest to it.

    A person who stands still may spray a point at any moment of the stand:
    `standing` is the share that is then taken, the worse one for the edge.
    """
    length = length_m(path)
    if length < 1e-6:
        return tuple(standing for _ in points)
    where = shapely.line_locate_point(shapely.linestrings(path), points)
    return tuple(w / length for w in where.tolist())


def flipped(share: tuple[float, ...], *, turned: bool) -> tuple[float, ...]:
    """The shares when the path is walked the other way round."""
    return tuple(1.0 - value for value in share) if turned else share


@dataclass(frozen=True)
class Moments:
    """When two passes reach the places of their edge: shares of their paths, worse ones kept.

    made, met: 2 x n, for each place the first and the last share at which a
    path is nearest to it. points: n x 2, the places. [m]
    """

    first: int
    then: int
    made: Places
    met: Places
    points: Places

    def waits_min(self, times: Sequence[tuple[float, float]]) -> tuple[Places, Places]:
        """When each place is made and when it is met; times: start and duration of each pass."""
        (start, minutes), (later, taken) = times[self.first], times[self.then]
        return start + minutes * self.made.min(axis=0), later + taken * self.met.max(axis=0)

    def oldest_min(self, times: Sequence[tuple[float, float]]) -> float:
        """The greatest age along the edge; times: start and duration of each pass. [min]"""
        made, met = self.waits_min(times)
        return float((met - made).max())


def moments_of(edges: Sequence[Edge], passes: Sequence[Pass]) -> tuple[Moments, ...]:
    """The moments of every edge, exact.

    Where a path comes equally near twice along a stretch of the edge, the worse
    moment counts: the earlier one of the pass that went first, the later one of
    the pass that meets it. Where it leaps from one part of the path to another at
    a single place, that place is sought and told from either side. Between neighbours the nearest
    places of both paths then move evenly, so that no age is greater than at one of them; but for
    leaps of less than `_LEAP_M`.
    """
    found = []
    for edge in edges:
        one, two = passes[edge.first].path, passes[edge.then].path
        along = np.array(edge.points)
        turns = np.vstack([np.empty((0, 2)), *_turns(one, along), *_turns(two, along)])
        points = np.vstack([along, turns, *_leaps(one, along), *_leaps(two, along)])
        where = np.asarray(shapely.points(points))
        made, met = _moments(one, where), _moments(two, where)
        kept = np.ones(len(points), dtype=bool)
        count, rest = len(along), len(along) + len(turns)
        for moments, path in ((made, one), (met, two)):
            kept[:count] &= ~_lone_ties(moments[:, :count], path)
            kept[count:rest] &= ~_ties(moments[:, count:rest], path)
        if not kept.any():
            kept[:] = True
        found.append(Moments(edge.first, edge.then, made[:, kept], met[:, kept], points[kept]))
    return tuple(found)


def _lone_ties(moments: Places, path: Sequence[Point]) -> npt.NDArray[np.bool_]:
    """Places that a path is equally near to twice, though it is not so beside them."""
    tied = _ties(moments, path)
    if len(tied) < 2 or length_m(path) < 1e-6:
        return np.zeros(len(tied), dtype=bool)
    beside = np.concatenate([[False], tied[:-1]]) | np.concatenate([tied[1:], [False]])
    return np.asarray(tied & ~beside)


def _ties(moments: Places, path: Sequence[Point]) -> npt.NDArray[np.bool_]:
    """Places that a path is equally near to twice."""
    return np.asarray(np.abs(moments[1] - moments[0]) * length_m(path) > _LEAP_M)


def _turns(path: Sequence[Point], points: Places) -> Iterator[Places]:
    """Places of an edge, straight between `points`, square to an end of a leg of the path."""
    corners = np.array(path)
    legs = np.diff(corners, axis=0)
    apart = np.hypot(*np.diff(points, axis=0).T)
    for ends in (corners[:-1], corners[1:]):
        ahead = points @ legs.T - (ends * legs).sum(axis=1)
        before, after = ahead[:-1], ahead[1:]
        crossed = (before * after < 0) & (apart <= 2 * _EDGE_STEP_M)[:, None]
        at, leg = np.nonzero(crossed)
        share = before[at, leg] / (before[at, leg] - after[at, leg])
        yield points[at] + share[:, None] * (points[at + 1] - points[at])


def ages_by_pass_min(
    moments: Sequence[Moments], times: Sequence[tuple[float, float]]
) -> list[float]:
    """For each pass the greatest age at which it meets an edge sprayed before it.

    times: start and duration of each pass [min].
    """
    oldest = [0.0] * len(times)
    for each in moments:
        oldest[each.then] = max(oldest[each.then], each.oldest_min(times))
    return oldest


def _leaps(path: Sequence[Point], points: npt.NDArray[np.float64]) -> Iterator[Places]:
    """Pairs of places, a hair apart, between which the nearest part of a path is another."""
    length = length_m(path)
    if length < 1e-6:
        return
    line = shapely.linestrings(path)
    share = _share(line, length, points)
    apart = np.hypot(*np.diff(points, axis=0).T)
    leaps = (np.abs(np.diff(share)) * length > _LEAP_M) & (apart <= 2 * _EDGE_STEP_M)
    index = np.flatnonzero(leaps)
    if not len(index):
        return
    low, high = points[index], points[index + 1]
    at_low, at_high = share[index], share[index + 1]
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        here = _share(line, length, middle)
        nearer = np.abs(here - at_low) > np.abs(at_high - here)
        high, at_high = np.where(nearer[:, None], middle, high), np.where(nearer, here, at_high)
        low, at_low = np.where(nearer[:, None], low, middle), np.where(nearer, at_low, here)
    # A hair back on either side: the very place is nearest to both parts.
    hair = _HAIR_M * (points[index + 1] - points[index]) / apart[index][:, None]
    yield from np.stack([low - hair, high + hair], axis=1)


def _share(
    line: shapely.LineString, length: float, points: npt.NDArray[np.float64]
) -> npt.NDArray[np.float64]:
    where = shapely.line_locate_point(line, np.asarray(shapely.points(points)))
    return np.asarray(where) / length


def _moments(path: Sequence[Point], points: npt.NDArray[np.object_]) -> npt.NDArray[np.float64]:
    """The first and the last share of a path at which it is nearest to each point."""
    length = length_m(path)
    if length < 1e-6:
        return np.repeat([[0.0], [1.0]], len(points), axis=1)
    there = shapely.line_locate_point(shapely.linestrings(path), points)
    back = length - shapely.line_locate_point(shapely.linestrings(path[::-1]), points)
    return np.array([there, back]) / length


class EdgeTable:
    """All points of all edges as columns, to be asked many times for their greatest age."""

    def __init__(self, edges: Sequence[Edge]) -> None:
        sizes = [len(edge.first_share) for edge in edges]
        self._first = np.repeat([edge.first for edge in edges], sizes).astype(int)
        self._then = np.repeat([edge.then for edge in edges], sizes).astype(int)
        self._first_share = np.array([share for edge in edges for share in edge.first_share])
        self._then_share = np.array([share for edge in edges for share in edge.then_share])

    def peak_age_min(
        self, times: Sequence[tuple[float, float]], turned: Sequence[bool] | None = None
    ) -> float:
        """The greatest age; `times` gives start and duration of each pass in minutes.

        turned: passes walked the other way round than the shares say.
        """
        ages = self._ages(times, turned)
        return max(0.0, float(ages.max())) if len(ages) else 0.0

    def ages_by_pair(
        self, times: Sequence[tuple[float, float]]
    ) -> Iterator[tuple[int, int, float]]:
        """Each two passes that meet, the first before the second, and their greatest age. [min]"""
        pairs: dict[tuple[int, int], float] = {}
        ages = self._ages(times, None).tolist()
        for first, then, age in zip(self._first.tolist(), self._then.tolist(), ages, strict=True):
            pairs[first, then] = max(pairs.get((first, then), age), age)
        for (first, then), age in sorted(pairs.items()):
            yield first, then, age

    def _ages(
        self, times: Sequence[tuple[float, float]], turned: Sequence[bool] | None
    ) -> npt.NDArray[np.float64]:
        if not len(self._first):
            return np.zeros(0)
        start, minutes = np.array(times).T
        first, then = self._first_share, self._then_share
        if turned is not None:
            around = np.array(turned)
            first = np.where(around[self._first], 1 - first, first)
            then = np.where(around[self._then], 1 - then, then)
        met = start[self._then] + minutes[self._then] * then
        made = start[self._first] + minutes[self._first] * first
        return np.asarray(met - made)


def peak_age_min(edges: Sequence[Edge], times: Sequence[tuple[float, float]]) -> float:
    """The greatest age of any edge; `times` gives start and duration of each pass in minutes."""
    return EdgeTable(edges).peak_age_min(times)
