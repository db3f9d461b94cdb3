"""A preview in words: the verdict first, the tightest edge with its age, each room's own."""

from __future__ import annotations

from typing import Any

from farwall.papers.words import listed
from farwall.phrasebook import told as in_language
from farwall.web.words import said

Json = dict[str, Any]


def preview_said(told: Json, drawn: Json) -> Json:
    """What the screen shows: `head`, `lines`, and the age of its edge under each room's name."""
    if told.get("passed") or told.get("waiting"):
        waits: Json = {"head": said("draw-preview-waits"), "lines": [], "no": False, "rooms": {}}
        return {**told, **(waits if told.get("waiting") else {})}
    if told["no"]:
        head = said("draw-preview-none")
        lines = [in_language(one) for one in told["no"][:4]]
        return {"head": head, "lines": lines, "no": True, "rooms": {}}
    names = {room["id"]: room.get("name") or room["id"] for room in drawn["rooms"]}
    fields = told["fields"]
    again = [one for one in fields if one["how"] == "again"]
    known = [one for one in fields if one["how"] != "again"]
    late = [
        one for one in known if one["verdict"] not in {"fits", "helper"} or one["spare_min"] < 0
    ]
    lines = []
    if again:
        lines.append(said("draw-preview-again", rooms=_rooms(again, names)))
    tightest = min(late or known, key=lambda one: one["spare_min"], default=None)
    if tightest is not None:
        lines.append(_edge(tightest, names))
    lines.append(said("draw-preview-rank"))
    if late:
        head = said("draw-preview-late", rooms=_rooms(late, names))
    elif again:
        head = said("draw-preview-unsure")
    else:
        head = said("draw-preview-fits" if told["fits"] else "draw-preview-unsure")
    return {"head": head, "lines": lines, "no": bool(late or again), "rooms": _each(known)}


def _edge(one: Json, names: dict[str, str]) -> str:
    key = "draw-preview-edge-kept" if one["how"] == "kept" else "draw-preview-edge"
    return said(
        key, rooms=_rooms([one], names), age=f"{one['age_min']:.1f}", safe=f"{one['safe_min']:.1f}",
        lives=f"{one['low_min']:.1f}",
    )  # fmt: skip


def _rooms(fields: list[Json], names: dict[str, str]) -> str:
    rooms = dict.fromkeys(names.get(room, room) for one in fields for room in one["rooms"])
    return listed(list(rooms))


def _each(fields: list[Json]) -> dict[str, Json]:
    """By room the tightest of its coats: `4.5 of 7.0 min`, by the safe age."""
    worst: dict[str, Json] = {}
    for one in fields:
        for room in one["rooms"]:
            if room not in worst or one["spare_min"] < worst[room]["spare_min"]:
                worst[room] = one
    return {
        room: {
            "text": said(
                "draw-room-age", age=f"{one['safe_min']:.1f}", lives=f"{one['low_min']:.1f}"
            ),
            "no": one["spare_min"] < 0,
        }
        for room, one in worst.items()
    }  # fmt: skip
