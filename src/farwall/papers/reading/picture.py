"""The picture of a reading: storeys side by side at one scale, rooms with names and areas, openings
by their kind, ways out, windows, north, and each note that has a place as a numbered pin.

The pins bear the numbers by which `farwall read` lists the notes. All is said by shape, number or
dash as well as by colour, so that it works in grey.
"""

from __future__ import annotations

from collections import Counter

from farwall.facts.reading import Reading
from farwall.floor.nouns import OpeningKind
from farwall.papers.drawing.marks import hatch_pattern, scale_bar
from farwall.papers.ink import INK, PAPER, SOFT
from farwall.papers.lettering import LINE_HEIGHT, SCREEN_LETTERING, text_width, wrap
from farwall.papers.reading.level_view import KeyRow, LevelView, draw_key
from farwall.papers.reading.levels import Level, levels_of
from farwall.papers.svg import Svg

_MARGIN, _BETWEEN, _HEAD, _HEIGHT, _TALLEST = 24.0, 36.0, 30.0, 620.0, 1900.0
_ENOUGH = 0.72
_TYPE = SCREEN_LETTERING


def reading_svg(reading: Reading, *, title: str = "", width: float = 1200.0) -> str:
    """The reading as SVG text, `width` units wide and as high as it needs.

    Without a scale the rooms have their shapes, and no areas; without a room only words are shown.
    """
    levels = levels_of(reading)
    svg = Svg(width=width, height=0, family=_TYPE.family, ident="reading")
    svg.raw(hatch_pattern(svg.ident))
    low = _MARGIN + _TYPE.title
    svg.text((_MARGIN, low - 6), title or reading.format, _TYPE.title, anchor="start", bold=True)
    low = _words(svg, _heading(reading), low + 6, size=_TYPE.body)
    rows = _rows(levels, width)
    scale = _scale(rows, width)
    marked: set[str] = set()
    for row in rows:
        low = _row(svg, row, reading, top=low + _HEAD, scale=scale, marked=marked)
    low = _foot(svg, reading, low + _HEAD, scale=scale if levels else 0.0, marked=marked)
    svg.height = low + _MARGIN
    svg.parts.insert(1, f'<rect width="{width:g}" height="{svg.height:.1f}" fill="{PAPER}"/>')
    return svg.document(title=title or "A floor as it was read", description=_heading(reading))


def _heading(reading: Reading) -> str:
    floor = reading.floor
    named = _UNITS.get(reading.length_unit, reading.length_unit)
    unit = f"drawn in {named}" if named else "scale not known"
    counts = Counter(opening.kind for opening in floor.openings)
    doors = ", ".join(f"{counts[kind]} {word}" for kind, word in _KINDS.items() if counts[kind])
    parts = [f"{reading.format}, {unit}", f"{len(floor.rooms)} rooms"]
    parts += [doors] if doors else []
    counted = (("way out", "ways out", reading.exits), ("window", "windows", floor.windows))
    parts += [f"{len(things)} {one if len(things) == 1 else many}" for one, many, things in counted]
    if floor.fixtures:
        parts.append(f"{len(floor.fixtures)} fixture{'s' * (len(floor.fixtures) != 1)}")
    notes = f"{len(reading.mended)} mended, {len(reading.left)} left, {len(reading.asks)} asked"
    return f"{'; '.join(parts)}. Notes: {notes}."


_UNITS = {
    "m": "metres", "mm": "millimetres", "cm": "centimetres", "ft": "feet", "in": "inches",
    "degree": "degrees",
}  # fmt: skip
_KINDS: dict[OpeningKind, str] = {
    "door": "doors",
    "cased": "cased",
    "wide": "wide",
    "outside": "to the outside",
}


def _words(svg: Svg, text: str, top: float, *, size: float, left: float = _MARGIN) -> float:
    """Lines of text as wide as the sheet; returns where they end."""
    lines = wrap(text, (svg.width - left - _MARGIN) / _TYPE.widen, size) or (text,)
    for line in lines:
        top += size * LINE_HEIGHT
        svg.text((left, top), line, size, anchor="start", fill=SOFT)
    return top


