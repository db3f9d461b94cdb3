"""The invoice for a part of the job, as it was written or as a draft."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal
from typing import cast

from farwall.job.office.billing.taxing import taxing_of
from farwall.job.office.billing.told import Told, Written, told_of
from farwall.job.office.billing.whole import Whole, whole_of
from farwall.job.office.ground import OfficeGround
from farwall.job.office.priced import Priced
from farwall.price.invoice import Earlier, Extra, Invoice, Kind, Line
from farwall.price.money import NOTHING, added, rounded, share

_CLOSING = {"final", "credit"}


def invoice_asked(ground: OfficeGround) -> Written | None:
    """The invoice that is to be shown: the newest that was written; None: a draft of the rest.

    A deposit or a progress invoice is the one to show until the house is handed over.
    """
    told = told_of(ground)
    newest = told.written[-1] if told.written else None
    if newest is None or newest.part in _CLOSING:
        return newest
    return None if told.over_min is not None and told.over_min >= newest.at_min else newest


def invoice_of(
    ground: OfficeGround, priced: Priced, asked: Written | None = None, *, part: Kind = "final"
) -> Invoice:
    """An invoice of the log as it stood when it was written; a draft of `part` where none is asked.

    What was changed or paid after it was written is not on it.
    """
    told = told_of(ground, asked.at_min if asked is not None else None)
    whole = whole_of(ground, priced, told)
    made = replace(outline_of(ground, asked), lines=whole.lines)
    kind = made.kind if asked is not None else part
    made = replace(made, kind=kind)
    made = _extras(made, asked, whole)
    if kind in {"deposit", "progress"}:
        return _dated(_shared(made, whole, kind), asked, whole)
    if kind == "credit":
        return _credited(made, asked, told)
    return _dated(_rest(made, told, asked), asked, whole)


def outline_of(ground: OfficeGround, asked: Written | None = None) -> Invoice:
    """An invoice without its amounts: parties, number, and how its lines are taxed; reckons no
    price, so that what lacks is told at once."""
    taxing = taxing_of(ground.job)
    lines = (
        Line("labour", Decimal(1), taxing.labour),
        Line("materials", Decimal(1), taxing.materials),
    )
    return Invoice(
        kind=cast("Kind", asked.part) if asked is not None else "final",
        seller=ground.job.firm, buyer=ground.job.customer,
        currency=ground.job.prices.currency, lines=lines,
        number=asked.number if asked is not None else "",
        on=asked.on.isoformat() if asked is not None else "",
    )  # fmt: skip


def part_of(whole: Whole, kind: Kind) -> tuple[Line, ...]:
    """Lines of a deposit or a progress payment: its share of the agreed price, taxed alike."""
    percent = _percent(whole, kind)
    name = "Deposit" if kind == "deposit" else "Progress payment"
    return tuple(
        Line(
            f"{name} of {percent.normalize():f} %: {one.what}", rounded(share(one.net, percent)),
            one.tax,
        )
        for one in whole.floor
    )  # fmt: skip


def _percent(whole: Whole, kind: Kind) -> Decimal:
    terms = whole.terms
    return (terms.deposit_percent if kind == "deposit" else terms.progress_percent).amount


def _shared(made: Invoice, whole: Whole, kind: Kind) -> Invoice:
    return replace(made, lines=part_of(whole, kind))


def _rest(made: Invoice, told: Told, asked: Written | None) -> Invoice:
    """All lines, less all that came in; earlier invoices are named, what is open of them is in."""
    before = [
        one for one in told.written
        if one.part in {"deposit", "progress"} and (asked is None or one.number != asked.number)
    ]  # fmt: skip
    notes = tuple(
        f"Invoice {one.number} of {one.on.isoformat()} is contained in this one." for one in before
    )
    notes += tuple(f"Paid on {one.on.isoformat()}: {one.amount:,.2f}." for one in told.paid)
    return replace(
        made,
        prepaid=added(one.amount for one in told.paid),
        earlier=tuple(Earlier(one.number, one.on.isoformat()) for one in before),
        notes=notes,
        done_on=told.over_on.isoformat() if told.over_on is not None else "",
    )


def _extras(made: Invoice, asked: Written | None, whole: Whole) -> Invoice:
    """An allowance or a charge on the whole, taxed as the floor's largest part is."""
    if asked is None or asked.part == "credit" or not (asked.allowance or asked.charge):
        return made
    tax = max(whole.floor, key=lambda one: one.net).tax
    found = [
        Extra(charge=charge, amount=value, why=asked.why or usual, tax=tax)
        for charge, value, usual in (
            (False, asked.allowance, "Allowance"), (True, asked.charge, "Charge"),
        )
        if value
    ]  # fmt: skip
    return replace(made, extras=tuple(found))


def _credited(made: Invoice, asked: Written | None, told: Told) -> Invoice:
    """A note over an amount with tax, taxed as the whole job is; a lost cent is its rounding."""
    sums = made.totals
    asks = (asked.amount if asked is not None else None) or sums.with_tax
    corrects = asked.corrects if asked is not None else ""
    what = (asked.why if asked is not None else "") or "Correction"
    taxes = {(one.tax.kind, one.tax.percent): one.tax for one in made.lines}
    lines = tuple(
        Line(what, rounded(asks * one.base / sums.with_tax), taxes[(one.kind, one.percent)])
        for one in sums.taxes
        if sums.with_tax
    )
    note = replace(made, lines=lines, extras=(), prepaid=NOTHING)
    before = told.by_number(corrects)
    return replace(
        note,
        rounding=rounded(asks) - note.totals.with_tax,
        earlier=(Earlier(corrects, before.on.isoformat() if before else ""),) if corrects else (),
        terms="This amount is paid back or set against the next invoice.",
    )


def _dated(made: Invoice, asked: Written | None, whole: Whole) -> Invoice:
    days = int(whole.terms.pay_days.amount)
    terms = f"Due {days} days after the day of this invoice." if days else "Due on receipt."
    if asked is None:
        return replace(made, terms=terms)
    due = asked.on + timedelta(days=days)
    return replace(made, terms=terms, due_on=due.isoformat())
