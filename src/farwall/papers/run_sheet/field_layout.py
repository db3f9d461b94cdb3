"""How a field's page is laid out: estimates in points, so that one page holds it where it can.

The estimates need not be exact: the setting flows on to a second page where
they were too small. They decide between a map beside its tables or above
them, the size of the bands' figures, and how high the map may be.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from farwall.facts.plan import Field, Plan
from farwall.nouns import dataclass
from farwall.papers.drawing.field_view import map_scale
from farwall.papers.drawing.scene import Storey, scene_of_field
from farwall.papers.lettering import PAPER_LETTERING, text_width, wrap
from farwall.papers.run_sheet.margins import PaperSize

BESIDE_SHARE = 0.64
"""Part of the sheet's width that a map takes beside its tables."""
_FOOT_PT = 108.0
_LINE_PT, _BLOCK_PT = 14.2, 13.9
_SMALL_LINE_PT, _SMALL_BLOCK_PT = 11.6, 11.4
_BIG_ROW_PT, _ROW_PT, _TABLE_HEAD_PT = 18.8, 13.9, 16.0
_HEAD_PT, _TITLE_LINE_PT = 62.0, 29.0
_STOP_PT, _HEAD_LINE_PT = 62.0, 19.5
_LEAST_MAP_PT, _MOST_MAP_SHARE, _MOST_MAP_ABOVE, _MOST_MAP_ALONE = 100.0, 0.5, 0.45, 0.6
_SMALL_MAP_PT = 170.0
_MAP_KEPT = 0.85
_MOST_BESIDE = 22
_MANY_TICKS = 44
_SURE_PT = 18.0
"""So much of the page left free by the estimate, and all stands on it for sure. Measured here: of
208 field pages (four houses, two languages, two papers) 128 are sure, and each of these has 46 pt
or more to spare as set."""
_WORTH_A_PAGE = 1.15
"""By so much larger the map has to be for ticks to go to a page of their own."""
_AS_GOOD = 0.85
"""What is better to read is chosen unless the map would be much smaller for it."""


@dataclass(frozen=True)
class FieldLayout:
    """Map in points; `beside` the tables or above them; bands in so many columns, large or not."""

    map_width: float
    map_height: float
    beside: bool = False
    columns: int = 1
    large: bool = True
    points_beside: bool = True
    ticks_apart: bool = False
    """Whether ticks and reasons stand on a page of their own, for the map's sake. Where the field
    can not be sprayed as it stands: whether the map does, for its remedies fill the first."""
    bands_apart: bool = False
    """Whether the bands stand there too, so many are they."""
    left_pt: float = 0.0
    """Height that the estimate leaves free at the foot of the page; below zero what goes over."""

    @property
    def sure(self) -> bool:
        """Whether the page holds everything without a doubt: setting it twice to see is saved."""
        return self.left_pt >= _SURE_PT


@dataclass(frozen=True)
class FieldWords:
    """The words of a page, as far as the layout must know how long they are."""

    title: str
    clock: str
    thirsty: str
    stop: Sequence[str]
    remedies_pt: float
    """Height of the table of remedies."""
    points: Sequence[str]
    why: Sequence[str]
    ticks: Sequence[Sequence[Sequence[str]]]
    """Rows of one or two walls, each with its marks as set."""
    lives: str = ""

    @property
    def ticks_small(self) -> bool:
        """Whether there are so many ticks that only small type holds them."""
        return sum(len(marks) for row in self.ticks for marks in row) > _MANY_TICKS


def field_layout(
    plan: Plan, field: Field, words: FieldWords, *, size: PaperSize, grounds: Sequence[Storey]
) -> FieldLayout:
    """The best to read of those that hold everything on one page with a large map.

    Where that page cannot hold everything, or only with a small map, what is read on another day
    or in the office goes to a page of its own, if the map gains much by it.
    """
    best = _with_remedies(plan, field, words, size=size, grounds=grounds)
    holds = best.left_pt >= 0 and best.map_height >= _SMALL_MAP_PT
    if holds or not words.ticks:
        return best
    bare = replace(words, ticks=(), why=(), remedies_pt=0.0)
    apart = _best_layout(plan, field, bare, size=size, grounds=grounds)
    scales = _scales(plan, field, (best, apart), grounds)
    gains = apart.left_pt >= 0 and scales[1] > _WORTH_A_PAGE * scales[0]
    best = replace(apart, ticks_apart=True) if gains else best
    if best.left_pt >= 0 and best.map_height >= _SMALL_MAP_PT:
        return best
    alone = _map_alone(bare, size)
    scales = _scales(plan, field, (best, alone), grounds)
    return alone if scales[1] > _WORTH_A_PAGE * scales[0] else best


