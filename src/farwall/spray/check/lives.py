"""Edges held to the open time of their own room and minute.

Each room or patch of a field has open times that follow each other. An edge is
held to the shortest that holds at its place in any minute of its wait, so it is
enough to hold it to each in turn, where and while that one holds. Along a
straight piece of an edge both moments are linear between break points: the
worst place lies at a break point, or where the wait begins or ends to touch the
minutes of an open time.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise, product

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.edges import Edge, Piece, bounded
from farwall.spray.check.nearest import THIN, Leg, Line, legs_of, line_of
from farwall.spray.check.nouns import TIME_MIN, Fault, Field, OpenTime
from farwall.spray.check.world import World

STRICT_M, LENIENT_M = 0.04, 0.001
"""An edge is surely held to rooms within the first; it is told off for those within the second."""


@dataclass(frozen=True)
class Late:
    """The worst place of an edge: age less open time, and where and when. [min]"""

    late_min: float
    age_min: float
    low_min: float
    x: float
    y: float
    met_min: float


NEVER = Late(-np.inf, 0.0, 0.0, 0.0, 0.0, 0.0)


@dataclass(frozen=True)
class _Rule:
    """One open time: `low_min` for who waits some time between two minutes."""

    low_min: float
    begin_min: float
    end_min: float


@dataclass(frozen=True, eq=False)
class _Area:
    """A room or a patch with its rules."""

    shape: BaseGeometry
    rules: tuple[_Rule, ...]

    def least(self, edge: Edge) -> float:
        """The shortest open time that may hold while both bands of an edge are sprayed."""
        first = min(edge.later.begins, edge.earlier.begins) - TIME_MIN
        last = max(edge.later.ends, edge.earlier.ends) + TIME_MIN
        lows = [r.low_min for r in self.rules if r.begin_min <= last and r.end_min >= first]
        return min(lows, default=np.inf)


def worst_by_edge(
    field: Field, edges: Sequence[Edge], world: World, *, strict: bool, above: float = -np.inf
) -> list[tuple[Edge, Late]]:
    """The worst place of each edge of a field that is later than `above`, the worst first.

    strict: doubtful places and minutes count against the edge; else for it. Without
    `above` the first is exact, and of the others only some are told.
    """
    areas = _areas(field, world)
    within_m, hair = (STRICT_M, TIME_MIN) if strict else (LENIENT_M, -TIME_MIN)
    waiting = [
        (piece.at_most - area.least(edge), piece, area)
        for edge in edges
        for area, part in _parts(edge, areas, within_m)
        for piece in bounded(part, edge)
    ]
    worst: dict[Edge, Late] = {}
    best = above
    for bound, piece, area in sorted(waiting, key=lambda one: -one[0]):
        if bound <= (best if above == -np.inf else above):
            break
        found = _worst_on(piece, area, hair)
        if found.late_min > worst.get(piece.edge, NEVER).late_min:
            worst[piece.edge] = found
            best = max(best, found.late_min)
    told = [(edge, late) for edge, late in worst.items() if late.late_min > above]
    return sorted(told, key=lambda one: -one[1].late_min)


def _areas(field: Field, world: World) -> list[_Area]:
    """The rooms and patches of a field; a room that no open time names has the shortest."""
    groups: dict[str, list[OpenTime]] = {}
    for one in field.open_times:
        if one.patch is None:
            groups.setdefault(one.room, []).append(one)
    rooms = {room.id: room.shape for room in world.house.rooms}
    found = [_Area(rooms[room], _rules(own)) for room, own in groups.items() if room in rooms]
    found += [
        _Area(one.patch, (_Rule(one.low_min, one.from_min, one.to_min),))
        for one in field.open_times
        if one.patch is not None
    ]
    bare = [rooms[room] for room in field.rooms if room in rooms and room not in groups]
    least = min(one.low_min for one in field.open_times)
    found += [_Area(shape, (_Rule(least, -np.inf, np.inf),)) for shape in bare]
    return found


def _rules(group: list[OpenTime]) -> tuple[_Rule, ...]:
    ordered = sorted(group, key=lambda one: one.from_min)
    begins = [-np.inf, *(one.from_min for one in ordered[1:]), np.inf]
    return tuple(
        _Rule(one.low_min, begin, end)
        for one, (begin, end) in zip(ordered, pairwise(begins), strict=True)
    )


def _parts(
    edge: Edge, areas: Sequence[_Area], within_m: float
) -> Iterator[tuple[_Area, BaseGeometry]]:
    """What of an edge belongs to each area; what belongs to none belongs to all."""
    near = [shapely.buffer(area.shape, within_m, join_style="mitre") for area in areas]
    lost = shapely.difference(edge.line, shapely.union_all(near))
    for area, shape in zip(areas, near, strict=True):
        part = shapely.union(shapely.intersection(edge.line, shape), lost)
        lines = [one for one in shapely.get_parts(part) if one.length > 0]
        if lines:
            yield area, shapely.MultiLineString(lines)


def _worst_on(piece: Piece, area: _Area, hair: float) -> Late:
    """The worst place of a straight piece, held to each rule of its area."""
    line = line_of(piece.ends)
    later = legs_of(piece.edge.later.path, only=piece.may_later)
    earlier = legs_of(piece.edge.earlier.path, only=piece.may_earlier)
    breaks = sorted({0.0, 1.0, *line.breaks(later), *line.breaks(earlier)})
    worst = NEVER
    for u, v in pairwise(breaks):
        if v - u < THIN:
            continue
        middle = (u + v) / 2
        for one, other in product(line.nearest(later, middle), line.nearest(earlier, middle)):
            for stretch in _stretches(line, one, other, u, v):
                for rule in area.rules:
                    worst = max(worst, stretch.worst(rule, hair), key=lambda late: late.late_min)
    return worst


@dataclass(frozen=True)
class _Stretch:
    """Part of an edge on which the moments made and met are linear: their values at both ends."""

    line: Line
    u: float
    v: float
    made: tuple[float, float]
    met: tuple[float, float]

    def worst(self, rule: _Rule, hair: float) -> Late:
        """The worst place among those whose wait touches the minutes of a rule."""
        low, high = 0.0, 1.0
        ends = (
            (self.met[0] - rule.begin_min + hair, self.met[1] - rule.begin_min + hair),
            (rule.end_min - self.made[0] + hair, rule.end_min - self.made[1] + hair),
        )
        for at_start, at_end in ends:
            if at_start < 0 and at_end < 0:
                return NEVER
            if at_start < 0:
                low = max(low, at_start / (at_start - at_end))
            elif at_end < 0:
                high = min(high, at_start / (at_start - at_end))
        if low > high:
            return NEVER
        return max((self._at(w, rule) for w in (low, high)), key=lambda late: late.late_min)

    def _at(self, share: float, rule: _Rule) -> Late:
        made = self.made[0] + share * (self.made[1] - self.made[0])
        met = self.met[0] + share * (self.met[1] - self.met[0])
        u = self.u + share * (self.v - self.u)
        x, y = self.line.x + u * self.line.dx, self.line.y + u * self.line.dy
        return Late(met - made - rule.low_min, met - made, rule.low_min, x, y, met)


def _stretches(line: Line, one: Leg, other: Leg, u: float, v: float) -> Iterator[_Stretch]:
    """Both ways round: of two bands that lie in each other's time either may meet the other."""
    at_u, at_v = one.moments(line.along(one, u)), one.moments(line.along(one, v))
    and_u, and_v = other.moments(line.along(other, u)), other.moments(line.along(other, v))
    firsts, seconds = zip(at_u, at_v, strict=True), list(zip(and_u, and_v, strict=True))
    for first, second in product(firsts, seconds):
        yield _Stretch(line, u, v, made=second, met=first)
        yield _Stretch(line, u, v, made=first, met=second)


