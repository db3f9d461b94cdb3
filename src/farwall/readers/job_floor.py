"""The floor of a job file: outlines closed and turned as GeoJSON wants, and their faults named."""

from __future__ import annotations

import itertools
import re
from collections.abc import Iterator
from dataclasses import replace

import shapely

from farwall.errors import Mistake, Refused
from farwall.facts.plain import plain
from farwall.floor.geojson import floor_from_collection
from farwall.floor.geometry import PolygonGeometry
from farwall.readers.job_limits import FARTHEST_M
from farwall.readers.json_text import Place, place_text
from farwall.readers.shape import Entry

LEAST_ROOM_M2 = 0.05
"""Below half a square foot a room is a slip of the drawing."""

_RINGS = list[list[list[float]]]


def floor_from_features(raw: dict[str, object]) -> list[Mistake]:
    """Replace a floor given as a GeoJSON FeatureCollection by the same floor in our own keys.

    Exits among its features stand in when the job itself names none. Returns
    what is wrong with the features; the floor is then left out.
    """
    floor = raw.get("floor")
    if not isinstance(floor, dict) or floor.get("type") != "FeatureCollection":
        return []
    try:
        made, exits = floor_from_collection(floor)
    except Refused as refusal:
        raw["floor"] = None
        return [replace(one, where=f"floor.{one.where}") for one in refusal.mistakes]
    raw["floor"] = plain(made, omit_empty=True)
    if exits and "exits" not in raw:
        raw["exits"] = plain(exits, omit_empty=True)
    return []


def mend_rings(entry: Entry) -> None:
    """Close open rings and turn them: outer counter-clockwise, holes clockwise (RFC 7946).

    The floor that the rings enclose stays the same, so nothing is said of it.
    """
    rings = _rings(entry)
    if rings is None:
        return
    for number, ring in enumerate(rings):
        if len(ring) > 2 and ring[0] != ring[-1]:
            ring.append(list(ring[0]))
        turned = _signed_area(ring)
        if (turned < 0 and number == 0) or (turned > 0 and number > 0):
            ring.reverse()


def outline_mistakes(entry: Entry) -> Iterator[Mistake]:
    """What is wrong with one outline; nothing is said of points that are no points."""
    rings = _rings(entry)
    if rings is None:
        return
    where = place_text(entry.place)
    yield from _too_far(where, rings)
    if any(abs(step) > FARTHEST_M for ring in rings for point in ring for step in point):
        return
    short = [ring for ring in rings if len({tuple(point) for point in ring}) < 3]
    if short or not rings:
        yield Mistake(where, "An outline needs at least three corners.", "Draw it again.")
        return
    shape = shapely.Polygon(rings[0], rings[1:])
    if not shape.is_valid:
        yield _unsound(where, shapely.is_valid_reason(shape))
    elif shape.area < _least_area(entry.place):
        yield Mistake(
            where,
            f"The outline encloses no floor ({shape.area:.2g} m²).",
            "Coordinates are metres; draw it again or take it out.",
        )


def far_points(place: Place, value: object) -> Iterator[Mistake]:
    """A line (opening, saw cut, window) that leaves the frame of a house."""
    if _is_ring(value):
        yield from _too_far(place_text(place), [value])  # type: ignore[list-item]


def _least_area(place: Place) -> float:
    return LEAST_ROOM_M2 if "rooms" in place else 1e-4


def _too_far(where: str, rings: _RINGS) -> Iterator[Mistake]:
    far = max((abs(step) for ring in rings for point in ring for step in point), default=0.0)
    if far > FARTHEST_M:
        yield Mistake(
            where,
            f"A point lies {far:.4g} from the origin; coordinates are metres in the house's frame.",
            "Is the drawing in millimetres, or in a survey grid? Bring it to metres near (0, 0).",
        )


def _unsound(where: str, reason: str) -> Mistake:
    found = re.match(r"(.*?)\[(\S+) (\S+)\]", reason)
    kind, near = reason, ""
    if found:
        kind = found.group(1)
        near = f" near ({float(found.group(2)):.2f}, {float(found.group(3)):.2f})"
    crossing = "self-intersection" in kind.lower()
    what = (
        "The outline crosses or touches itself" if crossing else f"The outline is not sound: {kind}"
    )
    return Mistake(where, f"{what}{near}.", "Put its corners in order, once around the room.")


def _rings(entry: Entry) -> _RINGS | None:
    if entry.noun is not PolygonGeometry:
        return None
    rings = entry.values.get("coordinates")
    if not isinstance(rings, list) or not all(_is_ring(ring) for ring in rings):
        return None
    return rings


def _is_ring(ring: object) -> bool:
    return isinstance(ring, list) and all(
        isinstance(point, list)
        and len(point) == 2
        and all(isinstance(s, int | float) and not isinstance(s, bool) for s in point)
        for point in ring
    )


def _signed_area(ring: list[list[float]]) -> float:
    return sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in itertools.pairwise(ring)) / 2
