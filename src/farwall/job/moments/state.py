"""The state of a floor at one minute of the plan, read from the plan alone."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Band, Field, Plan, TimedPoint
from farwall.floor.geometry import Point
from farwall.job.moments.edge import LiveEdge, live_edge_at
from farwall.job.moments.passing import sprayed_part
from farwall.nouns import dataclass


@dataclass(frozen=True)
class WetPart:
    """Sprayed floor of the field at hand [m] and how long ago its middle was sprayed."""

    shape: BaseGeometry
    age_min: float


@dataclass(frozen=True)
class Person:
    """Where somebody is. `ahead` is a place on the band being sprayed, None when walking."""

    who: str
    at: Point
    ahead: Point | None


@dataclass(frozen=True)
class Moment:
    """One coat at one minute.

    `field` is the field at hand, or the next one when the sprayer is between
    two; `wet` is its sprayed floor, `done` the fields of the coat that are
    finished. `tank_l` is what the first sprayer carries, `sprayed_share` the
    part of the coat's floor that is sprayed.
    """

    minute: float
    coat: str
    field: Field | None
    wet: tuple[WetPart, ...]
    done: tuple[Field, ...]
    edge: LiveEdge | None
    people: tuple[Person, ...]
    tank_l: float
    sprayed_share: float


def moment_at(plan: Plan, coat: str, minute: float) -> Moment:
    """The state of `coat` at `minute` after the plan's start. Raises KeyError for another coat."""
    fields = sorted((f for f in plan.fields if f.coat == coat), key=lambda f: f.order)
    if not fields:
        raise KeyError(coat)
    done = tuple(field for field in fields if field.end_min <= minute)
    at_hand = next((field for field in fields if field.end_min > minute), None)
    begun = [band for band in at_hand.bands if band.start_min < minute] if at_hand else []
    sprayed = [(band, sprayed_part(band, minute)) for band in begun]
    wet = tuple(
        WetPart(shape, max(0.0, minute - (band.start_min + min(band.end_min, minute)) / 2))
        for band, shape in sprayed
        if not shape.is_empty
    )
    floor = sum(field.area_m2 for field in fields)
    area = sum(field.area_m2 for field in done) + sum(part.shape.area for part in wet)
    return Moment(
        minute=minute,
        coat=coat,
        field=at_hand,
        wet=wet,
        done=done,
        edge=live_edge_at(at_hand, minute, sprayed) if at_hand is not None else None,
        people=_people(fields, minute),
        tank_l=round(_tank_l(plan, minute), 4),
        sprayed_share=min(1.0, area / floor) if floor else 0.0,
    )


def _people(fields: list[Field], minute: float) -> tuple[Person, ...]:
    """Everybody whose place the plan tells at this minute; the helper only while on a walk."""
    places: dict[str, tuple[float, Person]] = {}
    for field in fields:
        for band in field.bands:
            who = "sprayer" if band.sprayer == 1 else f"sprayer {band.sprayer}"
            _keep(places, who, band.path, minute, band)
        for walk in field.walks:
            _keep(places, walk.who, walk.path, minute, None)
    return tuple(
        person for _, (told, person) in sorted(places.items())
        if not person.who.startswith("helper") or told >= minute
    )  # fmt: skip


def _keep(
    places: dict[str, tuple[float, Person]],
    who: str,
    path: tuple[TimedPoint, ...],
    minute: float,
    band: Band | None,
) -> None:
    """The latest thing begun by the minute tells where somebody is: on its path, or at its end."""
    begins, ends = path[0][2], path[-1][2]
    if begins > minute or (who in places and places[who][0] > ends):
        return
    at = _on(path, minute)
    ahead = None
    if band is not None and minute < band.end_min:
        near = shapely.shortest_line(shapely.Point(at), band.polygon.shape)
        ahead = (float(near.coords[-1][0]), float(near.coords[-1][1]))
    places[who] = (ends, Person(who, at, ahead))


def _on(path: tuple[TimedPoint, ...], minute: float) -> Point:
    x, y, t = np.asarray(path).T
    return (float(np.interp(minute, t, x)), float(np.interp(minute, t, y)))


def _tank_l(plan: Plan, minute: float) -> float:
    """What the first sprayer's tank holds: all that was filled less all that was sprayed. [L]"""
    held = 0.0
    for field in plan.fields:
        held += sum(refill.litres for refill in field.refills if refill.at_min < minute)
        for band in field.bands:
            if band.sprayer == 1 and band.start_min < minute:
                taken = (minute - band.start_min) / max(band.end_min - band.start_min, 1e-9)
                held -= band.litres * min(1.0, taken)
    return max(0.0, held)
