"""Floor of another make on a drawing: its edge in short dashes, its name, what becomes of it."""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import FloorPatch
from farwall.floor.geometry import Point
from farwall.papers.drawing.board import Words
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import INK, PAPER

EDGE_DASH = "2.5 2"
"""Shorter than a stop line's: an edge that shows and where nobody stops."""


def draw_patches(sheet: Sheet, *, within: BaseGeometry | None = None) -> list[FloorPatch]:
    """Edges of the patches that are stained along; those left dry are drawn as what is kept dry.

    Returns what is yet to be named.
    """
    drawn = []
    for one in sheet.plan.patches:
        room = sheet.scene.storey.room_by_id.get(one.room)
        if one.polygon is None or room is None or not one.sprayed:
            continue
        shape = shapely.intersection(one.polygon.shape, room.polygon.shape)
        if shape.is_empty or (within is not None and not within.intersects(shape)):
            continue
        path = sheet.frame.path(shape)
        sheet.svg.element("path", d=path, fill="none", stroke=PAPER, stroke_width=2.6)
        sheet.svg.element(
            "path", d=path, fill="none", stroke=INK, stroke_width=1.1, stroke_dasharray=EDGE_DASH
        )
        drawn.append(one)
    return drawn


def name_patches(sheet: Sheet, patches: list[FloorPatch]) -> None:
    """Kind and id of each patch on its floor, else beside it with a leader."""
    for one in patches:
        if one.polygon is None:
            continue
        room = sheet.frame.shape(sheet.scene.storey.room_by_id[one.room].polygon.shape)
        place = shapely.intersection(sheet.frame.shape(one.polygon.shape), room)
        for lines in ((f"{one.kind} {one.id}",), (one.kind, one.id)):
            words = sheet.words(lines, sheet.lettering.small)
            centre = sheet.board.place_inside(words, place)
            if centre is not None:
                sheet.write(words, centre, cased=True)
                break
        else:
            words = sheet.words((f"{one.kind} {one.id}",), sheet.lettering.small)
            point = place.representative_point()
            beside = _beside(words, place)
            first = [one for one in beside if room.contains(shapely.box(*words.box(one)))]
            sheet.write_near(words, (point.x, point.y), first=first, leader_from=4)


def _beside(words: Words, place: BaseGeometry) -> list[Point]:
    """Middles of the words beside a place: right, left, above and below."""
    left, top, right, low = place.bounds
    mid = ((left + right) / 2, (top + low) / 2)
    across, down = words.width / 2 + 5, words.height / 2 + 4
    sides = [(right + across, mid[1]), (left - across, mid[1])]
    return [*sides, (mid[0], top - down), (mid[0], low + down)]
