"""The tape of time: a real tape, ticked by quarter, half and whole hour.

What is certain is a bar, what is likely a wedge widest at its likeliest,
what is planned a dashed outline.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from farwall.facts.plan import Clock, Field, Plan
from farwall.nouns import dataclass
from farwall.papers.ink import INK, LINE, RAMP, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, Lettering, text_width
from farwall.papers.svg import Svg, number
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.words import listed

_RULE_H = 24.0
_BAR_H = 18.0
_PAD = 5.0
_TAIL_MIN = 240.0
_PAUSE_MIN = 360.0
_QUARTER_PER_H, _HALF_PER_H, _NAMED_PER_H = 44.0, 22.0, 20.0
_NAME_EVERY_H = (1, 2, 3, 6, 12, 24, 48, 96, 168)


@dataclass(frozen=True)
class _Tape:
    svg: Svg
    clock: WallClock
    lettering: Lettering
    begins: datetime
    units_per_min: float
    bars: list[tuple[float, float]]

    def x(self, minutes: float) -> float:
        """Where a minute of the plan lies on the tape; clamped to its ends."""
        since = (self.clock.starts_at - self.begins).total_seconds() / 60 + minutes
        return min(max(since * self.units_per_min, 0.0), self.svg.width)

    def clear(self, left: float, right: float) -> bool:
        """Whether no bar lies between two places."""
        return not any(left < b + 4 and right > a - 4 for a, b in self.bars)


def time_tape_svg(
    plan: Plan,
    *,
    units: Units = "us",
    width: float = 790.0,
    lettering: Lettering = SCREEN_LETTERING,
) -> str:
    """The tape of a plan as SVG text: fields as bars, waits as wedges, later coats dashed.

    `width` and type are in the units of the drawing. The tape ends with the
    last field, or with the last wait, at most four hours after it. A coat
    that begins six hours or more after the one before gets a tape of its own.
    """
    clock = plan_clock(plan, units)
    svg = Svg(width=width, height=0, family=lettering.family, ident="tape")
    first_coat = plan.fields[0].coat if plan.fields else ""
    for k, fields in enumerate(tape_strips(plan)):
        if k:
            svg.height += _PAD
        part = Svg(width=width, height=0, family=lettering.family)
        waits = _waits(plan, fields)
        _strip(part, fields, waits, clock, lettering, first_coat=first_coat)
        svg.below(part, svg.height)
        svg.height += part.height
    return svg.document(title="The tape of time", description=_told(plan, clock))


def tape_strips(plan: Plan) -> list[list[Field]]:
    """The fields by strip of tape: a long pause begins a new one."""
    strips: list[list[Field]] = []
    for field in sorted(plan.fields, key=lambda field: field.start_min):
        if not strips or field.start_min - strips[-1][-1].end_min > _PAUSE_MIN:
            strips.append([])
        strips[-1].append(field)
    return strips


def _strip(
    svg: Svg,
    fields: Sequence[Field],
    waits: list[tuple[float, Clock]],
    clock: WallClock,
    lettering: Lettering,
    *,
    first_coat: str,
) -> None:
    last = max(field.end_min for field in fields)
    ends = [end + (wait.high_min or wait.low_min) for end, wait in waits]
    until = max(last, min(max(ends, default=last), last + _TAIL_MIN))
    begins = _quarter_before(clock.at(fields[0].start_min))
    lead = (clock.starts_at - begins).total_seconds() / 60
    span = lead + until + 15.0
    width = svg.width
    svg.height = _RULE_H + _PAD + _BAR_H + (_BAR_H + _PAD if waits else 0.0) + _PAD
    tape = _Tape(svg, clock, lettering, begins, width / span, [])
    svg.element(
        "rect", x=0.6, y=0.6, width=width - 1.2, height=svg.height - 1.2,
        fill=WHITE, stroke=INK, stroke_width=1.2,
    )  # fmt: skip
    _ticks(tape, span)
    _bars(tape, fields, first_coat)
    free_from = 5.0
    for k, (end, wait) in enumerate(waits):
        later = [tape.x(e + w.low_min) for e, w in waits[k + 1 :] if w.likely_min is not None]
        free_from = _wedge(tape, end, wait, (free_from, min([width, *later]) - 5))


def _quarter_before(moment: datetime) -> datetime:
    """The last quarter of an hour at least five minutes before a moment."""
    early = moment - timedelta(minutes=5)
    return early.replace(minute=early.minute // 15 * 15, second=0, microsecond=0)


def _waits(plan: Plan, fields: Sequence[Field]) -> list[tuple[float, Clock]]:
    """Each coat's first clock with the minute from which it runs: the end of the coat."""
    waits = []
    for coat in dict.fromkeys(field.coat for field in fields):
        end = max(field.end_min for field in fields if field.coat == coat)
        clock = next((one for one in plan.clocks if one.coat == coat), None)
        if clock is not None:
            waits.append((end, clock))
    return waits


