"""Rooms, doors and lines in words, as people call them: their ids are a file's own."""

from __future__ import annotations

import math
from collections.abc import Sequence

import shapely

from farwall.facts.plan import Field, Plan
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor, Opening
from farwall.floor.short_labels import short_labels
from farwall.units import ft_from_m

_WORDS = {"door": "door", "cased": "cased opening", "wide": "wide opening"}


def way_words(plan: Plan, field: Field) -> str:
    """`the outside door of Hall`, `the door to Hall`, `the saw cut`; an id that leads nowhere
    stays as it is."""
    inputs = plan.inputs
    label = short_labels(inputs.floor.rooms)
    by_exit = {one.id: one.opening for one in inputs.exits}
    wanted = by_exit.get(field.exit, field.exit)
    opening = next((one for one in inputs.openings if one.id == wanted), None)
    if opening is None:
        cuts = {one.id for one in inputs.saw_cuts if one.id}
        return "the saw cut" if field.exit in cuts else field.exit
    if len(opening.rooms) == 1:
        return f"the outside door of {label[opening.rooms[0]]}"
    beyond = [room for room in opening.rooms if room not in field.rooms]
    if not beyond:
        return f"the door inside {label[opening.rooms[0]]}"
    word = "door" if opening.kind == "door" else "opening"
    return f"the {word} to {label[beyond[0]]}"


def seam_words(plan: Plan, name: str) -> str:
    """`seam_named` of a plan's floor."""
    inputs = plan.inputs
    return seam_named(Floor(inputs.floor.rooms, inputs.openings, (), inputs.saw_cuts), name)


def seam_named(floor: Floor, name: str) -> str:
    """`the door between Hall and Bath`, `the outside door of Hall`, `the saw cut`; an id of
    neither an opening nor a cut stays as it is."""
    opening = next((one for one in floor.openings if one.id == name), None)
    if opening is None:
        return "the saw cut" if any(one.id == name for one in floor.saw_cuts) else name
    label = short_labels(floor.rooms)
    rooms = [label[room] for room in dict.fromkeys(opening.rooms)]
    if opening.kind == "outside" or len(opening.rooms) == 1:
        return f"the outside door of {rooms[0]}"
    word = _WORDS.get(opening.kind, "opening")
    where = f"between {rooms[0]} and {rooms[1]}" if rooms[1:] else f"inside {rooms[0]}"
    return f"the {word} {where}"


def near_words(plan: Plan, room: str, at: Point) -> str:
    """`about 16 ft (5 m) from the door between Hall and Bath`: the way in that is nearest to a
    place of the room, the shortest way through the air; empty where the room has none."""
    openings = [one for one in plan.inputs.openings if room in one.rooms]
    if not openings:
        return ""
    away = {one.id: math.hypot(*_from_middle(one, at)) for one in openings}
    nearest = min(away, key=lambda name: (away[name], name))
    far_m = away[nearest]
    return f"about {ft_from_m(far_m):.0f} ft ({far_m:.1f} m) from {seam_words(plan, nearest)}"


def _from_middle(opening: Opening, at: Point) -> Point:
    (x0, y0), (x1, y1) = opening.line[0], opening.line[-1]
    return (at[0] - (x0 + x1) / 2, at[1] - (y0 + y1) / 2)


def rooms_text(plan: Plan, ids: Sequence[str]) -> str:
    """Rooms as people call them."""
    labels = {room.id: room.label for room in plan.inputs.floor.rooms}
    return ", ".join(labels.get(name, name) for name in ids)


def no_dry_way(plan: Plan, start: Point, end: Point) -> str:
    """`No dry way leads from Hall to Kitchen.`, by the rooms in which the two points lie."""
    labels = short_labels(plan.inputs.floor.rooms)
    here, there = (labels[_room_near(plan, point)] for point in (start, end))
    if here == there:
        return f"No dry way leads on through {here}."
    return f"No dry way leads from {here} to {there}."


def _room_near(plan: Plan, point: Point) -> str:
    at = shapely.Point(point)
    return min(plan.inputs.floor.rooms, key=lambda one: one.polygon.shape.distance(at)).id
