"""A walk, closed: corners, what was added to each wall, what slipped, what nothing holds."""

from __future__ import annotations

from farwall.floor.walk.adjust import Adjusted, adjusted
from farwall.floor.walk.held import Advice, Held, advice, held_walls
from farwall.floor.walk.lay import Lay, lay_of
from farwall.floor.walk.net import Net, Row, net_of
from farwall.floor.walk.nouns import Spread, Walk
from farwall.floor.walk.simple import Leg, Misclosure, bowditch, legs_of, misclosure
from farwall.floor.walk.suspect import Found, find
from farwall.nouns import dataclass

MOST_SLIPS = 3


@dataclass(frozen=True)
class RoomClosing:
    """How a room closes: as walked, by the simple rule, and by least squares.

    miss: None where a wall was not measured. added_m: what least squares adds to each wall's
    reading [m], None for a wall without one; simple: what the compass rule adds (x, y).
    """

    room: int
    miss: Misclosure | None
    simple: tuple[Leg, ...]
    added_m: tuple[float | None, ...]


@dataclass(frozen=True)
class Closed:
    """All that a walk gives. found: the slips one after the other, empty when none was found."""

    walk: Walk
    lay: Lay
    net: Net
    fit: Adjusted
    found: tuple[Found, ...]
    rooms: tuple[RoomClosing, ...]
    held: tuple[Held, ...]
    advice: tuple[Advice, ...]

    def row(self, number: int) -> Row:
        """A row of the system."""
        return self.net.rows[number]

    def corner(self, room: int, k: int) -> tuple[float, float]:
        """Where a corner lies [m]."""
        at = self.net.first[room] + 2 * (k % len(self.walk.rooms[room].walls))
        return float(self.fit.x[at]), float(self.fit.x[at + 1])


def close_walk(walk: Walk, *, spread: Spread | None = None) -> Closed:
    """The walk closed by least squares, slips named and left out. Raises Refused."""
    lay = lay_of(walk)
    net = net_of(walk, lay, spread)
    fit = adjusted(net)
    found: list[Found] = []
    out: list[int] = []
    for _ in range(MOST_SLIPS):
        one = find(walk, net, fit, out=out)
        if not one.alarm:
            break
        found.append(one)
        out.append(one.suspects[0].row)
        fit = one.without
    rooms = tuple(_closing(walk, lay, net, fit, n) for n in range(len(walk.rooms)))
    return Closed(
        walk, lay, net, fit, tuple(found), rooms, held_walls(net, fit),
        advice(walk, net, fit, spread),
    )  # fmt: skip


def _closing(walk: Walk, lay: Lay, net: Net, fit: Adjusted, room: int) -> RoomClosing:
    legs = legs_of(walk, lay, room)
    added: list[float | None] = [None] * len(walk.rooms[room].walls)
    for i, row in enumerate(net.rows):
        if row.kind == "wall" and row.room == room:
            added[row.wall] = float(fit.v[i])
    miss = misclosure(legs) if legs else None
    return RoomClosing(room, miss, bowditch(legs) if legs else (), tuple(added))
