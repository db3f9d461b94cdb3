"""A reading cut into its storeys, each with what lies on it, to be drawn one beside another."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.reading import Note, Reading
from farwall.floor.geometry import Point
from farwall.floor.nouns import Fixture, Opening, Room, SawCut, Window
from farwall.job.repairs import numbered
from farwall.nouns import dataclass

Box = tuple[float, float, float, float]
_NEAR_M = 0.6
"""A window lies in the depth of a wall beside its room."""
_BESIDE_M = 3.0
"""A pin farther from the floor than this is told and not drawn."""


@dataclass(frozen=True)
class Level:
    """One storey of a reading: pins are the numbered notes that have a place on it."""

    name: str
    rooms: tuple[Room, ...]
    openings: tuple[Opening, ...]
    fixtures: tuple[Fixture, ...]
    saw_cuts: tuple[SawCut, ...]
    windows: tuple[Window, ...]
    pins: tuple[tuple[int, Note], ...]
    afar: tuple[int, ...] = ()
    """Numbers of notes whose place lies so far off that the floor would shrink for it."""

    @cached_property
    def ground(self) -> BaseGeometry:
        """All its floor, unsound outlines made sound for looking at."""
        return _ground(self.rooms)

    @property
    def bounds(self) -> Box:
        """West, south, east, north of its rooms, openings and pins [m]."""
        shapes = [room.polygon.shape for room in self.rooms]
        lines = [
            *(shapely.LineString(one.line) for one in self.openings),
            *(shapely.LineString(one.line) for one in self.windows),
        ]
        spots = [shapely.Point(note.where) for _, note in self.pins if note.where is not None]
        west, south, east, north = shapely.total_bounds([*shapes, *lines, *spots])
        return float(west), float(south), float(east), float(north)


def levels_of(reading: Reading) -> list[Level]:
    """The storeys that have rooms, the lowest first where heights are told."""
    floor = reading.floor
    known = {one.id: one for one in reading.storeys}
    ids = list(dict.fromkeys(room.storey for room in floor.rooms))
    ids.sort(key=lambda one: _height(known[one].elevation_m if one in known else None))
    grounds = {one: _ground([r for r in floor.rooms if r.storey == one]) for one in ids}
    rooms = {room.id: room.storey for room in floor.rooms}

    def on(shape: BaseGeometry, room: str = "") -> str:
        if room in rooms:
            return rooms[room]
        near = [one for one in ids if grounds[one].distance(shape) <= _NEAR_M]
        return near[0] if near else (ids[0] if ids else "")

    def near(note: Note, storey: str) -> bool:
        spot = shapely.Point(note.where or (0.0, 0.0))
        return bool(grounds[storey].distance(spot) <= _BESIDE_M)

    def stands(fixture: Fixture) -> str:
        return reading.fixture_storeys.get(fixture.id) or on(fixture.polygon.shape)

    notes = [
        (number, note, on(shapely.Point(note.where)))
        for number, note in enumerate(numbered(reading), 1)
        if note.where is not None
    ]
    return [
        Level(
            name=_named(one, reading) if len(ids) > 1 else "",
            rooms=tuple(room for room in floor.rooms if room.storey == one),
            openings=tuple(o for o in floor.openings if one in {rooms.get(r) for r in o.rooms}),
            fixtures=tuple(f for f in floor.fixtures if stands(f) == one),
            saw_cuts=tuple(c for c in floor.saw_cuts if on(shapely.LineString(c.line)) == one),
            windows=tuple(
                w for w in floor.windows if on(shapely.LineString(w.line), w.room) == one
            ),
            pins=tuple((n, note) for n, note, where in notes if where == one and near(note, one)),
            afar=tuple(n for n, note, where in notes if where == one and not near(note, one)),
        )
        for one in ids
    ]


def _ground(rooms: Sequence[Room]) -> BaseGeometry:
    sound: BaseGeometry = shapely.union_all(
        shapely.make_valid([room.polygon.shape for room in rooms])
    )
    return sound


def _height(elevation_m: float | None) -> float:
    return elevation_m if elevation_m is not None else 0.0


def _named(storey: str, reading: Reading) -> str:
    found = next((one for one in reading.storeys if one.id == storey), None)
    if found is None:
        return storey
    name = found.name or found.id
    told = found.elevation_m is None or f"{found.elevation_m:.2f}" in name
    return name if told else f"{name}, {found.elevation_m:+.2f} m"


def middle(line: Sequence[Point]) -> Point:
    """The middle between a line's two ends."""
    (ax, ay), (bx, by) = line[0], line[-1]
    return (ax + bx) / 2, (ay + by) / 2
