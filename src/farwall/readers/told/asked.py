"""What a model leaves for a person to say: ways out, and what sun, air and water need."""

from __future__ import annotations

from farwall.facts.reading import Note
from farwall.readers.asked_beside import NORTH, WINDOWS, no_water
from farwall.readers.told.doors import Openings
from farwall.readers.told.nouns import Told
from farwall.readers.told.rooms import Rooms


def asks_of(told: Told, rooms: Rooms, ways: Openings) -> list[Note]:
    """The questions, those first without whose answer no floor can be planned."""
    if not rooms.rooms:
        return [Note("tracing", "No room is told in it. Trace the rooms by hand.")]
    return [*_ways_out(rooms, ways), *_beside(told, rooms)]


def _ways_out(rooms: Rooms, ways: Openings) -> list[Note]:
    opening_by_id = {opening.id: opening for opening in ways.openings}
    left_by = {rooms.spaces[opening_by_id[w.opening].rooms[0]].storey for w in ways.exits}
    without = [
        storey.name or storey.id
        for storey in rooms.storeys
        if storey.id not in left_by and any(s.storey == storey.id for s in rooms.spaces.values())
    ]
    if not without:
        return []
    if not ways.exits:
        what = "No door leads outside. Say which opening is the way out."
    else:
        what = (
            f"No door leads outside on {', '.join(without)}. Say by which opening one leaves "
            "there: the one to the stair, for instance."
        )
    return [Note("way-out", what)]


def _beside(told: Told, rooms: Rooms) -> list[Note]:
    asks = []
    if told.north_deg is None:
        asks.append(Note("north", NORTH))
    bare = sum(w.sill_m is None or w.height_m is None for w in told.windows)
    if not told.windows:
        asks.append(Note("windows", WINDOWS))
    elif bare:
        what = f"{bare} of {len(told.windows)} windows come without sill or height: measure them."
        asks.append(Note("windows", what))
    low = [s for s in rooms.spaces.values() if s.height_m is None or s.height_m <= 0]
    if low:
        what = (
            f"The ceiling height of {len(low)} of {len(rooms.spaces)} rooms is not told: say it, "
            "for the air."
        )
        asks.append(Note("ceilings", what))
    if water := no_water({fixture.kind for fixture in told.fixtures}):
        asks.append(Note("water", water))
    return asks