def dead_by_room(field: Field, edges: Sequence[Edge], world: World) -> Iterator[Fault]:
    """`dead-edge`: a band met when its edge had outlived the open time of its room and minute."""
    for edge, late in worst_by_edge(field, edges, world, strict=False, above=TIME_MIN):
        yield Fault(
            "dead-edge",
            field.id,
            late.met_min,
            f"At {late.met_min:.2f} min, {world.place(late.x, late.y)} at ({late.x:.2f}, "
            f"{late.y:.2f}), band {edge.later.id} meets the edge of band {edge.earlier.id} at an "
            f"age of {late.age_min:.2f} min; there and then it stays live for {late.low_min:.2f} "
            f"min: {late.late_min:.2f} min too late.",
        )


def wrong_open_times(
    field: Field, edges: Sequence[Edge], world: World, peak_min: float
) -> Iterator[Fault]:
    """`edited`: open times that do not fit each other, or a tightest edge that is none."""
    if not field.open_times:
        return

    def wrong(what: str) -> Fault:
        return Fault("edited", field.id, field.start_min, f"Field {field.id} {what}")

    lows = [one.low_min for one in field.open_times]
    if min(abs(low - field.told_low_min) for low in lows) > TIME_MIN:
        yield wrong(
            f"says that an edge lives {field.told_low_min:.2f} min, and none of its `open_times` "
            "has that."
        )
    named = {one.room for one in field.open_times}
    for room in sorted({*field.rooms} - {one.room for one in field.open_times if not one.patch}):
        yield wrong(f"has no open time for room {room!r}.")
    for room in sorted(named - {*field.rooms}):
        yield wrong(f"has an open time for room {room!r}, which is not in it.")
    yield from _wrong_tightest(field, edges, world, peak_min)


def _wrong_tightest(
    field: Field, edges: Sequence[Edge], world: World, peak_min: float
) -> Iterator[Fault]:
    if field.spare_min is None or not edges:
        return
    if field.varies:
        both = [worst_by_edge(field, edges, world, strict=strict) for strict in (True, False)]
        least, most = (-found[0][1].late_min if found else np.inf for found in both)
    else:
        least = most = field.limit_min - peak_min
    if not least - TIME_MIN <= field.spare_min <= most + TIME_MIN:
        what = f"Field {field.id} says that its tightest edge has {field.spare_min:.2f} min to "
        what += f"spare; the replay finds {most:.2f} min."
        yield Fault("edited", field.id, field.start_min, what)
