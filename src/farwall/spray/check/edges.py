"""Where bands meet: the edges between them, without those that a wall divides."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.nearest import Leg, Oldest, legs_of, oldest_on, reach_of
from farwall.spray.check.nouns import TIME_MIN, Band, Fault, Field, PlanRead
from farwall.spray.check.world import World

MEET_M = 0.005
"""Bands that come this close meet."""
TOUCH_M = 0.0005
"""Bands that a file's rounding alone sets apart are not further from each other."""
SHORT_M = 0.015
"""What is shorter than this is two corners that touch, not an edge."""
WALL_M = 0.001
"""An edge that meets a band across a wall is nearer to the wall than to the band: so much more."""


@dataclass(frozen=True, eq=False)
class Edge:
    """Where two bands of one coat meet, and not through a wall; `later` begins later."""

    later: Band
    earlier: Band
    line: BaseGeometry

    @property
    def straight(self) -> NDArray[np.float64]:
        """Its straight pieces, as rows of two points."""
        pieces = [
            piece
            for part in shapely.get_parts(self.line)
            for piece in pairwise(shapely.get_coordinates(part))
        ]
        return np.array(pieces)


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
    limit = field.open_low_min + TIME_MIN
    worst: dict[Edge, Oldest] = {}
    peak = -1.0
    for bound, edge, piece, legs in sorted(_bounded(edges), key=lambda row: -row[0]):
        if bound < min(peak, limit):
            break
        if bound <= peak and edge in worst and bound <= worst[edge].age_min:
            continue
        found = oldest_on(piece, *legs)
        peak = max(peak, found.age_min)
        if edge not in worst or found.age_min > worst[edge].age_min:
            worst[edge] = found
    seams = [Seam(edge, oldest) for edge, oldest in worst.items()]
    return sorted(seams, key=lambda seam: -seam.oldest.age_min)


_Bounded = tuple[float, Edge, NDArray[np.float64], tuple[list[Leg], list[Leg]]]


def _bounded(edges: Sequence[Edge]) -> Iterator[_Bounded]:
    """Each straight piece with a bound on its age from above and the legs that matter."""
    for edge in edges:
        pieces = edge.straight
        later, earlier = reach_of(pieces, edge.later.path), reach_of(pieces, edge.earlier.path)
        bounds = np.maximum(
            later.latest() - earlier.earliest(), earlier.latest() - later.earliest()
        )
        all_later, all_earlier = legs_of(edge.later.path), legs_of(edge.earlier.path)
        for row, bound in enumerate(bounds.tolist()):
            legs = (_kept(all_later, later.may[row]), _kept(all_earlier, earlier.may[row]))
            yield bound, edge, pieces[row], legs


def _kept(legs: list[Leg], may: NDArray[np.bool_]) -> list[Leg]:
    return [legs[index] for index in np.flatnonzero(may)]


def seams_by_field(plan: PlanRead, edges: Sequence[Edge]) -> dict[str, list[Seam]]:
    """The telling seams of every field, by its id; a field of one band has none."""
    own: dict[str, list[Edge]] = {field.id: [] for field in plan.fields}
    for edge in edges:
        if edge.later.field == edge.earlier.field:
            own[edge.later.field].append(edge)
    return {field.id: oldest_seams(field, own[field.id]) for field in plan.fields}


def dead_edges(field: Field, seams: Sequence[Seam], world: World) -> Iterator[Fault]:
    """`dead-edge`: a band met when its edge had outlived the low end of its open time."""
    for seam in seams:
        late = seam.oldest.age_min - field.open_low_min
        if late <= TIME_MIN:
            continue
        x, y = seam.oldest.x, seam.oldest.y
        yield Fault(
            "dead-edge",
            field.id,
            seam.oldest.met_min,
            f"At {seam.oldest.met_min:.2f} min, {world.place(x, y)} at ({x:.2f}, {y:.2f}), band "
            f"{seam.edge.later.id} meets the edge of band {seam.edge.earlier.id} at an age of "
            f"{seam.oldest.age_min:.2f} min; it stays live for {field.open_low_min:.2f} min: "
            f"{late:.2f} min too late.",
        )
