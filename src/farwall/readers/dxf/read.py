"""From the bytes of a DXF to a reading: load, gather, find the unit, close rooms, name them."""

from __future__ import annotations

import shapely

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.readers.dxf.assemble import Parts, assemble
from farwall.readers.dxf.bounds import Bounds, find_bounds, footprint_only
from farwall.readers.dxf.faces import cut_faces
from farwall.readers.dxf.fixtures import find_fixtures
from farwall.readers.dxf.gather import gather
from farwall.readers.dxf.labels import find_labels
from farwall.readers.dxf.load import load
from farwall.readers.dxf.mend import joined
from farwall.readers.dxf.rooms import sort_faces
from farwall.readers.dxf.sheet import Sheet
from farwall.readers.dxf.signs import signs_at
from farwall.readers.dxf.unit import UnitFinding, find_unit
from farwall.readers.dxf.walls import find_walls
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
    try:
        return _read(metres, sheet, unit)
    except shapely.errors.GEOSException as error:
        what = "The lines of this drawing cannot be joined into a floor."
        remedy = "Save the floor plan alone, without other views, as DXF again."
        raise Refused(Mistake("", what, remedy)) from error


def _read(metres: Sheet, sheet: Sheet, unit: UnitFinding) -> Reading:
    bounds = joined(find_bounds(metres))
    walls = find_walls(metres, bounds)
    labels = find_labels(metres.words)
    faces = sort_faces(cut_faces(walls.lines), walls.portals, labels, footprint_only(bounds))
    doorwork = (*bounds.closing, *bounds.loose)
    signs = [signs_at(portal, metres, doorwork) for portal in walls.portals]
    ways = find_ways(walls.portals, signs, faces, walls.lines)
    standing, notes = find_fixtures(metres, faces.rooms, [way.portal for way in ways.openings])
    faces.left += notes
    return assemble(metres, unit, Parts(faces, ways, standing, _mended(sheet, bounds)))


def _mended(sheet: Sheet, bounds: Bounds) -> list[Note]:
    notes = [Note("recovered", words) for words in sheet.repairs]
    if bounds.doubles:
        notes.append(
            Note("doubles-dropped", f"{bounds.doubles} lines drawn twice were taken once.")
        )
    for where, gap_m in bounds.gaps:
        what = f"Two wall lines that missed each other by {gap_m * 1000:.0f} mm were joined."
        notes.append(Note("gap-closed", what, where))
    return notes
