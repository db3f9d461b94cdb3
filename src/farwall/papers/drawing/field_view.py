"""One field: its bands in order, how each is sprayed, where to stand, refill and leave."""

from __future__ import annotations

from collections.abc import Sequence

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Field, Plan
from farwall.floor.geometry import Point
from farwall.papers.drawing import marks
from farwall.papers.drawing.band_marks import draw_band_arrows, fill_bands, number_bands
from farwall.papers.drawing.board import Board, middle_of
from farwall.papers.drawing.edge_marks import draw_oldest, name_oldest
from farwall.papers.drawing.frame import frame_for
from farwall.papers.drawing.neighbours import draw_beyond, name_beyond
from farwall.papers.drawing.patch_marks import draw_patches, name_patches
from farwall.papers.drawing.people_marks import (
    draw_person,
    draw_tanks,
    draw_walks,
    name_starts,
    name_tanks,
)
from farwall.papers.drawing.scene import Scene, way_of
from farwall.papers.drawing.sheet import (
    WAY_OUT,
    Sheet,
    draw_fixtures,
    draw_openings,
    draw_stop_lines,
    draw_walls,
    name_stop_lines,
    name_ways_out,
    outward,
)
from farwall.papers.drawing.wall_marks import draw_wall_marks
from farwall.papers.ink import DANGER, INK, PAPER, SOFT
from farwall.papers.lettering import Lettering, text_width, wrap
from farwall.papers.svg import Svg, number
from farwall.papers.wall_clock import Units, plan_clock
from farwall.papers.wall_ticks import WallRun

_CONTEXT_M = 0.7
_SIDE = 22.0
_LONG_NAME = 20
_MOST_BESIDE = 0.2


def draw_field(
    svg: Svg,
    plan: Plan,
    scene: Scene,
    field: Field,
    walls: Sequence[WallRun],
    *,
    units: Units,
    lettering: Lettering,
) -> None:
    """Draw one field of a scene; sets the drawing's height to what was used."""
    sheet, floor = _sheet(svg, plan, scene, field, units=units, lettering=lettering)
    clock = plan_clock(plan, units)
    possible = field.verdict != "cannot"
    _open_clip(sheet)
    draw_beyond(sheet, field)
    if possible:
        fill_bands(sheet, field)
    else:
        sheet.fill(floor, fill=PAPER, stroke=DANGER, stroke_width=1.5)
    draw_fixtures(sheet, within=floor.buffer(0.05))
    patches = draw_patches(sheet, within=floor)
    draw_walls(sheet)
    draw_openings(sheet)
    svg.close_group()
    stops = draw_stop_lines(sheet)
    way = way_of(plan, field)
    people = draw_person(sheet, field) if possible else []
    if way is not None:
        name_ways_out(sheet, [way], floor, _leave_words(plan, scene, field))
    if possible:
        oldest = draw_oldest(sheet, field)
        draw_walks(sheet, field, floor)
        tanks = draw_tanks(sheet, field, clock)
        draw_wall_marks(sheet, walls)
        lines = number_bands(sheet, field)
        name_starts(sheet, field, people)
        name_tanks(sheet, field, tanks)
        name_oldest(sheet, field, oldest)
        draw_band_arrows(sheet, lines)
    else:
        _no(sheet, floor)
    _room_names(sheet, field)
    name_patches(sheet, patches)
    name_stop_lines(sheet, stops)
    name_beyond(sheet, field)
    _foot(sheet, field, possible=possible)


def map_scale(
    plan: Plan, scene: Scene, field: Field, *, width: float, height: float, lettering: Lettering
) -> float:
    """Units a metre that a map of this size would have: to choose between layouts."""
    svg = Svg(width=width, height=height, family=lettering.family)
    return _sheet(svg, plan, scene, field, units="us", lettering=lettering)[0].frame.scale


def _sheet(
    svg: Svg, plan: Plan, scene: Scene, field: Field, *, units: Units, lettering: Lettering
) -> tuple[Sheet, BaseGeometry]:
    floor = scene.storey.floor_of(field)
    bounds = _view(floor, scene.storey.outside)
    left, top, right, low = _margins(plan, scene, field, floor, lettering, width=svg.width)
    foot = lettering.small * 2.6
    frame = frame_for(
        bounds,
        left=left,
        top=top,
        width=svg.width - left - right,
        height=max(svg.height - top - low - foot, 40.0),
        most_scale=svg.width / 5.0,
    )
    svg.height = top + (bounds[3] - bounds[1]) * frame.scale + low
    board = Board((0, 0, svg.width, svg.height))
    east, south = frame.at((bounds[2], bounds[1]))
    view = (frame.left, frame.top, east, south)
    return Sheet(plan, scene, svg, frame, board, lettering, units, view), floor


