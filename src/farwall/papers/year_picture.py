"""A year of floors as a tape that hangs: days down it, hours across, stain beside sealer.

Beside the tape the months with their days that can be worked, and a line: how
many days a house begun on that date takes from cleaning to sealed. Shade tells
how soon, hatch tells why not; grey keeps both.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.air.sealers import UNKNOWN
from farwall.job.year import DAYS, Year, by_day, first_days
from farwall.job.year_chain import FROM_H, TO_H
from farwall.job.year_hours import SAME_DAY_MIN, SOON_MIN
from farwall.papers.ink import INK, PAPER, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, Lettering, wrap
from farwall.papers.svg import Svg
from farwall.papers.year_key import draw_key
from farwall.papers.year_line import DAYS_W, draw_days
from farwall.papers.year_marks import (
    COLD,
    DAMP,
    DAY_H,
    HOUR_W,
    LAST,
    LATER,
    SLOW,
    SOON,
    UNRINSED,
    WARM,
    draw_cells,
    filled,
    patterns,
)

_MARGIN, _MONTH_W, _GAP = 16.0, 98.0, 16.0
_TAPE_W, _TAPE_H = 24 * HOUR_W, DAYS * DAY_H
STAIN_X = _MARGIN + _MONTH_W
SEAL_X = STAIN_X + _TAPE_W + _GAP
LINE_X = SEAL_X + _TAPE_W + _GAP
WIDTH = LINE_X + DAYS_W + _MARGIN
STANDING = {
    "shut": "House shut, no heat",
    "open": "House open, no heat",
    "heated": "House shut, held at 65 °F by vented heat",
}
CAUTION = (
    "A typical year of a weather station and an ordinary house: what a season is like, not what a "
    "day will bring. Read slab and air on the floor. The sheet and the sealer's label win."
)


def year_svg(year: Year, *, name: str = "", lettering: Lettering = SCREEN_LETTERING) -> str:
    """The picture as SVG text, upright, for a page of paper or a phone.

    name: of the place, taken from the weather file when left out.
    """
    svg = Svg(width=WIDTH, height=0, family=lettering.family, ident="year")
    patterns(svg)
    top = _head(svg, year, name or year.place.city, lettering)
    _tape(svg, STAIN_X, top, lettering)
    _tape(svg, SEAL_X, top, lettering)
    _stain(svg, year, top)
    _seal(svg, year, top)
    for left in (STAIN_X, SEAL_X):
        _suns(svg, year, left, top)
        _frame(svg, left, top)
    _months(svg, year, top, lettering)
    draw_days(svg, year, (LINE_X, top), lettering)
    bottom = draw_key(svg, year, (_MARGIN, STAIN_X, SEAL_X), top + _TAPE_H, lettering)
    svg.height = _foot(svg, bottom, lettering)
    svg.parts.insert(0, f'<rect width="100%" height="100%" fill="{PAPER}"/>')
    return svg.document(title="A year of floors", description=_told(year))


def counts(year: Year) -> str:
    """The year's days in one sentence."""
    stain, both, seal = (
        sum(getattr(one, key) for one in year.months) for key in ("stain", "both_coats", "seal")
    )
    return (
        f"{stain} days to stain, {both} of them for both coats, {seal} days to seal, within the "
        f"hours of work, {FROM_H}:00 to {TO_H}:00."
    )


def _head(svg: Svg, year: Year, name: str, lettering: Lettering) -> float:
    y = _MARGIN + lettering.title * 0.8
    svg.text((_MARGIN, y), "A year of floors", lettering.title, anchor="start", bold=True)
    words = (
        f"{name}. {STANDING[year.standing]}; a normal trowel, 200 ft² a gallon (4.9 m²/L); "
        f"{_sealer(year)}. {counts(year)}"
    )
    for line in _lines(words, WIDTH - 2 * _MARGIN, lettering.body, lettering):
        y += lettering.body * 1.4
        svg.text((_MARGIN, y), line, lettering.body, anchor="start")
    y += lettering.head * 1.9
    for left, word in ((STAIN_X, "stain"), (SEAL_X, "seal"), (LINE_X, "days")):
        svg.text((left, y), word, lettering.head, anchor="start", bold=True)
    said = ((STAIN_X, "begun at this hour"), (SEAL_X, "begun at this hour"),
            (LINE_X, "clean to sealed"))  # fmt: skip
    y += lettering.small * 1.4
    for left, word in said:
        svg.text((left, y), word, lettering.small, anchor="start", fill=SOFT)
    return y + lettering.small * 2 + 18


def _sealer(year: Year) -> str:
    told = year.limits.name
    return "sealer not told: the strictest limits" if told == UNKNOWN.name else told


