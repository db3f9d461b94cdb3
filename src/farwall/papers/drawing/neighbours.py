"""What lies around a field: floor already sprayed is hatched, rooms beyond its doors are named."""

from __future__ import annotations

import shapely

from farwall.facts.plan import Field
from farwall.papers.drawing.frame import path_data
from farwall.papers.drawing.marks import HATCH
from farwall.papers.drawing.scene import way_of
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import SOFT
from farwall.papers.lettering import wrap


def draw_beyond(sheet: Sheet, field: Field) -> None:
    """Hatch the floor of fields of the same coat that were sprayed before this one."""
    left, top, right, low = sheet.view
    view = shapely.box(left, top, right, low)
    storey = sheet.scene.storey
    for other in sheet.plan.fields:
        if other.coat != field.coat or other.order >= field.order:
            continue
        if any(room in storey.room_by_id for room in other.rooms):
            floor = storey.floor_of(other)
            if not sheet.shows(floor):
                continue
            shape = sheet.frame.shape(floor)
            if shape.intersects(view):
                path = path_data(shape.simplify(0.5))
                hatch = f"url(#{sheet.svg.ident}-{HATCH})"
                sheet.svg.element("path", d=path, fill_rule="evenodd", fill=hatch)


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
    for room in sheet.scene.storey.rooms:
        if room.id in named or not sheet.shows(room.polygon.shape):
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
