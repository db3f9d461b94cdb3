"""The devices that a book has heard of: when last, by how much their clocks are off, what lacks.

A phone counts its entries up over all jobs, so a number that is missing between others is an entry
that has not come yet. A device that counts each job by itself (a number comes twice) tells nothing
of that; nor does any of what it holds behind its last entry.
"""

from __future__ import annotations

from dataclasses import field

from sqlalchemy import Connection, select

from farwall.nouns import dataclass
from farwall.store.canonical import values
from farwall.store.lines import later
from farwall.store.tables import CLOCK, ENTRY

_AT_A_TIME = {"yield_per": 2000}
SHOWN = 12


@dataclass(frozen=True)
class DeviceLine:
    """One device. heard_at: when the book last took something from it, by its own clock.

    off_s: by how many seconds its clock was ahead, as last told; None: never told. missing: the
    first numbers that have not come; `missing_count` of them in all, None where it cannot be told.
    """

    device: str
    entries: int
    heard_at: str
    off_s: float | None
    missing: tuple[int, ...]
    missing_count: int | None


@dataclass
class _Seen:
    entries: int = 0
    heard_at: str = ""
    off_s: float | None = None
    numbers: set[int] = field(default_factory=set)
    twice: bool = False


def devices(connection: Connection) -> list[DeviceLine]:
    """Every device, the one heard last first. All entries are read."""
    seen: dict[str, _Seen] = {}
    for clock in connection.execute(select(CLOCK).order_by(CLOCK.c.number)):
        one = seen.setdefault(clock.device, _Seen())
        one.heard_at, one.off_s = later(one.heard_at, clock.told_at), clock.off_s
    wanted = select(ENTRY.c.body, ENTRY.c.received_at).order_by(ENTRY.c.place)
    for row in connection.execute(wanted, execution_options=_AT_A_TIME):
        entry = values(row.body)
        if not entry["device"]:
            continue
        one = seen.setdefault(entry["device"], _Seen())
        one.entries += 1
        one.heard_at = later(one.heard_at, row.received_at)
        number = int(entry["number"])
        one.twice |= number > 0 and number in one.numbers
        one.numbers.add(number)
    found = [_line(name, one) for name, one in seen.items()]
    return sorted(found, key=lambda one: (one.heard_at, one.device), reverse=True)


def _line(name: str, one: _Seen) -> DeviceLine:
    numbers = one.numbers - {0}
    lacks = sorted(set(range(1, max(numbers, default=0) + 1)) - numbers)
    count = None if one.twice else len(lacks)
    first = () if one.twice else tuple(lacks[:SHOWN])
    return DeviceLine(name, one.entries, one.heard_at, one.off_s, first, count)
