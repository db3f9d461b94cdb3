"""Features of GeoJSON as things of a floor, whatever habit they were tagged in.

Source of the tags `indoor`, `level`, `door`, `entrance`: the open map's tagging scheme for indoor
rooms (from memory).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from math import isfinite
from typing import Any, Literal

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

Json = Mapping[str, Any]
Kind = Literal[
    "room",
    "door",
    "passage",
    "window",
    "wall",
    "outline",
    "stairs",
    "shaft",
    "column",
    "zone",
    "other",
]
MOST_POINTS = 200_000
_ROOMS = {
    "room", "bathroom", "kitchen", "bedroom", "office", "hall", "corridor", "closet", "storage",
    "garage", "livingroom", "living_room", "toilet", "space", "lobby", "laundry", "area", "hallway",
}  # fmt: skip
_WORDS: dict[str, Kind] = {
    **dict.fromkeys(_ROOMS, "room"),
    "door": "door", "entrance": "door", "passage": "passage",
    "window": "window", "wall": "wall", "building_outline": "outline", "outline": "outline",
    "level": "outline", "footprint": "outline", "stairs": "stairs", "steps": "stairs",
    "elevator": "shaft", "lift": "shaft", "shaft": "shaft", "inaccessible_space": "shaft",
    "verticalpassage": "stairs", "column": "column", "pillar": "column",
    "no_geometry": "zone", "zone": "zone", "unit": "zone",
}  # fmt: skip
_WIDTH = re.compile(r"^\s*(\d+(?:[.,]\d+)?)\s*(m|cm|mm|ft|in|'|\"|)\s*$", re.I)
_LENGTHS = {"": 1.0, "m": 1.0, "cm": 0.01, "mm": 0.001, "ft": 0.3048, "'": 0.3048, "in": 0.0254,
            '"': 0.0254}  # fmt: skip
_LEVEL = re.compile(r"^\s*(-?\d+(?:\.\d+)?)\s*(?:[;,].*|-.*)?$")


@dataclass(frozen=True)
class Thing:
    """A feature, or one part of it, in the file's own coordinates.

    rings: an outline and its holes; line: an open line; point: a place. `word` is the file's own
    for its kind, `several` tells that it stands on more levels than the one named.
    """

    kind: Kind
    word: str
    id: str = ""
    name: str = ""
    level: str = ""
    several: bool = False
    rings: tuple[tuple[Point, ...], ...] = ()
    line: tuple[Point, ...] = ()
    point: Point | None = None
    width_m: float | None = None
    leaf: bool = True
    outside: bool | None = None

    @property
    def points(self) -> tuple[Point, ...]:
        """All its points."""
        if self.rings:
            return tuple(p for ring in self.rings for p in ring)
        return self.line or ((self.point,) if self.point is not None else ())


def things_of(features: Iterable[Any]) -> tuple[list[Thing], int]:
    """All features and their parts; and how many had no geometry that can be read."""
    found: list[Thing] = []
    broken = 0
    for feature in features:
        if not isinstance(feature, dict):
            broken += 1
            continue
        parts = list(_parts(feature.get("geometry")))
        broken += not parts
        own = _told(feature)
        for place, part in enumerate(parts, start=1):
            name = f"{own['id']}-{place}" if own["id"] and place > 1 else own["id"]
            found.append(Thing(**{**own, "id": name}, **part))
    return found, broken


def is_closed(line: Sequence[Point]) -> bool:
    """Whether a line comes back to where it began."""
    return len(line) >= 4 and line[0] == line[-1]


def _parts(geometry: Any, deep: int = 0) -> Iterable[dict[str, Any]]:
    if not isinstance(geometry, dict) or deep > 8:
        return
    kind, told = geometry.get("type"), geometry.get("coordinates")
    if kind == "GeometryCollection" and isinstance(geometry.get("geometries"), list):
        for inner in geometry["geometries"]:
            yield from _parts(inner, deep + 1)
    elif isinstance(kind, str) and kind.startswith("Multi") and isinstance(told, list):
        for inner in told:
            yield from _parts({"type": kind[5:], "coordinates": inner}, deep + 1)
    elif kind == "Polygon" and isinstance(told, list):
        rings = [_points(ring) for ring in told]
        whole = [ring for ring in rings if ring is not None and len(ring) >= 4]
        if whole and len(whole) == len(rings):
            yield {"rings": tuple(whole)}
    elif kind == "LineString" and (line := _points(told)) is not None and len(line) > 1:
        yield {"rings": (line,)} if is_closed(line) else {"line": line}
    elif kind == "Point" and (point := _point(told)) is not None:
        yield {"point": point}


def _points(values: Any) -> tuple[Point, ...] | None:
    if not isinstance(values, list):
        return None
    points = [_point(value) for value in values]
    return None if None in points else tuple(p for p in points if p is not None)


def _point(value: Any) -> Point | None:
    if not isinstance(value, list) or len(value) < 2:
        return None
    x, y = (_number(part) for part in value[:2])
    return (x, y) if x is not None and y is not None else None


def _number(value: Any) -> float | None:
    if isinstance(value, bool) or not isinstance(value, int | float):
        return None
    try:
        number = float(value)
    except OverflowError:
        return None
    return number if isfinite(number) and abs(number) < 1e9 else None


def _told(feature: Json) -> dict[str, Any]:
    tags = tags_of(feature)
    kind, word = _kind(tags)
    own = tags.get("id", feature.get("id"))
    level, several = _level(tags)
    leaf = str(tags.get("door", "")).lower() not in {"no", "none"} and kind != "passage"
    return {
        "kind": "door" if kind == "passage" else kind,
        "word": word,
        "id": str(own)[:80] if isinstance(own, str | int | float) and own != "" else "",
        "name": _text(tags, "name", "ref", "roomnumber"),
        "level": level,
        "several": several,
        "width_m": width_of(tags.get("width")),
        "leaf": leaf,
        "outside": True if "entrance" in (*tags, word) else None,
    }


def tags_of(feature: Json) -> dict[str, Any]:
    """What a feature says of itself, and what it says one level deeper under `tags`."""
    properties = feature.get("properties")
    own = dict(properties) if isinstance(properties, dict) else {}
    inner = own.pop("tags", None)
    return {**(inner if isinstance(inner, dict) else {}), **own}


def _kind(tags: Json) -> tuple[Kind, str]:
    for key in ("indoor", "kind", "type", "class", "buildingpart"):
        word = str(tags.get(key) or "").strip().lower()
        if word and word not in {"yes", "no"} and not (key == "type" and word == "multipolygon"):
            if key == "indoor" and str(tags.get("stairs") or "").lower() == "yes":
                return "stairs", "stairs"
            return _WORDS.get(word, "other"), word
    for key in ("door", "entrance", "window"):
        if key in tags:
            return ("window" if key == "window" else "door"), key
    if str(tags.get("room") or "no").lower() != "no":
        return "room", "room"
    return "other", ""


def _level(tags: Json) -> tuple[str, bool]:
    """The first level told, and whether there are more."""
    told = next((tags[key] for key in ("level", "storey", "floor") if key in tags), None)
    if told is None or isinstance(told, list | dict):
        return "", False
    text = str(told).strip()[:40]
    found = _LEVEL.match(text)
    first = found[1] if found else text
    return first.removesuffix(".0"), bool(found) and text not in {first, f"{first}.0"}


def width_of(value: Any) -> float | None:
    """A width [m] told as a number of metres or with its unit; None when it is no door's."""
    found = _WIDTH.match(str(value)) if isinstance(value, str | int | float) else None
    if found is None or isinstance(value, bool):
        return None
    width = float(found[1].replace(",", ".")) * _LENGTHS[found[2].lower()]
    return width if 0.3 <= width <= 12 else None


def _text(tags: Json, *keys: str) -> str:
    for key in keys:
        value = tags.get(key)
        if isinstance(value, str | int | float) and not isinstance(value, bool) and value != "":
            return " ".join(str(value).split())[:120]
    return ""
