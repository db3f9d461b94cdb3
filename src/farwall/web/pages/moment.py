"""The floor at a moment as one SVG for the page: drawn as on paper, its names put on it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.job.moments import Moment
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import Board, centres_inside
from farwall.papers.drawing.frame import Frame, frame_for
from farwall.papers.drawing.moment_view import draw_moment, sun_at
from farwall.papers.drawing.scene import Scene, Storey, way_of
from farwall.papers.drawing.sheet import Sheet, name_ways_out, outward
from farwall.papers.drawing.sun_marks import sun_pattern
from farwall.papers.ink import DANGER, SOFT
from farwall.papers.lettering import SCREEN_LETTERING, text_width
from farwall.papers.svg import Svg, attributes, number, plain
from farwall.papers.xml_text import escape
from farwall.web.pages.floor_people import draw_people, level_box
from farwall.web.pages.moment_words import MomentWords, moment_of, words_of
from farwall.web.pages.shown import Shown
from farwall.web.pages.standing import Standing, standing
from farwall.web.pages.tread import tread_patterns
from farwall.web.words import said

WIDTH, HEIGHT = 860.0, 500.0
_SIDE, _FOOT = 58.0, 24.0
_LARGE, _CAPTION = 0.64, 26.0
_IDENT = "floor"
_TRIED = 150
_ASIDE = 0.7
"""A way out goes to the side when its direction lies within 45 degrees of it."""
_NARROW_WIDTH, _NARROW_SIZE = 358.0, 11.5
"""On a phone the drawing is this wide [px]; names that do not fit their room then are left out."""


def floor_at(shown: Shown, minute: float, *, storey: int = 0, path: str = "") -> str:
    """The floor at a minute as SVG text; its description tells the moment line by line.

    storey: which of several is drawn large (from 1), else the one that is sprayed; the others
    stand beside it. path: address of the house, for the links from storey to storey.
    """
    moment = moment_of(shown.floor_plan, minute)
    stands = standing(shown.course, moment, shown.went)
    words = words_of(shown, moment, stands)
    grounds = in_order(moment, shown.grounds, storey)
    svg = Svg(width=WIDTH, height=HEIGHT, family=SCREEN_LETTERING.family, ident=_IDENT)
    svg.raw(marks.hatch_pattern(_IDENT, ink=SOFT))
    svg.raw(sun_pattern(_IDENT))
    svg.raw(tread_patterns(_IDENT))
    shown_marks = dict.fromkeys(["off"] if moment is not None and moment.done else [])
    for n, (ground, frame) in enumerate(frames(grounds)):
        if moment is None:
            continue
        here = _on_it(moment, ground)
        bare = here if stands is None else replace(here, done=())
        draw_moment(
            svg, shown.floor_plan, ground, bare, frame,
            units=shown.units, lettering=SCREEN_LETTERING, under=_under(stands, ground),
        )  # fmt: skip
        if sun_at(shown.floor_plan, ground, minute):
            shown_marks["sun"] = None
        _name(svg, shown, ground, here, frame, large=n == 0, stands=stands)
        if len(grounds) > 1:
            link = "" if n == 0 or not path else f"{path}?minute={minute:g}&storey="
            _caption(svg, shown.grounds, ground, frame, link=link)
    if moment is not None and moment.wet:
        shown_marks |= dict.fromkeys(["wet", "edge"])
    if stands is not None:
        shown_marks.pop("off", None)
        shown_marks |= dict.fromkeys([stands.tread] if stands.tread else [])
    ground, frame = frames(grounds)[0]
    south = frame.at((ground.outside[0], ground.outside[1]))[1]
    svg.height = min(HEIGHT, south + _FOOT) if len(grounds) == 1 else HEIGHT
    return _root(svg, words, minute, " ".join(shown_marks))


def in_order(moment: Moment | None, grounds: list[Storey], storey: int) -> list[Storey]:
    """The storeys, first the one that was asked for (from 1), else the one being sprayed."""
    field = (moment.field or (moment.done[-1] if moment.done else None)) if moment else None
    rooms = set(field.rooms) if field is not None else set()
    asked = next((one for one in grounds if rooms & set(one.room_by_id)), grounds[0])
    if 0 < storey <= len(grounds):
        asked = grounds[storey - 1]
    return [asked, *(one for one in grounds if one is not asked)]


def frames(grounds: list[Storey]) -> list[tuple[Storey, Frame]]:
    """Where each storey lies on the drawing: the first large, the others beside it."""
    if len(grounds) == 1:
        return [(grounds[0], _frame(grounds[0], _SIDE, 2, WIDTH - 2 * _SIDE, HEIGHT - _FOOT - 2))]
    large, gap = _LARGE * WIDTH, 16.0
    found = [(grounds[0], _frame(grounds[0], 8, _CAPTION, large - 16, HEIGHT - _CAPTION - _FOOT))]
    each = HEIGHT / (len(grounds) - 1)
    for n, ground in enumerate(grounds[1:]):
        top, room = n * each + _CAPTION, WIDTH - large - gap
        found.append((ground, _frame(ground, large + gap, top, room, each - _CAPTION - 8)))
    return found


def _frame(ground: Storey, left: float, top: float, width: float, height: float) -> Frame:
    return frame_for(ground.outside, left=left, top=top, width=width, height=height)


def _on_it(moment: Moment, ground: Storey) -> Moment:
    """The moment without people and wet floor that are on another storey."""
    at_hand = moment.field or (moment.done[-1] if moment.done else None)
    if at_hand is None or set(at_hand.rooms) & set(ground.room_by_id):
        return moment
    return replace(moment, people=(), wet=())


def _under(stands: Standing | None, ground: Storey) -> Callable[[Sheet], None] | None:
    """The mark over all floor that says whether it may be walked on."""
    if stands is None or not stands.tread:
        return None

    def draw(sheet: Sheet) -> None:
        floor = shapely.difference(ground.floor, ground.dry)
        sheet.fill(floor, fill=f"url(#{_IDENT}-{stands.tread if stands else ''})")

    return draw


def _caption(svg: Svg, all_: list[Storey], ground: Storey, frame: Frame, *, link: str) -> None:
    """The storey's name over it; those beside lead to themselves."""
    place = next(n for n, one in enumerate(all_, 1) if one is ground)
    name = ground.rooms[0].storey or said("storey-n", n=place)
    at = (frame.at((ground.outside[0], ground.outside[3]))[0], frame.top - 8)
    if link:
        svg.raw(f'<a href="{escape(link)}{place}" class="storey">')
    svg.text(at, name, SCREEN_LETTERING.body, anchor="start", bold=not link)
    if link:
        svg.raw("</a>")


