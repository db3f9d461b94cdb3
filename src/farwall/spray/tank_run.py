"""The best moments to fill a tank over a row of fields, exactly: a search over all choices.

A field is a `TankRun`: what each pass takes, what a filling before it adds to
the edges that are live then, and how old each edge is when nothing interrupts.
Going from pass to pass, a *label* is a choice of fillings so far. All that the
future can ask of it is how much is left in the tank, what its fillings have
added to each edge that is still to be met, and what it has cost; a label that
is no better than another in any of these is dropped. That is dynamic
programming; it leaves out no best choice, and tests try every choice on small fields.

The order of wishes: every field's oldest edge as young as it can be (or young enough), then
fewest fillings over all fields, then fewest inside them, then least walking.
The first is free of the rest: a tank filled before the first pass of a field
ages no edge, so each field can have its best whatever the others do.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import cached_property, lru_cache

from farwall.nouns import dataclass

SAME_AGE_MIN = 0.01
"""Edges whose ages differ by less are alike: then fewer fillings count. Rank: guess."""
_HAIR_L = 1e-9
_HAIR_MIN = 1e-9
_CLOSE_MIN = 1e-6
_FREE = (0, 0, 0.0)

Stops = tuple[int, ...]


@dataclass(frozen=True)
class TankRun:
    """One field as a tank sees it.

    need_l: what each pass takes. pause_min: what a filling before each pass adds to edges
    that are live then (none is before the first). walk_m: the walking for it. edges: pairs of
    passes that meet, the first before the second, with the age when nothing interrupts. [min]
    """

    need_l: tuple[float, ...]
    pause_min: tuple[float, ...]
    walk_m: tuple[float, ...]
    edges: tuple[tuple[int, int, float], ...]

    @cached_property
    def meeting(self) -> tuple[tuple[tuple[int, float], ...], ...]:
        """For each pass the passes before it whose edges it meets, and their ages. [min]"""
        found: list[list[tuple[int, float]]] = [[] for _ in self.need_l]
        for first, then, age in self.edges:
            found[then].append((first, age))
        return tuple(map(tuple, found))

    @cached_property
    def last_met(self) -> tuple[int, ...]:
        """For each pass the last pass that meets one of its edges; itself where none does."""
        last = list(range(len(self.need_l)))
        for first, then, _ in self.edges:
            last[first] = max(last[first], then)
        return tuple(last)

    @property
    def unbroken_min(self) -> float:
        """The oldest edge when the tank is never filled inside. [min]"""
        return max((age for _, _, age in self.edges), default=0.0)

    def peak_min(self, stops: Iterable[int]) -> float:
        """The oldest edge when the tank is filled before these passes. [min]"""
        places = sorted(stops)
        return max(
            (
                age + sum(self.pause_min[k] for k in places if first < k <= then)
                for first, then, age in self.edges
            ),
            default=0.0,
        )


@dataclass(frozen=True)
class _Label:
    """A choice of fillings so far: litres left, what each open edge has gained, the cost."""

    left_l: float
    added: tuple[float, ...]
    cost: tuple[int, int, float]
    """Fillings, those of them after the first pass of a field, walking for them [m]."""
    stops: tuple[Stops, ...]

    def as_good_as(self, other: _Label) -> bool:
        return (
            self.cost <= other.cost
            and self.left_l >= other.left_l - _HAIR_L
            and all(a <= b + _HAIR_MIN for a, b in zip(self.added, other.added, strict=True))
        )


def best_stops(
    runs: Sequence[TankRun], *, filled_l: float, now_l: float, enough_min: float = 0.0
) -> tuple[Stops, ...] | None:
    """Before which passes of each run to fill; None where one pass takes more than a tank.

    filled_l: what a full tank gives before its reserve; now_l: what the tank gives now. [L]
    enough_min: edges up to this age are young enough, all alike: then fewer fillings count.
    """
    limits = [_limit_min(run, filled_l, enough_min) for run in runs]
    if any(limit is None for limit in limits):
        return None
    labels = [_Label(now_l, (), _FREE, ())]
    for run, limit in zip(runs, limits, strict=True):
        assert limit is not None
        labels = _grown(run, labels, filled_l, limit + SAME_AGE_MIN)
    return min(labels, key=lambda label: (label.cost, label.stops)).stops


def _limit_min(run: TankRun, filled_l: float, enough_min: float) -> float | None:
    """How old the edges of a run may get: as young as can be, but not younger than is enough."""
    late = _latest(run, filled_l)
    if late is not None and run.peak_min(late) <= enough_min:
        return enough_min
    least = least_peak_min(run, filled_l)
    return None if least is None else max(least, enough_min)


@lru_cache(maxsize=512)
def least_peak_min(run: TankRun, filled_l: float) -> float | None:
    """The oldest edge of the best choice, to 1e-6 min, the tank being full before the first pass.

    None where one pass takes more than a tank.
    """
    found = _latest(run, filled_l)
    if found is None:
        return None
    low, peak = run.unbroken_min, run.peak_min(found)
    start = [_Label(filled_l, (), _FREE, ())]
    while peak - low > _CLOSE_MIN:
        # Ages seldom come down all the way: ask for the youngest first, then by halves.
        limit = low + _CLOSE_MIN / 2 if low == run.unbroken_min else (low + peak) / 2
        labels = _grown(run, start, filled_l, limit)
        if labels:
            peak = min(run.peak_min(label.stops[-1]) for label in labels)
        else:
            low = limit
    return peak


def _latest(run: TankRun, filled_l: float) -> Stops | None:
    """Each filling as late as can be, from a full tank."""
    left, stops = filled_l, []
    for index, need in enumerate(run.need_l):
        if need > filled_l + _HAIR_L:
            return None
        if need > left + _HAIR_L:
            stops.append(index)
            left = filled_l
        left -= need
    return tuple(stops)


@dataclass(frozen=True)
class _Step:
    """One pass to be sprayed: whose edges are open before it and after it."""

    run: TankRun
    index: int
    before: tuple[int, ...]
    after: tuple[int, ...]
    filled_l: float
    limit_min: float

    def from_(self, label: _Label) -> Iterator[_Label]:
        """The label once the pass is sprayed, without and with a filling before it."""
        run, index = self.run, self.index
        for fill in (False, True):
            left = (self.filled_l if fill else label.left_l) - run.need_l[index]
            if left < -_HAIR_L:
                continue
            pause = run.pause_min[index] if fill else 0.0
            added = {f: more + pause for f, more in zip(self.before, label.added, strict=True)}
            if any(age + added[f] > self.limit_min for f, age in run.meeting[index]):
                continue
            open_added = tuple(added.get(first, 0.0) for first in self.after)
            if not fill:
                yield _Label(left, open_added, label.cost, label.stops)
                continue
            cost = _dearer(label.cost, run.walk_m[index], inside=index > 0)
            stops = (*label.stops[:-1], (*label.stops[-1], index))
            yield _Label(left, open_added, cost, stops)


def _grown(
    run: TankRun, labels: Sequence[_Label], filled_l: float, limit_min: float
) -> list[_Label]:
    """The labels after this run, none with an edge above the limit, none worse than another."""
    now = [_Label(label.left_l, (), label.cost, (*label.stops, ())) for label in labels]
    before: tuple[int, ...] = ()
    for index in range(len(run.need_l)):
        after = tuple(f for f in (*before, index) if run.last_met[f] > index)
        step = _Step(run, index, before, after, filled_l, limit_min + _HAIR_MIN)
        now = _undominated(grown for label in now for grown in step.from_(label))
        before = after
    return now


def _dearer(cost: tuple[int, int, float], walk_m: float, *, inside: bool) -> tuple[int, int, float]:
    return (cost[0] + 1, cost[1] + inside, round(cost[2] + walk_m, 6))


def _undominated(labels: Iterable[_Label]) -> list[_Label]:
    kept: list[_Label] = []
    for label in sorted(labels, key=lambda one: (one.cost, -one.left_l, one.added, one.stops)):
        if not any(other.as_good_as(label) for other in kept):
            kept.append(label)
    return kept
