"""What stands on the slab of an invented house, and its saw cuts."""

from __future__ import annotations

from farwall.bench.dice import Dice
from farwall.bench.drawing import polygon
from farwall.bench.layout import Place, Row, RowRoom
from farwall.floor.nouns import Fixture, SawCut

_TUB_CM = 75
_CABINET_CM = 62
_ROUND_ISLAND_CM = 100
_LEAST_ISLAND_CM = 80


def furnish(
    row: Row, room: RowRoom, h: int, dice: Dice
) -> tuple[tuple[Fixture, ...], tuple[SawCut, ...]]:
    """Fixtures and saw cuts of one room; `h` is half a wall. [cm]"""
    if room.kind == "bath":
        return (_tub(row, room, h),), ()
    if room.kind == "kitchen":
        return _kitchen(row, room, h, dice), ()
    if room.kind == "great" and dice.happens(0.6):
        return (), (_cut(row, room, h, dice),)
    return (), ()


def _fixture(row: Row, room: RowRoom, kind: str, low: Place, high: Place) -> Fixture:
    corners = [low, (high[0], low[1]), high, (low[0], high[1])]
    outline = polygon([(x / 100, y / 100) for x, y in (row.at(u, v) for u, v in corners)])
    return Fixture(kind, outline, f"{kind}-{room.id}")


def _tub(row: Row, room: RowRoom, h: int) -> Fixture:
    """A tub all along the outer wall."""
    outer = row.depth - h
    return _fixture(row, room, "tub", (room.u0 + h, outer - _TUB_CM), (room.u1 - h, outer))


def _kitchen(row: Row, room: RowRoom, h: int, dice: Dice) -> tuple[Fixture, ...]:
    """Cabinets along the outer wall, and an island where there is room to walk round it."""
    outer = row.depth - h
    cabinets = _fixture(
        row, room, "cabinet", (room.u0 + h, outer - _CABINET_CM), (room.u1 - h, outer)
    )
    u0, u1 = room.u0 + h + _ROUND_ISLAND_CM, room.u1 - h - _ROUND_ISLAND_CM
    v0, v1 = h + _ROUND_ISLAND_CM, outer - _CABINET_CM - _ROUND_ISLAND_CM
    roomy = u1 - u0 >= _LEAST_ISLAND_CM and v1 - v0 >= _LEAST_ISLAND_CM
    if not roomy or not dice.happens(0.7):
        return (cabinets,)
    return cabinets, _fixture(row, room, "island", (u0, v0), (u1, v1))


def _cut(row: Row, room: RowRoom, h: int, dice: Dice) -> SawCut:
    """A cut from side wall to side wall, somewhere in the middle of the depth."""
    v = row.depth * dice.between(40, 60) // 100
    ends = [row.at(room.u0 + h, v), row.at(room.u1 - h, v)]
    one, two = [(x / 100, y / 100) for x, y in ends]
    return SawCut((one, two), f"cut-{room.id}")
