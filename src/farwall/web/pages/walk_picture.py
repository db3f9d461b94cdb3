"""A walk as it closed, drawn to scale: rooms, numbers of walls, misclosures many times as large."""

from __future__ import annotations

from math import hypot

from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor
from farwall.floor.walk.closed import Closed
from farwall.nouns import dataclass
from farwall.papers.ink import DANGER, INK, SOFT, WHITE
from farwall.papers.svg import number
from farwall.papers.xml_text import escape, quoteattr
from farwall.web.words import said

_WIDTHS = (("wide", 720.0, 520.0), ("narrow", 358.0, 420.0))
"""Class, width and height of the drawing for a desk and for a phone."""
_EDGE = 30.0
_TIMES = (1, 2, 5, 10, 20, 50, 100)
_ARROW = 34.0
_SHORT = 26.0
"""A wall shorter than this on the drawing bears no number."""


@dataclass(frozen=True)
class _Scale:
    x0: float
    y1: float
    by: float

    def at(self, place: Point) -> Point:
        """Where a place lies on the drawing."""
        return (place[0] - self.x0) * self.by + _EDGE, (self.y1 - place[1]) * self.by + _EDGE


def walk_picture(closed: Closed, floor: Floor, corners: list[list[Point]]) -> tuple[str, int]:
    """The drawing as HTML, and how many times as large its arrows are (0 without any)."""
    points = [place for room in corners for place in room]
    x0, y0 = min(x for x, _ in points), min(y for _, y in points)
    x1, y1 = max(x for x, _ in points), max(y for _, y in points)
    parts, times = [], 0
    for name, most_wide, most_high in _WIDTHS:
        by = min(
            (most_wide - 2 * _EDGE) / max(x1 - x0, 0.5), (most_high - 2 * _EDGE) / max(y1 - y0, 0.5)
        )
        size = (x1 - x0) * by + 2 * _EDGE, (y1 - y0) * by + 2 * _EDGE
        times = times or _times(closed, by)
        inside = _drawn(closed, floor, corners, _Scale(x0, y1, by), times)
        parts.append(
            f'<div class="{name}"><svg xmlns="http://www.w3.org/2000/svg" role="img" '
            f'viewBox="0 0 {number(size[0])} {number(size[1])}" width="{number(size[0])}" '
            f"aria-label={quoteattr(said('walk-picture'))}>{inside}</svg></div>"
        )
    return "\n".join(parts), times


def _times(closed: Closed, by: float) -> int:
    """By how much arrows are drawn larger: so that the longest fits, rooms that slipped aside."""
    slipped = {closed.row(one.suspects[0].row).room for one in closed.found}
    far = [
        one.miss.far for one in closed.rooms
        if one.miss is not None and one.miss.far > 5e-4 and one.room not in slipped
    ]  # fmt: skip
    if not far:
        return 1 if slipped else 0
    return max([one for one in _TIMES if one * max(far) * by <= _ARROW], default=1)


def _drawn(
    closed: Closed, floor: Floor, corners: list[list[Point]], scale: _Scale, times: int
) -> str:
    parts = []
    for room in corners:
        path = "L".join(_pair(scale.at(place)) for place in room)
        parts.append(f'<path d="M{path}Z" fill="{WHITE}" stroke="{INK}" stroke-width="3"/>')
    for opening in floor.openings:
        (ax, ay), (bx, by) = (scale.at(place) for place in opening.line)
        parts.append(
            f'<path d="M{_pair((ax, ay))}L{_pair((bx, by))}" stroke="{WHITE}" stroke-width="9"/>'
            f'<path d="M{_pair((ax, ay))}L{_pair((bx, by))}" stroke="{INK}" stroke-width="1.4"/>'
        )
    again = {
        (row.room, row.wall): n
        for n, one in enumerate(closed.found)
        for row in [closed.row(one.suspects[0].row)]
        if row.kind == "wall"
    }
    for n, room in enumerate(corners):
        parts += _walls(closed, n, room, scale, again)
        parts.append(_name(closed.walk.rooms[n].name, room, scale))
        parts.append(_arrow(closed, n, room, scale, times))
    return "".join(parts)


