"""Wall ends that stop in the open: caps for double lines, gaps in single ones."""

from __future__ import annotations

from math import dist, hypot

import shapely

from farwall.floor.geometry import Point
from farwall.readers.lines.bounds import Bounds, lines_of
from farwall.readers.lines.faces import Nets, loose_ends
from farwall.readers.lines.portals import PASSAGE_M, WALL_DEPTH_M, Portal, clear_of
from farwall.readers.lines.sheet import Role, Stroke, Swing

_ALIGNED_M = 0.03
_TOUCH_M = 0.05
End = tuple[Point, Point]
"""A loose end, and a point further back on its line."""


def end_caps(net: shapely.Geometry) -> list[Stroke]:
    """A stroke across each wall whose two faces stop side by side with nothing between them."""
    ends = loose_ends(net)
    pairs = []
    for first, second in _near_pairs(ends, WALL_DEPTH_M[1]):
        across = dist(first[0], second[0])
        if across >= WALL_DEPTH_M[0] and _side_by_side(first, second):
            pairs.append((across, first[0], second[0]))
    taken: set[Point] = set()
    caps = []
    for _, start, end in sorted(pairs):
        if not {start, end} & taken:
            taken |= {start, end}
            caps.append(Stroke(start, end, "", Role.WALL))
    return caps


def line_portals(
    lines: list[shapely.LineString],
    nets: Nets,
    bounds: Bounds,
    swings: list[Swing],
    known: list[Portal],
) -> list[Portal]:
    """Portals without depth, where walls are single lines: gaps in line, windows, swings."""
    ends = loose_ends(nets.of(lines))
    gaps = [_thin(a[0], b[0]) for a, b in _ahead_pairs(ends) if _in_line(a, b)]
    gaps += [_thin(s.start, s.end) for s in bounds.jambs if s.length >= PASSAGE_M[0]]
    gaps += [portal for swing in swings for portal in _shut_leaves(swing, ends, lines)]
    gaps.sort(key=lambda portal: (round(portal.width_m, 4), portal.seam))
    tree = shapely.STRtree(lines_of(bounds.strong))
    found: list[Portal] = []
    for portal in gaps:
        if not _crossed(portal, tree) and clear_of(portal, found + known):
            found.append(portal)
    return found


def _near_pairs(ends: list[End], reach_m: float) -> list[tuple[End, End]]:
    """Every two ends no farther apart than that, each pair once."""
    if not ends:
        return []
    points = [shapely.Point(end[0]) for end in ends]
    first, second = shapely.STRtree(points).query(points, predicate="dwithin", distance=reach_m)
    return [(ends[int(a)], ends[int(b)]) for a, b in zip(first, second, strict=True) if a < b]


def _ahead_pairs(ends: list[End]) -> list[tuple[End, End]]:
    """Each end with those that lie straight ahead of it within a passage's width."""
    if not ends:
        return []
    rays = []
    for end in ends:
        (x, y), (dx, dy) = end[0], _way(end)
        rays.append(shapely.LineString([(x, y), (x + dx * PASSAGE_M[1], y + dy * PASSAGE_M[1])]))
    tree = shapely.STRtree([shapely.Point(end[0]) for end in ends])
    first, second = tree.query(rays, predicate="dwithin", distance=2 * _ALIGNED_M)
    return [(ends[int(a)], ends[int(b)]) for a, b in zip(first, second, strict=True) if a < b]


def _thin(start: Point, end: Point) -> Portal:
    return Portal(((start, end), (start, end)), "line")


def _side_by_side(first: End, second: End) -> bool:
    """Two loose ends that come from the same way and stop at the same place."""
    a, b, across = _way(first), _way(second), _unit(first[0], second[0])
    same = a[0] * b[0] + a[1] * b[1] > 0.99
    return same and abs(a[0] * across[0] + a[1] * across[1]) < 0.2


def _in_line(first: End, second: End) -> bool:
    """Two loose ends of one line with a gap between them that a person could pass."""
    gap = dist(first[0], second[0])
    if not PASSAGE_M[0] <= gap <= PASSAGE_M[1]:
        return False
    a, b, across = _way(first), _way(second), _unit(first[0], second[0])
    facing = a[0] * b[0] + a[1] * b[1] < -0.99
    aside = abs(-a[0] * across[1] + a[1] * across[0]) * gap
    return facing and a[0] * across[0] + a[1] * across[1] > 0.9 and aside < _ALIGNED_M


def _shut_leaves(swing: Swing, ends: list[End], lines: list[shapely.LineString]) -> list[Portal]:
    """Where a leaf would lie when shut: from its hinge to an end of its swing, wall to wall."""
    if swing.sweep_deg > 100 or not ends:
        return []
    found = []
    tree = shapely.STRtree(lines)
    for tip in swing.ends:
        points = [end[0] for end in ends]
        hinge = min(points, key=lambda p: dist(p, swing.centre))
        near = tree.query(shapely.Point(tip), predicate="dwithin", distance=_TOUCH_M)
        if dist(hinge, swing.centre) > _TOUCH_M or not len(near):
            continue
        wall = lines[int(near[0])]
        foot = wall.interpolate(wall.project(shapely.Point(tip)))
        found.append(_thin(hinge, (float(foot.x), float(foot.y))))
    return found


def _crossed(portal: Portal, tree: shapely.STRtree) -> bool:
    """Whether a wall crosses the gap or lies along it."""
    (ax, ay), (bx, by) = portal.seam
    dx, dy = (bx - ax) * 0.04, (by - ay) * 0.04
    inner = shapely.LineString([(ax + dx, ay + dy), (bx - dx, by - dy)])
    return len(tree.query(inner, predicate="intersects")) > 0


def _way(end: End) -> Point:
    """The way a line was going when it stopped."""
    return _unit(end[1], end[0])


def _unit(start: Point, end: Point) -> Point:
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = hypot(dx, dy) or 1.0
    return dx / length, dy / length
