"""Reads a floor from GeoJSON: our own collections, and other people's room polygons.

Our collections are in metres and say so. Others are taken as degrees when they span less than a
village, and brought into a local metric frame about their first vertex.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from math import cos, radians, sin, sqrt
from typing import Any

import shapely

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading, Storey
from farwall.floor.geojson import KINDS, Json, polygon_from
from farwall.floor.geometry import Point, PolygonGeometry, polygon_geometry
from farwall.floor.nouns import Exit, Floor, Room
from farwall.job.exchange import reading_of
from farwall.readers.room_names import Ids, slug

WGS84_A_M = 6378137.0
WGS84_F = 1 / 298.257223563
"""Semi-major axis and flattening of the WGS 84 ellipsoid. Source: NIMA TR8350.2, table 3.1."""
_VILLAGE_DEG = 0.2
_OURS = "Plan a job with `farwall plan`, check a plan with `farwall check`."
_ROOM_TYPES = {
    "room", "bathroom", "kitchen", "bedroom", "office", "hall", "corridor", "closet", "storage",
    "garage", "livingroom", "living_room", "toilet", "space", "lobby", "laundry",
}  # fmt: skip


def read_geojson(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor in a GeoJSON file. Raises Refused with every mistake."""
    collection = _collection(_parsed(data))
    features = [f for f in collection["features"] if isinstance(f, dict)]
    ours = any(_properties(f).get("kind") in KINDS for f in features)
    if ours and collection.get("units", "m") == "m" and scale_m_per_unit is None:
        return _ours(collection)
    return _theirs(features, scale_m_per_unit)


def metres_per_degree(latitude_deg: float) -> Point:
    """Metres in a degree of longitude and of latitude there, good within a few kilometres.

    Radii of curvature of the WGS 84 ellipsoid in the prime vertical and the meridian.
    Source: NIMA TR8350.2 (the ellipsoid); Snyder, USGS Professional Paper 1395,
    chapter 4 (the radii; from memory).
    """
    e2 = WGS84_F * (2 - WGS84_F)
    bulge = 1 - e2 * sin(radians(latitude_deg)) ** 2
    across = WGS84_A_M / sqrt(bulge)
    along = WGS84_A_M * (1 - e2) / bulge**1.5
    return radians(across * cos(radians(latitude_deg))), radians(along)


def _parsed(data: bytes) -> Any:
    try:
        return json.loads(data.decode("utf-8-sig"), parse_constant=_no_constant)
    except UnicodeDecodeError as error:
        raise Refused(Mistake("", "This is no UTF-8 text.", "Save it as UTF-8.")) from error
    except RecursionError as error:
        raise Refused(Mistake("", "Its brackets are nested too deep to be a floor.")) from error
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise Refused(Mistake(where, f"this is no JSON: {error.msg}.", "Mend it there.")) from error


def _no_constant(name: str) -> float:
    raise Refused(Mistake("", f"{name} is no number that JSON knows.", "Take it out."))


def _collection(value: Any) -> Json:
    """Any GeoJSON object as a collection of features."""
    kind = value.get("type") if isinstance(value, dict) else None
    if kind == "FeatureCollection" and isinstance(value.get("features"), list):
        return dict(value)
    if kind == "Feature":
        return {"features": [value]}
    if kind == "Polygon":
        return {"features": [{"geometry": value, "properties": {"type": "room"}}]}
    if isinstance(value, dict) and ("floor" in value or "inputs" in value):
        raise Refused(Mistake("", "This is a job or a plan, not a drawing.", _OURS))
    what = "This JSON is no GeoJSON FeatureCollection."
    raise Refused(Mistake("", what, "Give a FeatureCollection of room polygons."))


def _ours(collection: Json) -> Reading:
    header = "m" if collection.get("units") == "m" else ""
    return reading_of(collection, format_name="GeoJSON", header_unit=header)


def _theirs(features: list[Json], scale_m_per_unit: float | None) -> Reading:
    polygons = [(f, p) for f in features if (p := polygon_from(f.get("geometry"))) is not None]
    points = [point for _, polygon in polygons for ring in polygon.coordinates for point in ring]
    if not points:
        raise Refused(Mistake("features", "there is no polygon in it.", "Give room polygons."))
    in_degrees = scale_m_per_unit is None and _are_degrees(points)
    origin = points[0] if in_degrees else (0.0, 0.0)
    scale = metres_per_degree(origin[1]) if in_degrees else (scale_m_per_unit or 1.0,) * 2
    left: list[Note] = []
    rooms = tuple(_rooms(polygons, origin, scale, left))
    others = Counter(_type(f) for f in features if _type(f) not in _ROOM_TYPES)
    left += [
        Note("not-read", f"{count} × {kind or 'feature without a type'} left aside.")
        for kind, count in sorted(others.items())
    ]
    floor = Floor(rooms)
    return Reading(
        format="GeoJSON",
        length_unit="degree" if in_degrees else "m",
        header_unit="",
        scale_m_per_unit=scale[1],
        floor=floor,
        storeys=(Storey("storey-1", ""),) if rooms else (),
        mended=tuple(_framed(origin, scale)) if in_degrees else (),
        left=tuple(left),
        asks=tuple(_asks(floor, ())),
    )


def _are_degrees(points: list[Point]) -> bool:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    on_earth = max(map(abs, xs)) <= 180 and max(map(abs, ys)) <= 90
    return on_earth and max(max(xs) - min(xs), max(ys) - min(ys)) < _VILLAGE_DEG


def _rooms(
    polygons: list[tuple[Json, PolygonGeometry]], origin: Point, scale: Point, left: list[Note]
) -> Iterator[Room]:
    ids = Ids()
    for feature, polygon in polygons:
        if _type(feature) not in _ROOM_TYPES:
            continue
        properties = _properties(feature)
        name = str(properties.get("name") or "")
        rings = [[_framed_point(p, origin, scale) for p in ring] for ring in polygon.coordinates]
        shape = shapely.Polygon(rings[0], rings[1:])
        if not shape.is_valid or shape.area < 0.01:
            left.append(Note("room-unsound", f"The outline of “{name}” is not sound.", rings[0][0]))
            continue
        own = properties.get("id", feature.get("id"))
        wish = str(own) if own is not None else slug(name or _type(feature))
        yield Room(ids.take(wish), polygon_geometry(shape), name, "storey-1")


def _framed_point(point: Point, origin: Point, scale: Point) -> Point:
    return (point[0] - origin[0]) * scale[0], (point[1] - origin[1]) * scale[1]


def _framed(origin: Point, scale: Point) -> Iterator[Note]:
    yield Note(
        "degrees-to-metres",
        f"Degrees were brought into metres about longitude {origin[0]:.6f}, latitude "
        f"{origin[1]:.6f} (WGS 84; {scale[0]:.1f} m and {scale[1]:.1f} m a degree).",
        (0.0, 0.0),
    )


def _asks(floor: Floor, exits: tuple[Exit, ...]) -> Iterator[Note]:
    if not floor.rooms:
        yield Note("tracing", "No room is drawn in it. Trace the rooms by hand.")
    elif not exits:
        yield Note("way-out", "No way out is given. Say which opening leads outside.")


def _properties(feature: Json) -> Json:
    properties = feature.get("properties")
    return properties if isinstance(properties, dict) else {}


def _type(feature: Json) -> str:
    properties = _properties(feature)
    kind = properties.get("kind") or properties.get("type") or properties.get("class") or ""
    return str(kind).strip().lower()
