"""What there is to draw: the rooms of one storey, and the fields that lie on them."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property, lru_cache

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Field, Plan
from farwall.floor.geometry import Point, PolygonGeometry
from farwall.floor.nouns import Fixture, Opening, Room, SawCut
from farwall.nouns import dataclass
from farwall.papers.drawing.walls import OUTER_WALL_M

_GRID_M = 0.002
"""Bands that touch are one floor: their borders are joined on this grid. For the eye only."""


@dataclass(frozen=True)
class Storey:
    """The slab of one storey with all that stands on it; what is reckoned on it is kept."""

    rooms: tuple[Room, ...]
    openings: tuple[Opening, ...]
    ways_out: tuple[Opening, ...]
    fixtures: tuple[Fixture, ...]
    saw_cuts: tuple[SawCut, ...]

    @cached_property
    def room_by_id(self) -> dict[str, Room]:
        """Rooms by id."""
        return {room.id: room for room in self.rooms}

    @cached_property
    def floor(self) -> BaseGeometry:
        """All rooms in one shape. [m]"""
        return shapely.union_all([room.polygon.shape for room in self.rooms])

    @cached_property
    def outside(self) -> tuple[float, float, float, float]:
        """West, south, east and north of the house with its outer walls. [m]"""
        return self.floor.buffer(OUTER_WALL_M + 0.05, join_style="mitre").bounds

    @cached_property
    def dry(self) -> BaseGeometry:
        """Everything that is kept dry, in one shape. [m]"""
        return shapely.union_all([fixture.polygon.shape for fixture in self.fixtures])

    @cached_property
    def _floors(self) -> dict[str, BaseGeometry]:
        return {}

    def floor_of(self, field: Field) -> BaseGeometry:
        """The floor of a field: its bands, or its rooms where it has none. [m]"""
        if field.id not in self._floors:
            self._floors[field.id] = self._floor_of(field)
        return self._floors[field.id]

    def _floor_of(self, field: Field) -> BaseGeometry:
        if field.bands:
            return _joined(tuple(band.polygon for band in field.bands))
        rooms = [self.room_by_id[i].polygon.shape for i in field.rooms if i in self.room_by_id]
        return shapely.difference(shapely.union_all(rooms), self.dry)


@lru_cache(maxsize=256)  # coats are mostly sprayed in the same bands, and drawn many times
def _joined(bands: tuple[PolygonGeometry, ...]) -> BaseGeometry:
    return shapely.union_all([band.shape for band in bands], grid_size=_GRID_M)


@dataclass(frozen=True)
class Scene:
    """A storey and the fields that are drawn on it, in their order."""

    storey: Storey
    fields: tuple[Field, ...]

    @cached_property
    def stop_ids(self) -> frozenset[str]:
        """Openings and saw cuts on which a stop line lies."""
        return frozenset(stop.id for field in self.fields for stop in field.stop_lines)


def storeys(plan: Plan) -> list[Storey]:
    """The storeys that have rooms, in the order in which the plan names them."""
    names = dict.fromkeys(room.storey for room in plan.inputs.floor.rooms)
    return [_storey(plan, name) for name in names]


def scenes(plan: Plan, *, coat: str | None = None) -> list[Scene]:
    """One scene for each storey, with the fields of one coat: the first, unless `coat` says."""
    coats = [one.id for one in plan.inputs.coats] or [field.coat for field in plan.fields]
    chosen = coat if coat is not None else next(iter(coats), None)
    fields = sorted((f for f in plan.fields if f.coat == chosen), key=lambda f: f.order)
    return [
        Scene(storey, tuple(f for f in fields if _lies_on(f, storey))) for storey in storeys(plan)
    ]


def scene_of_field(field: Field, grounds: Sequence[Storey]) -> Scene:
    """The storey on which a field lies, with that field alone on it."""
    storey = next((one for one in grounds if _lies_on(field, one)), grounds[0])
    return Scene(storey, (field,))


def _lies_on(field: Field, storey: Storey) -> bool:
    return any(room in storey.room_by_id for room in field.rooms)


def _storey(plan: Plan, name: str) -> Storey:
    rooms = tuple(room for room in plan.inputs.floor.rooms if room.storey == name)
    ids = {room.id for room in rooms}
    openings = tuple(o for o in plan.inputs.openings if ids.intersection(o.rooms))
    out = {exit_.opening for exit_ in plan.inputs.exits}
    floor = shapely.union_all([room.polygon.shape for room in rooms])
    return Storey(
        rooms=rooms,
        openings=openings,
        ways_out=tuple(opening for opening in openings if opening.id in out),
        fixtures=tuple(f for f in plan.inputs.fixtures if floor.intersects(f.polygon.shape)),
        saw_cuts=tuple(
            cut for cut in plan.inputs.saw_cuts if floor.intersects(shapely.LineString(cut.line))
        ),
    )


def way_of(plan: Plan, field: Field) -> Opening | None:
    """The opening by which the person leaves a field: named itself, or through an exit.

    A saw cut over which the person steps out stands as an opening of no rooms.
    """
    by_exit = {exit_.id: exit_.opening for exit_ in plan.inputs.exits}
    wanted = by_exit.get(field.exit, field.exit)
    for cut in plan.inputs.saw_cuts:
        if cut.id and cut.id == wanted:
            return Opening(cut.id, "wide", (cut.line[0], cut.line[-1]), ())
    return next((o for o in plan.inputs.openings if o.id == wanted), None)


def middle(opening: Opening) -> Point:
    """The middle of an opening. [m]"""
    (x0, y0), (x1, y1) = opening.line
    return ((x0 + x1) / 2, (y0 + y1) / 2)
