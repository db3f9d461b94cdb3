"""A reading as the JSON document that callers from outside rely on."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from farwall.facts.reading import Note, Reading
from farwall.floor.geojson import polygon_json
from farwall.floor.geometry import Point
from farwall.floor.nouns import Fixture, Opening, Room, SawCut, Window
from farwall.units import ft2_from_m2

Json = dict[str, Any]


def reading_json(reading: Reading, *, said: Mapping[int, str] | None = None) -> Json:
    """The promised keys. Metre values are null while nobody knows the drawing's unit.

    `said` adds an `answer` to the notes that were answered, by their number from 1 in the order
    mended, left, asks.
    """
    known = reading.scale_m_per_unit is not None
    floor = reading.floor
    return {
        "format": reading.format,
        "length_unit": reading.length_unit or None,
        "header_unit": reading.header_unit or None,
        "scale_m_per_unit": reading.scale_m_per_unit,
        "storeys": [
            {"id": s.id, "name": s.name, "elevation_m": s.elevation_m} for s in reading.storeys
        ],
        "rooms": [_room(room, reading, known=known) for room in floor.rooms],
        "openings": [_opening(opening, known=known) for opening in floor.openings],
        "exits": [{"id": way.id, "opening": way.opening} for way in reading.exits],
        "fixtures": [_fixture(fixture, known=known) for fixture in floor.fixtures],
        "saw_cuts": [_saw_cut(cut, known=known) for cut in floor.saw_cuts],
        "windows": [_window(window, known=known) for window in floor.windows],
        "north_deg": floor.north_deg,
        "steps": [
            {"line": _line(step.line) if known else None, "rise_m": step.rise_m if known else None}
            for step in reading.steps
        ],
        **_notes(reading, said or {}, known=known),
    }


def _notes(reading: Reading, said: Mapping[int, str], *, known: bool) -> Json:
    found: Json = {
        "mended": [_note(note, known=known) for note in reading.mended],
        "left": [_note(note, known=known) for note in reading.left],
        "asks": [{"code": note.code, "what": note.what} for note in reading.asks],
    }
    for number, note in enumerate([one for notes in found.values() for one in notes], 1):
        if number in said:
            note["answer"] = said[number]
    return found


def _room(room: Room, reading: Reading, *, known: bool) -> Json:
    shape, stated = room.polygon.shape, reading.stated.get(room.id)
    return {
        "id": room.id,
        "name": room.name,
        "storey": room.storey,
        "area_m2": round(shape.area, 4) if known else None,
        "area_ft2": round(ft2_from_m2(shape.area), 3) if known else None,
        "stated_area_m2": stated.area_m2 if stated else None,
        "stated_kind": stated.kind if stated else None,
        "perimeter_m": round(shape.length, 4) if known else None,
        "holes": len(shape.interiors),
        "ceiling_m": reading.ceilings_m.get(room.id) if known else None,
        "level_m": reading.levels_m.get(room.id) if known else None,
        "polygon": polygon_json(room.polygon) if known else None,
    }


def _opening(opening: Opening, *, known: bool) -> Json:
    return {
        "id": opening.id,
        "kind": opening.kind,
        "width_m": opening.width_m if known else None,
        "rooms": list(opening.rooms),
        "line": _line(opening.line) if known else None,
    }


def _fixture(fixture: Fixture, *, known: bool) -> Json:
    return {"kind": fixture.kind, "polygon": polygon_json(fixture.polygon) if known else None}


def _saw_cut(cut: SawCut, *, known: bool) -> Json:
    return {"id": cut.id, "line": _line(cut.line) if known else None}


def _window(window: Window, *, known: bool) -> Json:
    return {
        "line": _line(window.line) if known else None,
        "sill_m": window.sill_m,
        "height_m": window.height_m,
    }


def _note(note: Note, *, known: bool) -> Json:
    where = list(note.where) if note.where is not None and known else None
    return {"code": note.code, "where": where, "what": note.what}


def _line(line: tuple[Point, ...]) -> list[list[float]]:
    return [list(point) for point in line]
