"""One field swept: its strips in order, where the person walks while spraying each, and its edges.

Nothing here knows the hour, the tank or the coat; `schedule` adds them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
import shapely

from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point, polygons_of
from farwall.spray.bands import Strip, Strips, cut_into_strips
from farwall.spray.bound import least_front_m
from farwall.spray.geodesic import WalkMap, walk_map
from farwall.spray.routes import length_m, nearest_on, part_with, shortest_walk
from farwall.spray.sequence import Pace, order_strips
from farwall.spray.world import BODY_M, Seam, World

KEEP_OFF_M = BODY_M + 0.0025
"""How far a body's centre stays from wet stain: its radius and the chords of drawn arcs."""
_STATION_M = 0.3
_EDGE_STEP_M = 0.15
_SOURCES = 5


@dataclass(frozen=True)
class Pass:
    """One strip with the way the person walks while spraying it (turned round when `reverse`)."""

    strip: Strip
    path: tuple[Point, ...]
    wetted_m2: float
    """Floor of the strip and the overlap kept wet on its neighbours."""

    @property
    def length_m(self) -> float:
        """Length of the path."""
        return length_m(self.path)


@dataclass(frozen=True)
class Edge:
    """A live edge: passes `first` and `then` meet along `points`, each at these shares of its path."""

    first: int
    then: int
    first_share: tuple[float, ...]
    then_share: tuple[float, ...]


@dataclass(frozen=True)
class Sweep:
    """A field swept toward one seam."""

    pieces: tuple[str, ...]
    exit: Seam
    passes: tuple[Pass, ...]
    edges: tuple[Edge, ...]
    depth_m: float
    walks: WalkMap

    @cached_property
    def bound_m(self) -> float:
        """A front that no sweep of this field toward this exit can undercut (`bound`)."""
        return least_front_m(self.walks, self.exit)

    @property
    def wetted_m2(self) -> float:
        """Floor and overlap together."""
        return sum(each.wetted_m2 for each in self.passes)

    @property
    def area_m2(self) -> float:
        """Floor of the field."""
        return sum(each.strip.area_m2 for each in self.passes)


def sweep_field(world: World, pieces: Sequence[str], exit_seam: Seam, tools: PlanTools) -> Sweep:
    """The farthest-first sweep of connected `pieces` that ends at `exit_seam`.

    Raises `Unanswerable` when a body cannot get at some part of the field.
    """
    ground = _connected(world, pieces)
    walks = walk_map(ground, _sources(exit_seam))
    cut = cut_into_strips(world, pieces, walks, band_m=tools.band_m)
    order = order_strips(cut, Pace(tools.spray_m2_min, tools.walk_m_min))
    passes = _passes(world, cut, order, exit_seam, tools)
    edges = _edges(cut, order, passes)
    sweep = Sweep(tuple(pieces), exit_seam, passes, edges, cut.depth_m, walks)
    return turn_passes(sweep, tools)


def _connected(world: World, pieces: Sequence[str]) -> shapely.Polygon:
    parts = polygons_of(world.ground(pieces))
    parts.sort(key=lambda part: -part.area)
    if len(parts) > 1 and sum(part.area for part in parts[1:]) > 0.02:
        raise Unanswerable(f"{', '.join(pieces)}: the floor falls apart into separate places.")
    return parts[0]


def _sources(seam: Seam) -> list[Point]:
    """Where a body passes through the seam: its line less a body's radius at each jamb."""
    length = seam.chord.length
    room = max(0.0, length - 2 * BODY_M)
    count = 1 if room < 0.05 else min(41, max(_SOURCES, int(room / 0.15)))
    offsets = np.linspace((length - room) / 2, (length + room) / 2, count)
    places = shapely.line_interpolate_point(seam.chord, offsets)
    return [(float(place.x), float(place.y)) for place in places]


