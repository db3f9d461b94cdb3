"""Words on the drawing of the masking: rooms, heights that differ, things, dams."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import replace

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.job.office.masking import Dam, FilmRun, ItemMasked, Masked, RoomMasked
from farwall.job.office.masking.joins import place_of
from farwall.job.office.masking.rules import fixture_kind
from farwall.papers.drawing.board import Words, centres_inside
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.lettering import wrap
from farwall.papers.masking.marks import symbol
from farwall.papers.masking.measures import run as long
from farwall.papers.masking.measures import tall
from farwall.papers.masking.words import named
from farwall.papers.words import length

_MARK_WIDE = "mm"
"""As wide as the symbol of a thing before its word."""
_TRIED, _NEAR = 400, 36.0
_SHARES = (0.95, 0.75, 0.55, 0.4)


def name_rooms(
    sheet: Sheet, rooms: Sequence[RoomMasked], masked: Masked, free: Mapping[str, BaseGeometry]
) -> None:
    """Number, name, height of film and length masked; where that has no room, the number."""
    heights = Counter(one.film_m for one in masked.rooms)
    usual_m = max(heights, key=lambda one: heights[one], default=0.0)
    for room in rooms:
        place = free[room.room]
        for words in _ways(sheet, room, place, usual_m):
            centre = sheet.board.place_inside(words, place)
            if centre is not None:
                sheet.write(words, centre)
                break
        else:
            _number_alone(sheet, room, place)
    named = {one.room for one in masked.rooms}
    for bare in sheet.scene.storey.rooms:
        if bare.id not in named:
            _not_masked(sheet, bare.label, sheet.frame.shape(bare.polygon.shape))


def _ways(sheet: Sheet, room: RoomMasked, place: BaseGeometry, usual_m: float) -> list[Words]:
    left, _, right, _ = place.bounds
    size, units = sheet.lettering.small, sheet.units
    high = tall(room.film_m, units) if room.film_m else ""
    told = [one for one in (high, long(room.wall_m, units)) if one]
    measures = [(" · ".join(told),), tuple(told)]
    ways: list[Words] = []
    for big in (size + 1, size):
        for share in _SHARES:
            lines = wrap(room.name, (right - left) * share / sheet.lettering.widen, big)
            if lines:
                ways += [
                    sheet.words((*lines, *one), big, head=str(room.number), head_size=big + 4)
                    for one in measures
                ]
    ways = sorted(dict.fromkeys(ways), key=lambda one: (-one.size, len(one.lines)))
    name = wrap(room.name, (right - left) * 0.95 / sheet.lettering.widen, size)
    if name and (room.film_m != usual_m or not high):
        ways.append(sheet.words((f"{room.number} {name[0]}", *name[1:], *measures[1][:1]), size))
        ways.append(sheet.words((str(room.number), *filter(None, (high,))), size))
    elif name:
        ways.append(sheet.words((f"{room.number} {name[0]}", *name[1:], *measures[1][:1]), size))
        ways.append(sheet.words((f"{room.number} {name[0]}", *name[1:]), size))
    return ways


def _number_alone(sheet: Sheet, room: RoomMasked, place: BaseGeometry) -> None:
    words = sheet.words((str(room.number),), sheet.lettering.small, bold=True)
    centre = sheet.board.place_inside(words, place)
    if centre is not None:
        sheet.write(words, centre)
        return
    point = place.representative_point()
    sheet.write_near(words, (point.x, point.y), rings=60)


def _not_masked(sheet: Sheet, name: str, place: BaseGeometry) -> None:
    left, _, right, _ = place.bounds
    size = sheet.lettering.small
    lines = wrap(name, (right - left) * 0.9 / sheet.lettering.widen, size) or ()
    for told in ((*lines, "not masked"), ("not masked",)):
        words = sheet.words(told, size)
        centre = sheet.board.place_inside(words, place)
        if centre is not None:
            sheet.write(words, centre)
            return


def name_fixtures(sheet: Sheet, rooms: Sequence[RoomMasked]) -> None:
    """What stands on the floor, with the height of film at its foot."""
    high = {run.what: run.film_m for room in rooms for run in room.runs if run.what != "wall"}
    for thing in sheet.scene.storey.fixtures:
        film_m = high.get(fixture_kind(thing.kind), 0.0)
        measure = tall(film_m, sheet.units) if film_m else ""
        place = sheet.frame.shape(thing.polygon.shape)
        for lines in ((f"{thing.kind} {measure}",), (thing.kind, measure), (measure,)):
            words = sheet.words(tuple(filter(None, lines)), sheet.lettering.small)
            centre = sheet.board.place_inside(words, place) if words.lines else None
            if centre is not None:
                sheet.write(words, centre)
                break


def name_tall(sheet: Sheet, rooms: Sequence[RoomMasked], free: Mapping[str, BaseGeometry]) -> None:
    """The height of film beside a wall where it is not the room's own, once around a corner."""
    for room in rooms:
        other = [
            one for one in room.runs if one.what == "wall" and one.film_m not in {0.0, room.film_m}
        ]
        begun = {(place_of(one.line[0]), one.film_m) for one in other}
        last = [one for one in other if (place_of(one.line[-1]), one.film_m) not in begun]
        for one in last or other[:1]:  # all around a room there is no last one
            _at_run(sheet, one, free[room.room])


