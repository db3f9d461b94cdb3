"""The blanks of one room of a walk, turned into the lines that the walk is kept in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import Any

from farwall.nouns import dataclass

FIRST_WALLS, MORE_WALLS, MOST_WALLS, WAYS = 4, 2, 40, 3
WAY_KINDS = ("door", "cased opening", "wide opening")
WAY_KEYS = ("kind", "wall", "at", "wide", "deep", "to")
_LONGEST = 60


@dataclass(frozen=True)
class RoomBlanks:
    """What stands in the blanks of the room that is being walked.

    walls: length and turn (right, left) of each; ways: kind, wall, from the corner, width, depth
    and where it leads; checks: corner, corner, length.
    """

    name: str = ""
    walls: tuple[tuple[str, str], ...] = (("", "right"),) * FIRST_WALLS
    ways: tuple[dict[str, str], ...] = field(
        default_factory=lambda: tuple(_empty_way() for _ in range(WAYS))
    )
    check: tuple[str, str, str] = ("1", "3", "")

    @property
    def told(self) -> bool:
        """Whether anything was typed that is to be taken."""
        ways = any(way[key] for way in self.ways for key in ("wall", "at", "wide", "deep", "to"))
        return bool(self.name or any(one for one, _ in self.walls) or ways or self.check[2])


def _empty_way() -> dict[str, str]:
    return {"kind": WAY_KINDS[0], **dict.fromkeys(WAY_KEYS[1:], "")}


def blanks_in(told: Mapping[str, Any]) -> RoomBlanks:
    """The blanks of a form, cut to what a line can hold."""
    count = sum(key.startswith("wall.") for key in told)
    count = min(max(count, FIRST_WALLS), MOST_WALLS)
    walls = tuple(
        (_text(told, f"wall.{n}"), "left" if told.get(f"turn.{n}") == "left" else "right")
        for n in range(1, count + 1)
    )
    ways = []
    for n in range(1, WAYS + 1):
        way = {key: _text(told, f"way.{n}.{key}") for key in WAY_KEYS}
        ways.append({**way, "kind": way["kind"] if way["kind"] in WAY_KINDS else WAY_KINDS[0]})
    check = tuple(_text(told, f"check.{key}") for key in ("from", "to", "long"))
    return RoomBlanks(_text(told, "name"), walls, tuple(ways), (check[0], check[1], check[2]))


def more_walls(blanks: RoomBlanks) -> RoomBlanks:
    """The same blanks with room for more walls."""
    extra = (("", "right"),) * min(MORE_WALLS, MOST_WALLS - len(blanks.walls))
    return RoomBlanks(blanks.name, (*blanks.walls, *extra), blanks.ways, blanks.check)


def lines_of(blanks: RoomBlanks) -> list[str]:
    """The room as lines of a walk, just as typed; what is wrong with them its reader says."""
    lines = [f"room {blanks.name}".strip()]
    walls = [(one, turn) for one, turn in blanks.walls if one]
    lines += [f"{one}, {turn}" for one, turn in walls]
    for way in blanks.ways:
        if not any(way[key] for key in ("at", "wide", "to")):
            continue
        line = f"{way['kind']} in wall {way['wall'] or '?'} at {way['at']} wide {way['wide']}"
        line += f" deep {way['deep']}" if way["deep"] else ""
        lines.append(f"{line} to {way['to'] or 'outside'}")
    one, two, long = blanks.check
    if long:
        lines.append(f"diagonal {one or '?'} to {two or '?'} = {long}")
    return lines


def _text(told: Mapping[str, Any], key: str) -> str:
    """One line of text: a comma that parts words is a blank, for lines part their things by it."""
    value = told.get(key)
    if not isinstance(value, str):
        return ""
    return " ".join(value.replace(", ", " ").replace(";", " ").split())[:_LONGEST]