def _passes(
    world: World, cut: Strips, order: Sequence[int], exit_seam: Seam, tools: PlanTools
) -> tuple[Pass, ...]:
    ground = _ground_near(world, cut, exit_seam)
    done: set[int] = set()
    passes = []
    for index in order:
        strip = cut.strips[index]
        ground = shapely.difference(ground, _kept_off(strip))
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
        if exit_seam.chord.distance(strip.shape) < 0.012:
            fronts.append(exit_seam.chord)
        path = _path_along(world, ground, fronts, strip, exit_seam, tools.reach_m)
        passes.append(Pass(strip, path, strip.area_m2 + overlap_m * tools.overlap_m))
    return tuple(passes)


def _ground_near(world: World, cut: Strips, exit_seam: Seam) -> shapely.Geometry:
    """Standing ground around the field, clear of doorways to floor that may be wet already."""
    field = shapely.union_all([strip.shape for strip in cut.strips])
    inside = {name for strip in cut.strips for name, _ in strip.parts}
    window = shapely.box(*field.bounds).buffer(2.5, join_style="mitre")
    doorways = [
        seam.chord.buffer(KEEP_OFF_M, quad_segs=4)
        for seam in world.seams
        if seam != exit_seam and seam.b and not {seam.a, seam.b} <= inside
    ]
    near = shapely.intersection(world.standing, window)
    return shapely.difference(near, shapely.union_all(doorways)) if doorways else near


def _kept_off(strip: Strip) -> shapely.Geometry:
    return shapely.buffer(strip.shape, KEEP_OFF_M, quad_segs=8)


@dataclass(frozen=True)
class _Stand:
    """Where the body may be while one strip is sprayed: its own rooms first, then beyond a seam."""

    whole: shapely.Polygon
    near: tuple[shapely.Geometry, ...]

    def nearest(self, place: Point, reach_m: float) -> Point:
        """The nearest place to stand; a wall between is no way to reach over."""
        spot = shapely.Point(place)
        for part in self.near:
            if not part.is_empty and part.distance(spot) <= reach_m:
                return nearest_on(part, place)
        return nearest_on(self.whole, place)


def _path_along(
    world: World,
    ground: shapely.Geometry,
    fronts: Sequence[shapely.Geometry],
    strip: Strip,
    exit_seam: Seam,
    reach_m: float,
) -> tuple[Point, ...]:
    """Where the body goes while spraying: along the front, off the strip, on ground kept dry."""
    place = shapely.centroid(shapely.union_all(list(fronts))) if fronts else exit_seam.chord
    whole = _way_out_part(ground, exit_seam, place)
    if whole is None:
        raise Unanswerable(
            f"{strip.parts[0][0]}: nobody can stand before a strip of {strip.area_m2:.2f} m²."
        )
    stand = _stand(world, whole, strip, fronts)
    lines = [line for front in fronts for line in shapely.get_parts(front).tolist()]
    stations = _chain([_stations(line) for line in lines])
    near = [stand.nearest(station, reach_m) for station in stations]
    near = _with_far_corners(near, strip, stand, reach_m)
    return _walkable(whole, _thinned(near))


def _stand(
    world: World, whole: shapely.Polygon, strip: Strip, fronts: Sequence[shapely.Geometry]
) -> _Stand:
    own = {name for name, _ in strip.parts}
    beyond = set()
    outside = False
    for seam in world.seams:
        if own & {seam.a, seam.b} and any(front.distance(seam.chord) < 0.02 for front in fronts):
            beyond |= {seam.a, seam.b} - own - {""}
            outside = outside or seam.is_way_out
    inner = shapely.union_all([world.pieces[name].inner for name in own])
    outer = [world.pieces[name].inner for name in beyond] + ([world.outside] if outside else [])
    return _Stand(
        whole,
        (shapely.intersection(whole, inner), shapely.intersection(whole, shapely.union_all(outer))),
    )


