"""Where the person walks while spraying each strip: along its front, off the wet, in reach."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.bands import Strip, Strips
from farwall.spray.routes import Walkable, gap_m, length_m, nearest_on, part_with
from farwall.spray.world import KEEP_OFF_M, Seam, World

REACH_SPARE_M = 0.03
"""Reach that the plan keeps to itself: paths are straightened and rounded."""
_STATION_M = 0.3
_FEW_LINES = 4
_SNAP_M = 0.005
_AT_EXIT_M = 0.012
_DOORWAY_M = 0.7
"""From so near to a doorway a wand reaches through it."""
_REACH_SLACK_M = 0.002
_EDGE_STEP_M = 0.1
_LEAST_WALK_M = 0.05
_STUB_M = 0.02
_MEET_M = 0.03
_STRAIGHTEN_M = 0.004


@dataclass(frozen=True)
class Pass:
    """One strip with the way the person walks while spraying it (turned round when `reverse`)."""

    strip: Strip
    path: tuple[Point, ...]
    wetted_m2: float
    """Floor of the strip and the overlap kept wet on its neighbours."""

    @cached_property
    def length_m(self) -> float:
        """Length of the path."""
        return length_m(self.path)

    def minutes(self, tools: PlanTools) -> float:
        """How long it takes: by the spray rate, or by the walk where that is the longer."""
        return max(self.wetted_m2 / tools.spray_m2_min, self.length_m / tools.walk_m_min)

    def within(self, reach_m: float) -> bool:
        """Whether all of the strip's edge lies within reach of the path."""
        edge = shapely.segmentize(self.strip.shape, _EDGE_STEP_M)
        corners = shapely.points(shapely.get_coordinates(edge))
        several = len(self.path) > 1
        path = shapely.LineString(self.path) if several else shapely.Point(self.path[0])
        return bool(shapely.distance(corners, path).max() <= reach_m + _REACH_SLACK_M)


def lay_passes(
    world: World, cut: Strips, order: Sequence[int], exit_seam: Seam, tools: PlanTools
) -> tuple[Pass, ...]:
    """The passes over the strips in `order`, the person leaving by `exit_seam`.

    Raises `Unanswerable` when there is nowhere to stand before a strip.
    """
    ground = _ground_near(world, cut, exit_seam)
    inside = {name for strip in cut.strips for name, _ in strip.parts}
    beyond = _beyond(world, ground, exit_seam, inside)
    open_seams = [s for s in world.seams if s == exit_seam or {s.a, s.b} <= inside]
    done: set[int] = set()
    rooms: _Rooms = {}
    passes = []
    for index in order:
        strip = cut.strips[index]
        ground = shapely.difference(ground, strip.kept_off)
        fronts = [
            border.line
            for border in cut.borders
            if index in (border.far, border.near)
            and (border.near if border.far == index else border.far) not in done
        ]
        overlap_m = sum(
            float(border.line.length)
            for border in cut.borders
            if index in (border.far, border.near)
            and (border.near if border.far == index else border.far) in done
        )
        done.add(index)
        if not fronts or exit_seam.chord.distance(strip.shape) < _AT_EXIT_M:
            fronts.append(exit_seam.chord)
        path = _path_along(
            world,
            ground,
            strip,
            fronts=fronts,
            open_seams=open_seams,
            rooms=rooms,
            beyond=beyond,
            reach_m=tools.reach_m - REACH_SPARE_M,
        )
        passes.append(Pass(strip, path, strip.area_m2 + overlap_m * tools.overlap_m))
    return tuple(passes)


def _ground_near(world: World, cut: Strips, exit_seam: Seam) -> BaseGeometry:
    """Standing ground around the field, clear of doorways to floor that may be wet already."""
    field = shapely.union_all([strip.shape for strip in cut.strips])
    inside = {name for strip in cut.strips for name, _ in strip.parts}
    window = shapely.box(*field.bounds).buffer(2.5, join_style="mitre")
    doorways = [
        seam.chord.buffer(KEEP_OFF_M, quad_segs=4)
        for seam in world.seams
        if seam != exit_seam
        and not {seam.a, seam.b or seam.a} <= inside
        and seam.chord.distance(window) <= KEEP_OFF_M
    ]
    near = shapely.intersection(world.standing, window)
    return shapely.difference(near, shapely.union_all(doorways)) if doorways else near


