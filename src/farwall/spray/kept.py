"""A planned field taken up again: its sweep made from the bands in the plan's file.

Nothing is searched anew. Strips, the order, the way each is walked and the minutes it takes
are those of the plan; only the edges between bands are found again, to be aged by true times.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise

import numpy as np
import shapely

from farwall.errors import Unanswerable
from farwall.facts.plan import Band, Field, PlanTools
from farwall.floor.geometry import polygons_of
from farwall.spray.bands import Border, Strip, Strips, border_between
from farwall.spray.edges import Edge, edges_of
from farwall.spray.front import Front
from farwall.spray.kept_pass import KeptPass
from farwall.spray.sweep import Laid, Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.sweeps import Pieces
from farwall.spray.world import Seam, World, fused

_NEAR_M = 0.02
"""Bands further apart than this have no edge in common."""
_OWN_SHARE = 0.5
_CRUMB_M2 = 1e-4
_TOGETHER_MIN = 1e-3


class KeptSweeper(Sweeper):
    """A field whose sweep is there already. What is begun is not laid in another way."""

    def __init__(self, world: World, kept: Sweep, tools: PlanTools, *, l_per_m2: float) -> None:
        super().__init__(world, kept.pieces, kept.exit, tools, l_per_m2=l_per_m2)
        self.kept = kept

    def sweep(self, tools: PlanTools, *, thorough: bool = False, smoothed: bool = True) -> Sweep:
        """The sweep of the plan; others are sought only for other tools, or when asked for."""
        if tools == self.tools and not thorough:
            return self.kept
        self._insist_on_fresh()
        return super().sweep(tools, thorough=thorough, smoothed=smoothed)

    def shortest(self, tools: PlanTools) -> Sweep:  # noqa: ARG002 - the same question as above it
        """The sweep of the plan: it was the better one in the morning."""
        return self.kept

    def laid(self, tools: PlanTools, *, thorough: bool = False, smoothed: bool = True) -> Laid:
        """Its strips laid anew. Raises `Unanswerable` when some of them are sprayed."""
        self._insist_on_fresh()
        return super().laid(tools, thorough=thorough, smoothed=smoothed)

    def _insist_on_fresh(self) -> None:
        if self.kept.begun:
            raise Unanswerable("What is sprayed stays as it is; the field is not laid anew.")


def pieces_of(world: World, field: Field) -> Pieces:
    """The pieces of floor that a planned field is made of."""
    shapes = np.array([band.polygon.shape for band in field.bands])
    found = set()
    for name, piece in world.pieces.items():
        if piece.room not in field.rooms:
            continue
        near = shapes[shapely.intersects(shapes, piece.shape)]
        mine = float(shapely.area(shapely.intersection(near, piece.shape)).sum())
        if mine > _OWN_SHARE * piece.shape.area:
            found.add(name)
    return frozenset(found)


def exit_of(world: World, field: Field, pieces: Pieces) -> Seam:
    """The seam by which a planned field is left. Raises `Unanswerable` when there is none."""
    last = shapely.Point(field.bands[-1].path[-1][:2])
    seams = [
        seam
        for seam in world.seams
        if (seam.exit or seam.id) == field.exit and (seam.a in pieces) != (seam.b in pieces)
    ]
    if not seams:
        raise Unanswerable(f"Field {field.id} leaves by {field.exit}, which its floor has not.")
    return min(seams, key=lambda seam: seam.chord.distance(last))


def kept_sweep(
    world: World,
    field: Field,
    pieces: Pieces,
    *,
    tools: PlanTools,
    l_per_m2: float,
    done: Mapping[str, Band] | None = None,
    crew: int = 1,
) -> Sweep:
    """The sweep of a planned field; `done` are its first bands by id, with their true times.

    crew: how many sprayers the plan has. Halves of a band are passes of their own.
    """
    exit_seam = exit_of(world, field, pieces)
    closed, own, _ = fused(world, sorted(pieces), exit_seam)
    bands = sorted(field.bands, key=lambda band: band.order)
    strips = [_strip(closed, own, band, len(bands) - place) for place, band in enumerate(bands)]
    passes = tuple(
        KeptPass(
            strip,
            tuple((x, y) for x, y, _ in _once(band)),
            band.litres / l_per_m2,
            told_min=band.end_min - band.start_min,
            told_m2_min=tools.spray_m2_min,
            sprayer=band.sprayer,
            crew=crew,
            with_next=halved,
        )
        for strip, band, halved in zip(strips, bands, _halved(bands), strict=True)
    )
    seams = [seam for seam in closed.seams if seam.a in own and seam.b in own]
    cut = Strips(tuple(strips), _borders(strips, seams), field.band_m or tools.band_m)
    begun = tuple((done or {})[band.id] for band in bands if band.id in (done or {}))
    true = [(done or {}).get(band.id, band) for band in bands]
    times = [(band.start_min, band.end_min) for band in true]
    return Sweep(
        pieces=tuple(sorted(pieces)),
        exit=exit_seam,
        passes=passes,
        edges=_both_ways(edges_of(cut, range(len(strips)), passes), times, passes),
        depth_m=cut.depth_m,
        ground=None,
        front=Front("as planned", np.empty(0), np.empty(0), field.equivalent_front_m),
        begun=begun,
        stops=_stops(field, bands),
        told_bound_m=field.bound_m,
    )


def _halved(bands: Sequence[Band]) -> list[bool]:
    """For each band whether the next is its other half: begun in one minute by the other."""
    pairs = [
        one.sprayer != two.sprayer and abs(one.start_min - two.start_min) < _TOGETHER_MIN
        for one, two in pairwise(bands)
    ]
    return [*pairs, False]


def _both_ways(
    edges: Sequence[Edge], times: Sequence[tuple[float, float]], passes: Sequence[KeptPass]
) -> tuple[Edge, ...]:
    """The edges, and those of passes that are sprayed at once told the other way round too.

    Of those either may meet the other.
    """
    at_once = [
        Edge(
            edge.then,
            edge.first,
            _at_worst(edge.then_share, passes[edge.then], made=True),
            _at_worst(edge.first_share, passes[edge.first], made=False),
            edge.points,
        )
        for edge in edges
        if times[edge.then][0] < times[edge.first][1] - _TOGETHER_MIN
    ]
    return (*edges, *at_once)


def _at_worst(share: tuple[float, ...], each: KeptPass, *, made: bool) -> tuple[float, ...]:
    """The shares; those of one who stands still are the first or the last moment of the stand."""
    if each.length_m >= 1e-6:
        return share
    return tuple(0.0 if made else 1.0 for _ in share)


def borders_of(world: World, field: Field, pieces: Pieces) -> tuple[Border, ...]:
    """Every border between bands of a planned field, by their place in its order."""
    closed, own, _ = fused(world, sorted(pieces), exit_of(world, field, pieces))
    bands = sorted(field.bands, key=lambda band: band.order)
    strips = [_strip(closed, own, band, len(bands) - place) for place, band in enumerate(bands)]
    seams = [seam for seam in closed.seams if seam.a in own and seam.b in own]
    return _borders(strips, seams)


def _once(band: Band) -> Sequence[tuple[float, float, float]]:
    """The path; a person who stands is there once."""
    first = band.path[0][:2]
    return band.path[:1] if all(row[:2] == first for row in band.path) else band.path


def _strip(world: World, own: Sequence[str], band: Band, level: int) -> Strip:
    """The band's floor by piece; the hair that joins two pieces at a door goes to either."""
    shape = band.polygon.shape
    parts = []
    for name in own:
        piece = world.pieces[name].shape
        if piece.intersects(shape):
            common = shapely.intersection(piece, shape)
            parts += [(name, part) for part in polygons_of(common) if part.area > _CRUMB_M2]
    if len({name for name, _ in parts}) <= 1:
        name = parts[0][0] if parts else own[0]
        return Strip(((name, shape),), level)
    return Strip(tuple(parts), level)


def _borders(strips: Sequence[Strip], seams: Sequence[Seam]) -> tuple[Border, ...]:
    shapes = np.array([strip.shape for strip in strips])
    pairs = shapely.STRtree(shapes).query(shapes, predicate="dwithin", distance=_NEAR_M)
    found = []
    for one, other in sorted(zip(*pairs.tolist(), strict=True)):
        if one < other:
            line = border_between(strips[one], strips[other], seams)
            if line is not None:
                found.append(Border(one, other, line))
    return tuple(found)


def _stops(field: Field, bands: Sequence[Band]) -> tuple[int, ...]:
    """Before which bands the plan fills the tank."""
    stops = []
    for refill in field.refills:
        after = [place for place, band in enumerate(bands) if band.start_min >= refill.at_min]
        if after:
            stops.append(after[0])
    return tuple(dict.fromkeys(stops))
