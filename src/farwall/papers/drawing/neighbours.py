"""What lies around a field: floor already sprayed is hatched, rooms beyond its doors are named."""

from __future__ import annotations

import shapely

from farwall.facts.plan import Field
from farwall.papers.drawing.marks import HATCH
from farwall.papers.drawing.scene import way_of
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import SOFT
from farwall.papers.lettering import wrap


def draw_beyond(sheet: Sheet, field: Field) -> None:
    """Hatch the floor of fields of the same coat that were sprayed before this one."""
    rooms = sheet.scene.room_by_id
    for other in sheet.plan.fields:
        if other.coat != field.coat or other.order >= field.order:
            continue
        for band in other.bands:
            point = band.polygon.shape.representative_point()
            if any(room.polygon.shape.distance(point) < 0.5 for room in rooms.values()):
                break
        else:
            continue
        shape = shapely.union_all([band.polygon.shape for band in other.bands])
        sheet.fill(shape, fill=f"url(#{sheet.svg.ident}-{HATCH})")


def name_beyond(sheet: Sheet, field: Field) -> None:
    """Names of the rooms around the field, where the part that shows has room for them.

    The room into which the person leaves is named at the way there.
    """
    way = way_of(sheet.plan, field)
    named = {*field.rooms, *(way.rooms if way is not None else ())}
    frame = sheet.frame
    left, top, right, low = sheet.view
    view = shapely.box(left + 4, top + 4, right - 4, low - 4)
    size = sheet.lettering.small
    for room in sheet.scene.rooms:
        if room.id in named:
            continue
        part = shapely.intersection(frame.shape(room.polygon.shape), view)
        if part.is_empty or part.area < 100:
            continue
        left, _, right, _ = part.bounds
        lines = wrap(room.label, (right - left - 6) / sheet.lettering.widen, size)
        if lines and len(lines) <= 2:
            words = sheet.words(lines, size)
            centre = sheet.board.place_inside(words, part)
            if centre is not None:
                sheet.write(words, centre, cased=True, fill=SOFT)
