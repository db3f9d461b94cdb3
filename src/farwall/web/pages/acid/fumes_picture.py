"""The ppm of the day as a picture on the tape of time: a band, a line, the limits named.

The scale is that of tenfold steps: a house goes from what can just be smelt to what kills. The band
is what may be, the line what is likely, of the worst room at each minute. Works in grey.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import log10

from farwall.facts.plan import Plan
from farwall.job.acid_day.fumes import Fumes
from farwall.nouns import dataclass
from farwall.papers.ink import DANGER, INK, LINE, PAPER, RAMP, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING
from farwall.papers.svg import Svg, number
from farwall.papers.xml_text import escape
from farwall.web.pages.said_clock import SaidClock
from farwall.web.pages.tape_rule import RULE_H, SIZE, Ruled, draw_rule, wide
from farwall.web.words import said

WIDTHS = (860.0, 358.0)
TALL, SPRAY_H = 250.0, 22.0
LEAST_PPM = 0.3
_LINES = ("hcl-at-once", "hcl-law", "hcl-hygienists", "hcl-smell")
_PLACES, _BETWEEN = 24, 6
_DASHES = {"hcl-at-once": None, "hcl-law": "9 4", "hcl-hygienists": "9 4", "hcl-smell": "2 4"}


@dataclass(frozen=True)
class Worst:
    """The worst room at each minute drawn: (minute, low, likely, high)."""

    at: tuple[tuple[float, float, float, float], ...]

    @property
    def most(self) -> float:
        """The highest that is drawn."""
        return max(high for _, _, _, high in self.at)


def worst(found: Fumes) -> Worst:
    """Of all rooms the one with the most, minute by minute."""
    rows = zip(*(room.curve for room in found.rooms), strict=True)
    return Worst(
        tuple(
            (
                row[0].at_min,
                max(one.low for one in row),
                max(one.likely for one in row),
                max(one.high for one in row),
            )
            for row in rows
        )
    )


def pictures(found: Fumes, plan: Plan, clock: SaidClock) -> tuple[str, ...]:
    """The picture as SVG for a wide and a narrow page; none where nothing was reckoned."""
    if not found.rooms:
        return ()
    shown = worst(found)
    return tuple(_picture(shown, found, plan, clock, width) for width in WIDTHS)


@dataclass(frozen=True)
class _Scale:
    """Where a ppm lies: tenfold steps of equal height below the rule."""

    most: float

    def y(self, ppm: float) -> float:
        top, low = log10(self.most), log10(LEAST_PPM)
        share = (log10(max(ppm, LEAST_PPM)) - low) / (top - low)
        return RULE_H + TALL * (1 - min(share, 1.0))


def _picture(shown: Worst, found: Fumes, plan: Plan, clock: SaidClock, width: float) -> str:
    svg = Svg(width=width, height=RULE_H + TALL + SPRAY_H, family=SCREEN_LETTERING.family)
    ruled = Ruled(svg, clock, shown.at[0][0], shown.at[-1][0])
    scale = _Scale(max(shown.most * 1.5, 100.0))
    svg.element("rect", x=0.6, y=0.6, width=width - 1.2, height=svg.height - 1.2, fill=WHITE)
    _band(ruled, scale, shown.at)
    _limits(ruled, scale, found, shown)
    _sprayed(ruled, plan)
    draw_rule(ruled)
    svg.element(
        "rect", x=0.6, y=0.6, width=width - 1.2, height=svg.height - 1.2,
        fill="none", stroke=INK, stroke_width=1.2,
    )  # fmt: skip
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="acid-fumes-drawing" role="img"'
        f' aria-label="{escape(said("acid-fumes-picture"))}"'
        f' viewBox="0 0 {number(width)} {number(svg.height)}" font-family="{svg.family}"'
        f' fill="{INK}">\n{svg}\n</svg>\n'
    )


def _band(ruled: Ruled, scale: _Scale, at: Sequence[tuple[float, float, float, float]]) -> None:
    """What may be, and in it what is likely."""
    above = [(ruled.x(one[0]), scale.y(one[3])) for one in at]
    below = [(ruled.x(one[0]), scale.y(one[1])) for one in reversed(at)]
    ruled.svg.element(
        "path", d="M" + " ".join(f"{number(x)},{number(y)}" for x, y in (*above, *below)) + "Z",
        fill=RAMP[0], stroke=RAMP[2], stroke_width=1,
    )  # fmt: skip
    ruled.svg.line([(ruled.x(one[0]), scale.y(one[2])) for one in at], stroke=INK, stroke_width=2.2)


def _limits(ruled: Ruled, scale: _Scale, found: Fumes, shown: Worst) -> None:
    """The limits as lines, each with its ppm, what it is and since when."""
    ppm = {one.key: one.ppm or 0.0 for one in found.limits}
    for key in _LINES:
        y = scale.y(ppm[key])
        colour = DANGER if key == "hcl-at-once" else INK
        ruled.svg.line(
            [(0, y), (ruled.svg.width, y)], stroke=colour,
            stroke_width=1.8 if key == "hcl-at-once" else 1.1, stroke_dasharray=_DASHES[key],
        )  # fmt: skip
        long, short = (said(f"acid-fumes-line-{form}-{key}") for form in ("long", "short"))
        text = long if wide(long) < ruled.svg.width * 0.7 else short
        x = _free_place(ruled, scale, shown, y, wide(text))
        ruled.svg.text((x, y - 5), text, SIZE, anchor="start", fill=colour, cased=True)


def _free_place(ruled: Ruled, scale: _Scale, shown: Worst, y: float, width: float) -> float:
    """Where on its line a limit's words stand farthest from the curves."""
    marks = [
        mark
        for n in (1, 2, 3)
        for mark in _along([(ruled.x(one[0]), scale.y(one[n])) for one in shown.at])
    ]
    middle = y - 5 - SIZE / 3

    def room(x: float) -> float:
        near = [abs(at_y - middle) for at_x, at_y in marks if x - 6 < at_x < x + width + 6]
        return min(min(near, default=SIZE), SIZE * 1.2)

    reach = max(ruled.svg.width - width - 8, 8.0)
    places = [8 + (reach - 8) * n / (_PLACES - 1) for n in range(_PLACES)]
    return max(places, key=room)


def _along(points: Sequence[tuple[float, float]]) -> Iterator[tuple[float, float]]:
    """Points and what lies between them: a steep stretch would pass between two unseen."""
    yield from points[:1]
    for (x0, y0), (x1, y1) in pairwise(points):
        for n in range(1, _BETWEEN + 1):
            share = n / _BETWEEN
            yield x0 + (x1 - x0) * share, y0 + (y1 - y0) * share


def _sprayed(ruled: Ruled, plan: Plan) -> None:
    """When somebody sprays: bars at the foot, one for each field."""
    svg, top = ruled.svg, RULE_H + TALL
    svg.element("rect", x=0, y=top, width=svg.width, height=SPRAY_H, fill=PAPER)
    svg.line([(0, top), (svg.width, top)], stroke=LINE, stroke_width=1)
    free = 6.0
    for field in plan.fields:
        x0, x1 = ruled.x(field.start_min), ruled.x(field.end_min)
        svg.element("rect", x=x0, y=top + 5, width=max(x1 - x0, 1.5), height=SPRAY_H - 10,
                    fill=INK, stroke=WHITE, stroke_width=0.6)  # fmt: skip
        free = max(free, x1)
    word = said("acid-fumes-spraying")
    if free + 8 + wide(word) < svg.width:
        svg.text((free + 8, top + SPRAY_H - 7), word, SIZE, anchor="start", fill=SOFT)
