"""Page 2: the day. The floor first, then the tape of time, then each field in one row."""

from __future__ import annotations

from typing import Any

import shapely

from farwall.air.waits import PRESCRIBED
from farwall.evidence import rank_words
from farwall.facts.plan import Clock, Field, Plan, StopKind
from farwall.nouns import dataclass
from farwall.papers.floor_drawing import floor_svg
from farwall.papers.grounds import weightiest
from farwall.papers.lettering import PAPER_LETTERING, text_width, wrap
from farwall.papers.run_sheet import lists
from farwall.papers.run_sheet.chance_words import dies, how_sure
from farwall.papers.run_sheet.edge_words import rooms_differ, tight_edge
from farwall.papers.run_sheet.margins import PaperSize
from farwall.papers.run_sheet.names import (
    coat_ids,
    coat_words,
    field_rooms,
    fits,
    numbers,
    verdict_words,
)
from farwall.papers.svg import plain
from farwall.papers.time_tape import tape_strips, time_tape_svg, wait_words
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.words import area, listed, room_names, volume
from farwall.phrasebook import told

_GROUNDS_SHOWN = 8
_FLOOR_MOST, _FLOOR_LEAST_PT, _FLOOR_WIDTH = 0.6, 240.0, 0.66
_ALL_ELSE_PT = 150.0
"""The sheet's foot, the title, the tape and the gaps between all parts."""
_HEADING_PT, _GROUND_PT, _LEGEND_PT = 20.0, 26.0, 40.0
_FEW_GROUNDS = 5
_MUCH_LARGER = 1.15
_TAPE_PT = 80.0
"""Each further strip of the tape."""
_LINE_PT, _ROW_PT, _COAT_PT, _TABLE_HEAD_PT = 11.6, 11.8, 22.0, 18.0
_SPAN_WIDTH_PT = 66.0
_ROOMS_LEAST_PT, _GUTTER_PT = 92.0, 9.0
"""Where the names of rooms have less, the column of stop lines goes: the map shows them."""
_STOP_WORDS: dict[StopKind, str] = {
    "door": "door", "cased": "frame", "outside": "sill", "saw cut": "saw cut",
}  # fmt: skip


@dataclass(frozen=True)
class _Layout:
    """`beside`: grounds beside the floor · `wide`: below it · `two pages`: the table on its own."""

    name: str
    floor_width: float
    floor_height: float
    grounds: int


def _layout(plan: Plan, size: PaperSize, rooms_width: float) -> _Layout:
    """The layout in which the floor comes out largest on one page, if one page can hold it all."""
    table = _table_height(plan, rooms_width) + _headings_height(plan, size)
    table += (len(tape_strips(plan)) - 1) * _TAPE_PT
    free = size.inner_height - _ALL_ELSE_PT - table - _at_once_height(size)
    if free < _FLOOR_LEAST_PT:
        return _Layout(
            "two pages", size.inner_width, size.inner_height * _FLOOR_MOST, _GROUNDS_SHOWN
        )
    free -= _proof_height(plan, size)
    beside_it = size.inner_width * (1 - _FLOOR_WIDTH) - 18
    rests = free - _HEADING_PT - _sure_height(plan, beside_it)
    shown = max(min(int(rests / _GROUND_PT), _GROUNDS_SHOWN), 1)
    beside = _Layout("beside", size.inner_width * _FLOOR_WIDTH, free, shown)
    few = _FEW_GROUNDS * _GROUND_PT + _HEADING_PT - _at_once_height(size)
    few += _sure_height(plan, (size.inner_width - 26) / 2.4)
    wide = _Layout("wide", size.inner_width, free - max(few, 0.0), _FEW_GROUNDS)
    floor = shapely.union_all([room.polygon.shape for room in plan.inputs.floor.rooms])
    west, south, east, north = floor.bounds
    scales = [
        min(one.floor_width / (east - west), (one.floor_height - _LEGEND_PT) / (north - south))
        for one in (beside, wide)
    ]
    return wide if scales[1] > _MUCH_LARGER * scales[0] else beside


@dataclass(frozen=True)
class _Table:
    """The table of fields: its rows by field, which columns it has, what the rooms' names get."""

    rows: dict[str, dict[str, Any]]
    spans: bool
    stops: bool
    rooms_width: float


def _table(plan: Plan, units: Units, clock: WallClock, size: PaperSize, edge: str) -> _Table:
    """The fullest table whose rooms have room for their names.

    What goes first is what stands elsewhere too: stop lines (on the map), the second unit of
    the mix (on the field's page), the end of each field (the next one's begin).
    """
    heads = {
        "edge": edge, "spare": "to spare", "verdict": "verdict",
        "dies": "edge dies" if plan.chances else "",
    }  # fmt: skip
    columns = ("number", "clock", "volume", "verdict", "edge", "spare", "dies")
    longest = max((_wide(field_rooms(plan, field)) for field in plan.fields), default=0.0)
    least = min(longest, _ROOMS_LEAST_PT)
    spans = _spans_are_short(plan, clock)
    for spanned, both in ((spans, True), (spans, False), (False, False)):
        rows = {
            field.id: _row(plan, field, units, clock, spans=spanned, both=both)
            for field in plan.fields
        }
        free = size.inner_width - _widths(list(rows.values()), columns, heads)
        if free >= least:
            break
    beside = free - _widths(list(rows.values()), ("stops",), {"stops": "stop lines"})
    stops = spanned and both and beside >= _ROOMS_LEAST_PT
    return _Table(rows, spanned, stops, beside if stops else free)