def _extent(level: Level) -> tuple[float, float]:
    west, south, east, north = level.bounds
    return max(east - west, 0.1), max(north - south, 0.1)


def _rows(levels: list[Level], width: float) -> list[list[Level]]:
    """Storeys in rows: as many beside each other as leave most of the largest scale."""
    if not levels:
        return []
    ways = [
        [levels[start : start + count] for start in range(0, len(levels), count)]
        for count in range(1, len(levels) + 1)
    ]
    best = max(_scale(rows, width) for rows in ways)
    enough = [rows for rows in ways if _scale(rows, width) >= _ENOUGH * best]
    return min(enough, key=len)


def _scale(rows: list[list[Level]], width: float) -> float:
    """Units to a metre that let the widest row and the sheet's height hold all."""
    found = [1000.0]
    for row in rows:
        extents = [_extent(level) for level in row]
        free = width - 2 * _MARGIN - _BETWEEN * (len(row) - 1)
        found.append(free / sum(wide for wide, _ in extents))
        found.append(_HEIGHT / max(high for _, high in extents))
    heights = [max(_extent(level)[1] for level in row) for row in rows]
    found.append(_TALLEST / max(sum(heights), 0.1))
    return min(found)


def _row(
    svg: Svg, row: list[Level], reading: Reading, *, top: float, scale: float, marked: set[str]
) -> float:
    left = _MARGIN
    keys: list[tuple[float, float, list[KeyRow]]] = []
    floor_low = top
    for level in row:
        wide, high = _extent(level)
        if level.name:
            svg.text((left, top), level.name, _TYPE.body, anchor="start", bold=True)
        view = LevelView(svg, level, reading, left=left, top=top + 14, scale=scale, marked=marked)
        keys.append((left, wide * scale + _BETWEEN, view.draw()))
        floor_low = max(floor_low, top + 14 + high * scale)
        left += wide * scale + _BETWEEN
    low = floor_low
    for column, wide, key in keys:
        room = svg.width - _MARGIN - column if len(row) == 1 else wide
        low = max(low, draw_key(svg, key, left=column, top=floor_low + 8, width=room))
    return low


def _foot(svg: Svg, reading: Reading, top: float, *, scale: float, marked: set[str]) -> float:
    """Scale bar, north, and what the marks mean."""
    low = top
    if scale and reading.scale_m_per_unit is not None:
        scale_bar(svg, (_MARGIN, low), units_per_m=scale, size=_TYPE.small)
    elif scale:
        svg.text((_MARGIN, low), "No scale: shapes only.", _TYPE.body, anchor="start", bold=True)
    if reading.floor.north_deg is not None:
        _north(svg, (_MARGIN + 230, low), reading.floor.north_deg)
    low += 34
    afar = ", ".join(str(number) for level in levels_of(reading) for number in level.afar)
    if afar:
        svg.text((_MARGIN, low), f"Notes off the sheet: {afar}.", _TYPE.small, anchor="start")
        low += 22
    left = _MARGIN
    for kind, words in _MEANINGS.items():
        if kind not in marked:
            continue
        wide = 40 + text_width(words, _TYPE.small) * _TYPE.widen + 18
        if left + wide > svg.width - _MARGIN:
            left, low = _MARGIN, low + 22
        LevelView.sample(svg, kind, (left, low))
        svg.text((left + 38, low + 4), words, _TYPE.small, anchor="start")
        left += wide
    return low + 8


_MEANINGS = {
    "door": "door", "cased": "cased: a frame without a leaf", "wide": "wide: neither",
    "outside": "to the outside", "exit": "way out", "window": "window", "fixture": "kept dry",
    "mended": "mended, by its number", "left": "left open", "cut": "saw cut",
}  # fmt: skip


def _north(svg: Svg, at: tuple[float, float], north_deg: float) -> None:
    x, y = at
    svg.open_group(transform=f"translate({x:.1f} {y:.1f}) rotate({north_deg:.2f})")
    svg.element("path", d="M0,14V-14M-5,-5L0,-14L5,-5", fill="none", stroke=INK, stroke_width=1.4)
    svg.close_group()
    svg.text((x + 26, y + 4), f"north, {north_deg:.0f}°", _TYPE.small, anchor="start")
