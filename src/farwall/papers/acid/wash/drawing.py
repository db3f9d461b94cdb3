"""The floor of a wash day: rooms numbered in their order, the way one backs, drums, the way out."""

from __future__ import annotations

import math
from collections.abc import Sequence

import shapely
from shapely.ops import nearest_points

from farwall.facts.plan import Plan
from farwall.floor.geometry import Point
from farwall.floor.nouns import Room
from farwall.job.acid_day.washing.noun import WashDay, WashRoom
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import Words
from farwall.papers.drawing.floor_foot import EDGE
from farwall.papers.drawing.scene import Scene, Storey, middle, storeys
from farwall.papers.drawing.sheet import (
    Sheet,
    draw_fixtures,
    draw_openings,
    draw_walls,
    name_ways_out,
    outward,
)
from farwall.papers.drawing.whole_storey import Manner, name_or_key, stacked, storey_sheet
from farwall.papers.ink import INK, PAPER, RAMP, WHITE
from farwall.papers.lettering import LINE_HEIGHT, PAPER_LETTERING, Lettering, text_width, wrap
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units
from farwall.phrasebook import speaking

_BETWEEN, _ARROW, _INTO = 14.0, 22.0, 9.0
_LIGHT = RAMP[:4]
"""Words lie on every room: the two darkest steps are left out."""


def wash_svg(
    plan: Plan, day: WashDay, *, units: Units, width: float, height: float,
    lettering: Lettering = PAPER_LETTERING,
) -> str:  # fmt: skip
    """The floor with its rooms in the order of washing, for paper. [pt]"""

    def draw(part: Svg, storey: Storey) -> None:
        scene, foot = Scene(storey, ()), lettering.small * 5
        _draw(storey_sheet(part, plan, scene, units=units, lettering=lettering, foot=foot), day)

    manner = Manner(units, lettering, width, height)
    svg = stacked(storeys(plan), "wash", manner, draw, between=_BETWEEN)
    rooms = "; ".join(f"{one.order} {one.name}" for one in day.rooms)
    return svg.document(title="Wash day", description=f"Rooms in order: {rooms}.")


def _draw(sheet: Sheet, day: WashDay) -> None:
    storey = sheet.scene.storey
    mine = {one.room: one for one in day.rooms if one.room in storey.room_by_id}
    for one in mine.values():
        sheet.fill(storey.room_by_id[one.room].polygon.shape, fill=_shade(one, len(day.rooms)),
                   stroke=PAPER, stroke_width=0.6)  # fmt: skip
    draw_fixtures(sheet)
    draw_walls(sheet)
    draw_openings(sheet)
    name_ways_out(sheet, storey.ways_out, storey.floor)
    for one in mine.values():
        _back_out(sheet, one)
    if day.drums is not None and day.drums.room in storey.room_by_id:
        _drums(sheet, storey.room_by_id[day.drums.room])
    for one in sorted(mine.values(), key=lambda room: room.area_m2):
        _name(sheet, one)
    _foot(sheet)


def _shade(one: WashRoom, count: int) -> str:
    """Washed first lightest, last darkest; the number says the same."""
    return _LIGHT[round((one.order - 1) * (len(_LIGHT) - 1) / max(count - 1, 1))]


def _back_out(sheet: Sheet, one: WashRoom) -> None:
    """A short arrow through the door that one backs out by."""
    storey = sheet.scene.storey
    by_exit = {each.id: each.opening for each in sheet.plan.inputs.exits}
    doors = [each for each in storey.openings if one.room in each.rooms]
    through = [each for each in doors
               if one.way in each.rooms or each.id == by_exit.get(one.way)]  # fmt: skip
    if not through or one.way in by_exit:
        return  # the way out of the house has its own arrow
    door = max(through, key=lambda each: math.dist(*each.line))
    shape = storey.room_by_id[one.room].polygon.shape
    dx, dy = outward(door, shape)
    at = sheet.frame.at(middle(door))
    start: Point = (at[0] - _ARROW * dx, at[1] - _ARROW * dy)
    tip: Point = (at[0] + _INTO * dx, at[1] + _INTO * dy)
    marks.arrow(sheet.svg, [start, tip], width=1.6)
    sheet.board.take_line([start, tip], 4)


