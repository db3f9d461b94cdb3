"""Rooms joined or split on the drawing screen; the sums are the floor's own (`floor.as_one`)."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

from fastapi import Request, Response
from fastapi.responses import JSONResponse

from farwall.errors import Mistake, Refused
from farwall.floor.nouns import Floor
from farwall.phrasebook import told
from farwall.web.pages.drawn import LISTS, drawn_floor
from farwall.web.pages.drawn_read import MOST_DRAWN_BYTES, drawn_from, placed_at
from farwall.web.pages.guard import form_of, text_of
from farwall.web.words import said

Json = dict[str, Any]
_ROOM = 200_000


async def rooms_changed(request: Request) -> Response:
    """The drawn floor with two rooms as one (`join`), or one as two (`split`); nothing is kept."""
    form = await form_of(request, MOST_DRAWN_BYTES + _ROOM)
    try:
        drawn = drawn_from(str(form.get("drawn", "")))
        first, second = text_of(form, "first"), text_of(form, "second")
        if text_of(form, "act") == "join":
            now, words = joined(drawn, first, second), said("draw-joined")
        else:
            now, words = split(drawn, first, text_of(form, "line")), said("draw-split-done")
    except Refused as error:
        words = " ".join(told(str(one)) for one in error.mistakes)
        return JSONResponse({"said": words}, 422)
    return JSONResponse({"drawn": now, "said": words})


def joined(drawn: Json, first: str, second: str) -> Json:
    """What is drawn with two rooms as one. Raises Refused."""
    from farwall.floor.as_one import rooms_joined

    return _changed(drawn, lambda floor: rooms_joined(floor, first, second))


def split(drawn: Json, room: str, line: str) -> Json:
    """What is drawn with a room cut along a line, two points as JSON. Raises Refused."""
    from farwall.floor.as_one import room_split

    try:
        ends = json.loads(line)
    except (ValueError, RecursionError):
        ends = None
    points = [placed_at(end) for end in ends] if isinstance(ends, list) else []
    if len(points) != 2 or points[0] is None or points[1] is None:
        raise Refused(Mistake("line", "This is no line.", "Set its two ends."))
    cut = (points[0], points[1])
    return _changed(drawn, lambda floor: room_split(floor, room, cut))


def _changed(drawn: Json, change: Callable[[Floor], Floor]) -> Json:
    """The drawn values after a change; a thing that it does not touch stays to the letter."""
    floor = _floor(drawn)
    now = change(floor)
    exits = {"exits": drawn["exits"]}
    before, after = drawn_floor(floor, ()), drawn_floor(now, ())
    result: Json = {}
    for name in LISTS:
        was = {one["id"]: one for one in before[name]}
        own = {one["id"]: one for one in drawn[name]}
        result[name] = [
            own[one["id"]] if was.get(one["id"]) == one and one["id"] in own else one
            for one in after[name]
        ]
    return {**result, **exits}


def _floor(drawn: Json) -> Floor:
    from pydantic import TypeAdapter, ValidationError

    try:
        floor = TypeAdapter(Floor).validate_python({name: drawn[name] for name in LISTS})
    except ValidationError:
        what = "Something drawn is not whole yet."
        raise Refused(Mistake("", what, "Keep it first, and mend what is told.")) from None
    if not all(room.polygon.coordinates and room.polygon.shape.is_valid for room in floor.rooms):
        raise Refused(Mistake("", "The outline of a room crosses itself.", "Mend it first."))
    return floor
