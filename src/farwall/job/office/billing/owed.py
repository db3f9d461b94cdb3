"""What the whole comes to, what is due when, what came in, as plain values."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import Decimal

from farwall.job.office.billing.told import Told, told_of
from farwall.job.office.billing.whole import Whole, change_words, whole_of
from farwall.job.office.billing.writing import part_of
from farwall.job.office.ground import OfficeGround
from farwall.job.office.priced import Priced
from farwall.nouns import dataclass
from farwall.price.due import PARTS, Due, Payment, dues, parts_due
from farwall.price.invoice import Kind, Line
from farwall.price.money import added, amount, figure_said, written
from farwall.price.totals import Totals, tax_groups, totals

DEPOSIT_BEFORE_D, PROGRESS_AFTER_D, OVER_AFTER_D = 3, 1, 3
"""Days from the first coat, where the log says nothing: the sample is signed three days before and
stain is bought then; rinsed the day after; handed over three days after [common-practice], a house
of 1,500 ft² with two people."""


@dataclass(frozen=True)
class ChangeSaid:
    """A change order as it is shown; amounts as text, without tax.

    paper, photo: SHA-256 of the signed paper and of a photo, where they are in the book.
    """

    id: str
    number: int
    on: str
    what: str
    who: str
    amount: str
    words: str
    signed: bool
    paper: str
    photo: str
    standby: bool


@dataclass(frozen=True)
class DuePart:
    """A part: how much with tax, when; planned: the day is reckoned, not told."""

    part: str
    amount: str
    due_on: str
    planned: bool
    paid: str
    open: str
    paid_on: str
    late_days: int


@dataclass(frozen=True)
class Figure:
    """A rate or a share that is taken, as text, with its rank and source; empty: told by nobody."""

    name: str
    value: str
    rank: str
    source: str


@dataclass(frozen=True)
class Owed:
    """All of it. agreed: without tax; agreed_by: empty where nobody agreed yet."""

    currency: str
    agreed: str
    agreed_by: str
    changes: tuple[ChangeSaid, ...]
    changed: str
    standby: str
    by_area: str
    without_tax: str
    tax: str
    with_tax: str
    paid: str
    open: str
    parts: tuple[DuePart, ...]
    figures: tuple[Figure, ...]
    warnings: tuple[str, ...] = ()


def owed_of(ground: OfficeGround, priced: Priced) -> Owed:
    """What is owed on the day of the question."""
    told = told_of(ground)
    whole = whole_of(ground, priced, told)
    sums = _sums(whole.lines)
    on = date.fromisoformat(ground.day)
    parts = dues(
        parts_due(sums.with_tax, [_asked(whole, "deposit"), _asked(whole, "progress")]),
        _days(ground, told, whole),
        [Payment(one.on, one.amount, one.part) for one in told.paid],
    )
    paid = added(one.amount for one in told.paid)
    return Owed(
        currency=ground.job.prices.currency,
        agreed=written(whole.agreed.amount),
        agreed_by=whole.agreed.by,
        changes=tuple(_change(whole, n) for n in range(len(whole.changes))),
        changed=written(added(price for _, price in whole.changes)),
        standby=written(whole.waits),
        by_area=written(whole.by_area),
        without_tax=written(sums.without_tax),
        tax=written(sums.tax),
        with_tax=written(sums.with_tax),
        paid=written(paid),
        open=written(sums.with_tax - paid),
        parts=tuple(_part(one, told, on) for one in parts if one.amount or one.part == "final"),
        figures=_figures(whole),
        warnings=whole.warnings,
    )


def owed_said(found: Owed) -> tuple[str, ...]:
    """Lines for a terminal."""
    by = f", agreed by {found.agreed_by}" if found.agreed_by else ""
    lines = [f"The floor {figure_said(found.agreed)} {found.currency} without tax{by}"]
    lines += [
        f"Change order {one.number}, {one.what}: {figure_said(one.amount)}"
        + ("" if one.signed else " (no signed paper in the book)")
        for one in found.changes
    ]
    if amount(found.standby):
        lines.append(f"Standby: {figure_said(found.standby)}")
    if amount(found.by_area):
        lines.append(f"Difference by the area as measured: {figure_said(found.by_area)}")
    whole, tax, paid = map(figure_said, (found.with_tax, found.tax, found.paid))
    lines.append(f"In all {whole} with {tax} tax; {paid} paid")
    for one in found.parts:
        late = f", {one.late_days} days late" if one.late_days else ""
        day = f"{'planned for ' if one.planned else ''}{one.due_on}"
        asked, left = figure_said(one.amount), figure_said(one.open)
        lines.append(f"{one.part}: {asked}, due {day}; {left} open{late}")
    return (*lines, *found.warnings)


def _sums(lines: tuple[Line, ...]) -> Totals:
    return totals(
        [one.net for one in lines],
        taxes=tax_groups((one.tax.kind, one.tax.percent, one.net) for one in lines),
    )


def _asked(whole: Whole, kind: Kind) -> Decimal:
    return _sums(part_of(whole, kind)).with_tax


def _days(ground: OfficeGround, told: Told, whole: Whole) -> dict[str, date]:
    start = date.fromisoformat(ground.plan.starts_at[:10])
    pay = timedelta(days=int(whole.terms.pay_days.amount))
    return {
        "deposit": start - timedelta(days=DEPOSIT_BEFORE_D),
        "progress": (told.rinsed_on or start + timedelta(days=PROGRESS_AFTER_D)) + pay,
        "final": (told.over_on or start + timedelta(days=OVER_AFTER_D)) + pay,
    }


def _part(one: Due, told: Told, on: date) -> DuePart:
    asked_for = told.accepted is not None or any(each.part == one.part for each in told.written)
    happened = {"progress": told.rinsed_on, "final": told.over_on}
    assert one.part in PARTS
    return DuePart(
        part=one.part,
        amount=written(one.amount),
        due_on=one.due_on.isoformat() if one.due_on is not None else "",
        planned=happened.get(one.part) is None,
        paid=written(one.paid),
        open=written(one.open),
        paid_on=one.paid_on.isoformat() if one.paid_on is not None else "",
        late_days=one.late_days(on) if asked_for else 0,
    )


def _change(whole: Whole, n: int) -> ChangeSaid:
    one, price = whole.changes[n]
    return ChangeSaid(
        one.id, one.number, one.on.isoformat(), one.what, one.who, written(price),
        change_words(one, whole.terms), bool(one.signed), one.signed, one.photo, one.standby,
    )  # fmt: skip


def _figures(whole: Whole) -> tuple[Figure, ...]:
    terms = whole.terms
    return tuple(
        Figure(name, "" if one is None else one.value, "" if one is None else one.rank,
               "" if one is None else one.source)
        for name, one in (
            ("change_per_h", terms.change_per_h),
            ("change_material_percent", terms.change_material_percent),
            ("standby_per_h", terms.standby_per_h),
            ("deposit_percent", terms.deposit_percent),
            ("progress_percent", terms.progress_percent),
            ("pay_days", terms.pay_days),
            ("area_tolerance_percent", terms.tolerance_percent),
        )
    )  # fmt: skip
