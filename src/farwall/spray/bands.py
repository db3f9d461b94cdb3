"""From a sweep to bands: strips one band deep, farthest first.

The level lines of a sweep cut a field into rings; a ring that falls apart (two
arms of an L, both sides of an island) gives several bands. A band touches
others along *borders*: those are the edges that must stay wet.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from functools import cached_property

import numpy as np
import shapely
import shapely.ops
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import polygons_of
from farwall.nouns import dataclass
from farwall.spray.world import KEEP_OFF_M, Seam, World, rounded

_BORDER_M = 0.005
_TIDY_M = 0.0004
_TOUCH_M = 1e-4
_SCRAP_SHARE = 0.8
_FRONTS_APART_M = 4.0
_ACROSS_M = 100.0
_LEAST_BORDER_M = 0.015
_SEAM_OFF_M = 0.0115
"""How far floor may lie from a seam that it ends at: rooms may miss their openings by 10 mm."""


@dataclass(frozen=True)
class Strip:
    """One band before it has a time: its floor by piece, its level from the exit (0 nearest)."""

    parts: tuple[tuple[str, shapely.Polygon], ...]
    level: int

    @cached_property
    def shape(self) -> BaseGeometry:
        """All of its floor."""
        if len(self.parts) == 1:
            return self.parts[0][1]
        return shapely.union_all([part for _, part in self.parts])

    @cached_property
    def kept_off(self) -> BaseGeometry:
        """Where no body's centre may be once the strip is wet."""
        shape = self.shape.simplify(_TIDY_M)
        kept = shapely.buffer(shape, KEEP_OFF_M, quad_segs=8)
        # The library's buffer comes out crossing itself on rare shapes; finer arcs do not.
        return kept if kept.is_valid else shapely.buffer(shape, KEEP_OFF_M, quad_segs=16)

    @property
    def area_m2(self) -> float:
        """Its floor in square metres."""
        return float(sum(part.area for _, part in self.parts))


@dataclass(frozen=True)
class Border:
    """Where two strips meet: indices into the strips, farther one first, and the line."""

    far: int
    near: int
    line: BaseGeometry


@dataclass(frozen=True)
class Strips:
    """A field cut into strips of at most `depth_m`, with every border between them."""

    strips: tuple[Strip, ...]
    borders: tuple[Border, ...]
    depth_m: float


Ring = list[tuple[str, shapely.Polygon]]


def cut_into_strips(
    world: World,
    pieces: Sequence[str],
    rings: Sequence[Ring],
    *,
    band_m: float,
    depth_m: float,
    reach_m: float,
    scraps: bool = True,
    most_m2: float = math.inf,
) -> Strips:
    """The strips of a field from its `rings`, the one at the exit first, `depth_m` deep.

    A scrap (a corner beyond the last full strip) joins the strip before it
    where a wand of `reach_m` from the strip's edge still gets there, unless
    `scraps` is False. A strip with fronts far apart (both sides of an island)
    is parted between them, and one of more than `most_m2` (a tank) across.
    """
    seams = [seam for seam in world.seams if seam.a in pieces and seam.b in pieces]
    strips = [strip for level, ring in enumerate(rings) for strip in _strips(ring, seams, level)]
    joining = _Scraps(_SCRAP_SHARE * band_m * band_m if scraps else 0.0, reach_m - band_m)
    strips = _merged(strips, seams, joining)
    borders = _borders(strips, seams)
    parted = _parted(strips, borders, most_m2)
    if len(parted) > len(strips):
        strips, borders = parted, _borders(parted, seams)
    return Strips(tuple(strips), tuple(borders), depth_m)


def _strips(ring: Ring, seams: Sequence[Seam], level: int) -> list[Strip]:
    """The connected strips of one ring: parts joined through seams, never through walls."""
    groups = {index: {index} for index in range(len(ring))}
    for i, (one, shape) in enumerate(ring):
        for j in range(i + 1, len(ring)):
            two, other = ring[j]
            if groups[i] is groups[j] or one == two:
                continue
            if any(_through(seam, one, two, shape, other) is not None for seam in seams):
                joined = groups[i] | groups[j]
                groups.update(dict.fromkeys(joined, joined))
    unique = {id(group): group for group in groups.values()}
    return [Strip(tuple(ring[i] for i in sorted(group)), level) for group in unique.values()]


