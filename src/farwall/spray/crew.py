"""Who sprays a field: both sprayers of the crew where that serves the edges, else one."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace

import numpy as np
import shapely

from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools, Walk
from farwall.floor.geometry import Point
from farwall.spray.apart import APART_M
from farwall.spray.edges import ages_by_pass_min
from farwall.spray.refills import TANK_RESERVE, Flow
from farwall.spray.routes import gap_m, nearest_on
from farwall.spray.schedule import Day, Second, Timed, route, time_sweep, timed_path
from farwall.spray.sweep import Sweep
from farwall.spray.tank_run import TankRun, best_stops
from farwall.spray.together import Together
from farwall.spray.two_again import crew_told, kept_by_two, one_by_one, stops_for_two
from farwall.spray.two_sweep import TwoSweep, swept_by_two
from farwall.spray.world import BODY_M, World

_BESIDE_M = 1.2
_STANDS_M = 0.001
_ASIDE = (0.0, 30.0, -30.0, 60.0, -60.0, 90.0, -90.0, 180.0)


def time_crew(
    sweep: Sweep, day: Day, flow: Flow, *, field_id: str, comfort_min: float = 0.0
) -> tuple[Timed, Day]:
    """The sweep on the clock by all who spray, and the day after it.

    Where two spray, the field is timed with both and with the first alone. Both have it when
    that keeps its edges younger; where either way leaves them below `comfort_min`, when it is
    done sooner. Raises `Unanswerable` when neither can do it.
    """
    if day.second is None:
        return _time_alone(sweep, day, flow, field_id=field_id)
    told = crew_told(sweep)
    if told is not None:
        return _as_told(told, sweep, day, flow, field_id=field_id)
    found: list[tuple[Timed, Day]] = []
    refusal: Unanswerable | None = None
    for way in (time_by_two, _time_by_one):
        try:
            found.append(way(sweep, day, flow, field_id=field_id))
        except Unanswerable as no:
            refusal = no
    if not found:
        raise refusal or Unanswerable("Nobody can spray this field.")
    return min(found, key=lambda one: _worth(one, comfort_min))


def _as_told(told: int, sweep: Sweep, day: Day, flow: Flow, *, field_id: str) -> tuple[Timed, Day]:
    """The sweep by as many as the plan has put on it; by one where both cannot go on."""
    if told == 2:
        with suppress(Unanswerable):
            return time_by_two(sweep, day, flow, field_id=field_id)
    return _time_by_one(sweep, day, flow, field_id=field_id)


def _worth(found: tuple[Timed, Day], comfort_min: float) -> tuple[float, float]:
    timed, after = found
    return (max(round(timed.peak_age_min, 2), comfort_min), after.minute)


def time_by_two(sweep: Sweep, day: Day, flow: Flow, *, field_id: str) -> tuple[Timed, Day]:
    """The sweep on the clock, both at work on each band that has room for two.

    Raises `Unanswerable` where no band has, where they cannot keep apart, or where a band
    takes more than a tank.
    """
    if crew_told(sweep) == 2:
        two = kept_by_two(sweep)
        stops = stops_for_two(sweep, two, day, flow) if two.turns else frozenset[int]()
    else:
        two = swept_by_two(sweep, flow.tools)
        if not two.shared:
            raise Unanswerable("No band of this field has room for two.")
        stops = _stops(two, day, flow, sweep.depth_m)
    clock = Together(day, flow, field_id, sweep.begun)
    own = [_litres(two, flow, i) for i in (0, 1)]
    clock.left_l = [own[0], own[1]]
    clock.later_l = max(0.0, flow.still_to_spray_l - sum(own))
    last_shared = max((k for k, turn in enumerate(two.turns) if turn.shared), default=-1)
    for k, turn in enumerate(two.turns):
        clock.spray(turn, refill=k in stops, rest_outside=k > last_shared)
    times = [(band.start_min, band.end_min - band.start_min) for band in clock.bands]
    ages = ages_by_pass_min(two.moments, times)
    bands = tuple(
        replace(band, edge_age_min=round(age, 4))
        for band, age in zip(clock.bands, ages, strict=True)
    )
    timed = Timed(bands, tuple(clock.refills), tuple(clock.walks), round(max(ages), 4), two.moments)
    return timed, clock.after()


def _time_by_one(sweep: Sweep, day: Day, flow: Flow, *, field_id: str) -> tuple[Timed, Day]:
    """The first sprays, the second rests outside."""
    outside, walks = walk_out_second(day, flow.tools)
    timed, after = _time_alone(sweep, outside, flow, field_id=field_id)
    return replace(timed, walks=(*walks, *timed.walks)), after


def _time_alone(sweep: Sweep, day: Day, flow: Flow, *, field_id: str) -> tuple[Timed, Day]:
    """One sprays; halves that were planned for two the better way round, else as they were."""
    alone = one_by_one(sweep, flow.tools)
    if alone is not sweep:
        with suppress(Unanswerable):
            return time_sweep(alone, day, flow, field_id=field_id)
        alone = one_by_one(sweep, flow.tools, as_walked=True)
    return time_sweep(alone, day, flow, field_id=field_id)


def _litres(two: TwoSweep, flow: Flow, who: int) -> float:
    """What one of them sprays; a band for one is counted for both, for either may take it. [L]"""
    return sum(
        turn.passes[who if turn.shared else 0].wetted_m2 * flow.l_per_m2 for turn in two.turns
    )


def _stops(two: TwoSweep, day: Day, flow: Flow, depth_m: float) -> frozenset[int]:
    """Before which bands both fill: as for one, the thirstier tank counting."""
    assert day.second is not None
    count = len(two.turns)
    need = tuple(max(each.wetted_m2 for each in turn.passes) * flow.l_per_m2 for turn in two.turns)
    out_m = [depth_m * (count - k) for k in range(count)]
    walk = flow.tools.walk_m_min
    pauses = [
        2 * flow.tools.swap_min + 2 * out / walk
        if flow.swaps
        else flow.tools.refill_min + 2 * out / walk
        for out in out_m
    ]
    run = TankRun(need, (0.0, *pauses[1:]), tuple(2 * out for out in out_m), two.pairs)
    now = min(day.tank_l, day.second.tank_l) - TANK_RESERVE * flow.tools.tank_l
    found = best_stops([run], filled_l=flow.filled_l, now_l=now, enough_min=flow.comfort_min)
    if found is None:
        raise Unanswerable("One half of a band takes more than a tank.")
    return frozenset(found[0])


def walks_off(day: Day, tools: PlanTools) -> tuple[Walk, ...]:
    """Everybody's walk to the tub at the end of a coat; none for those who are there."""
    if day.second is None:
        if gap_m(day.at, day.base) < _STANDS_M:
            return ()
        way = route(day.free, day.at, day.base)
        return (Walk("sprayer", timed_path(way, day.minute, tools.walk_m_min)),)
    clock = Together(day, Flow("", 0.0, helper=False, tools=tools, still_to_spray_l=0.0), "")
    clock.go_out()
    return tuple(clock.walks)