def _walls(
    closed: Closed, n: int, room: list[Point], scale: _Scale, again: dict[tuple[int, int], int]
) -> list[str]:
    parts = []
    inward = -1.0 if closed.lay.hands[n] < 0 else 1.0
    for k, one in enumerate(room):
        (ax, ay), (bx, by) = scale.at(one), scale.at(room[(k + 1) % len(room)])
        far = hypot(bx - ax, by - ay)
        if (n, k) in again:
            parts.append(
                f'<path d="M{_pair((ax, ay))}L{_pair((bx, by))}" stroke="{WHITE}" '
                f'stroke-width="9"/><path d="M{_pair((ax, ay))}L{_pair((bx, by))}" '
                f'stroke="{DANGER}" stroke-width="5" stroke-dasharray="9 4"/>'
            )
        if far < _SHORT and (n, k) not in again:
            continue
        # Down the page is up on the floor: the inner side of a wall walked clockwise is its right.
        side = inward * 12.0 / (far or 1.0)
        x, y = (ax + bx) / 2 + side * (by - ay), (ay + by) / 2 - side * (bx - ax)
        bold = f' font-weight="700" fill="{DANGER}"' if (n, k) in again else f' fill="{SOFT}"'
        mark = f"{k + 1}?" if (n, k) in again else f"{k + 1}"
        parts.append(
            f'<text x="{number(x)}" y="{number(y + 4)}" font-size="12" '
            f'text-anchor="middle"{bold}>{mark}</text>'
        )
    return parts


def _name(name: str, room: list[Point], scale: _Scale) -> str:
    import shapely

    shape = shapely.Polygon(room).buffer(0)
    middle = shapely.maximum_inscribed_circle(shape).coords[0] if shape.area > 0.01 else room[0]
    x, y = scale.at((middle[0], middle[1]))
    wide = (shape.bounds[2] - shape.bounds[0]) * scale.by - 16 if shape.area > 0.01 else 0.0
    letters = max(int(wide / 7.7), 2)
    shown = name if len(name) <= letters else f"{name[: letters - 1]}…"
    return (
        f'<text x="{number(x)}" y="{number(y + 5)}" font-size="14" font-weight="600" '
        f'text-anchor="middle" fill="{INK}" stroke="{WHITE}" stroke-width="3" '
        f'paint-order="stroke">{escape(shown)}</text>'
    )


def _arrow(closed: Closed, n: int, room: list[Point], scale: _Scale, times: int) -> str:
    """From the first corner to where the walk as read ends, `times` as long; a ring there."""
    x, y = scale.at(room[0])
    ring = f'<circle cx="{number(x)}" cy="{number(y)}" r="3.4" fill="{WHITE}" stroke="{INK}"/>'
    miss = closed.rooms[n].miss
    if miss is None or miss.far < 5e-4 or not times:
        return ring
    long = miss.far * scale.by * times
    share = min(long, 2 * _ARROW) / long
    dx, dy = miss.x * scale.by * times * share, -miss.y * scale.by * times * share
    ux, uy = dx / hypot(dx, dy), dy / hypot(dx, dy)
    tip = x + dx, y + dy
    head = "L".join(
        _pair((tip[0] - 7 * ux + side * 3.5 * uy, tip[1] - 7 * uy - side * 3.5 * ux))
        for side in (1, -1)
    )
    line = f"M{_pair((x, y))}L{_pair(tip)}"
    return (
        f'<path d="{line}" stroke="{WHITE}" stroke-width="5"/><path d="{line}" stroke="{DANGER}" '
        f'stroke-width="1.8"/><path d="M{_pair(tip)}L{head}Z" fill="{DANGER}"/>{ring}'
    )


def _pair(place: Point) -> str:
    return f"{number(place[0])} {number(place[1])}"