def _map_alone(words: FieldWords, size: PaperSize) -> FieldLayout:
    """The map above its points alone: so many bands that even by themselves they leave it small."""
    free = _free(words, size) - _points(words, size.inner_width) - 48
    high = max(min(free, _MOST_MAP_ALONE * size.inner_height), _LEAST_MAP_PT)
    return FieldLayout(
        size.inner_width, high, columns=3, large=False, ticks_apart=True, bands_apart=True,
        left_pt=free - high,
    )  # fmt: skip


def _with_remedies(
    plan: Plan, field: Field, words: FieldWords, *, size: PaperSize, grounds: Sequence[Storey]
) -> FieldLayout:
    """Remedies go over the page where they would take much of the map's room."""
    best = _best_layout(plan, field, words, size=size, grounds=grounds)
    if words.stop or not words.remedies_pt:
        return best
    bare = replace(words, remedies_pt=0.0)
    apart = _best_layout(plan, field, bare, size=size, grounds=grounds)
    kept = best.map_height >= _MAP_KEPT * apart.map_height
    return best if kept else replace(apart, left_pt=apart.left_pt - words.remedies_pt)


def _scales(
    plan: Plan, field: Field, layouts: Sequence[FieldLayout], grounds: Sequence[Storey]
) -> list[float]:
    """How large each layout draws the floor."""
    scene = scene_of_field(field, grounds)
    sizes = [(one.map_width, one.map_height) for one in layouts]
    scale = {
        (width, height): map_scale(
            plan, scene, field, width=width, height=height, lettering=PAPER_LETTERING
        )
        for width, height in dict.fromkeys(sizes)
    }
    return [scale[one] for one in sizes]


def _best_layout(
    plan: Plan, field: Field, words: FieldWords, *, size: PaperSize, grounds: Sequence[Storey]
) -> FieldLayout:
    """The first, best to read, of those whose map is nearly as large as the largest."""
    if words.stop:
        free = _free(words, size) - 24
        if free < _SMALL_MAP_PT:
            high = _MOST_MAP_ALONE * size.inner_height
            return FieldLayout(size.inner_width, high, ticks_apart=True)
        return FieldLayout(size.inner_width, min(size.inner_height * 0.42, free))
    beside, beside_over = _beside(field, words, size)
    above, above_over = _above(field, words, size)
    if len({band.start_min for band in field.bands}) > _MOST_BESIDE:
        beside, beside_over = [], above_over
    whole = sorted([*beside, *above], key=lambda one: not one.large) or [beside_over, above_over]
    scales = _scales(plan, field, whole, grounds)
    least = _AS_GOOD * max(scales)
    return next(one for one, scale in zip(whole, scales, strict=True) if scale >= least)


def _free(words: FieldWords, size: PaperSize) -> float:
    """Height left for map, tables and words below the head."""
    beside = text_width(words.clock, PAPER_LETTERING.title, bold=True) + 16
    title = wrap(words.title, size.inner_width - beside, PAPER_LETTERING.title, bold=True)
    lines = len(title or ("", "", ""))
    thirsty = _SMALL_BLOCK_PT if words.thirsty else 0.0
    head = _HEAD_PT + (lines - 1) * _TITLE_LINE_PT + thirsty + _stop(words, size.inner_width)
    if words.lives:
        head += _lines(words.lives, size.inner_width / 1.06, PAPER_LETTERING.body) * _LINE_PT + 5
    return size.inner_height - _FOOT_PT - head - words.remedies_pt


def _stop(words: FieldWords, width: float) -> float:
    """Height of the large "no"."""
    if not words.stop:
        return 0.0
    lines = _lines(words.stop[1], width, PAPER_LETTERING.head)
    return _STOP_PT + lines * _HEAD_LINE_PT + 8


