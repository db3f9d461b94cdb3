"""What a phone carries of a plan so that it can go on all day without signal. Pure.

Plain values, small: shapes in whole centimetres and each only once, minutes and litres as the plan
has them. Nothing is reckoned here that the plan does not say.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import dist
from typing import Any

from farwall.facts.fits_crew import may_begin

Json = dict[str, Any]
SHEET_VERSION = 1
_HAIR_MIN = 0.01
_WAITS = frozenset({"dry to recoat", "dry to neutralise"})
"""The waits of a spraying day; the later ones are no matter of a phone on the slab."""
_FACTORS = (1.0,)
"""Of the looks a phone carries those for a slab as planned; the book knows the others."""
_KINDS = {"cased": "opening", "wide": "opening", "outside": "outside door"}


def sheet_of(
    document: Mapping[str, Any], job: str, *, wishes: object = None, washing: Json | None = None
) -> Json:
    """The sheet of a plan (`plan.json`) for a job of that id.

    Keys: `rooms` labels by id; `fields` with number `no` in the coat, `low` [min] that an edge
    lives to be safe, and `bands` as rows of id, sprayer, start [min], end [min], age of the edge
    met [min], litres, number of its shape, and `cannot` where it must be planned again; `fills`
    with the band before which they come and the door nearest to them; `looks` into the last
    fields; `shapes` rings [cm]; `walls` rings [cm] by room; `doors` [cm]; `washing` as
    `slab.washing` has it, where it is told.
    """
    shapes = _Shapes()
    inputs = document["inputs"]
    rooms = {room["id"]: room.get("name") or room["id"] for room in inputs["floor"]["rooms"]}
    fields = [_field(document, one, shapes) for one in document["fields"]]
    return {
        "version": SHEET_VERSION, "id": job, "job": document["job"] or job,
        "starts_at": document["starts_at"], "inputs_hash": document["inputs_hash"],
        "rooms": rooms, "tank_l": inputs["tools"]["tank_l"], "helper": inputs["crew"]["helper"],
        "coats": [_coat(document, one) for one in inputs["coats"]],
        "fields": fields,
        "fills": _fills(document, rooms),
        "mixes": [_mix(one) for one in document["mixes"]],
        "looks": [_look(one) for one in document.get("looks", ())],
        "clocks": [
            {key: one[key] for key in ("coat", "name", "low_min", "likely_min", "high_min", "rank")}
            for one in document["clocks"]
            if one["name"] in _WAITS
        ],
        "shapes": shapes.rings,
        "walls": {room["id"]: _ring(room["polygon"]) for room in inputs["floor"]["rooms"]},
        "doors": [{"rooms": one["rooms"], "line": _cm(one["line"])} for one in inputs["openings"]],
        **({"washing": washing} if washing is not None else {}),
        **_wished(wishes),
    }  # fmt: skip


def _wished(wishes: object) -> Json:
    """Units and language, where they are told; English is the default, which tells of no choice."""
    found = {key: getattr(wishes, key, "") for key in ("units", "language")}
    return {key: told for key, told in found.items() if told and (key, told) != ("language", "en")}


def _coat(document: Mapping[str, Any], coat: Mapping[str, Any]) -> Json:
    """A coat with the name of its stain, where the job has one other than its id."""
    name = document.get("stain_names", {}).get(coat["stain"], coat["stain"])
    called = {"stain_name": name} if name != coat["stain"] else {}
    return {key: coat[key] for key in ("id", "stain", "cut")} | called


class _Shapes:
    """Each shape once: coats are sprayed over the same bands."""

    def __init__(self) -> None:
        self.rings: list[list[int]] = []
        self._known: dict[tuple[int, ...], int] = {}

    def number(self, polygon: Mapping[str, Any]) -> int:
        ring = _ring(polygon)
        key = tuple(ring)
        if key not in self._known:
            self._known[key] = len(self.rings)
            self.rings.append(ring)
        return self._known[key]


def _ring(polygon: Mapping[str, Any]) -> list[int]:
    """The outer ring, x and y by turns, without its repeated end."""
    return _cm(polygon["coordinates"][0][:-1])


def _cm(points: Sequence[Sequence[float]]) -> list[int]:
    return [round(value * 100) for point in points for value in point[:2]]


def _field(document: Mapping[str, Any], field: Mapping[str, Any], shapes: _Shapes) -> Json:
    own = sorted((f for f in document["fields"] if f["coat"] == field["coat"]), key=_order)
    return {
        "id": field["id"], "coat": field["coat"], "no": own.index(field) + 1,
        "rooms": field["rooms"], "start": field["start_min"], "end": field["end_min"],
        "low": field["open_time_min"]["low"],
        "bands": [
            [
                band["id"], band["sprayer"], band["start_min"], band["end_min"],
                band["edge_age_min"], band["litres"], shapes.number(band["polygon"]),
            ]
            for band in field["bands"]
        ],
        **({} if _fits(document, field) else {"cannot": True}),
    }  # fmt: skip


def _fits(document: Mapping[str, Any], field: Mapping[str, Any]) -> bool:
    """Whether this crew may spray the field as it stands, as the run sheet has it."""
    crew = document["inputs"]["crew"]
    alive = field["peak_age_min"] <= field["open_time_min"]["low"]
    return may_begin(
        field["verdict"], helper=crew["helper"], sprayers=crew["sprayers"], edge_lives=alive
    )


def _order(field: Mapping[str, Any]) -> int:
    return int(field["order"])


def _fills(document: Mapping[str, Any], rooms: Mapping[str, str]) -> list[Json]:
    """All fills in their order, each with the band that follows it and what the tank then holds."""
    found: list[Json] = []
    inputs = document["inputs"]
    levels: dict[str, float] = {}
    for field in sorted(document["fields"], key=lambda one: float(one["start_min"])):
        before = 0.0
        for fill in sorted(field["refills"], key=lambda one: float(one["at_min"])):
            coat, at = field["coat"], fill["at_min"] + fill["minutes"]
            used = sum(b["litres"] for b in field["bands"] if b["end_min"] <= at + _HAIR_MIN)
            tank = levels.get(coat, 0.0) - (used - before) + fill["litres"]
            levels[coat], before = tank, used
            after = [b for b in field["bands"] if b["end_min"] > at + _HAIR_MIN]
            band = min(after, key=lambda b: float(b["start_min"]), default=field["bands"][-1])
            found.append({
                "coat": coat, "band": band["id"], "at": fill["at_min"],
                "minutes": fill["minutes"], "litres": fill["litres"], "by": fill["by"],
                **_door(fill["at"], field, inputs, rooms),
                "tank": round(tank, 2) if inputs["crew"]["sprayers"] == 1 else None,
            })  # fmt: skip
        litres = sum(b["litres"] for b in field["bands"])
        levels[field["coat"]] = levels.get(field["coat"], 0.0) - (litres - before)
    return found


def _door(
    at: Sequence[float], field: Mapping[str, Any], inputs: Mapping[str, Any],
    rooms: Mapping[str, str],
) -> Json:  # fmt: skip
    """The opening of the field's rooms that is nearest to a place: in words, and what they say."""
    own = [one for one in inputs["openings"] if set(one["rooms"]) & set(field["rooms"])]
    if not own:
        return {"door": "where the sprayer stands", "way": [], "kind": ""}
    near = min(own, key=lambda one: dist(at, _middle(one["line"])))
    here = [rooms.get(one, one) for one in dict.fromkeys(near["rooms"])]
    kind = _KINDS.get(near["kind"], "door")
    words = f"{here[0]}, {kind}" if len(here) == 1 else f"{here[0]}–{here[1]} {kind}"
    return {"door": words, "way": here[:2], "kind": kind}


def _middle(line: Sequence[Sequence[float]]) -> tuple[float, float]:
    return (line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2


def _mix(mix: Mapping[str, Any]) -> Json:
    keys = ("id", "coat", "cut", "stain_l", "water_l", "acid_l")
    before = mix["fields"][0] if mix["fields"] else ""
    return {
        **{key: mix[key] for key in keys},
        "before": before,
        **({"before_band": mix["before_band"]} if mix.get("before_band") else {}),
    }


def _look(look: Mapping[str, Any]) -> Json:
    """A look into a field: what it is begun on, what goes on, then left and mix by turns [L]."""
    ifs = [
        [
            round(one["begin_l"], 1),
            round(one["go_on_l"], 1),
            *[round(row[key], 1) for row in one["rows"] for key in ("left_l", "mix_l")],
        ]
        for one in look["ifs"]
        if one["factor"] in _FACTORS
    ]
    keys = ("coat", "field", "band", "after")
    return {**{key: look[key] for key in keys}, "at": look["at_min"], "ifs": ifs}