def _through(
    seam: Seam, one: str, two: str, shape: shapely.Polygon, other: shapely.Polygon
) -> BaseGeometry | None:
    """The line along a seam on which two parts face each other, or None."""
    if {one, two} != {seam.a, seam.b}:
        return None
    line = seam.chord
    off = max(line.distance(shape), line.distance(other))
    if off > _SEAM_OFF_M:
        return None
    for reach in (off + _BORDER_M, _SEAM_OFF_M):
        shared = shapely.intersection_all([line, rounded(shape, reach), rounded(other, reach)])
        # Two parts that only meet across a corner of the seam share a little more than the reach.
        if shared.length > max(_LEAST_BORDER_M, 4 * reach):
            return shared
    return None


def border_between(one: Strip, two: Strip, seams: Sequence[Seam]) -> BaseGeometry | None:
    """The line on which two strips touch on open floor or through a seam, or None."""
    open_floor: list[BaseGeometry] = []
    through: list[BaseGeometry] = []
    for name, shape in one.parts:
        for other_name, other in two.parts:
            if name == other_name:
                if shape.distance(other) > _BORDER_M:
                    continue
                shared = _touching(shape, other)
                if shared.length > _LEAST_BORDER_M:
                    open_floor.append(shared)
            else:
                found = [_through(seam, name, other_name, shape, other) for seam in seams]
                through.extend(line for line in found if line is not None)
    if open_floor and through:
        # A strip that goes a hair beyond the seam meets the next one there, and only there.
        taken = shapely.union_all(open_floor).buffer(_SEAM_OFF_M + _BORDER_M)
        rest = [shapely.difference(line, taken) for line in through]
        through = [line for line in rest if line.length > _LEAST_BORDER_M]
    if not open_floor and not through:
        return None
    whole = shapely.union_all([*open_floor, *through])
    return shapely.line_merge(whole) if whole.geom_type == "MultiLineString" else whole


def _touching(shape: shapely.Polygon, other: shapely.Polygon) -> BaseGeometry:
    """The outline of a part where it touches another; the far side of a sliver is no such line."""
    about = shapely.intersection(shape.boundary, rounded(other, _BORDER_M))
    if 2 * shape.area > 3 * _BORDER_M * shape.length:
        return about
    near = shapely.intersection(shape.boundary, rounded(other, _TOUCH_M))
    return shapely.union(near, shapely.difference(about, near.buffer(3 * _BORDER_M)))


@dataclass(frozen=True)
class _Scraps:
    """What is too small to be a strip of its own, and how far it may stick out of another."""

    least_m2: float
    out_m: float

    def joins(self, scrap: Strip, host: Strip) -> bool:
        if host.level != scrap.level - 1 or not host.parts:
            return False
        corners = shapely.points(shapely.get_coordinates(scrap.shape))
        return bool(shapely.distance(corners, host.shape).max() <= self.out_m)


def _merged(strips: list[Strip], seams: Sequence[Seam], scraps: _Scraps) -> list[Strip]:
    """Scraps joined to the next strip nearer the exit; farthest strips first."""
    strips = list(strips)
    for index in sorted(range(len(strips)), key=lambda i: -strips[i].level):
        scrap = strips[index]
        if scrap.area_m2 >= scraps.least_m2:
            continue
        for host_index, host in enumerate(strips):
            if scraps.joins(scrap, host) and border_between(scrap, host, seams) is not None:
                strips[host_index] = _joined(host, scrap)
                strips[index] = Strip((), scrap.level)
                break
    return sorted((s for s in strips if s.parts), key=lambda s: -s.level)


