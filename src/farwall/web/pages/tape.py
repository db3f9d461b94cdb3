"""The tape of time under the floor, at three scales: a coat's minutes, the day, the days.

Fields are bars parted into their bands, refills small cans' marks above them, waits wedges
thickest at their likeliest, the moment a plumb line.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import timedelta
from typing import Literal, get_args

from farwall.facts.plan import Clock, Field, Plan
from farwall.papers.ink import INK, LINE, PAPER, RAMP, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, text_width
from farwall.papers.svg import Svg, number
from farwall.papers.time_tape import wait_words
from farwall.papers.wall_clock import WallClock
from farwall.web.pages.moment_words import coat_at
from farwall.web.words import said

Scale = Literal["coat", "day", "days"]
SCALES: tuple[Scale, ...] = get_args(Scale)
_RULE_H, _BAR_H, _PAD, _ROW_H = 24.0, 22.0, 9.0, 22.0
_TAIL_MIN = 240.0
_DAY_MIN = 1440.0
_STEPS_MIN = (1, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1440, 2880, 10080)
_TICK_APART, _NAME_APART = 9.0, 46.0
_SIZE = SCREEN_LETTERING.small
_WIDEN = SCREEN_LETTERING.widen


@dataclass(frozen=True)
class Tape:
    """A tape as SVG text, and the minutes of the plan at its two ends."""

    svg: str
    from_min: float
    to_min: float


@dataclass(frozen=True)
class _Ruled:
    """A tape in the making: where a minute lies on it."""

    svg: Svg
    clock: WallClock
    from_min: float
    to_min: float

    def x(self, minute: float) -> float:
        """A minute's place, held within the tape."""
        share = (minute - self.from_min) / (self.to_min - self.from_min)
        return min(max(share, 0.0), 1.0) * self.svg.width


def tape(
    plan: Plan, clock: WallClock, *, scale: Scale, minute: float, width: float, link: str = ""
) -> Tape:
    """The tape of a plan. link: what stands before a minute in the address of its moment."""
    start, end = _ends(plan, scale, minute)
    waits = [
        (at, one) for at, one in waits_of(plan, chain=scale == "days")
        if at < end and at + (one.high_min or _DAY_MIN) > start
    ]  # fmt: skip
    rows = max(1, len(waits))
    svg = Svg(width=width, height=0, family=SCREEN_LETTERING.family)
    svg.height = _RULE_H + _PAD + _BAR_H + _PAD + rows * _ROW_H + 4
    ruled = _Ruled(svg, clock, start, end)
    svg.element(
        "rect", x=0.6, y=0.6, width=width - 1.2, height=svg.height - 1.2,
        fill=WHITE, stroke=INK, stroke_width=1.2,
    )  # fmt: skip
    _ticks(ruled)
    first = plan.fields[0].coat if plan.fields else ""
    for coat in dict.fromkeys(field.coat for field in plan.fields):
        mine = sorted((f for f in plan.fields if f.coat == coat), key=lambda f: f.order)
        if scale == "days":
            x0, x1 = (ruled.x(at) for at in (mine[0].start_min, max(f.end_min for f in mine)))
            svg.element("rect", x=x0, y=_RULE_H + _PAD, width=max(x1 - x0, 2), height=_BAR_H,
                        fill=RAMP[3], stroke=INK, stroke_width=0.9)  # fmt: skip
            continue
        for n, field in enumerate(mine, 1):
            _bar(ruled, field, n, planned=coat != first, link=link)
            _refills(ruled, field)
    _wedges(ruled, waits)
    plumb = _plumb(ruled, minute)
    text = (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="tape-drawing" aria-hidden="true"'
        f' viewBox="0 0 {number(width)} {number(svg.height)}" font-family="{svg.family}"'
        f' fill="{INK}" data-width="{number(width)}">\n{svg}\n{plumb}\n</svg>\n'
    )
    return Tape(text, start, end)