def day_page(plan: Plan, *, job_name: str, units: Units, size: PaperSize) -> dict[str, Any]:
    """What the day's page says and shows."""
    clock = plan_clock(plan, units)
    edge = "tightest edge" if any(map(rooms_differ, plan.fields)) else "oldest edge"
    table = _table(plan, units, clock, size, edge)
    layout = _layout(plan, size, table.rooms_width)
    return {
        "title": "The day",
        "spans": table.spans,
        "stops": table.stops,
        "edge": edge,
        "layout": layout.name,
        "job": plain(job_name),
        "under": plain(_under(plan, units, clock)),
        "floor": floor_svg(
            plan,
            units=units,
            width=layout.floor_width,
            height=layout.floor_height,
            lettering=PAPER_LETTERING,
            ground=None,
        ),
        "floor_width": layout.floor_width,
        "tape": time_tape_svg(plan, units=units, width=size.inner_width, lettering=PAPER_LETTERING),
        "coats": [
            {
                "name": plain(coat_words(plan, coat)),
                "rows": [table.rows[field.id] for field in _in_order(plan, coat)],
                "waits": plain(_waits(plan, coat, clock)),
            }
            for coat in coat_ids(plan)
            if _in_order(plan, coat)
        ],
        "sure": [[plain(word.replace(" %", "\u00a0%")) for word in row] for row in how_sure(plan)],
        "drawn": f"{plan.chances.days:,} drawn days" if plan.chances else "",
        "dies": plan.chances is not None,
        "proof": _proof(plan),
        "rests": _rests(plan, units)[: layout.grounds],
        "at_once": [
            ["A drip inside:", lists.DRIP_INSIDE],
            ["A drip on the outside slab:", lists.DRIP_OUTSIDE],
            ["Phone:", lists.MID_FIELD],
            ["Sun:", lists.SUN],
        ],
    }


def _rests(plan: Plan, units: Units) -> list[list[str]]:
    """The budget of the edge first, then what else decides the day: name, value, rank."""
    coats = coat_ids(plan)
    budgets = [
        min(
            (one for field in own for one in field.open_times or (field.open_time_min,)),
            key=lambda o: o.low,
        )
        for own in (_in_order(plan, coat) for coat in coats)
        if own
    ]
    rows = []
    if budgets:
        told = rank_words(budgets[0].rank, budgets[0].source)
        lows = list(dict.fromkeys(f"{one.low:.1f}" for one in budgets))
        rows.append([f"edge budget{_tight_room(plan)}", f"{listed(lows)} min", told])
    grounds = weightiest(plan.grounds, units=units, most=_GROUNDS_SHOWN, coats=coats)
    rows += [[ground.name, ground.value, ground.told] for ground in grounds]
    return [[plain(word) for word in row] for row in rows[:_GROUNDS_SHOWN]]


def _tight_room(plan: Plan) -> str:
    """`, shortest in Kitchen` where edges do not live as long in every room of the first coat."""
    own = [one for field in _in_order(plan, coat_ids(plan)[0]) for one in field.open_times]
    least = min((one.low for one in own), default=0.0)
    if all(one.low == least for one in own):
        return ""
    rooms = dict.fromkeys(one.room for one in own if one.low == least)
    return f", shortest in {listed(room_names(plan, list(rooms)[:2]))}"


def _proof(plan: Plan) -> str:
    """What is proved of stop lines and order; empty in a plan that does not tell."""
    return plain(plan.proof.what) if plan.proof is not None else ""


def _proof_height(plan: Plan, size: PaperSize) -> float:
    told = _proof(plan)
    return _lines(told, size.inner_width) * _LINE_PT + 6 if told else 0.0


def _at_once_height(size: PaperSize) -> float:
    """How high the words on drips, phone and sun are set, in two columns. [pt]"""
    width = (size.inner_width - 26) / 2
    pairs = ((lists.DRIP_INSIDE, lists.DRIP_OUTSIDE), (lists.MID_FIELD, lists.SUN))
    lines = [
        max(_lines(f"A drip on the outside slab. {text}", width) for text in pair) for pair in pairs
    ]
    return sum(lines) * _LINE_PT + 6


def _sure_height(plan: Plan, width: float) -> float:
    """How high the chances are set in a column of this width. [pt]"""
    rows = how_sure(plan)
    lines = sum(_lines(" ".join(row), width) for row in rows)
    return _HEADING_PT + lines * _LINE_PT + 5 * len(rows) if rows else 0.0


def _lines(text: str, width: float) -> int:
    return len(wrap(text, width / 1.03, PAPER_LETTERING.small) or ("", "", ""))


