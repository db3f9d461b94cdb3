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
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import StopKind
from farwall.floor.geometry import Point
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
NO_LENGTH_M = 1e-6


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

    @cached_property
    def reach(self) -> BaseGeometry:
        """The piece and the depth of a seam around it: what of an opening's line it reaches."""
        return shapely.buffer(self.shape, SEAM_M, join_style="mitre")


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
