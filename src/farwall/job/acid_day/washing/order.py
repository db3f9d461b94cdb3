"""The order of the rooms: from the far end to the way out, nobody over a washed floor. Pure."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Mapping, Sequence

from farwall.facts.plan import Plan
from farwall.floor.nouns import Opening
from farwall.nouns import dataclass

Doors = Mapping[str, frozenset[str]]


@dataclass(frozen=True)
class Ways:
    """Which rooms lie beside which, and from which one steps out of the house."""

    beside: Doors
    out: Mapping[str, str]
    """Room to exit id."""

    def way(self, room: str, free: Iterable[str]) -> str | None:
        """The next room on the shortest way out over `free` rooms, or the exit; None: no way."""
        free = frozenset(free)
        if room in self.out:
            return self.out[room]
        first = {room: ""}
        queue = deque([room])
        while queue:
            here = queue.popleft()
            for there in sorted(self.beside.get(here, ())):
                if there in first or there not in free:
                    continue
                first[there] = first[here] or there
                if there in self.out:
                    return first[there]
                queue.append(there)
        return None


def ways_of(plan: Plan) -> Ways:
    """The doors of a plan."""
    beside: dict[str, set[str]] = {room.id: set() for room in plan.inputs.floor.rooms}
    for opening in plan.inputs.openings:
        for one in opening.rooms:
            beside.setdefault(one, set()).update(set(opening.rooms) - {one})
    by_id: dict[str, Opening] = {one.id: one for one in plan.inputs.openings}
    out: dict[str, str] = {}
    for exit_ in plan.inputs.exits:
        found = by_id.get(exit_.opening)
        for room in found.rooms if found is not None else ():
            out.setdefault(room, exit_.id)
    return Ways({room: frozenset(one) for room, one in beside.items()}, out)


def wash_order(plan: Plan) -> list[tuple[str, str]]:
    """Rooms in the order in which they are washed, each with the room or exit one backs into.

    The order of the last coat, as long as every room that is still to be washed keeps a dry way
    out that leads over no washed one; else the next room that keeps it so. One such room always
    is: a leaf of the tree of ways. A room with no way out at all (none was drawn) keeps its place.
    """
    ways, wish = ways_of(plan), _as_sprayed(plan)
    lost = {room for room in wish if ways.way(room, wish) is None}
    left, done = list(wish), []
    while left:
        room = next(one for one in left if _keeps(ways, left, one, lost))
        done.append((room, ways.way(room, left) or ""))
        left.remove(room)
    return done


def _keeps(ways: Ways, left: Sequence[str], room: str, lost: set[str]) -> bool:
    """Whether all others keep a way out once this room is washed."""
    rest = [one for one in left if one != room]
    return all(one in lost or ways.way(one, rest) is not None for one in rest)


def _as_sprayed(plan: Plan) -> list[str]:
    """Rooms by the time at which the last coat is done in them; those with none come first."""
    last = plan.inputs.coats[-1].id if plan.inputs.coats else ""
    ends: dict[str, float] = {}
    shapes = {room.id: room.polygon.shape for room in plan.inputs.floor.rooms}
    for field in (one for one in plan.fields if one.coat == last):
        for band in field.bands:
            at = band.polygon.shape.representative_point()
            for room in field.rooms:
                if room in shapes and (len(field.rooms) == 1 or shapes[room].intersects(at)):
                    ends[room] = max(ends.get(room, 0.0), band.end_min)
        for room in field.rooms:
            ends.setdefault(room, field.end_min)
    rooms = [room.id for room in plan.inputs.floor.rooms]
    return sorted(rooms, key=lambda room: (ends.get(room, -1.0), rooms.index(room)))
