"""Where the rooms of an invented house lie: halls with a row of rooms on either side.

Whole centimetres. A house of many rooms has several wings, one above the
other; each has a hall, and a lobby at its left end that joins the wings. A row
is told as seen from its hall: `u` along it, `v` away from it.
"""

from __future__ import annotations

from farwall.bench.dice import Dice
from farwall.nouns import dataclass

Place = tuple[int, int]

MOST_IN_ONE_WING = 14
LOBBY_CM = 160
WIDTHS_CM = {
    "great": (520, 780),
    "kitchen": (330, 480),
    "bed": (290, 430),
    "study": (240, 340),
    "bath": (190, 270),
    "store": (150, 230),
}
_REST = ("bed", "bath", "bed", "study", "store")


@dataclass(frozen=True)
class Closet:
    """A closet in the outer corner of a room: it takes u from `u0` on and v from `v0` on."""

    id: str
    u0: int
    v0: int


@dataclass(frozen=True)
class RowRoom:
    """A room of a row from `u0` to `u1`, with the closet that is carved out of it."""

    id: str
    kind: str
    u0: int
    u1: int
    closet: Closet | None = None


@dataclass(frozen=True)
class Row:
    """Rooms side by side along a hall; v grows downward on the page where `sign` is -1."""

    rooms: tuple[RowRoom, ...]
    depth: int
    y: int
    sign: int

    def at(self, u: int, v: int) -> Place:
        """A place of the row on the page."""
        return (u, self.y + self.sign * v)


@dataclass(frozen=True)
class Wing:
    """A hall from `y0` to `y1` as long as its longer row, its two rows, and its lobby if any."""

    hall: str
    lobby: str
    y0: int
    y1: int
    rows: tuple[Row, Row]

    @property
    def length(self) -> int:
        """How far the hall runs."""
        return max(row.rooms[-1].u1 for row in self.rows if row.rooms)

    @property
    def span(self) -> tuple[int, int]:
        """Lowest and highest y of the wing."""
        return self.y0 - self.rows[0].depth, self.y1 + self.rows[1].depth


def lay_out(rooms: int, dice: Dice) -> tuple[Wing, ...]:
    """The wings of a house of exactly this many rooms (at least 3), halls and closets counted."""
    if rooms < 3:
        raise ValueError(f"a house of {rooms} rooms has no hall with a room on either side")
    count = 1 if rooms <= MOST_IN_ONE_WING else -(-rooms // MOST_IN_ONE_WING)
    lobbies = count > 1
    wings: list[Wing] = []
    floor_y = 0
    for number in range(1, count + 1):
        mine = rooms // count + (number <= rooms % count)
        wing = _wing(number, mine - 1 - lobbies, floor_y, dice, lobby=lobbies)
        wings.append(wing)
        floor_y = wing.span[1]
    return tuple(wings)


def _wing(number: int, rooms: int, floor_y: int, dice: Dice, *, lobby: bool) -> Wing:
    kinds = _kinds(number, rooms, dice)
    low = [kind for place, kind in enumerate(kinds) if place % 2 == 0]
    high = [kind for place, kind in enumerate(kinds) if place % 2 == 1]
    depth_low, depth_high = dice.between(330, 470), dice.between(330, 470)
    y0 = floor_y + depth_low
    y1 = y0 + dice.between(115, 165)
    below = Row(_row(f"{number}a", low, depth_low, dice), depth_low, y0, -1)
    above = Row(_row(f"{number}b", high, depth_high, dice), depth_high, y1, 1)
    return Wing(f"hall-{number}", f"lobby-{number}" if lobby else "", y0, y1, (below, above))


def _kinds(number: int, rooms: int, dice: Dice) -> list[str]:
    """What the rooms of a wing are; `bed+closet` counts for two of them."""
    kinds = (["great", "kitchen"] if number == 1 else ["bed", "bed"])[:rooms]
    left = rooms - len(kinds)
    while left > 0:
        kind = dice.one_of(_REST)
        if kind == "bed" and left > 1 and dice.happens(0.5):
            kinds.append("bed+closet")
            left -= 2
        else:
            kinds.append(kind)
            left -= 1
    return kinds


def _row(name: str, kinds: list[str], depth: int, dice: Dice) -> tuple[RowRoom, ...]:
    rooms = []
    u = 0
    for number, kind in enumerate(kinds, start=1):
        plain = kind.removesuffix("+closet")
        wide = dice.between(*WIDTHS_CM[plain])
        closet = None
        if kind != plain:
            in_full = dice.happens(0.4)
            u0 = u if in_full else u + wide - dice.between(120, min(180, wide - 130))
            closet = Closet(f"closet-{name}{number}", u0, depth - dice.between(85, 150))
        rooms.append(RowRoom(f"{plain}-{name}{number}", plain, u, u + wide, closet))
        u += wide
    return tuple(rooms)
