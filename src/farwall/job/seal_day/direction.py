"""Which way bands run, and how far the bands of two coats turn from one another."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterable

import shapely
from shapely.geometry.base import BaseGeometry

CROSSED_DEG = 60.0
"""From here on two coats count as crossed; 90 is meant [common-practice]. The line is a guess."""


def mean_direction_deg(shapes: Iterable[BaseGeometry]) -> float | None:
    """The mean direction of long shapes, 0 to below 180; None where none of them is long. [deg]

    Each counts by its floor and by how much longer than wide it is, in the narrowest rectangle
    about it. Directions are doubled, averaged and halved, so that 179° and 1° are neighbours
    [arithmetic].
    """
    turn = 0j
    for shape in shapes:
        box = shapely.get_coordinates(shapely.oriented_envelope(shape))
        if len(box) < 4:
            continue
        sides = [box[1] - box[0], box[2] - box[1]]
        lengths = [math.hypot(*side) for side in sides]
        long, short = max(lengths), min(lengths)
        if long <= 0:
            continue
        side = sides[lengths.index(long)]
        angle = math.atan2(side[1], side[0])
        turn += shape.area * (1 - short / long) * cmath.exp(2j * angle)
    if abs(turn) < 1e-9:
        return None
    return math.degrees(cmath.phase(turn)) / 2 % 180


def apart_deg(one: float | None, other: float | None) -> float | None:
    """The smaller angle between two directions, 0 to 90; None where one is not known. [deg]"""
    if one is None or other is None:
        return None
    apart = abs(one - other) % 180
    return min(apart, 180 - apart)
