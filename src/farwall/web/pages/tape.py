"""The tape of time under the floor, from survey to hand-over, through any window of it."""

from __future__ import annotations

from farwall.nouns import dataclass
from farwall.papers.ink import INK, WHITE
from farwall.papers.lettering import SCREEN_LETTERING
from farwall.papers.svg import Svg, number
from farwall.web.pages.looking_at import Window
from farwall.web.pages.shown import Shown
from farwall.web.pages.tape_marks import (
    BAR_H,
    LABEL_H,
    PAD,
    THIN_H,
    TOP,
    Labels,
    draw_as_planned,
    draw_entered,
    draw_pieces,
)
from farwall.web.pages.tape_rule import SIZE, Ruled, draw_nights, draw_rule, wide
from farwall.web.pages.tape_waits import ROW_H, draw_waits, lay_waits
from farwall.web.words import said

_WIDE, _NARROW = 860.0, 358.0
WIDTHS = (_WIDE, _NARROW)
"""Widths at which a tape is drawn for a page without script [px]."""
_LABEL_ROWS = 2


@dataclass(frozen=True)
class Tape:
    """A tape as SVG text, and the minutes of the plan at its two ends."""

    svg: str
    from_min: float
    to_min: float


def tape(
    shown: Shown,
    window: Window,
    *,
    minute: float,
    width: float,
    link: str = "",
    now_min: float | None = None,
) -> Tape:
    """The tape through a window. link: what stands before a minute in the address of its moment.

    width: pixels; type keeps its size. now_min: the minute that it is, marked where it is seen.
    """
    course, went = shown.course, shown.went
    svg = Svg(width=width, height=0, family=SCREEN_LETTERING.family)
    ruled = Ruled(svg, shown.clock, window.from_min, window.to_min)
    laid, rows = lay_waits(ruled, course.waits)
    labels = Labels(width, _LABEL_ROWS)
    under = TOP + BAR_H + 2
    logged = 0.0 if went is None else THIN_H + 3 + 15
    draw_rule(ruled)
    draw_pieces(ruled, course, labels, went=went, link=link)
    if went is not None:
        draw_as_planned(ruled, course, shown.first_course, under)
        draw_entered(ruled, went, under + THIN_H + 1)
    for x, row, text in labels.placed:
        y = under + logged + row * LABEL_H + 11
        svg.text((x, y), text, SIZE, anchor="start", cased=True)
    waits = under + logged + labels.used * LABEL_H + PAD / 2
    on_it = now_min is not None and window.from_min < now_min < window.to_min
    svg.height = waits + rows * ROW_H + (18 if on_it else 4)
    marks, svg.parts = svg.parts, []
    svg.element("rect", x=0.6, y=0.6, width=width - 1.2, height=svg.height - 1.2, fill=WHITE)
    draw_nights(ruled, shown.nights)
    svg.parts += marks
    draw_waits(ruled, laid, waits)
    if on_it:
        _now(ruled, now_min or 0.0)
    svg.element(
        "rect", x=0.6, y=0.6, width=width - 1.2, height=svg.height - 1.2,
        fill="none", stroke=INK, stroke_width=1.2,
    )  # fmt: skip
    drawn, words = _apart(svg.parts)
    text = (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="tape-drawing" aria-hidden="true"'
        f' viewBox="0 0 {number(width)} {number(svg.height)}" font-family="{svg.family}"'
        f' fill="{INK}" data-width="{number(width)}" data-from="{window.from_min}"'
        f' data-to="{window.to_min}">\n<g class="tape-marks">{drawn}</g>\n'
        f"{_plumb(ruled, minute)}\n"
        f'<g class="tape-marks tape-words">{words}</g>\n{_plumb_head(ruled, minute)}\n</svg>\n'
    )
    return Tape(text, window.from_min, window.to_min)


def _now(ruled: Ruled, now_min: float) -> None:
    """The minute that it is: a dotted line and its word at the foot."""
    x, low = ruled.x(now_min), ruled.svg.height
    ruled.svg.line([(x, 0), (x, low)], stroke=INK, stroke_width=1.4, stroke_dasharray="1.5 3")
    word = said("tape-now")
    left = x + 5 if x + 7 + wide(word) < ruled.svg.width else x - 5 - wide(word)
    ruled.svg.text((left, low - 6), word, SIZE, anchor="start", bold=True, cased=True)


def _apart(parts: list[str]) -> tuple[str, str]:
    """What is drawn, and the words: those stand over the plumb line, which would hide a figure."""
    words = [part for part in parts if part.startswith("<text")]
    return "\n".join(part for part in parts if not part.startswith("<text")), "\n".join(words)


def _plumb(ruled: Ruled, minute: float) -> str:
    low = number(ruled.svg.height)
    return _moved(
        ruled, minute,
        f'<path d="M0,0V{low}" stroke="{WHITE}" stroke-width="5"/>'
        f'<path d="M0,0V{low}" stroke="{INK}" stroke-width="2.2"/>',
    )  # fmt: skip


def _plumb_head(ruled: Ruled, minute: float) -> str:
    return _moved(ruled, minute, f'<path d="M-7,0h14l-7,10z" fill="{INK}" stroke="{WHITE}"/>')


def _moved(ruled: Ruled, minute: float, drawn: str) -> str:
    return f'<g class="plumb" transform="translate({number(ruled.x(minute))} 0)">{drawn}</g>'
