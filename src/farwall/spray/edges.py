"""Live edges: where two passes meet, and how old the first is when the second arrives."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.spray.bands import Strips
from farwall.spray.passes import Pass
from farwall.spray.routes import length_m

_EDGE_STEP_M = 0.04


@dataclass(frozen=True)
class Edge:
    """A live edge: passes `first` and `then` meet at points, each at these shares of its path."""

    first: int
    then: int
    first_share: tuple[float, ...]
    then_share: tuple[float, ...]


def edges_of(cut: Strips, order: Sequence[int], passes: Sequence[Pass]) -> tuple[Edge, ...]:
    """Every live edge of the passes, the pass sprayed first named first."""
    position = {strip: place for place, strip in enumerate(order)}
    edges = []
    for border in cut.borders:
        first, then = sorted((position[border.far], position[border.near]))
        points = _samples(border.line)
        edges.append(
            Edge(
                first,
                then,
                shares(passes[first].path, points, standing=0.0),
                shares(passes[then].path, points, standing=1.0),
            )
        )
    return tuple(edges)


def _samples(line: BaseGeometry) -> npt.NDArray[np.object_]:
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
    where = shapely.line_locate_point(shapely.LineString(path), points)
    return tuple(float(w) / length for w in where)


def flipped(share: tuple[float, ...], *, turned: bool) -> tuple[float, ...]:
    """The shares when the path is walked the other way round."""
    return tuple(1.0 - value for value in share) if turned else share


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
        if not len(self._first):
            return 0.0
        start, minutes = np.array(times).T
        first, then = self._first_share, self._then_share
        if turned is not None:
            around = np.array(turned)
            first = np.where(around[self._first], 1 - first, first)
            then = np.where(around[self._then], 1 - then, then)
        met = start[self._then] + minutes[self._then] * then
        made = start[self._first] + minutes[self._first] * first
        return max(0.0, float((met - made).max()))


def peak_age_min(edges: Sequence[Edge], times: Sequence[tuple[float, float]]) -> float:
    """The greatest age of any edge; `times` gives start and duration of each pass in minutes."""
    return EdgeTable(edges).peak_age_min(times)