def _ticks(tape: _Tape, span: float) -> None:
    per_hour = 60 * tape.units_per_min
    step = 15 if per_hour >= _QUARTER_PER_H else 30 if per_hour >= _HALF_PER_H else 60
    every = next((h for h in _NAME_EVERY_H if h * per_hour >= _NAMED_PER_H), _NAME_EVERY_H[-1])
    size = tape.lettering.small
    first = tape.begins.hour * 60 + tape.begins.minute
    told = False
    for minute in range(-(-first // step) * step, first + int(span) + 1, step):
        x = (minute - first) * tape.units_per_min
        depth, width = (
            (20, 1.4) if minute % 60 == 0 else (11, 0.8) if minute % 30 == 0 else (7, 0.8)
        )
        tape.svg.line([(x, 0), (x, depth)], stroke=INK, stroke_width=width)
        if minute % (60 * every) == 0:
            moment = tape.begins + timedelta(minutes=minute - first)
            text = tape.clock.hour_mark(moment, whole=not told or moment.hour == 0)
            told = True
            if x + 4 + text_width(text, size, bold=True) < tape.svg.width - 2:
                tape.svg.text((x + 4, 19), text, size, anchor="start", bold=True)


def _bars(tape: _Tape, fields: Sequence[Field], first_coat: str) -> None:
    for coat in dict.fromkeys(field.coat for field in fields):
        mine = [field for field in fields if field.coat == coat]
        for n, field in enumerate(mine, 1):
            _bar(tape, field, n, planned=coat != first_coat)


def _bar(tape: _Tape, field: Field, n: int, *, planned: bool) -> None:
    top, size = _RULE_H + _PAD, tape.lettering.small
    x0, x1 = tape.x(field.start_min), tape.x(field.end_min)
    tape.bars.append((x0, x1))
    tape.svg.element(
        "rect",
        x=x0,
        y=top,
        width=max(x1 - x0, 1.0),
        height=_BAR_H,
        fill=WHITE if planned else RAMP[1],
        stroke=INK,
        stroke_width=0.9,
        stroke_dasharray="4 3" if planned else None,
    )
    if x1 - x0 > text_width(str(n), size, bold=True) + 3:
        tape.svg.text(((x0 + x1) / 2, top + _BAR_H / 2 + size * 0.36), str(n), size, bold=True)


def _wedge(tape: _Tape, end: float, wait: Clock, free: tuple[float, float]) -> float:
    """Thin where the wait may end, thickest where it most likely does; returns where words end."""
    top = _RULE_H + 2 * _PAD + _BAR_H
    mid = top + _BAR_H / 2
    size = tape.lettering.small
    x0 = x2 = tape.x(end)
    if wait.likely_min is not None:
        high = wait.high_min if wait.high_min is not None else wait.likely_min + _TAIL_MIN
        x0, x1, x2 = (tape.x(end + m) for m in (wait.low_min, wait.likely_min, high))
        path = f"M{number(x0)},{number(mid)}L{number(x1)},{number(top)}L{number(x2)},{number(mid)}"
        path += f"L{number(x1)},{number(top + _BAR_H)}Z"
        tape.svg.element("path", d=path, fill=LINE, fill_opacity=0.6, stroke=SOFT, stroke_width=0.8)
    for words, left, base in _places(tape, wait_words(wait, end, tape.clock), (x0, x2), mid):
        right = left + text_width(words, size) * tape.lettering.widen
        if base < mid and not tape.clear(left, right):
            continue
        if left >= free[0] and right <= free[1]:
            inside = base > mid and left < x2 and right > x0
            tape.svg.text((left, base), words, size, anchor="start", cased=inside)
            return max(right, x2) + 8 if base > mid else max(x2, free[0]) + 8
    return max(free[0], x2 + 8)


def _places(
    tape: _Tape, sayings: Sequence[str], wedge: tuple[float, float], mid: float
) -> list[tuple[str, float, float]]:
    """Words with left end and baseline, best first: beside the wedge, above it, across it."""
    size = tape.lettering.small
    beside, across = [], []
    low, high = mid + size * 0.36, mid - _BAR_H - _PAD + size * 0.36
    for words in sayings:
        width = text_width(words, size) * tape.lettering.widen
        centred = (wedge[0] + wedge[1] - width) / 2
        beside += [(words, wedge[1] + 6, low), (words, wedge[0] - width - 6, low)]
        beside += [(words, centred, high), (words, min(centred, tape.svg.width - width - 6), high)]
        across.append((words, centred, low))
    return beside + across


def wait_words(wait: Clock, end: float, clock: WallClock) -> list[str]:
    """`dry to recoat 11:50 to 2:00, likely 12:15`, and shorter ways to say it."""
    if wait.likely_min is None:
        return [f"{wait.name}: not in these conditions", "not in these conditions"]
    span = f"{clock.time(end + wait.low_min)} to open end"
    if wait.high_min is not None:
        span = clock.span(end + wait.low_min, end + wait.high_min)
    likely = clock.time(end + wait.likely_min)
    return [f"{wait.name} {span}, likely {likely}", f"{wait.name} {span}", span]


def _told(plan: Plan, clock: WallClock) -> str:
    fields: Sequence[str] = [
        f"field {field.order} {clock.span(field.start_min, field.end_min)}" for field in plan.fields
    ]
    return listed(list(fields)) + "."
