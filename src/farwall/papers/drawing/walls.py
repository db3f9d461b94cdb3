"""Walls as a drawing wants them: thick mass with gaps where openings are.

A plan may give rooms to their inner wall faces with the wall's depth between
them, or rooms that share a line. Both come out as thick walls. This is for
the eye only: nothing is measured on it.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.nouns import Opening, Room

OUTER_WALL_M = 0.14
"""Thickness drawn where the plan does not tell how thick an outside wall is."""
_CLOSE_M = 0.26
"""Half the widest gap between two rooms that is drawn as solid wall."""
_SHARED_HALF_M = 0.05
_CUT_DEPTH_M = 0.40


@lru_cache(maxsize=8)  # the maps of one house ask for the same walls again and again
def wall_mass(rooms: tuple[Room, ...], openings: tuple[Opening, ...]) -> BaseGeometry:
    """The walls around and between the rooms, openings left out. [m]"""
    shapes = [room.polygon.shape for room in rooms]
    floor: BaseGeometry = shapely.union_all(shapes)
    closed: BaseGeometry = floor.buffer(_CLOSE_M, join_style="mitre").buffer(
        -_CLOSE_M, join_style="mitre"
    )
    closed = shapely.union(closed, floor)
    mass = shapely.difference(closed.buffer(OUTER_WALL_M, join_style="mitre"), floor)
    mass = shapely.union(mass, _shared(shapes))
    gaps = [gap_of(opening) for opening in openings]
    return shapely.difference(mass, shapely.union_all(gaps)) if gaps else mass


def gap_of(opening: Opening) -> BaseGeometry:
    """The opening through the whole depth of its wall. [m]"""
    cut = shapely.LineString(opening.line).buffer(_CUT_DEPTH_M, cap_style="flat")
    return shapely.union(cut, opening.threshold.shape) if opening.threshold else cut


def _shared(shapes: Sequence[shapely.Polygon]) -> BaseGeometry:
    """Thin walls along lines that two rooms share."""
    tree = shapely.STRtree(shapes)
    lines = []
    for k, shape in enumerate(shapes):
        for other in tree.query(shape, predicate="intersects"):
            if other > k:
                common = shapely.intersection(shape.boundary, shapes[int(other)].boundary)
                lines += [part for part in shapely.get_parts(common) if part.length > 0]
    if not lines:
        return shapely.MultiPolygon()
    return shapely.union_all(lines).buffer(_SHARED_HALF_M, cap_style="square")
