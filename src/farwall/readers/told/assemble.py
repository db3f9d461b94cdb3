"""Makes the reading of what a model tells: rooms, openings by geometry first, notes beside."""

from __future__ import annotations

from math import isfinite

from farwall.facts.reading import Reading
from farwall.floor.geometry import DECIMALS
from farwall.floor.nouns import Floor
from farwall.readers.told.asked import asks_of
from farwall.readers.told.beside import (
    fixtures_of,
    shut_in_notes,
    stated_notes,
    steps_of,
    windows_of,
)
from farwall.readers.told.doors import openings_of
from farwall.readers.told.nouns import Told
from farwall.readers.told.rooms import rooms_of
from farwall.readers.told.sound import made_sound


def assemble(told: Told) -> Reading:
    """The floor that a model tells, in metres; a reading without rooms means that it tells none.

    Rooms keep the file's ids and wall faces. An opening joins the rooms that lie at its sides;
    where the file's relations say otherwise both answers stand under `left`. `levels_m` are the
    heights of the floors above the zero of the file.
    """
    sound = made_sound(told)
    told = sound.told
    rooms = rooms_of(told.spaces, told.storeys)
    ways = openings_of(told, rooms)
    windows, dark = windows_of(told, rooms)
    standing = fixtures_of(told, rooms)
    floor = Floor(
        rooms=tuple(rooms.rooms),
        openings=tuple(ways.openings),
        fixtures=tuple(standing.fixtures),
        windows=windows,
        north_deg=told.north_deg,
    )
    return Reading(
        format=told.format,
        length_unit=told.length_unit,
        header_unit=told.header_unit,
        scale_m_per_unit=told.scale_m_per_unit,
        floor=floor,
        exits=tuple(ways.exits),
        storeys=tuple(rooms.storeys),
        stated={key: s.stated for key, s in rooms.spaces.items() if s.stated is not None},
        mended=(*told.mended, *sound.mended, *rooms.mended),
        left=(
            *told.left, *sound.left, *rooms.left, *ways.left, *stated_notes(rooms),
            *shut_in_notes(ways.openings, rooms), *dark, *standing.left,
        ),
        asks=(*told.asks, *asks_of(told, rooms, ways)),
        ceilings_m={
            key: round(s.height_m, DECIMALS)
            for key, s in rooms.spaces.items()
            if s.height_m is not None and s.height_m > 0
        },
        levels_m={
            key: round(s.floor_m, DECIMALS)
            for key, s in rooms.spaces.items()
            if s.floor_m is not None and isfinite(s.floor_m)
        },
        steps=steps_of(ways.openings, rooms),
        fixture_storeys=standing.storeys,
    )  # fmt: skip
