"""The floor with its stop lines lettered and its saw cuts numbered, for paper."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Plan
from farwall.floor.geometry import Point
from farwall.floor.nouns import Room
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import Words
from farwall.papers.drawing.floor_foot import EDGE
from farwall.papers.drawing.scene import Scene, Storey, storeys
from farwall.papers.drawing.sheet import (
    Sheet,
    draw_fixtures,
    draw_walls,
    name_ways_out,
)
from farwall.papers.drawing.whole_storey import (
    Manner,
    letter_of,
    name_or_key,
    stacked,
    storey_sheet,
)
from farwall.papers.ink import INK, PAPER
from farwall.papers.lettering import LINE_HEIGHT, PAPER_LETTERING, text_width, wrap
from farwall.papers.office.stop_lines import Cut, Stop
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units
from farwall.phrasebook import speaking

_BETWEEN = 14.0
_CUT_DASH = "1 2.5"


def stop_svg(
    plan: Plan, stops: Sequence[Stop], cuts: Sequence[Cut], *, units: Units, width: float,
    height: float,
) -> str:  # fmt: skip
    """The floor with the marks of the list, storeys one above the other. [pt]"""
    lettering = PAPER_LETTERING

    def draw(part: Svg, storey: Storey) -> None:
        scene, foot = Scene(storey, ()), lettering.small * 5
        sheet = storey_sheet(part, plan, scene, units=units, lettering=lettering, foot=foot)
        _draw(sheet, stops, cuts)

    manner = Manner(units, lettering, width, height)
    svg = stacked(storeys(plan), "stops", manner, draw, between=_BETWEEN)
    return svg.document(title="Stop lines", description=", ".join(one.mark for one in stops))


def _draw(sheet: Sheet, stops: Sequence[Stop], cuts: Sequence[Cut]) -> None:
    storey = sheet.scene.storey
    here = {room.id for room in storey.rooms}
    mine = [one for one in stops if set(one.rooms) & here]
    own = [one for one in cuts if set(one.rooms) & here]
    draw_fixtures(sheet)
    draw_walls(sheet)
    _doors(sheet, {one.line.id for one in mine})
    for cut in own:
        _cut(sheet, cut)
    lines = [_line(sheet, stop.line.line, dash=marks.STOP_DASH, width=1.8) for stop in mine]
    name_ways_out(sheet, storey.ways_out, storey.floor)
    for stop, line in zip(mine, lines, strict=True):
        _mark(sheet, stop.mark, line)
    for cut in own:
        _mark(sheet, cut.mark, [sheet.frame.at(point) for point in cut.line])
    for room in sorted(storey.rooms, key=lambda one: one.polygon.shape.area):
        _name(sheet, room)
    _foot(sheet, cuts=bool(own))


def _doors(sheet: Sheet, stops: set[str]) -> None:
    """Thin lines of the doors at which nothing ends."""
    for opening in sheet.scene.storey.openings:
        if opening.id not in stops and opening.kind in {"door", "outside"}:
            line = [sheet.frame.at(point) for point in opening.line]
            sheet.svg.line(line, stroke=INK, stroke_width=0.8)


def _line(sheet: Sheet, points: Sequence[Point], *, dash: str, width: float) -> list[Point]:
    line = [sheet.frame.at(point) for point in points]
    sheet.svg.line(line, stroke=PAPER, stroke_width=5)
    sheet.svg.line(line, stroke=INK, stroke_width=width, stroke_dasharray=dash)
    sheet.board.take_line(line, 2)
    return line


def _cut(sheet: Sheet, cut: Cut) -> None:
    """A cut that is there is dotted; one that would have to be made is drawn as it is sawn."""
    if not cut.used:
        _line(sheet, cut.line, dash=_CUT_DASH if cut.there else "3 2", width=1.2)


def _mark(sheet: Sheet, mark: str, line: Sequence[Point]) -> None:
    """The letter or number beside the middle of its line."""
    at = ((line[0][0] + line[-1][0]) / 2, (line[0][1] + line[-1][1]) / 2)
    words = sheet.words((mark,), sheet.lettering.body, bold=True)
    off = words.width / 2 + 5
    ways = ((1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1))
    beside = [(at[0] + dx * off, at[1] + dy * (words.height / 2 + 2)) for dx, dy in ways]
    sheet.write_near(words, at, first=beside, leader_from=14, rings=30)


def _name(sheet: Sheet, room: Room) -> None:
    """The name of a room where it lies free; a smaller room has a letter, the key its name."""
    place = sheet.frame.shape(room.polygon.shape.difference(sheet.scene.storey.dry))
    letter = letter_of(len(sheet.key))
    mark = sheet.words((letter,), sheet.lettering.small)
    name_or_key(sheet, place, _ways_to_say(sheet, room, place), mark, f"{letter} {room.label}")


def _ways_to_say(sheet: Sheet, room: Room, place: BaseGeometry) -> Iterator[Words]:
    """The name broken and sized in all the ways that might fit, the best first."""
    left, _, right, _ = place.bounds
    for size in (sheet.lettering.body, sheet.lettering.small):
        for share in (0.9, 0.6, 0.4):
            lines = wrap(room.label, (right - left) * share / sheet.lettering.widen, size)
            if lines:
                yield sheet.words(lines, size)


def _foot(sheet: Sheet, *, cuts: bool) -> None:
    """The scale, what the dashes mean, and the rooms too small for their names."""
    svg, size = sheet.svg, sheet.lettering.small
    row = svg.height + size * 1.6
    marks.scale_bar(svg, (EDGE, row), units_per_m=sheet.frame.scale, size=size)
    x = EDGE + marks.SCALE_BAR_UNITS + 52
    told = [("stop line", marks.STOP_DASH, 1.8)]
    told += [("saw cut", _CUT_DASH, 1.2)] if cuts else []
    for words, dash, wide in told:
        svg.line([(x, row), (x + 26, row)], stroke=INK, stroke_width=wide, stroke_dasharray=dash)
        svg.text((x + 32, row + size * 0.35), words, size, anchor="start")
        x += 32 + text_width(words, size) * 1.1 + 22
    svg.height = row + size * 1.6
    if sheet.key:
        with speaking("en"):  # names only: no sentence is sought in them
            for line in wrap(" · ".join(sheet.key), svg.width - 2 * EDGE, size) or sheet.key:
                svg.height += size * LINE_HEIGHT
                svg.text((EDGE, svg.height - size * 0.3), line, size, anchor="start")
