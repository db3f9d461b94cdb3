"""The invoice on paper and as XML: what was done, what came in, what is to pay."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from farwall.errors import Mistake
from farwall.job.office.billing import invoice_asked, invoice_of, outline_of
from farwall.papers.invoice import invoice_xml, lacks_of
from farwall.papers.office.blocks import LAW_WINS, Block, Facts, Own, Paper, Rows, Sums, Text, Words
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.money_words import day, how_many, money, percent
from farwall.papers.office.setting import address_lines, own_names
from farwall.papers.wall_clock import Units
from farwall.papers.words import names_in
from farwall.phrasebook import speaking, told
from farwall.price.invoice import Extra, Invoice, TaxOf, as_note

_TITLES = {
    "deposit": "Deposit invoice", "progress": "Progress invoice", "final": "Invoice",
    "credit": "Credit note",
}  # fmt: skip
_OF_DAY = re.compile(r"(?<= of )[\d-]{10}(?= is contained)|(?<=^Paid on )[\d-]{10}(?=:)")
"""The day in a note of ours, as the data have it; on paper it stands as all days do."""
_NO_TAX = {"exempt": "Exempt from tax", "reverse charge": "Reverse charge",
           "not subject": "Not subject to tax"}  # fmt: skip


def invoice(ground: PaperGround) -> Paper:
    """The invoice that the log tells of last; a draft of the rest where none was written."""
    made = invoice_made(ground)
    if made.credit and made.kind != "credit":
        made = as_note(made)
    return Paper(
        title=_title(made),
        letterhead=True,
        wins=LAW_WINS,
        day=made.on or "none",
        to=_to(made),
        screen="price/due",
        blocks=(
            *_draft(made), *_unagreed(ground), *_facts(made, ground.units), _lines(made),
            _sums(made), *_payment(made), *_notes(made, ground.units),
        ),
    )  # fmt: skip


def invoice_made(ground: PaperGround) -> Invoice:
    """The invoice that is shown, as a noun."""
    return invoice_of(ground.ground, ground.office.priced, invoice_asked(ground.ground))


def invoice_file(ground: PaperGround) -> bytes:
    """The same as XML of EN 16931, its words in the paper's language. Raises Refused."""
    made = invoice_made(ground)
    with speaking(ground.language, names_in(ground.plan) | own_names(ground)):
        return invoice_xml(_spoken(made))


def invoice_lacks(ground: PaperGround) -> tuple[Mistake, ...]:
    """What must be entered before there is an invoice as XML."""
    return lacks_of(outline_of(ground.ground, invoice_asked(ground.ground)))


def _title(made: Invoice) -> str:
    if made.draft:
        return f"{_TITLES[made.kind]}, draft"
    return f"{_TITLES[made.kind]} {made.number}"


def _to(made: Invoice) -> tuple[str, ...]:
    buyer = made.buyer
    abroad = buyer.address.country != made.seller.address.country
    lines = (buyer.name, *address_lines(buyer.address), buyer.address.country if abroad else "")
    return tuple(one for one in lines if one.strip())


def _draft(made: Invoice) -> Iterator[Block]:
    if made.draft:
        yield Words("It has no number and no day yet: a draft, and no invoice.", "danger")


def _unagreed(ground: PaperGround) -> Iterator[Block]:
    story = ground.ground.story
    if story is None or story.last("accepted") is None:
        yield Words(
            "Nobody's yes to an offer is entered: the price of the fullest one stands here.", "soft"
        )


def _facts(made: Invoice, units: Units) -> Iterator[Block]:
    pairs: list[tuple[Text, Text]] = []
    if made.due_on:
        pairs.append(("Due", day(made.due_on, units)))
    if made.done_on:
        pairs.append(("Handed over", day(made.done_on, units)))
    if made.buyer.reference.strip():
        pairs.append(("Your order", Own(made.buyer.reference)))
    if made.kind == "credit" and made.earlier:
        pairs.append(("Corrects invoice", Own(made.earlier[0].number)))
    if made.seller.tax_id.strip():
        pairs.append(("Our tax number", Own(made.seller.tax_id)))
    if made.buyer.tax_id.strip():
        pairs.append(("Your tax number", Own(made.buyer.tax_id)))
    if pairs:
        yield Facts(tuple(pairs), columns=2 if len(pairs) > 3 else 1)


