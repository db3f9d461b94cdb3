"""Invoices of the parts of a job, through the published rules too."""

from decimal import Decimal

import pytest
from tests.job.office.billing.test_owed import ACCEPTED, CHANGE, WAITED
from tests.job.office.billing.worked import PRICED, SALES, ground
from tests.papers.invoice.rules import broken, misshapen

from farwall.facts.prices import Tax
from farwall.job.office.billing import invoice_asked, invoice_of, owed_of
from farwall.papers.invoice import invoice_xml

DEPOSIT = ("invoiced", "05-21", {"number": "17", "part": "deposit"})
PAID = ("paid", "06-02", {"amount": "3301.63", "part": "deposit"})
OVER = ("handed-over", "06-12", {})
FINAL = ("invoiced", "06-13", {"number": "22", "part": "final"})


def shown(*entries, **told):
    made = ground(*entries, **told)
    return invoice_of(made, PRICED, invoice_asked(made))


def test_a_deposit_invoice_asks_for_what_is_due_and_is_no_changed_by_what_came_later():
    made = ground(ACCEPTED, DEPOSIT, PAID, CHANGE)
    found = invoice_of(made, PRICED, invoice_asked(made))
    assert (found.kind, found.number, found.on) == ("deposit", "17", "2026-05-21")
    assert (
        found.totals.payable == Decimal("3301.63") == Decimal(owed_of(made, PRICED).parts[0].amount)
    )
    assert found.totals.prepaid == 0


def test_the_final_invoice_holds_everything_less_what_came_in():
    found = shown(ACCEPTED, DEPOSIT, PAID, CHANGE, WAITED, OVER, FINAL)
    assert found.totals.with_tax == Decimal("7182.55")
    assert found.totals.payable == Decimal("3880.92")
    assert [one.what for one in found.lines] == [
        "Staining and sealing of the concrete floor", "Change order 1: move the drain",
        "Standby: the plumber",
    ]  # fmt: skip
    assert [one.number for one in found.earlier] == ["17"]
    assert (found.done_on, found.due_on) == ("2026-06-12", "2026-06-13")


def test_after_hand_over_a_deposit_invoice_gives_way_to_a_draft_of_the_rest():
    found = shown(ACCEPTED, DEPOSIT, PAID, OVER)
    assert found.draft
    assert found.kind == "final"
    assert found.totals.payable == Decimal("3301.62")


def test_an_allowance_is_taken_off_before_tax():
    """6,100.00 less 100.00 is 6,000.00; 8.25 % is 495.00."""
    final = ("invoiced", "06-13", {"number": "22", "part": "final", "allowance": "100.00",
                                   "why": "late start"})  # fmt: skip
    found = shown(ACCEPTED, final)
    assert (found.totals.without_tax, found.totals.tax) == (Decimal(6000), Decimal("495.00"))


def test_a_credit_note_over_an_amount_with_tax_names_what_it_corrects():
    credit = ("invoiced", "06-20", {"number": "23", "part": "credit", "amount": "100.01",
                                    "corrects": "22", "why": "the closet was left"})  # fmt: skip
    found = shown(ACCEPTED, FINAL, credit)
    assert found.credit
    assert found.totals.payable == Decimal("100.01")
    assert found.earlier[0].on == "2026-06-13"


MIXED = (
    Tax("sales tax", 8.25, on="materials"), Tax("zero rate", 0, on="labour", kind="zero"),
)  # fmt: skip
CASES = [
    (DEPOSIT,), (DEPOSIT, PAID, OVER, FINAL),
    (("invoiced", "06-20", {"number": "9 & 10", "part": "credit", "amount": "77.77",
                            "corrects": "22"}),),
    (("change", "06-09", {"what": "nothing", "agreed_by": "R.", "amount": "-7000.00"}), FINAL),
    (PAID, PAID, PAID, FINAL),
]  # fmt: skip


@pytest.mark.parametrize("entries", CASES, ids=["deposit", "final", "credit", "below", "too-much"])
@pytest.mark.parametrize("taxes", [(SALES,), MIXED], ids=["one", "mixed"])
def test_what_a_job_writes_passes_the_published_rules(entries, taxes):
    xml = invoice_xml(shown(ACCEPTED, CHANGE, WAITED, *entries, taxes=taxes))
    assert misshapen(xml) == []
    assert broken(xml) == []
