"""A walk as plain text: a line for each thing, in the words of who holds the tape.

    walk, tape in feet
    room Kitchen
    12' 6 1/2", right, 10' 2", right, 12' 6 1/2", right, 10' 2", right
    door in wall 2 at 3' wide 2' 8" deep 4 1/2" to Hall
    diagonal 1 to 3 = 16' 1 3/4"

A turn that is not said is to the right. Spanish words do as well. A line that begins with # is a
note.
"""

from __future__ import annotations

import re
from dataclasses import field

from farwall.errors import Mistake, Refused
from farwall.floor.nouns import OpeningKind
from farwall.floor.walk.nouns import (
    LEFT,
    RIGHT,
    Across,
    Diagonal,
    Shared,
    Walk,
    WalkRoom,
    WalkWall,
    WalkWay,
)
from farwall.nouns import dataclass
from farwall.readers.walk.spoken import spoken_count, spoken_length_m

MOST_LINES, MOST_LETTERS, MOST_MISTAKES = 3_000, 200_000, 20
_TURN = re.compile(
    r"\b(?P<side>left|right|izquierda|derecha)\b"
    r"(?:\s+(?P<deg>\d+(?:\.\d+)?)\s*(?:°|deg(?:rees?)?\b|grados?\b))?",
    re.IGNORECASE,
)
_ITEM_END = re.compile(r",(?!\d)|;")
_BLANK = {"?", "unmeasured", "not measured", "sin medir"}
_FILLERS = re.compile(
    r"\b(?:then|and then|turn|go|gire|a la|luego|wall|pared|to the)\b|[.=:](?=\s|$)", re.IGNORECASE
)
_ROOM = re.compile(r"(?:room|cuarto)\b[\s:]*(?P<name>.*)", re.IGNORECASE)
_HEAD = re.compile(
    r"(?:(?:walk|recorrido)\b[\s,:]*)?(?:(?:tape|cinta)\s+(?:in|en)\s+"
    r"(?P<unit>feet|metres|meters|pies|metros))?[\s.]*",
    re.IGNORECASE,
)
_WAY = re.compile(
    r"(?P<kind>outside door|cased opening|wide opening|door|opening|"
    r"puerta de afuera|vano con marco|vano ancho|puerta|vano)\b(?P<rest>.*)",
    re.IGNORECASE,
)
_KINDS: dict[str, OpeningKind] = {
    "door": "door", "puerta": "door", "cased opening": "cased", "vano con marco": "cased",
    "opening": "wide", "vano": "wide", "wide opening": "wide", "vano ancho": "wide",
    "outside door": "outside", "puerta de afuera": "outside",
}  # fmt: skip
_PARTS = {
    "in wall": "wall", "en pared": "wall", "en la pared": "wall", "at": "at", "a los": "at",
    "desde la esquina": "at", "wide": "wide", "ancho": "wide", "deep": "deep", "fondo": "deep",
    "rest": "rest", "resto": "rest", "to": "to", "hacia": "to", "mark": "mark", "marca": "mark",
}  # fmt: skip
_PART = re.compile(
    r"\b(" + "|".join(sorted(map(re.escape, _PARTS), key=len, reverse=True)) + r")\b", re.IGNORECASE
)
_OUTSIDE = {"", "outside", "afuera"}
_DIAGONAL = re.compile(
    r"diagonal\s+(?:de\s+)?(?P<one>\w+)\s*(?:-|–|to|a)\s*(?P<two>\w+)[\s=:,]+(?P<length>.*)",
    re.IGNORECASE,
)
_ACROSS = re.compile(
    r"(?:across|través|traves)\s+(?:de\s+)?(?:wall\s+|pared\s+)?(?P<one>\w+)\s*(?:-|–|to|a)\s*"
    r"(?:wall\s+|pared\s+)?(?P<two>\w+)[\s=:,]+(?P<length>.*?)"
    r"(?:\s+(?:at|a los)\s+(?P<at>.*))?",
    re.IGNORECASE,
)
_SHARED = re.compile(
    r"(?:wall|pared)\s+(?P<one>\w+)\s+(?:backs on|da con)\s+(?P<room>.+?)\s+"
    r"(?:wall|pared)\s+(?P<two>\w+)[\s=:,]+(?P<length>.*)",
    re.IGNORECASE,
)


@dataclass
class _Room:
    name: str
    line: int
    walls: list[WalkWall] = field(default_factory=list)
    ways: list[WalkWay] = field(default_factory=list)
    diagonals: list[Diagonal] = field(default_factory=list)
    across: list[Across] = field(default_factory=list)
    turn_said: bool = True


def walk_from_text(text: str) -> Walk:
    """The walk in a text. Raises Refused with every line that is not understood."""
    if len(text) > MOST_LETTERS or text.count("\n") > MOST_LINES:
        raise Refused(Mistake("", "This walk is too long.", f"At most {MOST_LINES} lines."))
    return _Reader().read(text)