def waits_of(plan: Plan, *, chain: bool) -> Iterator[tuple[float, Clock]]:
    """Each wait with the minute from which it runs. chain: those of the days after, too."""
    for coat in dict.fromkeys(field.coat for field in plan.fields):
        ends = max(f.end_min for f in plan.fields if f.coat == coat)
        for wait in plan.clocks:
            if wait.coat == coat and wait.begins_min is None:
                yield ends, wait
    last = max((field.end_min for field in plan.fields), default=0.0)
    if chain:
        for wait in plan.clocks:
            # an open time is told as a clock that begins with its coat: no wait
            if wait.begins_min is not None and wait.begins_min >= last - 1:
                yield wait.begins_min, wait


def _ends(plan: Plan, scale: Scale, minute: float) -> tuple[float, float]:
    fields = plan.fields
    if not fields:
        return 0.0, 60.0
    if scale == "coat":
        mine = [field for field in fields if field.coat == coat_at(plan, minute)]
        return min(f.start_min for f in mine) - 3, max(f.end_min for f in mine) + 4
    last = max(field.end_min for field in fields)
    begin = min([0.0, *(field.start_min for field in fields)])
    chain = scale == "days"
    ends = [at + (w.high_min or w.likely_min or w.low_min) for at, w in waits_of(plan, chain=chain)]
    until = (
        max([last, *ends]) if chain else max(last, min(max(ends, default=0.0), last + _TAIL_MIN))
    )
    lead = 0.02 * (until - begin)
    return begin - lead, until + lead


