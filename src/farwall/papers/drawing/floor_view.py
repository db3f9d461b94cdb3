"""The whole floor: fields in order, stop lines, the way out."""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Field, Plan
from farwall.floor.geometry import Point
from farwall.floor.nouns import Room
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import Words, middle_of, ring_around
from farwall.papers.drawing.edge_marks import draw_oldest, name_oldest
from farwall.papers.drawing.floor_foot import draw_foot, legend
from farwall.papers.drawing.patch_marks import draw_patches, name_patches
from farwall.papers.drawing.scene import Scene
from farwall.papers.drawing.sheet import (
    Sheet,
    draw_fixtures,
    draw_openings,
    draw_stop_lines,
    draw_walls,
    name_stop_lines,
    name_ways_out,
)
from farwall.papers.drawing.whole_storey import letter_of, name_or_key, storey_sheet
from farwall.papers.ink import DONE, LINE, PAPER, ramp_colour
from farwall.papers.lettering import Lettering, wrap
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units

_ARROW = 34.0
_CRUMB = 4
_STOP_LINES_NAMED = 6


def draw_floor(svg: Svg, plan: Plan, scene: Scene, *, units: Units, lettering: Lettering) -> None:
    """Draw a scene with its fields; sets the drawing's height to what was used."""
    sheet = _sheet(svg, plan, scene, units, lettering)
    fields = list(scene.fields)
    done = _done(plan)
    for field in fields:
        _fill(sheet, field, done)
    draw_fixtures(sheet)
    patches = draw_patches(sheet)
    draw_walls(sheet)
    draw_openings(sheet)
    stops = draw_stop_lines(sheet)
    tightest = _tightest(fields)
    edge = draw_oldest(sheet, tightest) if tightest is not None else None
    name_ways_out(sheet, scene.storey.ways_out, scene.storey.floor)
    for room, number, part in _parts(scene, fields):
        _name_room(sheet, room, number, part)
    if tightest is not None:
        name_oldest(sheet, tightest, edge)
    name_patches(sheet, patches)
    for field in fields:
        _arrow_of(sheet, field)
    if len(stops) <= _STOP_LINES_NAMED:
        name_stop_lines(sheet, stops)
    draw_foot(sheet, ramp=bool(fields), stop_lines=bool(stops), done=bool(done))


def _tightest(fields: list[Field]) -> Field | None:
    """The field whose oldest edge comes nearest to its budget, of those that can be sprayed."""
    possible = [field for field in fields if field.verdict != "cannot" and field.bands]
    return max(
        possible, key=lambda f: f.peak_age_min / max(f.open_time_min.low, 1e-9), default=None
    )


def _sheet(svg: Svg, plan: Plan, scene: Scene, units: Units, lettering: Lettering) -> Sheet:
    stops = bool(scene.stop_ids)
    rows = legend(
        svg.width,
        lettering.small,
        ramp=bool(scene.fields),
        stop_lines=stops,
        done=bool(_done(plan)),
    )
    foot = lettering.small * 2.9 + max((down for _, _, down in rows), default=0.0)
    return storey_sheet(svg, plan, scene, units=units, lettering=lettering, foot=foot)


def _done(plan: Plan) -> frozenset[str]:
    """Bands that are sprayed already, in a plan made in mid-day."""
    return frozenset(one.id for one in plan.so_far.done) if plan.so_far is not None else frozenset()


def _fill(sheet: Sheet, field: Field, done: frozenset[str]) -> None:
    """The field's floor, band by band from light to dark: so its direction shows without words.

    What is done lies in a quiet grey, whatever became of the field.
    """
    if any(band.id in done for band in field.bands):
        whole = [band for band in field.bands if field.verdict != "cannot" or band.id in done]
        bands = sorted(whole, key=lambda band: band.order)
        for k, band in enumerate(bands):
            colour = DONE if band.id in done else ramp_colour(k, len(bands))
            sheet.fill(band.polygon.shape, fill=colour, stroke=PAPER, stroke_width=0.6)
        return
    if field.verdict == "cannot" or not field.bands:
        sheet.fill(sheet.scene.storey.floor_of(field), fill=PAPER, stroke=LINE, stroke_width=0.8)
        return
    bands = sorted(field.bands, key=lambda band: band.order)
    for k, band in enumerate(bands):
        colour = ramp_colour(k, len(bands))
        sheet.fill(band.polygon.shape, fill=colour, stroke=PAPER, stroke_width=0.6)


