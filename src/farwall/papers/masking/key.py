"""The key of the masking under its floor: what each strip, square and rope means."""

from __future__ import annotations

from collections.abc import Callable

from farwall.floor.geometry import Point
from farwall.job.office.masking import Masked
from farwall.papers.drawing import marks
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import SOFT
from farwall.papers.lettering import Lettering, text_width
from farwall.papers.masking.marks import dam_key, jamb_key
from farwall.papers.masking.measures import tall
from farwall.papers.masking.strips import LOOKS, Style, strip_key, style_of
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units

_EDGE, _SWATCH, _GAP = 6.0, 22.0, 20.0
_Entry = tuple[str, Callable[[Svg, Point], None]]


def key_height(width: float, masked: Masked, units: Units, lettering: Lettering) -> float:
    """Height of the key with the air above it, in units of the drawing."""
    rows = _placed(width, _entries(masked, units), lettering)
    return lettering.small * 2.9 + max((down for _, _, down in rows), default=0.0)


def draw_key(sheet: Sheet, masked: Masked) -> None:
    """The scale, then the marks that this drawing has; the drawing grows by it."""
    svg, size = sheet.svg, sheet.lettering.small
    row = svg.height + size * 1.5
    marks.scale_bar(svg, (_EDGE, row), units_per_m=sheet.frame.scale, size=size)
    svg.height = row + size * 1.4
    for (told, draw), x, down in _placed(svg.width, _entries(masked, sheet.units), sheet.lettering):
        draw(svg, (x, row + down))
        at = (x + _SWATCH + 6, row + down + size * 0.35)
        svg.text(at, told, size, anchor="start", fill=SOFT)
        svg.height = max(svg.height, row + down + size * 1.4)


def _placed(
    width: float, entries: list[_Entry], lettering: Lettering
) -> list[tuple[_Entry, float, float]]:
    size = lettering.small
    x, down = _EDGE + marks.SCALE_BAR_UNITS + text_width("00 ft", size) + 26, 0.0
    placed = []
    for one in entries:
        wide = _SWATCH + 6 + text_width(one[0], size) * max(lettering.widen, 1.04)
        if x + wide > width - 2:
            x, down = _EDGE, down + size * 2.0
        placed.append((one, x, down))
        x += wide + _GAP
    return placed


def _entries(masked: Masked, units: Units) -> list[_Entry]:
    heights = sorted({run.film_m for room in masked.rooms for run in room.runs if run.film_m > 0})
    entries: list[_Entry] = []
    for style in LOOKS:
        here = [one for one in heights if style_of(one) == style]
        if here:
            ends = dict.fromkeys((tall(here[0], units), tall(here[-1], units)))
            entries.append((f"film {' to '.join(ends)}", _strip(style)))
    if masked.jambs:
        entries.append(("jamb wrapped, with its head", _jamb))
    if masked.dams:
        entries.append(("dam", _dam))
    return entries


def _strip(style: Style) -> Callable[[Svg, Point], None]:
    return lambda svg, at: strip_key(svg, style, at, _SWATCH)


def _jamb(svg: Svg, at: Point) -> None:
    jamb_key(svg, (at[0] + _SWATCH - 4, at[1]))


def _dam(svg: Svg, at: Point) -> None:
    dam_key(svg, at, _SWATCH)
