"""Openings of a told model: where they lie, which rooms they join, which lead outside."""

from __future__ import annotations

from collections import Counter
from dataclasses import field, replace
from math import dist

import shapely

from farwall.facts.reading import Note
from farwall.floor.geometry import DECIMALS, Point
from farwall.floor.nouns import Exit, Opening, OpeningKind
from farwall.nouns import dataclass
from farwall.readers.room_names import Ids
from farwall.readers.told.compared import agreed, flag_notes, middle, related
from farwall.readers.told.nouns import Told, ToldOpening
from farwall.readers.told.rooms import Rooms
from farwall.readers.told.sides import Shapes, Sides, sides_of_door, sides_of_passage
from farwall.readers.told.unsure import Ground, Shut, place_on_shared_edge

NARROWEST_EXIT_M = 0.6
"""A person with a sprayer does not leave by less. Rank: guess."""
NARROWEST_M = 0.35
_TOUCH_M = 0.05
_NEAR_FOOT_M = 1.0


@dataclass
class Openings:
    """Openings and ways out, and what is unsure about them."""

    openings: list[Opening] = field(default_factory=list)
    exits: list[Exit] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)


def openings_of(told: Told, rooms: Rooms) -> Openings:
    """The openings in the order of the file; the ways out among them."""
    maker = _Maker(told, rooms)
    for opening in told.openings:
        if opening.leaf:
            maker.door(opening)
    for opening in told.openings:
        if not opening.leaf:
            maker.passage(opening)
    maker.ways_out()
    return maker.made


