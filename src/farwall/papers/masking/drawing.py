"""The masking drawn on the plan: film by height, jambs, dams, drains, registers, metal."""

from __future__ import annotations

from collections.abc import Iterator

import shapely

from farwall.facts.plan import Plan
from farwall.floor.geometry import Point
from farwall.job.office.masking import Dam, Masked
from farwall.nouns import dataclass
from farwall.papers.drawing.board import Board
from farwall.papers.drawing.frame import frame_for
from farwall.papers.drawing.scene import Scene, Storey, storeys
from farwall.papers.drawing.sheet import Sheet, outward
from farwall.papers.drawing.walls import wall_mass
from farwall.papers.ink import INK, LINE, PAPER
from farwall.papers.lettering import PAPER_LETTERING, Lettering, text_width
from farwall.papers.masking.key import draw_key, key_height
from farwall.papers.masking.marks import draw_dam, draw_item, draw_jamb
from farwall.papers.masking.measures import tall
from farwall.papers.masking.names import name_dam, name_fixtures, name_items, name_rooms, name_tall
from farwall.papers.masking.strips import draw_strips
from farwall.papers.svg import Svg, number
from farwall.papers.wall_clock import Units
from farwall.phrasebook import speaking, told

_BETWEEN, _EDGE = 18.0, 8.0
_IN_WALL_M = 0.3


@dataclass(frozen=True)
class _Told:
    """In which units and type it is written."""

    units: Units
    lettering: Lettering


def masking_svg(
    plan: Plan,
    masked: Masked,
    *,
    units: Units = "us",
    width: float = 532.0,
    height: float = 380.0,
    lettering: Lettering = PAPER_LETTERING,
    ground: str | None = None,
) -> str:
    """The floor with what is masked as SVG text; numbers and letters are those of the list.

    It is `width` units wide and at most about `height` high; storeys stand one above the other.
    """
    svg = Svg(width=width, height=height, family=lettering.family, ident="masking")
    top = 0.0
    for sheet in _sheets(plan, masked, _Told(units, lettering), width, height):
        if top:
            svg.below(sheet.svg, top)
        else:
            svg.raw(str(sheet.svg))
        top += sheet.svg.height + _BETWEEN
    svg.height = top - _BETWEEN
    if ground is not None:
        svg.parts.insert(
            0, f'<rect width="{number(width)}" height="{number(svg.height)}" fill="{ground}"/>'
        )
    title, words = told("What is masked"), _in_words(masked, units)
    with speaking("en"):  # told already: no sentence is sought among the names
        return svg.document(title=title, description=words)


def place_on_floor(
    plan: Plan,
    masked: Masked,
    at: Point,
    *,
    units: Units,
    width: float,
    height: float,
    lettering: Lettering,
) -> tuple[Point, str] | None:
    """The place [m] and the room that lie at a place of the drawing made with the same words.

    None where no floor lies there.
    """
    top = 0.0
    for sheet in _sheets(plan, masked, _Told(units, lettering), width, height):
        if top <= at[1] < top + sheet.svg.height:
            place = sheet.frame.back((at[0], at[1] - top))
            return _in_room(sheet.scene.storey, place)
        top += sheet.svg.height + _BETWEEN
    return None


def _in_room(storey: Storey, place: Point) -> tuple[Point, str] | None:
    """The room of a place, or the nearest one whose wall it lies in."""
    point = shapely.Point(place)
    near = min(storey.rooms, key=lambda one: float(one.polygon.shape.distance(point)))
    if near.polygon.shape.distance(point) > _IN_WALL_M:
        return None
    return (round(place[0], 2), round(place[1], 2)), near.id


def _sheets(
    plan: Plan, masked: Masked, told: _Told, width: float, height: float
) -> Iterator[Sheet]:
    """Each storey drawn, from the top down."""
    shown = storeys(plan)
    share = (height - _BETWEEN * (len(shown) - 1)) / len(shown)
    for k, storey in enumerate(shown):
        part = Svg(width=width, height=share, family=told.lettering.family, ident=f"masking{k}")
        yield _drawn(part, plan, storey, masked, told)


