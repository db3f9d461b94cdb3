"""The tape of days: one for each van, a week a length, nights and weekends folded narrow.

What begins on the first day is a bar; what is planned after it a dashed
outline; until when it may run a wedge, widest where it most likely ends. The
lock on other trades is a hatched strip along the foot. Words and dashes say
again what a colour says.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date, datetime, timedelta
from typing import Any

from farwall.days.words import date_words
from farwall.papers.days_scale import Week, mondays, wedge_outline
from farwall.papers.ink import INK, LINE, RAMP, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, Lettering, clipped, text_width
from farwall.papers.svg import Svg, number

_RULE_H, _BAR_H, _PAD, _GAP = 26.0, 20.0, 5.0, 9.0
_LOCK_H = 9.0
SHORT = {
    "clean": "cleaning", "mask": "mask", "neutralise": "rinse", "seal-1": "seal", "seal-2": "seal",
    "finish": "finish", "hand-over": "hand over",
}  # fmt: skip


def days_tape_svg(
    told: Mapping[str, Any],
    *,
    house: str | None = None,
    width: float = 790.0,
    lettering: Lettering = SCREEN_LETTERING,
) -> str:
    """The tape of a calendar document as SVG text, of one house (by id) or of every van.

    With more houses than one each has a number, told at the foot of its van's tape.
    """
    houses = [one for one in told["houses"] if house is None or one["id"] == house]
    alone = len(houses) == 1
    svg = Svg(width=width, height=0, family=lettering.family, ident="days-tape")
    numbers = {one["id"]: n for n, one in enumerate(houses, 1)}
    for crew in told["crews"]:
        mine = [one for one in houses if one["crew"] == crew["id"]]
        if not mine:
            continue
        if not alone:
            svg.height += lettering.body + 6
            svg.text((0, svg.height - 5), str(crew["id"]), lettering.body, anchor="start",
                     bold=True)  # fmt: skip
        for monday in mondays(mine):
            part = Svg(width=width, height=0, family=lettering.family)
            _length(part, Week(monday, width), mine, numbers, lettering, alone=alone)
            svg.below(part, svg.height)
            svg.height += part.height + _GAP
        if not alone:
            _names(svg, mine, numbers, lettering)
    return svg.document(title="The tape of days", description=_told(houses))


def _length(
    svg: Svg,
    week: Week,
    houses: Sequence[Mapping[str, Any]],
    numbers: Mapping[str, int],
    lettering: Lettering,
    *,
    alone: bool,
) -> None:
    words = lettering.small + _PAD
    svg.height = _RULE_H + _PAD + _BAR_H + words + _PAD
    if alone:
        svg.height += _BAR_H + _LOCK_H + 2 * _PAD
    svg.element("rect", x=0.6, y=0.6, width=week.width - 1.2, height=svg.height - 1.2,
                fill=WHITE, stroke=INK, stroke_width=1.2)  # fmt: skip
    _ticks(svg, week, lettering)
    by_day: dict[date, list[str]] = {}
    for house in houses:
        first = datetime.fromisoformat(house["steps"][0]["starts_at"]).date()
        told = "" if alone else str(numbers[house["id"]])
        for step in house["steps"]:
            for piece in pieces(step):
                _bar(svg, week, piece, lettering, first=first, told=told)
        for day, names in _names_by_day(house, alone=alone).items():
            by_day.setdefault(day, []).append(f"{told} {', '.join(names)}".strip())
    _day_words(svg, week, by_day, lettering)
    if alone:
        _wedge(svg, week, houses[0]["steps"][-1], lettering)
        _lock(svg, week, houses[0]["lock"], lettering)


def _ticks(svg: Svg, week: Week, lettering: Lettering) -> None:
    for day in range(7):
        at = week.monday + timedelta(days=day)
        if day:
            svg.line([(week.x(at), 0), (week.x(at), _RULE_H - 2)], stroke=INK, stroke_width=1.4)
        for hour in range(8, 19):
            depth = 9.0 if hour % 4 == 0 else 4.0
            x = week.x(at + timedelta(hours=hour))
            if day < 5:
                svg.line([(x, 0), (x, depth)], stroke=INK, stroke_width=0.8)
        words = date_words(at) if day < 5 else date_words(at)[:3]
        svg.text((week.x(at) + 4, _RULE_H - 4), words, lettering.small, anchor="start", bold=True,
                 fill=INK if day < 5 else SOFT)  # fmt: skip


def pieces(step: Mapping[str, Any]) -> Iterator[tuple[datetime, datetime]]:
    """The step cut at midnights, the nights of a parted one left out."""
    start, end = (datetime.fromisoformat(step[key]) for key in ("starts_at", "ends_at"))
    while start.date() < end.date():
        evening = start.replace(hour=17, minute=0)
        if start.weekday() < 5:
            yield start, max(evening, start)
        start = (start + timedelta(days=1)).replace(hour=7, minute=30)
    if start < end:
        yield start, end


def _bar(
    svg: Svg,
    week: Week,
    piece: tuple[datetime, datetime],
    lettering: Lettering,
    *,
    first: date,
    told: str,
) -> None:
    start, end = piece
    if end <= week.monday or start >= week.sunday_ends:
        return
    planned = start.date() != first
    top, x0, x1 = _RULE_H + _PAD, week.x(start), week.x(end)
    svg.element(
        "rect", x=x0, y=top, width=max(x1 - x0, 1.0), height=_BAR_H,
        fill=WHITE if planned else RAMP[1], stroke=INK, stroke_width=0.9,
        stroke_dasharray="4 3" if planned else None,
    )  # fmt: skip
    if told and text_width(told, lettering.small) * lettering.widen < x1 - x0 - 1:
        middle = ((x0 + x1) / 2, top + _BAR_H / 2 + lettering.small * 0.36)
        svg.text(middle, told, lettering.small)


def _names_by_day(house: Mapping[str, Any], *, alone: bool) -> dict[date, list[str]]:
    """What is done at a house on each day, in short words, in order."""
    by_day: dict[date, list[str]] = {}
    for step in house["steps"]:
        other = "seal" if step["id"].startswith("seal-") else "coat"
        word = SHORT.get(step["id"], step["id"].replace("-", " ") if alone else other)
        for start, _ in pieces(step):
            names = by_day.setdefault(start.date(), [])
            if word not in names:
                names.append(word)
    return by_day


def _day_words(
    svg: Svg, week: Week, by_day: Mapping[date, Sequence[str]], lettering: Lettering
) -> None:
    """Under the bars of a day what they are, cut short where the day has no room for more."""
    base = _RULE_H + _PAD + _BAR_H + lettering.small + 2
    for day in range(5):
        at = week.monday + timedelta(days=day)
        room = week.x(at + timedelta(days=1)) - week.x(at) - 8
        words = " · ".join(by_day.get(at.date(), []))
        if words:
            shown = clipped(words, room / lettering.widen, lettering.small)
            svg.text((week.x(at) + 4, base), shown, lettering.small, anchor="start")


def _wedge(svg: Svg, week: Week, step: Mapping[str, Any], lettering: Lettering) -> None:
    """When the house may be handed over: from all goes well to all goes ill."""
    mid = svg.height - _LOCK_H - 3 * _PAD - _BAR_H / 2
    half = _BAR_H / 2 - 1
    low, likely = (datetime.fromisoformat(step[key]) for key in ("ends_low_at", "ends_at"))
    high = datetime.fromisoformat(step["ends_high_at"] or step["ends_at"])
    if high <= week.monday or low >= week.sunday_ends:
        return
    points = wedge_outline(week, low, likely, high)
    path = [(x, mid - half * y) for x, y in points]
    path += [(x, mid + half * y) for x, y in reversed(points)]
    told = "M" + "L".join(f"{number(x)},{number(y)}" for x, y in path) + "Z"
    svg.element("path", d=told, fill=LINE, fill_opacity=0.6, stroke=SOFT, stroke_width=0.8)
    if week.monday <= likely < week.sunday_ends:
        until = f"to {date_words(high)}" if step["ends_high_at"] else "on, open end"
        words = f"handed over, {date_words(low)} {until}"
        wide = text_width(words, lettering.small) * lettering.widen
        x = min(max(week.x(likely) - wide / 2, 4.0), week.width - wide - 4)
        svg.text((x, mid + lettering.small * 0.36), words, lettering.small, anchor="start",
                 cased=True)  # fmt: skip


def _lock(svg: Svg, week: Week, lock: Mapping[str, Any], lettering: Lettering) -> None:
    start, end = (datetime.fromisoformat(lock[key]) for key in ("starts_at", "ends_at"))
    x0, x1 = week.x(start), week.x(end)
    if x1 <= x0:
        return
    y = svg.height - _PAD - _LOCK_H / 2
    words = "locked to all other trades"
    wide = text_width(words, lettering.small) * lettering.widen
    inside = x1 - x0 > wide + 24
    left = x0 + 8 if inside else x1 + 6
    if inside or x1 + wide + 12 < week.width:
        svg.text((left, y + lettering.small * 0.36), words, lettering.small, anchor="start")
    for begin, end_at in ((x0, left - 3), (left + wide + 2, x1)) if inside else ((x0, x1),):
        svg.line([(begin, y), (end_at, y)], stroke=SOFT, stroke_width=2.2, stroke_dasharray="2 3")
    for x, shown in ((x0, start >= week.monday), (x1, end < week.sunday_ends)):
        if shown:
            svg.line([(x, y - 5), (x, y + 4)], stroke=INK, stroke_width=1.6)


def _names(
    svg: Svg,
    houses: Sequence[Mapping[str, Any]],
    numbers: Mapping[str, int],
    lettering: Lettering,
) -> None:
    """What the numbers stand for, in lines of words."""
    line = ""
    told = [f"{numbers[one['id']]} {one['name']}" for one in houses]
    for words in [*told, ""]:
        longer = f"{line} · {words}" if line else words
        if words and text_width(longer, lettering.small) * lettering.widen < svg.width:
            line = longer
            continue
        svg.height += lettering.small + 5
        svg.text((0, svg.height - 6), line, lettering.small, anchor="start", fill=SOFT)
        line = words
    svg.height += _GAP


def _told(houses: Sequence[Mapping[str, Any]]) -> str:
    parts = []
    for house in houses:
        first = datetime.fromisoformat(house["steps"][0]["starts_at"])
        last = datetime.fromisoformat(house["steps"][-1]["ends_at"])
        parts.append(f"{house['name']} {date_words(first)} to {date_words(last)}, {house['crew']}")
    return "; ".join(parts) + "."
