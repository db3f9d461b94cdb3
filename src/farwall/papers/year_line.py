"""The line beside the year's tape: days from cleaning to sealed, by the date of the beginning."""

from __future__ import annotations

import numpy as np

from farwall.job.year import DAYS, Year, first_days
from farwall.job.year_hours import Floats
from farwall.papers.ink import INK, LINE, SOFT, WHITE
from farwall.papers.lettering import Lettering
from farwall.papers.svg import Svg, number
from farwall.papers.year_marks import DAY_H

DAYS_W = 104.0
MOST_DAYS = 28
_SMOOTH = 7


def draw_days(svg: Svg, year: Year, at: tuple[float, float], lettering: Lettering) -> None:
    """The line at its likely, a pale band to its high end, cut off at four weeks."""
    left, top = at
    height = DAYS * DAY_H
    unit = DAYS_W / MOST_DAYS
    svg.element("rect", x=left, y=top - 14, width=DAYS_W, height=height + 14, fill=WHITE)
    for day in range(MOST_DAYS + 1):
        x = left + day * unit
        svg.line([(x, top), (x, top - (9 if day % 7 == 0 else 4))], stroke=INK, stroke_width=0.8)
        if day % 7 == 0:
            if day % 14 == 0:
                anchor = {0: "start", MOST_DAYS: "end"}.get(day, "middle")
                svg.text((x, top - 18), str(day), lettering.small, anchor=anchor)
            if 0 < day < MOST_DAYS:
                svg.line([(x, top), (x, top + height)], stroke=LINE, stroke_width=0.6)
    likely, high = (_cut(one) for one in (year.likely_days, year.high_days))
    _beyond(svg, likely, left, top, lettering)
    xs = [left + unit * one for one in likely]
    ends = [left + unit * one for one in np.maximum(high, likely)]
    ys = [top + (n + 0.5) * DAY_H for n in range(DAYS)]
    band = [*zip(xs, ys, strict=True), *reversed([*zip(ends, ys, strict=True)])]
    path = "M" + "L".join(f"{number(x)},{number(y)}" for x, y in band) + "Z"
    svg.element("path", d=path, fill=LINE, fill_opacity=0.7)
    inside = [(x, y) if one < MOST_DAYS else None for x, y, one in zip(xs, ys, likely, strict=True)]
    _broken(svg, inside)
    for day in first_days()[1:]:
        y = top + day * DAY_H
        svg.line([(left, y), (left + DAYS_W, y)], stroke=INK, stroke_width=0.5)
    svg.element("rect", x=left, y=top - 14, width=DAYS_W, height=height + 14, fill="none",
                stroke=INK, stroke_width=1.2)  # fmt: skip


def _cut(days: Floats) -> Floats:
    return np.asarray(np.minimum(np.nan_to_num(days, nan=np.inf), MOST_DAYS))


def _broken(svg: Svg, points: list[tuple[float, float] | None]) -> None:
    run: list[tuple[float, float]] = []
    for point in [*points, None]:
        if point is not None:
            run.append(point)
            continue
        if len(run) > 1:
            svg.line(run, stroke=INK, stroke_width=1.6)
        run = []


def _beyond(svg: Svg, likely: Floats, left: float, top: float, lettering: Lettering) -> None:
    """Dates from which no house is sealed within four weeks: pale, in words where there is room."""
    first: int | None = None
    for day in range(DAYS + 1):
        over = day < DAYS and likely[day] >= MOST_DAYS
        if over and first is None:
            first = day
        if not over and first is not None:
            y, high = top + first * DAY_H, (day - first) * DAY_H
            svg.element("rect", x=left, y=y, width=DAYS_W, height=high, fill=LINE,
                        fill_opacity=0.35)  # fmt: skip
            if high > 4 * lettering.small:
                middle = left + DAYS_W / 2
                for n, words in enumerate(("not sealed", "within 4 weeks")):
                    place = (middle, y + high / 2 + (1.2 * n - 0.2) * lettering.small)
                    svg.text(place, words, lettering.small, cased=True, fill=SOFT)
            first = None
