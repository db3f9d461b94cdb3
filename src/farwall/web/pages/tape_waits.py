"""The waits on the tape: wedges of what is likely, widest at its likeliest, in few rows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from farwall.nouns import dataclass
from farwall.papers.ink import LINE, SOFT
from farwall.papers.svg import number
from farwall.web.pages.course import Awaited
from farwall.web.pages.standing import clock_name
from farwall.web.pages.tape_rule import SIZE, Ruled, wide
from farwall.web.words import said

ROW_H = 20.0
_LEAST_ROWS = 2
_LEAST_WEDGE_PX = 7.0
_ROWS = 3
"""From so many rows of waits on, one is told in fewer words rather than in a row of its own."""
_BRIEF_FROM_MIN = 3 * 1440.0
"""A tape of so many days tells of a wait only when it most likely ends."""


@dataclass(frozen=True)
class Laid:
    """A wait with the row it lies in, its wedge and where its words stand."""

    wait: Awaited
    row: int
    words: str
    x: float


def lay_waits(ruled: Ruled, waits: Sequence[Awaited]) -> tuple[list[Laid], int]:
    """The waits in as few rows as hold them without one on another; and how many rows.

    What is too short to be seen as a wedge is left out: nearer it comes into sight.
    """
    rows: list[list[tuple[float, float]]] = []
    laid: list[Laid] = []
    for wait in waits:
        begins = wait.begins_min + wait.clock.low_min
        if not ruled.sees(begins, max(wait.ends_min, begins + 1)):
            continue
        if (wait.ends_min - begins) * ruled.per_min < _LEAST_WEDGE_PX and wait.clock.likely_min:
            continue
        wedge = ruled.x(begins), ruled.x(wait.ends_min)
        places = list(_places(ruled, wait, wedge))
        row, place = _first_free(rows, places, wedge)
        words, x = place
        rows[row:row] = [[]] if row == len(rows) else []
        rows[row].append(_takes(place, wedge))
        laid.append(Laid(wait, row, words, x))
    return laid, max(_LEAST_ROWS, len(rows))


def _first_free(
    rows: Sequence[Sequence[tuple[float, float]]],
    places: Sequence[tuple[str, float]],
    wedge: tuple[float, float],
) -> tuple[int, tuple[str, float]]:
    """The first row with room for a wait, and where its words then stand; else a new row."""
    longest = places[0][0]
    for n, row in enumerate(rows):
        for place in places:
            if place[0] != longest and len(rows) < _ROWS:
                continue
            left, right = _takes(place, wedge)
            if all(left > b + 12 or right < a - 12 for a, b in row):
                return n, place
    return len(rows), places[0]


def _takes(place: tuple[str, float], wedge: tuple[float, float]) -> tuple[float, float]:
    words, x = place
    return min(wedge[0], x), max(wedge[1], x + wide(words))


def _places(ruled: Ruled, wait: Awaited, wedge: tuple[float, float]) -> Iterator[tuple[str, float]]:
    """Words of a wait and where they may stand: right of its wedge, left of it, across it.

    Fewer words beside the wedge are better than all of them across: there both are hard to see, so
    that across comes last of all.
    """
    width, (left, right) = ruled.svg.width, wedge
    ways = _ways_to_say(ruled, wait)
    for words, across in [*((one, False) for one in ways), *((one, True) for one in ways)]:
        long = wide(words)
        middle = min(max((left + right - long) / 2, 5.0), width - long - 5)
        for x in (middle,) if across else (right + 6, left - long - 6):
            if x >= 5 and x + long < width - 5:
                yield words, x
    yield "", left


def _ways_to_say(ruled: Ruled, wait: Awaited) -> list[str]:
    clock, told, name = wait.clock, ruled.clock, clock_name(wait.clock)
    if clock.likely_min is None:
        return [said("tape-never", name=name), name]
    likely = told.time(wait.begins_min + clock.likely_min)
    if ruled.to_min - ruled.from_min > _BRIEF_FROM_MIN:
        return [said("tape-brief", name=name, likely=likely), name, likely]
    low = wait.begins_min + clock.low_min
    if clock.high_min is None:
        span = said("tape-open", start=told.time(low))
    else:
        span = told.span(low, wait.begins_min + clock.high_min)
    brief = said("tape-brief", name=name, likely=likely)
    return [
        said("tape-wait", name=name, span=span, likely=likely), f"{name} {span}", brief, name, span,
    ]  # fmt: skip


def draw_waits(ruled: Ruled, laid: Sequence[Laid], top: float) -> None:
    """Each wait's wedge with its words."""
    for one in laid:
        mid = top + one.row * ROW_H + ROW_H / 2
        _wedge(ruled, one.wait, mid)
        if one.words:
            at = (one.x, mid + SIZE * 0.36)
            ruled.svg.text(at, one.words, SIZE, anchor="start", cased=True)


def _wedge(ruled: Ruled, wait: Awaited, mid: float) -> None:
    """Thin where the wait may end, thickest where it most likely does; cut by the window's ends."""
    clock = wait.clock
    if clock.likely_min is None:
        return
    low, likely = wait.begins_min + clock.low_min, wait.begins_min + clock.likely_min
    half, at = ROW_H / 2 - 2, ruled.per_min

    def height(minute: float) -> float:
        rise = likely - low if minute < likely else wait.ends_min - likely
        off = likely - minute if minute < likely else minute - likely
        return half * (1 - off / rise) if rise > 0 else half

    first, last = max(low, ruled.from_min), min(wait.ends_min, ruled.to_min)
    if (last - first) * at < 1:
        return
    middle = [likely] if first < likely < last else []
    tops = [(ruled.x(one), height(one)) for one in [first, *middle, last]]
    upper = "L".join(f"{number(x)},{number(mid - h)}" for x, h in tops)
    lower = "L".join(f"{number(x)},{number(mid + h)}" for x, h in reversed(tops))
    ruled.svg.element("path", d=f"M{upper}L{lower}Z", fill=LINE, fill_opacity=0.6, stroke=SOFT,
                      stroke_width=0.8)  # fmt: skip
