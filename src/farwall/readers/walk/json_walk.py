"""A walk as JSON: `{"walk": 1, "tape": "feet", "rooms": [...]}`, lengths in metres or as on a tape.

Walls and corners are counted from 1, as in the text.
"""

from __future__ import annotations

import json
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.floor.walk.nouns import Across, Diagonal, Shared, Walk, WalkRoom, WalkWall, WalkWay
from farwall.readers.walk.spoken import spoken_length_m

_KINDS = ("door", "cased", "wide", "outside")
_NO_MEASURE = 1e15
_MOST = 800


def walk_from_json(text: str) -> Walk:
    """The walk in a JSON text. Raises Refused with every mistake."""
    try:
        told = json.loads(text)
    except RecursionError as error:
        raise Refused(Mistake("", "Its brackets are nested too deep for a walk.")) from error
    except ValueError as error:
        raise Refused(Mistake("", f"This is no JSON: {str(error)[:80]}.", "Mend it.")) from error
    reader = _Reader()
    walk = reader.walk(told)
    if reader.mistakes:
        raise Refused(*reader.mistakes[:20], about="The walk was not understood.")
    return walk


class _Reader:
    def __init__(self) -> None:
        self.mistakes: list[Mistake] = []
        self.us = True

    def wrong(self, where: str, what: str, remedy: str = "") -> None:
        self.mistakes.append(Mistake(where, what, remedy))

    def walk(self, told: Any) -> Walk:
        if not isinstance(told, dict) or told.get("walk") != 1:
            raise Refused(Mistake("walk", "this is no walk of version 1.", 'Write `"walk": 1`.'))
        if told.get("tape", "feet") not in ("feet", "metres"):
            self.wrong("tape", "the tape is in feet or in metres.", 'Write "feet" or "metres".')
        self.us = told.get("tape", "feet") == "feet"
        rooms = tuple(self.room(one, f"rooms.{n}") for n, one in self.each(told, "rooms", ""))
        names = {room.name.casefold(): n for n, room in enumerate(rooms)}
        shared = [
            self.shared(one, f"shared.{n}", names) for n, one in self.each(told, "shared", "")
        ]
        return Walk(rooms, tuple(one for one in shared if one is not None), us=self.us)

    def each(self, told: dict[str, Any], key: str, at: str) -> list[tuple[int, dict[str, Any]]]:
        """The objects of a list; what is none of them is noted."""
        where = f"{at}.{key}".strip(".")
        value = told.get(key, [])
        if not isinstance(value, list) or len(value) > _MOST:
            self.wrong(where, f"a list of at most {_MOST} is expected here.")
            return []
        found = []
        for n, one in enumerate(value):
            if isinstance(one, dict):
                found.append((n, one))
            else:
                self.wrong(f"{where}.{n}", "an object is expected here.", "Write { … }.")
        return found

    def room(self, told: dict[str, Any], at: str) -> WalkRoom:
        walls = tuple(
            WalkWall(
                self.length(one, "length", where, needed=False),
                self.number(one.get("turn_deg", -90.0), f"{where}.turn_deg"),
                str(one.get("length", ""))[:40],
            )
            for n, one in self.each(told, "walls", at)
            for where in [f"{at}.walls.{n}"]
        )
        ways = [self.way(one, f"{at}.ways.{n}") for n, one in self.each(told, "ways", at)]
        diagonals = []
        for n, one in self.each(told, "diagonals", at):
            pair = self.pair(one, "corners", f"{at}.diagonals.{n}")
            length = self.length(one, "length", f"{at}.diagonals.{n}")
            if pair and length is not None:
                diagonals.append(Diagonal(*pair, length, str(one.get("length", ""))[:40]))
        across = []
        for n, one in self.each(told, "across", at):
            pair = self.pair(one, "walls", f"{at}.across.{n}")
            length = self.length(one, "length", f"{at}.across.{n}")
            at_m = self.length(one, "at", f"{at}.across.{n}", needed=False)
            if pair and length is not None:
                across.append(Across(*pair, length, at_m, str(one.get("length", ""))[:40]))
        name = self.text(told, "name", at)
        return WalkRoom(
            name, walls, tuple(one for one in ways if one), tuple(diagonals), tuple(across)
        )

    def text(self, told: dict[str, Any], key: str, at: str) -> str:
        value = told.get(key, "")
        if not isinstance(value, str) or (key == "name" and not value.strip()):
            self.wrong(f"{at}.{key}", "a text is expected here.", "Put it in quotes.")
            return ""
        return " ".join(value.split())[:60]

    def way(self, told: dict[str, Any], at: str) -> WalkWay | None:
        wall = self.count(told.get("wall"), f"{at}.wall")
        at_m, width_m = self.length(told, "at", at), self.length(told, "width", at)
        depth_m = self.length(told, "depth", at, needed=False)
        rest_m = self.length(told, "rest", at, needed=False)
        kind = told.get("kind", "door")
        if kind not in _KINDS:
            self.wrong(f"{at}.kind", "this kind is not known.", f"Known: {', '.join(_KINDS)}.")
            return None
        to = self.text(told, "to", at)
        if wall is None or at_m is None or width_m is None:
            return None
        outside = kind == "outside" or not to
        mark = self.text(told, "mark", at)
        return WalkWay(
            wall, at_m, width_m, "outside" if outside else kind, "" if outside else to,
            depth_m, rest_m, mark,
        )  # fmt: skip

    def shared(self, told: dict[str, Any], at: str, names: dict[str, int]) -> Shared | None:
        rooms = told.get("rooms")
        walls, depth_m = self.pair(told, "walls", at), self.length(told, "depth", at)
        if not isinstance(rooms, list) or len(rooms) != 2:
            self.wrong(f"{at}.rooms", "two names are expected here.")
            return None
        numbers = [names.get(str(one).casefold()) for one in rooms]
        one, two = numbers
        if one is None or two is None or one == two:
            self.wrong(f"{at}.rooms", "these are no two rooms of this walk.")
            return None
        return Shared(one, walls[0], two, walls[1], depth_m) if walls and depth_m else None

    def pair(self, told: dict[str, Any], key: str, at: str) -> tuple[int, int] | None:
        value = told.get(key)
        if not isinstance(value, list) or len(value) != 2:
            self.wrong(f"{at}.{key}", "two numbers are expected here.", "Write [1, 3].")
            return None
        one, two = (self.count(each, f"{at}.{key}") for each in value)
        return None if one is None or two is None else (one, two)

    def count(self, value: Any, where: str) -> int | None:
        if isinstance(value, bool) or not isinstance(value, int) or not 1 <= value <= _MOST:
            self.wrong(where, "a whole number from 1 is expected here.")
            return None
        return value - 1

    def number(self, value: Any, where: str) -> float:
        # Compared, for a whole number of some hundred digits is no float; NaN is less than nothing.
        plain = isinstance(value, int | float) and not isinstance(value, bool)
        if not plain or not abs(value) < _NO_MEASURE:
            self.wrong(where, "a number is expected here.", "Write a plain number.")
            return 0.0
        return float(value)

    def length(
        self, told: dict[str, Any], key: str, at: str, *, needed: bool = True
    ) -> float | None:
        """Metres: a number is metres, a text is read as on a tape."""
        value = told.get(key)
        where = f"{at}.{key}"
        if value is None:
            if needed:
                self.wrong(where, "a length is missing.", "Add it.")
            return None
        if isinstance(value, str):
            found = spoken_length_m(value, us=self.us)
            if found is None:
                self.wrong(where, f"`{value[:40]}` is no length.", "Write it as 12' 6\" or 3.81 m.")
            return found
        return self.number(value, where)
