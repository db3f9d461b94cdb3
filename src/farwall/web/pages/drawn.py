"""The floor of a job as the drawing screen has it, and what was drawn put back into the job.

What is drawn is plain values: `rooms`, `openings`, `fixtures`, `saw_cuts`, `exits`, in a job's own
keys, doorways parted from the rooms, every thing with an id. All else of the job stays as it is.
"""

from __future__ import annotations

import copy
from collections.abc import Iterable, Mapping
from typing import Any, cast

from farwall.facts.job import Crew, Job
from farwall.facts.plain import plain
from farwall.floor.geojson import floor_collection
from farwall.floor.nouns import Exit, Floor
from farwall.floor.parted import part_thresholds

Json = dict[str, Any]
LISTS = ("rooms", "openings", "fixtures", "saw_cuts")
KEYS: dict[str, frozenset[str]] = {
    "rooms": frozenset({"id", "name", "storey", "polygon"}),
    "openings": frozenset({"id", "kind", "line", "rooms", "width_m", "threshold"}),
    "fixtures": frozenset({"id", "kind", "polygon"}),
    "saw_cuts": frozenset({"id", "line"}),
    "exits": frozenset({"id", "opening"}),
}
"""The keys that this screen may change; all others of a thing stay."""
_TWINS = {"openings": ("width_ft", "width_in")}
"""Other ways to say what this screen says; they go once it has said it."""


def drawn_of(job: Job) -> Json:
    """The floor of a job as this screen draws it."""
    return _drawn(part_thresholds(job.floor), job.exits)


def drawn_floor(floor: Floor, exits: Iterable[Exit] = ()) -> Json:
    """The same of a floor that is no job yet."""
    return _drawn(part_thresholds(floor), tuple(exits))


def empty_drawn() -> Json:
    """A floor without anything."""
    return {name: [] for name in (*LISTS, "exits")}


def fixed_of(floor: Floor) -> Json:
    """What is shown and not drawn here: windows."""
    return {"windows": cast("list[Json]", plain(floor.windows, omit_empty=True))}


def begun_facts(job_id: str, name: str) -> Json:
    """Facts of a house that is begun by drawing: no floor yet, all else by default, in writing."""
    from farwall.job.from_reading import written_out

    bare = Job(version=1, floor=Floor(()), exits=(), id=job_id, name=name, crew=Crew())
    told = cast("Json", plain(written_out(bare), omit_empty=True))
    return {"floor": {"rooms": []}, "exits": [], **told}


def with_drawn(facts: Mapping[str, Any], was: Json, now: Json) -> Json:
    """The facts with what was drawn; `was`: as the screen got it. Nothing is judged here.

    A thing that was not touched keeps what the job says of it to the letter.
    """
    changed = copy.deepcopy(dict(facts))
    floor = changed.get("floor")
    if isinstance(floor, dict) and floor.get("type") == "FeatureCollection":
        changed["floor"] = _collection(floor, now, with_exits="exits" not in changed)
    else:
        floor = changed.setdefault("floor", {})
        for name in LISTS:
            merged = _merged(name, _named(name, floor.get(name)), was[name], now[name])
            if merged or name in floor:
                floor[name] = merged
    if "exits" in changed or not _is_collection(changed["floor"]):
        changed["exits"] = _merged("exits", changed.get("exits") or [], was["exits"], now["exits"])
    return changed


def same(was: Json, now: Json) -> bool:
    """Whether nothing was drawn."""
    return all(was[name] == now[name] for name in (*LISTS, "exits"))


def _is_collection(floor: Any) -> bool:
    return isinstance(floor, dict) and floor.get("type") == "FeatureCollection"


def _drawn(floor: Floor, exits: tuple[Exit, ...]) -> Json:
    told = cast("Json", plain(floor, omit_empty=True))
    drawn: Json = {name: _named(name, told.get(name)) for name in LISTS}
    drawn["exits"] = plain(exits, omit_empty=True) or []
    return drawn


def _named(name: str, things: Any) -> list[Json]:
    """The things with ids: fixtures and cuts may lack one."""
    found = [dict(one) for one in things or [] if isinstance(one, dict)]
    taken = {one.get("id") for one in found}
    stem = {"fixtures": "fixture", "saw_cuts": "cut"}.get(name, name)
    number = 0
    for one in found:
        while not one.get("id"):
            number += 1
            if f"{stem}-{number}" not in taken:
                one["id"] = f"{stem}-{number}"
    return found


def _merged(name: str, raw: list[Json], was: list[Json], now: list[Json]) -> list[Json]:
    before = {one["id"]: one for one in was}
    there = {one.get("id"): one for one in raw}
    return [_thing(name, there.get(one["id"]), before.get(one["id"]), one) for one in now]


def _thing(name: str, raw: Json | None, was: Json | None, now: Json) -> Json:
    told = {
        key: value for key, value in now.items() if key in KEYS[name] and value not in (None, "")
    }
    if raw is None:
        return told
    ours = {key: value for key, value in raw.items() if key in KEYS[name]}
    if was is not None and was == now and _alike(ours, was):
        return raw
    kept = {key: value for key, value in raw.items() if key not in KEYS[name]}
    for twin in _TWINS.get(name, ()):
        kept.pop(twin, None)
    return {**kept, **told}


def _alike(raw: Json, was: Json) -> bool:
    """Whether the screen has a thing as the job has it; what that leaves out may be filled in."""
    return all(was.get(key) == value for key, value in raw.items()) and (
        "threshold" in raw or "threshold" not in was
    )


def _collection(floor: Json, now: Json, *, with_exits: bool) -> Json:
    """A floor that the job has as GeoJSON: what was drawn, foreign members and windows kept."""
    from pydantic import ValidationError

    from farwall.readers.job_json import adapter

    part = {"version": 1, "floor": {k: now[k] for k in LISTS}, "exits": now["exits"]}
    try:
        job = adapter().validate_python(part)
    except ValidationError:  # the reader of jobs says what is wrong with it
        return {key: now[key] for key in LISTS}
    exits = job.exits if with_exits else ()
    made = floor_collection(job.floor, exits)["features"]
    old = [one for one in floor.get("features", []) if isinstance(one, dict)]
    by_id = {_key(one): one for one in old}
    kept = [one for one in old if (one.get("properties") or {}).get("kind") == "window"]
    features = [_feature(by_id.get(_key(one)), one) for one in made]
    return {**floor, "features": [*features, *kept]}


def _feature(old: Json | None, new: Json) -> Json:
    if old is None:
        return new
    properties = {**(old.get("properties") or {}), **new["properties"]}
    return {**old, **new, "properties": properties}


def _key(feature: Json) -> tuple[str, str]:
    properties = feature.get("properties") or {}
    return str(properties.get("kind")), str(properties.get("id"))
