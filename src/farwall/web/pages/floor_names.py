"""The words on the floor of a moment: the live edge's age, the way out, the rooms."""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.floor.nouns import Room
from farwall.job.moments import Moment
from farwall.papers.drawing.board import Board, Words, centres_inside
from farwall.papers.drawing.frame import Frame
from farwall.papers.drawing.patch_marks import draw_patches, name_patches
from farwall.papers.drawing.scene import Scene, Storey, way_of
from farwall.papers.drawing.sheet import Sheet, name_ways_out, outward
from farwall.papers.ink import DANGER
from farwall.papers.lettering import SCREEN_LETTERING, text_width
from farwall.papers.svg import Svg
from farwall.web.pages.floor_people import draw_people, level_box
from farwall.web.pages.shown import Shown
from farwall.web.pages.standing import Standing
from farwall.web.words import said

WIDTH = 860.0
"""Of the drawing [px]."""
_TRIED = 150
_ASIDE = 0.7
"""A way out goes to the side when its direction lies within 45 degrees of it."""
NARROW_WIDTH, _NARROW_SIZE = 358.0, 11.5
"""On a phone the drawing is this wide [px]; names that do not fit their room then are left out."""


def name_all(
    svg: Svg,
    shown: Shown,
    ground: Storey,
    moment: Moment,
    frame: Frame,
    *,
    large: bool,
    stands: Standing | None,
) -> None:
    """The live edge's age, the way out, the rooms: none on another, nor on anybody."""
    plan, page = shown.floor_plan, (0.0, 0.0, svg.width, svg.height)
    board = Board(page)
    fields = tuple(f for f in plan.fields if f.coat == moment.coat)
    sheet = Sheet(
        plan, Scene(ground, fields), svg, frame, board, SCREEN_LETTERING, shown.units, page
    )  # fmt: skip
    for person in moment.people:
        x, y = frame.at(person.at)
        board.take((x - 12, y - 12, x + 12, y + 12))
        board.take(level_box(person, frame))
    stops = [frame.shape(shapely.LineString(stop.line)) for f in fields for stop in f.stop_lines]
    for line in [*stops, *_runs(moment, frame)]:
        board.take_line([(x, y) for x, y in line.coords], 2)
    if moment.edge is not None and moment.field in fields:
        told = sheet.words((said("floor-edge", age=f"{moment.edge.age_min:.1f}"),), 14, bold=True)
        at = frame.at(moment.edge.at)
        on_floor = centres_inside(told, frame.shape(ground.floor_of(moment.field)), near=at)
        svg.open_group(**{"class": "wide-only"})
        sheet.write_near(told, at, first=on_floor[:_TRIED], fill=DANGER, leader_from=40)
        svg.close_group()
    draw_people(sheet, moment, plan.inputs.tools.tank_l)
    field = moment.field if stands is None and large else None
    way = way_of(plan, field) if field is not None else None
    if way is not None and field is not None and way in ground.openings:
        floor = ground.floor_of(field)
        label = said("floor-way-out" if way in ground.ways_out else "floor-way-on")
        across = outward(way, floor)[0]
        # only out of the house may words stand beside the wall and be cut off by a narrow screen
        across = across if way in ground.ways_out else 0.0
        side = "right" if across > _ASIDE else "left" if across < -_ASIDE else "along"
        svg.open_group(**{"class": f"way-{side}"})
        name_ways_out(sheet, [way], floor, (label,))
        svg.close_group()
    state = stands.told if stands is not None else ""
    patches = draw_patches(sheet)
    for room, shape in _room_shapes(shown, sheet, moment.coat):
        _name_room(shown, sheet, room, shape, state)
    svg.open_group(**{"class": "wide-only"})
    name_patches(sheet, patches)
    svg.close_group()


def _runs(moment: Moment, frame: Frame) -> list[BaseGeometry]:
    """The runs of the live edge on the drawing."""
    line = moment.edge.line if moment.edge is not None else shapely.LineString()
    parts = shapely.get_parts(frame.shape(line)).tolist()
    return [part for part in parts if isinstance(part, shapely.LineString) and part.length > 0]


def _room_shapes(shown: Shown, sheet: Sheet, coat: str) -> list[tuple[Room, BaseGeometry]]:
    """Every room with the part of it, on the drawing, where its name may stand; kept."""
    ground, frame = sheet.scene.storey, sheet.frame
    key = ("shapes", ground.rooms[0].id, coat, frame)
    found = shown.kept_places.get(key)
    if found is None:
        stops = [stop.line for field in sheet.scene.fields for stop in field.stop_lines]
        lines = [shapely.LineString(line).buffer(0.05) for line in stops]
        clear = shapely.union_all([ground.dry, *lines])
        found = []
        for room in ground.rooms:
            parts = shapely.get_parts(shapely.difference(room.polygon.shape, clear))
            largest = max(parts, key=lambda part: part.area)
            found.append((room, frame.shape(largest)))
        shown.kept_places[key] = found
    return found


def _centres(
    shown: Shown, sheet: Sheet, words: Words, room: Room, shape: BaseGeometry
) -> list[Point]:
    """Where words may stand in a room, the best first; kept, for it is asked at every moment."""
    key = ("centres", room.id, words.lines, sheet.frame, shape.bounds)
    found: list[Point] | None = shown.kept_places.get(key)
    if found is None:
        found = shown.kept_places[key] = centres_inside(words, shape)[:_TRIED]
    return found


def _name_room(shown: Shown, sheet: Sheet, room: Room, shape: BaseGeometry, state: str) -> None:
    left, _, right, _ = shape.bounds
    label = room.label
    for lines in ((label, state), (label,)) if state else ((label,),):
        words = sheet.words(lines, SCREEN_LETTERING.small)
        centre = sheet.board.place(words, _centres(shown, sheet, words, room, shape))
        if centre is None:
            continue
        most = text_width(label, _NARROW_SIZE)
        narrow = most * 1.12 < (right - left) * NARROW_WIDTH / WIDTH - 6
        sheet.svg.open_group(**{"class": "room" if narrow else "room wide-only"})
        for at, line, size, bold in words.baselines(centre):
            # on a narrow screen type is larger than its lines are apart: the room's name alone
            aside = line == state and line != label
            if aside:
                sheet.svg.open_group(**{"class": "wide-only"})
            sheet.svg.text(at, line, size, bold=bold, cased=True)
            if aside:
                sheet.svg.close_group()
        sheet.svg.close_group()
        return