def _drawn(svg: Svg, plan: Plan, storey: Storey, masked: Masked, told: _Told) -> Sheet:
    sheet = _sheet(svg, plan, storey, masked, told)
    here = [one for one in masked.rooms if one.room in storey.room_by_id]
    _ground(sheet)
    free = {}
    for room in here:
        net = shapely.difference(storey.room_by_id[room.room].polygon.shape, storey.dry)
        whole = sheet.frame.shape(net)
        left = whole - draw_strips(sheet, room, net)
        free[room.room] = whole if left.is_empty else left
    _leaves(sheet)
    for side in (side for room in here for side in room.sides):
        draw_jamb(sheet, side)
    dams = [
        (dam, draw_dam(sheet, dam, way), way)
        for dam in masked.dam_list
        if (way := _outward(dam, storey)) is not None
    ]
    items = [one for one in masked.items if one.at is None or _on(one.at, storey)]
    for item in items:
        draw_item(sheet, item)
    name_rooms(sheet, here, masked, free)
    name_fixtures(sheet, here)
    name_items(sheet, items, free)
    name_tall(sheet, here, free)
    for dam, at, way in dams:
        name_dam(sheet, dam, at, way)
    draw_key(sheet, masked)
    return sheet


def _ground(sheet: Sheet) -> None:
    """Floor, walls in a light shade, what stands on the floor."""
    storey = sheet.scene.storey
    sheet.fill(storey.floor, fill=PAPER)
    sheet.fill(wall_mass(storey.rooms, storey.openings), fill=LINE)
    for thing in storey.fixtures:
        path = sheet.frame.path(thing.polygon.shape)
        sheet.svg.element(
            "path", d=path, fill_rule="evenodd", fill=PAPER, stroke=INK, stroke_width=0.6
        )


def _leaves(sheet: Sheet) -> None:
    for opening in sheet.scene.storey.openings:
        if opening.kind in {"door", "outside"}:
            line = [sheet.frame.at(point) for point in opening.line]
            sheet.svg.line(line, stroke=INK, stroke_width=0.8)


def _outward(dam: Dam, storey: Storey) -> Point | None:
    """The way out through the door of a dam, on the drawing; None where it is not of here."""
    for opening in storey.openings:
        if opening.id == dam.opening:
            return outward(opening, storey.floor)
    return None


def _on(at: Point, storey: Storey) -> bool:
    return bool(storey.floor.buffer(0.5).contains(shapely.Point(at)))


def _sheet(svg: Svg, plan: Plan, storey: Storey, masked: Masked, told: _Told) -> Sheet:
    lettering = told.lettering
    ways = [outward(o, storey.floor) for o in storey.openings if o.kind == "outside"]
    aside = text_width("dam 00' 00\"", lettering.small, bold=True) * lettering.widen + 16
    above = lettering.small * 2.6
    left = aside if any(dx < -0.5 for dx, _ in ways) else _EDGE
    right = aside if any(dx > 0.5 for dx, _ in ways) else _EDGE
    top = above if any(dy < -0.5 for _, dy in ways) else _EDGE
    low = above if any(dy > 0.5 for _, dy in ways) else _EDGE
    foot = key_height(svg.width, masked, told.units, lettering)
    frame = frame_for(
        storey.outside, left=left, top=top, width=svg.width - left - right,
        height=max(svg.height - top - low - foot, 40.0),
    )  # fmt: skip
    _, south, _, north = storey.outside
    svg.height = top + (north - south) * frame.scale + low
    page = (0.0, 0.0, svg.width, svg.height)
    scene = Scene(storey, ())
    return Sheet(plan, scene, svg, frame, Board(page), lettering, told.units, page)


def _in_words(masked: Masked, units: Units) -> str:
    rooms = "; ".join(f"{one.number} {one.name}, {tall(one.film_m, units)}" for one in masked.rooms)
    return f"{told('Rooms with the height of film along their walls:')} {rooms}."