class _Maker:
    """Holds what all openings share while they are made one after another."""

    def __init__(self, told: Told, rooms: Rooms) -> None:
        self._rooms, self._reach_m = rooms, told.wall_m
        self._shut = Shut(rooms)
        self._ids, self._exit_ids = Ids(), Ids()
        self._by_storey: dict[str, list[tuple[str, shapely.Polygon]]] = {}
        for room_id, space in rooms.spaces.items():
            self._by_storey.setdefault(space.storey, []).append((room_id, space.shape))
        self._trees = {
            storey: shapely.STRtree([shape for _, shape in shapes])
            for storey, shapes in self._by_storey.items()
        }
        self._out: list[tuple[Opening, bool]] = []
        self._edges: Counter[str] = Counter()
        self.made = Openings()

    def door(self, opening: ToldOpening) -> None:
        """A leaf in a wall."""
        placed = self._placed(opening)
        if placed is None or placed.seam is None:
            return
        sides = self._best_sides(placed)
        answer = agreed(placed, sides, self._rooms)
        self.made.left += answer.notes
        self._keep(placed, sides, answer.rooms, "door", sure=answer.sure)

    def passage(self, opening: ToldOpening) -> None:
        """An opening without a leaf: a passage, an air surface, a virtual boundary."""
        placed = self._placed(opening)
        if placed is None or placed.seam is None:
            return
        for storey in self._storeys(placed):
            shapes = self._near(placed.seam, storey)
            pieces = sides_of_passage(placed.seam, shapes, self._reach_m, NARROWEST_M)
            for piece in pieces:
                self._piece(placed, piece)
            if any(piece.rooms for piece in pieces):
                return
        if opening.said_outside is not None or opening.relations:
            self._nowhere(placed)

    def _piece(self, opening: ToldOpening, piece: Sides) -> None:
        found = piece.rooms
        if len(found) == 2 and found[0] != found[1]:
            if not self._drawn_already(piece):
                kind: OpeningKind = "cased" if piece.depth_m > _TOUCH_M else "wide"
                self._keep(replace(opening, width_m=None), piece, found, kind, sure=True)
        elif len(found) == 1 and opening.said_outside is True:
            what = (
                f"A gap {dist(*piece.seam):.2f} m wide leads outside from "
                f"{self._rooms.label(found[0])} without a leaf: taken for a way out. Look at it."
            )
            self.made.left.append(Note("way-out-unsure", what, middle(piece.seam)))
            self._keep(replace(opening, width_m=None), piece, found, "outside", sure=True)
        elif len(found) == 1:
            self._edges[found[0]] += 1

    def ways_out(self) -> None:
        """Exits for the outside doors at the ground, and the open edges told room by room."""
        ground = Ground(self._rooms, [opening.rooms[0] for opening, _ in self._out])
        for opening, sure in self._out:
            wide = (opening.width_m or dist(*opening.line)) >= NARROWEST_EXIT_M
            if sure and wide and ground.holds(opening.rooms[0]):
                exit_id = self._exit_ids.take(f"exit-{opening.id}")
                self.made.exits.append(Exit(exit_id, opening.id))
            elif sure and wide:
                what = (
                    f"The outside door of {self._rooms.label(opening.rooms[0])} lies above the "
                    "ground: a balcony or a stair outside. Not taken for a way out."
                )
                self.made.left.append(Note("way-out-unsure", what, middle(opening.line)))
        for room, count in self._edges.items():
            what = (
                f"{count} × open edge of {self._rooms.label(room)} leads to no other room of the "
                "file: a stair, a void or the open. Look at it."
            )
            point = self._rooms.spaces[room].shape.representative_point()
            where = (round(float(point.x), DECIMALS), round(float(point.y), DECIMALS))
            self.made.left.append(Note("open-edge", what, where))

    def _placed(self, opening: ToldOpening) -> ToldOpening | None:
        """The opening with a seam: its own, or one on the edge that its rooms share."""
        if opening.seam is not None:
            return opening
        said = related(opening, self._rooms)
        seam = None
        if len(said) == 2:
            one, other = (self._rooms.spaces[room].shape for room in said)
            width = opening.width_m if opening.width_m or not opening.leaf else 0.9
            seam = place_on_shared_edge(one, other, self._reach_m, width)
        what = f"{'A door' if opening.leaf else 'An opening'} is told without a place"
        names = " and ".join(self._rooms.label(room) for room in said) or "no room"
        if seam is None:
            said_so = f"{what}, between {names}; no wall of theirs is shared. Say where it is."
            self.made.left.append(Note("door-unplaced", said_so))
            return None
        said_so = f"{what}: put in the middle of the wall between {names}. Say where it is."
        self.made.left.append(Note("door-placed", said_so, middle(seam)))
        return replace(opening, seam=seam)

    def _best_sides(self, opening: ToldOpening) -> Sides:
        """The sides on the opening's storey, or where more rooms lie at it."""
        seam = opening.seam or ((0.0, 0.0), (0.0, 0.0))
        best = Sides(None, None, seam)
        for storey in self._storeys(opening):
            sides = sides_of_door(seam, self._near(seam, storey), self._reach_m)
            if len(sides.rooms) > len(best.rooms):
                best = sides
        if len(best.rooms) < 2 and opening.foot_m is not None:
            sides = sides_of_door(seam, self._at_height(seam, opening.foot_m), self._reach_m)
            if len(sides.rooms) > len(best.rooms):
                best = sides
        return best

    def _at_height(self, seam: tuple[Point, Point], foot_m: float) -> Shapes:
        """The rooms of any storey near a seam whose floor lies at its foot: split levels."""
        return [
            (room, shape)
            for storey in self._by_storey
            for room, shape in self._near(seam, storey)
            if (floor := self._rooms.spaces[room].floor_m) is not None
            and abs(floor - foot_m) < _NEAR_FOOT_M
        ]

    def _storeys(self, opening: ToldOpening) -> list[str]:
        """Storeys to look on: its own first, those at the height of its foot, of its relations."""
        wanted = [opening.storey] if opening.storey in self._by_storey else []
        wanted += [self._rooms.spaces[room].storey for room in related(opening, self._rooms)]
        foot = opening.foot_m
        if foot is not None:
            wanted += [
                space.storey
                for space in self._rooms.spaces.values()
                if space.floor_m is not None and abs(space.floor_m - foot) < _NEAR_FOOT_M
            ]
        told = opening.storey or foot is not None or opening.relations
        return list(dict.fromkeys(wanted if told else [*wanted, *self._by_storey]))

    def _near(self, seam: tuple[Point, Point], storey: str) -> Shapes:
        shapes = self._by_storey.get(storey, [])
        if not shapes:
            return []
        reach = shapely.LineString(seam).buffer(self._reach_m + 0.1)
        return [shapes[int(place)] for place in sorted(self._trees[storey].query(reach))]

    def _keep(
        self,
        opening: ToldOpening,
        sides: Sides,
        found: tuple[str, ...],
        kind: OpeningKind,
        *,
        sure: bool,
    ) -> None:
        if not found:
            self._nowhere(opening)
            return
        if len(found) == 1:
            if opening.said_outside is not True and self._shut.holds(found[0], sides):
                what = (
                    f"{'A door' if opening.leaf else 'An opening'} of "
                    f"{self._rooms.label(found[0])} leads to floor inside the house that the file "
                    "tells nothing of: neither outside nor a room."
                )
                self.made.left.append(Note("opening-to-unclosed", what, middle(sides.seam)))
                return
            kind = "outside"
        flags = flag_notes(opening, found, sides.seam, self._rooms)
        self.made.left += flags
        (ax, ay), (bx, by) = sides.seam
        line = (_rounded(ax), _rounded(ay)), (_rounded(bx), _rounded(by))
        width = round(_width(opening.width_m, dist(*sides.seam)), DECIMALS)
        made = Opening(self._ids.take(opening.id), kind, line, found, width)
        self.made.openings.append(made)
        if kind == "outside":
            self._out.append((made, sure and not flags))

    def _nowhere(self, opening: ToldOpening) -> None:
        what = (
            f"{'A door' if opening.leaf else 'An opening'} has no room of the file on either "
            "side: left out."
        )
        where = middle(opening.seam) if opening.seam else None
        self.made.left.append(Note("opening-nowhere", what, where))

    def _drawn_already(self, piece: Sides) -> bool:
        """Whether an opening between the same rooms lies over this one: both sides tell of it."""
        own = shapely.LineString(piece.seam)
        strip = own.buffer(self._reach_m, cap_style="flat")
        for made in self.made.openings:
            if set(made.rooms) != set(piece.rooms):
                continue
            if shapely.LineString(made.line).intersection(strip).length > 0.5 * own.length:
                return True
        return False


def _width(told_m: float | None, seam_m: float) -> float:
    """The told width where it fits the seam; a figure that cannot be is not believed."""
    return told_m if told_m is not None and 0.5 <= told_m / seam_m <= 2.0 else seam_m


def _rounded(value: float) -> float:
    return round(value, DECIMALS) + 0.0
