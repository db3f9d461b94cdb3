"""The floor as a person meets it: pieces, seams between them, and ground a body can stand on.

Rooms are cut along saw cuts into *pieces*; a *seam* is the line where two
pieces meet through an opening or along a cut, or where a piece meets the
outside. Walls may have no thickness in a drawing: they stay walls, because
pieces are held a hair apart and joined only at their seams.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from functools import cached_property

import shapely
import shapely.ops
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import StopKind
from farwall.floor.geometry import Point, polygons_of
from farwall.floor.nouns import Exit, Floor, SawCut
from farwall.nouns import dataclass

BODY_M = 0.25
"""Radius of the disc that stands for a person. Rank: guess, shoulders of a man with a tank."""
KEEP_OFF_M = BODY_M + 0.0025
"""How far a body's centre stays from wet stain: its radius and the chords of drawn arcs."""
STAND_OFF_M = BODY_M + 0.003
"""How far a body's centre stays from walls: a little more than from wet stain, so that stain
behind a wall drawn without thickness takes nothing from the ground before it."""
HAIR_M = 0.0005
"""Half of the gap held between pieces that share a wall of no thickness."""
SEAM_M = 0.011
"""Half depth of the ground that joins two pieces at a seam: rooms may miss it by 10 mm."""
GRID_M = 1e-4
_OUT_M = 4.0
_WALL_GAP_M = 0.45
_LEAST_PIECE_M2 = 0.02
_CUT_SHORT_M = 0.02
NO_LENGTH_M = 1e-6
_LEAST_SEAM_M = 0.05


@dataclass(frozen=True)
class Piece:
    """Floor that is never cut: a room, or a part of one between saw cuts. Fixtures left out.

    drop_s: seconds that a drop was told to stand there; None where none was tried. pour: id of the
    later pour it lies on. called: what people call its room; empty where that is not known.
    """

    id: str
    room: str
    shape: BaseGeometry
    drop_s: float | None = None
    pour: str = ""
    called: str = ""

    @cached_property
    def inner(self) -> BaseGeometry:
        """The piece a hair smaller, so that neighbours do not touch through a wall."""
        return mitred(self.shape, -HAIR_M)


@dataclass(frozen=True)
class Seam:
    """Where one piece meets another (`b`) or the outside (`b` empty).

    sight: how much of it lies in sight of the main window, 0 to 1; None when that is not known.
    """

    id: str
    kind: StopKind | str
    line: tuple[Point, ...]
    a: str
    b: str
    exit: str = ""
    sight: float | None = None

    def other(self, piece: str) -> str:
        """The piece on the far side, or empty for the outside."""
        return self.b if piece == self.a else self.a

    @cached_property
    def chord(self) -> shapely.LineString:
        """The seam as a line."""
        return shapely.LineString(self.line)

    @cached_property
    def joint(self) -> shapely.Polygon:
        """The ground that joins both sides."""
        return self.chord.buffer(SEAM_M, cap_style="flat")

    @property
    def is_way_out(self) -> bool:
        """Whether this seam leads outside through an exit."""
        return bool(self.exit)