def _way_out_part(
    ground: shapely.Geometry, exit_seam: Seam, place: shapely.Geometry
) -> shapely.Polygon | None:
    """The connected ground that leads through the exit seam."""
    beyond = exit_seam.chord.centroid
    parts = polygons_of(ground)
    return min(
        (part for part in parts if part.distance(beyond) < BODY_M + 0.35),
        key=lambda part: (round(part.distance(place), 2), part.distance(beyond)),
        default=None,
    )


def _stations(line: shapely.Geometry) -> list[Point]:
    count = max(2, int(line.length / _STATION_M) + 1)
    places = shapely.line_interpolate_point(line, np.linspace(0, line.length, count))
    return [(float(p.x), float(p.y)) for p in places]


def _chain(lines: list[list[Point]]) -> list[Point]:
    """Several front lines one after the other, each time the nearest end next."""
    lines = sorted((line for line in lines if line), key=lambda line: line[0])
    if not lines:
        return []
    chain = lines.pop(0)
    if lines:
        ends = [end for line in lines for end in (line[0], line[-1])]
        if min(_gap(chain[0], end) for end in ends) < min(_gap(chain[-1], end) for end in ends):
            chain = chain[::-1]
    while lines:
        here = chain[-1]
        line = min(lines, key=lambda line: min(_gap(here, line[0]), _gap(here, line[-1])))
        lines.remove(line)
        chain = chain + (line if _gap(here, line[0]) <= _gap(here, line[-1]) else line[::-1])
    return chain


def _gap(one: Point, two: Point) -> float:
    return float(np.hypot(one[0] - two[0], one[1] - two[1]))


def _with_far_corners(
    near: list[Point], strip: Strip, stand: _Stand, reach_m: float
) -> list[Point]:
    """The stations, and one more at an end where a corner of the strip lies out of reach."""
    corners = shapely.get_coordinates(strip.shape)
    for _ in range(4):
        line = shapely.LineString(near) if len(near) > 1 else shapely.Point(near[0])
        away = shapely.distance(shapely.points(corners), line)
        if away.max() <= reach_m:
            break
        corner = corners[int(away.argmax())]
        stop = stand.nearest((float(corner[0]), float(corner[1])), reach_m)
        if min(_gap(stop, place) for place in near) < 0.05:
            break
        if len(near) > 1 and _gap(near[0], stop) < _gap(near[-1], stop):
            near = [stop, *near]
        else:
            near = [*near, stop]
    return near


def _thinned(places: list[Point]) -> list[Point]:
    kept = places[:1]
    for place in places[1:]:
        if _gap(kept[-1], place) > 0.02:
            kept.append(place)
    return kept


def _walkable(stand: shapely.Polygon, places: list[Point]) -> tuple[Point, ...]:
    """The places joined by walks on the ground."""
    path = places[:1]
    for place in places[1:]:
        leg = shortest_walk(stand, path[-1], place)
        if leg is None:
            continue
        path.extend(leg[1:])
    line = shapely.LineString(path) if len(path) > 1 else None
    if line is not None and line.length > 0.05:
        simple = line.simplify(0.004)
        if stand.buffer(0.003).covers(simple):
            path = [(float(x), float(y)) for x, y in simple.coords]
    return tuple((round(x, 4), round(y, 4)) for x, y in path)


def _edges(cut: Strips, order: Sequence[int], passes: Sequence[Pass]) -> tuple[Edge, ...]:
    position = {strip: place for place, strip in enumerate(order)}
    edges = []
    for border in cut.borders:
        first, then = sorted((position[border.far], position[border.near]))
        points = _samples(border.line)
        edges.append(
            Edge(first, then, shares(passes[first].path, points), shares(passes[then].path, points))
        )
    return tuple(edges)


def _samples(line: shapely.Geometry) -> np.ndarray:
    dense = shapely.segmentize(line, _EDGE_STEP_M)
    return shapely.points(shapely.get_coordinates(dense))


