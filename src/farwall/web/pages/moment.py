"""The floor at a moment as one SVG for the page: drawn as on paper, its names put on it."""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.job.moments import Moment
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import Board, centres_inside
from farwall.papers.drawing.frame import Frame, frame_for
from farwall.papers.drawing.moment_view import draw_moment
from farwall.papers.drawing.scene import Scene, Storey, way_of
from farwall.papers.drawing.sheet import Sheet, name_ways_out, outward
from farwall.papers.drawing.sun_marks import sun_pattern
from farwall.papers.ink import DANGER, SOFT
from farwall.papers.lettering import SCREEN_LETTERING, text_width
from farwall.papers.svg import Svg, attributes, number, plain
from farwall.papers.xml_text import escape
from farwall.web.pages.moment_words import MomentWords, moment_of, words_of
from farwall.web.pages.shown import Shown
from farwall.web.words import said

WIDTH, HEIGHT = 860.0, 500.0
_SIDE, _FOOT = 58.0, 24.0
_IDENT = "floor"
_TRIED = 150
_ASIDE = 0.7
"""A way out goes to the side when its direction lies within 45 degrees of it."""
_NARROW_WIDTH, _NARROW_SIZE = 358.0, 11.5
"""On a phone the drawing is this wide [px]; names that do not fit their room then are left out."""


def floor_at(shown: Shown, minute: float) -> str:
    """The floor at a minute as SVG text; its description tells the moment line by line."""
    moment = moment_of(shown.plan, minute)
    words = words_of(shown.plan, moment, shown.clock, shown.units)
    ground = _storey(moment, shown.grounds)
    svg = Svg(width=WIDTH, height=HEIGHT, family=SCREEN_LETTERING.family, ident=_IDENT)
    frame = frame_for(
        ground.outside, left=_SIDE, top=2, width=WIDTH - 2 * _SIDE, height=HEIGHT - _FOOT - 2
    )
    svg.raw(marks.hatch_pattern(_IDENT, ink=SOFT))
    svg.raw(sun_pattern(_IDENT))
    if moment is not None:
        draw_moment(
            svg, shown.plan, ground, moment, frame, units=shown.units, lettering=SCREEN_LETTERING
        )
        _name(svg, shown, ground, moment, frame)
    south = frame.at((ground.outside[0], ground.outside[1]))[1]
    svg.height = min(HEIGHT, south + _FOOT)
    return _root(svg, words, minute)


def _storey(moment: Moment | None, grounds: list[Storey]) -> Storey:
    field = (moment.field or (moment.done[-1] if moment.done else None)) if moment else None
    rooms = set(field.rooms) if field is not None else set()
    return next((one for one in grounds if rooms & set(one.room_by_id)), grounds[0])


def _name(svg: Svg, shown: Shown, ground: Storey, moment: Moment, frame: Frame) -> None:
    """The live edge's age, the way out, the rooms: none on another, nor on anybody."""
    plan, page = shown.plan, (0.0, 0.0, svg.width, svg.height)
    board = Board(page)
    fields = tuple(f for f in plan.fields if f.coat == moment.coat)
    sheet = Sheet(
        plan, Scene(ground, fields), svg, frame, board, SCREEN_LETTERING, shown.units, page
    )  # fmt: skip
    for person in moment.people:
        x, y = frame.at(person.at)
        board.take((x - 12, y - 12, x + 12, y + 12))
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
    field = moment.field
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
    lines = [shapely.LineString(stop.line).buffer(0.05) for f in fields for stop in f.stop_lines]
    kept_clear = shapely.union_all([ground.dry, *lines])
    for room in ground.rooms:
        floor = shapely.difference(room.polygon.shape, kept_clear)
        floor = max(shapely.get_parts(floor), key=lambda part: part.area)
        _name_room(sheet, room.label, frame.shape(floor))


def _runs(moment: Moment, frame: Frame) -> list[BaseGeometry]:
    """The runs of the live edge on the drawing."""
    line = moment.edge.line if moment.edge is not None else shapely.LineString()
    parts = shapely.get_parts(frame.shape(line)).tolist()
    return [part for part in parts if isinstance(part, shapely.LineString) and part.length > 0]


def _name_room(sheet: Sheet, label: str, shape: BaseGeometry) -> None:
    words = sheet.words((label,), SCREEN_LETTERING.small)
    centre = sheet.board.place_inside(words, shape)
    if centre is None:
        return
    left, _, right, _ = shape.bounds
    narrow = text_width(label, _NARROW_SIZE) * 1.12 < (right - left) * _NARROW_WIDTH / WIDTH - 6
    sheet.svg.open_group(**{"class": "room" if narrow else "room wide-only"})
    sheet.write(words, centre, cased=True)
    sheet.svg.close_group()


def _root(svg: Svg, words: MomentWords, minute: float) -> str:
    lines = "\n".join([words.head, words.next, *words.lines])
    head = attributes(
        {
            "xmlns": "http://www.w3.org/2000/svg",
            "id": "floor",
            "viewBox": f"0 0 {number(svg.width)} {number(svg.height)}",
            "role": "img",
            "aria-labelledby": "floor-title floor-desc",
            "font-family": svg.family,
            "fill": "#1f2a30",
            "data-minute": f"{minute:g}",
        }
    )
    return "\n".join([
        f"<svg{head}>",
        f'<title id="floor-title">{escape(plain(words.time))}</title>',
        f'<desc id="floor-desc">{escape(plain(lines))}</desc>',
        *svg.parts,
        "</svg>\n",
    ])  # fmt: skip
