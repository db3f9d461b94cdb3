"""A collection cut into pieces that any drawing format can carry: lines and rings with properties.

A floor under a door is a piece of its own, so that it is seen in a drawing and moves with it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any

from farwall.facts.reading import Note
from farwall.nouns import dataclass

Json = dict[str, Any]
THRESHOLD = "threshold"


@dataclass(frozen=True)
class Piece:
    """One thing of a floor: its rings (closed, metres) or its one open line, and what is told."""

    properties: Json
    lines: tuple[tuple[tuple[float, float], ...], ...]
    closed: bool

    @property
    def kind(self) -> str:
        """Its kind in the collection, or `threshold`."""
        return str(self.properties.get("kind", ""))


def pieces_of(collection: Mapping[str, Any]) -> Iterator[Piece]:
    """The pieces of a collection in its order, each threshold after its opening."""
    for feature in collection["features"]:
        told = dict(feature["properties"])
        threshold = told.pop(THRESHOLD, None)
        yield _piece(told, feature["geometry"])
        if threshold is not None:
            yield _piece({"kind": THRESHOLD, "opening": told["id"]}, threshold)


def _piece(told: Json, geometry: Json | None) -> Piece:
    if geometry is None:
        return Piece(told, (), closed=False)
    closed = geometry["type"] == "Polygon"
    lines = geometry["coordinates"] if closed else [geometry["coordinates"]]
    return Piece(told, tuple(tuple((x, y) for x, y in line) for line in lines), closed)


def collection_with(pieces: Iterable[Piece], about: Mapping[str, Any]) -> Json:
    """The collection that the pieces make; `about` is what was told of the whole."""
    features: list[Json] = []
    thresholds: dict[str, Json] = {}
    for piece in pieces:
        geometry = _geometry(piece)
        if piece.kind == THRESHOLD:
            thresholds[str(piece.properties.get("opening"))] = geometry or {}
        else:
            told = {"type": "Feature", "geometry": geometry, "properties": piece.properties}
            features.append(told)
    for feature in features:
        told = feature["properties"]
        if told.get("kind") == "opening":
            feature["properties"] = {**told, THRESHOLD: thresholds.get(str(told.get("id")))}
    return {**about, "type": "FeatureCollection", "units": "m", "features": features}


def _geometry(piece: Piece) -> Json | None:
    if not piece.lines:
        return None
    lines = [[list(point) for point in line] for line in piece.lines]
    if piece.closed:
        return {"type": "Polygon", "coordinates": lines}
    return {"type": "LineString", "coordinates": lines[0]}


def about_of(collection: Mapping[str, Any]) -> Json:
    """What is told of the whole floor: name, north, storeys, and how many pieces it is drawn in."""
    known = {key: collection[key] for key in ("name", "north_deg", "storeys") if key in collection}
    drawn = sum(bool(piece.lines) for piece in pieces_of(collection))
    return {"version": 1, "pieces": drawn, **known}


def gone_since(pieces: Sequence[Piece], about: Mapping[str, Any]) -> tuple[Note, ...]:
    """A word where a drawing of ours has fewer pieces than were drawn of it, or more."""
    drawn = about.get("pieces")
    if drawn == len(pieces):
        return ()
    now = f"{len(pieces)} are in it now"
    if isinstance(drawn, int) and not isinstance(drawn, bool):
        what = f"{drawn} things were drawn in it when it was exported, {now}: what went was taken "
        what += "out or spoilt since."
    else:
        what = f"How many things were drawn in it when it was exported cannot be read; {now}."
    return (Note("changed-since-export", what),)


def words_of(told: Mapping[str, Any]) -> str:
    """Plain values as JSON in letters that every drawing format carries unharmed.

    No letter beyond ASCII, no blank, no backslash before a letter other than `u`, no caret: DXF
    gives those meanings of its own.
    """
    text = json.dumps(told, ensure_ascii=True, allow_nan=False, separators=(",", ":"))
    for plain, safe in (("\\\\", "\\u005c"), ("^", "\\u005e"), (" ", "\\u0020"), ("%", "\\u0025")):
        text = text.replace(plain, safe)
    for short, safe in (("\\n", "\\u000a"), ("\\r", "\\u000d"), ("\\t", "\\u0009"),
                        ("\\b", "\\u0008"), ("\\f", "\\u000c")):  # fmt: skip
        text = text.replace(short, safe)
    return text


def told_in(words: str) -> Json | None:
    """The plain values of such words, None when they are none."""
    try:
        found = json.loads(words, parse_constant=_no_constant)
    except (ValueError, RecursionError):
        return None
    return found if isinstance(found, dict) else None


def _no_constant(name: str) -> float:
    raise ValueError(name)


def storey_of(piece: Piece, rooms: Mapping[str, str], openings: Mapping[str, Sequence[str]]) -> str:
    """The storey on which a piece lies, "" where nobody knows; `rooms` are storeys by room id."""
    told = piece.properties
    if piece.kind in {"room", "fixture"}:
        return str(told.get("storey") or "")
    if piece.kind in {"exit", THRESHOLD}:
        named = openings.get(str(told.get("opening")), ())
    else:
        named = told.get("rooms") or [told.get("room")]
    return next((rooms[str(one)] for one in named if str(one) in rooms), "")
