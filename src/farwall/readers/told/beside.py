"""What stands beside rooms and openings: windows, fixtures, steps, stated areas."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import field
from math import dist

import shapely

from farwall.facts.reading import Note, StatedKind, Step
from farwall.floor.geometry import DECIMALS, Point, polygon_geometry, polygons_of
from farwall.floor.nouns import Fixture, Opening, Window
from farwall.nouns import dataclass
from farwall.readers.room_names import Ids
from farwall.readers.told.nouns import Told, ToldSpace
from farwall.readers.told.rooms import Rooms, unlifted

STEP_M = 0.02
"""A rise from which a foot feels a step. Rank: guess."""
STATED_SHARE = 0.005
"""Stated areas nearer than this to the polygon differ by rounding. Rank: guess."""
_STATED_M2 = 0.01
_SMALLEST_M = 0.12
"""A floor holds nothing smaller: a drain below that is drawn as a square of this side."""
_WORDS: dict[StatedKind, str] = {
    "net": "net",
    "gross": "gross",
    "wall-centre": "to wall centres",
    "size-text": "by lettered sizes",
}


def windows_of(told: Told, rooms: Rooms) -> tuple[tuple[Window, ...], list[Note]]:
    """Windows with the room that each lights: the told one, or the nearest on its storey."""
    found, dark = [], 0
    for window in told.windows:
        room = rooms.known(window.room) if window.room else None
        room = room or _nearest(window.line, window.storey, rooms, told.wall_m)
        dark += room is None
        line = _at(window.line[0]), _at(window.line[1])
        sill, height = _length(window.sill_m), _length(window.height_m)
        found.append(Window(line, sill, height, room=room or ""))
    if not dark:
        return tuple(found), []
    return tuple(found), [Note("window-nowhere", f"{dark} × window lies at no room of the file.")]


@dataclass
class Standing:
    """Fixtures in rooms, the storey of each by its id, and what stands in none."""

    fixtures: list[Fixture] = field(default_factory=list)
    storeys: dict[str, str] = field(default_factory=dict)
    left: list[Note] = field(default_factory=list)


def fixtures_of(told: Told, rooms: Rooms) -> Standing:
    """Fixtures cut to sound outlines; those that stand in no room are counted."""
    ids, found, lost = Ids(), Standing(), Counter[str]()
    for fixture in told.fixtures:
        parts = polygons_of(shapely.make_valid(fixture.shape))
        largest = _seen(max(parts, key=lambda part: part.area, default=None))
        room = None if largest is None else _room_under(largest, fixture.storey, rooms)
        if largest is None or room is None:
            lost[fixture.kind] += 1
            continue
        made = Fixture(fixture.kind, polygon_geometry(largest), ids.take(fixture.kind))
        found.fixtures.append(made)
        found.storeys[made.id] = room.storey
    found.left += [
        Note("fixture-nowhere", f"{count} × {kind} stands in no room of the file: left out.")
        for kind, count in sorted(lost.items())
    ]
    return found


def _seen(shape: shapely.Polygon | None) -> shapely.Polygon | None:
    if shape is None or shape.area >= _SMALLEST_M**2:
        return shape
    x, y, half = float(shape.centroid.x), float(shape.centroid.y), _SMALLEST_M / 2
    return shapely.box(x - half, y - half, x + half, y + half)


def _room_under(shape: shapely.Polygon, storey: str, rooms: Rooms) -> ToldSpace | None:
    """The room that most of a shape stands in, on its storey where that is told."""
    shares = [
        (float(space.shape.intersection(shape).area), space)
        for space in rooms.spaces.values()
        if not storey or storey in {space.storey, unlifted(space.storey)}
    ]
    best = max(shares, key=lambda pair: pair[0], default=None)
    return best[1] if best is not None and best[0] > 0 else None


def steps_of(openings: Iterable[Opening], rooms: Rooms) -> tuple[Step, ...]:
    """Steps under openings that join rooms at different heights."""
    steps = []
    for opening in openings:
        if len(set(opening.rooms)) < 2:
            continue
        one, other = (rooms.spaces[room] for room in opening.rooms)
        if one.floor_m is None or other.floor_m is None:
            continue
        rise = one.floor_m - other.floor_m
        if abs(rise) >= STEP_M:
            on_left = _on_left(opening.line, one.shape, other.shape)
            steps.append(Step(opening.line, round(rise if on_left else -rise, DECIMALS)))
    return tuple(steps)


def stated_notes(rooms: Rooms) -> list[Note]:
    """One line for each class of stated areas that are not those of the outlines."""
    ratios: dict[StatedKind, list[float]] = {}
    for space in rooms.spaces.values():
        if space.stated is not None and space.stated.area_m2 > 0:
            ratios.setdefault(space.stated.kind, []).append(
                space.shape.area / space.stated.area_m2
                if abs(space.shape.area - space.stated.area_m2) > _STATED_M2
                else 1.0
            )
    notes = []
    for kind, shares in ratios.items():
        off = [share for share in shares if abs(share - 1) > STATED_SHARE]
        if off:
            low, high = min(off) * 100, max(off) * 100
            span = f"{low:.1f} %" if high - low < 0.1 else f"{low:.1f} to {high:.1f} %"
            what = (
                f"Stated areas ({_WORDS[kind]}) differ from the outline in {len(off)} of "
                f"{len(shares)} rooms: the outline holds {span} of what is stated. The outline "
                "is used."
            )
            notes.append(Note("stated-differs", what))
    return notes


def shut_in_notes(openings: Iterable[Opening], rooms: Rooms) -> list[Note]:
    """Rooms that no opening of the file leads into."""
    entered = {room for opening in openings if len(set(opening.rooms)) > 1 or
               opening.kind == "outside" for room in opening.rooms}  # fmt: skip
    notes = []
    for room_id, space in rooms.spaces.items():
        if room_id not in entered:
            point = space.shape.representative_point()
            what = (
                f"No opening of the file leads into {rooms.label(room_id)}. Say where its door is."
            )
            notes.append(Note("no-way-in", what, _at((float(point.x), float(point.y)))))
    return notes


def _nearest(line: tuple[Point, Point], storey: str, rooms: Rooms, reach_m: float) -> str | None:
    seam = shapely.LineString(line)
    near = [
        (float(space.shape.distance(seam)), room_id)
        for room_id, space in rooms.spaces.items()
        if not storey or space.storey == storey
    ]
    best = min(near, default=(reach_m + 1, ""))
    return best[1] if best[0] <= reach_m else None


def _on_left(line: tuple[Point, Point], one: shapely.Polygon, other: shapely.Polygon) -> bool:
    """Whether the first shape lies to the left of the line, by what lies close to it."""
    (ax, ay), (bx, by) = line
    long = dist(*line)
    reach = 1.0
    nx, ny = -(by - ay) / long * reach, (bx - ax) / long * reach
    strip = shapely.Polygon([(ax, ay), (bx, by), (bx + nx, by + ny), (ax + nx, ay + ny)])
    return bool(one.intersection(strip).area >= other.intersection(strip).area)


def _length(value: float | None) -> float | None:
    return None if value is None else round(value, DECIMALS)


def _at(point: Point) -> Point:
    return round(point[0], DECIMALS) + 0.0, round(point[1], DECIMALS) + 0.0
