"""The line along the middle of a band, in the direction in which it is sprayed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache

import numpy as np
import shapely

from farwall.facts.plan import Band
from farwall.floor.geometry import Point, PolygonGeometry

_SAMPLE_M = 0.25
_LONG_CHORD = 1.7
_MOST_TURN = math.radians(75)


def centre_line(band: Band, *, band_m: float) -> tuple[Point, ...]:
    """Points along the middle of a band, first sprayed first; empty for a band without length.

    Each point of the body's path is carried over to the middle of the strip
    straight ahead of it.
    """
    return _centre_line(band.polygon, tuple((x, y) for x, y, _ in band.path), band_m)


@lru_cache(maxsize=512)  # coats are mostly sprayed in the same bands
def _centre_line(
    polygon: PolygonGeometry, path: tuple[Point, ...], band_m: float
) -> tuple[Point, ...]:
    shape = polygon.shape
    if len(path) < 2 or shape.is_empty:
        return ()
    samples = _sampled(path)
    lines = shapely.shortest_line(shapely.points(samples), shape)
    feet = shapely.get_coordinates(shapely.get_point(lines, -1))
    middles, told = _middles_of_chords(shape, samples, feet, band_m)
    return _onward([(x, y) for x, y in middles[told].tolist()])


def _middles_of_chords(
    shape: shapely.Polygon, bodies: np.ndarray, feet: np.ndarray, band_m: float
) -> tuple[np.ndarray, np.ndarray]:
    """The middle of the strip straight ahead of each body, and which bodies have one.

    A body has none where it looks along the strip.
    """
    ahead = feet - bodies
    distance = np.hypot(ahead[:, 0], ahead[:, 1])
    middles, told = bodies.copy(), distance < 1e-6
    away = np.flatnonzero(~told)
    far = feet[away] + ahead[away] / distance[away, None] * _LONG_CHORD * 2 * band_m
    chords = shapely.linestrings(np.stack([feet[away], far], axis=1))
    parts, of = shapely.get_parts(shapely.intersection(chords, shape), return_index=True)
    long = shapely.length(parts)
    parts, of, long = parts[long > 0], of[long > 0], long[long > 0]
    order = np.lexsort((shapely.distance(parts, shapely.points(feet[away][of])), of))
    of, first = np.unique(of[order], return_index=True)
    nearest = order[first]
    short = long[nearest] <= _LONG_CHORD * band_m
    mids = shapely.line_interpolate_point(parts[nearest[short]], 0.5, normalized=True)
    middles[away[of[short]]] = shapely.get_coordinates(mids)
    told[away[of[short]]] = True
    return middles, told


def _sampled(path: Sequence[Point]) -> np.ndarray:
    line = shapely.LineString(path)
    count = max(2, math.ceil(line.length / _SAMPLE_M) + 1)
    places = line.interpolate(np.linspace(0, line.length, count))
    return shapely.get_coordinates(places)


def _onward(points: list[Point]) -> tuple[Point, ...]:
    """The points as one run that never turns back: repeats, hooks and returns are dropped."""
    run: list[Point] = []
    for point in points:
        if run and math.dist(run[-1], point) < _SAMPLE_M / 2:
            continue
        if len(run) > 1 and _turn(run[-2], run[-1], point) > _MOST_TURN:
            continue
        run.append(point)
    if len(run) < 2:
        return ()
    return tuple((x, y) for x, y in shapely.LineString(run).simplify(_SAMPLE_M / 3).coords)


def _turn(a: Point, b: Point, c: Point) -> float:
    turn = math.atan2(c[1] - b[1], c[0] - b[0]) - math.atan2(b[1] - a[1], b[0] - a[0])
    return abs((turn + math.pi) % (2 * math.pi) - math.pi)
