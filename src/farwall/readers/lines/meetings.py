"""Which strokes meet at whose ends, and which of them can only be faces of walls."""

from __future__ import annotations

import shapely

from farwall.floor.geometry import Point
from farwall.readers.lines.bounds import line, lines_of
from farwall.readers.lines.portals import PASSAGE_M, WALL_DEPTH_M, Portal
from farwall.readers.lines.sheet import Role, Stroke


def is_short(stroke: Stroke) -> bool:
    """As long as a wall is deep."""
    return WALL_DEPTH_M[0] <= stroke.length <= WALL_DEPTH_M[1]


class Meetings:
    """Which strokes meet at whose ends, found in one sweep."""

    def __init__(self, strokes: list[Stroke]) -> None:
        self.strokes = strokes
        self._met: dict[tuple[int, bool], list[Stroke]] = {}
        tree = shapely.STRtree(lines_of(strokes))
        for at_end in (False, True) if strokes else ():
            points = shapely.points([s.end if at_end else s.start for s in strokes])
            here = [self._met.setdefault((id(s), at_end), []) for s in strokes]
            which, others = tree.query(points, predicate="dwithin", distance=0.004)
            for place, other in zip(which.tolist(), others.tolist(), strict=True):
                if other != place and strokes[other].role is not Role.OPENING:
                    here[place].append(strokes[other])
        # Whether a passage's width lies between short strokes square to both its ends.
        self.spanning = [s for s in strokes if s.role is not Role.OUTLINE and self._spans(s)]

    def at(self, point: Point, stroke: Stroke) -> list[Stroke]:
        """The other strokes that touch an end of a stroke."""
        return self._met[id(stroke), point == stroke.end]

    def _spans(self, stroke: Stroke) -> bool:
        return PASSAGE_M[0] <= stroke.length <= PASSAGE_M[1] and all(
            any(is_short(s) and is_square(s, stroke) for s in self.at(point, stroke))
            for point in (stroke.start, stroke.end)
        )


class Ends:
    """Which strokes meet where; a sill, a pane or the footprint may run across a gap."""

    def __init__(self, met: Meetings, known: list[Portal]) -> None:
        self.meeting = met.at
        corners = [p for o in known for face in o.faces for p in face]
        self._at_corners = _near_points(met.spanning, corners)
        self._portals = shapely.unary_union([portal.shape for portal in known]).buffer(0.005)
        shapely.prepare(self._portals)
        self._loose = {id(s) for s in met.strokes if s.role is Role.OUTLINE}
        self._loose |= {id(s) for s in met.spanning if not self._leaves_a_portal(s)}

    def is_firm(self, stroke: Stroke) -> bool:
        """Whether a stroke can only be a wall face."""
        return id(stroke) not in self._loose

    def _leaves_a_portal(self, stroke: Stroke) -> bool:
        """Beside a known opening, a line that leads away from it is a wall face."""
        return id(stroke) in self._at_corners and not self._portals.covers(line(stroke))


def _near_points(strokes: list[Stroke], points: list[Point]) -> set[int]:
    """The ids of the strokes that have an end at one of the points."""
    if not (strokes and points):
        return set()
    tree = shapely.STRtree(shapely.points(points))
    found: set[int] = set()
    for ends in ([s.start for s in strokes], [s.end for s in strokes]):
        which, _ = tree.query(shapely.points(ends), predicate="dwithin", distance=0.005)
        found |= {id(strokes[i]) for i in which.tolist()}
    return found


def is_square(first: Stroke, second: Stroke) -> bool:
    """Whether two strokes stand square to each other."""
    ax, ay = first.end[0] - first.start[0], first.end[1] - first.start[1]
    bx, by = second.end[0] - second.start[0], second.end[1] - second.start[1]
    return abs(ax * bx + ay * by) < 0.1 * first.length * second.length