@dataclass(frozen=True)
class _Stand:
    """Where the body may be while one strip is sprayed: its own rooms first, then doorways."""

    near: tuple[BaseGeometry, ...]

    def nearest(self, places: Sequence[Point], reach_m: float) -> list[Point]:
        """For each place the nearest to stand, the strip's own rooms before those beyond a seam.

        A wall between is no way to reach over.
        """
        parts = [part for part in self.near if not part.is_empty]
        spots = np.asarray(shapely.points(places))
        lines = np.array([shapely.shortest_line(part, spots) for part in parts])
        away = shapely.length(lines)
        first_near = np.argmax(away <= reach_m, axis=0)
        choice = np.where((away <= reach_m).any(axis=0), first_near, np.argmin(away, axis=0))
        ends = shapely.get_coordinates(lines[choice, np.arange(len(spots))])[::2]
        return [(x, y) for x, y in ends.tolist()]

    @property
    def anywhere(self) -> bool:
        """Whether there is a place to stand at all."""
        return any(not part.is_empty for part in self.near)


def _nowhere(strip: Strip) -> str:
    return f"{strip.parts[0][0]}: nobody can stand before a strip of {strip.area_m2:.2f} m²."


def _path_along(
    world: World,
    ground: BaseGeometry,
    strip: Strip,
    *,
    fronts: Sequence[BaseGeometry],
    open_seams: Sequence[Seam],
    rooms: _Rooms,
    beyond: Point,
    reach_m: float,
) -> tuple[Point, ...]:
    """Where the body goes while spraying: along the front, off the strip, on ground kept dry."""
    whole = part_with(ground, beyond)
    if whole is None:
        raise Unanswerable(_nowhere(strip))
    stand = _stand(world, whole, strip, open_seams, rooms)
    stations = _chain(_runs([_stations(line) for line in _front_lines(fronts)]))
    if not stand.anywhere:
        raise Unanswerable(_nowhere(strip))
    near = stand.nearest(stations, reach_m)
    near = _with_far_corners(near, strip, stand, reach_m)
    return _joined_up(whole, _thinned(near))


_Rooms = dict[frozenset[str], tuple[BaseGeometry, BaseGeometry]]
"""Standing ground of some pieces and of the doorways to them: the same for strip after strip."""


def _stand(
    world: World,
    whole: shapely.Polygon,
    strip: Strip,
    open_seams: Sequence[Seam],
    rooms: _Rooms,
) -> _Stand:
    own = frozenset(name for name, _ in strip.parts)
    if own not in rooms:
        inner = shapely.union_all([world.pieces[name].inner for name in own])
        doorways = [seam.chord.buffer(_DOORWAY_M) for seam in open_seams if own & {seam.a, seam.b}]
        rooms[own] = (inner, shapely.union_all(doorways))
    inner, doors = rooms[own]
    return _Stand((shapely.intersection(whole, inner), shapely.intersection(whole, doors)))


def _beyond(world: World, ground: BaseGeometry, exit_seam: Seam, inside: set[str]) -> Point:
    """Where a body stands once it has left the field by its exit seam."""
    far = exit_seam.b if exit_seam.a in inside else exit_seam.a
    there = shapely.intersection(ground, world.pieces[far].inner if far else world.outside)
    there = shapely.difference(there, exit_seam.chord.buffer(KEEP_OFF_M + _SNAP_M))
    if there.is_empty:
        raise Unanswerable(f"Nobody can stand beyond {exit_seam.id}.")
    middle = exit_seam.chord.interpolate(0.5, normalized=True)
    return nearest_on(there, (float(middle.x), float(middle.y)))


def _front_lines(fronts: Sequence[BaseGeometry]) -> list[shapely.LineString]:
    """The lines of the fronts, without the stubs that a border leaves where it meets a seam."""
    lines = _merged(fronts)
    return [line for line in lines if line.length > _STUB_M] or lines


def _merged(fronts: Sequence[BaseGeometry]) -> list[shapely.LineString]:
    """The front lines, those that run on into each other made one."""
    snapped = shapely.union_all([shapely.set_precision(front, _SNAP_M) for front in fronts])
    lines = shapely.line_merge(snapped)
    return [
        part
        for part in shapely.get_parts(lines).tolist()
        if isinstance(part, shapely.LineString) and part.length > 0
    ]


