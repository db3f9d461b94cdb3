"""An invoice or a credit note as UBL 2.1 XML of EN 16931. Source: [en16931], [ubl-21]."""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal

from farwall.errors import Refused
from farwall.papers.invoice.codes import (
    KINDS,
    OTHERWISE,
    SEPA_TRANSFER,
    TAXES,
    TRANSFER,
    UNITS,
)
from farwall.papers.invoice.lacks import lacks_of
from farwall.papers.invoice.parties import put_address, put_buyer, put_seller
from farwall.papers.invoice.xml import Element, document, figure
from farwall.price.invoice import Invoice, Line, TaxOf, as_note

SPECIFICATION = "urn:cen.eu:en16931:2017"
"""BT-24: the standard itself, no profile of a country on it."""
_IBAN = re.compile(r"[A-Z]{2}\d{2}[A-Z0-9]{11,30}")
_EXEMPT = {"exempt", "reverse charge", "not subject"}


def invoice_xml(invoice: Invoice) -> bytes:
    """The XML, the same bytes for the same invoice.

    An invoice whose sum is below zero is written as a credit note, signs turned. Raises Refused
    with all that the standard demands and the facts lack.
    """
    if lacks := lacks_of(invoice):
        raise Refused(*lacks, about="This is no invoice of EN 16931 yet:")
    if invoice.credit and invoice.kind != "credit":
        invoice = as_note(invoice)
    kind = "CreditNote" if invoice.kind == "credit" else "Invoice"
    root = Element(kind)
    _head(root, invoice)
    subject = all(one.kind != "not subject" for one in invoice.taxes)
    put_seller(root, invoice.seller, tax=subject)
    put_buyer(root, invoice.buyer, tax=subject)
    _delivery(root, invoice)
    _payment(root, invoice)
    _extras(root, invoice)
    _sums(root, invoice)
    for n, line in enumerate(invoice.lines, start=1):
        _line(root, n, line, invoice)
    return document(root, kind)


def _head(root: Element, invoice: Invoice) -> None:
    credit = invoice.kind == "credit"
    root.put("CustomizationID", SPECIFICATION).put("ID", invoice.number)
    root.put("IssueDate", invoice.on)
    if not credit:
        root.put("DueDate", invoice.due_on)
    root.put("CreditNoteTypeCode" if credit else "InvoiceTypeCode", KINDS[invoice.kind])
    for note in invoice.notes:
        root.put("Note", note)
    root.put("DocumentCurrencyCode", invoice.currency)
    root.put("BuyerReference", invoice.buyer.reference)
    for one in invoice.earlier:
        before = root.group("BillingReference").group("InvoiceDocumentReference")
        before.put("ID", one.number).put("IssueDate", one.on)


def _delivery(root: Element, invoice: Invoice) -> None:
    delivery = root.group("Delivery").put("ActualDeliveryDate", invoice.done_on)
    if invoice.site.country:  # BR-57: a place has its country
        put_address(delivery.group("DeliveryLocation").group("Address"), invoice.site)


def _payment(root: Element, invoice: Invoice) -> None:
    account = invoice.seller.account.strip()
    bare = "".join(account.split())
    iban = bool(_IBAN.fullmatch(bare))
    means = root.group("PaymentMeans")
    if account:
        means.put("PaymentMeansCode", SEPA_TRANSFER if iban and invoice.currency == "EUR"
                  else TRANSFER)  # fmt: skip
    elif words := invoice.seller.pay_words.strip():
        means.put("PaymentMeansCode", OTHERWISE, name=words)
    if account or invoice.seller.pay_words.strip():
        if invoice.kind == "credit":
            means.put("PaymentDueDate", invoice.due_on)
        means.put("PaymentID", invoice.number)
    if account:
        means.group("PayeeFinancialAccount").put("ID", bare if iban else account)
    root.group("PaymentTerms").put("Note", invoice.terms)


def _extras(root: Element, invoice: Invoice) -> None:
    for one in invoice.extras:
        extra = root.group("AllowanceCharge")
        extra.put("ChargeIndicator", "true" if one.charge else "false")
        extra.put("AllowanceChargeReason", one.why)
        extra.amount("Amount", one.amount, invoice.currency)
        _category(extra.group, "TaxCategory", one.tax)


def _sums(root: Element, invoice: Invoice) -> None:
    sums, currency = invoice.totals, invoice.currency
    reasons = {one: _reason(invoice, one.kind, one.percent) for one in sums.taxes}
    taxes = root.group("TaxTotal").amount("TaxAmount", sums.tax, currency)
    for one in sums.taxes:
        part = taxes.group("TaxSubtotal")
        part.amount("TaxableAmount", one.base, currency).amount("TaxAmount", one.amount, currency)
        _category(part.group, "TaxCategory", TaxOf(one.kind, one.percent), reasons[one])
    total = root.group("LegalMonetaryTotal")
    total.amount("LineExtensionAmount", sums.sum_of_lines, currency)
    total.amount("TaxExclusiveAmount", sums.without_tax, currency)
    total.amount("TaxInclusiveAmount", sums.with_tax, currency)
    if any(not one.charge for one in invoice.extras):
        total.amount("AllowanceTotalAmount", sums.allowances, currency)
    if any(one.charge for one in invoice.extras):
        total.amount("ChargeTotalAmount", sums.charges, currency)
    if sums.prepaid:
        total.amount("PrepaidAmount", sums.prepaid, currency)
    if sums.rounding:
        total.amount("PayableRoundingAmount", sums.rounding, currency)
    total.amount("PayableAmount", sums.payable, currency)


def _line(root: Element, n: int, line: Line, invoice: Invoice) -> None:
    credit, currency, code = invoice.kind == "credit", invoice.currency, UNITS[line.unit]
    quantity = line.quantity
    if line.price is None and (line.net < 0) != (quantity < 0):
        quantity = -quantity  # BR-27: the price is never below zero, so the quantity is
    inside = root.group("CreditNoteLine" if credit else "InvoiceLine").put("ID", str(n))
    name = "CreditedQuantity" if credit else "InvoicedQuantity"
    inside.put(name, figure(quantity), unitCode=code)
    inside.amount("LineExtensionAmount", line.net, currency)
    item = inside.group("Item").put("Description", line.words).put("Name", line.what)
    _category(item.group, "ClassifiedTaxCategory", line.tax)
    price = inside.group("Price")
    if line.price is None:
        price.amount("PriceAmount", abs(line.net), currency)
        price.put("BaseQuantity", figure(abs(quantity)), unitCode=code)
    else:
        price.put("PriceAmount", figure(line.price), currencyID=currency)


def _category(group: Callable[[str], Element], name: str, tax: TaxOf, reason: str = "") -> None:
    inside = group(name).put("ID", TAXES[tax.kind])
    if tax.kind != "not subject":  # BR-O-05
        inside.put("Percent", figure(tax.percent))
    if reason and tax.kind in _EXEMPT:
        inside.put("TaxExemptionReason", reason)
    inside.group("TaxScheme").put("ID", "VAT")


def _reason(invoice: Invoice, kind: str, percent: Decimal) -> str:
    told = [
        one.reason for one in invoice.taxes
        if one.kind == kind and one.percent == percent and one.reason.strip()
    ]  # fmt: skip
    return "; ".join(dict.fromkeys(told))
