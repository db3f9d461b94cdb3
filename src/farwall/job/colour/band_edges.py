"""Where bands of spraying met in a room, by the plan and what the log says was done. Pure.

A lap line can lie only there. Bands that follow one another without a wait, as all do within a
field, meet at a live edge on the plan; whether it was live on the day the floor shows.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.colour.marks.nouns import KnownEdge
from farwall.facts.plan import Band, Plan

OFF_M = 0.12
"""By how much the hand's edge lies beside that of the plan, one standard deviation: bands are found
by ticks along the walls. Rank: guess."""
LEAST_M = 0.5
"""A shorter edge is not told. Rank: guess."""
MOST = 60
"""A room with more edges than that tells its longest. Rank: guess."""
_APART_M = 0.01


def band_edges(plan: Plan, room: str, done: Collection[str] = ()) -> tuple[KnownEdge, ...]:
    """Edges between bands of every coat in a room, the middle of the strip that both bands wet.

    done: ids of the bands that are sprayed; empty where nobody told: then all of the plan count.
    A room that the plan has no band in gives none.
    """
    shapes = {one.id: one.polygon.shape for one in plan.inputs.floor.rooms}
    if room not in shapes:
        return ()
    number = {coat.id: n for n, coat in enumerate(plan.inputs.coats, 1)}
    half_m = plan.inputs.tools.overlap_m / 2
    found = []
    for field in plan.fields:
        bands = sorted(field.bands, key=lambda band: band.order)
        sprayed = [band for band in bands if not done or band.id in done]
        for n, band in enumerate(sprayed):
            found += [
                KnownEdge(line, OFF_M, number[field.coat], band.order)
                for line in _met(band, sprayed[n + 1 :], shapes[room], half_m)
            ]
    found.sort(key=lambda one: -shapely.LineString(one.line).length)
    return tuple(sorted(found[:MOST], key=lambda one: (one.coat, one.band, one.line)))


def _met(
    band: Band, later: Sequence[Band], room: BaseGeometry, half_m: float
) -> Iterator[tuple[tuple[float, float], ...]]:
    """Lines in the band at half the overlap from each band that wetted its edge later."""
    own = band.polygon.shape.intersection(room)
    for other in later:
        reach = max(half_m, _APART_M)
        line = other.polygon.shape.buffer(reach, join_style="mitre").boundary.intersection(own)
        if line.is_empty or other.polygon.shape.distance(own) > _APART_M:
            continue
        for part in _lines(line):
            if part.length >= LEAST_M:
                yield tuple((round(x, 3), round(y, 3)) for x, y in part.coords)


def _lines(of: BaseGeometry) -> list[shapely.LineString]:
    parts = [one for one in getattr(of, "geoms", [of]) if isinstance(one, shapely.LineString)]
    merged = shapely.line_merge(shapely.MultiLineString(parts))
    return [one for one in getattr(merged, "geoms", [merged]) if not one.is_empty]
