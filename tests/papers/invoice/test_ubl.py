"""Our XML through the published rules of EN 16931 and the UBL schemas."""

import re
from dataclasses import replace
from decimal import Decimal

import pytest
from tests.papers.invoice.invented import (
    COUNT,
    EXEMPT,
    OUTSIDE,
    REVERSE,
    STANDARD,
    ZERO,
    every,
    invoice,
)  # fmt: skip
from tests.papers.invoice.rules import broken, home, misshapen

from farwall.errors import Refused
from farwall.facts.firm import Address, Firm, Party
from farwall.papers.invoice import invoice_xml, lacks_of
from farwall.papers.invoice.codes import COUNTRIES, CURRENCIES, KINDS, TAXES, UNITS
from farwall.phrasebook import in_spanish
from farwall.price.invoice import UNTOLD, Invoice, Line, TaxOf


def test_the_fifty_hold_every_kind():
    made = every()
    assert len(made) == COUNT == 50
    assert {tax.kind for one in made for tax in one.taxes} == set(TAXES)
    assert {one.kind for one in made} == set(KINDS)
    assert any(one.totals.with_tax < 0 and one.kind != "credit" for one in made)
    assert any(one.prepaid for one in made)
    assert any(one.extras for one in made)


@pytest.mark.parametrize("n", range(COUNT))
def test_no_fatal_failure_of_the_published_rules(n):
    xml = invoice_xml(invoice(n))
    assert misshapen(xml) == []
    assert broken(xml) == []


TAMPERED = {
    "LineExtensionAmount": "BR-CO-10",
    "TaxExclusiveAmount": "BR-CO-13",
    "TaxInclusiveAmount": "BR-CO-15",
    "PayableAmount": "BR-CO-16",
    "TaxAmount": "BR-CO-14",
    "PrepaidAmount": "BR-CO-16",
}


@pytest.mark.parametrize("tag", TAMPERED)
def test_a_total_that_is_a_cent_off_breaks_a_rule(tag):
    """So that the test above can fail."""
    xml = invoice_xml(replace(invoice(0), prepaid=Decimal("100.00"))).decode()
    total = xml[xml.index("<cac:LegalMonetaryTotal>") :] if tag != "TaxAmount" else xml
    found = re.search(rf"<cbc:{tag} [^>]*>([^<]*)<", total)
    wrong = found[0].replace(f">{found[1]}<", f">{Decimal(found[1]) + Decimal('0.01')}<")
    failed = broken(xml.replace(found[0], wrong, 1 if tag == "TaxAmount" else -1).encode())
    assert any(one.startswith(TAMPERED[tag]) for one in failed), failed


@pytest.mark.parametrize("tag", ["EndpointID", "CityName", "PriceAmount"])
def test_a_document_out_of_order_breaks_the_schema(tag):
    xml = (
        invoice_xml(invoice(0)).decode().replace("<cbc:ID>", f"<cbc:{tag}>x</cbc:{tag}><cbc:ID>", 1)
    )
    assert misshapen(xml.encode())


def test_the_same_bytes_from_the_same_invoice():
    assert invoice_xml(invoice(7)) == invoice_xml(invoice(7))


def test_a_sum_below_nothing_is_a_credit_note_of_the_same_amount():
    one = replace(
        invoice(0), kind="final", prepaid=Decimal(0), rounding=Decimal(0), extras=(),
        lines=(Line("work left out", Decimal("-200.00"), STANDARD),),
    )  # fmt: skip
    xml = invoice_xml(one).decode()
    assert xml.startswith('<?xml version="1.0" encoding="UTF-8"?>\n<CreditNote ')
    assert '<cbc:PayableAmount currencyID="USD">216.50</cbc:PayableAmount>' in xml
    assert broken(xml.encode()) == misshapen(xml.encode()) == []


def test_what_lacks_is_told_all_at_once_and_nothing_is_invented():
    bare = Invoice("final", Firm(), Party(), "USD", (Line("floor", Decimal(1), UNTOLD),))
    with pytest.raises(Refused) as refusal:
        invoice_xml(bare)
    assert {one.where for one in refusal.value.mistakes} == {
        "number", "firm.name", "customer.name", "firm.address.country", "customer.address.country",
        "firm.company_id", "prices.taxes",
    }  # fmt: skip
    assert all(one.remedy for one in refusal.value.mistakes)


def _taxed(*taxes, **changed):
    lines = tuple(Line("floor", Decimal(1), one) for one in taxes)
    return replace(invoice(0), lines=lines, extras=(), **changed)


@pytest.mark.parametrize(
    ("case", "where", "rule"),
    [
        (_taxed(TaxOf("standard")), "prices.taxes", "BR-S-05"),
        (_taxed(TaxOf("exempt")), "prices.taxes", "BR-E-10"),
        (_taxed(TaxOf("zero", Decimal(5))), "prices.taxes", "BR-Z-05"),
        (_taxed(OUTSIDE, ZERO), "prices.taxes", "BR-O-11"),
        (_taxed(REVERSE, buyer=Party("B", Address(country="FR"))), "customer.tax_id", "BR-AE-02"),
        (_taxed(ZERO, seller=Firm("A", Address(country="US"), company_id="1")), "firm.tax_id",
         "BR-Z-02"),
        (_taxed(EXEMPT, seller=Firm("A", Address(country="US"), tax_id="12-3")), "firm.company_id",
         "BR-CO-26"),
        (_taxed(ZERO, currency="XYZ"), "prices.currency", "BR-CL-03"),
        (_taxed(ZERO, number=" "), "number", "BR-02"),
        (_taxed(ZERO, buyer=Party("B", Address(country="QQ"))), "customer.address.country",
         "BR-CL-14"),
    ],
)  # fmt: skip
def test_what_is_refused_would_have_broken_a_rule(case, where, rule, monkeypatch):
    assert where in {one.where for one in lacks_of(case)}
    monkeypatch.setattr("farwall.papers.invoice.ubl.lacks_of", lambda _: ())
    assert any(one.startswith(rule) for one in broken(invoice_xml(case)))


@pytest.mark.parametrize(
    "case",
    [
        Invoice("final", Firm(), Party(), "XYZ", ()),
        replace(invoice(0), on=""),
        _taxed(UNTOLD), _taxed(OUTSIDE, ZERO), _taxed(TaxOf("standard")),
        _taxed(REVERSE, buyer=Party("B", Address(country="FR"))),
        *(_taxed(TaxOf(kind, Decimal(5)), seller=Firm()) for kind in
          ("zero", "exempt", "reverse charge", "not subject")),
    ],
)  # fmt: skip
def test_whatever_lacks_is_said_in_spanish_too(case):
    assert lacks_of(case)
    for one in lacks_of(case):
        assert in_spanish(one.what[0].upper() + one.what[1:]), one.what
        assert in_spanish(one.remedy), one.remedy


def test_codes_are_those_of_the_published_lists():
    rules = (home() / "EN16931-UBL-validation.xslt").read_text()

    def listed(rule, first):
        end = rules.index(f'id">{rule}<')
        return set(rules[rules.rindex(f"contains(' {first} ", 0, end) :].split("'")[1].split())

    assert listed("BR-CL-14", "1A") - {"1A"} == COUNTRIES
    assert listed("BR-CL-03", "AED") == CURRENCIES
    assert set(UNITS.values()) <= listed("BR-CL-23", "10")
    assert set(TAXES.values()) <= {"S", "Z", "E", "AE", "O"}
