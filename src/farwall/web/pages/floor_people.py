"""Who is who on the floor, and what the tank beside the sprayer still holds."""

from __future__ import annotations

from farwall.job.moments import Moment, Person
from farwall.papers.drawing.board import Box
from farwall.papers.drawing.frame import Frame
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import INK, WHITE
from farwall.papers.lettering import SCREEN_LETTERING
from farwall.papers.svg import number
from farwall.web.words import said

_WIDE, _HIGH, _OFF = 8.0, 15.0, 11.0


def level_box(person: Person, frame: Frame) -> Box:
    """Where the small tank of a person is drawn: on the side away from the wand."""
    x, y = frame.at(person.at)
    left = person.ahead is not None and frame.at(person.ahead)[0] > x
    x0 = x - _OFF - _WIDE if left else x + _OFF
    return (x0, y - _HIGH / 2, x0 + _WIDE, y + _HIGH / 2)


def draw_people(sheet: Sheet, moment: Moment, tank_l: float) -> None:
    """The level in the first sprayer's tank; names where more than one is on the floor."""
    if moment.field is None:
        return
    for person in moment.people:
        if person.who == "sprayer":
            _level(sheet, person, moment.tank_l / max(tank_l, 1e-9))
    if len(moment.people) < 2:
        return
    for person in moment.people:
        helper = person.who.startswith("helper")
        name = said("floor-helper") if helper else person.who.removeprefix("sprayer").strip()
        if name:
            words = sheet.words((name,), SCREEN_LETTERING.small)
            sheet.svg.open_group(**{"class": "wide-only"})
            sheet.write_near(words, sheet.frame.at(person.at), leader_from=30)
            sheet.svg.close_group()


def _level(sheet: Sheet, person: Person, share: float) -> None:
    x0, y0, x1, y1 = level_box(person, sheet.frame)
    full = min(max(share, 0.0), 1.0) * (y1 - y0)
    sheet.svg.element("rect", x=x0 - 1, y=y0 - 1, width=x1 - x0 + 2, height=y1 - y0 + 2, fill=WHITE)
    d = f"M{number(x0)},{number(y0)}V{number(y1)}H{number(x1)}V{number(y0)}"
    sheet.svg.element("path", d=d, fill="none", stroke=INK, stroke_width=1.3)
    sheet.svg.element("rect", x=x0, y=y1 - full, width=x1 - x0, height=full, fill=INK)
