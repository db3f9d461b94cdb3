"""How far it is from a lettering to the walls around it."""

from __future__ import annotations

from math import cos, radians, sin

from farwall.floor.geometry import Point
from farwall.readers.lines.sheet import Role, Sheet, Stroke

_SQUARE = 0.996
"""Sine of 85 degrees: a wall that stands more askew is no side that a size was lettered for."""


def free_spans(sheet: Sheet, at: Point, turned_deg: float) -> tuple[float, float] | None:
    """The clear lengths along and across the lettering, between walls square to it, or None."""
    walls = [s for s in sheet.strokes if s.role in {Role.WALL, Role.HEADER, Role.OUTLINE}]
    walls = walls or [s for s in sheet.strokes if s.role is Role.OTHER]
    turn = radians(turned_deg)
    along = _span(walls, at, (cos(turn), sin(turn)))
    across = _span(walls, at, (-sin(turn), cos(turn)))
    return (along, across) if along and across else None


def _span(walls: list[Stroke], at: Point, way: Point) -> float | None:
    hits = [hit for wall in walls if (hit := _hit(wall, at, way)) is not None]
    ahead = min((h for h in hits if h[0] > 0), default=None)
    behind = max((h for h in hits if h[0] < 0), default=None)
    if not ahead or not behind or not (ahead[1] and behind[1]):
        return None
    return ahead[0] - behind[0]


def _hit(wall: Stroke, at: Point, way: Point) -> tuple[float, bool] | None:
    """How far along the ray a wall stands, and whether it stands square to it."""
    ax, ay = wall.start[0] - at[0], wall.start[1] - at[1]
    dx, dy = wall.end[0] - wall.start[0], wall.end[1] - wall.start[1]
    cross = way[0] * dy - way[1] * dx
    if abs(cross) < 1e-12 * (abs(dx) + abs(dy)) or cross == 0.0:
        return None
    along_wall = (way[1] * ax - way[0] * ay) / cross
    along_ray = (ax * dy - ay * dx) / cross
    square = abs(cross) > _SQUARE * wall.length
    return (along_ray, square) if 0.0 <= along_wall <= 1.0 else None
