"""Reads a floor from GeoJSON: our own collections in metres, and other people's features."""

from __future__ import annotations

import json
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Reading
from farwall.floor.geojson import KINDS, Json
from farwall.job.exchange import reading_of
from farwall.readers.geo.read import told_of
from farwall.readers.told.scale import honest_about_scale

MOST_LISTS = 1_000_000
"""A point is a list. Several times what the largest floor needs (guess)."""
_OURS = "Plan a job with `farwall plan`, check a plan with `farwall check`."


def read_geojson(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor in a GeoJSON file. Raises Refused with every mistake."""
    from farwall.readers.told.assemble import assemble

    collection = _collection(_parsed(data))
    features = [f for f in collection["features"] if isinstance(f, dict)]
    if _are_ours(collection, features) and scale_m_per_unit is None:
        return _ours(collection)
    return honest_about_scale(assemble(told_of(collection, scale_m_per_unit=scale_m_per_unit)))


def _are_ours(collection: Json, features: list[Json]) -> bool:
    """Whether it speaks our words, in metres; without a unit all its features must."""
    spoken = [_properties(f).get("kind") in KINDS for f in features]
    if "units" in collection:
        return any(spoken) and collection["units"] == "m"
    return any(spoken) and all(spoken)


def _parsed(data: bytes) -> Any:
    if data.count(b"[") + data.count(b"{") > MOST_LISTS:
        what = f"It holds more than {MOST_LISTS:,} lists and objects."
        raise Refused(Mistake("", what, "Hand over one floor, with fewer points."))
    try:
        return json.loads(data.decode("utf-8-sig"), parse_constant=_no_constant)
    except UnicodeDecodeError as error:
        raise Refused(Mistake("", "This is no UTF-8 text.", "Save it as UTF-8.")) from error
    except RecursionError as error:
        what = "Its brackets are nested too deep to be a floor."
        raise Refused(Mistake("", what, "Look at where it was made.")) from error
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise Refused(Mistake(where, f"this is no JSON: {error.msg}.", "Mend it there.")) from error
    except ValueError as error:
        raise Refused(
            Mistake("", "A number in it has too many digits.", "Export it anew.")
        ) from error


def _no_constant(name: str) -> float:
    raise Refused(Mistake("", f"{name} is no number that JSON knows.", "Take it out."))


def _collection(value: Any) -> Json:
    """Any GeoJSON object as a collection of features."""
    kind = value.get("type") if isinstance(value, dict) else None
    if kind == "FeatureCollection" and isinstance(value.get("features"), list):
        return dict(value)
    if kind == "Feature":
        return {"features": [value]}
    if kind in ("Polygon", "MultiPolygon", "GeometryCollection"):  # it may be a list, and no key
        return {"features": [{"geometry": value, "properties": {"type": "room"}}]}
    if isinstance(value, dict) and ("floor" in value or "inputs" in value):
        raise Refused(Mistake("", "This is a job or a plan, not a drawing.", _OURS))
    what = "This JSON is no GeoJSON FeatureCollection."
    raise Refused(Mistake("", what, "Give a FeatureCollection of room polygons."))


def _ours(collection: Json) -> Reading:
    header = "m" if collection.get("units") == "m" else ""
    return reading_of(collection, format_name="GeoJSON", header_unit=header)


def _properties(feature: Json) -> Json:
    properties = feature.get("properties")
    return properties if isinstance(properties, dict) else {}