def _margins(
    plan: Plan,
    scene: Scene,
    field: Field,
    floor: BaseGeometry,
    lettering: Lettering,
    *,
    width: float,
) -> tuple[float, float, float, float]:
    """Left, top, right, low: room for the walls' letters, more where the way leads out."""
    left, top, right, low = _SIDE, _SIDE, _SIDE, _SIDE
    way = way_of(plan, field)
    if way is None:
        return left, top, right, low
    dx, dy = outward(way, floor)
    said = _leave_words(plan, scene, field)
    beside = max(text_width(line, lettering.body, bold=True) for line in said) + 30
    beside = max(_SIDE + 8, min(beside, _MOST_BESIDE * width))
    if abs(dx) > 0.5:
        left, right = (beside, right) if dx < 0 else (left, beside)
    else:
        above = lettering.body * (1.0 + 1.3 * len(said))
        top, low = (max(top, above), low) if dy < 0 else (top, max(low, above))
    return left, top, right, low


def _view(
    floor: BaseGeometry, house: tuple[float, float, float, float]
) -> tuple[float, float, float, float]:
    """What is shown: the field with a little of what lies around, and no empty ground. [m]"""
    west, south, east, north = floor.buffer(_CONTEXT_M, join_style="mitre").bounds
    left, low, right, high = house
    return (max(west, left), max(south, low), min(east, right), min(north, high))


def _open_clip(sheet: Sheet) -> None:
    """What lies beyond the field's surroundings is cut off."""
    svg = sheet.svg
    ident = f"{svg.ident}-view"
    left, top, right, low = sheet.view
    width, height = right - left, low - top
    svg.raw(
        f'<defs><clipPath id="{ident}"><rect x="{number(left)}" y="{number(top)}"'
        f' width="{number(width)}" height="{number(height)}"/></clipPath></defs>'
        + marks.hatch_pattern(svg.ident)
    )
    svg.open_group(clip_path=f"url(#{ident})")


def _leave_words(plan: Plan, scene: Scene, field: Field) -> tuple[str, ...]:
    way = way_of(plan, field)
    if way is None or way.id in {opening.id for opening in scene.storey.ways_out}:
        return (WAY_OUT,)
    beyond = [room for room in way.rooms if room not in field.rooms]
    names = [
        scene.storey.room_by_id[room].label for room in beyond if room in scene.storey.room_by_id
    ]
    name = names[0].split(" + ")[0] if names else ""
    return ("leave to", name) if 0 < len(name) < _LONG_NAME else ("leave here",)


def _no(sheet: Sheet, floor: BaseGeometry) -> None:
    words = sheet.words(("NO",), sheet.lettering.title, bold=True)
    centre = sheet.board.place_inside(words, sheet.frame.shape(floor))
    if centre is not None:
        sheet.write(words, centre, fill=DANGER)


def _room_names(sheet: Sheet, field: Field) -> None:
    """The rooms' names in a field of several; the sheet's head names a single one."""
    if len(field.rooms) < 2:
        return
    for room_id in field.rooms:
        room = sheet.scene.storey.room_by_id.get(room_id)
        if room is None:
            continue
        place = shapely.difference(
            sheet.frame.shape(room.polygon.shape), sheet.frame.shape(sheet.scene.storey.dry)
        )
        left, _, right, _ = place.bounds
        for share in (0.95, 0.6, 0.4):
            lines = wrap(
                room.label,
                ((right - left) * share - 4) / sheet.lettering.widen,
                sheet.lettering.small,
            )
            centre = lines and sheet.board.place_inside(
                sheet.words(lines, sheet.lettering.small), place
            )
            if lines and centre:
                sheet.write(sheet.words(lines, sheet.lettering.small), centre, cased=True)
                break
        else:
            sheet.write_near(sheet.words((room.label,), sheet.lettering.small), sheet_middle(place))


def sheet_middle(place: BaseGeometry) -> Point:
    """The middle of a shape on the drawing."""
    return middle_of(place)


def _foot(sheet: Sheet, field: Field, *, possible: bool) -> None:
    svg, size = sheet.svg, sheet.lettering.small
    row = svg.height + size * 1.3
    x = 6.0
    x += marks.scale_bar(svg, (x, row), units_per_m=sheet.frame.scale, size=size)
    x += text_width("00 ft", size)
    told: list[tuple[str, str, float]] = []
    if possible:
        told = [("walk", marks.WALK_DASH, 0.9)] if field.walks else []
        if field.stop_lines:
            told.append(("stop line", marks.STOP_DASH, 1.8))
    wide = sum(33 + text_width(word, size) * 1.1 for word, _, _ in told)
    # Where words are long the gaps give way first, to no less than 8.
    gap = min(max((svg.width - x - wide) / max(len(told), 1), 8.0), 30.0)
    for word, dash, width in told:
        x += gap
        svg.line([(x, row), (x + 27, row)], stroke=INK, stroke_width=width, stroke_dasharray=dash)
        svg.text((x + 33, row + size * 0.35), word, size, anchor="start", fill=SOFT)
        x += 33 + text_width(word, size) * 1.1
    svg.height = row + size * 1.3