def _lines(made: Invoice) -> Rows:
    """Every line; a column of rates only where there is more than one."""
    several = len(made.totals.taxes) > 1
    rows: list[tuple[Text, ...]] = []
    for one in made.lines:
        what = told_line(one.what, one.words)
        tax = (_rate(one.tax),) if several else ()
        rows.append((what, how_many(one), *tax, money(one.net)))
    for extra in made.extras:
        tax = (_rate(extra.tax),) if several else ()
        net = extra.amount if extra.charge else -extra.amount
        rows.append((_extra(extra), Own(""), *tax, money(net)))
    heads: tuple[Text, ...] = ("Work", "How much", *(("Tax",) if several else ()))
    return Rows(
        (*heads, f"Amount, {made.currency}"), tuple(rows),
        widths=(6, 1.5, *((1.3,) if several else ()), 1.8), right=tuple(range(1, len(heads) + 1)),
    )  # fmt: skip


def told_line(what: str, words: str) -> str:
    """What a line is for, with what is said of it."""
    return f"{what} ({words})" if words else what


def _extra(extra: Extra) -> str:
    """What is taken off the whole or put on it, and why where that was told."""
    what = "Charge" if extra.charge else "Allowance"
    return what if extra.why in {"", "Allowance", "Charge"} else f"{what}: {extra.why}"


def _rate(tax: TaxOf) -> Text:
    return percent(tax) if tax.kind == "standard" else Own("0 %")


def _sums(made: Invoice) -> Sums:
    sums = made.totals
    rows: list[tuple[Text, Text]] = [("Without tax", money(sums.without_tax))]
    for one in sums.taxes:
        if one.kind == "standard" and one.percent:
            name = next((tax.name for tax in made.taxes if _is(tax, one.kind, one.percent)), "")
            of = f"{one.percent.normalize():f} % of {money(one.base).text}"
            name = name[:1].upper() + name[1:] or "Tax"
            rows.append((f"{name}, {of}", money(one.amount)))
    rows.append(("With tax", money(sums.with_tax)))
    if sums.prepaid:
        rows.append(("Paid before", money(-sums.prepaid)))
    if sums.rounding:
        rows.append(("Rounding", money(sums.rounding)))
    last = "To be given back" if made.kind == "credit" or sums.payable < 0 else "To pay"
    value = abs(sums.payable) if sums.payable < 0 else sums.payable
    rows.append((f"{last}, {made.currency}", money(value)))
    return Sums(tuple(rows))


def _is(tax: TaxOf, kind: str, rate: object) -> bool:
    return tax.kind == kind and tax.percent == rate


def _payment(made: Invoice) -> Iterator[Block]:
    if made.terms:
        yield Words(made.terms)
    pairs: list[tuple[Text, Text]] = []
    if made.kind != "credit":
        if made.seller.account.strip():
            pairs.append(("Pay to account", Own(made.seller.account)))
        if made.seller.pay_words.strip():
            pairs.append(("Or", Own(made.seller.pay_words)) if pairs else
                         ("How to pay", Own(made.seller.pay_words)))  # fmt: skip
    if pairs:
        yield Facts(tuple(pairs))


def _notes(made: Invoice, units: Units) -> Iterator[Block]:
    for one in made.notes:
        yield Words(_OF_DAY.sub(lambda found: day(found[0], units), one), "soft")
    for tax in made.taxes:
        if tax.kind in _NO_TAX and tax.told:
            reason = tax.reason.strip()
            yield Words(f"{_NO_TAX[tax.kind]}: {reason}" if reason else _NO_TAX[tax.kind], "soft")
    if not any(tax.told for tax in made.taxes):
        yield Words("No tax was told: none is reckoned here.", "soft")
    elif not all(tax.told for tax in made.taxes):
        yield Words("Where 0 % stands no tax was told: none is reckoned there.", "soft")


def _spoken(made: Invoice) -> Invoice:
    """Our own words on it in the language that is spoken; the user's own as they are."""
    return replace(
        made,
        lines=tuple(
            replace(one, what=told(one.what), words=told(one.words) if one.words else "")
            for one in made.lines
        ),
        terms=told(made.terms) if made.terms else "",
        notes=tuple(told(one) for one in made.notes),
    )