def _borders(strips: Sequence[Strip], seams: Sequence[Seam]) -> list[Border]:
    """Every border between strips, the one farther from the exit named first."""
    borders = []
    for i, one in enumerate(strips):
        for j in range(i + 1, len(strips)):
            line = border_between(one, strips[j], seams)
            if line is not None:
                borders.append(Border(i, j, line))
    return borders


def _parted(strips: Sequence[Strip], borders: Sequence[Border], most_m2: float) -> list[Strip]:
    """The strips, those with fronts far apart or too large cut: each part to its nearest front."""
    found: list[Strip] = []
    for index, strip in enumerate(strips):
        fronts = [
            border.line
            for border in borders
            if border.far == index and strips[border.near].level < strip.level
        ]
        groups = _far_apart(fronts)
        if strip.area_m2 > most_m2 and len(groups) == 1:
            groups = _shared_out(groups[0], math.ceil(strip.area_m2 / most_m2))
        found.extend(_by_front(strip, groups) if len(groups) > 1 else [strip])
    return found


def _far_apart(fronts: Sequence[BaseGeometry]) -> list[BaseGeometry]:
    """Front lines in groups that lie more than `_FRONTS_APART_M` from each other."""
    groups: list[BaseGeometry] = []
    for line in (part for front in fronts for part in shapely.get_parts(front)):
        near = [group for group in groups if group.distance(line) <= _FRONTS_APART_M]
        groups = [group for group in groups if group not in near]
        groups.append(shapely.union_all([line, *near]))
    return groups


def _shared_out(front: BaseGeometry, count: int) -> list[BaseGeometry]:
    """A front line in `count` stretches of the same length."""
    line = shapely.line_merge(front) if front.geom_type == "MultiLineString" else front
    longest = max(shapely.get_parts(line).tolist(), key=lambda part: part.length)
    steps = np.linspace(0, longest.length, count + 1)
    return [shapely.ops.substring(longest, a, b) for a, b in itertools.pairwise(steps)]


def _by_front(strip: Strip, groups: Sequence[BaseGeometry]) -> list[Strip]:
    """The strip cut straight across between its groups of fronts, each part to its own group."""
    first, *rest = groups
    if not rest or len(strip.parts) != 1:
        return [strip]
    name, shape = strip.parts[0]
    other = min(rest, key=lambda group: group.distance(first))
    halves = polygons_of(shapely.ops.split(shape, _between(first, other)))
    whole_rest = shapely.union_all(rest)
    near = [half for half in halves if half.distance(first) <= half.distance(whole_rest)]
    mine = polygons_of(shapely.union_all(near))
    others = polygons_of(shapely.union_all([half for half in halves if half not in near]))
    if len(mine) != 1 or len(others) != 1:
        return [strip]
    left = Strip(((name, others[0]),), strip.level)
    return [Strip(((name, mine[0]),), strip.level), *_by_front(left, rest)]


def _between(one: BaseGeometry, two: BaseGeometry) -> shapely.LineString:
    """A long straight line halfway between two front lines, across the way between them."""
    gap = np.asarray(shapely.shortest_line(one, two).coords)
    middle = gap.mean(axis=0)
    along = gap[1] - gap[0]
    if np.hypot(*along) < _BORDER_M:
        ends = [np.asarray(shapely.centroid(line).coords)[0] for line in (one, two)]
        along = ends[1] - ends[0]
    across = np.array([-along[1], along[0]]) / max(float(np.hypot(*along)), 1e-9)
    return shapely.LineString([middle - _ACROSS_M * across, middle + _ACROSS_M * across])


def _joined(host: Strip, scrap: Strip) -> Strip:
    names = dict.fromkeys(name for name, _ in (*host.parts, *scrap.parts))
    parts: list[tuple[str, shapely.Polygon]] = []
    for name in names:
        same = [shape for piece, shape in (*host.parts, *scrap.parts) if piece == name]
        whole = polygons_of(shapely.union_all(same))
        parts.extend((name, shape) for shape in whole)
    return Strip(tuple(parts), host.level)