def _widths(rows: list[dict[str, Any]], columns: tuple[str, ...], heads: dict[str, str]) -> float:
    """How wide these columns of the table of fields are set, with the gap before each. [pt]"""
    widest = [
        max(map(_wide, cells))
        for cells in ([heads.get(key, ""), *(row[key] for row in rows)] for key in columns)
    ]
    return sum(width + _GUTTER_PT for width in widest if width > 0)


def _wide(text: str) -> float:
    """How wide a text is set in the language of the page. [pt]"""
    return text_width(told(text), PAPER_LETTERING.small) if text else 0.0


def _table_height(plan: Plan, rooms_width: float) -> float:
    """About how high the table of fields is set. [pt]"""
    height = _TABLE_HEAD_PT + len(coat_ids(plan)) * _COAT_PT
    for field in plan.fields:
        lines = wrap(field_rooms(plan, field), rooms_width, PAPER_LETTERING.small)
        height += _ROW_PT + (len(lines or ("", "")) - 1) * _LINE_PT
    return height


def _headings_height(plan: Plan, size: PaperSize) -> float:
    """How much higher the headings of the coats are than one line each. [pt]"""
    clock = plan_clock(plan, "us")
    told = [f"{coat_words(plan, c)} · {_waits(plan, c, clock)}" for c in coat_ids(plan)]
    return sum(_lines(words, size.inner_width) - 1 for words in told) * _LINE_PT


def _in_order(plan: Plan, coat: str) -> list[Field]:
    return sorted((f for f in plan.fields if f.coat == coat), key=lambda f: f.order)


def _under(plan: Plan, units: Units, clock: WallClock) -> str:
    first = [f for f in plan.fields if f.coat == plan.fields[0].coat] if plan.fields else []
    total = sum(field.area_m2 for field in first)
    coats = listed([coat_words(plan, coat) for coat in coat_ids(plan)])
    return f"{clock.day()} · {area(total, units)} in {len(first)} fields · {coats}"


def _spans_are_short(plan: Plan, clock: WallClock) -> bool:
    """Whether begin and end of every field fit beside the rooms' names."""
    spans = [clock.span(field.start_min, field.end_min) for field in plan.fields]
    widths = [text_width(span, PAPER_LETTERING.small) for span in spans]
    return max(widths, default=0.0) <= _SPAN_WIDTH_PT


def _row(
    plan: Plan, field: Field, units: Units, clock: WallClock, *, spans: bool, both: bool = True
) -> dict[str, Any]:
    edge = tight_edge(plan, field)
    spare = edge.spare_min
    litres = sum(band.litres for band in field.bands)
    return {
        "number": str(numbers(plan)[field.id]),
        "rooms": plain(field_rooms(plan, field)),
        "clock": clock.span(field.start_min, field.end_min)
        if spans
        else clock.time(field.start_min),
        "volume": volume(litres, units, both=both),
        "verdict": verdict_words(plan, field),
        "good": fits(plan, field),
        "edge": f"{edge.age_min:.1f} of {edge.low_min:.1f} min",
        "spare": f"{spare:.1f} min" if spare >= 0 else f"{-spare:.1f} min over",
        "dies": plain(dies(plan, field)),
        "stops": plain(_stops(field)),
    }


def _stops(field: Field) -> str:
    kinds: dict[str, int] = {}
    for stop in field.stop_lines:
        word = _STOP_WORDS[stop.kind]
        kinds[word] = kinds.get(word, 0) + 1
    words = [f"{count} {word}s" if count > 1 else word for word, count in kinds.items()]
    return ", ".join(words) or "none"


def _waits(plan: Plan, coat: str, clock: WallClock) -> str:
    end = max((f.end_min for f in _in_order(plan, coat)), default=0.0)
    said = []
    for one in plan.clocks:
        if one.coat != coat or one.name == "open time":
            continue  # an edge is held to its budget, which stands beside each field
        if one.begins_min is not None:
            said.append(_for_long(one))
            continue
        rest = f" ({one.rank})" if one.rank else ""
        said.append(f"{wait_words(one, end, clock)[0]}{rest}")
    return "; ".join(said)


def _for_long(one: Clock) -> str:
    """A wait that is told by how long it is: it begins on another day.

    A prescribed one (dwell, traffic) is not foretold: its middle is what is usual, not likely.
    """
    set_by_sheet = one.source.startswith(PRESCRIBED)
    middle = "usual" if set_by_sheet else "likely"
    rest = f" ({one.rank}{', prescribed' if set_by_sheet else ''})" if one.rank else ""
    if one.likely_min is None:
        return f"{one.name}: not in these conditions"
    unit, size = ("h", 60.0) if one.likely_min >= 120 else ("min", 1.0)
    low, likely = f"{one.low_min / size:.0f}", f"{one.likely_min / size:.0f}"
    span = f"{low} {unit} to open end"
    if one.high_min is not None:
        span = f"{low} to {one.high_min / size:.0f} {unit}"
    return f"{one.name} {span}, {middle} {likely}{rest}"
