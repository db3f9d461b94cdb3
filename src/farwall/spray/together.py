"""The clock of two who spray one field: both on it at once, apart, each with a tank.

Bands that are halved are begun by both in the same minute. Where one sprays
alone, the other rests where he stands if that stays dry, has a dry way out and
is out of the way, else outside beside the tub.
"""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import replace

import shapely

from farwall.errors import Unanswerable
from farwall.facts.plan import Band, Refill, Walk
from farwall.floor.geometry import Point
from farwall.spray.apart import APART_M, PASS_M, TimedPath, least_gap_m, timed, walks_apart
from farwall.spray.bands import Strip
from farwall.spray.dry import DryGround
from farwall.spray.passes import Pass
from farwall.spray.refills import TANK_RESERVE, Flow
from farwall.spray.routes import gap_m, length_m, part_with
from farwall.spray.schedule import Day, Second, band_of, helpers_way, route, timed_path
from farwall.spray.two_sweep import Turn
from farwall.spray.world import KEEP_OFF_M

WHO = ("sprayer", "sprayer 2")
_SWAPS = ("helper", "helper to sprayer 2")
_STANDS_M = 0.001
_ROOMY_M = 0.02
_APART_SLACK_M = 0.004
"""Paths in a plan are rounded; the checker forgives more."""


def somebody(at: Point) -> Strip:
    """The floor that nobody treads on while somebody stands there."""
    body = shapely.Point(at).buffer(PASS_M - KEEP_OFF_M + _ROOMY_M)
    return Strip((("", body),), 0)


