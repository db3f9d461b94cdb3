"""From the bytes of a gbXML file to what it tells of rooms and doors, and to a reading."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.readers.gbxml.openings import ways_of
from farwall.readers.gbxml.own_polygons import with_own_polygons
from farwall.readers.gbxml.spaces import Spaces, spaces_of
from farwall.readers.gbxml.units import Units, number, units_of
from farwall.readers.hints import Hints, with_scale
from farwall.readers.told.nouns import Told
from farwall.readers.told.scale import honest_about_scale, unit_named
from farwall.readers.xml_text import Node, parse_xml


def read_gbxml(
    data: bytes, *, scale_m_per_unit: float | None = None, hints: Hints | None = None
) -> Reading:
    """The floors in a gbXML file.

    `scale_m_per_unit` [m] overrules what the file says of its unit of length, as that of the hints
    does. Rooms have the floor polygons that the file gives them; by the hint `floors="shell"` the
    lowest faces of their shells, where a polygon lies elsewhere. Raises Refused when it is no such
    file or holds no space.
    """
    from farwall.readers.told.assemble import assemble

    told_by = with_scale(hints, scale_m_per_unit)
    told, spaces = _read(data, told_by.scale_m_per_unit)
    reading = assemble(told)
    if told_by.floors == "polygon":
        reading = with_own_polygons(reading, spaces)
    return honest_about_scale(reading)


def told_of(data: bytes, *, scale_m_per_unit: float | None = None) -> Told:
    """All that a gbXML file tells, in metres, misplaced floors by their shells."""
    return _read(data, scale_m_per_unit)[0]


@np.errstate(all="ignore")  # sums of areas divide by nothing on some slivers, and say so
def _read(data: bytes, scale_m_per_unit: float | None) -> tuple[Told, Spaces]:
    root = parse_xml(data)
    if root.name != "gbXML":
        raise Refused(Mistake("", f"Its root is {root.name}, not gbXML.", "Export it as gbXML."))
    said = units_of(root)
    units = said if scale_m_per_unit is None else replace(said, length_m=scale_m_per_unit)
    spaces = spaces_of(root, units)
    ways = ways_of(root, units, spaces.pieces)
    north, words = _north(root)
    told = Told(
        format="gbXML",
        length_unit=said.name if scale_m_per_unit is None else unit_named(scale_m_per_unit),
        header_unit=said.said,
        scale_m_per_unit=units.length_m or 1.0,
        spaces=tuple(spaces.rooms),
        openings=tuple(ways.openings),
        windows=tuple(ways.windows),
        storeys=tuple(spaces.storeys),
        north_deg=north,
        mended=(*_unit_words(said, units), *words, *spaces.mended),
        left=(*spaces.left, *ways.left),
        asks=(*_unit_asks(units), *spaces.asks, *ways.asks),
    )
    return told, spaces


def _unit_words(said: Units, units: Units) -> tuple[Note, ...]:
    if said.length_m is None or said.length_m == units.length_m:
        return ()
    what = f"The file says {said.said}; {units.length_m:g} m a unit was said by you and is taken."
    return (Note("unit-overruled", what),)


def _unit_asks(units: Units) -> tuple[Note, ...]:
    if units.length_m is not None:
        return ()
    told = f"“{units.said}” is no unit that is known" if units.said else "No unit is told"
    return (Note("scale", f"{told}. Say how long one unit is, with --scale."),)


def _north(root: Node) -> tuple[float | None, tuple[Note, ...]]:
    """Degrees to true north, clockwise from the plan's y.

    CADModelAzimuth is taken as the bearing of the model's y from true north, for the bearings of
    surfaces count from it. Source: [gbxml-schema], its words on RectangularGeometry; the sign is
    from memory, so that a turned model is said.
    """
    told = next((node.text for node in root.walk("CADModelAzimuth")), "")
    turned = number(told)
    if turned is None:
        return None, ()
    north = -turned % 360
    if north == 0:
        return 0.0, ()
    what = (
        f"The model is turned {turned:g}° to true north; north was taken as {north:g}° clockwise "
        "from the top of the plan. Hold a compass to it before sun is reckoned with."
    )
    return north, (Note("north-turned", what),)
