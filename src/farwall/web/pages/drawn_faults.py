"""Faults of a drawn floor, each with its place on the floor and the thing that it is of."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Any

from farwall.errors import Mistake
from farwall.phrasebook import told as in_language
from farwall.web.pages.drawn_read import placed_at
from farwall.web.words import said

Json = dict[str, Any]
_PLACE = re.compile(r"^(?:floor\.)?(rooms|openings|fixtures|saw_cuts|exits)(?:\[(\d+)\])?")
_NEAR = re.compile(r"\((-?\d+(?:\.\d+)?), (-?\d+(?:\.\d+)?)\)")
_QUOTED = re.compile(r"“([^”]+)”")


def faults_told(mistakes: Iterable[Mistake], drawn: Json) -> list[Json]:
    """Each as `what` in words, the `thing` it is of and `at` [m] where that can be told.

    Beside them what is wrong with the sound part of the floor, which a reader that stumbles over
    an outline does not come to.
    """
    told = [_told(one, drawn) for one in dict.fromkeys(mistakes)]
    part = _sound_part(drawn)
    told += [_told(one, part) for one in _faults_of(part)]
    return list({_same_as(one): one for one in reversed(told)}.values())[::-1]


def _same_as(one: Json) -> tuple[str, str]:
    """What two tellings of one fault have in common."""
    return one["what"], one["where"] if one["elsewhere"] else ""


def _faults_of(part: Json) -> list[Mistake]:
    from pydantic import TypeAdapter, ValidationError

    from farwall.floor.faults import faults_of
    from farwall.floor.nouns import Exit, Floor

    try:
        floor = TypeAdapter(Floor).validate_python({k: v for k, v in part.items() if k != "exits"})
        exits = TypeAdapter(tuple[Exit, ...]).validate_python(part["exits"])
    except ValidationError:
        return []  # the reader has told what is no floor at all
    return faults_of(floor, exits)


def _sound_part(drawn: Json) -> Json:
    """The rooms and fixtures with a sound outline, and the openings between such rooms."""
    rooms = [one for one in drawn["rooms"] if _is_sound(one)]
    there = {one["id"] for one in rooms}
    lost = {one["id"] for one in drawn["rooms"]} - there
    openings = [one for one in drawn["openings"] if not lost & set(_texts(one.get("rooms")))]
    known = {one["id"] for one in openings}
    gone = {one["id"] for one in drawn["openings"]} - known
    return {
        **drawn,
        "rooms": rooms,
        "openings": openings,
        "fixtures": [one for one in drawn["fixtures"] if _is_sound(one)],
        "exits": [one for one in drawn["exits"] if not gone & set(_texts([one.get("opening")]))],
    }


def _texts(value: Any) -> list[str]:
    return [one for one in value if isinstance(one, str)] if isinstance(value, list) else []


def _is_sound(thing: Json) -> bool:
    import shapely

    from farwall.floor.geojson import polygon_from

    polygon = polygon_from(thing.get("polygon"))
    return polygon is not None and bool(shapely.is_valid(polygon.shape))


def _told(one: Mistake, drawn: Json) -> Json:
    things = list(_things(one, drawn))
    near = _NEAR.search(one.what)
    at = (float(near[1]), float(near[2])) if near else None
    if at is None and things:
        at = _between(things) or middle_of(*things[0], drawn)
    named = {"list": things[0][0], "id": things[0][1]["id"]} if things else None
    elsewhere = not _PLACE.match(one.where)
    told = {
        "what": in_language(one.what), "remedy": in_language(one.remedy), "where": one.where,
        "at": at, "thing": named,
        "elsewhere": elsewhere, "act": "", "act_told": "",
    }  # fmt: skip
    return told | _way_out(drawn) if one.where == "exits" and not drawn["exits"] else told


def _way_out(drawn: Json) -> Json:
    """What mends a floor without a way out, in the words of the drawing and not of a job file."""
    outside = [one for one in drawn["openings"] if one.get("kind") == "outside"]
    if not outside:
        return {"remedy": said("draw-fault-no-door"), "act": "way-out",
                "act_told": said("draw-fault-put-door")}  # fmt: skip
    return {
        "remedy": said("draw-fault-no-exit"), "act": "way-out",
        "act_told": said("draw-fault-set-exit" if len(outside) == 1 else "draw-fault-widest"),
        "at": middle_of("openings", outside[0], drawn),
        "thing": {"list": "openings", "id": outside[0]["id"]},
    }  # fmt: skip


def _between(things: list[tuple[str, Json]]) -> tuple[float, float] | None:
    """About the middle of what two rooms have in common; None where that is nothing."""
    from farwall.floor.geojson import polygon_from

    read = [polygon_from(thing.get("polygon")) for name, thing in things if name == "rooms"]
    if len(read) != 2 or read[0] is None or read[1] is None:
        return None
    shared = read[0].shape.intersection(read[1].shape)
    if shared.is_empty:
        return None
    point = shared.representative_point()
    return round(float(point.x), 3), round(float(point.y), 3)


def _things(one: Mistake, drawn: Json) -> Iterable[tuple[str, Json]]:
    """The things a mistake is of, by its place, else by the ids that it names."""
    place = _PLACE.match(one.where)
    if place is None:
        return
    name, number = place[1], place[2]
    if number is not None and int(number) < len(drawn[name]):
        yield name, drawn[name][int(number)]
        return
    for quoted in _QUOTED.findall(one.what):
        for thing in drawn[name]:
            if thing["id"] == quoted:
                yield name, thing


def middle_of(name: str, thing: Json, drawn: Json) -> tuple[float, float] | None:
    """About the middle of a thing [m]; None where it has no sound shape."""
    if name == "exits":
        found = next((o for o in drawn["openings"] if o["id"] == thing.get("opening")), None)
        return None if found is None else middle_of("openings", found, drawn)
    if name in {"openings", "saw_cuts"}:
        points = thing.get("line")
    else:
        polygon = thing.get("polygon")
        rings = polygon.get("coordinates") if isinstance(polygon, dict) else None
        ring = rings[0] if isinstance(rings, list) and rings else None
        points = ring[:-1] if isinstance(ring, list) else None
    read = [placed_at(point) for point in points] if isinstance(points, list) else []
    sound = [point for point in read if point is not None]
    if not sound:
        return None
    xs, ys = [x for x, _ in sound], [y for _, y in sound]
    return round((min(xs) + max(xs)) / 2, 3), round((min(ys) + max(ys)) / 2, 3)


def windows_off(windows: list[Json], drawn: Json) -> int:
    """How many windows no longer lie in a wall: they stay where they are when walls are moved."""
    import shapely

    from farwall.floor.geojson import polygon_from
    from farwall.floor.thresholds import DEEPEST_WALL_M

    read = [polygon_from(one.get("polygon")) for one in drawn["rooms"]]
    walls = shapely.union_all([one.shape.boundary for one in read if one is not None])
    lines = [shapely.LineString(one["line"]) for one in windows]
    return sum(walls.distance(line.centroid) > DEEPEST_WALL_M for line in lines)
