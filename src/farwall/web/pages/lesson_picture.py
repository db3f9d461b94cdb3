"""How a lesson's range narrows from job to job: a wedge after each, one ruler over all of them.

The wedge holds the next job's value four times in five, thickest at its likeliest; the bar in it
the quantity itself; the plumb line is common practice.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from farwall.facts.lessons import Lesson
from farwall.learn.figures import Units, figure, value_shown
from farwall.papers.ink import INK, LINE, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, clipped, text_width
from farwall.papers.svg import Svg, number
from farwall.papers.xml_text import escape
from farwall.web.pages.lesson_words import name_told, unit_told
from farwall.web.pages.light import small_widen
from farwall.web.words import said

_SIZE = SCREEN_LETTERING.small
_RULE_H, _ROW_H, _PAD = 26.0, 24.0, 6.0
_SHARE = 0.07


class _Ruler:
    """Where a shown value lies on the tape."""

    def __init__(self, values: Sequence[float], left: float, width: float) -> None:
        low, high = min(values), max(values)
        spare = max((high - low) * _SHARE, abs(high) * 1e-6, 1e-9)
        self.low, self.high = low - spare, high + spare
        self.left, self.width = left, width

    def x(self, value: float) -> float:
        """Its place, held within the tape."""
        share = (value - self.low) / (self.high - self.low)
        return self.left + min(max(share, 0.0), 1.0) * self.width

    def ticks(self, apart: float) -> Iterator[tuple[float, bool]]:
        """Values of the ruler, and whether each is named; names stand at least `apart` apart."""
        step = _step((self.high - self.low) * apart / self.width)
        small = step / 5
        n = math.ceil(self.low / small)
        while n * small <= self.high:
            yield n * small, n % 5 == 0
            n += 1


def _step(least: float) -> float:
    """1, 2 or 5 times a power of ten, no less than `least`."""
    power = 10.0 ** math.floor(math.log10(least))
    return next(one * power for one in (1, 2, 5, 10) if one * power >= least * (1 - 1e-9))


def narrowing(
    one: Lesson, steps: Sequence[Mapping[str, Any]], units: Units, width: float
) -> str:  # fmt: skip
    """The drawing as SVG text; `steps` as `teaching.steps_of` gives them. Empty without any."""
    mine = [step for step in steps if one.name in step["ranges"]]
    if not mine:
        return ""
    shown = [[value_shown(one, value, units) for value in step["ranges"][one.name]]
             for step in mine]  # fmt: skip
    practice = value_shown(one, one.practice, units)
    ranges = [sorted((row[0], row[2])) for row in shown]
    left = min(width * 0.34, 190.0)
    ruler = _Ruler([practice, *(end for pair in ranges for end in pair)], left, width - left)
    svg = Svg(width=width, height=_RULE_H + _PAD, family=SCREEN_LETTERING.family)
    high = _RULE_H + 2 * _PAD + _ROW_H * len(mine)
    svg.element("rect", x=left, y=0.6, width=width - left - 0.6, height=high - 1.2, fill=WHITE,
                stroke=INK, stroke_width=1.2)  # fmt: skip
    _rule(svg, ruler)
    _plumb(svg, ruler.x(practice), high)
    for step, row in zip(mine, shown, strict=True):
        _row(svg, ruler, step, row, left)
    svg.height = high + 18
    words = said("lessons-practice")
    wide = text_width(words, _SIZE) * small_widen()
    x = min(max(ruler.x(practice) - wide / 2, 0), width - wide - 2)
    svg.text((x, high + 14), words, _SIZE, anchor="start", fill=SOFT)
    label = said("lessons-picture", name=name_told(one), unit=unit_told(one, units))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="lesson-drawing" role="img" '
        f'aria-label="{escape(label)}" viewBox="0 0 {number(width)} {number(svg.height)}" '
        f'font-family="{svg.family}" fill="{INK}">\n{svg}\n</svg>\n'
    )


def _rule(svg: Svg, ruler: _Ruler) -> None:
    right = ruler.left
    for value, named in ruler.ticks(74.0):
        x = ruler.x(value)
        svg.line([(x, 0), (x, 10 if named else 5)], stroke=INK, stroke_width=1.2 if named else 0.7)
        words = figure(value) if value else "0"
        wide = text_width(words, _SIZE, bold=True) * small_widen()
        if named and x - wide / 2 > right + 3 and x + wide / 2 < svg.width - 4:
            svg.text((x, 22), words, _SIZE, bold=True)
            right = x + wide / 2


def _plumb(svg: Svg, x: float, high: float) -> None:
    svg.line([(x, _RULE_H), (x, high)], stroke=SOFT, stroke_width=1.4, stroke_dasharray="5 3")


def _row(
    svg: Svg, ruler: _Ruler, step: Mapping[str, Any], row: Sequence[float], left: float
) -> None:  # fmt: skip
    """After so many jobs: the wedge, and the bar of the quantity itself in it."""
    mid = svg.height + _ROW_H / 2
    low, likely, high, own_low, own_high = map(ruler.x, row)
    half = _ROW_H / 2 - 3
    d = (
        f"M{number(low)},{number(mid)}L{number(likely)},{number(mid - half)}"
        f"L{number(high)},{number(mid)}L{number(likely)},{number(mid + half)}Z"
    )
    svg.element("path", d=d, fill=LINE, fill_opacity=0.6, stroke=SOFT, stroke_width=0.8)
    x0, x1 = sorted((own_low, own_high))
    svg.line([(x0, mid), (x1, mid)], stroke=INK, stroke_width=2.4)
    svg.line([(likely, mid - half), (likely, mid + half)], stroke=INK, stroke_width=1.2)
    count = int(step["jobs"])
    words = said("lessons-after-1") if count == 1 else said("lessons-after", n=count)
    words = clipped(f"{words}, {step['job']}", (left - 8) / small_widen(), _SIZE)
    svg.text((0, mid + _SIZE * 0.36), words, _SIZE, anchor="start")
    svg.height += _ROW_H
