"""Where the sprayers stand in mid-day: on dry floor, apart, and how they came there. Pure."""

from __future__ import annotations

import math
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import replace
from typing import Protocol

import shapely

from farwall.errors import Mistake, Refused, Unanswerable
from farwall.facts.plan import PlanTools, Walk
from farwall.floor.geometry import Point
from farwall.job.past import AT_M
from farwall.job.second_past import SecondPast, word_of
from farwall.spray.apart import APART_M, PASS_M, TimedPath, walks_apart
from farwall.spray.crew import walk_out_second
from farwall.spray.dry import DryGround
from farwall.spray.routes import gap_m, length_m, nearest_on, part_with
from farwall.spray.schedule import Day, Second, route, timed_path
from farwall.spray.sweep import Sweep
from farwall.spray.together import somebody
from farwall.spray.two_again import kept_by_two
from farwall.spray.world import BODY_M, World

_AROUND_M = (1.2, 2.0, 3.0, 4.5)
_ON_M = 0.01


class Standing(Protocol):
    """Somebody who was last at `here` and is said to be `at` another place."""

    @property
    def here(self) -> Point:
        """Where the last band or walk ended."""
        ...

    @property
    def at(self) -> Point:
        """Where he is told to stand."""
        ...


def at_the_tub(second: SecondPast | None) -> SecondPast | None:
    """The second sprayer before a coat is begun: beside the tub, his tank empty."""
    if second is None:
        return None
    return replace(second, here=second.base, at=second.base, tank_l=0.0, tank_then_l=0.0)


def dry_place(free: DryGround, one: Standing, *, word: str) -> Point:
    """Where he stands, on dry floor. Raises `Refused` when that is not near by."""
    if one.at == one.here:
        return one.at
    ground = part_with(free.shape, one.here)
    near = one.here if ground is None else nearest_on(ground, one.at)
    if gap_m(near, one.at) > AT_M:
        what = f"no dry way leads to ({one.at[0]:.2f}, {one.at[1]:.2f})."
        remedy = "Leave it out, or tell a place on dry floor, metres."
        raise Refused(Mistake(word, what, remedy))
    return (round(near[0], 4), round(near[1], 4))


def insist_on_room(one: Point, two: Point) -> None:
    """Raises `Refused` where two are told to stand in one place."""
    apart = gap_m(one, two)
    if apart < PASS_M:
        what = f"the two stand {apart:.2f} m apart; two bodies take {PASS_M:g} m."
        raise Refused(Mistake("at_2", what, "Tell where each of them stands, metres."))


def walks_to(
    free: DryGround,
    there: Sequence[tuple[Point, Point]],
    start_min: float,
    end_min: float,
    pace_m_min: float,
) -> tuple[Walk, ...]:
    """Walks from one place to another between two minutes, hurried when the time was short.

    Two keep apart on the way; where they cannot, each has gone as if alone.
    """
    ways = [route(free, a, b) if gap_m(a, b) > 0 else (a,) for a, b in there]
    if all(len(way) == 1 for way in ways):
        return ()
    paths = [timed_path(way, start_min, pace_m_min) for way in ways]
    if len(ways) == 2:
        with suppress(Unanswerable):
            paths = list(walks_apart((ways[0], ways[1]), start_min, pace_m_min))
    took = max(path[-1][2] for path in paths) - start_min
    share = min((end_min - start_min) / took, 1.0) if took > 0 else 1.0
    return tuple(
        Walk(word_of(number), _hurried(path, start_min, share))
        for number, (way, path) in enumerate(zip(ways, paths, strict=True), 1)
        if len(way) > 1 and length_m(way) > 0
    )


def _hurried(path: TimedPath, start_min: float, share: float) -> TimedPath:
    if share == 1.0:
        return path
    return tuple((x, y, round(start_min + (t - start_min) * share, 4)) for x, y, t in path)


def out_of_the_way(
    world: World, second: Second, base: Point, paths: Sequence[Sequence[Point]]
) -> Point:
    """Where a second who leaves stands, outside: off the tub and all that is still to spray.

    Where he is, else his place beside the tub, else the nearest such place around it.
    """
    yard = shapely.intersection(
        world.standing, shapely.buffer(world.outside, -BODY_M, join_style="mitre")
    )
    ways = [shapely.LineString(path) if len(path) > 1 else shapely.Point(path[0]) for path in paths]
    keep_off = shapely.union_all([shapely.Point(base), *ways])
    around = [
        nearest_on(yard, (base[0] + r * math.cos(a), base[1] + r * math.sin(a)))
        for r in _AROUND_M
        for a in (math.radians(each) for each in range(0, 360, 30))
    ]
    outside = [
        place for place in (second.at, second.base) if yard.dwithin(shapely.Point(place), _ON_M)
    ]
    places = [*outside, *((round(x, 4), round(y, 4)) for x, y in around)]
    clear = [place for place in places if keep_off.distance(shapely.Point(place)) >= APART_M]
    return next(iter(clear), second.base)


def left_by_second(day: Day, tools: PlanTools) -> tuple[Day, tuple[Walk, ...]]:
    """The day once the second has walked out, while the first waits; and the walks.

    Raises `Unanswerable` where no dry way leads him out.
    """
    after, walks = walk_out_second(day, tools)
    assert after.second is not None
    # He stays beside the tub: the first goes around him.
    return replace(after, second=None, free=after.free.without(somebody(after.second.at))), walks


def minutes_left(sweep: Sweep, tools: PlanTools) -> float:
    """What is still to spray takes so long, both halves of a band at once. [min]"""
    return sum(turn.minutes(tools) for turn in kept_by_two(sweep).turns)
