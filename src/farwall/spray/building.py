"""The house of `spray.world`, built of the facts of a floor; and built again with one cut more."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import replace
from functools import cached_property

import shapely
import shapely.ops
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point, polygons_of
from farwall.floor.nouns import Exit, Floor, Opening, Room, SawCut
from farwall.nouns import dataclass
from farwall.spray.world import (
    GRID_M,
    HAIR_M,
    SEAM_M,
    STAND_OFF_M,
    Piece,
    Seam,
    World,
    mitred,
)

_OUT_M = 4.0
_WALL_GAP_M = 0.45
_LEAST_PIECE_M2 = 0.02
_CUT_SHORT_M = 0.02
_LEAST_SEAM_M = 0.05


def build_world(floor: Floor, exits: Sequence[Exit]) -> World:
    """The pieces, seams and outside ground of `floor`, whose rooms touch at their openings.

    A saw cut that leaves no half of a doorway wide enough for a body is not used.
    """
    return _used(_built(floor, exits), floor, exits, floor.openings)


def with_cut(world: World, floor: Floor, exits: Sequence[Exit], cut: SawCut) -> World:
    """The house that `build_world` makes of `floor` with one saw cut more.

    world: what it made of `floor` itself. Only rooms that the cut may reach are parted anew, and
    only their openings looked at: of a house of 200 rooms that is a hundredth part.
    """
    more = replace(floor, saw_cuts=(*floor.saw_cuts, cut))
    if world.unused_cuts:  # it was made without them; together with another they may part a room
        return build_world(more, exits)
    longer = _CutLine.of(cut).longer.bounds
    anew = {room.id for room in floor.rooms if _may_meet(room.polygon.shape.bounds, longer)}
    openings = [one for one in floor.openings if not anew.isdisjoint(one.rooms)]
    return _used(_built(more, exits, _Before(world, anew)), more, exits, openings)


@dataclass(frozen=True)
class _Before:
    """The house before one cut more, and the rooms that may be another with it."""

    world: World
    anew: AbstractSet[str]

    @cached_property
    def by_room(self) -> dict[str, list[Piece]]:
        found: dict[str, list[Piece]] = {}
        for piece in self.world.pieces.values():
            found.setdefault(piece.room, []).append(piece)
        return found

    @cached_property
    def cuts(self) -> dict[str, list[Seam]]:
        """Seams along saw cuts, by their room."""
        found: dict[str, list[Seam]] = {}
        for seam in self.world.seams:
            if seam.kind == "saw cut":
                found.setdefault(self.world.pieces[seam.a].room, []).append(seam)
        return found

    @cached_property
    def doors(self) -> dict[str, list[Seam]]:
        """Seams of openings, by the opening."""
        found: dict[str, list[Seam]] = {}
        for seam in self.world.seams:
            if seam.kind != "saw cut":
                found.setdefault(seam.id, []).append(seam)
        return found


def _used(world: World, floor: Floor, exits: Sequence[Exit], openings: Sequence[Opening]) -> World:
    """The house without saw cuts that leave no half of one of the openings wide enough."""
    narrowing = _narrowing_cuts(floor, world, openings)
    if not narrowing:
        return world
    rest = tuple(cut for cut in floor.saw_cuts if cut not in narrowing)
    without = build_world(replace(floor, saw_cuts=rest), exits)
    return replace(without, unused_cuts=(*(cut.id for cut in narrowing), *without.unused_cuts))


def _narrowing_cuts(floor: Floor, world: World, openings: Sequence[Opening]) -> list[SawCut]:
    """Saw cuts that end in a doorway and leave no half of it wide enough for a body."""
    lengths: dict[str, list[float]] = {}
    for seam in world.seams:
        lengths.setdefault(seam.id, []).append(seam.chord.length)
    found = []
    for opening in openings:
        # A stretch reaches as far past the cut as a room may miss its opening.
        halves = [length - SEAM_M for length in lengths.get(opening.id, ())]
        chord = shapely.LineString(opening.line)
        if len(halves) > 1 and max(halves) < 2 * STAND_OFF_M <= chord.length:
            between_jambs = shapely.ops.substring(chord, 0.01, chord.length - 0.01)
            found += [
                cut
                for cut in floor.saw_cuts
                if shapely.LineString(cut.line).distance(between_jambs) <= _CUT_SHORT_M
            ]
    return list(dict.fromkeys(found))


def _built(floor: Floor, exits: Sequence[Exit], before: _Before | None = None) -> World:
    by_room, cuts = _rooms_parted(floor, before)
    way_out = {out.opening: out.id for out in exits}
    doors: list[Seam] = []
    for opening in floor.openings:
        if before is None or not before.anew.isdisjoint(opening.rooms):
            doors += _opening_seams(opening, by_room, way_out)
        else:
            doors += before.doors.get(opening.id, ())
    outer = [seam for seam in doors if not seam.b]
    if before is None or outer != [seam for seam in before.world.seams if not seam.b]:
        outside = _outside(floor, outer)
    else:
        outside = before.world.outside
    pieces = {piece.id: piece for parts in by_room.values() for piece in parts}
    used = {seam.id for seam in cuts}
    unused = tuple(cut.id for cut in floor.saw_cuts if cut.id not in used)
    return World(pieces, (*doors, *cuts), outside, unused)


def _rooms_parted(
    floor: Floor, before: _Before | None
) -> tuple[dict[str, list[Piece]], list[Seam]]:
    """The pieces of each room, and the seams along saw cuts, in the rooms' order."""
    by_room: dict[str, list[Piece]] = {}
    seams: list[Seam] = []
    lines = [_CutLine.of(cut) for cut in floor.saw_cuts]
    dry = shapely.union_all([fixture.polygon.shape for fixture in floor.fixtures])
    for room in floor.rooms:
        if before is None or room.id in before.anew:
            by_room[room.id], along = _cut_room(room, lines, dry)
            seams += along
        else:
            by_room[room.id] = before.by_room.get(room.id, [])
            seams += before.cuts.get(room.id, ())
    return by_room, seams


