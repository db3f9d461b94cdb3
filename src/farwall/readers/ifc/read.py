"""Reads the floors of an IFC building model: what it tells, made a reading by `told.assemble`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import numpy as np

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.readers.ifc.edges import open_edges_of
from farwall.readers.ifc.fixtures import fixture_elements, fixtures_of, left_aside, stair_elements
from farwall.readers.ifc.frame import Frame, north_of, storeys_of, zero_of
from farwall.readers.ifc.graph import graph_of
from farwall.readers.ifc.load import Entity, Model, load
from farwall.readers.ifc.parts import insist_parts_end
from farwall.readers.ifc.shapes import bodies_of
from farwall.readers.ifc.spaces import shapes_by_storey, spaces_of
from farwall.readers.ifc.unit import Units, unit_notes, units_of
from farwall.readers.ifc.ways import (
    bare_openings_of,
    bounds_of,
    doors_of,
    opening_in,
    windows_of,
)
from farwall.readers.told.assemble import assemble
from farwall.readers.told.nouns import Told

MOST_ELEMENTS = 20_000
"""Spaces, doors and windows together; a large hospital has about that many (from memory)."""
_CALMLY = (AttributeError, TypeError, ValueError, IndexError, KeyError, RuntimeError,
           RecursionError, OverflowError, AssertionError)  # fmt: skip


def read_ifc(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floors in the bytes of an IFC file.

    `scale_m_per_unit` [m] overrules the unit that the file declares. A reading without rooms means
    that the model has no spaces. Raises Refused when it cannot be read, or ifcopenshell is missing.
    """
    model = load(data)
    try:
        with np.errstate(all="ignore"):  # figures that are none are looked for where they come out
            return _read(model, scale_m_per_unit)
    except _CALMLY as error:
        what = "This IFC file is broken: parts of it do not fit together."
        remedy = "Export the model anew as IFC 2x3 or IFC 4, or the floor plan as DXF."
        raise Refused(Mistake("DATA", what, remedy)) from error


def _read(model: Model, scale_m_per_unit: float | None) -> Reading:
    graph = graph_of(model)
    insist_parts_end(model)
    told_units = units_of(model)
    units = _overruled(told_units, scale_m_per_unit)
    factor = units.length_m / told_units.length_m
    frame = Frame(units, factor, zero_of(model, units))
    spaces, doors, windows = (_all(model, name) for name in ("IfcSpace", "IfcDoor", "IfcWindow"))
    bare = _bare_openings(model)
    stands, stairs = fixture_elements(model), stair_elements(model)
    _check_count(spaces, doors, windows, bare, stands, stairs)
    holes = [o if (o := opening_in(e)) is not None else e for e in (*doors, *windows)]
    wanted = _unique([*spaces, *holes, *bare, *stands, *stairs])
    whole = [e for e in wanted if not graph.leads_to_broken(e.id())]
    bodies = bodies_of(model, whole, factor)
    without = [e for e in (*doors, *windows) if _bodiless(e, bodies)]
    more = [e for e in without if not graph.leads_to_broken(e.id())]
    bodies |= bodies_of(model, more, factor)

    storeys = storeys_of(model, frame)
    heights = {s.id: s.elevation_m for s in storeys if s.elevation_m is not None}
    bounds = bounds_of(model)
    told_spaces = spaces_of(spaces, bodies, frame)
    told_doors = doors_of(doors, bodies, bounds, frame)
    floors = shapes_by_storey(told_spaces.spaces)
    edges = open_edges_of(bounds, frame, {s.id: s.shape for s in told_spaces.spaces})
    widths = [door.width_m for door in told_doors if door.width_m is not None]
    rises = [s.height_m for s in told_spaces.spaces if s.height_m is not None]
    told = Told(
        format="IFC",
        length_unit=units.name,
        header_unit=told_units.name,
        scale_m_per_unit=units.length_m,
        spaces=tuple(told_spaces.spaces),
        openings=(
            *told_doors,
            *bare_openings_of(bare, bodies, bounds, frame, heights),
            *edges.openings,
        ),
        windows=tuple(windows_of(windows, bodies, bounds, frame, heights)),
        fixtures=tuple(fixtures_of(stands, bodies, frame, floors)),
        storeys=storeys,
        north_deg=north_of(model),
        mended=(*told_spaces.mended, *edges.mended),
        left=(
            *told_spaces.left,
            *edges.left,
            *left_aside(model, stairs, bodies, frame, told_spaces.spaces),
            *_broken(len(wanted) - len(whole)),
        ),
        asks=tuple(unit_notes(units, widths, rises)),
    )
    reading = assemble(told)
    return reading if units.declared else _without_scale(reading)


def _broken(count: int) -> list[Note]:
    if not count:
        return []
    what = f"{count} × space, door or other thing has a broken body in the file: left aside."
    return [Note("body-broken", what)]


def _overruled(told: Units, scale_m_per_unit: float | None) -> Units:
    if scale_m_per_unit is None:
        return told
    ratio = scale_m_per_unit / told.length_m
    name = Units.named(scale_m_per_unit)
    return Units(scale_m_per_unit, told.area_m2 * ratio**2, name, declared=True)


def _without_scale(reading: Reading) -> Reading:
    what = "The file declares no unit of length. Say the metres of a unit with --scale."
    asks = (Note("scale", what), *(n for n in reading.asks if n.code != "unit-doubted"))
    return replace(
        reading,
        scale_m_per_unit=None,
        length_unit="",
        header_unit="",
        asks=asks,
        shapes_m_per_unit=1.0,
    )


def _all(model: Model, name: str) -> list[Entity]:
    return list(model.by_type(name))


def _bare_openings(model: Model) -> list[Entity]:
    """Openings through walls that neither door nor window fills."""
    return [
        opening
        for opening in _all(model, "IfcOpeningElement")
        if not opening.HasFillings
        and opening.VoidsElements
        and opening.VoidsElements[0].RelatingBuildingElement is not None
        and opening.VoidsElements[0].RelatingBuildingElement.is_a("IfcWall")
        and getattr(opening, "PredefinedType", None) != "RECESS"
    ]


def _bodiless(element: Entity, bodies: Mapping[int, object]) -> bool:
    opening = opening_in(element)
    return opening is not None and opening.id() not in bodies and element.id() not in bodies


def _unique(elements: list[Entity]) -> list[Entity]:
    return list({element.id(): element for element in elements}.values())


def _check_count(*groups: list[Entity]) -> None:
    count = sum(map(len, groups))
    if count > MOST_ELEMENTS:
        what = f"The model has {count:,} spaces, doors and windows: more than can be read at once."
        raise Refused(Mistake("DATA", what, "Export the storey to be stained alone."))
