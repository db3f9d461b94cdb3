"""How long edges live, by place and minute, and which edge has the least to spare.

An edge is held to the shortest open time that holds at its place in any minute
of its wait, from when it is made until it is met. A place belongs to each room
that comes within `SPARE_M` of it: under an opening both sides count.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import cached_property

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import OpenTime, RoomOpenTime, Tightest
from farwall.nouns import dataclass
from farwall.spray.edges import Moments, Places

SPARE_M = 0.02
"""An edge so near to a room is held to that room's open time too: paths are straightened."""

Bools = npt.NDArray[np.bool_]


@dataclass(frozen=True)
class Lives:
    """Open times of a field and the floor of each of its rooms, by room id. At least one time."""

    open_times: tuple[RoomOpenTime, ...]
    floors: Mapping[str, BaseGeometry]

    @property
    def longest_min(self) -> float:
        """The longest low end of them. [min]"""
        return max(one.low for one in self.open_times)

    @property
    def tightest(self) -> RoomOpenTime:
        """The one with the shortest low end."""
        return min(self.open_times, key=lambda one: one.low)

    @cached_property
    def _alike(self) -> bool:
        return len({one.low for one in self.open_times}) == 1

    @cached_property
    def _areas(self) -> list[tuple[BaseGeometry, list[int]]]:
        """Each room with the numbers of its open times, the earliest first; each patch with its."""
        rooms: dict[str, list[int]] = {}
        areas: list[tuple[BaseGeometry, list[int]]] = []
        for number, one in enumerate(self.open_times):
            if one.polygon is None:
                rooms.setdefault(one.room, []).append(number)
            else:
                areas.append((one.polygon.shape, [number]))
        for room, numbers in rooms.items():
            numbers.sort(key=lambda number: self.open_times[number].from_min)
            areas.append((self.floors[room], numbers))
        return areas

    def held(self, points: Places, made: Places, met: Places) -> npt.NDArray[np.intp]:
        """For each place (rows of x, y), made and met at these minutes, the number of the open
        time that it is held to."""
        if self._alike:
            return np.full(len(points), self.open_times.index(self.tightest), dtype=np.intp)
        low = np.full(len(points), np.inf)
        which = np.zeros(len(points), dtype=np.intp)
        for here, numbers in zip(self._touched(points), self._numbers, strict=True):
            for number, rules in self._ruling(numbers, made, met):
                shorter = here & rules & (self.open_times[number].low < low)
                low[shorter] = self.open_times[number].low
                which[shorter] = number
        return which

    def room_at(self, number: int, point: Places) -> str:
        """The room of a place that is held to this open time: of several alike the nearest."""
        if not self._alike:
            return self.open_times[number].room
        here = shapely.Point(point)
        rooms = dict.fromkeys(one.room for one in self.open_times)
        return min(rooms, key=lambda room: float(self.floors[room].distance(here)))

    @property
    def _numbers(self) -> list[list[int]]:
        return [numbers for _, numbers in self._areas]

    def _touched(self, points: Places) -> Bools:
        """Area by place: whether it reaches it; a place that none reaches is held to all."""
        shapes = np.array([shape for shape, _ in self._areas])
        places = np.asarray(shapely.points(points))
        near = shapely.dwithin(shapes[:, None], places[None, :], SPARE_M)
        return np.asarray(near | ~near.any(axis=0))

    def _ruling(self, numbers: list[int], made: Places, met: Places) -> Iterator[tuple[int, Bools]]:
        """The open times of one area, each with the places whose wait it holds in, if a moment."""
        first = self.open_times[numbers[0]]
        if first.polygon is not None:
            end = np.inf if first.to_min is None else first.to_min
            yield numbers[0], (made < end) & (met >= first.from_min)
            return
        begins = [self.open_times[number].from_min for number in numbers]
        ends = [*begins[1:], np.inf]
        for number, begin, end in zip(numbers, [-np.inf, *begins[1:]], ends, strict=True):
            yield number, (made < end) & (met >= begin)


@dataclass(frozen=True)
class Held:
    """A field held to its open times: the one that decides, the edge with the least to spare.

    `open_time` is that of this tightest edge. Only where all edges hold, and an older one lies
    where edges live longer than the tightest may, it is that of the oldest edge. So that the
    field's peak age is within `open_time.low` just when every edge holds.
    """

    open_time: OpenTime
    tightest: Tightest | None

    @property
    def spare_min(self) -> float:
        """What the tightest edge has to spare; the whole open time where no edge waits. [min]"""
        return self.open_time.low if self.tightest is None else self.tightest.spare_min

    @property
    def share(self) -> float:
        """Age of the tightest edge over its open time."""
        if self.tightest is None:
            return 0.0
        return self.tightest.age_min / max(self.tightest.low_min, 1e-9)


def held_to(lives: Lives, moments: Sequence[Moments], times: Sequence[tuple[float, float]]) -> Held:
    """The edges of a field held to `lives`; times: start and duration of each pass. [min]"""
    tight: Tightest | None = None
    tight_time, oldest_time, oldest_min = lives.tightest, lives.tightest, 0.0
    lows = np.array([one.low for one in lives.open_times])
    for each in moments:
        made, met = each.waits_min(times)
        which = lives.held(each.points, made, met)
        ages = met - made
        old = int(ages.argmax())
        if ages[old] > oldest_min:
            oldest_min, oldest_time = float(ages[old]), lives.open_times[which[old]]
        worst = int((lows[which] - ages).argmin())
        found = _edge(lives, int(which[worst]), each.points[worst], made[worst], met[worst])
        if tight is None or found.spare_min < tight.spare_min:
            tight, tight_time = found, lives.open_times[which[worst]]
    holds = tight is None or tight.spare_min >= 0
    decides = oldest_time if holds and round(oldest_min, 4) > tight_time.low else tight_time
    return Held(
        OpenTime(decides.low, decides.likely, decides.high, decides.rank, decides.source), tight
    )


def _edge(lives: Lives, number: int, point: Places, made: float, met: float) -> Tightest:
    age, low = round(float(met - made), 4), lives.open_times[number].low
    return Tightest(
        room=lives.room_at(number, point),
        at=(round(float(point[0]), 4), round(float(point[1]), 4)),
        made_min=round(float(made), 4),
        met_min=round(float(met), 4),
        age_min=age,
        low_min=low,
        spare_min=round(low - age, 4),
    )
