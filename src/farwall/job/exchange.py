"""What goes out of a floor for other programs, and what comes back: one collection for all formats.

The collection is that of `floor.geojson`, with what a reading knows beside its floor: storeys with
their heights, stated areas, ceilings, levels, steps. A plan adds its stop lines and bands, which
are drawn and not read back, for a plan is derived. Every writer writes this collection and every
reader of our own files makes it again, so that the nouns are put into words in one place.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from math import isfinite
from typing import Any, cast, get_args

from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.facts.reading import Note, Reading, Stated, StatedKind, Step, Storey
from farwall.floor.faults import faults_of
from farwall.floor.geojson import feature, floor_collection, floor_from_collection, line_from
from farwall.floor.nouns import Floor, Room

Json = dict[str, Any]
OWN = "farwall"
"""The mark by which our own exports are known, in lower case."""
_STATED = ("stated_area_m2", "stated_kind", "stated_text")


def exchanged_job(job: Job) -> Reading:
    """A job's floor and ways out as a reading, so that it goes out like a drawing that was read."""
    return _of_floor(job.floor, job.exits)


def exchanged_plan(plan: Plan, job: Job | None = None) -> Reading:
    """A plan's floor as a reading; windows and north are in the job alone, and come from there."""
    inputs = plan.inputs
    floor = Floor(
        rooms=inputs.floor.rooms,
        openings=inputs.openings,
        fixtures=inputs.fixtures,
        saw_cuts=inputs.saw_cuts,
        windows=job.floor.windows if job is not None else (),
        north_deg=job.floor.north_deg if job is not None else None,
    )
    return _of_floor(floor, inputs.exits)


def _of_floor(floor: Floor, exits: Sequence[Any]) -> Reading:
    names = dict.fromkeys(room.storey for room in floor.rooms)
    storeys = tuple(Storey(name, name) for name in names if name)
    return Reading("job", "m", "m", 1.0, floor, tuple(exits), storeys)


def collection_of(reading: Reading, *, name: str = "", plan: Plan | None = None) -> Json:
    """The FeatureCollection of a reading, in metres; `plan` adds its stop lines and bands.

    A field that cannot be done shows no bands, so that nobody sprays by them.
    Raises Refused when nobody knows the drawing's scale: there are no metres then.
    """
    if reading.scale_m_per_unit is None:
        what = "The drawing does not say how long its unit is, so that it has no metres."
        raise Refused(Mistake("scale", what, "Say its scale first."))
    collection = floor_collection(reading.floor, reading.exits)
    for one in collection["features"]:
        told = one["properties"]
        if told["kind"] == "room":
            told |= _beside_room(told["id"], reading)
        elif told["kind"] == "fixture" and told["id"] in reading.fixture_storeys:
            told["storey"] = reading.fixture_storeys[told["id"]]
    collection["features"] += [*map(_step, reading.steps), *(_of_plan(plan) if plan else ())]
    if reading.storeys:
        collection["storeys"] = [
            {"id": one.id, "name": one.name, "elevation_m": one.elevation_m}
            for one in reading.storeys
        ]
    return {**collection, "name": name} if name else collection


def _beside_room(room_id: str, reading: Reading) -> Json:
    stated = reading.stated.get(room_id)
    told: Json = {
        "ceiling_m": reading.ceilings_m.get(room_id),
        "level_m": reading.levels_m.get(room_id),
    }
    if stated is not None:
        told |= dict(zip(_STATED, (stated.area_m2, stated.kind, stated.text), strict=True))
    return {key: value for key, value in told.items() if value is not None}


def _step(step: Step) -> Json:
    return feature("step", {"type": "LineString", "coordinates": _points(step.line)},
                    rise_m=step.rise_m)  # fmt: skip


def _of_plan(plan: Plan) -> Iterator[Json]:
    for field in plan.fields:
        for line in field.stop_lines:
            drawn = {"type": "LineString", "coordinates": _points(line.line)}
            yield feature("stop line", drawn, id=line.id, stop=line.kind, field=field.id,
                           coat=field.coat)  # fmt: skip
    for field in plan.fields:
        if field.verdict == "cannot":  # nobody is to spray by it
            continue
        for band in field.bands:
            rings = [_points(ring) for ring in band.polygon.coordinates]
            drawn = {"type": "Polygon", "coordinates": rings}
            yield feature("band", drawn, id=band.id, field=field.id, coat=field.coat,
                           order=band.order, start_min=band.start_min, end_min=band.end_min,
                           litres=band.litres)  # fmt: skip


