"""Floor that nobody drew a room for: what an outline holds beside walls, doors and rooms."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import shapely

from farwall.floor.geometry import polygons_of
from farwall.nouns import dataclass

_LEAST_M2 = 1.0
_LEAST_WIDE_M = 0.5
"""A region that is smaller or narrower everywhere is a gap beside a wall (guess)."""
_HAIR_M = 0.01
_NAMED = 0.8


@dataclass(frozen=True)
class Regions:
    """Closed regions, largest first; and the number and area of what was too small [m2]."""

    shapes: tuple[shapely.Polygon, ...]
    slivers: int = 0
    slivers_m2: float = 0.0


def regions_of(outlines: Iterable[shapely.Polygon], taken: Iterable[shapely.Polygon]) -> Regions:
    """What outlines hold beside all that is taken: walls, doors, windows, rooms, shafts.

    Walls that meet but for a hairline are taken to meet.
    """
    solid = shapely.union_all([shape.buffer(_HAIR_M, join_style="mitre") for shape in taken])
    whole = shapely.union_all([shape if shape.is_valid else shape.buffer(0) for shape in outlines])
    rest = whole.difference(solid).buffer(_HAIR_M, join_style="mitre").intersection(whole)
    parts = sorted(polygons_of(rest), key=lambda part: (-part.area, part.bounds))
    real = [part for part in parts if _is_room(part)]
    small = [part for part in parts if not _is_room(part)]
    return Regions(tuple(real), len(small), float(sum(part.area for part in small)))


def _is_room(part: shapely.Polygon) -> bool:
    return part.area >= _LEAST_M2 and not part.buffer(-_LEAST_WIDE_M / 2).is_empty


def name_of(region: shapely.Polygon, zones: Sequence[tuple[str, shapely.Polygon]]) -> str:
    """The name of the zone that lies over nearly all of a region, and no other's."""
    names = [
        name
        for name, shape in zones
        if name and shape.intersection(region).area >= _NAMED * region.area
        and region.area >= _NAMED * shape.area
    ]  # fmt: skip
    return names[0] if len(names) == 1 else ""