def _at_run(sheet: Sheet, one: FilmRun, place: BaseGeometry) -> None:
    line = sheet.frame.shape(shapely.LineString(one.line))
    at = line.interpolate(0.5, normalized=True)
    words = sheet.words((tall(one.film_m, sheet.units),), sheet.lettering.small, bold=True)
    centre = sheet.board.place_inside(words, place, near=(at.x, at.y))
    if centre is not None:
        sheet.write(words, centre)


def name_items(sheet: Sheet, items: Sequence[ItemMasked], free: Mapping[str, BaseGeometry]) -> None:
    """Letter and word of each thing on the drawing; what is taken out says so.

    A thing of which only the room is known stands in its room, wherever there is space.
    """
    for item in items:
        words = sheet.words((item_words(item),), sheet.lettering.small)
        if item.at is not None:
            at = sheet.frame.at(item.at)
            place = free.get(item.room)
            inside = centres_inside(words, place, near=at)[:_TRIED] if place is not None else []
            near = [one for one in inside if math.dist(one, at) < words.width / 2 + _NEAR]
            sheet.write_near(words, at, first=near, leader_from=16)
        elif item.room in free:
            letter = sheet.words((item.letter,), sheet.lettering.small)
            any(_somewhere(sheet, item, one, free[item.room]) for one in (words, letter))


def _somewhere(sheet: Sheet, item: ItemMasked, words: Words, place: BaseGeometry) -> bool:
    with_mark = replace(words, lines=(f"{words.lines[0]}{_MARK_WIDE}",))
    centre = sheet.board.place_inside(with_mark, place)
    if centre is None:
        return False
    aside = (with_mark.width - words.width) / 2
    symbol(sheet.svg, item.kind, (centre[0] - words.width / 2 - 2, centre[1]))
    sheet.write(words, (centre[0] + aside, centre[1]))
    return True


def item_words(item: ItemMasked) -> str:
    """`a drain`, `b 2 × register`, `c metal: take out`."""
    many = f"{item.count} × " if item.count > 1 else ""
    out = ": take out" if item.take_out else ""
    return f"{item.letter} {many}{named(item.kind)}{out}"


def name_dam(sheet: Sheet, dam: Dam, at: Point, way: Point) -> None:
    """The word and the length of a dam, beyond it."""
    told = f"dam {length(dam.length_m, sheet.units, both=False)}"
    words = sheet.words((told,), sheet.lettering.small, bold=True)
    dx, dy = way
    reach_x, reach_y = words.width / 2 + 6, words.height / 2 + 5
    first = [
        (at[0] + dx * reach_x + k * dy, at[1] + dy * reach_y + k * dx)
        for k in (0.0, 14.0, -14.0, 28.0, -28.0)
    ]
    sheet.write_near(words, at, first=first, leader_from=24)
