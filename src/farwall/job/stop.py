"""Where to stop soon: the nearest line that hides a seam, else where least of one shows. Pure."""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Band, Field, Plan
from farwall.facts.so_far import SoFar, StopAt
from farwall.floor.nouns import Floor
from farwall.job.half_told import bands_done, begun_together
from farwall.job.replan import replan
from farwall.nouns import dataclass
from farwall.spray.building import build_world
from farwall.spray.kept import borders_of, exit_of, pieces_of
from farwall.spray.world import Seam

HIDING = frozenset({"door", "cased", "saw cut", "outside"})
"""Where colour may end unseen: under a leaf, under a frame, in a cut."""
HIDDEN_M = 0.015
"""A front this near to such a line lies on it."""
BARE_M = 0.03
"""A piece of front in the open shorter than this is a corner's doing."""


@dataclass(frozen=True)
class _Place:
    """The field after some more bands: when, what front is then bare, which lines hide the rest."""

    bands: tuple[Band, ...]
    at_min: float
    bare: BaseGeometry
    lines: tuple[Seam, ...]

    @property
    def hidden(self) -> bool:
        return bool(self.bare.length <= BARE_M)


def stop(plan: Plan, so_far: SoFar, *, within_min: float) -> StopAt:
    """Where to stop `within_min` minutes from now at the latest.

    The nearest line that hides the seam and can be reached in time; when there is
    none, the end of the band at which the least of a front lies in the open. Two stop together,
    when both have done their halves. Times and
    fillings are those of the day planned again. Raises what `replan` raises.
    """
    again = replan(plan, so_far)
    field = _in_hand(again)
    remains = _remains(again)
    if field is None:
        return StopAt("nothing open", "", "", "", (), 0.0, 0.0, 0, 0.0, "", None, remains)
    now = so_far.at_min
    places = _places(again, field, now)
    in_time = [place for place in places if place.at_min <= now + within_min + 1e-6] or places[:1]
    hidden = next((place for place in in_time if place.hidden), None)
    later = next((place for place in places if place.hidden), None)
    if hidden is not None:
        return _stop_at(again, field, hidden, now, remains=_without(again, field, hidden))
    best = min(in_time, key=lambda place: (round(place.bare.length, 2), place.at_min))
    return _stop_at(again, field, best, now, remains=_without(again, field, best), later=later)


def _in_hand(plan: Plan) -> Field | None:
    """The field that is begun and not done, the last one begun where there are several."""
    done = bands_done(plan)
    begun = [
        field
        for field in plan.fields
        if any(b.id in done for b in field.bands) and any(b.id not in done for b in field.bands)
    ]
    return max(begun, key=lambda f: max(b.end_min for b in f.bands if b.id in done), default=None)


def _places(plan: Plan, field: Field, now: float) -> list[_Place]:
    """The field now, and after each band that is left; both halves of one are done together."""
    given = plan.inputs
    floor = Floor(given.floor.rooms, given.openings, given.fixtures, given.saw_cuts)
    world = build_world(floor, given.exits)
    pieces = pieces_of(world, field)
    inner = [s for s in world.seams if {s.a, s.b} <= pieces and s.kind in HIDING]
    borders = borders_of(world, field, pieces)
    done = bands_done(plan)
    first = sum(band.id in done for band in field.bands)
    places = []
    for count in range(first, len(field.bands) + 1):
        if first < count < len(field.bands) and begun_together(*field.bands[count - 1 : count + 1]):
            continue  # the other half is in hand
        fronts = [b.line for b in borders if (b.far < count) != (b.near < count)]
        front = shapely.union_all(fronts)
        on = [seam for seam in inner if _on(front, seam)]
        bare = shapely.difference(front, shapely.union_all([_about(seam) for seam in inner]))
        lines = tuple(on) if count < len(field.bands) else (exit_of(world, field, pieces),)
        at = max(now, *(band.end_min for band in field.bands[:count]))
        places.append(_Place(field.bands[first:count], at, bare, lines))
    return places


def _about(seam: Seam) -> BaseGeometry:
    return seam.chord.buffer(HIDDEN_M)


def _on(front: BaseGeometry, seam: Seam) -> bool:
    return bool(shapely.intersection(front, _about(seam)).length > seam.chord.length / 2)


def _stop_at(
    plan: Plan,
    field: Field,
    place: _Place,
    now: float,
    *,
    remains: tuple[str, ...],
    later: _Place | None = None,
) -> StopAt:
    seam = place.lines[0] if place.lines else None
    bare = place.bare.length
    middle = None
    if not place.hidden:
        point = shapely.point_on_surface(place.bare)
        middle = (round(float(point.x), 2), round(float(point.y), 2))
    fills = [r for r in field.refills if now < r.at_min + r.minutes <= place.at_min]
    return StopAt(
        how="line" if place.hidden else "feather",
        field=field.id,
        line=seam.id if seam is not None and place.hidden else "",
        kind=str(seam.kind) if seam is not None and place.hidden else "",
        bands=tuple(band.id for band in place.bands),
        minutes=round(place.at_min - now, 2),
        litres=round(sum(band.litres for band in place.bands), 2),
        fills=len(fills),
        seam_m=0.0 if place.hidden else round(bare, 2),
        room=_room_of(plan, place.bands[-1] if place.bands else _last(plan, field)),
        at=middle,
        remains=remains,
        then_line=later.lines[0].id if later is not None and later.lines else "",
        then_min=None if later is None else round(later.at_min - now, 2),
    )


def _last(plan: Plan, field: Field) -> Band:
    done = bands_done(plan)
    return [band for band in field.bands if band.id in done][-1]


def _room_of(plan: Plan, band: Band) -> str:
    """The room that most of a band lies in."""
    shape = band.polygon.shape
    rooms = plan.inputs.floor.rooms
    return max(rooms, key=lambda room: room.polygon.shape.intersection(shape).area).id


def _remains(plan: Plan) -> tuple[str, ...]:
    """Rooms of the coat in hand in which there is floor still to do."""
    done = bands_done(plan)
    coat = plan.so_far.coat if plan.so_far is not None else ""
    own = [field for field in plan.fields if field.coat == coat]
    open_ = [field for field in own if any(band.id not in done for band in field.bands)]
    return tuple(dict.fromkeys(room for field in open_ for room in field.rooms))


def _without(plan: Plan, field: Field, place: _Place) -> tuple[str, ...]:
    """What remains once the field has come to this place."""
    done = bands_done(plan) | {band.id for band in place.bands}
    rooms = [
        _room_of(plan, band)
        for one in plan.fields
        if one.coat == field.coat
        for band in one.bands
        if band.id not in done
    ]
    return tuple(dict.fromkeys(rooms))
