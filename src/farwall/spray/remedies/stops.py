"""Remedies of place: a stop at a line that is there, or at a saw cut made before staining."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import field
from functools import cached_property

import shapely

from farwall.floor.nouns import Exit, Floor, SawCut
from farwall.nouns import dataclass
from farwall.spray.building import build_world, with_cut
from farwall.spray.remedies.case import HOPE, Case, Trial
from farwall.spray.remedies.offer import Offer
from farwall.spray.remedies.parts import Part, guessed_age_min, parts_at, timed_parts
from farwall.spray.remedies.places import Line, cut_places, where_words
from farwall.spray.sweeps import Pieces, Sweeps
from farwall.spray.unparted import HIDDEN
from farwall.spray.world import Seam, World

_PLACES = 6
_IN_EARNEST = 2
"""So many places, the likeliest by a first guess, are planned to the end."""
_HOPEFUL = 0.95
_STOPS = HIDDEN | {"cased"}


@dataclass(frozen=True)
class _Place:
    """Somewhere to stop: its words, its line, the house with it, the parts, a first guess."""

    what: str
    line: Line
    parts: tuple[Part, ...]
    sweeps: Sweeps
    guess_min: float


@dataclass
class Places:
    """Where the fields of a house might be parted: found once for all coats.

    A cache; nobody else writes to it.
    """

    floor: Floor
    exits: tuple[Exit, ...]
    there: dict[tuple[Pieces, Seam], list[_Place]] = field(default_factory=dict)
    cuts: dict[tuple[Pieces, Seam], list[_Place]] = field(default_factory=dict)
    whole: dict[tuple[Pieces, Seam], float] = field(default_factory=dict)

    @cached_property
    def _bare(self) -> World:
        """The house of the floor alone, to which a cut is added; a case's own may tell more."""
        return build_world(self.floor, self.exits)

    def whole_min(self, case: Case) -> float:
        """A first guess at the oldest edge of the field in one, as those of its parts are made."""
        key = (case.step.pieces, case.step.exit)
        if key not in self.whole:
            self.whole[key] = _sweeps(case, case.world).age_min(*key)
        return self.whole[key]

    def that_are_there(self, case: Case) -> list[_Place]:
        """Doorways and saw cuts inside the field, the likeliest first."""
        key = (case.step.pieces, case.step.exit)
        if key not in self.there:
            self.there[key] = _likeliest(self._stops(case))
        return self.there[key]

    def to_be_cut(self, case: Case) -> list[_Place]:
        """Straight cuts across the field's largest piece, the likeliest first."""
        key = (case.step.pieces, case.step.exit)
        if key not in self.cuts:
            self.cuts[key] = _likeliest(self._new_cuts(case))
        return self.cuts[key]

    def _stops(self, case: Case) -> Iterator[_Place]:
        world, pieces = case.world, case.step.pieces
        inside = [seam for seam in world.seams if seam.a in pieces and seam.b in pieces]
        sweeps = _sweeps(case, world)
        for name in dict.fromkeys(seam.id for seam in inside if seam.kind in _STOPS):
            seam = max((s for s in inside if s.id == name), key=lambda s: s.chord.length)
            parts = parts_at(world, pieces, case.step.exit, {name})
            if parts:
                guess = guessed_age_min(parts, sweeps)
                ends = (seam.line[0], seam.line[-1])
                yield _Place(
                    self._there_words(world, seam, us=case.coat.us), ends, parts, sweeps, guess
                )

    def _there_words(self, world: World, seam: Seam, *, us: bool) -> str:
        rooms = [world.pieces[piece].room for piece in (seam.a, seam.b)]
        one, two = (self.floor.room_by_id[room].label for room in rooms)
        line = (seam.line[0], seam.line[-1])
        if seam.kind == "saw cut":
            shape = self.floor.room_by_id[rooms[0]].polygon.shape
            return f"Stop at the saw cut that is in {one}: {where_words(shape, line, us=us)}."
        frame = "doorway" if seam.kind == "door" else "bare frame"
        return f"Stop at the {frame} between {one} and {two}."

    def _new_cuts(self, case: Case) -> Iterator[_Place]:
        pieces = case.world.pieces
        name = max(sorted(case.step.pieces), key=lambda piece: pieces[piece].shape.area)
        room = self.floor.room_by_id[pieces[name].room]
        for line in cut_places(pieces[name].shape, most=_PLACES):
            cut = SawCut(line, id="proposed cut")
            world = with_cut(self._bare, self.floor, self.exits, cut)
            inside, exit_seam = _after(case, world)
            parts = parts_at(world, inside, exit_seam, {cut.id}) if exit_seam else ()
            if parts:
                sweeps = _sweeps(case, world)
                where = where_words(room.polygon.shape, line, us=case.coat.us)
                what = f"A saw cut straight across {room.label}, {where}, made before cleaning."
                yield _Place(what, line, parts, sweeps, guessed_age_min(parts, sweeps))


def at_a_stop(trial: Trial, places: Places) -> Offer | None:
    """The best stop at a line that is there; None where the field has none that gives hope."""
    return _best(trial, "stop-here", places.that_are_there(trial.case), places)


def at_a_cut(trial: Trial, places: Places) -> Offer | None:
    """The best stop at a saw cut that could be made; None where none gives hope.

    For a field that does not fit the likeliest is planned in any case, so that a no is told.
    """
    return _best(trial, "stop-line", places.to_be_cut(trial.case), places)


def _best(trial: Trial, code: str, there: Sequence[_Place], places: Places) -> Offer | None:
    best: Offer | None = None
    whole = places.whole_min(trial.case)
    hopeful = [place for place in there if place.guess_min < _HOPEFUL * whole]
    if not hopeful and not trial.works(trial.stands) and code == "stop-line":
        hopeful = list(there[:1])
    for place in hopeful[:_IN_EARNEST]:
        found = timed_parts(trial, place.parts, place.sweeps)
        offer = Offer(code, place.what, found, trial.budget_min, line=place.line)
        if best is None or _age(offer) < _age(best):
            best = offer
        if trial.with_room(found) or place.guess_min > HOPE * trial.budget_min:
            break
    return best


def _age(offer: Offer) -> float:
    return float("inf") if offer.found is None else offer.found.peak_age_min


def _likeliest(places: Iterator[_Place]) -> list[_Place]:
    return sorted(places, key=lambda place: round(place.guess_min, 3))


def _sweeps(case: Case, world: World) -> Sweeps:
    coat = case.coat
    return Sweeps(world, coat.tools, coat.l_per_m2, coat.helper)


def _after(case: Case, world: World) -> tuple[Pieces, Seam | None]:
    """The field's pieces in a house with one cut more, and its exit there."""
    before = case.world.pieces
    mine = shapely.union_all([before[piece].shape for piece in case.step.pieces])
    shapely.prepare(mine)
    rooms = {before[piece].room for piece in case.step.pieces}
    inside = frozenset(
        name
        for name, piece in world.pieces.items()
        if piece.room in rooms and mine.contains(piece.shape.representative_point())
    )
    old = case.step.exit
    found = [
        seam
        for seam in world.seams
        if seam.id == old.id and (seam.a in inside) != (seam.b in inside)
    ]
    return inside, max(found, key=lambda seam: seam.chord.length, default=None)
