"""How little of its budget the worst field can need: a floor under all orders, and the best order.

*Floor.* If budgets never grew during the day, choosing the last field first, each time the one that
needs the least share where it stands, would be the best of all orders [lawler-1973]; doors are no
harm, since a larger set of later fields only opens more of them (proof: docs/decisions/0009). Where
budgets do grow again, each share is replaced by the least from that hour on: what comes out is a
floor under every order, of any number of fields.

*Order.* Sets of later fields, grown a field at a time; exact while there are at most `MOST_SETS`,
which 16 fields never exceed; above that the likeliest sets of each size.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import field

from farwall.nouns import dataclass
from farwall.spray.leaving import MICRO, Leaving, bits

EXACT_FIELDS = 16
"""Orders of so many fields are always weighed to the end. Measured: bench/order.py."""
MOST_SETS = 1 << EXACT_FIELDS
WIDTH = 200
"""Sets of each size that are followed when there are too many, fewer above `_WORK`. Guess."""
_WORK = 500_000
_NEVER = float("inf")


@dataclass(frozen=True)
class Floor:
    """A share that the worst field needs in every order, and the order that gave it."""

    share: float
    order: tuple[int, ...]


@dataclass(frozen=True)
class Weighed:
    """The tidiest order within the margin, the least worst share found, and if all were weighed."""

    order: tuple[int, ...]
    least_worst: float
    exact: bool


def floor_of(leaving: Leaving) -> Floor:
    """The floor, for fields that can all be grown from the outside; budgets change by the hour."""
    count, whole = leaving.count, leaving.begun_min(0)
    hours = [60.0 * hour for hour in range(int(whole // 60) + 1)]
    from_hour = [[float("inf")] * (len(hours) + 1) for _ in range(count)]
    for index in range(count):
        for hour in reversed(range(len(hours))):
            now = leaving.share_per_min(index, hours[hour])
            from_hour[index][hour] = min(now, from_hour[index][hour + 1])

    def least_per_min(index: int, begun_min: float) -> float:
        later = from_hour[index][min(int(begun_min // 60) + 1, len(hours))]
        return min(leaving.share_per_min(index, begun_min), later)

    return _last_first(leaving, least_per_min)


def _last_first(leaving: Leaving, share_per_min: Callable[[int, float], float]) -> Floor:
    """The last field first: each time the one that needs the least share where it stands."""
    late, late_micro, worst = 0, 0, 0.0
    order: list[int] = []
    grows = leaving.behind[leaving.count]
    while len(order) < leaving.count:
        options = []
        for index in bits(grows & ~late):
            begun = leaving.begun_min(late_micro + leaving.micro[index])
            options.append((leaving.age_min(index, late) * share_per_min(index, begun), index))
        share, index = min(options)
        worst = max(worst, share)
        order.append(index)
        late |= 1 << index
        late_micro += leaving.micro[index]
        grows |= leaving.behind[index]
    return Floor(worst, tuple(reversed(order)))


def best_order(
    leaving: Leaving,
    area_m2: Sequence[float],
    known: Sequence[Sequence[int]],
    floor: float,
    *,
    equal_share: float,
    most_sets: int = MOST_SETS,
    width: int = WIDTH,
) -> Weighed:
    """The least worst share, and within `equal_share` of it the tidiest order.

    Tidy is: the largest possible field last, then far fields early, then the order of the fields.
    `known` are full orders in which nobody is shut in (at least one): nothing worse than the best
    of them is followed, and without exactness they are among what is weighed.
    """
    known = [*known, _last_first(leaving, leaving.share_per_min).order]
    worst = [max(share for share, _ in leaving.walked(order) or ()) for order in known]
    search = _Search(leaving, area_m2, min(worst) + equal_share, floor)
    exact = search.grow(most_sets)
    if not exact:
        search = _Search(leaving, area_m2, min(worst) + equal_share, floor)
        width = min(width, max(20, _WORK // leaving.count**2))
        search.grow(None, width=width, keep=_sets_of(known))
    whole = (1 << leaving.count) - 1
    least_worst = search.worst[-1][whole]
    return Weighed(search.tidiest(least_worst + equal_share), least_worst, exact)


def _sets_of(orders: Sequence[Sequence[int]]) -> set[int]:
    """Every set of later fields that these orders pass through."""
    found = set()
    for order in orders:
        late = 0
        for index in reversed(order):
            late |= 1 << index
            found.add(late)
    return found


_Tidy = tuple[float, int, int]
"""Negative area of the last field, walking told by doors and places, the field that goes first."""


@dataclass
class _Search:
    """Sets of later fields by size: the least worst share, and which fields of them may go first.

    Tables that one search fills and then reads; nobody else holds them.
    """

    leaving: Leaving
    area_m2: Sequence[float]
    ceiling: float
    floor: float
    worst: list[dict[int, float]] = field(default_factory=lambda: [{0: 0.0}])
    first: list[dict[int, list[tuple[int, float]]]] = field(default_factory=lambda: [{0: []}])

    def grow(self, most_sets: int | None, *, width: int = 0, keep: set[int] | None = None) -> bool:
        """Fill the tables; False when that would take more than `most_sets` sets."""
        leaving = self.leaving
        grows, micro = {0: leaving.behind[leaving.count]}, {0: 0}
        tidy: dict[int, _Tidy] = {}
        sets = 1
        for size in range(1, leaving.count + 1):
            self._layer(grows, micro, None if most_sets is None else most_sets - sets)
            sets += len(self.worst[size])
            if most_sets is None:
                tidy = self._tidy_layer(size, tidy, self.ceiling)
                self._narrow(size, tidy, width, keep or set())
            elif sets > most_sets:
                return False
            grows, micro = self._next(grows, micro)
        return True

    def _layer(self, grows: dict[int, int], micro: dict[int, int], most: int | None) -> None:
        """All sets with one field more than the last ones; broken off when more than `most`."""
        leaving = self.leaving
        leads, own, weigh = leaving.leads, leaving.micro, leaving.share_per_min
        outdoors, ceiling = 1 << leaving.count, self.ceiling
        worst: dict[int, float] = {}
        first: dict[int, list[tuple[int, float]]] = {}
        self.worst.append(worst)
        self.first.append(first)
        for late, so_far in self.worst[-2].items():
            dry, left = late | outdoors, leaving.whole_micro - micro[late]
            for index in bits(grows[late] & ~late):
                # The youngest edge of the doors that lead somewhere dry; written out, being the
                # innermost loop.
                for bit, age in leads[index]:
                    if bit & dry:
                        share = age * weigh(index, (left - own[index]) / MICRO)
                        break
                if share > ceiling:
                    continue
                larger = late | 1 << index
                first.setdefault(larger, []).append((index, share))
                whole = max(share, so_far)
                if whole < worst.get(larger, _NEVER):
                    worst[larger] = whole
            if most is not None and len(worst) > most:
                return

    def _next(
        self, grows: dict[int, int], micro: dict[int, int]
    ) -> tuple[dict[int, int], dict[int, int]]:
        """What grows from each new set, and how long it takes."""
        leaving = self.leaving
        new_grows, new_micro = {}, {}
        for late in self.worst[-1]:
            index = self.first[-1][late][0][0]
            before = late ^ 1 << index
            new_grows[late] = grows[before] | leaving.behind[index]
            new_micro[late] = micro[before] + leaving.micro[index]
        return new_grows, new_micro

    def _tidy_layer(self, size: int, before: dict[int, _Tidy], limit: float) -> dict[int, _Tidy]:
        """The tidiest way to spray each set of this size last, no share above the limit."""
        away = self.leaving.away
        place = self.leaving.count - size
        found: dict[int, _Tidy] = {}
        for late, options in self.first[size].items():
            ways = []
            for index, share in options:
                rest = late ^ 1 << index
                if share > limit or (rest and rest not in before):
                    continue
                last, walk, _ = before[rest] if rest else (-self.area_m2[index], 0, 0)
                ways.append((last, walk + place * (away[index] or 0), index))
            if ways:
                found[late] = min(ways)
        return found

    def _narrow(self, size: int, tidy: dict[int, _Tidy], width: int, keep: set[int]) -> None:
        """Of the sets of this size only the likeliest, and those to keep."""
        worst = self.worst[size]
        ranked = sorted(tidy, key=lambda late: (max(worst[late], self.floor), tidy[late]))
        kept = {*ranked[:width], *(keep & set(worst))}
        self.worst[size] = {late: share for late, share in worst.items() if late in kept}
        self.first[size] = {late: self.first[size][late] for late in self.worst[size]}

    def tidiest(self, limit: float) -> tuple[int, ...]:
        """The tidiest order with no share above the limit."""
        layers: list[dict[int, _Tidy]] = [{}]
        for size in range(1, self.leaving.count + 1):
            layers.append(self._tidy_layer(size, layers[-1], limit))
        order = []
        late = (1 << self.leaving.count) - 1
        for layer in reversed(layers[1:]):
            order.append(layer[late][2])
            late ^= 1 << order[-1]
        return tuple(order)
