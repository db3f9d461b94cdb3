"""Where bands meet: the edges between them, without those that a wall divides."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import repeat

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.nearest import Oldest, legs_of, oldest_on, reach_of
from farwall.spray.check.nouns import HAIR, TIME_MIN, Band, Fault, Field, PlanRead
from farwall.spray.check.world import World

MEET_M = 0.005
"""Bands that come this close meet."""
TOUCH_M = 0.0005
"""Bands that a file's rounding alone sets apart are not further from each other."""
SHORT_M = 0.015
"""What is shorter than this is two corners that touch, not an edge."""
PART_M = 0.1
"""An edge is bounded in parts no longer than this."""
WALL_M = 0.001
"""An edge that meets a band across a wall is nearer to the wall than to the band: so much more."""


@dataclass(frozen=True, eq=False)
class Edge:
    """Where two bands of one coat meet, and not through a wall; `later` begins later."""

    later: Band
    earlier: Band
    line: BaseGeometry

    @property
    def at_most(self) -> float:
        """No place of it is older: from one band's first moment to the other's last."""
        one, other = self.later.path[:, 2], self.earlier.path[:, 2]
        return float(max(one.max() - other.min(), other.max() - one.min()))


def _straight(line: BaseGeometry) -> NDArray[np.float64]:
    """The straight pieces of lines, as rows of two points."""
    points, part = shapely.get_coordinates(shapely.get_parts(line), return_index=True)
    same = part[:-1] == part[1:]
    return np.stack([points[:-1][same], points[1:][same]], axis=1)


def edges_of(bands: Sequence[Band], world: World) -> list[Edge]:
    """All edges between bands of the same coat."""
    by_coat: dict[str, list[Band]] = {}
    for band in bands:
        by_coat.setdefault(band.coat, []).append(band)
    return [edge for group in by_coat.values() for edge in _edges(group, world)]


def _edges(bands: list[Band], world: World) -> Iterator[Edge]:
    shapes = np.array([band.shape for band in bands])
    pairs = shapely.STRtree(shapes).query(shapes, predicate="dwithin", distance=MEET_M)
    later, earlier = pairs[:, pairs[0] > pairs[1]]
    lines = _meeting(shapes[later], shapes[earlier], world.walls)
    for one, other, line in zip(later, earlier, lines, strict=True):
        kept = _long_enough(line)
        if not kept.is_empty:
            yield Edge(bands[one], bands[other], kept)


def _meeting(
    later: NDArray[np.object_], earlier: NDArray[np.object_], walls: NDArray[np.object_]
) -> NDArray[np.object_]:
    """Where the outlines of pairs of bands meet, and not through a wall.

    Taken tightly, an edge ends where the other band ends; loosely, it runs on
    around the corner for a few millimetres, and is taken so only across a gap.
    """
    outlines = shapely.boundary(later)
    tight, loose = (
        _without_walls(
            shapely.intersection(outlines, shapely.buffer(earlier, metres, join_style="mitre")),
            shapely.buffer(walls, metres + WALL_M, cap_style="flat"),
        )
        for metres in (TOUCH_M, MEET_M)
    )
    gap = shapely.length(loose) - shapely.length(tight) > 2 * SHORT_M
    return np.asarray(np.where(gap, loose, tight))


def _without_walls(lines: NDArray[np.object_], bodies: NDArray[np.object_]) -> NDArray[np.object_]:
    """The lines less what runs along a wall; where one only ends at a wall it stays whole."""
    left = lines.copy()
    for line, wall in shapely.STRtree(bodies).query(lines, predicate="intersects").T:
        if shapely.length(shapely.intersection(lines[line], bodies[wall])) > SHORT_M:
            left[line] = shapely.difference(left[line], bodies[wall])
    return left


def _long_enough(line: BaseGeometry) -> shapely.MultiLineString:
    parts = shapely.get_parts(line)
    parts = parts[shapely.length(parts) > 0]
    merged = shapely.get_parts(shapely.line_merge(shapely.MultiLineString(parts.tolist())))
    return shapely.MultiLineString(merged[shapely.length(merged) > SHORT_M].tolist())


@dataclass(frozen=True, eq=False)
class Seam:
    """An edge inside a field with its oldest place."""

    edge: Edge
    oldest: Oldest


def oldest_seams(field: Field, edges: Sequence[Edge]) -> list[Seam]:
    """The edges of a field that hold its peak age or outlive its open time, oldest first.

    Each straight piece is bounded first; what cannot reach the peak nor the
    limit is left out, so the first seam is exactly the field's peak.
    """
    # Where rooms differ only the peak is sought here; `lives` holds edges to their own rooms.
    limit = np.inf if field.varies else field.limit_min + TIME_MIN
    worst: dict[Edge, Oldest] = {}
    peak = -1.0
    for piece in sorted(_telling(edges, limit), key=lambda piece: -piece.at_most):
        edge, bound = piece.edge, piece.at_most
        if bound < min(peak, limit):
            break
        if bound <= peak and edge in worst and bound <= worst[edge].age_min:
            continue
        found = piece.oldest()
        peak = max(peak, found.age_min)
        if edge not in worst or found.age_min > worst[edge].age_min:
            worst[edge] = found
    seams = [Seam(edge, oldest) for edge, oldest in worst.items()]
    return sorted(seams, key=lambda seam: -seam.oldest.age_min)


