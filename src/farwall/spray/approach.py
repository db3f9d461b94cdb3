"""The floor of a field in one, and the straight wall that its way out lies in."""

from __future__ import annotations

import itertools
from collections.abc import Sequence

import numpy as np
import shapely

from farwall.errors import Unanswerable
from farwall.floor.geometry import polygons_of
from farwall.spray.world import Seam, World

_LEAST_WALL_M = 2.5
_FACE_M = 0.35
"""The wall face lies no farther than this from the line under a door's leaf."""
_ALONG = 0.02
_LOST_M2 = 0.02


def connected(world: World, pieces: Sequence[str]) -> shapely.Polygon:
    """The floor of some pieces as one polygon. Raises `Unanswerable` when it falls apart."""
    parts = polygons_of(world.ground(pieces))
    parts.sort(key=lambda part: -part.area)
    if not parts or sum(part.area for part in parts[1:]) > _LOST_M2:
        raise Unanswerable(f"{world.called(pieces)}: the floor falls apart into separate places.")
    return parts[0]


def wall_of(world: World, pieces: Sequence[str], seam: Seam) -> shapely.LineString | None:
    """The straight wall face that the seam lies in, on the field's side, openings bridged.

    None when it is hardly longer than the seam, or shorter than two bands or so.
    """
    shape = world.pieces[seam.a if seam.a in pieces else seam.b].shape
    start = np.asarray(seam.line[0])
    along = np.asarray(seam.line[-1]) - start
    length = float(np.hypot(*along))
    along = along / length
    across = np.array([-along[1], along[0]])
    runs = _runs(shapely.get_coordinates(shapely.boundary(shape)) - start, along, across)
    if not runs:
        return None
    low, high, offset = _joined(runs, length)
    if high - low < max(_LEAST_WALL_M, length + 1.0):
        return None
    ends = [start + where * along + offset * across for where in (low, high)]
    return shapely.LineString(ends)


def _runs(
    xy: np.ndarray, along: np.ndarray, across: np.ndarray
) -> list[tuple[float, float, float]]:
    """Edges beside the seam's line: from, to and offset, in metres along and across it."""
    runs = []
    for one, two in itertools.pairwise(xy):
        leg = two - one
        size = float(np.hypot(*leg))
        offset = float((one + two) @ across) / 2
        if size > 0 and abs(leg @ across) <= _ALONG * size and abs(offset) <= _FACE_M:
            low, high = sorted((float(one @ along), float(two @ along)))
            runs.append((low, high, offset))
    return sorted(runs)


def _joined(runs: list[tuple[float, float, float]], length: float) -> tuple[float, float, float]:
    """The stretch of wall about the seam (0 to `length`), gaps of a door's width bridged."""
    low, high = 0.0, length
    used = [0.0]
    changed = True
    while changed:
        changed = False
        for start, end, offset in runs:
            touches = start <= high + length + _FACE_M and end >= low - length - _FACE_M
            if touches and (start < low - 1e-9 or end > high + 1e-9):
                low, high = min(low, start), max(high, end)
                used.append(offset)
                changed = True
    return low, high, max(used, key=abs)
