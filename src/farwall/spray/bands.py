"""From the walk to the exit to bands: strips one band wide, farthest first.

The level sets of the walk to the exit cut a field into rings; a ring that
falls apart (two arms of an L, both sides of an island) gives several bands. A
band touches others along *borders*: those are the edges that must stay wet.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import polygons_of
from farwall.spray.geodesic import WalkMap
from farwall.spray.world import HAIR_M, Seam, World

_CRUMB_M2 = 0.0004
_BORDER_M = 0.001
_SCRAP_SHARE = 0.8
_LEAST_BORDER_M = 0.01
_SEAM_OFF_M = 0.0115
"""How far floor may lie from a seam that it ends at: rooms may miss their openings by 10 mm."""


@dataclass(frozen=True)
class Strip:
    """One band before it has a time: its floor by piece, its level from the exit (0 nearest)."""

    parts: tuple[tuple[str, shapely.Polygon], ...]
    level: int

    @property
    def shape(self) -> BaseGeometry:
        """All of its floor."""
        return shapely.union_all([part for _, part in self.parts])

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
    """A field cut into strips, with every border between them."""

    strips: tuple[Strip, ...]
    borders: tuple[Border, ...]
    depth_m: float
    grown: tuple[tuple[float, float], ...]
    """Walks to the exit in metres, each with the floor in square metres that lies within it."""


def cut_into_strips(
    world: World, pieces: Sequence[str], walks: WalkMap, *, band_m: float, reach_m: float
) -> Strips:
    """The strips of a field, `band_m` deep along the walk to its exit.

    A scrap (a corner beyond the last full strip) joins the strip before it
    where a wand of `reach_m` from the strip's edge still gets there.
    """
    farthest = walks.farthest_m()
    count = max(1, math.ceil(farthest / band_m - 0.05))
    depth = farthest / count if count > 1 else band_m
    seams = [seam for seam in world.seams if seam.a in pieces and seam.b in pieces]
    rings = _rings(world, pieces, walks, count=count, depth=depth)
    strips = [strip for level, ring in enumerate(rings) for strip in _strips(ring, seams, level)]
    scraps = _Scraps(_SCRAP_SHARE * band_m * band_m, reach_m - depth)
    strips, borders = _merged(strips, seams, scraps)
    areas = np.cumsum([sum(part.area for _, part in ring) for ring in rings])
    grown = tuple((depth * (level + 1), float(area)) for level, area in enumerate(areas))
    return Strips(tuple(strips), tuple(borders), depth, grown)


Ring = list[tuple[str, shapely.Polygon]]


def _rings(
    world: World, pieces: Sequence[str], walks: WalkMap, *, count: int, depth: float
) -> list[Ring]:
    """By level, the parts of each piece in that ring; the last ring takes all that is left."""
    rings: list[Ring] = [[] for _ in range(count)]
    for name in pieces:
        piece = world.pieces[name]
        rest: BaseGeometry = piece.shape
        growing = walks.growing_in(piece.inner)
        for level in range(count - 1):
            near = growing.within(depth * (level + 1))
            if near.is_empty:
                continue
            near = shapely.buffer(near, 2 * HAIR_M, join_style="mitre")
            taken = shapely.intersection(rest, near)
            rest = shapely.difference(rest, near)
            rings[level].extend(_kept(name, taken))
            if rest.is_empty:
                break
        rings[-1].extend(_kept(name, rest))
    return rings


def _kept(name: str, shape: BaseGeometry) -> Ring:
    return [(name, part) for part in polygons_of(shape) if part.area > _CRUMB_M2]


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
        shared = shapely.intersection_all([line, shape.buffer(reach), other.buffer(reach)])
        # Two parts that only meet across a corner of the seam share a little more than the reach.
        if shared.length > max(_LEAST_BORDER_M, 4 * reach):
            return shared
    return None


def border_between(one: Strip, two: Strip, seams: Sequence[Seam]) -> BaseGeometry | None:
    """The line on which two strips touch on open floor or through a seam, or None."""
    lines = []
    for name, shape in one.parts:
        for other_name, other in two.parts:
            if name == other_name:
                if shape.distance(other) > _BORDER_M:
                    continue
                shared = shapely.intersection(shape.boundary, other.buffer(_BORDER_M))
                if shared.length > _LEAST_BORDER_M:
                    lines.append(shared)
            else:
                found = [_through(seam, name, other_name, shape, other) for seam in seams]
                lines.extend(line for line in found if line is not None)
    if not lines:
        return None
    whole = shapely.union_all(lines)
    return shapely.line_merge(whole) if whole.geom_type == "MultiLineString" else whole


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


def _merged(
    strips: list[Strip], seams: Sequence[Seam], scraps: _Scraps
) -> tuple[list[Strip], list[Border]]:
    """Scraps joined to the next strip nearer the exit; then all borders."""
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
    kept = sorted((s for s in strips if s.parts), key=lambda s: -s.level)
    borders = []
    for i, one in enumerate(kept):
        for j in range(i + 1, len(kept)):
            line = border_between(one, kept[j], seams)
            if line is not None:
                borders.append(Border(i, j, line))
    return kept, borders


def _joined(host: Strip, scrap: Strip) -> Strip:
    names = dict.fromkeys(name for name, _ in (*host.parts, *scrap.parts))
    parts: list[tuple[str, shapely.Polygon]] = []
    for name in names:
        same = [shape for piece, shape in (*host.parts, *scrap.parts) if piece == name]
        whole = polygons_of(shapely.union_all(same))
        parts.extend((name, shape) for shape in whole)
    return Strip(tuple(parts), host.level)