class Together:
    """Two people, a minute, and what is written down of them."""

    def __init__(self, day: Day, flow: Flow, field_id: str, begun: Sequence[Band] = ()) -> None:
        assert day.second is not None
        self.day, self.flow, self.field_id = day, flow, field_id
        self.tools = flow.tools
        self.minute = day.minute
        self.at: list[Point] = [day.at, day.second.at]
        self.tank_l = [day.tank_l, day.second.tank_l]
        self.base = (day.base, day.second.base)
        self.free = day.free
        self.helper_free_min = day.helper_free_min
        self.bands: list[Band] = list(begun)
        self.refills: list[Refill] = []
        self.walks: list[Walk] = []
        self.left_l = [0.0, 0.0]
        """What each is still to spray in this field; either may spray all that comes after it."""
        self.later_l = 0.0

    def after(self) -> Day:
        """The day once the field is done."""
        return replace(
            self.day,
            minute=self.minute,
            at=self.at[0],
            tank_l=self.tank_l[0],
            free=self.free,
            helper_free_min=self.helper_free_min,
            second=Second(self.at[1], self.tank_l[1], self.base[1]),
        )

    def spray(self, turn: Turn, *, refill: bool, rest_outside: bool) -> None:
        """One band, by both or by one; both tanks filled before it when `refill`."""
        after = self.free.without(turn.whole.strip)
        if refill and not (turn.shared and self.bands and self._swap_both(turn, after)):
            self._fill_both()
        if turn.shared:
            self._go((turn.passes[0].path[0], turn.passes[1].path[0]))
            self._stroke({0: turn.passes[0], 1: turn.passes[1]})
        else:
            self._alone(turn, after, rest_outside=rest_outside)
        self.free = after

    def go_out(self, who: tuple[int, ...] = (0, 1)) -> None:
        """These walk out to their places beside the tub."""
        self._go(tuple(self.base[i] if i in who else None for i in (0, 1)))

    def _alone(self, turn: Turn, after: DryGround, *, rest_outside: bool) -> None:
        each = turn.passes[0]
        near = sorted((0, 1), key=lambda i: (turn.by != i + 1, gap_m(self.at[i], each.path[0])))
        refusal: Unanswerable | None = None
        for one in near:
            try:
                self._go(self._places_alone(one, each, after, rest_outside=rest_outside))
                self._stroke({one: each})
            except Unanswerable as no:
                refusal = refusal or no
            else:
                return
        raise refusal or Unanswerable("Nobody can spray alone.")

    def _places_alone(
        self, one: int, each: Pass, after: DryGround, *, rest_outside: bool
    ) -> tuple[Point | None, Point | None]:
        """Where both go before one sprays: to the band, and out of the way if need be."""
        other = 1 - one
        rests = None
        if not self._at_base(other) and (rest_outside or not self._may_rest(other, each, after)):
            rests = self.base[other]
        found: list[Point | None] = [rests, rests]
        found[one] = each.path[0]
        return (found[0], found[1])

    def _may_rest(self, other: int, each: Pass, after: DryGround) -> bool:
        """Whether he may stay: dry then too, with a dry way out, clear of him who sprays."""
        here = shapely.Point(self.at[other])
        way = shapely.LineString(each.path) if len(each.path) > 1 else shapely.Point(each.path[0])
        if here.distance(way) < APART_M:
            return False
        ground = part_with(after.shape, self.base[other])
        return ground is not None and ground.distance(here) < _STANDS_M

    def _at_base(self, who: int) -> bool:
        return gap_m(self.at[who], self.base[who]) < _STANDS_M

    def _go(self, places: tuple[Point | None, ...]) -> None:
        """Both to these places (None: stays), keeping apart; the minute when both are there."""
        targets = [
            here if there is None else there for here, there in zip(self.at, places, strict=True)
        ]
        if all(
            gap_m(here, there) < _STANDS_M for here, there in zip(self.at, targets, strict=True)
        ):
            return
        ways, both = self._ways_apart((targets[0], targets[1]))
        for i, (way, walk) in enumerate(zip(ways, both, strict=True)):
            if length_m(way) >= _STANDS_M:
                self.walks.append(Walk(WHO[i], walk))
                self.at[i] = way[-1]
        self.minute = max(
            [self.minute, *(w[-1][2] for w, v in zip(both, ways, strict=True) if len(v) > 1)]
        )

    def _ways_apart(
        self, targets: tuple[Point, Point]
    ) -> tuple[tuple[tuple[Point, ...], ...], tuple[TimedPath, TimedPath]]:
        """Their ways and these on the clock: the shortest, else around where the other stands."""
        refusal: Unanswerable | None = None
        around = (None, self.at, targets)
        for first, second in itertools.product(around, around):
            try:
                ways = (
                    self._way(0, targets[0], around=second[1] if second else None),
                    self._way(1, targets[1], around=first[0] if first else None),
                )
                return ways, walks_apart(ways, self.minute, self.tools.walk_m_min)
            except Unanswerable as no:
                refusal = refusal or no
        raise refusal or Unanswerable("They cannot get by one another.")

    def _way(self, who: int, there: Point, *, around: Point | None) -> tuple[Point, ...]:
        here = self.at[who]
        if gap_m(here, there) < _STANDS_M:
            return (here,)
        free = self.free if around is None else self.free.without(somebody(around))
        return route(free, here, there)

    def _stroke(self, passes: dict[int, Pass]) -> None:
        """Those who spray begin together; the minute when all are done."""
        strokes: dict[int, TimedPath] = {
            i: timed(each.path, self.minute, each.minutes(self.tools)) for i, each in passes.items()
        }
        ways = [strokes.get(i, ((*self.at[i], self.minute),)) for i in (0, 1)]
        least = (APART_M if len(passes) == 2 else PASS_M) - _APART_SLACK_M
        if least_gap_m(ways[0], ways[1]) < least:
            raise Unanswerable("Two sprayers come too near to one another on a band.")
        for i, each in sorted(passes.items()):
            litres = each.wetted_m2 * self.flow.l_per_m2
            self.bands.append(
                band_of(
                    each,
                    start=self.minute,
                    minutes=each.minutes(self.tools),
                    litres=litres,
                    number=len(self.bands) + 1,
                    field_id=self.field_id,
                    sprayer=i + 1,
                )
            )
            self.tank_l[i] -= self.bands[-1].litres
            self.left_l[i] -= litres
            self.at[i] = each.path[-1]
        self.minute = max(band.end_min for band in self.bands[-len(passes) :])

    def _fill_both(self) -> None:
        """Both walk out and fill, each beside the tub, at the same time."""
        self.go_out()
        for i in (0, 1):
            self._filled(i, self.tools.refill_min, by=WHO[i])
        self.minute = round(self.minute + self.tools.refill_min, 4)

    def _filled(self, who: int, minutes: float, *, by: str) -> None:
        need = (self.left_l[who] + self.later_l) * (1 + TANK_RESERVE)
        need += TANK_RESERVE * self.tools.tank_l
        room = self.tools.tank_l - self.tank_l[who]
        litres = round(max(0.0, min(room, need - self.tank_l[who])), 4)
        self.refills.append(Refill(self.minute, minutes, self.at[who], litres, by))
        self.tank_l[who] = round(self.tank_l[who] + litres, 4)

    def _swap_both(self, turn: Turn, after: DryGround) -> bool:
        """The helper brings a full tank to the one, then to the other; False where he cannot."""
        if not self.flow.swaps:
            return False
        starts = [each.path[0] for each in turn.passes]
        ways = [helpers_way(self.day.base, start, after) for start in starts]
        if any(way is None for way in ways):
            return False
        self._go((starts[0], starts[1]))
        for i, way in enumerate(ways):
            assert way is not None
            lasts = length_m(way) / self.tools.walk_m_min
            leave = max(round(self.minute - lasts, 4), self.helper_free_min)
            come = timed_path(way, leave, self.tools.walk_m_min)
            self.minute = max(self.minute, come[-1][2])
            self.walks.append(Walk("helper", come))
            self._filled(i, self.tools.swap_min, by=_SWAPS[i])
            self.minute = round(self.minute + self.tools.swap_min, 4)
            back = timed_path(tuple(reversed(way)), self.minute, self.tools.walk_m_min)
            self.walks.append(Walk("helper", back))
            self.helper_free_min = back[-1][2]
        return True
