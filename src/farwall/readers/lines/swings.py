"""The arcs that doors' leaves make, and what they tell: the leaf, and the gap it shuts."""

from __future__ import annotations

from math import dist

import shapely

from farwall.readers.lines.portals import Portal
from farwall.readers.lines.sheet import Role, Sheet, Stroke, Swing

LEAF_M = (0.3, 1.6)
_SWEEP_DEG = (10.0, 185.0)
_THICK_M = 0.06
_HINGE_M = 0.12
_TOUCH_M = 0.006
_NO_DOORS = {Role.FIXTURE, Role.PAPER, Role.STAIR}


def door_swings(sheet: Sheet) -> list[Swing]:
    """The arcs that a door's leaf could make, whatever layer they are on."""
    return [
        swing
        for swing in sheet.swings
        if swing.role not in _NO_DOORS
        and LEAF_M[0] <= swing.radius <= LEAF_M[1]
        and _SWEEP_DEG[0] <= swing.sweep_deg <= _SWEEP_DEG[1]
    ]


def shuts(swing: Swing, portal: Portal) -> bool:
    """Whether a leaf with that swing, alone or as one of a pair, shuts a portal."""
    corners = [corner for face in portal.faces for corner in face]
    if min(dist(swing.centre, corner) for corner in corners) > _HINGE_M:
        return False
    share = swing.radius / portal.width_m
    if not (0.85 <= share <= 1.15 or 0.4 <= share <= 0.6):
        return False
    tips = [portal.shape.distance(shapely.Point(end)) for end in swing.ends]
    return min(tips) < _HINGE_M


def is_leaf(stroke: Stroke, swing: Swing, tree: shapely.STRtree) -> bool:
    """Whether a stroke is a piece of a swing's own arc, or a long side of its open leaf.

    `tree` holds the lines of all straight strokes, each once, this one among them.
    """
    ends = (stroke.start, stroke.end)
    away = [dist(swing.centre, end) for end in ends]
    if stroke.curve:
        return all(abs(a - swing.radius) < 0.01 for a in away)
    hinged = min(away) < _THICK_M and abs(stroke.length - swing.radius) < _THICK_M
    tip = max(ends, key=lambda end: dist(swing.centre, end))
    if not hinged or stroke.role is Role.HEADER:
        return False
    if min(dist(tip, end) for end in swing.ends) > _THICK_M:
        return False
    # An open leaf stands free at its tip; a line from jamb to jamb is a sill or a head.
    return len(tree.query(shapely.Point(tip), predicate="dwithin", distance=_TOUCH_M)) <= 1
