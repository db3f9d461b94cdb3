"""`shut-in`: somebody on the floor without a dry way to an exit."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.nouns import (
    AREA_M2,
    CLEAR_M,
    PLACE_M,
    TIME_MIN,
    Band,
    Fault,
    Field,
    PlanRead,
)
from farwall.spray.check.people import Person
from farwall.spray.check.wet import dry_moments
from farwall.spray.check.world import World

DRIES, BEGINS, ASKS = 0, 1, 2
"""Kinds of events, in the order in which they count at one moment."""


@dataclass(frozen=True, eq=False)
class _Event:
    at_min: float
    kind: int
    coat: str
    band: Band | None


def shut_in(plan: PlanRead, world: World, people: tuple[Person, ...]) -> Iterator[Fault]:
    """Everybody's way out at the end of each band and of each coat, and each field's exit."""
    yield from _people_shut_in(plan, world, people)
    if plan.so_far is not None:
        yield from closed_in(plan, world)
    for field in plan.fields:
        yield from _exit_of(field, plan)


def _people_shut_in(plan: PlanRead, world: World, people: tuple[Person, ...]) -> Iterator[Fault]:
    ground = shapely.buffer(world.ground, -5 * PLACE_M)
    shapely.prepare(ground)
    way = _leading_out(world.free, ground)
    wet: list[Band] = []
    inside: set[str] = set()
    for event in _events(plan):
        if event.kind == BEGINS and event.band is not None:
            wet.append(event.band)
            footing = shapely.buffer(event.band.shape, CLEAR_M)
            way = _leading_out(shapely.difference(way, footing), ground)
        elif event.kind == DRIES:
            wet = [band for band in wet if band.coat != event.coat]
            footing = shapely.buffer(shapely.union_all([band.shape for band in wet]), CLEAR_M)
            way = _leading_out(shapely.difference(world.free, footing), ground)
        else:
            stuck = [person for person in people if not _is_on(way, person, event.at_min)]
            yield from (
                _fault(person, event, plan, world) for person in stuck if person.who not in inside
            )
            inside = {person.who for person in stuck}


def closed_in(plan: PlanRead, world: World) -> Iterator[Fault]:
    """`shut-in` of whoever stands in a closed room, told once a room."""
    ground = shapely.buffer(world.ground, -5 * PLACE_M)
    for closed in plan.so_far.closed if plan.so_far else ():
        room = world.floors.get(closed.room)
        if room is None:
            continue
        dry = dry_moments(plan)
        since = plan.so_far.at_min if plan.so_far else 0.0
        wet: list[Band] = []
        stood = True  # before anything is wet there is a way out
        for band in plan.bands:
            if band.begins >= closed.until_min - TIME_MIN:
                break
            wet = [b for b in wet if dry[b.coat] > band.begins] + [band]
            footing = shapely.buffer(shapely.union_all([b.shape for b in wet]), CLEAR_M)
            way = _leading_out(shapely.difference(world.free, footing), ground)
            out = float(shapely.intersection(way, room).area) > AREA_M2
            if band.begins < since - TIME_MIN:
                stood = out
            elif not out and stood:
                what = f"At {band.begins:.2f} min band {band.id} closes the last dry way out of "
                what += f"{closed.room}, where somebody stands."
                yield Fault("shut-in", band.field, band.begins, what)
                break


def _events(plan: PlanRead) -> list[_Event]:
    bands = plan.bands
    events = [_Event(band.begins, BEGINS, band.coat, band) for band in bands]
    events += [_Event(band.ends, ASKS, band.coat, band) for band in bands]
    events += [
        _Event(minute, DRIES, coat, None)
        for coat, minute in dry_moments(plan).items()
        if np.isfinite(minute)
    ]
    events += [_Event(_end_of(plan, coat), ASKS, coat, None) for coat in {b.coat for b in bands}]
    return sorted(events, key=lambda event: (event.at_min, event.kind))


def _end_of(plan: PlanRead, coat: str) -> float:
    """When the last band or walk of a coat is done."""
    fields = [field for field in plan.fields if field.coat == coat]
    ends = [band.ends for field in fields for band in field.bands]
    ends += [float(walk.path[:, 2].max()) for field in fields for walk in field.walks]
    return max(ends)


def _leading_out(free: BaseGeometry, ground: BaseGeometry) -> BaseGeometry:
    """The parts of free ground that reach the outside."""
    parts = shapely.get_parts(free)
    return shapely.MultiPolygon(parts[shapely.intersects(ground, parts)].tolist())


def _is_on(way: BaseGeometry, person: Person, minute: float) -> bool:
    with np.errstate(divide="ignore"):  # the library divides by the length of legs that have none
        return bool(shapely.dwithin(way, shapely.Point(person.at(minute)), PLACE_M))


def _fault(person: Person, event: _Event, plan: PlanRead, world: World) -> Fault:
    x, y = person.at(event.at_min)
    fields = [field for field in plan.fields if field.coat == event.coat]
    field = event.band.field if event.band else max(fields, key=lambda f: f.end_min).id
    when = f"when band {event.band.id} is done" if event.band else f"when coat {event.coat} is done"
    return Fault(
        "shut-in",
        field,
        event.at_min,
        f"At {event.at_min:.2f} min, {when}, the {person.who} stands {world.place(x, y)} at "
        f"({x:.2f}, {y:.2f}) and has no dry way to an exit.",
    )


def _exit_of(field: Field, plan: PlanRead) -> Iterator[Fault]:
    """A field's `exit` is a way out, an opening or a saw cut of its own rooms."""
    house = plan.house
    openings = {opening.id: opening for opening in house.openings}
    used = {exit_.opening for exit_ in house.exits}
    exits = {exit_.id: exit_.opening for exit_ in house.exits}
    opening = openings.get(exits.get(field.exit, field.exit))
    if opening is None:
        if field.exit in {cut.id for cut in house.saw_cuts if cut.id}:
            return
        what = f"Field {field.id} leaves by {field.exit!r}, and the floor has no such way out."
        yield Fault("shut-in", field.id, field.end_min, what)
    elif len(opening.rooms) < 2 and opening.id not in used:
        what = f"Field {field.id} leaves by opening {opening.id}, which is not one of the exits."
        yield Fault("shut-in", field.id, field.end_min, what)
    elif not set(opening.rooms) & set(field.rooms):
        what = f"Field {field.id} leaves by opening {opening.id}, which is in none of its rooms."
        yield Fault("edited", field.id, field.end_min, what)
