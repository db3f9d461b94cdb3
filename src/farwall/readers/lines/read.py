"""From a sheet of loose lines to a reading: find the unit, close rooms, name them."""

from __future__ import annotations

from dataclasses import replace

import shapely

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.readers.lines.assemble import Parts, assemble
from farwall.readers.lines.bands import laid_out
from farwall.readers.lines.bounds import Bounds, find_bounds, footprint_only
from farwall.readers.lines.clutter import cleared
from farwall.readers.lines.dimensions import without_dimensions
from farwall.readers.lines.faces import cut_faces
from farwall.readers.lines.fixtures import find_fixtures
from farwall.readers.lines.labels import find_labels
from farwall.readers.lines.mend import joined
from farwall.readers.lines.plans import find_plans
from farwall.readers.lines.reach import in_reach
from farwall.readers.lines.rooms import sort_faces
from farwall.readers.lines.sheet import Role, Sheet
from farwall.readers.lines.signs import Doorwork
from farwall.readers.lines.unit import UnitFinding, find_unit
from farwall.readers.lines.walls import find_walls
from farwall.readers.lines.ways import find_ways


def read_sheet(sheet: Sheet, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor on a sheet that has been freed from its file format.

    `scale_m_per_unit` [m] overrules what the sheet says and shows of its unit. A reading without
    rooms means that no floor is on it. Raises Refused when its lines cannot be joined.
    """
    sheet, dimensions = without_dimensions(in_reach(sheet))
    unit = find_unit(sheet, scale_m_per_unit=scale_m_per_unit)
    drawn = replace(sheet, strokes=tuple(s for s in sheet.strokes if s.role is not Role.PAPER))
    metres = laid_out(drawn.scaled(unit.working_scale))
    try:
        return _read(metres, sheet, unit, dimensions)
    except shapely.errors.GEOSException as error:
        what = "The lines of this drawing cannot be joined into a floor."
        remedy = "Save the floor plan alone, without other views, into a file of its own."
        raise Refused(Mistake("", what, remedy)) from error


def _read(metres: Sheet, sheet: Sheet, unit: UnitFinding, dimensions: int) -> Reading:
    metres, aside = cleared(metres)
    if dimensions:
        what = f"{dimensions} dimensions drawn as loose lines were read, and left out of the walls."
        aside.append(Note("dimension-lines", what))
    bounds = joined(find_bounds(metres))
    walls = find_walls(metres, bounds)
    labels = find_labels(metres.words)
    faces = sort_faces(cut_faces(walls.net), walls.portals, labels, footprint_only(bounds))
    doorwork = Doorwork(metres, (*bounds.closing, *bounds.loose))
    signs = [doorwork.signs_at(portal) for portal in walls.portals]
    storeys, asks = find_plans(faces, walls.portals, signs, metres.words)
    ways = find_ways(walls.portals, signs, faces, walls.lines)
    standing, notes = find_fixtures(metres, faces.rooms, [way.portal for way in ways.openings])
    faces.left += [*aside, *notes]
    return assemble(
        metres, unit, Parts(faces, ways, standing, _mended(sheet, bounds), storeys, tuple(asks))
    )


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
