"""The days of all houses: one ruler, and under it a tape for each house, by its crew.

What begins on the first day at a house is a bar, what is planned after it a dashed outline, the
hand-over a wedge widest at its likeliest, the lock on other trades a dotted strip along the
foot. Nights and weekends are folded narrow. A day of rain is hatched, as is another trade's day.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from datetime import date, datetime, timedelta
from typing import Any

from farwall.nouns import dataclass
from farwall.papers.days_scale import Week, mondays, wedge_outline
from farwall.papers.days_tape import pieces
from farwall.papers.ink import INK, LINE, PAPER, RAMP, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, clipped, text_width
from farwall.papers.svg import Svg, number
from farwall.papers.xml_text import escape
from farwall.web.pages.days_words import step_short, told_in_short
from farwall.web.pages.light import small_widen
from farwall.web.pages.paper import house_path
from farwall.web.pages.when import day_told
from farwall.web.words import said

Json = Mapping[str, Any]
_SIZE, _BODY = SCREEN_LETTERING.small, SCREEN_LETTERING.body
_RULE_H, _NAME_H, _CREW_H, _GAP = 30.0, 18.0, 26.0, 10.0
_TICK_H, _BAR_H, _WEDGE_H, _LOCK_H, _PAD = 7.0, 18.0, 16.0, 7.0, 3.0
_IN = 5.0
"""Words begin as far in as those of the rule, clear of a plumb line at its very beginning."""
_TAPE_H = _TICK_H + _BAR_H + _WEDGE_H + _LOCK_H + 3 * _PAD


@dataclass(frozen=True)
class Span:
    """So many weeks of the tape from a Monday's midnight on, `width` wide."""

    monday: datetime
    weeks: int
    width: float

    @property
    def ends(self) -> datetime:
        """The midnight after the last Sunday."""
        return self.monday + timedelta(weeks=self.weeks)

    def week(self, n: int) -> Week:
        """One of the weeks, on a scale of its own."""
        return Week(self.monday + timedelta(weeks=n), self.width / self.weeks)

    def x(self, at: datetime) -> float:
        """Where a moment lies, held within the tape."""
        n = (at - self.monday).days // 7
        if n < 0:
            return 0.0
        if n >= self.weeks:
            return self.width
        return self.width / self.weeks * n + self.week(n).x(at)

    @property
    def day_width(self) -> float:
        """A working day's width."""
        return self.week(0).x(self.monday + timedelta(days=1))


@dataclass(frozen=True)
class Drawn:
    """What is drawn. now: the moment of the plumb line; was: where moved steps stood before."""

    told: Json
    span: Span
    now: datetime | None = None
    was: Mapping[str, Mapping[str, Any]] = field(default_factory=dict)
    rain: tuple[date, ...] = ()


def span_of(told: Json, *, first: date | None, weeks: int | None, width: float) -> Span:
    """The stretch that is shown: from a day's Monday so many weeks, else all that is planned."""
    found = mondays(told["houses"])
    monday = found[0]
    if first is not None:
        back = first - timedelta(days=first.weekday())
        monday = datetime.combine(back, datetime.min.time(), monday.tzinfo)
    last = max((found[-1] - monday).days // 7 + 1, 1)
    return Span(monday, min(weeks or last, 60), width)


def days_tape(drawn: Drawn) -> str:
    """The drawing as SVG text for the page; words outside tell the same."""
    told, span = drawn.told, drawn.span
    svg = Svg(width=span.width, height=0, family=SCREEN_LETTERING.family)
    svg.raw(
        f'<defs><pattern id="{_hatch(span)}" width="6" height="6" patternUnits="userSpaceOnUse" '
        'patternTransform="rotate(30)">'
        f'<path d="M0,0V6" stroke="{SOFT}" stroke-width="1.2"/></pattern></defs>'
    )
    _ruler(svg, span)
    svg.height = _RULE_H
    for crew in told["crews"]:
        mine = [one for one in told["houses"] if one["crew"] == crew["id"]]
        if not mine:
            continue
        svg.height += _CREW_H
        where, words = (_IN, svg.height - 8), crew_told(crew, len(mine))
        svg.text(where, words, _BODY, anchor="start", bold=True)
        for house in mine:
            _house(svg, drawn, house)
    _plumb(svg, drawn)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="days-drawing" role="group" aria-label="'
        f'{escape(said("days-tape"))}" viewBox="0 0 {number(span.width)} {number(svg.height)}" '
        f'font-family="{svg.family}" fill="{INK}">\n{svg}\n</svg>\n'
    )


