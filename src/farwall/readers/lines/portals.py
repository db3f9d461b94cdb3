"""Places in the walls where one can or could pass: door heads, gaps between jambs, corner doors.

A portal is a rectangle in the depth of the wall. Its two faces look into what lies on either
side. Where walls are drawn as single lines it has no depth, and its faces are one line.
"""

from __future__ import annotations

from functools import cached_property
from itertools import chain
from math import dist

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

WALL_DEPTH_M = (0.05, 0.65)
PASSAGE_M = (0.35, 7.0)
_THIN_M = 0.001
Line = tuple[Point, Point]


@dataclass(frozen=True)
class Portal:
    """A rectangle in a wall: `faces` are its two long sides, both running jamb to jamb."""

    faces: tuple[Line, Line]
    found_by: str
    """`head`, `jambs`, `corner` or `line`."""

    @cached_property
    def width_m(self) -> float:
        """Clear width between the jambs."""
        return dist(*self.faces[0])

    @cached_property
    def depth_m(self) -> float:
        """Depth of the wall."""
        return dist(self.faces[0][0], self.faces[1][0])

    @property
    def thin(self) -> bool:
        """Whether the wall is drawn as a single line."""
        return self.depth_m < _THIN_M

    @property
    def seam(self) -> Line:
        """The line in the middle of the wall's depth."""
        (a, b), (c, d) = self.faces
        return ((a[0] + c[0]) / 2, (a[1] + c[1]) / 2), ((b[0] + d[0]) / 2, (b[1] + d[1]) / 2)

    @cached_property
    def middle(self) -> Point:
        """The middle of the seam."""
        (a, b) = self.seam
        return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2

    @cached_property
    def shape(self) -> shapely.Polygon:
        """The floor under the opening; a hair's breadth where the wall has no depth."""
        if self.thin:
            return shapely.LineString(self.seam).buffer(0.005, cap_style="flat")
        (a, b), (c, d) = self.faces
        return shapely.Polygon([a, b, d, c])

    @property
    def outline(self) -> list[shapely.LineString]:
        """Its sides as lines."""
        (a, b), (c, d) = self.faces
        if self.thin:
            return [shapely.LineString((a, b))]
        return [shapely.LineString(pair) for pair in ((a, b), (b, d), (d, c), (c, a))]

    def beyond(self, which: int, reach_m: float) -> Point:
        """A point in front of the middle of one face, so far away from it."""
        (ax, ay), (bx, by) = self.seam
        nx, ny = -(by - ay) / self.width_m, (bx - ax) / self.width_m
        (fx, fy), (mx, my) = _middle(self.faces[which]), self.middle
        ahead = (fx - mx) * nx + (fy - my) * ny
        side = (1.0 if which == 0 else -1.0) if self.thin else (1.0 if ahead > 0 else -1.0)
        return fx + side * nx * reach_m, fy + side * ny * reach_m


def clear_of(portal: Portal, *others: list[Portal]) -> bool:
    """Whether a portal lies apart from all others."""
    (x, y), own = portal.middle, portal.width_m + portal.depth_m
    for other in chain.from_iterable(others):
        reach = (own + other.width_m + other.depth_m) / 2 + 0.02
        mx, my = other.middle
        near = abs(mx - x) <= reach and abs(my - y) <= reach
        if near and portal.shape.distance(other.shape) < 0.01:
            return False
    return True


def _middle(line: Line) -> Point:
    (ax, ay), (bx, by) = line
    return (ax + bx) / 2, (ay + by) / 2
