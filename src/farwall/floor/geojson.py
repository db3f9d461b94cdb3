"""A floor as a GeoJSON FeatureCollection in metres, and back without loss.

Format: RFC 7946 geometry objects; the frame is local metres, told by the foreign member
`units`. Each feature's property `kind` is room, opening, exit, fixture, saw cut or window.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping, Sequence
from math import isfinite
from typing import Any, cast, get_args

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point, PolygonGeometry, Ring
from farwall.floor.nouns import (
    Exit,
    Fixture,
    Floor,
    Opening,
    OpeningKind,
    Room,
    SawCut,
    Window,
)

Json = dict[str, Any]
KINDS = ("room", "opening", "exit", "fixture", "saw cut", "window")
BESIDE = ("step", "stop line", "band")
"""Kinds that stand beside a floor in an export and are no part of it: passed over here."""


def floor_collection(floor: Floor, exits: Sequence[Exit] = ()) -> Json:
    """The FeatureCollection of a floor and its exits; an exit's geometry is its opening's line."""
    features = [
        *(_room(room) for room in floor.rooms),
        *(_opening(opening) for opening in floor.openings),
        *(_exit(way, floor) for way in exits),
        *(_fixture(fixture) for fixture in floor.fixtures),
        *(feature("saw cut", _line(cut.line), id=cut.id) for cut in floor.saw_cuts),
        *(_window(window) for window in floor.windows),
    ]
    collection = {"type": "FeatureCollection", "units": "m", "features": features}
    return collection if floor.north_deg is None else {**collection, "north_deg": floor.north_deg}


def floor_from_collection(collection: Mapping[str, Any]) -> tuple[Floor, tuple[Exit, ...]]:
    """The floor and exits of a collection whose features carry our kinds.

    Raises Refused with every mistake and its place.
    """
    reader = _Reader()
    features = collection.get("features")
    if not isinstance(features, list):
        raise Refused(Mistake("features", "there is no list of features.", "Give a list."))
    for index, feature in enumerate(features):
        reader.read(f"features[{index}]", feature)
    north = collection.get("north_deg")
    if north is not None and not _is_number(north):
        reader.mistake("north_deg", "north is no number.", "Give degrees clockwise from up.")
    if reader.mistakes:
        raise Refused(*reader.mistakes)
    return reader.floor(None if north is None else float(north)), tuple(reader.exits)


class _Reader:
    """Collects nouns and mistakes, feature by feature."""

    def __init__(self) -> None:
        self.mistakes: list[Mistake] = []
        self.rooms: list[Room] = []
        self.openings: list[Opening] = []
        self.exits: list[Exit] = []
        self.fixtures: list[Fixture] = []
        self.saw_cuts: list[SawCut] = []
        self.windows: list[Window] = []

    def floor(self, north_deg: float | None) -> Floor:
        return Floor(
            tuple(self.rooms),
            tuple(self.openings),
            tuple(self.fixtures),
            tuple(self.saw_cuts),
            tuple(self.windows),
            north_deg,
        )

    def mistake(self, where: str, what: str, remedy: str = "") -> None:
        self.mistakes.append(Mistake(where, what, remedy))

    def read(self, where: str, feature: Any) -> None:
        properties = feature.get("properties") if isinstance(feature, dict) else None
        if not isinstance(properties, dict):
            self.mistake(where, "this is no feature with properties.", "Give `properties`.")
            return
        takers: dict[str, Callable[[str, Json, Any], None]] = {
            "room": self._room,
            "opening": self._opening,
            "exit": self._exit,
            "fixture": self._fixture,
            "saw cut": self._saw_cut,
            "window": self._window,
        }
        kind = properties.get("kind")
        if kind in BESIDE:
            return
        if not isinstance(kind, str) or kind not in takers:
            known = ", ".join(takers)
            self.mistake(f"{where}.properties.kind", f"the kind {_shown(kind)} is not known.",
                         f"There are: {known}.")  # fmt: skip
            return
        takers[kind](where, properties, feature.get("geometry"))

    def _room(self, where: str, properties: Json, geometry: Any) -> None:
        polygon = self._polygon(f"{where}.geometry", geometry)
        name, storey = (self._text(where, properties, key) for key in ("name", "storey"))
        room_id = self._text(where, properties, "id", needed=True)
        if polygon and room_id:
            self.rooms.append(Room(room_id, polygon, name, storey))

    def _opening(self, where: str, properties: Json, geometry: Any) -> None:
        opening_id = self._text(where, properties, "id", needed=True)
        kind = properties.get("opening")
        if kind not in get_args(OpeningKind):
            known = ", ".join(get_args(OpeningKind))
            self.mistake(f"{where}.properties.opening", f"{_shown(kind)} is no kind of opening.",
                         f"There are: {known}.")  # fmt: skip
        rooms = properties.get("rooms")
        if not isinstance(rooms, list) or not all(isinstance(room, str) for room in rooms):
            self.mistake(f"{where}.properties.rooms", "the rooms are no list of ids.")
            rooms = []
        threshold = properties.get("threshold")
        polygon = self._polygon(f"{where}.properties.threshold", threshold) if threshold else None
        line = self._line(f"{where}.geometry", geometry, points=2)
        width = self._number(where, properties, "width_m")
        if width is not None and width <= 0:
            self.mistake(f"{where}.properties.width_m", f"an opening is not {width:g} m wide.",
                         "Give metres, or leave it out.")  # fmt: skip
        if line and opening_id:
            ends = line[0], line[1]
            self.openings.append(
                Opening(opening_id, cast(OpeningKind, kind), ends, tuple(rooms), width, polygon)
            )

    def _exit(self, where: str, properties: Json, _: Any) -> None:
        exit_id, opening = (
            self._text(where, properties, key, needed=True) for key in ("id", "opening")
        )
        self.exits.append(Exit(exit_id, opening))

    def _fixture(self, where: str, properties: Json, geometry: Any) -> None:
        polygon = self._polygon(f"{where}.geometry", geometry)
        kind = self._text(where, properties, "fixture", needed=True)
        if polygon:
            self.fixtures.append(Fixture(kind, polygon, self._text(where, properties, "id")))

    def _saw_cut(self, where: str, properties: Json, geometry: Any) -> None:
        line = self._line(f"{where}.geometry", geometry)
        if line:
            self.saw_cuts.append(SawCut(line, self._text(where, properties, "id")))

    def _window(self, where: str, properties: Json, geometry: Any) -> None:
        line = self._line(f"{where}.geometry", geometry, points=2)
        sill, height, reveal = (
            self._number(where, properties, key) for key in ("sill_m", "height_m", "reveal_m")
        )
        window_id, room = (self._text(where, properties, key) for key in ("id", "room"))
        said = {key: properties.get(key, False) for key in ("covered", "main")}
        for key, value in said.items():
            if not isinstance(value, bool):
                self.mistake(f"{where}.properties.{key}", "this is neither true nor false.")
        if line:
            ends = (line[0], line[1])
            covered, main = (value is True for value in said.values())
            self.windows.append(Window(ends, sill, height, window_id, room, reveal, covered, main))

    def _text(self, where: str, properties: Json, key: str, *, needed: bool = False) -> str:
        value = properties.get(key, "")
        if isinstance(value, str) and (value or not needed):
            return value
        self.mistake(f"{where}.properties.{key}", f"{key} is no text.", "Give a text.")
        return ""

    def _number(self, where: str, properties: Json, key: str) -> float | None:
        value = properties.get(key)
        if value is None or _is_number(value):
            return value
        self.mistake(f"{where}.properties.{key}", f"{key} is no number.", "Give metres.")
        return None

    def _polygon(self, where: str, geometry: Any) -> PolygonGeometry | None:
        polygon = polygon_from(geometry)
        if polygon is None:
            self.mistake(where, "this is no polygon.",
                         "Give a GeoJSON Polygon: rings of [x, y] in metres, closed.")  # fmt: skip
        return polygon

    def _line(self, where: str, geometry: Any, *, points: int | None = None) -> Ring | None:
        line = line_from(geometry)
        if line is None or (points is not None and len(line) != points):
            count = "two" if points else "at least two"
            self.mistake(where, "this is no line.", f"Give a LineString of {count} points.")
            return None
        return line


def polygon_from(geometry: Any) -> PolygonGeometry | None:
    """The polygon of a GeoJSON geometry as it stands, or None when it is none."""
    if not isinstance(geometry, dict) or geometry.get("type") != "Polygon":
        return None
    rings = geometry.get("coordinates")
    if not isinstance(rings, list) or not rings:
        return None
    read = [_points(ring) for ring in rings]
    found = tuple(ring for ring in read if ring is not None and len(ring) >= 4)
    return PolygonGeometry(found) if len(found) == len(rings) else None


def line_from(geometry: Any) -> Ring | None:
    """The points of a GeoJSON LineString, or None when it is none."""
    if not isinstance(geometry, dict) or geometry.get("type") != "LineString":
        return None
    points = _points(geometry.get("coordinates"))
    return points if points is not None and len(points) >= 2 else None


def _points(values: Any) -> Ring | None:
    if not isinstance(values, list):
        return None
    points = [_point(value) for value in values]
    found = tuple(point for point in points if point is not None)
    return found if len(found) == len(points) else None


def _point(value: Any) -> Point | None:
    if isinstance(value, list) and len(value) >= 2 and all(map(_is_number, value[:2])):
        return value[0], value[1]
    return None


def _is_number(value: Any) -> bool:
    if isinstance(value, bool) or not isinstance(value, int | float):
        return False
    try:
        return isfinite(value)
    except OverflowError:  # a whole number of some hundred digits
        return False


def _shown(value: Any) -> str:
    """A value of a file as JSON writes it, a text in single quotes; shortened."""
    text = f"'{value}'" if isinstance(value, str) else json.dumps(value, ensure_ascii=False)
    return text if len(text) <= 60 else f"{text[:60]}…"


def feature(kind: str, geometry: Json | None, **properties: Any) -> Json:
    """A GeoJSON feature of this kind (RFC 7946, 3.2)."""
    return {
        "type": "Feature",
        "geometry": geometry,
        "properties": {"kind": kind, **properties},
    }


def _room(room: Room) -> Json:
    return feature(
        "room", polygon_json(room.polygon), id=room.id, name=room.name, storey=room.storey
    )


def _opening(opening: Opening) -> Json:
    return feature(
        "opening",
        _line(opening.line),
        id=opening.id,
        opening=opening.kind,
        rooms=list(opening.rooms),
        width_m=opening.width_m,
        threshold=polygon_json(opening.threshold) if opening.threshold else None,
    )


def _exit(way: Exit, floor: Floor) -> Json:
    opening = floor.opening_by_id.get(way.opening)
    line = _line(opening.line) if opening else None
    return feature("exit", line, id=way.id, opening=way.opening)


def _fixture(fixture: Fixture) -> Json:
    return feature("fixture", polygon_json(fixture.polygon), id=fixture.id, fixture=fixture.kind)


def _window(window: Window) -> Json:
    """A window's feature; what was not told of its wall and cover is left out."""
    told = {
        "id": window.id,
        "room": window.room,
        "reveal_m": window.reveal_m,
        "covered": window.covered,
        "main": window.main,
    }
    return feature(
        "window",
        _line(window.line),
        sill_m=window.sill_m,
        height_m=window.height_m,
        **{key: value for key, value in told.items() if value},
    )


def polygon_json(polygon: PolygonGeometry) -> Json:
    """A polygon as GeoJSON geometry (RFC 7946, 3.1.6)."""
    rings = [[list(point) for point in ring] for ring in polygon.coordinates]
    return {"type": "Polygon", "coordinates": rings}


def _line(points: Iterable[Point]) -> Json:
    return {"type": "LineString", "coordinates": [list(point) for point in points]}