@dataclass(frozen=True)
class _CutLine:
    """A saw cut, its line, and that line a little longer: cuts in drawings stop short of a wall."""

    cut: SawCut
    line: shapely.LineString
    longer: shapely.LineString

    @staticmethod
    def of(cut: SawCut) -> _CutLine:
        line = shapely.LineString(cut.line)
        return _CutLine(cut, line, _lengthened(line, _CUT_SHORT_M))


def _cut_room(
    room: Room, cuts: Sequence[_CutLine], dry: BaseGeometry
) -> tuple[list[Piece], list[Seam]]:
    shape: BaseGeometry = shapely.set_precision(room.polygon.shape, GRID_M)
    parts = [shape]
    used = []
    for cut in cuts:
        split = [piece for part in parts for piece in _split(part, cut.longer)]
        if len(split) > len(parts):
            used.append(cut)
        parts = split
    floors = [
        piece
        for part in parts
        for piece in polygons_of(shapely.difference(part, dry, grid_size=GRID_M))
        if piece.area >= _LEAST_PIECE_M2
    ]
    names = [room.id] if len(floors) == 1 else [f"{room.id}/{n + 1}" for n in range(len(floors))]
    pieces = [
        Piece(name, room.id, piece, called=room.label)
        for name, piece in zip(names, floors, strict=True)
    ]
    seams = [
        Seam(cut.cut.id, "saw cut", shared, one.id, two.id)
        for one, two in _pairs(pieces)
        for cut in used
        for shared in _along(one.shape, two.shape, cut.line)
    ]
    return pieces, seams


def _split(part: BaseGeometry, line: shapely.LineString) -> list[BaseGeometry]:
    if not _may_meet(part.bounds, line.bounds):
        return [part]
    halves = polygons_of(shapely.ops.split(part, line))
    good = [half for half in halves if half.area >= _LEAST_PIECE_M2]
    if len(good) < 2:
        return [part]
    return [shapely.set_precision(half, GRID_M) for half in good]


def _may_meet(one: tuple[float, ...], two: tuple[float, ...]) -> bool:
    """Whether two bounds (west, south, east, north) touch."""
    return one[0] <= two[2] and two[0] <= one[2] and one[1] <= two[3] and two[1] <= one[3]


