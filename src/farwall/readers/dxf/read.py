"""From the bytes of a DXF to a reading: load, gather, find the unit, close rooms, name them."""

from __future__ import annotations

import shapely

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.readers.dxf.assemble import assemble
from farwall.readers.dxf.bounds import Bounds, find_bounds, line
from farwall.readers.dxf.faces import cut_faces, gap_closers
from farwall.readers.dxf.gather import gather
from farwall.readers.dxf.labels import find_labels
from farwall.readers.dxf.load import load
from farwall.readers.dxf.portals import find_portals
from farwall.readers.dxf.rooms import sort_faces
from farwall.readers.dxf.sheet import Sheet
from farwall.readers.dxf.signs import signs_at
from farwall.readers.dxf.unit import find_unit
from farwall.readers.dxf.ways import find_ways


def read_dxf(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor in a DXF file.

    `scale_m_per_unit` [m] overrules what the file says and shows of its unit.
    A reading without rooms means that no floor is in the file. Raises Refused
    when the bytes cannot be opened as a drawing.
    """
    document, repairs = load(data)
    return read_sheet(gather(document, repairs), scale_m_per_unit=scale_m_per_unit)


def read_sheet(sheet: Sheet, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor on a sheet that has been freed from its file format."""
    unit = find_unit(sheet, scale_m_per_unit=scale_m_per_unit)
    metres = sheet.scaled(unit.working_scale)
    bounds = find_bounds(metres)
    try:
        portals = find_portals(bounds)
        lines = [line(stroke) for stroke in bounds.closing]
        closers = gap_closers(lines)
        lines += closers + [side for portal in portals for side in portal.outline]
        faces = sort_faces(cut_faces(lines), portals, find_labels(metres.words))
        doorwork = (*bounds.jambs, *bounds.loose)
        signs = [signs_at(portal, metres, doorwork) for portal in portals]
        ways = find_ways(portals, signs, faces)
        return assemble(metres, unit, faces, ways, _mended(sheet, bounds, closers))
    except shapely.errors.GEOSException as error:
        raise Refused(
            Mistake(
                "",
                "the lines of this drawing cannot be joined into a floor.",
                "Save the floor plan alone, without other views, as DXF again.",
            )
        ) from error


def _mended(sheet: Sheet, bounds: Bounds, closers: list[shapely.LineString]) -> list[Note]:
    notes = [Note("recovered", words) for words in sheet.repairs]
    if bounds.doubles:
        notes.append(
            Note("doubles-dropped", f"{bounds.doubles} lines drawn twice were taken once.")
        )
    for closer in closers:
        x, y = closer.coords[0]
        what = f"A gap of {closer.length * 1000:.0f} mm between two lines was closed."
        notes.append(Note("gap-closed", what, (float(x), float(y))))
    return notes
