"""What a floor is asked for beside its rooms where the file does not tell it: sun, air, water."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.facts.reading import Note, Reading

NORTH = "Where north lies is not told: say it, for the sun on the floor."
WINDOWS = "No window is told: draw them, for sun and air."
_WATER = {"drain", "tap", "outlet"}


def asks_beside(reading: Reading) -> tuple[Note, ...]:
    """The questions that the reader itself has not asked yet; none for a floor without rooms."""
    if not reading.floor.rooms:
        return ()
    asked = {note.code for note in reading.asks}
    return tuple(note for note in _all(reading) if note.code not in asked)


def no_water(kinds: set[str]) -> str:
    """The question for what is missing of drain, tap and outlet; empty where nothing is."""
    missing = ", ".join(sorted(_WATER - kinds))
    return f"No {missing} is told: say where, for rinsing and the tools." if missing else ""


def _all(reading: Reading) -> Iterator[Note]:
    floor = reading.floor
    if floor.north_deg is None:
        yield Note("north", NORTH)
    if not floor.windows:
        yield Note("windows", WINDOWS)
    if water := no_water({fixture.kind for fixture in floor.fixtures}):
        yield Note("water", water)