def _drums(sheet: Sheet, room: Room) -> None:
    """Three drums in a corner of their room, named."""
    at = sheet.frame.shape(room.polygon.shape.buffer(-0.7))
    at = at if not at.is_empty else sheet.frame.shape(room.polygon.shape)
    box = at.bounds
    corners = [(x, y) for x in (box[0], box[2]) for y in (box[1], box[3])]
    ways = [sheet.frame.at(middle(each)) for each in sheet.scene.storey.openings
            if room.id in each.rooms]  # fmt: skip
    inside = [nearest_points(at, shapely.Point(each))[0] for each in corners]
    place = max(inside, key=lambda one: min((math.dist((one.x, one.y), way) for way in ways),
                                            default=0.0))  # fmt: skip
    for k in (-1, 0, 1):
        centre = (place.x + 9 * k, place.y + (4 if k else -5))
        sheet.svg.element("circle", cx=centre[0], cy=centre[1], r=6, fill=WHITE, stroke=INK,
                          stroke_width=1.3)  # fmt: skip
    sheet.board.take((place.x - 16, place.y - 12, place.x + 16, place.y + 11))
    sheet.write_near(sheet.words(("drums",), sheet.lettering.small, bold=True),
                     (place.x, place.y), leader_from=60)  # fmt: skip


def _name(sheet: Sheet, one: WashRoom) -> None:
    """Number and name of a room; one too small for its name has the number, the key the rest."""
    shape = sheet.scene.storey.room_by_id[one.room].polygon.shape
    place = sheet.frame.shape(shape.difference(sheet.scene.storey.dry))
    mark = sheet.words((str(one.order),), sheet.lettering.body, bold=True)
    ways = _ways_to_say(sheet, one, place.bounds)
    name_or_key(sheet, place, ways, mark, f"{one.order} {one.name}")


def _ways_to_say(
    sheet: Sheet, one: WashRoom, bounds: tuple[float, float, float, float]
) -> list[Words]:
    wide, lettering = bounds[2] - bounds[0], sheet.lettering
    found: dict[tuple[tuple[str, ...], float], Words] = {}
    for size in (lettering.body, lettering.small):
        for share in (0.95, 0.6, 0.4):
            lines = wrap(one.name, wide * share / lettering.widen, size)
            if lines:
                found[lines, size] = sheet.words(
                    lines, size, head=str(one.order), head_size=lettering.head
                )
    return sorted(found.values(), key=lambda words: (-words.size, len(words.lines)))


def _foot(sheet: Sheet) -> None:
    """The scale, what shade and arrow mean, and the rooms too small for their names."""
    svg, size = sheet.svg, sheet.lettering.small
    row = svg.height + size * 1.6
    marks.scale_bar(svg, (EDGE, row), units_per_m=sheet.frame.scale, size=size)
    x = EDGE + marks.SCALE_BAR_UNITS + 52
    svg.text((x, row + size * 0.35), "washed first", size, anchor="start")
    x += text_width("washed first", size) * 1.05 + 6
    for colour in _LIGHT:
        svg.element("rect", x=x, y=row - size * 0.45, width=16, height=size * 0.9, fill=colour,
                    stroke=INK, stroke_width=0.4)  # fmt: skip
        x += 16
    svg.text((x + 6, row + size * 0.35), "last", size, anchor="start")
    x += 6 + text_width("last", size) + 22
    marks.arrow(svg, [(x, row), (x + 26, row)], width=1.6)
    svg.text((x + 34, row + size * 0.35), "back out this way", size, anchor="start")
    svg.height = row + size * 1.6
    _key(sheet, size)


def _key(sheet: Sheet, size: float) -> None:
    if not sheet.key:
        return
    ordered: Sequence[str] = sorted(sheet.key, key=lambda one: int(one.split()[0]))
    wide = (sheet.svg.width - 2 * EDGE) / sheet.lettering.widen
    with speaking("en"):  # names only: no sentence is sought in them
        for line in wrap(" · ".join(ordered), wide, size) or ordered:
            sheet.svg.height += size * LINE_HEIGHT
            sheet.svg.text((EDGE, sheet.svg.height - size * 0.3), line, size, anchor="start")
