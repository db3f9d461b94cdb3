"""Who goes where in a field: the person at the start, the walks, the full tanks."""

from __future__ import annotations

import math

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Field
from farwall.floor.geometry import Point
from farwall.papers.drawing import marks
from farwall.papers.drawing.band_lines import centre_line
from farwall.papers.drawing.board import Words, centres_inside, clear_of, ring_around
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import INK, WHITE
from farwall.papers.wall_clock import WallClock

_WALK_BEYOND_M, _SHORT_WALK_M = 0.12, 1.2


def draw_walks(sheet: Sheet, field: Field, floor: BaseGeometry) -> None:
    """Walks without spraying, as far as they lie on the field; short steps are left out."""
    around = floor.buffer(_WALK_BEYOND_M)
    seen: set[bytes] = set()
    for walk in field.walks:
        places = [(x, y) for x, y, _ in walk.path]
        if len(places) < 2 or shapely.LineString(places).length < _SHORT_WALK_M:
            continue
        line = shapely.LineString(places)
        same = shapely.to_wkb(shapely.normalize(line))
        if same in seen:
            continue
        seen.add(same)
        for part in shapely.get_parts(shapely.intersection(line, around)).tolist():
            on_page = [sheet.frame.at(point) for point in part.coords]
            if len(on_page) > 1:
                sheet.svg.line(on_page, stroke=WHITE, stroke_width=2, stroke_opacity=0.55)
                sheet.svg.line(
                    on_page, stroke=INK, stroke_width=0.8, stroke_dasharray=marks.WALK_DASH
                )


def draw_person(sheet: Sheet, field: Field) -> list[tuple[Point, str]]:
    """Where each sprayer begins, the wand to the side of the first band; returns what to name."""
    sprayers = sorted({band.sprayer for band in field.bands})
    places = []
    for sprayer in sprayers:
        band = min((b for b in field.bands if b.sprayer == sprayer), key=lambda b: b.order)
        if not band.path:
            continue
        body = (band.path[0][0], band.path[0][1])
        target = shapely.shortest_line(shapely.Point(body), band.polygon.shape).coords[-1]
        if math.dist(body, target) < 0.05:
            line = centre_line(band, band_m=sheet.plan.inputs.tools.band_m)
            target = line[0] if line else target
        at, wand = sheet.frame.at(body), sheet.frame.at((target[0], target[1]))
        marks.person(sheet.svg, at, wand)
        sheet.board.take((at[0] - 9, at[1] - 9, at[0] + 9, at[1] + 9))
        sheet.board.take_line([at, wand], 2)
        places.append((at, f"start {sprayer}" if len(sprayers) > 1 else "start"))
    return places


def name_starts(sheet: Sheet, field: Field, places: list[tuple[Point, str]]) -> None:
    """The word beside each person, on the field if there is room near, else beside it."""
    floor = sheet.frame.shape(sheet.scene.storey.floor_of(field))
    for at, word in places:
        words = sheet.words((word,), sheet.lettering.body, bold=True)
        inside = [
            centre
            for centre in centres_inside(words, floor, near=at)[:300]
            if math.dist(centre, at) < words.width / 2 + 24
        ]
        sheet.write_near(words, at, first=inside, leader_from=24)


def draw_tanks(sheet: Sheet, field: Field, clock: WallClock) -> list[tuple[Point, str]]:
    """Where a full tank is taken; refills at one place share one mark. Returns what to name."""
    places: dict[tuple[int, int], list[float]] = {}
    spot: dict[tuple[int, int], Point] = {}
    for refill in field.refills:
        near = (round(refill.at[0] / 0.5), round(refill.at[1] / 0.5))
        places.setdefault(near, []).append(refill.at_min)
        spot.setdefault(near, refill.at)
    named = []
    for near, times in places.items():
        if not sheet.board.free((*sheet.frame.at(spot[near]), *sheet.frame.at(spot[near]))):
            continue  # it lies beyond the map: the words beside it say where
        at = _tank_place(sheet, sheet.frame.at(spot[near]))
        marks.tank(sheet.svg, at)
        sheet.board.take((at[0] - 6, at[1] - 8, at[0] + 6, at[1] + 8))
        told = ", ".join(clock.time(minute) for minute in times[:3]) + ("…" if times[3:] else "")
        named.append((at, f"full tank {told}"))
    return named


def name_tanks(sheet: Sheet, field: Field, places: list[tuple[Point, str]]) -> None:
    """The time beside each full tank, off the field where there is room."""
    for at, word in places:
        words = sheet.words((word,), sheet.lettering.body, bold=True)
        sheet.write_near(words, at, first=_outside(sheet, field, words, at))


def _tank_place(sheet: Sheet, at: Point) -> Point:
    """The place itself, or the nearest one beside it where the can hides nothing."""
    for x, y in (at, *ring_around(at, start=15, step=5, rings=4)):
        if sheet.board.free((x - 6, y - 8, x + 6, y + 8)):
            return (x, y)
    return at


def _outside(sheet: Sheet, field: Field, words: Words, at: Point) -> list[Point]:
    """Places beside the field, not on it, that are not far off."""
    floor = sheet.frame.shape(sheet.scene.storey.floor_of(field))
    around = ring_around(at, start=words.width / 2 + 10, step=8, rings=8)
    near = [centre for centre in around if abs(centre[1] - at[1]) < 60]
    clear = clear_of(floor, words, near)
    off_walls = set(clear_of(sheet.walls, words, clear))
    return sorted(clear, key=lambda centre: centre not in off_walls)
