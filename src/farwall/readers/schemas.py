"""The published JSON Schemas (draft 2020-12) of a job and of a plan.

Made from the same nouns, bounds, twins and limits by which the files are
judged, so that the two cannot part ways. A schema cannot tell that an exit
names a door that is there; `read_job` can. Source: [json-schema].
"""

from __future__ import annotations

from dataclasses import is_dataclass
from itertools import combinations
from typing import Any, get_args

from farwall.facts.job import JOB_VERSION, Job
from farwall.facts.plan import PLAN_VERSION
from farwall.facts.so_far import SO_FAR_VERSION, SoFar
from farwall.facts.van import VAN_VERSION, Van
from farwall.facts.wares import WARES_VERSION, PriceList
from farwall.readers import job_json, plan_json, so_far, van_json, wares_json
from farwall.readers.job_limits import LIMITS
from farwall.readers.schema_words import words_for
from farwall.readers.shape import bare, keys_of
from farwall.readers.twins import TWINS, Twin

Schema = dict[str, Any]

DIALECT = "https://json-schema.org/draft/2020-12/schema"

_PATTERNS = {
    ("Coat", "cut"): {
        "pattern": r"^\s*([nN][eE][aA][tT]|\d{1,6}(\.\d{1,6})?\s*:\s*\d{1,6}(\.\d{1,6})?)\s*$"
    },
    ("Container", "price"): {"pattern": r"^\d[\d.]*$"},
    ("SealerContainer", "price"): {"pattern": r"^\d[\d.]*$"},
    ("Prices", "currency"): {"pattern": "^[A-Z]{3}$"},
}

_COLLECTION: Schema = {
    "type": "object",
    "description": "A GeoJSON FeatureCollection whose features carry our kinds, in metres.",
    "properties": {
        "type": {"const": "FeatureCollection", "description": "Always FeatureCollection."},
        "features": {"type": "array", "description": "Rooms, openings, exits and the rest."},
    },
    "required": ["type", "features"],
}


def job_schema() -> Schema:
    """The schema of `job.json`: no unknown keys, US twins allowed beside the SI keys."""
    schema = _dressed(job_json.adapter().json_schema(), "Farwall job", JOB_VERSION)
    for noun, part in _parts(schema, Job):
        _limit(noun, part)
        part["additionalProperties"] = False
        _add_twins(part, TWINS.get(noun, ()))
    floor = schema["properties"]["floor"]
    schema["properties"]["floor"] = {
        "description": floor.pop("description"),
        "anyOf": [floor, _COLLECTION],
    }
    return schema


def plan_schema() -> Schema:
    """The schema of `plan.json`. Its keys may grow, so that unknown ones are let by."""
    return _dressed(plan_json.adapter().json_schema(), "Farwall plan", PLAN_VERSION)


def so_far_schema() -> Schema:
    """The schema of a day so far: no unknown keys, gallons allowed beside litres."""
    schema = _dressed(so_far.adapter().json_schema(), "Farwall so-far", SO_FAR_VERSION)
    for noun, part in _parts(schema, SoFar):
        part["additionalProperties"] = False
        _add_twins(part, TWINS.get(noun, ()))
    return schema


def van_schema() -> Schema:
    """The schema of a van: no unknown keys, gallons allowed beside litres."""
    schema = _dressed(van_json.adapter().json_schema(), "Farwall van", VAN_VERSION)
    for noun, part in _parts(schema, Van):
        part["additionalProperties"] = False
        _add_twins(part, TWINS.get(noun, ()))
    return schema


def wares_schema() -> Schema:
    """The schema of a price list: no unknown keys."""
    schema = _dressed(wares_json.adapter().json_schema(), "Farwall wares", WARES_VERSION)
    for noun, part in _parts(schema, PriceList):
        part["additionalProperties"] = False
        _add_twins(part, TWINS.get(noun, ()))
    return schema


def _dressed(schema: Schema, title: str, version: int) -> Schema:
    root = schema.pop("title", title)
    body = schema.pop("properties")
    for name, part in {**schema.get("$defs", {}), root: {"properties": body}}.items():
        part.pop("title", None)
        for key, value in part.get("properties", {}).items():
            value.pop("title", None)
            value["description"] = words_for(name, key) or value.get("description", "")
            value.update(_PATTERNS.get((name, key), {}))
    head = {"$schema": DIALECT, "title": title, "version": version}
    return {**head, "description": schema.pop("description", ""), "properties": body, **schema}


def _parts(schema: Schema, root: type) -> list[tuple[type, Schema]]:
    """Every noun below `root` with its part of the schema."""
    nouns = {noun.__name__: noun for noun in _nouns(root)}
    found = [(nouns[name], part) for name, part in schema["$defs"].items() if name in nouns]
    return [(root, schema), *found]


def _nouns(root: type) -> set[type]:
    found: set[type] = set()
    waiting: list[Any] = list(keys_of(root).values())
    while waiting:
        hint = bare(waiting.pop())
        if isinstance(hint, type) and is_dataclass(hint):
            if hint not in found:
                found.add(hint)
                waiting += keys_of(hint).values()
        else:
            waiting += [part for part in get_args(hint) if not isinstance(part, str | int)]
    return found


def _numbers(part: Schema, key: str) -> Schema:
    """The piece of a property's schema that speaks of its number."""
    value: Schema = part["properties"][key]
    for choice in value.get("anyOf", ()):
        if choice.get("type") == "number":
            return choice  # type: ignore[no-any-return]
    return value


def _limit(noun: type, part: Schema) -> None:
    for (owner, key), limit in LIMITS.items():
        if owner is noun:
            number = _numbers(part, key)
            number["maximum"] = limit.high
            if "exclusiveMinimum" not in number or limit.low > 0:
                number.pop("exclusiveMinimum", None)
                number["minimum"] = limit.low


def _add_twins(part: Schema, twins: tuple[Twin, ...]) -> None:
    """Each twin beside its own key, at most one spelling of a value, one where it is required."""
    for key in dict.fromkeys(twin.key for twin in twins):
        spellings = [key, *(twin.other for twin in twins if twin.key == key)]
        rules = part.setdefault("allOf", [])
        rules += [{"not": {"required": list(pair)}} for pair in combinations(spellings, 2)]
        if key in part.get("required", ()):
            part["required"] = [one for one in part["required"] if one != key]
            rules.append({"anyOf": [{"required": [one]} for one in spellings]})
    for twin in twins:
        _add_twin(part, twin)


def _add_twin(part: Schema, twin: Twin) -> None:
    number = _numbers(part, twin.key)
    there: Schema = {"type": "number"}
    for bound in ("minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum"):
        if bound in number:
            there[bound] = float(f"{twin.from_key(number[bound]):.6g}")
    meaning = part["properties"][twin.key]["description"]
    part["properties"][twin.other] = {
        "anyOf": [there, {"type": "null"}],
        "description": f"Instead of {twin.key}, in the unit of its name. {meaning}",
    }