def _telling(edges: Sequence[Edge], limit: float) -> list[Piece]:
    """The pieces that may be the oldest of their edge, and reach the peak or the limit."""
    found: list[Piece] = []
    reached = 0.0
    for edge in sorted(edges, key=lambda edge: -edge.at_most):
        if edge.at_most < min(reached, limit) - HAIR:
            break
        pieces = list(bounded(edge.line, edge))
        own = max((piece.at_least for piece in pieces), default=0.0)
        reached = max(reached, own)
        found += [piece for piece in pieces if piece.at_most >= own - HAIR]
    return [piece for piece in found if piece.at_most >= min(reached, limit) - HAIR]


@dataclass(frozen=True, eq=False)
class Piece:
    """A straight piece of an edge; the greatest age on it lies between two bounds."""

    at_most: float
    at_least: float
    edge: Edge
    ends: NDArray[np.float64]
    may_later: NDArray[np.bool_]
    may_earlier: NDArray[np.bool_]

    def oldest(self) -> Oldest:
        """Its oldest place."""
        later = legs_of(self.edge.later.path, only=self.may_later)
        return oldest_on(self.ends, later, legs_of(self.edge.earlier.path, only=self.may_earlier))


def bounded(line: BaseGeometry, edge: Edge) -> Iterator[Piece]:
    """Each straight piece of a line on an edge, with bounds on its age and the legs that matter.

    The bounds are those of its parts, each so short that they lie close together.
    """
    pieces = _straight(line)
    parts, first = _parts(pieces)
    later, earlier = reach_of(parts, edge.later.path), reach_of(parts, edge.earlier.path)
    most = np.maximum(later.latest() - earlier.earliest(), earlier.latest() - later.earliest())
    least = np.maximum(later.first - earlier.last, earlier.first - later.last).max(axis=1)
    yield from map(
        Piece,
        np.maximum.reduceat(most, first).tolist(),
        np.maximum.reduceat(least, first).tolist(),
        repeat(edge),
        pieces,
        np.logical_or.reduceat(later.may, first),
        np.logical_or.reduceat(earlier.may, first),
    )


def _parts(pieces: NDArray[np.float64]) -> tuple[NDArray[np.float64], NDArray[np.intp]]:
    """Straight pieces cut into parts of at most `PART_M`, and where the parts of each begin."""
    way = pieces[:, 1] - pieces[:, 0]
    counts = np.ceil(np.hypot(*way.T) / PART_M).astype(int).clip(1)
    first = np.concatenate([[0], np.cumsum(counts)[:-1]])
    number = np.arange(counts.sum()) - np.repeat(first, counts)
    shares = np.stack([number, number + 1], axis=1) / np.repeat(counts, counts)[:, None]
    start, way = np.repeat(pieces[:, :1], counts, axis=0), np.repeat(way, counts, axis=0)
    return start + shares[:, :, None] * way[:, None, :], first


def edges_by_field(plan: PlanRead, edges: Sequence[Edge]) -> dict[str, list[Edge]]:
    """The edges inside every field, by its id."""
    own: dict[str, list[Edge]] = {field.id: [] for field in plan.fields}
    for edge in edges:
        if edge.later.field == edge.earlier.field:
            own[edge.later.field].append(edge)
    return own


def seams_by_field(plan: PlanRead, edges: Sequence[Edge]) -> dict[str, list[Seam]]:
    """The telling seams of every field, by its id; a field of one band has none."""
    own = edges_by_field(plan, edges)
    return {field.id: oldest_seams(field, own[field.id]) for field in plan.fields}


def dead_edges(field: Field, seams: Sequence[Seam], world: World) -> Iterator[Fault]:
    """`dead-edge`: a band met when its edge had outlived the low end of its open time."""
    for seam in seams:
        late = seam.oldest.age_min - field.limit_min
        if late <= TIME_MIN:
            continue
        x, y = seam.oldest.x, seam.oldest.y
        yield Fault(
            "dead-edge",
            field.id,
            seam.oldest.met_min,
            f"At {seam.oldest.met_min:.2f} min, {world.place(x, y)} at ({x:.2f}, {y:.2f}), band "
            f"{seam.edge.later.id} meets the edge of band {seam.edge.earlier.id} at an age of "
            f"{seam.oldest.age_min:.2f} min; it stays live for {field.limit_min:.2f} min: "
            f"{late:.2f} min too late.",
        )