def _beside(
    field: Field, words: FieldWords, size: PaperSize
) -> tuple[list[FieldLayout], FieldLayout]:
    """Maps beside their bands where all stands on one page, and one that goes over it."""
    width = size.inner_width * BESIDE_SHARE
    free = _free(words, size) - _ticks(words, size.inner_width) - _why(words, size.inner_width) - 24
    below = free - _points(words, size.inner_width) - 6
    beside = _points(words, size.inner_width - width - 16) + 22
    most = _MOST_MAP_SHARE * size.inner_height
    whole = []
    for large in (True, False):
        table = _table_height(len(field.bands), large=large)
        one = FieldLayout(width, min(free, most), beside=True, large=large)
        if _LEAST_MAP_PT <= one.map_height >= table + beside:
            whole.append(replace(one, left_pt=free - one.map_height))
        high = min(below, most)
        if high >= _LEAST_MAP_PT and table + 10 <= below:
            left = below - max(high, table + 10)
            whole.append(replace(one, map_height=high, points_beside=False, left_pt=left))
    high = max(_LEAST_MAP_PT, min(table, most))
    left = below - max(high, table + 10)
    return whole, replace(one, map_height=high, points_beside=False, left_pt=left)


def _above(
    field: Field, words: FieldWords, size: PaperSize
) -> tuple[list[FieldLayout], FieldLayout]:
    """Maps above their bands, in fewer columns first, and one that goes over the page."""
    free = _free(words, size) - _ticks(words, size.inner_width) - 48
    most = _MOST_MAP_ABOVE * size.inner_height
    whole = []
    over = FieldLayout(size.inner_width, _LEAST_MAP_PT, columns=3, large=False, left_pt=-math.inf)
    for columns, large in ((1, True), (1, False), (2, False), (3, False)):
        height = free - _told_height(field, words, size, columns=columns, large=large)
        over = replace(over, left_pt=max(over.left_pt, height - _LEAST_MAP_PT))
        if height > _LEAST_MAP_PT:
            high = min(height, most)
            one = FieldLayout(size.inner_width, high, columns=columns, large=large)
            whole.append(replace(one, left_pt=height - high))
    return whole, over


def _told_height(
    field: Field, words: FieldWords, size: PaperSize, *, columns: int, large: bool
) -> float:
    """Height of bands and words under a map that stands above them."""
    rows = math.ceil(max(len(field.bands), 1) / columns)
    table = _table_height(rows, large=large)
    if columns == 3:
        return table + _points(words, size.inner_width) + 6 + _why(words, size.inner_width)
    side = size.inner_width - columns * (150.0 if large else 138.0) - 26
    return max(table, _points(words, side) + _why(words, side))


def _table_height(rows: int, *, large: bool) -> float:
    return _TABLE_HEAD_PT + rows * (_BIG_ROW_PT if large else _ROW_PT)


def _lines(text: str, width: float, size: float) -> int:
    return max(1, math.ceil(text_width(text, size) * 1.05 / max(width, 40.0)))


def _points(words: FieldWords, width: float) -> float:
    lines = [_lines(point, width, PAPER_LETTERING.body) for point in words.points]
    return sum((n - 1) * _LINE_PT + _BLOCK_PT for n in lines)


def _why(words: FieldWords, width: float) -> float:
    lines = [_lines(line, width, PAPER_LETTERING.small) for line in words.why]
    return sum((n - 1) * _SMALL_LINE_PT + _SMALL_BLOCK_PT for n in lines) + 6


def _ticks(words: FieldWords, width: float) -> float:
    if not words.ticks:
        return 0.0
    size = PAPER_LETTERING.small if words.ticks_small else PAPER_LETTERING.body
    line, block = (
        (_SMALL_LINE_PT, _SMALL_BLOCK_PT + 1) if words.ticks_small else (_LINE_PT, _BLOCK_PT)
    )
    height = _LINE_PT + 6
    for row in words.ticks:
        lines = max(_tick_lines(marks, width / len(row) - 26, size) for marks in row)
        height += (lines - 1) * line + block
    return height


def _tick_lines(marks: Sequence[str], width: float, size: float) -> int:
    lines, used = 1, 0.0
    for mark in marks:
        wide = text_width(mark, size) * 0.97 + 12
        if used + wide > width:
            lines, used = lines + 1, 0.0
        used += wide
    return lines
