"""Faults of a drawn floor, each with its place on the floor and the thing that it is of."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Any

from farwall.errors import Mistake
from farwall.web.pages.drawn_read import placed_at

Json = dict[str, Any]
_PLACE = re.compile(r"^(?:floor\.)?(rooms|openings|fixtures|saw_cuts|exits)(?:\[(\d+)\])?")
_NEAR = re.compile(r"\((-?\d+(?:\.\d+)?), (-?\d+(?:\.\d+)?)\)")
_QUOTED = re.compile(r"“([^”]+)”")


def faults_told(mistakes: Iterable[Mistake], drawn: Json) -> list[Json]:
    """Each as `what` in words, the `thing` it is of and `at` [m] where that can be told."""
    return [_told(one, drawn) for one in dict.fromkeys(mistakes)]


def _told(one: Mistake, drawn: Json) -> Json:
    things = list(_things(one, drawn))
    near = _NEAR.search(one.what)
    at = (float(near[1]), float(near[2])) if near else None
    if at is None and things:
        at = middle_of(*things[0], drawn)
    named = {"list": things[0][0], "id": things[0][1]["id"]} if things else None
    elsewhere = not _PLACE.match(one.where)
    return {
        "what": one.what, "remedy": one.remedy, "where": one.where, "at": at, "thing": named,
        "elsewhere": elsewhere,
    }  # fmt: skip


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
        points = rings[0][:-1] if isinstance(rings, list) and rings and rings[0] else None
    read = [placed_at(point) for point in points] if isinstance(points, list) else []
    sound = [point for point in read if point is not None]
    if not sound:
        return None
    xs, ys = [x for x, _ in sound], [y for _, y in sound]
    return round((min(xs) + max(xs)) / 2, 3), round((min(ys) + max(ys)) / 2, 3)
