"""What an invoice lacks to be one by EN 16931: each with what to enter. Nothing is invented.

Source: [en16931] rules named beside each line.
"""

from __future__ import annotations

from collections.abc import Iterator

from farwall.errors import Mistake
from farwall.papers.invoice.codes import COUNTRIES, CURRENCIES, tax_country
from farwall.papers.svg import plain
from farwall.price.invoice import Invoice

_REASONED = {"exempt", "reverse charge", "not subject"}
_PLAIN_NONE = "Tell the kind of tax: standard, zero, exempt, reverse charge or not subject."


def lacks_of(invoice: Invoice) -> tuple[Mistake, ...]:
    """All that must be entered before this is an invoice as XML; empty where nothing lacks."""
    return (*_document(invoice), *_parties(invoice), *_taxes(invoice))


def _document(invoice: Invoice) -> Iterator[Mistake]:
    if not _there(invoice.number):  # BR-02
        yield Mistake(
            "number", "this invoice has no number.",
            "Enter in the log that an invoice was written, with its number and what it is for.",
        )  # fmt: skip
    elif not invoice.on:  # BR-03
        yield Mistake("date", "this invoice has no day.", "Enter the day it was written.")
    if invoice.currency not in CURRENCIES:  # BR-CL-03
        said = f"{invoice.currency} is no currency of ISO 4217."
        yield Mistake("prices.currency", said, "Such as USD or EUR.")
    if not invoice.lines:  # BR-16
        yield Mistake("lines", "there is nothing to invoice.", "Enter what was agreed.")


def _parties(invoice: Invoice) -> Iterator[Mistake]:
    seller, buyer = invoice.seller, invoice.buyer
    if not _there(seller.name):  # BR-06
        yield Mistake("firm.name", "the firm has no name.", "Enter it on the page of terms.")
    if not _there(buyer.name):  # BR-07
        yield Mistake("customer.name", "nobody is told who pays.", "Enter the customer's name.")
    for who, country in (("firm", seller.address.country), ("customer", buyer.address.country)):
        if country not in COUNTRIES:  # BR-09, BR-11, BR-CL-14
            yield Mistake(
                f"{who}.address.country",
                f"the {who}'s country is missing, or is no code of ISO 3166-1.",
                "Write two letters, such as US.",
            )
    kinds = {one.kind for one in invoice.taxes}
    vat = _there(seller.tax_id) and tax_country(seller.tax_id) and "not subject" not in kinds
    if not vat and not _there(seller.company_id):  # BR-CO-26
        yield Mistake(
            "firm.company_id", "the firm has no number by which it is known.",
            "Enter its number in the register of firms, or a tax number that begins with its "
            "country.",
        )  # fmt: skip
    if kinds - {"not subject"} and not _there(seller.tax_id):  # BR-S-02, BR-Z-02, BR-E-02, BR-AE-02
        yield Mistake(
            "firm.tax_id", "the firm has no tax number.", "Enter it on the page of terms."
        )
    known = _there(buyer.tax_id) and tax_country(buyer.tax_id)
    if "reverse charge" in kinds and not known:  # BR-AE-02, BR-CO-09
        yield Mistake(
            "customer.tax_id", "reverse charge needs the customer's tax number.",
            "Enter it with the two letters of its country before it.",
        )  # fmt: skip


def _taxes(invoice: Invoice) -> Iterator[Mistake]:
    kinds = {one.kind for one in invoice.taxes}
    if any(not one.told for one in invoice.taxes):  # BR-CO-04
        none = not any(one.told for one in invoice.taxes)
        said = "no tax is told." if none else "no tax is told for a part of the lines."
        yield Mistake("prices.taxes", said, _PLAIN_NONE)
        return
    if "not subject" in kinds and len(kinds) > 1:  # BR-O-11
        said = "what is not subject to tax cannot stand beside what is."
        yield Mistake("prices.taxes", said, "Write two invoices, or take another kind.")
    for one in invoice.taxes:
        if one.kind in _REASONED and not _there(one.reason):  # BR-E-10, BR-AE-10, BR-O-10
            said = f"{one.kind} needs a reason."
            yield Mistake("prices.taxes", said, "Enter it as the law words it.")
        if one.kind == "standard" and one.percent <= 0:  # BR-S-05
            yield Mistake("prices.taxes", "standard with a rate of 0.", "Take the kind zero.")
        if one.kind != "standard" and one.percent:  # BR-Z-05, BR-E-05, BR-AE-05, BR-O-05
            said = f"{one.kind} with a rate of {one.percent:f} %."
            yield Mistake("prices.taxes", said, "Its rate is 0.")


def _there(text: str) -> bool:
    return bool(plain(text).strip())
