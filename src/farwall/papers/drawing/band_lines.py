"""The line along the middle of a band, in the direction in which it is sprayed."""

from __future__ import annotations

import math

import numpy as np
import shapely

from farwall.facts.plan import Band
from farwall.floor.geometry import Point

_SAMPLE_M = 0.25
_LONG_CHORD = 1.7
_MOST_TURN = math.radians(75)


def centre_line(band: Band, *, band_m: float) -> tuple[Point, ...]:
    """Points along the middle of a band, first sprayed first; empty for a band without length.

    Each point of the body's path is carried over to the middle of the strip
    straight ahead of it.
    """
    shape = band.polygon.shape
    path = [(x, y) for x, y, _ in band.path]
    if len(path) < 2 or shape.is_empty:
        return ()
    samples = _sampled(path)
    lines = shapely.shortest_line(shapely.points(samples), shape)
    feet = shapely.get_coordinates(shapely.get_point(lines, -1))
    kept = []
    for sample, foot in zip(samples, feet, strict=True):
        middle = _middle_of_chord(shape, sample, foot, band_m)
        if middle is not None:
            kept.append(middle)
    return _onward(kept)


def _middle_of_chord(
    shape: shapely.Polygon, body: np.ndarray, foot: np.ndarray, band_m: float
) -> Point | None:
    """The middle of the strip straight ahead of a body; None where it looks along the strip."""
    ahead = foot - body
    distance = float(np.hypot(*ahead))
    if distance < 1e-6:
        return (float(body[0]), float(body[1]))
    far = foot + ahead / distance * _LONG_CHORD * 2 * band_m
    chord = shapely.intersection(shapely.LineString([foot, far]), shape)
    first = min(
        (part for part in shapely.get_parts(chord).tolist() if part.length > 0),
        key=lambda part: part.distance(shapely.Point(foot)),
        default=None,
    )
    if first is None or first.length > _LONG_CHORD * band_m:
        return None
    middle = first.interpolate(0.5, normalized=True)
    return (middle.x, middle.y)


def _sampled(path: list[Point]) -> np.ndarray:
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