def walk_out_second(day: Day, tools: PlanTools) -> tuple[Day, tuple[Walk, ...]]:
    """The second walks out to his place beside the tub; both do where he cannot get by."""
    flow = Flow("", 0.0, helper=False, tools=tools, still_to_spray_l=0.0)
    clock = Together(day, flow, "")
    try:
        clock.go_out((1,))
    except Unanswerable:
        clock.go_out()
    return clock.after(), tuple(clock.walks)


def crew_of(sprayers: int, day: Day, world: World) -> Day:
    """The day with so many at work: with two the second stands beside the tub."""
    if sprayers == 2 and day.second is None:
        return with_second(day, world)
    return replace(day, second=None) if sprayers == 1 else day


def with_second(day: Day, world: World) -> Day:
    """The day with a second sprayer, who stands beside the tub with an empty tank."""
    base = second_base(world, day.base)
    return replace(day, second=Second(base, 0.0, base))


def second_base(world: World, base: Point) -> Point:
    """Where the second sprayer fills: outside, a step beside the tub and off the way to it."""
    yard = shapely.intersection(
        world.standing, shapely.buffer(world.outside, -BODY_M, join_style="mitre")
    )
    inside = shapely.union_all([piece.shape for piece in world.pieces.values()])
    door = nearest_on(inside, base)
    out = np.subtract(base, door)
    out /= max(float(np.hypot(*out)), 1e-9)
    way = shapely.LineString([door, base])
    found: list[tuple[float, float, Point]] = []
    for side in (90.0, -90.0, *_ASIDE):
        turn = np.radians(side)
        c, s = np.cos(turn), np.sin(turn)
        step = _BESIDE_M * np.array([c * out[0] - s * out[1], s * out[0] + c * out[1]])
        x, y = nearest_on(yard, (float(base[0] + step[0]), float(base[1] + step[1])))
        place = (round(x, 4), round(y, 4))
        off = min(way.distance(shapely.Point(place)), APART_M)
        found.append((-round(off, 3), abs(abs(side) - 90.0), place))
    return min(found)[2]
