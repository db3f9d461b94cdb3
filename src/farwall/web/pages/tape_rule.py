"""The rule at the head of the tape: ticks, hours, days, and the nights behind them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from farwall.nouns import dataclass
from farwall.papers.ink import INK, LINE, SOFT
from farwall.papers.lettering import SCREEN_LETTERING, text_width
from farwall.papers.svg import Svg
from farwall.web.pages.said_clock import SaidClock

RULE_H = 38.0
SIZE = SCREEN_LETTERING.small
WIDEN = SCREEN_LETTERING.widen
_STEPS_MIN = (1, 5, 15, 30, 60, 180, 360, 720, 1440, 2880, 10080)
_TICK_APART, _NAME_APART, _HOUR_APART = 7.0, 58.0, 28.0
_DAY_MIN = 1440
_HOURS_Y, _DAYS_Y = 18.0, 33.0


@dataclass(frozen=True)
class Ruled:
    """A tape in the making: where a minute lies on it."""

    svg: Svg
    clock: SaidClock
    from_min: float
    to_min: float

    @property
    def per_min(self) -> float:
        """Pixels a minute."""
        return self.svg.width / (self.to_min - self.from_min)

    def x(self, minute: float) -> float:
        """A minute's place, held within the tape."""
        share = (minute - self.from_min) / (self.to_min - self.from_min)
        return min(max(share, 0.0), 1.0) * self.svg.width

    def sees(self, from_min: float, to_min: float) -> bool:
        """Whether anything of a stretch lies in the window."""
        return to_min > self.from_min and from_min < self.to_min


def wide(text: str, *, bold: bool = False) -> float:
    """How wide a word is on the tape."""
    return text_width(text, SIZE, bold=bold) * WIDEN


def draw_nights(ruled: Ruled, nights: Sequence[tuple[float, float]]) -> None:
    """The nights, lightly."""
    for dusk, dawn in nights:
        if ruled.sees(dusk, dawn):
            x0, x1 = ruled.x(dusk), ruled.x(dawn)
            ruled.svg.element("rect", x=x0, y=0.6, width=x1 - x0, height=ruled.svg.height - 1.2,
                              fill=LINE, fill_opacity=0.3)  # fmt: skip


def draw_rule(ruled: Ruled) -> None:
    """Ticks by minute, quarter, half, hour or day, as many as there is room for; their names."""
    step = next((s for s in _STEPS_MIN if s * ruled.per_min >= _TICK_APART), _STEPS_MIN[-1])
    every = _named_every(ruled, step)
    of_day = _of_day(ruled)
    at = -(-(ruled.from_min + of_day) // step) * step
    told = False
    while at <= ruled.to_min + of_day:
        named = at % every == 0
        x = ruled.x(at - of_day)
        depth, stroke = _tick(at, named=named)
        ruled.svg.line([(x, 0), (x, depth)], stroke=INK, stroke_width=stroke)
        if named and every < _DAY_MIN:
            told = _name(ruled, x, at - of_day, every, whole=not told) or told
        at += step
    _days(ruled, of_day)


def _named_every(ruled: Ruled, step: int) -> int:
    """How many minutes lie between two names, so that none touches the next."""

    def fits(every: int) -> bool:
        apart = _NAME_APART if every < 60 else _HOUR_APART
        return every % step == 0 and every * ruled.per_min >= apart

    return next((one for one in _STEPS_MIN if fits(one)), _STEPS_MIN[-1])


def _tick(at: float, *, named: bool) -> tuple[float, float]:
    if named:
        return 20.0, 1.4
    return (13.0 if at % 60 == 0 else 10.0 if at % 30 == 0 else 6.0), 0.8


def _name(ruled: Ruled, x: float, minute: float, every: int, *, whole: bool) -> bool:
    moment = ruled.clock.starts_at + timedelta(minutes=minute)
    if every >= 60:
        text = ruled.clock.hour_mark(moment)
        half = text + ruled.clock.half_word(moment)
        if whole and wide(half, bold=True) + 2 < every * ruled.per_min:
            text = half  # only where it does not touch the next
    else:
        text = ruled.clock.bare(minute)
    if x + 4 + wide(text, bold=True) > ruled.svg.width - 2:
        return False
    ruled.svg.text((x + 4, _HOURS_Y), text, SIZE, anchor="start", bold=True)
    return True


def _days(ruled: Ruled, of_day: float) -> None:
    """Which day it is, at each midnight and at the left end: all days told in the same form."""
    first = (ruled.from_min + of_day) // _DAY_MIN
    count = int((ruled.to_min + of_day) // _DAY_MIN - first) + 1
    midnights = [(first + n) * _DAY_MIN - of_day for n in range(count)]
    moments = [ruled.clock.starts_at + timedelta(minutes=one + 1) for one in midnights]
    forms = [[ruled.clock.day_word(one, parts=parts) for one in moments] for parts in (3, 2, 1)]
    day_px = _DAY_MIN * ruled.per_min
    texts = next((form for form in forms if max(map(wide, form)) < day_px - 8), forms[-1])
    free = 4.0
    for midnight, text in zip(midnights, texts, strict=True):
        x = ruled.x(midnight)
        if midnight > ruled.from_min:
            ruled.svg.line([(x, 0), (x, RULE_H)], stroke=SOFT, stroke_width=0.8)
        left = max(x, 0.0) + 5
        right = min(ruled.x(midnight + _DAY_MIN), ruled.svg.width)
        if left >= free and left + wide(text) < right - 2:
            ruled.svg.text((left, _DAYS_Y), text, SIZE, anchor="start")
            free = left + wide(text) + 6


def _of_day(ruled: Ruled) -> float:
    start = ruled.clock.starts_at
    return start.hour * 60 + start.minute + start.second / 60