def _tape(svg: Svg, left: float, top: float, lettering: Lettering) -> None:
    """White ground, and the hours over it as on a tape: six hours long, others short."""
    svg.element("rect", x=left, y=top - 14, width=_TAPE_W, height=_TAPE_H + 14, fill=WHITE)
    for hour in range(25):
        x = left + hour * HOUR_W
        svg.line([(x, top), (x, top - (9 if hour % 6 == 0 else 4))], stroke=INK, stroke_width=0.8)
        if hour % 6 == 0:
            anchor = {0: "start", 24: "end"}.get(hour, "middle")
            svg.text((x, top - 18), str(hour), lettering.small, anchor=anchor)
    at = [(left + hour * HOUR_W, top - 12.4) for hour in (FROM_H, TO_H)]
    svg.line(at, stroke=INK, stroke_width=3)


def _frame(svg: Svg, left: float, top: float) -> None:
    for day in first_days()[1:]:
        y = top + day * DAY_H
        svg.line([(left, y), (left + _TAPE_W, y)], stroke=WHITE, stroke_width=1.6)
        svg.line([(left, y), (left + _TAPE_W, y)], stroke=INK, stroke_width=0.5)
    svg.element("rect", x=left, y=top - 14, width=_TAPE_W, height=_TAPE_H + 14, fill="none",
                stroke=INK, stroke_width=1.2)  # fmt: skip


def _stain(svg: Svg, year: Year, top: float) -> None:
    stain = year.stain
    fine, likely = stain.fine, np.nan_to_num(stain.likely_min, nan=np.inf)
    warm = ~stain.cold & (stain.hot | stain.too_quick)
    shades = (
        (fine & (likely <= SOON_MIN), SOON),
        (fine & (likely > SOON_MIN) & (likely <= SAME_DAY_MIN), LATER),
        (fine & (likely > SAME_DAY_MIN), LAST),
        (stain.cold, filled(svg, COLD)),
        (warm, filled(svg, WARM)),
        (~stain.cold & ~warm & stain.slow, filled(svg, SLOW)),
        (fine & ~stain.rinsed_next_morning, filled(svg, UNRINSED)),
    )
    for cells, fill in shades:
        draw_cells(svg, _grid(cells), STAIN_X, top, fill)


def _seal(svg: Svg, year: Year, top: float) -> None:
    seal = year.seal
    left = seal.fine.copy()
    shades = [(left & ~seal.care, SOON), (left & seal.care, LATER)]
    told = ~seal.fine
    for why, hatch in ((seal.cold, COLD), (seal.hot, WARM), (seal.damp, DAMP)):
        shades.append((told & why, filled(svg, hatch)))
        told = told & ~why
    for cells, fill in shades:
        draw_cells(svg, _grid(cells), SEAL_X, top, fill)


def _grid(flags: NDArray[np.bool_]) -> NDArray[np.bool_]:
    return by_day(flags).astype(bool)


def _suns(svg: Svg, year: Year, left: float, top: float) -> None:
    """Sunrise and sunset, a point a week; broken where the sun does not rise or set."""
    for hours in (year.sunrise_h, year.sunset_h):
        days = [*range(0, DAYS, 7), DAYS - 1]
        run: list[tuple[float, float]] = []
        for day in [*days, None]:
            if day is not None and np.isfinite(hours[day]):
                run.append((left + hours[day] * HOUR_W, top + (day + 0.5) * DAY_H))
            elif run:
                svg.line(run, stroke=WHITE, stroke_width=3)
                svg.line(run, stroke=INK, stroke_width=1, stroke_dasharray="5 3")
                run = []


def _months(svg: Svg, year: Year, top: float, lettering: Lettering) -> None:
    """Names of the months where they begin, with their days; a tick a month, a small one a week."""
    right = STAIN_X - 3
    for day in range(0, DAYS, 7):
        y = top + day * DAY_H
        svg.line([(right - 4, y), (right, y)], stroke=INK, stroke_width=0.7)
    for month in year.months:
        y = top + month.first_day * DAY_H
        svg.line([(_MARGIN, y), (right, y)], stroke=INK, stroke_width=0.9)
        y += lettering.body + 1
        svg.text((_MARGIN, y), month.name, lettering.body, anchor="start", bold=True)
        for words in (
            f"{month.stain} stain",
            f"{month.both_coats} both coats",
            f"{month.seal} seal",
        ):
            y += lettering.small * 1.25
            svg.text((_MARGIN, y), words, lettering.small, anchor="start")


def _foot(svg: Svg, y: float, lettering: Lettering) -> float:
    for line in _lines(CAUTION, WIDTH - 2 * _MARGIN, lettering.small, lettering):
        y += lettering.small * 1.4
        svg.text((_MARGIN, y), line, lettering.small, anchor="start")
    return y + _MARGIN


def _lines(words: str, width: float, size: float, lettering: Lettering) -> tuple[str, ...]:
    return wrap(words, width / lettering.widen, size) or (words,)


def _told(year: Year) -> str:
    rows = "; ".join(
        f"{one.name} {one.stain} days to stain, {one.both_coats} for both coats, {one.seal} to seal"
        for one in year.months
    )
    return f"{STANDING[year.standing]}. {counts(year)} {rows}."
