"""What comes next in mid-day: the planned order, but for rooms in which somebody stands.

The order of the morning is kept as far as it goes. A field waits when it is closed, or when
spraying it would shut in who stands in a closed room, or what is still to be sprayed. A room-level
rule: the walk itself is laid, and refused, by the schedule.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import inf

from farwall.errors import Unanswerable
from farwall.nouns import dataclass
from farwall.spray.sweeps import Pieces, Sweeps
from farwall.spray.world import Seam


@dataclass(frozen=True)
class Waiting:
    """A field still to do: its pieces, planned way out, how long it takes, whether it is begun.

    `patience_min`: so long its live edge can still wait; 0 when it has none.
    """

    id: str
    pieces: Pieces
    exit: Seam
    minutes: float
    name: str
    patience_min: float = 0.0


@dataclass(frozen=True)
class Shut:
    """A room in which somebody stands until a minute; infinite when for all day.

    room: what it is called.
    """

    room: str
    pieces: Pieces
    until_min: float


@dataclass(frozen=True)
class Turn:
    """A field in its turn: the seam by which it is left, and not before which minute."""

    id: str
    exit: Seam
    not_before_min: float


@dataclass(frozen=True)
class Turns:
    """The fields in their new order, and those left for another day with the reason."""

    turns: tuple[Turn, ...]
    left: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class _May:
    """When a field may be sprayed, and what it waits for."""

    from_min: float
    why: str


def in_turn(
    waiting: Sequence[Waiting],
    wet: Pieces,
    shut: Sequence[Shut],
    sweeps: Sweeps,
    *,
    now_min: float,
) -> Turns:
    """The order of the fields that are `waiting`, in the planned order but for closed rooms.

    `wet`: pieces that this coat has covered. Where nothing may be done now, what
    may be done soonest is waited for; what may never be done is left.
    """
    left, turns, now = list(waiting), list[Turn](), now_min
    while left:
        may = {one.id: _may(one, left, wet, shut, sweeps, now=now) for one in left}
        live = [one for one in left if one.patience_min > 0]
        ready = [one for one in left if may[one.id].from_min <= now]
        held = [one for one in live if now < may[one.id].from_min <= now + one.patience_min]
        soon = sorted(left, key=lambda one: (may[one.id].from_min, left.index(one)))
        one = next(iter([*held, *ready, *soon]))
        start = max(now, may[one.id].from_min)
        way = None if start == inf else _way_out(one, wet, sweeps)
        if way is None:
            return Turns(tuple(turns), tuple((o.id, may[o.id].why or _shut_in()) for o in left))
        turns.append(Turn(one.id, way, may[one.id].from_min if start > now else now_min))
        now = start + one.minutes
        wet |= one.pieces
        left.remove(one)
    return Turns(tuple(turns), ())


def _may(
    one: Waiting,
    left: Sequence[Waiting],
    wet: Pieces,
    shut: Sequence[Shut],
    sweeps: Sweeps,
    *,
    now: float,
) -> _May:
    """From when on the field may be sprayed without spraying at or shutting in anybody."""
    if not sweeps.ways_out(one.pieces, keep_off=wet):
        return _May(inf, _shut_in())
    for other in left:
        if other is not one and not sweeps.ways_out(other.pieces, keep_off=wet | one.pieces):
            return _May(inf, f"{other.name} behind it has to be sprayed first.")
    found = _May(now, "")
    for room in shut:
        if room.until_min <= found.from_min:
            continue
        if room.pieces & one.pieces:
            found = _May(room.until_min, f"{room.room} is closed.")
        elif not room.pieces & wet and not _leads_out(room.pieces, wet | one.pieces, sweeps):
            found = _May(room.until_min, f"who stands in {room.room} goes out through it.")
    return found


def _leads_out(pieces: Pieces, blocked: Pieces, sweeps: Sweeps) -> bool:
    own = any(seam.is_way_out for piece in pieces for seam in sweeps.world.seams_of(piece))
    return own or bool(sweeps.ways_out(pieces, keep_off=blocked))


def _shut_in() -> str:
    return "no dry way leads out of it."


def _way_out(one: Waiting, wet: Pieces, sweeps: Sweeps) -> Seam | None:
    """The planned way out while it leads anywhere, else the one with the youngest edges."""
    ways = sweeps.ways_out(one.pieces, keep_off=wet)
    if one.exit in ways:
        return one.exit
    if one.patience_min > 0:
        return None
    found = []
    for seam in ways:
        try:
            sweeps.of(one.pieces, seam)
            found.append((sweeps.age_min(one.pieces, seam), seam.id, seam))
        except Unanswerable:
            continue
    return min(found)[2] if found else None
