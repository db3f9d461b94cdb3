"""What the replay found, as it is told to a person: numbers, hours and units of the job. Pure.

The checker knows no tape, no clock and no name but those of the file: its sentences stay as they
are for who reads the JSON. Here the same sentences are told with coats, fields and bands by
number, rooms by name, minutes beside the hour they are, and figures in the units of the job.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime, timedelta
from typing import Protocol

from farwall.facts.numbered import by_number
from farwall.nouns import dataclass
from farwall.units import (
    M_PER_FT,
    M_PER_IN,
    clock_words,
    feet_and_inches,
    ft2_from_m2,
    gal_from_l,
    length_words,
)

_FIGURE = r"(-?\d+(?:\.\d+)?)"
_NAMED = re.compile(r"\b([Bb]and|[Ff]ield|[Cc]oat) (\S+?)(?=[.,:;]?(?:\s|$))")
_ROOM = re.compile(r"\b(sprayed in|way out of|room) ('?)([^\s,']+)\2(?=[,.\s])")
_FROM_TO = re.compile(rf"\bfrom {_FIGURE} to {_FIGURE} min\b")
_AT = re.compile(rf"\b([Aa]t|now,) {_FIGURE} min\b")
_PACE = re.compile(rf"{_FIGURE} m a minute, where the plan walks {_FIGURE}")
_PLACE = re.compile(rf"\({_FIGURE}, {_FIGURE}\)")
_AREA = re.compile(rf"{_FIGURE} m²")
_LITRES = re.compile(rf"{_FIGURE} L\b")
_MM = re.compile(rf"{_FIGURE} mm\b")
_METRES = re.compile(rf"(?<![\d(]){_FIGURE} m(?=[\s,.;:])")


@dataclass(frozen=True)
class FaultWords:
    """Tells faults of one plan; coats: ids in order, us: in feet and gallons, by am and pm, rooms:
    what each id is called."""

    coats: tuple[str, ...]
    starts_at: datetime
    us: bool
    rooms: Mapping[str, str]

    @classmethod
    def of(cls, plan: Mapping[str, object], *, us: bool) -> FaultWords:
        """For a plan as plain values that the checker has read."""
        inputs, fields = plan["inputs"], plan["fields"]
        assert isinstance(inputs, Mapping)
        assert isinstance(fields, Sequence)
        coats = dict.fromkeys([*(c["id"] for c in inputs["coats"]), *(f["coat"] for f in fields)])
        starts_at = datetime.fromisoformat(str(plan["starts_at"]))
        rooms = {room["id"]: room.get("name") or room["id"] for room in _rooms(inputs)}
        return cls(tuple(coats), starts_at, us, rooms)

    def told(self, what: str) -> str:
        """The sentence of a fault, such as `At 2:49 pm (18.66 min), in Great room at …`."""
        found = _ROOM.sub(self._in_room, _NAMED.sub(self._named, what))
        found = _FROM_TO.sub(self._span, found)
        found = _AT.sub(lambda at: f"{at[1]} {self._clock(at[2])} ({at[2]} min)", found)
        return self._in_feet(found) if self.us else _PLACE.sub(r"(\1 m, \2 m)", found)

    def _named(self, found: re.Match[str]) -> str:
        return f"{found[1]} {by_number(self.coats, found[2])}"

    def _in_room(self, found: re.Match[str]) -> str:
        name = self.rooms.get(found[3])
        return found[0] if name is None else f"{found[1]} {name}"

    def _span(self, found: re.Match[str]) -> str:
        first, last = found[1], found[2]
        return f"from {self._clock(first)} to {self._clock(last)} ({first} to {last} min)"

    def _clock(self, minute: str) -> str:
        return clock_words(self.starts_at + timedelta(minutes=float(minute)), us=self.us)

    @staticmethod
    def _in_feet(what: str) -> str:
        found = _PACE.sub(
            lambda one: f"{_ft(one[1]):.0f} ft a minute, where the plan walks {_ft(one[2]):.0f}",
            what,
        )
        found = _PLACE.sub(lambda at: f"({_tape(at[1])}, {_tape(at[2])})", found)
        found = _AREA.sub(lambda one: f"{ft2_from_m2(float(one[1])):.1f} ft² ({one[1]} m²)", found)
        found = _LITRES.sub(lambda one: f"{gal_from_l(float(one[1])):.2f} gal ({one[1]} L)", found)
        found = _MM.sub(lambda one: f'{float(one[1]) / 1000 / M_PER_IN:.1f}" ({one[1]} mm)', found)
        return _METRES.sub(lambda one: length_words(float(one[1]), us=True), found)


class Found(Protocol):
    """What the checker found: a code, the field's id, a sentence."""

    @property
    def code(self) -> str:
        """A code of the checker."""

    @property
    def field(self) -> str:
        """The field's id; empty where it belongs to the whole plan."""

    @property
    def what(self) -> str:
        """The sentence."""


def faults_told(plan: Mapping[str, object], faults: Iterable[Found], *, us: bool) -> list[str]:
    """`code: sentence` of each fault.

    A field that may not be sprayed says no itself: of what the replay finds in it only the edges
    that die are told.
    """
    words = FaultWords.of(plan, us=us)
    refused = _refused(plan)
    return [
        f"{one.code}: {words.told(one.what)}"
        for one in faults
        if one.field not in refused or one.code == "dead-edge"
    ]


def _refused(plan: Mapping[str, object]) -> set[str]:
    fields = plan["fields"]
    assert isinstance(fields, Sequence)
    return {field["id"] for field in fields if field.get("verdict") == "cannot"}


def _rooms(inputs: Mapping[str, object]) -> Sequence[Mapping[str, str]]:
    floor = inputs.get("floor")
    rooms = floor.get("rooms") if isinstance(floor, Mapping) else None
    return rooms if isinstance(rooms, Sequence) else ()


def _ft(metres: str) -> float:
    return float(metres) / M_PER_FT


def _tape(metres: str) -> str:
    return feet_and_inches(float(metres))