class _Reader:
    def __init__(self) -> None:
        self.us, self.rooms = True, list[_Room]()
        self.shared: list[tuple[int, int, int, str, int, float]] = []
        self.mistakes: list[Mistake] = []
        self.line = 0

    def read(self, text: str) -> Walk:
        for number, line in enumerate(text.splitlines(), 1):
            self.line = number
            told = line.strip().lstrip("\ufeff-*• ").strip()
            if told and not told.startswith("#"):
                self._take(told)
        shared = self._shared_walls()
        if self.mistakes:
            raise Refused(*self.mistakes[:MOST_MISTAKES], about="The walk was not understood.")
        rooms = tuple(
            WalkRoom(one.name, tuple(one.walls), tuple(one.ways), tuple(one.diagonals),
                     tuple(one.across))
            for one in self.rooms
        )  # fmt: skip
        return Walk(rooms, shared, us=self.us)

    def wrong(self, what: str, remedy: str = "") -> None:
        self.mistakes.append(Mistake(f"line {self.line}", what, remedy))

    def _take(self, told: str) -> None:
        head = _HEAD.fullmatch(told)
        if head:
            if head["unit"]:
                self.us = head["unit"].lower() in {"feet", "pies"}
        elif room := _ROOM.fullmatch(told):
            name = " ".join(room["name"].split())[:60] or f"Room {len(self.rooms) + 1}"
            self.rooms.append(_Room(name, self.line))
        elif not self.rooms:
            self.wrong("something is measured before a room is named.", "Write `room NAME` first.")
        else:
            self._take_in_room(told, self.rooms[-1])

    def _take_in_room(self, told: str, room: _Room) -> None:
        if way := _WAY.fullmatch(told):
            self._way(room, _KINDS[way["kind"].lower()], way["rest"])
        elif check := _DIAGONAL.fullmatch(told):
            corners, length = self._pair(check), self.length(check["length"])
            if corners and length:
                room.diagonals.append(Diagonal(*corners, length, check["length"].strip()))
        elif check := _ACROSS.fullmatch(told):
            walls, length = self._pair(check), self.length(check["length"])
            at_m = self.length(check["at"]) if check["at"] else None
            if walls and length:
                room.across.append(Across(*walls, length, at_m, check["length"].strip()))
        elif back := _SHARED.fullmatch(told):
            walls, length = self._pair(back), self.length(back["length"])
            if walls and length:
                here = len(self.rooms) - 1
                self.shared.append((self.line, here, walls[0], back["room"], walls[1], length))
        else:
            self._walls(told, room)

    def _pair(self, found: re.Match[str]) -> tuple[int, int] | None:
        one, two = spoken_count(found["one"]), spoken_count(found["two"])
        if one is None or two is None:
            self.wrong("the two numbers are not clear.", "Write them as `1 to 3`.")
            return None
        return one - 1, two - 1

    def length(self, text: str) -> float | None:
        """Metres of a length, a mistake noted where it is none."""
        found = spoken_length_m(text, us=self.us)
        if found is None:
            shown = " ".join(text.split())[:40]
            what = f"`{shown}` is no length." if shown else "a length is missing."
            self.wrong(what, "Write it as 12' 6 1/2\" or 3.82 m.")
        return found

    def _walls(self, told: str, room: _Room) -> None:
        """Lengths and turns one after the other, on one line or on many."""
        for item in _ITEM_END.split(told):
            at = 0
            for turn in _TURN.finditer(item):
                self._wall(item[at : turn.start()], room)
                self._turn(turn, room)
                at = turn.end()
            self._wall(item[at:], room)

    def _wall(self, text: str, room: _Room) -> None:
        told = " ".join(_FILLERS.sub(" ", text).split()).strip(" .,;:")
        if not told:
            return
        length = None if told.lower() in _BLANK else self.length(told)
        room.walls.append(WalkWall(length, RIGHT, told))
        room.turn_said = False

    def _turn(self, turn: re.Match[str], room: _Room) -> None:
        if not room.walls or room.turn_said:
            self.wrong("a turn is told with no wall before it.", "Tell the wall, then the turn.")
            return
        left = turn["side"].lower() in {"left", "izquierda"}
        degrees = float(turn["deg"]) if turn["deg"] else 90.0
        wall = room.walls[-1]
        turned = (LEFT if left else RIGHT) * degrees / 90.0
        room.walls[-1] = WalkWall(wall.length_m, turned, wall.told)
        room.turn_said = True

    def _way(self, room: _Room, kind: OpeningKind, rest: str) -> None:
        pieces = _PART.split(rest)
        told: dict[str, str] = {}
        for word, text in zip(pieces[1::2], pieces[2::2], strict=True):
            part = _PARTS[word.lower()]
            told[part] = (f"{told[part]} {word} {text}" if part in told else text).strip(" ,;.")
        wall = spoken_count(told["wall"]) if "wall" in told else len(room.walls)
        if not wall:
            self.wrong("an opening is told with no wall.", "Tell its wall first, or `in wall 2`.")
            return
        if "at" not in told or "wide" not in told:
            self.wrong("an opening lacks its place or its width.",
                       "Write it as `door at 3' wide 2' 8\" to Hall`.")  # fmt: skip
            return
        lengths = {
            key: self.length(told[key]) for key in ("at", "wide", "deep", "rest") if key in told
        }
        at_m, width_m = lengths["at"], lengths["wide"]
        if at_m is None or width_m is None:
            return
        to = " ".join(told.get("to", "").split())[:60]
        outside = kind == "outside" or to.lower() in _OUTSIDE
        room.ways.append(
            WalkWay(wall - 1, at_m, width_m, "outside" if outside else kind,
                    "" if outside else to, lengths.get("deep"), lengths.get("rest"),
                    told.get("mark", "")[:20])
        )  # fmt: skip

    def _shared_walls(self) -> tuple[Shared, ...]:
        number = {room.name.casefold(): n for n, room in enumerate(self.rooms)}
        found = []
        for line, room, wall, name, other_wall, depth in self.shared:
            other = number.get(name.strip().casefold())
            if other is None or other == room:
                self.line = line
                self.wrong(f"`{name.strip()[:40]}` is no other room of this walk.")
                continue
            found.append(Shared(room, wall, other, other_wall, depth))
        return tuple(found)