def _hatch(span: Span) -> str:
    """The hatch's id: two drawings of a page bear different ones."""
    return f"rain-hatch-{span.width:g}"


def crew_told(crew: Json, houses: int) -> str:
    """`crew 1, 2 people, 3 houses`."""
    number_ = str(crew["id"]).removeprefix("crew ")
    many = said("days-house-1") if houses == 1 else said("days-houses", n=houses)
    return said("days-crew", crew=number_, people=crew["people"], houses=many)


def _ruler(svg: Svg, span: Span) -> None:
    """The one ruler: weeks, days, and their names where there is room."""
    svg.element("rect", x=0.6, y=0.6, width=span.width - 1.2, height=_RULE_H - 1.2, fill=WHITE,
                stroke=INK, stroke_width=1.2)  # fmt: skip
    each_day = span.day_width > text_width("Wed 30 Sep", _SIZE, bold=True) * small_widen() + 8
    right = 0.0
    for n in range(span.weeks * 7):
        at = span.monday + timedelta(days=n)
        x, monday = span.x(at), n % 7 == 0
        if n:
            svg.line([(x, 0), (x, _RULE_H if monday else 8)], stroke=INK,
                     stroke_width=1.4 if monday else 0.8)  # fmt: skip
        if not (monday or (each_day and n % 7 < 5)):
            continue
        words = day_told(at)
        wide = text_width(words, _SIZE, bold=True) * small_widen()
        if x + 5 + wide > span.width - 3 or x + 5 < right:
            continue
        svg.text((x + 5, _RULE_H - 8), words, _SIZE, anchor="start", bold=True)
        right = x + wide + 14


def _house(svg: Svg, drawn: Drawn, house: Json) -> None:
    """A house: its name and what it comes to, its tape under them."""
    span, width = drawn.span, drawn.span.width
    svg.height += _NAME_H
    base = svg.height - 5
    name = clipped(str(house["name"]), width * 0.5 / small_widen(), _SIZE, bold=True)
    svg.raw(f'<a href="{escape(house_path(str(house["id"])))}">')
    svg.text((_IN, base), name, _SIZE, anchor="start", bold=True)
    svg.raw("</a>")
    left = _IN + text_width(name, _SIZE, bold=True) * small_widen() + 10
    room = width - left
    words = clipped(told_in_short(house), room / small_widen(), _SIZE)
    if room > 60:
        svg.text((left, base), words, _SIZE, anchor="start", fill=SOFT)
    part = Svg(width=width, height=_TAPE_H, family=svg.family)
    part.element("rect", x=0.6, y=0.6, width=width - 1.2, height=_TAPE_H - 1.2, fill=WHITE,
                 stroke=INK, stroke_width=1.2)  # fmt: skip
    _ticks(part, span)
    _weather(part, drawn, house)
    _was(part, drawn, house)
    first = datetime.fromisoformat(house["steps"][0]["starts_at"]).date()
    for step in house["steps"]:
        for start, end in pieces(step):
            _bar(part, span, start, end, first=first, word=step_short(step["id"]))
    _wedge(part, span, house["steps"][-1])
    _lock(part, span, house["lock"])
    svg.below(part, svg.height)
    svg.height += _TAPE_H + _GAP


def _ticks(svg: Svg, span: Span) -> None:
    for n in range(1, span.weeks * 7):
        x = span.x(span.monday + timedelta(days=n))
        svg.line([(x, 0), (x, _TICK_H if n % 7 == 0 else 4)], stroke=INK,
                 stroke_width=1.2 if n % 7 == 0 else 0.7)  # fmt: skip


def _weather(svg: Svg, drawn: Drawn, house: Json) -> None:
    """Days of rain, and days on which another trade has this house."""
    span = drawn.span
    away = [(date.fromisoformat(one["date"]), str(one["trade"])) for one in drawn.told["away"]
            if one["house"] == house["id"]]  # fmt: skip
    for day, word in [*((day, said("days-rain")) for day in drawn.rain), *away]:
        at = datetime.combine(day, datetime.min.time(), span.monday.tzinfo)
        x0, x1 = span.x(at), span.x(at + timedelta(days=1))
        if x1 <= x0:
            continue
        svg.element("rect", x=x0, y=_TICK_H + 1, width=x1 - x0, height=_TAPE_H - _TICK_H - 2,
                    fill=f"url(#{_hatch(span)})", fill_opacity=0.5)  # fmt: skip
        if text_width(word, _SIZE) * small_widen() < x1 - x0:
            y = _TICK_H + _PAD + _BAR_H + _SIZE + 1
            svg.text(((x0 + x1) / 2, y), word, _SIZE, cased=True)


