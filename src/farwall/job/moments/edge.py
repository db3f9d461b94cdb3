"""The live edge: where wet floor meets floor still to be sprayed, and how long it has waited."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Band, Field
from farwall.floor.geometry import Point
from farwall.job.moments.passing import passing_min
from farwall.nouns import dataclass

_STEP_M = 0.05
_MEET_M = 0.012
"""Bands that lie this near to each other meet: their corners are rounded to a tenth of that."""
_LEAST_M = 0.02
_ROUGHLY_MIN = 0.1
"""How much younger than told an edge may come out by places 5 cm apart."""
_OLD_SHARE = 0.85
"""Of an edge at its oldest, what is at least this share of the age is shown with it."""


@dataclass(frozen=True)
class LiveEdge:
    """Lines of a live edge [m]; the place, age and minute at which it is oldest."""

    line: BaseGeometry
    at: Point
    age_min: float
    at_min: float


def live_edge_at(
    field: Field, minute: float, sprayed: Sequence[tuple[Band, BaseGeometry]]
) -> LiveEdge | None:
    """The live edge of a field at a minute, None where nothing is live.

    sprayed: the bands begun by then, each with the part of it that is sprayed [m].
    """
    wet = shapely.union_all([shape for _, shape in sprayed])
    floor = [band.polygon.shape for band in field.bands]
    rest = shapely.difference(shapely.union_all(floor), wet.buffer(_MEET_M))
    parts = [part for part in shapely.get_parts(rest).tolist() if part.area > _LEAST_M]
    if wet.is_empty or not parts:
        return None
    line = shapely.intersection(wet.boundary, shapely.union_all(parts).buffer(2 * _MEET_M))
    if line.length < _LEAST_M:
        return None
    points = _samples(line)
    bands = [band for band, _ in sprayed]
    gaps = np.array([shapely.distance(shape, points) for _, shape in sprayed])
    made = np.array([passing_min(band, points, first=True) for band in bands])
    owner = gaps.argmin(axis=0)
    ages = minute - made[owner, np.arange(len(points))]
    oldest = int(ages.argmax())
    return LiveEdge(line, _place(points[oldest]), max(float(ages[oldest]), 0.0), minute)


def oldest_edge(field: Field) -> LiveEdge | None:
    """Where and when the edges of a field are oldest; None for a field without edges.

    The line is the stretch of that edge that waits nearly as long.
    """
    found: list[_Meeting] = []
    for then in sorted(field.bands, key=lambda band: -band.edge_age_min):
        if found and then.edge_age_min < found[0].age_min - _ROUGHLY_MIN:
            break  # told ages are exact: no band after this one meets an older edge
        earlier = (b for b in field.bands if b.order < then.order and _boxes_meet(b, then))
        found += [pair for first in earlier if (pair := _met(first, then)) is not None]
        found.sort(key=lambda edge: -edge.age_min)
    return found[0].at_its_oldest() if found else None


@dataclass(frozen=True)
class _Meeting:
    """The line on which a band meets the edge of an earlier one, places on it and their ages."""

    line: BaseGeometry
    points: npt.NDArray[np.object_]
    ages: npt.NDArray[np.float64]
    met: npt.NDArray[np.float64]

    @property
    def age_min(self) -> float:
        return float(self.ages.max())

    def at_its_oldest(self) -> LiveEdge:
        """The stretch that waits nearly as long as the oldest place of all, and that place."""
        oldest = int(self.ages.argmax())
        kept = self.points[self.ages >= _OLD_SHARE * self.ages[oldest]]
        near = shapely.buffer(_strung(kept), 0.75 * _STEP_M)
        return LiveEdge(
            shapely.line_merge(shapely.intersection(self.line, near)),
            _place(self.points[oldest]),
            float(self.ages[oldest]),
            float(self.met[oldest]),
        )


def _met(first: Band, then: Band) -> _Meeting | None:
    """The edge that one band leaves and a later one meets."""
    line = shapely.intersection(
        first.polygon.shape.boundary, then.polygon.shape.buffer(_MEET_M, join_style="mitre")
    )
    if line.length < _LEAST_M:
        return None
    points = _samples(line)
    met = passing_min(then, points, first=False)
    return _Meeting(line, points, met - passing_min(first, points, first=True), met)


def _boxes_meet(one: Band, two: Band) -> bool:
    a, b = one.polygon.shape.bounds, two.polygon.shape.bounds
    return (
        a[0] <= b[2] + _MEET_M
        and b[0] <= a[2] + _MEET_M
        and a[1] <= b[3] + _MEET_M
        and b[1] <= a[3] + _MEET_M
    )


def _samples(line: BaseGeometry) -> npt.NDArray[np.object_]:
    return np.asarray(shapely.points(shapely.get_coordinates(shapely.segmentize(line, _STEP_M))))


def _strung(places: npt.NDArray[np.object_]) -> BaseGeometry:
    """The places as lines, each joined to the next where it lies no farther than samples do.

    What lies near them is drawn around a few lines, not around hundreds of points one by one.
    """
    xy = shapely.get_coordinates(places)
    ends = np.flatnonzero(np.hypot(*np.diff(xy, axis=0).T) > _STEP_M + _LEAST_M)
    runs = np.split(xy, ends + 1)
    return shapely.geometrycollections(
        [shapely.LineString(run) if len(run) > 1 else shapely.Point(run[0]) for run in runs]
    )


def _place(point: shapely.Point) -> Point:
    return (float(point.x), float(point.y))