def _lengthened(line: shapely.LineString, by_m: float) -> shapely.LineString:
    """The line a little longer at both ends: cuts in drawings stop short of the wall."""
    xy = list(line.coords)
    ends = []
    for near, far in ((xy[0], xy[1]), (xy[-1], xy[-2])):
        length = shapely.Point(near).distance(shapely.Point(far)) or 1.0
        ends.append(tuple(n + (n - f) / length * by_m for n, f in zip(near, far, strict=True)))
    return shapely.LineString([ends[0], *xy[1:-1], ends[1]] if len(xy) > 2 else ends)


def _pairs(pieces: list[Piece]) -> list[tuple[Piece, Piece]]:
    return [(a, b) for i, a in enumerate(pieces) for b in pieces[i + 1 :]]


def _along(
    one: BaseGeometry, two: BaseGeometry, line: shapely.LineString
) -> list[tuple[Point, ...]]:
    """Where two pieces meet along a cut: more than one line when an island stands on it."""
    near = line.buffer(0.005)
    shared = shapely.intersection_all([line, one.buffer(0.005), two.buffer(0.005), near])
    return _long_parts(shared)


def _long_parts(line: BaseGeometry) -> list[tuple[Point, ...]]:
    """The parts of a line that are long enough for a seam, in their order along it."""
    return [
        tuple((float(x), float(y)) for x, y in part.coords)
        for part in shapely.get_parts(line).tolist()
        if part.length > _LEAST_SEAM_M
    ]


def _opening_seams(
    opening: Opening, by_room: Mapping[str, Sequence[Piece]], way_out: Mapping[str, str]
) -> list[Seam]:
    """The seams of one opening: several when a saw cut meets the doorway."""
    if not opening.rooms:
        return []  # a drawing in hand may have one for a moment; as facts it is refused
    chord = shapely.LineString(opening.line)
    sides = [by_room.get(room, ()) for room in opening.rooms]
    if len(opening.rooms) == 1 or opening.kind == "outside":
        return [
            Seam(opening.id, "outside", line, piece.id, "", way_out.get(opening.id, ""))
            for piece in sides[0]
            for line in _facing(chord, piece)
        ]
    if opening.rooms[0] == opening.rooms[1]:
        return []
    return [
        Seam(opening.id, opening.kind, line, one.id, two.id)
        for one in sides[0]
        for two in sides[1]
        for facing_one in _facing(chord, one)
        for facing_two in _facing(chord, two)
        for line in _shared(facing_one, facing_two)
    ]


def _shared(one: tuple[Point, ...], two: tuple[Point, ...]) -> list[tuple[Point, ...]]:
    """What two stretches of one opening's line have in common."""
    return _long_parts(
        shapely.intersection(shapely.LineString(one), shapely.LineString(two).buffer(1e-6))
    )


def _facing(chord: shapely.LineString, piece: Piece) -> list[tuple[Point, ...]]:
    """The stretches of an opening's line that the piece reaches: several beside a post."""
    return _long_parts(chord.intersection(piece.reach))


def _outside(floor: Floor, outer: list[Seam]) -> BaseGeometry:
    """Ground around the house, walls left out, reaching in to the exits' lines."""
    house = shapely.union_all([room.polygon.shape for room in floor.rooms])
    closed = mitred(mitred(house, _WALL_GAP_M), -_WALL_GAP_M + 0.15)
    solid = shapely.union_all([shapely.Polygon(part.exterior) for part in polygons_of(closed)])
    yard = shapely.box(*solid.bounds).buffer(_OUT_M, join_style="mitre").difference(solid)
    porches = [_porch(seam, house) for seam in outer if seam.is_way_out]
    return shapely.union_all([yard, *porches])


def _porch(seam: Seam, house: BaseGeometry) -> BaseGeometry:
    """The way from an exit's line through the wall to the yard, and nothing beyond its room."""
    both = seam.chord.buffer(_WALL_GAP_M + 0.3, cap_style="flat")
    beyond = shapely.difference(both, mitred(house, -HAIR_M))
    return shapely.union_all(
        [part for part in polygons_of(beyond) if part.distance(seam.chord) < SEAM_M]
    )
