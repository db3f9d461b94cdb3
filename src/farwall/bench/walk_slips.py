"""Slips of the tape in a walk that was drawn: one reading misread, in a wall or beside."""

from __future__ import annotations

from dataclasses import replace

from farwall.bench.walk_built import Chance
from farwall.floor.walk.nouns import Walk
from farwall.nouns import dataclass
from farwall.units import M_PER_IN


@dataclass(frozen=True)
class Slip:
    """Where the tape was misread and by how much [m], above 0 too long; room -1 for nowhere."""

    room: int = -1
    wall: int = -1
    by_m: float = 0.0
    how: str = "none"


def slipped(walk: Walk, seed: int) -> tuple[Walk, Slip]:
    """The walk with one wall misread by 100 mm or more.

    Three in five by 100 to 600 mm of no known way, one by a foot, one by digits changed about
    where that makes 100 mm or more (else as the first).
    """
    chance = Chance(f"slip {seed}")
    able = [(n, k) for n, room in enumerate(walk.rooms) for k in range(len(room.walls))]
    n, k = able[chance.among(len(able))]
    read = walk.rooms[n].walls[k].length_m or 0.0
    by, how = _slip_of(read, chance, us=walk.us)
    while read + by < 0.2:
        by, how = _slip_of(read, chance, us=walk.us)
    room = walk.rooms[n]
    walls = (*room.walls[:k], replace(room.walls[k], length_m=read + by), *room.walls[k + 1 :])
    rooms = (*walk.rooms[:n], replace(room, walls=walls), *walk.rooms[n + 1 :])
    return replace(walk, rooms=rooms), Slip(n, k, by, how)


def slipped_beside(walk: Walk, seed: int) -> tuple[Walk, Slip]:
    """The walk with one reading beside the walls misread by 100 to 600 mm.

    A diagonal, the place of an opening or its width; `how` of the slip says which.
    """
    chance = Chance(f"beside {seed}")
    able = [
        ("diagonal", n, k) for n, one in enumerate(walk.rooms) for k in range(len(one.diagonals))
    ]
    able += [
        (what, n, k) for n, one in enumerate(walk.rooms) for k in range(len(one.ways))
        for what in ("at", "width")
    ]  # fmt: skip
    what, n, k = able[chance.among(len(able))]
    room = walk.rooms[n]
    by = (0.1 + 0.5 * chance.next()) * (1.0 if chance.next() < 0.5 else -1.0)
    if what == "diagonal":
        told = list(room.diagonals)
        told[k] = replace(told[k], length_m=told[k].length_m + by)
        room = replace(room, diagonals=tuple(told))
    else:
        ways = list(room.ways)
        key = "at_m" if what == "at" else "width_m"
        by = abs(by) if getattr(ways[k], key) + by < 0.25 else by
        ways[k] = replace(ways[k], **{key: getattr(ways[k], key) + by})
        room = replace(room, ways=tuple(ways))
    rooms = (*walk.rooms[:n], room, *walk.rooms[n + 1 :])
    return replace(walk, rooms=rooms), Slip(n, k, by, what)


def _slip_of(read: float, chance: Chance, *, us: bool) -> tuple[float, str]:
    draw, sign = chance.next(), 1.0 if chance.next() < 0.5 else -1.0
    if draw < 0.2:
        return sign * 12 * M_PER_IN, "foot"
    if draw < 0.4:
        swapped = _swapped(read, us=us)
        if swapped:
            return swapped[chance.among(len(swapped))], "digits"
    step = M_PER_IN / 8 if us else 0.001
    return sign * round((0.1 + 0.5 * chance.next()) / step) * step, "any"


def _swapped(read: float, *, us: bool) -> list[float]:
    """What digits changed about add to a reading, where that is 100 mm or more."""
    if us:
        feet, inches = divmod(read / M_PER_IN, 12)
        digits, unit = f"{int(feet):02d}{int(inches):02d}", ""
        value = [int(digits[:2]) * 12 + int(digits[2:])]
        others = [digits[1] + digits[0] + digits[2:], digits[:2] + digits[3] + digits[2]]
        made = [(int(o[:2]) * 12 + int(o[2:]) - value[0]) * M_PER_IN
                for o in others if int(o[2:]) < 12]  # fmt: skip
        del unit
    else:
        digits = f"{round(read * 100):03d}"
        made = [
            (int(digits[:k] + digits[k + 1] + digits[k] + digits[k + 2 :]) - int(digits)) / 100
            for k in range(len(digits) - 1)
        ]
    return [one for one in made if abs(one) >= 0.1]
