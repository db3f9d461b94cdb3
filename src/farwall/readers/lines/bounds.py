"""Which strokes close a room: walls, outlines, door heads, jambs; leaves and panels do not.

Lengths are metres from here on.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np
import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Role, Sheet, Stroke, Swing
from farwall.readers.lines.swings import door_swings, is_leaf

GRID_M = 0.0001
"""Lines nearer than this are one line: a tenth of a millimetre."""
_TOUCH_M = 0.006
_STRONG = {Role.WALL, Role.OUTLINE, Role.HEADER, Role.AREA}


@dataclass(frozen=True)
class Bounds:
    """The strokes that close rooms, and those of openings that do not (leaves, panels, glass)."""

    strong: tuple[Stroke, ...]
    jambs: tuple[Stroke, ...]
    loose: tuple[Stroke, ...]
    doubles: int
    gaps: tuple[tuple[Point, float], ...] = ()
    """Where two lines just missed each other and were joined, and by how much [m]."""

    @property
    def closing(self) -> tuple[Stroke, ...]:
        """All strokes that close rooms."""
        return self.strong + self.jambs


def find_bounds(sheet: Sheet) -> Bounds:
    """The bounds of the rooms on a sheet in metres."""
    doors = door_swings(sheet)
    strokes = [s for s in sheet.strokes if s.length > GRID_M]
    drawn = _undashed([s for s in strokes if s.role in _STRONG])
    if not any(s.role in {Role.WALL, Role.AREA} for s in drawn):
        others = [s for s in strokes if s.role is Role.OTHER]
        drawn += _undashed([s for s in others if not s.block] or others)
    once, doubles = _without_doubles(drawn)
    leaves = leaves_among(once, doors)
    taken = set(map(id, leaves))
    single = [s for s in once if id(s) not in taken]
    openings = [s for s in strokes if s.role is Role.OPENING]
    jambs = _held_at_both_ends(openings, single)
    kept = set(map(id, jambs))
    loose = [s for s in openings if id(s) not in kept]
    return Bounds(tuple(single), tuple(jambs), (*loose, *leaves), doubles)


def footprint_only(bounds: Bounds) -> list[shapely.LineString]:
    """The lines of the footprint along which no wall is drawn."""
    outline = lines_of(s for s in bounds.strong if s.role is Role.OUTLINE)
    if not outline:
        return []
    walls = lines_of(s for s in bounds.closing if s.role is not Role.OUTLINE)
    solid = shapely.unary_union(walls).buffer(0.01)
    rest = [part.difference(solid) for part in outline]
    return [part for left in rest for part in shapely.get_parts(left).tolist()]


def line(stroke: Stroke) -> shapely.LineString:
    """The stroke as a shapely line."""
    return shapely.LineString([stroke.start, stroke.end])


def lines_of(strokes: Iterable[Stroke]) -> list[shapely.LineString]:
    """The strokes as shapely lines, made at once: one by one they cost three times as much."""
    ends = [(*one.start, *one.end) for one in strokes]
    if not ends:
        return []
    made = shapely.linestrings(np.reshape(ends, (-1, 2, 2)))
    return list(np.asarray(made, dtype=object))


def leaves_among(strokes: Sequence[Stroke], doors: Sequence[Swing]) -> list[Stroke]:
    """The strokes that are leaves standing open, or pieces of their arcs."""
    if not doors:
        return []
    lines = lines_of(strokes)
    tree = shapely.STRtree([one for one, s in zip(lines, strokes, strict=True) if not s.curve])
    whole = shapely.STRtree(lines)
    found: set[int] = set()
    for swing in doors:
        near = whole.query(shapely.Point(swing.centre), "dwithin", swing.radius + 0.02)
        found |= {int(i) for i in near if is_leaf(strokes[int(i)], swing, tree)}
    return [strokes[i] for i in sorted(found)]


def _undashed(strokes: list[Stroke]) -> list[Stroke]:
    """Dashed strokes tell of things overhead, unless the whole drawing is dashed."""
    return [s for s in strokes if not s.dashed] or strokes


def _without_doubles(strokes: Sequence[Stroke]) -> tuple[list[Stroke], int]:
    seen: dict[tuple[bool, Point, Point], Stroke] = {}
    for stroke in strokes:
        # A head keeps its own jambs though a wall has them too: it is read as a whole.
        ends = sorted(_rounded(point) for point in (stroke.start, stroke.end))
        seen.setdefault((stroke.role is Role.HEADER, ends[0], ends[1]), stroke)
    return list(seen.values()), len(strokes) - len(seen)


def _rounded(point: Point) -> Point:
    return round(point[0] / GRID_M) * GRID_M, round(point[1] / GRID_M) * GRID_M


def _held_at_both_ends(openings: list[Stroke], strong: list[Stroke]) -> list[Stroke]:
    """Strokes that end on a bound at both ends; a leaf stands free at one, a panel at both."""
    held: list[Stroke] = []
    rest, bounds = openings, lines_of(strong)
    while rest:
        if not bounds:
            return held
        tree = shapely.STRtree(bounds)
        touching = _touching(tree, [s.start for s in rest]) & _touching(tree, [s.end for s in rest])
        new = [rest[i] for i in sorted(touching)]
        if not new:
            return held
        held += new
        taken = set(map(id, new))
        rest = [s for s in rest if id(s) not in taken]
        bounds += lines_of(new)
    return held


def _touching(tree: shapely.STRtree, points: list[Point]) -> set[int]:
    """The places of the points that lie on a line of the tree."""
    which, _ = tree.query(shapely.points(points), predicate="dwithin", distance=_TOUCH_M)
    return set(which.tolist())
