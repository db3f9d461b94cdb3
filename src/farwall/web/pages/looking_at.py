"""Which moment of a plan is looked at, and through which window of the tape."""

from __future__ import annotations

from datetime import time
from typing import Literal, get_args

from farwall.facts.plan import Plan
from farwall.nouns import dataclass
from farwall.web.pages.course import Course
from farwall.web.pages.shown import Shown

Scale = Literal["minutes", "coat", "day", "days"]
SCALES: tuple[Scale, ...] = get_args(Scale)
"""Stretches of the tape with a name; any other is reached by zooming."""
LEAST_MIN = 6.0
"""The tape zooms in no further."""
_MINUTES_MIN = 24.0
_BEFORE_MIN = 0.02
_ON_MIN = 0.05
"""A step lands a little after a band begins, so that its first floor shows."""
_TAIL_MIN, _DAY_MIN = 240.0, 1440.0
_EDGE = 0.02
"""A moment nearer to an end of the window than this share moves the window."""
_INSIDE = 0.3


@dataclass(frozen=True)
class Window:
    """The stretch of the tape that is seen, in minutes of the plan."""

    from_min: float
    to_min: float

    @property
    def span_min(self) -> float:
        """How long it is."""
        return self.to_min - self.from_min

    def zoomed(self, by: float, about: float) -> Window:
        """`by` times as long, the minute `about` staying in its place."""
        return Window(about - (about - self.from_min) * by, about + (self.to_min - about) * by)

    def within(self, whole: Window, minute: float) -> Window:
        """Inside the whole tape, no shorter than `LEAST_MIN`, moved so that it holds `minute`."""
        span = min(max(self.span_min, LEAST_MIN), whole.span_min)
        middle = (self.from_min + self.to_min) / 2
        start = middle - span / 2
        if not start + _EDGE * span <= minute <= start + (1 - _EDGE) * span:
            start = minute - (_INSIDE if minute > start else 1 - _INSIDE) * span
        start = min(max(start, whole.from_min), whole.to_min - span)
        return Window(round(start, 2), round(start + span, 2))


@dataclass(frozen=True)
class Look:
    """The minute, the window, its name if it has one; steps before and after; what is sprayed.

    steps: minutes at which something begins · spans: from and to of each coat, for playing ·
    nearer, wider: the windows that + and − lead to, None where the tape ends.
    """

    minute: float
    window: Window
    whole: Window
    scale: Scale | None
    before: float | None
    after: float | None
    steps: tuple[float, ...]
    spans: tuple[tuple[float, float], ...]

    @property
    def nearer(self) -> Window | None:
        """Half as long."""
        if self.window.span_min <= LEAST_MIN * 1.01:
            return None
        return self.window.zoomed(0.5, self.minute).within(self.whole, self.minute)

    @property
    def wider(self) -> Window | None:
        """Twice as long."""
        if self.window.span_min >= self.whole.span_min * 0.99:
            return None
        return self.window.zoomed(2.0, self.minute).within(self.whole, self.minute)


def look_at(
    shown: Shown,
    *,
    minute: float | None = None,
    at: str = "",
    scale: str = "",
    window: tuple[float, float] | None = None,
    now_min: float | None = None,
) -> Look:
    """What is looked at: the time `at` (H:MM) on the day of the minute, else the minute itself,
    else now if the work is on, or the tightest moment. window: from and to, before `scale`.
    """
    plan, course = shown.floor_plan, shown.course
    whole = whole_of(course)
    told = _of_day(shown, at, minute or 0.0)
    if told is not None:
        minute = told
    if minute is None and now_min is not None and at_work(course, now_min):
        minute = now_min
    chosen = _tightest(plan) if minute is None else minute
    chosen = round(min(max(chosen, whole.from_min), whole.to_min), 2)
    named: Scale | None = next((one for one in SCALES if one == scale), "day")
    asked = stretch(course, named or "day", chosen)
    if window is not None and window[1] > window[0]:
        asked, named = Window(*window), None
    steps = _steps(plan, course)
    return Look(
        minute=chosen,
        window=asked.within(whole, chosen),
        whole=whole,
        scale=named,
        before=max((one for one in steps if one < chosen - 0.01), default=None),
        after=min((one for one in steps if one > chosen + 0.01), default=None),
        steps=steps,
        spans=_spans(course),
    )


def whole_of(course: Course) -> Window:
    """The whole tape with a little room at its ends."""
    lead = 0.012 * (course.to_min - course.from_min)
    return Window(round(course.from_min - lead, 1), round(course.to_min + lead, 1))


def at_work(course: Course, now_min: float) -> bool:
    """Whether a minute lies on the days from the first coat to hand-over."""
    if not course.coats:
        return False
    return course.coats[0].from_min - 60 <= now_min <= course.pieces[-1].to_min


def stretch(course: Course, scale: Scale, minute: float) -> Window:
    """The stretch of the tape that a name stands for, at a moment."""
    coats = course.coats
    if scale == "days" or not coats:
        return whole_of(course)
    if scale == "minutes":
        return Window(minute - _MINUTES_MIN / 2, minute + _MINUTES_MIN / 2)
    if scale == "coat":
        begun = [one for one in coats if one.from_min <= minute] or [coats[0]]
        return Window(begun[-1].from_min - 3, begun[-1].to_min + 4)
    first, last = coats[0].from_min, coats[-1].to_min
    ends = max((w.ends_min for w in course.waits if w.begins_min <= last), default=last)
    until = max(last, min(ends, last + _TAIL_MIN))
    lead = 0.02 * (until - first)
    span = until - first + 2 * lead
    if first - 600 <= minute <= until + 600:
        return Window(first - lead, until + lead)
    return Window(minute - span / 2, minute + span / 2)


def _of_day(shown: Shown, at: str, minute: float) -> float | None:
    """The minute of a time of the day of a minute; None when it is no time."""
    try:
        wanted = time.fromisoformat(at)
    except ValueError:
        return None
    start = shown.clock.starts_at
    day = (shown.clock.at(minute).date() - start.date()).days
    of_first = (wanted.hour - start.hour) * 60 + wanted.minute - start.minute
    return float(day * _DAY_MIN + of_first)


def _tightest(plan: Plan) -> float:
    """Just before the edge that has least to spare is met: what the plan hangs on."""
    told = [field.tightest for field in plan.fields if field.tightest is not None]
    worst = min(told, key=lambda one: one.spare_min, default=None)
    if worst is None:
        return plan.fields[0].start_min if plan.fields else 0.0
    return worst.met_min - _BEFORE_MIN


def _steps(plan: Plan, course: Course) -> tuple[float, ...]:
    found = {0.0}
    for field in plan.fields:
        found |= {round(band.start_min + _ON_MIN, 2) for band in field.bands}
        found |= {round(one.at_min + _ON_MIN, 2) for one in field.refills}
        found.add(round(field.end_min + _ON_MIN, 2))
    for piece in course.pieces:
        if piece.kind != "sprayed":
            found |= {round(piece.from_min + _ON_MIN, 2), round(piece.to_min + _ON_MIN, 2)}
    for wait in course.waits:
        ends = [wait.clock.low_min, wait.clock.likely_min, wait.clock.high_min]
        found |= {round(wait.begins_min + one + _ON_MIN, 2) for one in ends if one is not None}
    return tuple(sorted(found))


def _spans(course: Course) -> tuple[tuple[float, float], ...]:
    return tuple((one.from_min, one.to_min + _ON_MIN) for one in course.coats)
