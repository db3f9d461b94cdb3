"""A range drawn as a line: what four jobs in five cost, what is likely, what is asked.

Shapes tell them apart, not colour: a thick bar for the range, a white notch for the likely cost, a
triangle on top for the price. All lines of a page have one scale.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

from markupsafe import Markup

from farwall.nouns import dataclass
from farwall.papers.ink import INK
from farwall.papers.svg import attributes
from farwall.papers.xml_text import escape

WIDE, _SIDE = 360.0, 26.0
_BAR_Y, _BAR = 26.0, 8.0
_TEXT = 12.0
_STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)


@dataclass(frozen=True)
class Scale:
    """From an amount to a place across the picture."""

    low: float
    high: float

    def x(self, value: float) -> float:
        """The place of an amount; ends of the scale lie a little inside."""
        share = (value - self.low) / ((self.high - self.low) or 1.0)
        return _SIDE + share * (WIDE - 2 * _SIDE)

    @property
    def ticks(self) -> list[float]:
        """Three to six round amounts on it."""
        rough = (self.high - self.low) / 4 or 1.0
        power = 10 ** math.floor(math.log10(rough))
        step = next(one * power for one in _STEPS if one * power >= rough * 0.999)
        first = math.ceil(self.low / step)
        return [n * step for n in range(first, math.floor(self.high / step) + 1)]


def scale_of(values: Iterable[float]) -> Scale:
    """A scale on which all of these lie."""
    found = list(values)
    return Scale(min(found), max(found))


def range_line(
    scale: Scale, low: float, likely: float, high: float, *, mark: float | None = None,
    said: str = "", ticks: bool = False, digits: int = 0,
) -> Markup:  # fmt: skip
    """The picture. mark: the price, where there is one; said: what it shows, in words; ticks: the
    round amounts under it, with so many digits behind the point."""
    tall = _BAR_Y + _BAR + (24.0 if ticks else 6.0)
    parts = [*_bar(scale, low, likely, high, mark)]
    if ticks:
        parts += _ticks(scale, digits)
    box = attributes({"viewBox": f"0 0 {WIDE:g} {tall:g}", "role": "img", "aria_label": said})
    return Markup(f"<svg{box}>{''.join(parts)}</svg>")


def _bar(scale: Scale, low: float, likely: float, high: float, mark: float | None) -> Iterator[str]:
    middle = _BAR_Y + _BAR / 2
    ends = {"x1": scale.x(scale.low), "x2": scale.x(scale.high), "y1": middle, "y2": middle}
    yield f"<line{attributes({**ends, 'stroke': '#c8c2b6', 'stroke_width': 1})}/>"
    left, right = scale.x(low), scale.x(high)
    box = {"x": left, "y": _BAR_Y, "width": max(right - left, 1.5), "height": _BAR, "fill": INK}
    yield f"<rect{attributes(dict(box))}/>"
    at = scale.x(likely)
    notch = {"x1": at, "x2": at, "y1": _BAR_Y - 1, "y2": _BAR_Y + _BAR + 1, "stroke": "#ffffff"}
    yield f"<line{attributes({**notch, 'stroke_width': 2.4})}/>"
    if mark is not None:
        x = scale.x(mark)
        points = f"{x:.1f},{_BAR_Y - 3:g} {x - 6:.1f},{_BAR_Y - 14:g} {x + 6:.1f},{_BAR_Y - 14:g}"
        yield f"<polygon{attributes({'points': points, 'fill': INK})}/>"


def _ticks(scale: Scale, digits: int) -> Iterator[str]:
    for one in scale.ticks:
        x = scale.x(one)
        line = {"x1": x, "x2": x, "y1": _BAR_Y + _BAR + 3, "y2": _BAR_Y + _BAR + 8}
        yield f"<line{attributes({**line, 'stroke': INK, 'stroke_width': 1})}/>"
        text = {"x": x, "y": _BAR_Y + _BAR + 20, "text_anchor": "middle", "font_size": _TEXT}
        yield f"<text{attributes({**text, 'fill': INK})}>{escape(f'{one:,.{digits}f}')}</text>"
