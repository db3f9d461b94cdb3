"""The floor at a moment as one SVG for the page: drawn as on paper, its names put on it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import shapely

from farwall.job.moments import Moment
from farwall.papers.drawing import marks
from farwall.papers.drawing.frame import Frame, frame_for
from farwall.papers.drawing.moment_view import draw_moment, sun_at
from farwall.papers.drawing.scene import Storey
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.drawing.sun_marks import sun_pattern
from farwall.papers.ink import SOFT
from farwall.papers.lettering import SCREEN_LETTERING
from farwall.papers.svg import Svg, attributes, number, plain
from farwall.papers.xml_text import escape
from farwall.web.pages.floor_names import WIDTH, name_all
from farwall.web.pages.moment_words import MomentWords, moment_of, words_of
from farwall.web.pages.shown import Shown
from farwall.web.pages.standing import Standing, standing
from farwall.web.pages.tread import tread_patterns
from farwall.web.words import said

HEIGHT = 500.0
_SIDE, _FOOT = 58.0, 24.0
_LARGE, _CAPTION = 0.64, 26.0
_IDENT = "floor"


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
        name_all(svg, shown, ground, here, frame, large=n == 0, stands=stands)
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
