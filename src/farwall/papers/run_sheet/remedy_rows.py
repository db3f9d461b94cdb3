"""What would make a field possible or leave more room: a row each, what works first, by price."""

from __future__ import annotations

from typing import TypedDict

from farwall.facts.plan import Field, Remedy
from farwall.papers.lettering import PAPER_LETTERING, wrap
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units
from farwall.papers.words import unbroken, volume

_MOST_NO, _MOST_TIGHT = 6, 3
_WHAT_SHARE = 0.48
"""Share of the page's width that the words of a remedy are set in."""
_LINE_PT, _GAP_PT, _HEAD_PT = 11.6, 6.0, 34.0
_HARDLY_MIN = 0.05


class RemedyRow(TypedDict):
    """One row as it is set: `note` is the caution, below what is to be done."""

    what: str
    note: str
    edge: str
    spare: str
    more: str
    price: str
    works: bool


def remedy_rows(field: Field, units: Units, *, good: bool) -> list[RemedyRow]:
    """The rows of one field; none where it has room to spare.

    good: whether the crew may spray it as it stands; then only what helps is told, and less of it.
    """
    told = [one for one in field.remedies if one.price or not good]
    return [_row(one, units) for one in told[: _MOST_TIGHT if good else _MOST_NO]]


def remedies_title(field: Field, *, good: bool) -> str:
    """What stands over the rows."""
    if good:
        return "Little to spare: what would leave more"
    worked = any(one.works for one in field.remedies)
    return "What would make it possible" if worked else "What was tried"


def rows_height(rows: list[RemedyRow], width: float) -> float:
    """About how high the rows are set on a page of this inner width. [pt]"""
    if not rows:
        return 0.0
    set_in = _WHAT_SHARE * width
    lines = sum(_lines(row["what"], set_in) + _lines(row["note"], set_in) for row in rows)
    return _HEAD_PT + lines * _LINE_PT + len(rows) * _GAP_PT


def _lines(text: str, width: float) -> int:
    return len(wrap(text, width / 1.03, PAPER_LETTERING.small) or ("",) * 6) if text else 0


def _row(one: Remedy, units: Units) -> RemedyRow:
    price = one.price + (f", {one.cost}" if one.cost else "")
    return {
        "what": plain(unbroken(one.what)),
        "note": plain(unbroken(one.caution)),
        "edge": "" if one.peak_age_min is None else f"{one.peak_age_min:.1f} min",
        "spare": _spare(one),
        "more": unbroken(_more(one, units)),
        "price": plain(price),
        "works": bool(one.works),
    }


def _spare(one: Remedy) -> str:
    if one.margin_min is None:
        return ""
    if one.works is None:
        return "the sample tells"
    if one.margin_min < 0:
        return f"{-one.margin_min:.1f} min over"
    return f"{one.margin_min:.1f} min"


def _more(one: Remedy, units: Units) -> str:
    """Minutes and mix more than now, or less; nothing where it makes no difference."""
    told = []
    if one.more_min is not None and abs(one.more_min) >= _HARDLY_MIN:
        told.append(f"{_signed(one.more_min)}{abs(one.more_min):.1f} min")
    if one.more_l is not None and abs(one.more_l) >= _HARDLY_MIN:
        told.append(f"{_signed(one.more_l)}{volume(abs(one.more_l), units, both=False)}")
    return ", ".join(told)


def _signed(value: float) -> str:
    return "+" if value > 0 else "\N{MINUS SIGN}"