def _parts(scene: Scene, fields: list[Field]) -> list[tuple[Room, str, BaseGeometry]]:
    """Each room with each field that lies in it: number of the field, and the floor they share."""
    parts: list[tuple[Room, str, BaseGeometry]] = []
    for n, field in enumerate(fields, 1):
        floor = scene.storey.floor_of(field)
        for room_id in field.rooms:
            room = scene.storey.room_by_id.get(room_id)
            if room is not None:
                shared = shapely.intersection(room.polygon.shape, floor)
                parts.append((room, str(n), shared))
    named = {room.id for room, _, _ in parts}
    bare = [room for room in scene.storey.rooms if room.id not in named]
    return parts + [
        (room, "", shapely.difference(room.polygon.shape, scene.storey.dry)) for room in bare
    ]


def _name_room(sheet: Sheet, room: Room, head: str, part: BaseGeometry) -> None:
    """Number of the field and name of the room; a part too small for its name goes to the key."""
    lettering = sheet.lettering
    place = sheet.frame.shape(part)
    if place.is_empty:
        return
    letter = f"{head}{letter_of(len(sheet.key))}"
    mark = sheet.words((letter,), lettering.small, bold=True)
    ways = ways_to_say(sheet, room.label, head, place)
    name_or_key(sheet, place, ways, mark, f"{letter} {room.label}")


def ways_to_say(sheet: Sheet, name: str, head: str, place: BaseGeometry) -> list[Words]:
    """A name with its head, broken and sized in all the ways that might fit, the best first."""
    left, _, right, _ = place.bounds
    lettering = sheet.lettering
    ways: list[Words] = []
    for size in (lettering.body, lettering.small):
        # A dict and not a set: of ways with as many lines the widest is tried first, every time.
        broken = dict.fromkeys(
            wrap(name, ((right - left) * share - 3) / lettering.widen, size)
            for share in (0.9, 0.7, 0.5, 0.35)
        )
        for lines in sorted((lines for lines in broken if lines), key=len):
            ways.append(sheet.words(lines, size, head=head, head_size=lettering.head))
            ways.append(sheet.words((f"{head} {lines[0]}".strip(), *lines[1:]), size))
    return sorted(ways, key=_awkward)


def _awkward(words: Words) -> tuple[bool, float, bool, int]:
    """Worst a crumb of a name alone on its line, then small type, then no line for the number."""
    crumb = len(words.lines) > 1 and min(len(line) for line in words.lines) < _CRUMB
    return (crumb, -words.size, not words.head, len(words.lines))


def _arrow_of(sheet: Sheet, field: Field) -> None:
    """A short arrow in each room of a field, the way its bands follow each other."""
    if field.verdict == "cannot":
        return
    for room_id in field.rooms:
        room = sheet.scene.storey.room_by_id.get(room_id)
        if room is None:
            continue
        mids = [
            (band.polygon.shape.centroid.x, band.polygon.shape.centroid.y)
            for band in field.bands
            if room.polygon.shape.contains(band.polygon.shape.representative_point())
        ]
        if len(mids) > 1:
            part = shapely.intersection(room.polygon.shape, sheet.scene.storey.floor_of(field))
            _free_arrow(sheet, part, mids[0], mids[-1])


def _free_arrow(sheet: Sheet, shape: BaseGeometry, start: Point, end: Point) -> None:
    """An arrow from start towards end, as near the room's middle as it lies free."""
    a, b = sheet.frame.at(start), sheet.frame.at(end)
    long = max(math.dist(a, b), 1e-6)
    half = min(_ARROW, long) / 2
    if half < _ARROW / 3:
        return
    ahead = ((b[0] - a[0]) / long * half, (b[1] - a[1]) / long * half)
    page_shape = shapely.difference(
        sheet.frame.shape(shape), sheet.frame.shape(sheet.scene.storey.dry)
    )
    shapely.prepare(page_shape)
    places = np.array(ring_around(middle_of(page_shape), start=18, step=9, rings=9))
    lines = np.asarray(shapely.linestrings(np.stack([places - ahead, places + ahead], axis=1)))
    for line in lines[shapely.contains(page_shape, lines)].tolist():
        around = line.buffer(4)
        if page_shape.contains(around) and not len(sheet.board.boxes_on(around)):
            points = [(px, py) for px, py in line.coords]
            marks.arrow(sheet.svg, points, width=1.3)
            sheet.board.take_line(points, 4)
            return