@dataclass(frozen=True)
class World:
    """All pieces and seams of one storey, and the ground outside."""

    pieces: dict[str, Piece]
    seams: tuple[Seam, ...]
    outside: BaseGeometry
    unused_cuts: tuple[str, ...] = ()
    """Saw cuts at which nothing can stop: they do not run from wall to wall."""

    @cached_property
    def kept(self) -> dict[str, object]:
        """What others reckoned once for this house, each under its own name."""
        return {}

    def seams_of(self, piece: str) -> Sequence[Seam]:
        """The seams of one piece."""
        return self._by_piece.get(piece, ())

    @cached_property
    def _by_piece(self) -> dict[str, list[Seam]]:
        found: dict[str, list[Seam]] = {}
        for seam in self.seams:
            for piece in dict.fromkeys((seam.a, seam.b)):
                found.setdefault(piece, []).append(seam)
        return found

    def called(self, names: Iterable[str]) -> str:
        """What people call some pieces or rooms, each once: for a sentence."""
        label = {one.room: one.called for one in self.pieces.values()}
        label |= {name: one.called for name, one in self.pieces.items()}
        return ", ".join(dict.fromkeys(label.get(name) or name for name in names))

    def ground(self, pieces: Iterable[str]) -> BaseGeometry:
        """The floor of some pieces, joined at the seams between them."""
        inside = set(pieces)
        joints = [seam.joint for seam in self.seams if seam.a in inside and seam.b in inside]
        return shapely.union_all([*(self.pieces[name].inner for name in inside), *joints])

    @cached_property
    def standing(self) -> BaseGeometry:
        """Every place where a body's centre may be, indoors on dry floor and outside."""
        joints = [seam.joint for seam in self.seams if seam.b or seam.is_way_out]
        everything = shapely.union_all(
            [*(piece.inner for piece in self.pieces.values()), *joints, self.outside]
        )
        return mitred(everything, -STAND_OFF_M)


def fused(
    world: World, pieces: Iterable[str], exit_seam: Seam
) -> tuple[World, tuple[str, ...], Seam]:
    """The world with the saw cuts inside `pieces` closed, those pieces, and the exit in it."""
    inside = set(pieces)
    name = {piece: piece for piece in world.pieces}
    for seam in world.seams:
        if seam.kind == "saw cut" and {seam.a, seam.b} <= inside:
            one, two = sorted((name[seam.a], name[seam.b]))
            name.update({piece: one for piece, kept in name.items() if kept == two})
    if all(piece == kept for piece, kept in name.items()):
        return world, tuple(pieces), exit_seam
    whole: dict[str, Piece] = {}
    for kept in dict.fromkeys(name.values()):
        parts = [world.pieces[piece].shape for piece, other in name.items() if other == kept]
        room, called = world.pieces[kept].room, world.pieces[kept].called
        shape = shapely.union_all(parts, grid_size=GRID_M)
        whole[kept] = Piece(kept, room, shape, called=called)
    moved = {
        id(seam): replace(seam, a=name[seam.a], b=name[seam.b] if seam.b else "")
        for seam in world.seams
    }
    seams = tuple(seam for seam in moved.values() if seam.a != seam.b)
    closed = World(whole, seams, world.outside)
    found = next(moved[id(seam)] for seam in world.seams if seam == exit_seam)
    return closed, tuple(dict.fromkeys(name[piece] for piece in pieces)), found


def mitred(shape: BaseGeometry, by_m: float) -> BaseGeometry:
    """The shape wider (narrower when negative) by `by_m`, its corners kept sharp.

    Legs of no length are taken out first: they set a sharp corner dividing by zero. So is the
    grid it was rounded to: on that, a turned rectangle made a hair narrower came out empty.
    """
    free = shapely.set_precision(shape.simplify(NO_LENGTH_M), 0.0)
    return shapely.buffer(free, by_m, join_style="mitre")


def rounded(shape: BaseGeometry, by_m: float, *, quad_segs: int = 16) -> BaseGeometry:
    """The shape wider by `by_m`, corners rounded; valid also where the buffer crosses itself."""
    wide = shapely.buffer(shape, by_m, quad_segs=quad_segs)
    return wide if wide.is_valid else shapely.make_valid(wide)


def build_world(floor: Floor, exits: Iterable[Exit]) -> World:
    """The pieces, seams and outside ground of `floor`, whose rooms touch at their openings.

    A saw cut that leaves no half of a doorway wide enough for a body is not used.
    """
    world = _build(floor, exits)
    narrowing = _narrowing_cuts(floor, world)
    if not narrowing:
        return world
    rest = tuple(cut for cut in floor.saw_cuts if cut not in narrowing)
    world = build_world(replace(floor, saw_cuts=rest), exits)
    return replace(world, unused_cuts=(*(cut.id for cut in narrowing), *world.unused_cuts))


