"""The key under the year's tape: what each shade, hatch and line says, in words."""

from __future__ import annotations

from farwall.job.year import Year
from farwall.job.year_hours import NEEDED_MIN
from farwall.papers.ink import INK, LINE, WHITE
from farwall.papers.lettering import Lettering, wrap
from farwall.papers.svg import Svg
from farwall.papers.year_marks import COLD, DAMP, LAST, LATER, SLOW, SOON, UNRINSED, WARM, filled
from farwall.units import f_from_c

_BOX_W, _BOX_H = 22.0, 12.0
DAYS_TOLD = (
    "days from cleaning to sealed for a house begun then, likely; pale: all at its long end. "
    "1,500 ft², two people, at work every day of the week"
)


def draw_key(
    svg: Svg, year: Year, at: tuple[float, float, float], y: float, lettering: Lettering
) -> float:
    """Two columns of words with their boxes, and the lines; returns where it ends."""
    left, _, middle = at
    limits = year.limits
    stain = [
        (SOON, "dry for the next coat within 2 h"),
        (LATER, "within 4 h"),
        (LAST, "later, within a day"),
        (filled(svg, UNRINSED), "too damp to rinse by 8:00 next day"),
        (filled(svg, SLOW), "would not dry within a day"),
        (filled(svg, COLD), "slab below 50 °F (10 °C)"),
        (filled(svg, WARM), f"slab above 85 °F, or an edge dead in {NEEDED_MIN:.0f} min"),
    ]
    seal = [
        (SOON, "goes, the next six hours as well"),
        (LATER, "goes with care: room air above 60 %"),
        (WHITE, "not while the slab cools"),
        (filled(svg, DAMP), "dew or damp air, now or to come"),
        (filled(svg, COLD), f"slab below {f_from_c(limits.least_slab_c):.0f} °F"),
        (filled(svg, WARM), f"slab above {f_from_c(limits.most_slab_c):.0f} °F"),
    ]
    y += lettering.head * 1.6
    ends = []
    for x, title, rows, width in (
        (left, "stain", stain, middle - left - 18),
        (middle, "seal", seal, svg.width - middle - left),
    ):
        svg.text((x, y), title, lettering.body, anchor="start", bold=True)
        ends.append(_rows(svg, (x, y), rows, width, lettering))
    return _lines(svg, left, max(ends), lettering)


def _rows(
    svg: Svg,
    at: tuple[float, float],
    rows: list[tuple[str, str]],
    width: float,
    lettering: Lettering,
) -> float:
    x, y = at
    for fill, words in rows:
        y += lettering.small * 0.5
        told = wrap(words, (width - _BOX_W - 8) / lettering.widen, lettering.small) or (words,)
        for n, line in enumerate(told):
            y += lettering.small * 1.3
            if n == 0:
                box = {"x": x, "y": y - 10, "width": _BOX_W, "height": _BOX_H}
                if fill == filled(svg, UNRINSED):
                    svg.element("rect", **box, fill=LAST)
                svg.element("rect", **box, fill=fill, stroke=INK, stroke_width=0.8)
            svg.text((x + _BOX_W + 8, y), line, lettering.small, anchor="start")
    return y


def _lines(svg: Svg, x: float, y: float, lettering: Lettering) -> float:
    """Sunrise and sunset, the hours of work, the days and their high end."""
    rows = (
        (
            "sun",
            "sunrise and sunset; hours are of the weather file's own clock, without summer time",
        ),
        ("work", "hours of work, which the days beside the months are counted in"),
        ("days", DAYS_TOLD),
    )
    y += lettering.small * 0.6
    for kind, words in rows:
        told = wrap(words, (svg.width - 2 * x - _BOX_W - 8) / lettering.widen, lettering.small)
        y += lettering.small * 0.5
        for n, line in enumerate(told or (words,)):
            y += lettering.small * 1.3
            if n == 0:
                _sign(svg, kind, x, y - 4)
            svg.text((x + _BOX_W + 8, y), line, lettering.small, anchor="start")
    return y + lettering.small * 0.8


def _sign(svg: Svg, kind: str, x: float, y: float) -> None:
    ends = [(x, y), (x + _BOX_W, y)]
    if kind == "sun":
        svg.line(ends, stroke=INK, stroke_width=1, stroke_dasharray="5 3")
    elif kind == "work":
        svg.line(ends, stroke=INK, stroke_width=3)
    else:
        svg.element("rect", x=x + 6, y=y - 5, width=_BOX_W - 6, height=10, fill=LINE,
                    fill_opacity=0.7)  # fmt: skip
        svg.line([(x + 6, y - 5), (x + 6, y + 5)], stroke=INK, stroke_width=1.6)