def _stations(line: shapely.LineString) -> list[Point]:
    count = max(2, int(line.length / _STATION_M) + 1)
    steps = np.linspace(0, line.length, count)
    places = shapely.get_coordinates(shapely.line_interpolate_point(line, steps))
    return [(x, y) for x, y in places.tolist()]


def _runs(lines: list[list[Point]]) -> list[list[Point]]:
    """Lines that meet end to end joined: a front goes on where the strips before it part."""
    runs = [list(line) for line in lines]
    while True:
        meeting = [
            (
                gap_m(one[0 if turn_one else -1], two[-1 if turn_two else 0]),
                i,
                j,
                turn_one,
                turn_two,
            )
            for (i, one), (j, two) in itertools.combinations(enumerate(runs), 2)
            for turn_one in (False, True)
            for turn_two in (False, True)
        ]
        gap, i, j, turn_one, turn_two = min(meeting, default=(1.0, 0, 0, False, False))
        if gap > _MEET_M:
            return runs
        one = runs[i][::-1] if turn_one else runs[i]
        two = runs[j][::-1] if turn_two else runs[j]
        runs = [*(run for k, run in enumerate(runs) if k not in (i, j)), [*one, *two]]


def _chain(lines: list[list[Point]]) -> list[Point]:
    """Several front lines one after the other, with the least walking between them."""
    lines = sorted(lines, key=lambda line: -len(line))
    if len(lines) <= _FEW_LINES:
        turned = itertools.product(*((line, line[::-1]) for line in lines))
        chains = (chain for ways in turned for chain in itertools.permutations(ways))
        best = min(chains, key=_between)
    else:
        best = _nearest_next(lines)
    return [station for line in best for station in line]


def _between(lines: Sequence[list[Point]]) -> float:
    return sum(gap_m(one[-1], two[0]) for one, two in itertools.pairwise(lines))


def _nearest_next(lines: list[list[Point]]) -> tuple[list[Point], ...]:
    chain = [lines.pop(0)]
    while lines:
        here = chain[-1][-1]
        line = min(lines, key=lambda line: min(gap_m(here, line[0]), gap_m(here, line[-1])))
        lines.remove(line)
        chain.append(line if gap_m(here, line[0]) <= gap_m(here, line[-1]) else line[::-1])
    return tuple(chain)


def _with_far_corners(
    near: list[Point], strip: Strip, stand: _Stand, reach_m: float
) -> list[Point]:
    """The stations, and one more at an end where a corner of the strip lies out of reach."""
    corners = shapely.get_coordinates(strip.shape)
    spots = shapely.points(corners)
    for _ in range(4):
        line = shapely.linestrings(near) if len(near) > 1 else shapely.Point(near[0])
        away = shapely.distance(spots, line)
        if away.max() <= reach_m:
            break
        corner = corners[int(away.argmax())]
        stop = stand.nearest([(float(corner[0]), float(corner[1]))], reach_m)[0]
        if min(gap_m(stop, place) for place in near) < 0.05:
            break
        if len(near) > 1 and gap_m(near[0], stop) < gap_m(near[-1], stop):
            near = [stop, *near]
        else:
            near = [*near, stop]
    return near


def _thinned(places: list[Point]) -> list[Point]:
    kept = places[:1]
    for place in places[1:]:
        if gap_m(kept[-1], place) > 0.02:
            kept.append(place)
    return kept


def _joined_up(stand: shapely.Polygon, places: list[Point]) -> tuple[Point, ...]:
    """The places joined by walks on the ground."""
    ground = Walkable(stand)
    path = places[:1]
    for before, place, straight in zip(places, places[1:], ground.straight(places), strict=False):
        if straight and path[-1] == before:
            path.append(place)
            continue
        leg = ground.walk(path[-1], place)
        if leg is not None:
            path.extend(leg[1:])
    line = shapely.linestrings(path) if len(path) > 1 else None
    if line is not None and line.length > _LEAST_WALK_M:
        simple = shapely.simplify(line, _STRAIGHTEN_M)
        if ground.holds(simple):
            path = [(x, y) for x, y in shapely.get_coordinates(simple).tolist()]
    return tuple((round(x, 4), round(y, 4)) for x, y in path)