def _narrowing_cuts(floor: Floor, world: World) -> list[SawCut]:
    """Saw cuts that end in a doorway and leave no half of it wide enough for a body."""
    found = []
    for opening in floor.openings:
        # A stretch reaches as far past the cut as a room may miss its opening.
        halves = [seam.chord.length - SEAM_M for seam in world.seams if seam.id == opening.id]
        chord = shapely.LineString(opening.line)
        if len(halves) > 1 and max(halves) < 2 * STAND_OFF_M <= chord.length:
            between_jambs = shapely.ops.substring(chord, 0.01, chord.length - 0.01)
            found += [
                cut
                for cut in floor.saw_cuts
                if shapely.LineString(cut.line).distance(between_jambs) <= _CUT_SHORT_M
            ]
    return list(dict.fromkeys(found))


def _build(floor: Floor, exits: Iterable[Exit]) -> World:
    pieces: dict[str, Piece] = {}
    cuts: list[Seam] = []
    for room in floor.rooms:
        parts, seams = _cut_room(floor, room.id)
        pieces.update({part.id: part for part in parts})
        cuts.extend(seams)
    way_out = {out.opening: out.id for out in exits}
    doors = [
        seam
        for opening in floor.openings
        for seam in _opening_seams(opening.id, floor, pieces, way_out)
    ]
    outside = _outside(floor, [seam for seam in doors if not seam.b])
    used = {seam.id for seam in cuts}
    unused = tuple(cut.id for cut in floor.saw_cuts if cut.id not in used)
    return World(pieces, (*doors, *cuts), outside, unused)


def _cut_room(floor: Floor, room_id: str) -> tuple[list[Piece], list[Seam]]:
    room = floor.room_by_id[room_id]
    shape: BaseGeometry = shapely.set_precision(room.polygon.shape, GRID_M)
    parts = [shape]
    used = []
    for cut in floor.saw_cuts:
        line = shapely.LineString(cut.line)
        split = [piece for part in parts for piece in _split(part, line)]
        if len(split) > len(parts):
            used.append(cut)
        parts = split
    dry = shapely.union_all([fixture.polygon.shape for fixture in floor.fixtures])
    floors = [
        piece
        for part in parts
        for piece in polygons_of(shapely.difference(part, dry, grid_size=GRID_M))
        if piece.area >= _LEAST_PIECE_M2
    ]
    names = [room_id] if len(floors) == 1 else [f"{room_id}/{n + 1}" for n in range(len(floors))]
    pieces = [
        Piece(name, room_id, piece, called=room.label)
        for name, piece in zip(names, floors, strict=True)
    ]
    seams: list[Seam] = []
    for one, two in _pairs(pieces):
        for cut in used:
            line = shapely.LineString(cut.line)
            seams.extend(
                Seam(cut.id, "saw cut", shared, one.id, two.id)
                for shared in _along(one.shape, two.shape, line)
            )
    return pieces, seams


def _split(part: BaseGeometry, line: shapely.LineString) -> list[BaseGeometry]:
    halves = polygons_of(shapely.ops.split(part, _lengthened(line, _CUT_SHORT_M)))
    good = [half for half in halves if half.area >= _LEAST_PIECE_M2]
    if len(good) < 2:
        return [part]
    return [shapely.set_precision(half, GRID_M) for half in good]


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
    opening_id: str, floor: Floor, pieces: dict[str, Piece], way_out: dict[str, str]
) -> list[Seam]:
    """The seams of one opening: several when a saw cut meets the doorway."""
    opening = floor.opening_by_id[opening_id]
    if not opening.rooms:
        return []  # a drawing in hand may have one for a moment; as facts it is refused
    chord = shapely.LineString(opening.line)
    sides = [[piece for piece in pieces.values() if piece.room == room] for room in opening.rooms]
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
    return _long_parts(chord.intersection(shapely.buffer(piece.shape, SEAM_M, join_style="mitre")))


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