def _ticks(ruled: _Ruled) -> None:
    span = ruled.to_min - ruled.from_min
    per_min = ruled.svg.width / span
    step = next((s for s in _STEPS_MIN if s * per_min >= _TICK_APART), _STEPS_MIN[-1])
    apart = _NAME_APART if step < 60 or per_min * 60 < _NAME_APART else 26.0
    if step >= 360:
        apart = 84.0
    every = next((s for s in _STEPS_MIN if s * per_min >= apart and s % step == 0), _STEPS_MIN[-1])
    start = ruled.clock.starts_at
    of_day = start.hour * 60 + start.minute + start.second / 60
    at = -(-(ruled.from_min + of_day) // step) * step
    told = False
    while at <= ruled.to_min + of_day:
        x, minute = ruled.x(at - of_day), at - of_day
        named = at % every == 0
        depth, stroke = (19, 1.4) if named else (10, 0.8) if at % 30 == 0 else (7, 0.8)
        ruled.svg.line([(x, 0), (x, depth)], stroke=INK, stroke_width=stroke)
        if named:
            moment = start + timedelta(minutes=minute)
            if every >= 720:
                text = said(f"weekday-{moment.weekday()}") if moment.hour < 12 else ""
            elif every >= 60:
                text = ruled.clock.hour_mark(moment, whole=not told)
            else:
                text = ruled.clock.bare(minute)
            told = True
            if text and x + 4 + text_width(text, _SIZE, bold=True) * _WIDEN < ruled.svg.width - 2:
                ruled.svg.text((x + 4, 18), text, _SIZE, anchor="start", bold=True)
        at += step


def _bar(ruled: _Ruled, field: Field, n: int, *, planned: bool, link: str) -> None:
    svg, top = ruled.svg, _RULE_H + _PAD
    if field.end_min <= ruled.from_min or field.start_min >= ruled.to_min:
        return
    x0, x1 = ruled.x(field.start_min), ruled.x(field.end_min)
    middle = round((field.start_min + field.end_min) / 2, 1)
    if link:
        svg.raw(f'<a href="{link.replace("&", "&amp;")}{middle:g}" tabindex="-1">')
    refused = field.verdict == "cannot"
    wide = x1 - x0
    thin = wide < 3
    svg.element(
        "rect", x=x0, y=top, width=max(wide, 0.8), height=_BAR_H,
        fill=WHITE if planned or refused else RAMP[1], stroke=SOFT if thin else INK,
        stroke_width=0.3 if thin else 0.9, stroke_dasharray="4 3" if planned and not thin else None,
    )  # fmt: skip
    if len(field.bands) > 1 and wide / len(field.bands) > 3:
        for band in field.bands[1:]:
            x = ruled.x(band.start_min)
            svg.line([(x, top + 1), (x, top + _BAR_H - 1)], stroke=LINE if planned else PAPER,
                     stroke_width=1.1)  # fmt: skip
    if refused and wide > 4:
        svg.line([(x0, top), (x1, top + _BAR_H)], stroke=INK, stroke_width=1)
    if wide > text_width(str(n), _SIZE, bold=True) + 3:
        at = ((x0 + x1) / 2, top + _BAR_H / 2 + _SIZE * 0.36)
        svg.text(at, str(n), _SIZE, bold=True, cased=True)
    if link:
        svg.raw("</a>")


def _refills(ruled: _Ruled, field: Field) -> None:
    """A small mark above the bars for each full tank."""
    top = _RULE_H + _PAD
    for one in field.refills:
        if ruled.from_min < one.at_min < ruled.to_min:
            x = ruled.x(one.at_min)
            d = f"M{number(x - 3.5)},{number(top - 7)}h7l-3.5,6z"
            ruled.svg.element("path", d=d, fill=INK, stroke=WHITE, stroke_width=0.8)


def _wedges(ruled: _Ruled, waits: list[tuple[float, Clock]]) -> None:
    top = _RULE_H + 2 * _PAD + _BAR_H
    for row, (begins, wait) in enumerate(waits):
        mid = top + row * _ROW_H + _ROW_H / 2 - 1
        right = _wedge(ruled, begins, wait, mid)
        _told(ruled, begins, wait, mid, right)


def _wedge(ruled: _Ruled, begins: float, wait: Clock, mid: float) -> float:
    """Thin where the wait may end, thickest where it most likely does; returns its right end."""
    if wait.likely_min is None:
        return ruled.x(begins)
    high = wait.high_min if wait.high_min is not None else wait.likely_min + _TAIL_MIN
    x0, x1, x2 = (ruled.x(begins + m) for m in (wait.low_min, wait.likely_min, high))
    if x2 - x0 < 1:
        return x2
    half = _ROW_H / 2 - 3
    d = f"M{number(x0)},{number(mid)}L{number(x1)},{number(mid - half)}L{number(x2)},{number(mid)}"
    d += f"L{number(x1)},{number(mid + half)}Z"
    ruled.svg.element("path", d=d, fill=LINE, fill_opacity=0.6, stroke=SOFT, stroke_width=0.8)
    return x2


def _told(ruled: _Ruled, begins: float, wait: Clock, mid: float, right: float) -> None:
    """The wait's words right of its wedge, left of it, or across it."""
    width = ruled.svg.width
    left = ruled.x(begins + wait.low_min)
    for words in wait_words(wait, begins, ruled.clock):
        wide = text_width(words, _SIZE) * _WIDEN
        across = (left + right - wide) / 2
        for x, cased in ((right + 6, False), (left - wide - 6, False), (across, True)):
            if x >= 5 and x + wide < width - 5:
                at = (x, mid + _SIZE * 0.36)
                ruled.svg.text(at, words, _SIZE, anchor="start", cased=cased)
                return


def _plumb(ruled: _Ruled, minute: float) -> str:
    x, low = number(ruled.x(minute)), number(ruled.svg.height)
    return (
        f'<g class="plumb" transform="translate({x} 0)">'
        f'<path d="M0,0V{low}" stroke="{WHITE}" stroke-width="5"/>'
        f'<path d="M0,0V{low}" stroke="{INK}" stroke-width="2.2"/>'
        f'<path d="M-7,0h14l-7,10z" fill="{INK}" stroke="{WHITE}"/></g>'
    )