def _name(
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
    lines = [shapely.LineString(stop.line).buffer(0.05) for f in fields for stop in f.stop_lines]
    kept_clear = shapely.union_all([ground.dry, *lines])
    for room in ground.rooms:
        floor = shapely.difference(room.polygon.shape, kept_clear)
        floor = max(shapely.get_parts(floor), key=lambda part: part.area)
        _name_room(sheet, room.label, frame.shape(floor), stands.told if stands else "")


def _runs(moment: Moment, frame: Frame) -> list[BaseGeometry]:
    """The runs of the live edge on the drawing."""
    line = moment.edge.line if moment.edge is not None else shapely.LineString()
    parts = shapely.get_parts(frame.shape(line)).tolist()
    return [part for part in parts if isinstance(part, shapely.LineString) and part.length > 0]


def _name_room(sheet: Sheet, label: str, shape: BaseGeometry, state: str) -> None:
    left, _, right, _ = shape.bounds
    for lines in ((label, state), (label,)) if state else ((label,),):
        words = sheet.words(lines, SCREEN_LETTERING.small)
        centre = sheet.board.place_inside(words, shape)
        if centre is None:
            continue
        most = max(text_width(one, _NARROW_SIZE) for one in lines)
        narrow = most * 1.12 < (right - left) * _NARROW_WIDTH / WIDTH - 6
        sheet.svg.open_group(**{"class": "room" if narrow else "room wide-only"})
        sheet.write(words, centre, cased=True)
        sheet.svg.close_group()
        return


def _root(svg: Svg, words: MomentWords, minute: float, shown_marks: str) -> str:
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
            "data-marks": shown_marks,
        }
    )
    return "\n".join([
        f"<svg{head}>",
        f'<title id="floor-title">{escape(plain(words.time))}</title>',
        f'<desc id="floor-desc">{escape(plain(lines))}</desc>',
        *svg.parts,
        "</svg>\n",
    ])  # fmt: skip
