"""The floor of a survey: rooms by name, with the seconds that a drop took in each.

Tight floor is hatched, floor that takes no stain yet is cross-hatched; a room where nobody tried
has a line to write its seconds on.
"""

from __future__ import annotations

from collections.abc import Mapping

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.air.limits import LONGEST_DROP_S, TIGHT_DROP_S
from farwall.facts.plan import Plan
from farwall.floor.nouns import Room
from farwall.papers.drawing import marks
from farwall.papers.drawing.floor_foot import EDGE
from farwall.papers.drawing.floor_view import ways_to_say
from farwall.papers.drawing.patch_marks import draw_patches, name_patches
from farwall.papers.drawing.scene import Scene
from farwall.papers.drawing.sheet import (
    Sheet,
    draw_fixtures,
    draw_openings,
    draw_walls,
    name_ways_out,
)
from farwall.papers.drawing.whole_storey import letter_of, name_or_key, storey_sheet
from farwall.papers.ink import INK, SOFT, WHITE
from farwall.papers.lettering import LINE_HEIGHT, Lettering, wrap
from farwall.papers.svg import Svg, attributes
from farwall.papers.wall_clock import Units
from farwall.phrasebook import speaking, told

TO_WRITE = "____ s"
"""Seconds to be written in by pen."""
_HATCH = {"tight": (9, "M0 0V9"), "shut": (6, "M0 0V6M0 0H6")}


def draw_drops(
    svg: Svg, plan: Plan, scene: Scene, seconds: Mapping[str, float], *, units: Units,
    lettering: Lettering,
) -> None:  # fmt: skip
    """Draw a storey; sets the drawing's height to what was used. seconds: by room id, as told."""
    foot = lettering.small * 2.9
    sheet = storey_sheet(svg, plan, scene, units=units, lettering=lettering, foot=foot)
    svg.raw(_patterns(svg.ident))
    for room in scene.storey.rooms:
        sheet.fill(room.polygon.shape, fill=_fill(svg.ident, seconds.get(room.id)))
    draw_fixtures(sheet)
    patches = draw_patches(sheet)
    draw_walls(sheet)
    draw_openings(sheet)
    name_ways_out(sheet, scene.storey.ways_out, scene.storey.floor)
    for room in scene.storey.rooms:
        _name(sheet, room, seconds.get(room.id))
    name_patches(sheet, patches)
    row = svg.height + lettering.small * 1.5
    marks.scale_bar(svg, (EDGE, row), units_per_m=sheet.frame.scale, size=lettering.small)
    svg.height = row + lettering.small * 1.4
    _write_key(sheet)


def _fill(ident: str, told_s: float | None) -> str:
    if told_s is None or told_s <= TIGHT_DROP_S:
        return WHITE
    return f"url(#{ident}-{'shut' if told_s > LONGEST_DROP_S else 'tight'})"


def _patterns(ident: str) -> str:
    made = []
    for name, (step, path) in _HATCH.items():
        around = attributes({
            "id": f"{ident}-{name}", "width": step, "height": step,
            "patternUnits": "userSpaceOnUse", "patternTransform": "rotate(45)",
        })  # fmt: skip
        ground = attributes({"width": step, "height": step, "fill": WHITE})
        line = attributes({"d": path, "stroke": SOFT, "stroke_width": 0.9})
        made.append(f"<pattern{around}><rect{ground}/><path{line}/></pattern>")
    return f"<defs>{''.join(made)}</defs>"


def _name(sheet: Sheet, room: Room, told_s: float | None) -> None:
    """Seconds and name in the room; in a small one a letter, and both in the key."""
    head = TO_WRITE if told_s is None else f"{told_s:g} s"
    free = shapely.difference(room.polygon.shape, sheet.scene.storey.dry)
    place: BaseGeometry = sheet.frame.shape(free)
    if place.is_empty:
        return
    letter = letter_of(len(sheet.key))
    mark = sheet.words((letter,), sheet.lettering.small, bold=True)
    ways = ways_to_say(sheet, room.label, head, place)
    name_or_key(sheet, place, ways, mark, f"{letter} {room.label} {told(head)}")


def _write_key(sheet: Sheet) -> None:
    size = sheet.lettering.small
    if not sheet.key:
        return
    wide = (sheet.svg.width - 2 * EDGE) / sheet.lettering.widen
    with speaking("en"):  # names, and words told already: no sentence is sought in them
        for line in wrap(" · ".join(sheet.key), wide, size) or sheet.key:
            sheet.svg.height += size * LINE_HEIGHT
            at = (EDGE, sheet.svg.height - size * 0.3)
            sheet.svg.text(at, line, size, anchor="start", fill=INK)
