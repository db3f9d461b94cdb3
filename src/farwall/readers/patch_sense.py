"""Whether the patches of a job lie where they are said to lie, and are decided in one way."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

import shapely

from farwall.errors import Mistake
from farwall.readers.wording import shown

_LEAST_INSIDE = 0.5
"""A patch with less of its floor in its room than this is drawn elsewhere. Rank: guess."""
_TOUCH_M2 = 0.01
_LEAST_LEFT_M2 = 0.05
_LEFT = "leave for another colour"


def patch_mistakes(raw: dict[str, object]) -> Iterator[Mistake]:
    """Outlines off their room, left patches without an outline, two decisions for one place."""
    floors = {
        name: shape
        for room in _rows(raw.get("floor"), "rooms")
        if isinstance(name := room.get("id"), str) and (shape := _shape(room)) is not None
    }
    drawn: list[tuple[int, dict[str, object], shapely.Polygon]] = []
    for number, patch in enumerate(_rows(raw.get("survey"), "patches")):
        place = f"survey.patches[{number}]"
        shape = _shape(patch)
        if shape is not None:
            drawn.append((number, patch, shape))
            yield from _off(patch, shape, floors, place)
        elif patch.get("decision") == _LEFT and patch.get("polygon") is None:
            said = "It is to be left dry, and its outline is missing."
            yield Mistake(f"{place}.polygon", said, "Draw it, as a polygon in metres.")
    yield from _twice(drawn)
    yield from _nothing_left(drawn, floors)


def _off(
    patch: dict[str, object],
    shape: shapely.Polygon,
    floors: dict[str, shapely.Polygon],
    place: str,
) -> Iterator[Mistake]:
    room = patch.get("room")
    if not isinstance(room, str) or room not in floors:
        return
    inside = shape.intersection(floors[room]).area
    if inside >= _LEAST_INSIDE * shape.area:
        return
    there = max(floors, key=lambda name: float(shape.intersection(floors[name]).area))
    lies = shape.intersection(floors[there]).area >= _LEAST_INSIDE * shape.area
    said = f"Only {inside:.2f} of its {shape.area:.2f} m² lie in room {shown(room)}."
    remedy = "Draw it on that room's floor, in metres."
    if lies:
        remedy = f"It lies in {shown(there)}: name that room."
    yield Mistake(f"{place}.polygon", said, remedy)


def _twice(drawn: list[tuple[int, dict[str, object], shapely.Polygon]]) -> Iterator[Mistake]:
    for (_, one, shape), (number, other, beside) in combinations(drawn, 2):
        differ = (one.get("decision") == _LEFT) != (other.get("decision") == _LEFT)
        shared = shape.intersection(beside).area
        if differ and shared > _TOUCH_M2:
            said = f"{shared:.2f} m² of it also lie in {shown(one.get('id'))}, which is decided "
            said += "otherwise: a place is stained or it is left dry."
            yield Mistake(f"survey.patches[{number}]", said, "Draw them beside each other.")


def _nothing_left(
    drawn: list[tuple[int, dict[str, object], shapely.Polygon]],
    floors: dict[str, shapely.Polygon],
) -> Iterator[Mistake]:
    for name, floor in floors.items():
        dry = {n: s for n, p, s in drawn if p.get("room") == name and p.get("decision") == _LEFT}
        if dry and floor.difference(shapely.union_all(list(dry.values()))).area < _LEAST_LEFT_M2:
            said = f"Nothing of room {shown(name)} is left to stain."
            yield Mistake(f"survey.patches[{min(dry)}]", said, "Leave that room out of the job.")


def _shape(row: dict[str, object]) -> shapely.Polygon | None:
    """The sound outline of a room or patch; None where it has none, or one that is told already."""
    outline = row.get("polygon")
    rings = outline.get("coordinates") if isinstance(outline, dict) else None
    try:
        shape = shapely.Polygon(rings[0], rings[1:]) if isinstance(rings, list) else None
    except (TypeError, ValueError, IndexError, shapely.errors.ShapelyError):
        return None
    return shape if shape is not None and shape.is_valid and shape.area > 0 else None


def _rows(part: object, key: str) -> list[dict[str, object]]:
    found = part.get(key) if isinstance(part, dict) else None
    if not isinstance(found, list):
        return []
    return [one if isinstance(one, dict) else {} for one in found]
