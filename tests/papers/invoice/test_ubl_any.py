"""Whatever names and amounts there are: one document, well formed, its sums the invoice's own."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from xml.etree import ElementTree

from hypothesis import given, settings
from hypothesis import strategies as st
from tests.papers.invoice.invented import EXEMPT, LOWER, STANDARD, ZERO, invoice
from tests.papers.invoice.rules import broken, misshapen

from farwall.papers.invoice import invoice_xml, lacks_of
from farwall.price.invoice import Extra, Line
from farwall.price.money import rounded, written

CBC = "{urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2}"
CENTS = st.integers(-(10**8), 10**8).map(lambda n: Decimal(n) / 100)
ABOVE = st.integers(1, 10**6).map(lambda n: Decimal(n) / 100)
TAXES = st.sampled_from([STANDARD, LOWER, ZERO, EXEMPT])
NAMES = st.text(min_size=1, max_size=60)
LINES = st.lists(
    st.builds(Line, NAMES.filter(str.strip), CENTS, TAXES, words=NAMES), min_size=1, max_size=5
)
EXTRAS = st.lists(st.builds(Extra, st.booleans(), ABOVE, st.just("agreed"), TAXES), max_size=3)
MADE = st.builds(
    lambda lines, extras, name, paid: replace(
        invoice(0), kind="final", lines=tuple(lines), extras=tuple(extras), prepaid=paid,
        rounding=Decimal(0), buyer=replace(invoice(0).buyer, name=name),
    ),
    LINES, EXTRAS, NAMES, ABOVE,
)  # fmt: skip


@given(MADE)
def test_it_is_refused_or_well_formed_with_the_sums_of_the_invoice(made):
    if lacks_of(made):
        return
    root = ElementTree.fromstring(invoice_xml(made))
    sign = -1 if made.totals.with_tax < 0 else 1
    for tag, value in (
        ("TaxInclusiveAmount", made.totals.with_tax), ("PayableAmount", made.totals.payable),
        ("LineExtensionAmount", made.totals.sum_of_lines),
    ):  # fmt: skip
        total = next(one for one in root.iter() if one.tag.endswith("LegalMonetaryTotal"))
        assert total.find(f"{CBC}{tag}").text == written(sign * value)
    assert rounded(made.totals.tax) == made.totals.tax


@settings(max_examples=40)
@given(MADE)
def test_some_of_them_through_the_published_rules(made):
    readable = all("".join(filter(str.isprintable, one.what)).strip() for one in made.lines)
    if lacks_of(made) or not readable:
        return
    xml = invoice_xml(made)
    assert misshapen(xml) == []
    assert broken(xml) == []