def _was(svg: Svg, drawn: Drawn, house: Json) -> None:
    """Where steps that moved stood before: a thin dotted outline behind."""
    before = drawn.was.get(str(house["id"]))
    if before is None:
        return
    now = {step["id"]: step["starts_at"] for step in house["steps"]}
    for step in before["steps"]:
        if now.get(step["id"], "")[:10] == step["starts_at"][:10]:
            continue
        for start, end in pieces(step):
            x0, x1 = drawn.span.x(start), drawn.span.x(end)
            if x1 > x0:
                svg.element("rect", x=x0, y=_TICK_H + _PAD, width=x1 - x0, height=_BAR_H,
                            fill=PAPER, stroke=SOFT, stroke_width=0.9,
                            stroke_dasharray="1 2.4")  # fmt: skip


def _bar(
    svg: Svg, span: Span, start: datetime, end: datetime, *, first: date, word: str
) -> None:  # fmt: skip
    x0, x1, planned = span.x(start), span.x(end), start.date() != first
    if x1 <= x0:
        return
    svg.element(
        "rect", x=x0, y=_TICK_H + _PAD, width=max(x1 - x0, 1.0), height=_BAR_H,
        fill=WHITE if planned else RAMP[1], stroke=INK, stroke_width=0.9,
        stroke_dasharray="4 3" if planned and x1 - x0 > 6 else None,
    )  # fmt: skip
    if text_width(word, _SIZE) * small_widen() < x1 - x0 - 3:
        svg.text(((x0 + x1) / 2, _TICK_H + _PAD + _BAR_H / 2 + _SIZE * 0.36), word, _SIZE)


def _wedge(svg: Svg, span: Span, step: Json) -> None:
    """When the house may be handed over, from all goes well to all goes ill."""
    low, likely = (datetime.fromisoformat(step[key]) for key in ("ends_low_at", "ends_at"))
    high = datetime.fromisoformat(step["ends_high_at"] or step["ends_at"])
    mid = _TICK_H + 2 * _PAD + _BAR_H + _WEDGE_H / 2
    half = _WEDGE_H / 2 - 1
    outline: list[tuple[float, float]] = []
    for n in range(span.weeks):
        week = span.week(n)
        if high > week.monday and low < week.sunday_ends:
            left = span.width / span.weeks * n
            outline += [(left + x, y) for x, y in wedge_outline(week, low, likely, high)]
    if not outline:
        return
    path = [(x, mid - half * y) for x, y in outline]
    path += [(x, mid + half * y) for x, y in reversed(outline)]
    d = "M" + "L".join(f"{number(x)},{number(y)}" for x, y in path) + "Z"
    svg.element("path", d=d, fill=LINE, fill_opacity=0.6, stroke=SOFT, stroke_width=0.8)
    if not span.monday <= likely < span.ends:
        return
    words = said("days-handed-over")
    wide = text_width(words, _SIZE) * small_widen()
    x = outline[0][0] - wide - 6
    if x < 4:
        x = outline[-1][0] + 6
    if x >= 4 and x + wide < span.width - 4:
        svg.text((x, mid + _SIZE * 0.36), words, _SIZE, anchor="start", cased=True)


def _lock(svg: Svg, span: Span, lock: Json) -> None:
    start, end = (datetime.fromisoformat(lock[key]) for key in ("starts_at", "ends_at"))
    x0, x1, y = span.x(start), span.x(end), _TAPE_H - _PAD - _LOCK_H / 2
    if x1 <= x0:
        return
    svg.line([(x0, y), (x1, y)], stroke=SOFT, stroke_width=2.2, stroke_dasharray="2 3")
    for x, there in ((x0, start >= span.monday), (x1, end < span.ends)):
        if there:
            svg.line([(x, y - 4), (x, y + 4)], stroke=INK, stroke_width=1.6)


def _plumb(svg: Svg, drawn: Drawn) -> None:
    now, span = drawn.now, drawn.span
    if now is None or not span.monday <= now < span.ends:
        return
    x, low = number(span.x(now)), number(svg.height - _GAP)
    svg.raw(
        f'<g class="plumb" transform="translate({x} 0)">'
        f'<path d="M0,0V{low}" stroke="{WHITE}" stroke-width="4"/>'
        f'<path d="M0,0V{low}" stroke="{INK}" stroke-width="1.8"/>'
        f'<path d="M-6,0h12l-6,9z" fill="{INK}" stroke="{WHITE}"/></g>'
    )