def shares(path: Sequence[Point], points: np.ndarray) -> tuple[float, ...]:
    """For each point the share (0 to 1) of the path walked when the path is nearest to it."""
    length = length_m(path)
    if length < 1e-6:
        return tuple(0.5 for _ in points)
    where = shapely.line_locate_point(shapely.LineString(path), points)
    return tuple(float(w) / length for w in where)


def turn_passes(sweep: Sweep, tools: PlanTools) -> Sweep:
    """The sweep with each pass walked in the direction that keeps the oldest edge youngest."""
    turned = [False] * len(sweep.passes)
    best = _oldest(sweep, turned, tools)
    for _ in range(3):
        before = best
        for index in range(len(turned)):
            for span in (1, 2):
                trial = list(turned)
                for each in range(index, min(index + span, len(turned))):
                    trial[each] = not trial[each]
                found = _oldest(sweep, trial, tools)
                if found < best:
                    turned, best = trial, found
        if best == before:
            break
    passes = tuple(
        replace(each, path=each.path[::-1]) if flip else each
        for each, flip in zip(sweep.passes, turned, strict=True)
    )
    edges = tuple(
        replace(
            edge,
            first_share=_flip(edge.first_share, turned[edge.first]),
            then_share=_flip(edge.then_share, turned[edge.then]),
        )
        for edge in sweep.edges
    )
    return replace(sweep, passes=passes, edges=edges)


def _flip(share: tuple[float, ...], turned: bool) -> tuple[float, ...]:
    return tuple(1.0 - value for value in share) if turned else share


def _oldest(sweep: Sweep, turned: Sequence[bool], tools: PlanTools) -> tuple[float, float]:
    """Peak age without refills, then all walking between passes, in minutes."""
    start, now, walked = [], 0.0, 0.0
    last: Point | None = None
    for each, flip in zip(sweep.passes, turned, strict=True):
        path = each.path[::-1] if flip else each.path
        if last is not None:
            hop = _gap(last, path[0]) / tools.walk_m_min
            now, walked = now + hop, walked + hop
        minutes = each.wetted_m2 / tools.spray_m2_min
        start.append((now, minutes))
        now += minutes
        last = path[-1]
    return (round(peak_age_min(sweep.edges, start, turned), 3), round(walked, 4))


def peak_age_min(
    edges: Sequence[Edge],
    times: Sequence[tuple[float, float]],
    turned: Sequence[bool] | None = None,
) -> float:
    """The greatest age of any edge; `times` gives start and duration of each pass in minutes."""
    oldest = 0.0
    for edge in edges:
        first = np.array(edge.first_share)
        then = np.array(edge.then_share)
        if turned is not None and turned[edge.first]:
            first = 1 - first
        if turned is not None and turned[edge.then]:
            then = 1 - then
        (start, minutes), (later, taken) = times[edge.first], times[edge.then]
        age = (later + taken * then) - (start + minutes * first)
        oldest = max(oldest, float(age.max()))
    return oldest


def swept_age_min(sweep: Sweep, tools: PlanTools) -> float:
    """The oldest edge of the sweep when nothing interrupts it, in minutes."""
    return _oldest(sweep, [False] * len(sweep.passes), tools)[0]


def pause_min(sweep: Sweep, tools: PlanTools, *, helper: bool) -> float:
    """What one refill adds to an edge that is live: a swap, or a walk out, a filling, a walk in."""
    if helper:
        return tools.swap_min
    return tools.refill_min + sweep.depth_m * len(sweep.passes) / tools.walk_m_min


def equivalent_front_m(sweep: Sweep) -> float:
    """E = R max|grad T| of the strips in their order: floor sprayed while an edge waits, per depth."""
    before = np.concatenate([[0.0], np.cumsum([each.strip.area_m2 for each in sweep.passes])])
    waits = [before[edge.then] - before[edge.first] for edge in sweep.edges]
    return float(max(waits, default=sweep.passes[0].strip.area_m2) / sweep.depth_m)