def _points(line: Iterable[Sequence[float]]) -> list[list[float]]:
    return [[point[0], point[1]] for point in line]


def reading_of(
    collection: Mapping[str, Any], *, format_name: str, header_unit: str = ""
) -> Reading:
    """The reading that a collection of ours holds. Raises Refused with every mistake and fault."""
    floor, exits = floor_from_collection(collection)
    faults = faults_of(floor, exits)
    if faults:
        raise Refused(*faults)
    rooms, fixtures = (_by_id(collection, kind) for kind in ("room", "fixture"))
    asks = []
    if not exits:
        asks.append(Note("way-out", "No way out is given. Say which opening leads outside."))
    return Reading(
        format=format_name,
        length_unit="m",
        header_unit=header_unit,
        scale_m_per_unit=1.0,
        floor=floor,
        exits=exits,
        storeys=_storeys(collection, floor.rooms),
        stated={key: found for key, one in rooms.items() if (found := _stated(one))},
        left=tuple(_passed_over(collection)),
        asks=tuple(asks),
        ceilings_m=_figures(rooms, "ceiling_m"),
        levels_m=_figures(rooms, "level_m"),
        steps=tuple(_steps(collection)),
        fixture_storeys={
            key: one["storey"] for key, one in fixtures.items()
            if key and isinstance(one.get("storey"), str)
        },
    )  # fmt: skip


def _by_id(collection: Mapping[str, Any], kind: str) -> dict[str, Json]:
    found = [one for one in map(_properties, collection["features"]) if one.get("kind") == kind]
    return {str(one.get("id") or ""): one for one in found}


def _properties(feature: Any) -> Json:
    found = feature.get("properties") if isinstance(feature, dict) else None
    return found if isinstance(found, dict) else {}


def _storeys(collection: Mapping[str, Any], rooms: Sequence[Room]) -> tuple[Storey, ...]:
    told = collection.get("storeys")
    found: dict[str, Storey] = {}
    for one in told if isinstance(told, list) else []:
        if isinstance(one, dict) and isinstance(one.get("id"), str):
            name = one.get("name")
            height = _figure(one.get("elevation_m"))
            found[one["id"]] = Storey(one["id"], name if isinstance(name, str) else "", height)
    for room in rooms:
        if room.storey and room.storey not in found:
            found[room.storey] = Storey(room.storey, room.storey)
    return tuple(found.values())


def _stated(room: Json) -> Stated | None:
    area, kind, text = (room.get(key) for key in _STATED)
    figure = _figure(area)
    if figure is None or kind not in get_args(StatedKind):
        return None
    return Stated(figure, cast(StatedKind, kind), text if isinstance(text, str) else "")


def _figures(rooms: Mapping[str, Json], key: str) -> dict[str, float]:
    found = {room_id: _figure(one.get(key)) for room_id, one in rooms.items()}
    return {room_id: value for room_id, value in found.items() if value is not None}


def _figure(value: Any) -> float | None:
    if isinstance(value, int | float) and not isinstance(value, bool) and isfinite(value):
        return float(value)
    return None


def _steps(collection: Mapping[str, Any]) -> Iterator[Step]:
    for one in collection["features"]:
        properties = _properties(one)
        line = line_from(one.get("geometry"))
        rise = _figure(properties.get("rise_m"))
        if properties.get("kind") == "step" and line and len(line) == 2 and rise is not None:
            yield Step((line[0], line[1]), rise)


def _passed_over(collection: Mapping[str, Any]) -> Iterator[Note]:
    kinds = [_properties(one).get("kind") for one in collection["features"]]
    lines, bands = kinds.count("stop line"), kinds.count("band")
    if lines or bands:
        yield Note(
            "plan-marks",
            f"{lines} stop lines and {bands} bands of a plan are drawn in it; they were left "
            "aside, for a plan is made anew.",
        )
