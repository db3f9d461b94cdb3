"""Rooms with the floor polygons that the file gives them, though these lie beside their shells.

Doors were found where the walls are, at the shells; each space is one room again, as in the file,
and what does not fit is said: who stains the floor takes the shells.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

import shapely

from farwall.facts.reading import MISPLACED, Note, Reading
from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Opening, Room
from farwall.readers.gbxml.spaces import Misplaced, Spaces

CODE = MISPLACED
_OF_PIECES = {"room-in-pieces", "room-apart", "floor-at-two-heights", "overlap-cut", "no-way-in"}
"""Codes that tell of floors of shells; they fall away with them."""


def with_own_polygons(reading: Reading, spaces: Spaces) -> Reading:
    """The reading with each misplaced space as one room, drawn as the file draws it."""
    owner = {piece.id: own for own in spaces.misplaced for piece in spaces.pieces.get(own, ())}
    if not any(room.id in owner for room in reading.floor.rooms):
        return reading
    shells = [room for room in reading.floor.rooms if room.id in owner]
    openings = tuple(_openings(reading.floor.openings, owner))
    kept = {one.id for one in openings}
    floor = replace(
        reading.floor, rooms=tuple(_rooms(reading, owner, spaces.misplaced)), openings=openings
    )
    stated = {key: value for key, value in reading.stated.items() if key not in owner}
    stated |= {own: one.stated for own, one in spaces.misplaced.items() if one.stated}
    return replace(
        reading,
        floor=floor,
        exits=tuple(way for way in reading.exits if way.opening in kept),
        stated=stated,
        mended=tuple(_left_over(reading.mended, shells)),
        left=(*_said(reading, owner), *_left_over(reading.left, shells)),
        ceilings_m=_of_spaces(reading.ceilings_m, owner),
        levels_m=_of_spaces(reading.levels_m, owner),
    )


def _rooms(
    reading: Reading, owner: Mapping[str, str], misplaced: Mapping[str, Misplaced]
) -> Iterator[Room]:
    done: set[str] = set()
    for room in reading.floor.rooms:
        own = owner.get(room.id)
        if own is None:
            yield room
        elif own not in done:
            done.add(own)
            yield replace(room, id=own, polygon=polygon_geometry(misplaced[own].shape))


def _openings(openings: tuple[Opening, ...], owner: Mapping[str, str]) -> Iterator[Opening]:
    """Openings by the ids of the file's spaces; between two pieces of one space there is none."""
    for one in openings:
        rooms = tuple(owner.get(room, room) for room in one.rooms)
        if len(set(rooms)) == len(set(one.rooms)):
            yield replace(one, rooms=rooms)


def _of_spaces(values: Mapping[str, float], owner: Mapping[str, str]) -> dict[str, float]:
    found: dict[str, float] = {}
    for key, value in values.items():
        found.setdefault(owner.get(key, key), value)
    return found


def _left_over(notes: tuple[Note, ...], shells: list[Room]) -> Iterator[Note]:
    """Notes that still tell of something: none of pieces that are one room again."""
    ground = shapely.union_all([room.polygon.shape for room in shells]).buffer(0.01)
    for note in notes:
        there = note.where is not None and ground.covers(shapely.Point(note.where))
        if note.code != CODE and not (note.code in _OF_PIECES and there):
            yield note


def _said(reading: Reading, owner: Mapping[str, str]) -> Iterator[Note]:
    """What was said of each polygon, in the words that hold for it now."""
    for note in reading.mended:
        if note.code == CODE:
            what = note.what.replace(
                "The shell was taken: walls and doors fit it.",
                "It stands as the file has it, and no job can be made of it: walls and doors go "
                "with the shell. Read it by --floors shell.",
            )
            yield replace(note, what=what)
    whole = len(set(owner.values()))
    pieces = len(owner)
    if pieces > whole:
        what = (
            f"{whole} spaces of the file whose polygon lies beside their shell have {pieces} "
            "pieces of floor there, some of them on another storey or level."
        )
        yield Note("shell-in-pieces", what)
