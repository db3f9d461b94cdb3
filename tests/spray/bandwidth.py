"""The exact bandwidth of a small graph, with the exit last: a check module from outside the tool.

Pieces of floor are vertices, neighbours are edges. In an order of the vertices an edge waits from
the begin of its first to the begin of its second end; the *width* of an order is the longest wait,
in area (a vertex of area 1 each: the bandwidth of the graph). So the width times minutes a square
metre is the age of the oldest wet edge, when whole pieces are sprayed one after the other.

Shares no code with the planner. Areas are whole numbers, so that answers are exact.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

Edges = Iterable[tuple[int, int]]


@dataclass(frozen=True)
class Numbered:
    """A least width and an order that has it."""

    width: int
    order: tuple[int, ...]


def bandwidth(
    count: int,
    edges: Edges,
    *,
    last: int | None = None,
    areas: Sequence[int] | None = None,
    walkable: bool = False,
) -> Numbered:
    """The least width of all orders of vertices 0 to `count` - 1; those with `last` at the end.

    `walkable`: each vertex but the last of the order has a neighbour that comes later. Branch and
    bound: the width found is lowered until no order has less. Raises `ValueError` when there is no
    order at all, which takes `walkable` and a graph in several parts.
    """
    near, steps = _graph(count, tuple(edges))
    own = tuple(areas) if areas is not None else (1,) * count
    best: tuple[int, ...] | None = None
    limit = sum(own)
    while limit >= 0:
        found = _Search(near, own, steps, last, limit, walkable).order()
        if found is None:
            break
        best = found
        limit = width_of(best, near, own) - 1
    if best is None:
        raise ValueError("no walkable order: the graph falls apart")
    return Numbered(limit + 1, best)


@lru_cache(maxsize=1)
def _graph(
    count: int, edges: tuple[tuple[int, int], ...]
) -> tuple[tuple[int, ...], tuple[list[int], ...]]:
    """For each vertex the bits of its neighbours and its steps to all: kept for the next exit."""
    near = [0] * count
    for one, two in edges:
        near[one] |= 1 << two
        near[two] |= 1 << one
    return tuple(near), tuple(_steps(near, vertex) for vertex in range(count))


def width_of(order: Sequence[int], near: Sequence[int], areas: Sequence[int]) -> int:
    """The longest wait of an edge in this order."""
    begin, now = {}, 0
    for vertex in order:
        begin[vertex] = now
        now += areas[vertex]
    waits = (
        begin[two] - begin[one]
        for one in order
        for two in order
        if near[one] >> two & 1 and begin[two] > begin[one]
    )
    return max(waits, default=0)


def growth_bound(count: int, edges: Edges, exit_: int) -> int:
    """Least width with the exit last, by counting: vertices within r steps of the exit are begun
    within r widths of it, so there are at most r x width of them beside the exit itself."""
    near: list[set[int]] = [set() for _ in range(count)]
    for one, two in edges:
        near[one].add(two)
        near[two].add(one)
    reached, front, radius, bound = {exit_}, {exit_}, 0, 0
    while front:
        front = {there for here in front for there in near[here]} - reached
        reached |= front
        radius += 1
        if front:
            bound = max(bound, -(-(len(reached) - 1) // radius))
    return bound


@dataclass
class _Search:
    """Whether some order has at most this width: built from its end, each state only once.

    From the end a vertex has an `over`: area of itself and all that come later. An edge then waits
    over(first) - over(second), so what lies `steps` edges from a vertex that stands already must
    be over within `steps` widths of it.
    """

    near: tuple[int, ...]
    areas: tuple[int, ...]
    steps: tuple[list[int], ...]
    last: int | None
    limit: int
    walkable: bool
    dead: set[tuple[int, tuple[int, ...]]] = field(default_factory=set)

    def order(self) -> tuple[int, ...] | None:
        count = len(self.near)
        never = sum(self.areas)  # later than anything is over
        self.within = [
            [never if steps < 0 else self.limit * steps for steps in row] for row in self.steps
        ]
        found = self._rest((1 << count) - 1, 0, (never,) * count, ())
        return None if found is None else found[::-1]

    def _rest(
        self, left: int, now: int, due: tuple[int, ...], done: tuple[int, ...]
    ) -> tuple[int, ...] | None:
        """An order whose end, told backwards, is `done`; vertex v of those left is over by due."""
        if not left:
            return done
        key = (left, due)
        if key in self.dead:
            return None
        urgent = sorted(_bits(left), key=due.__getitem__)
        if not self._in_time(urgent, now, due):
            return None
        for vertex in urgent:
            if not self._may_come(vertex, left, done):
                continue
            rest, over = left ^ 1 << vertex, now + self.areas[vertex]
            sooner = list(due)
            sooner[vertex] = 0  # nothing is due of what is done, so that alike states are the same
            within = self.within[vertex]
            for v in _bits(rest):
                if over + within[v] < sooner[v]:  # noqa: PLR1730 - calling min() takes longer
                    sooner[v] = over + within[v]
            if found := self._rest(rest, over, tuple(sooner), (*done, vertex)):
                return found
        self.dead.add(key)
        return None

    def _may_come(self, vertex: int, left: int, done: tuple[int, ...]) -> bool:
        if not done:
            return self.last is None or vertex == self.last
        return not self.walkable or bool(self.near[vertex] & ~left)

    def _in_time(self, urgent: list[int], now: int, due: tuple[int, ...]) -> bool:
        """No group of vertices is due sooner than one after the other can be over."""
        for vertex in urgent:
            now += self.areas[vertex]
            if now > due[vertex]:
                return False
        return True


def _steps(near: Sequence[int], start: int) -> list[int]:
    """Edges from `start` to each vertex; -1 where there is no way."""
    steps = [-1] * len(near)
    seen, front, radius = 0, 1 << start, 0
    while front:
        seen |= front
        further = 0
        for vertex in _bits(front):
            steps[vertex] = radius
            further |= near[vertex]
        front, radius = further & ~seen, radius + 1
    return steps


@lru_cache(maxsize=4096)
def _bits(mask: int) -> tuple[int, ...]:
    """The numbers of a mask's bits, the lowest first."""
    return tuple(index for index in range(mask.bit_length()) if mask >> index & 1)
