"""When a band's spraying passes a place, and how much of a band is sprayed by a minute."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Band

_APART_M = 0.2
_STANDING_M = 1e-6

Floats = npt.NDArray[np.float64]


def passing_min(band: Band, places: npt.NDArray[np.object_], *, first: bool) -> Floats:
    """The minute in which the body is nearest to each place (points [m]) while it sprays `band`.

    A person who stands still may spray a place at any moment of the stand:
    `first` takes the start of the stand, else its end.
    """
    path = np.asarray(band.path)
    if len(path) < 2 or float(np.hypot(*np.diff(path[:, :2], axis=0).T).sum()) < _STANDING_M:
        return np.full(len(places), band.start_min if first else band.end_min)
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(path[:, :2], axis=0).T))])
    where = shapely.line_locate_point(shapely.LineString(path[:, :2]), places)
    return np.asarray(np.interp(where, along, path[:, 2]))


def sprayed_part(band: Band, minute: float) -> BaseGeometry:
    """The part of a band sprayed by a minute: the floor nearest to the path walked so far. [m]"""
    if minute >= band.end_min:
        return band.polygon.shape
    if minute <= band.start_min or len(band.path) < 2:
        return shapely.Polygon()
    cells, times = _cells(band)
    done = [cell for cell, at in zip(cells, times, strict=True) if at <= minute]
    return shapely.intersection(shapely.union_all(done), band.polygon.shape)


@lru_cache(maxsize=64)
def _cells(band: Band) -> tuple[tuple[BaseGeometry, ...], tuple[float, ...]]:
    """The floor nearest to each of many places of the path, and the minutes of these places."""
    path = np.asarray(band.path)
    line = shapely.LineString(path[:, :2])
    if line.length < _STANDING_M:
        return (), ()
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(path[:, :2], axis=0).T))])
    steps = np.linspace(0.0, line.length, max(2, int(line.length / _APART_M) + 1))
    points = shapely.line_interpolate_point(line, steps)
    parts = shapely.get_parts(
        shapely.voronoi_polygons(
            shapely.multipoints(points), extend_to=band.polygon.shape.buffer(1.0).envelope
        )
    )
    # Which place each cell belongs to: a path may cross itself, then the earlier place counts.
    tree = shapely.STRtree(parts)
    of_place, cell = tree.query(points, predicate="within")
    first: dict[int, float] = {}
    for place, index in zip(of_place.tolist(), cell.tolist(), strict=True):
        at = float(np.interp(steps[place], along, path[:, 2]))
        first[index] = min(at, first.get(index, at))
    return tuple(parts[list(first)].tolist()), tuple(first.values())
