"""What is agreed, changed, due and paid, worked by hand."""

from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.job.office.billing.worked import PRICED, SALES, currency, ground

from farwall.facts.prices import Rates, Tax, Terms
from farwall.job.office.billing import owed_of, owed_said
from farwall.job.office.billing.taxing import taxing_of
from farwall.job.office.billing.told import told_of
from farwall.job.office.billing.whole import whole_of
from farwall.price.invoice import UNTOLD
from farwall.price.money import added

ACCEPTED = ("accepted", "05-20", {"amount": "6100.00", "agreed_by": "R. Invented"})
CHANGE = ("change", "06-09", {"what": "move the drain", "agreed_by": "R. Invented", "hours": 6.5,
                              "materials": "40.10", "signed": "0" * 64})  # fmt: skip
WAITED = ("standby", "06-09", {"hours": 1.5, "why": "the plumber"})


def test_a_change_order_by_the_contract_rates_by_hand():
    """6.5 h at 50 is 325.00; 40.10 and half of it is 60.15; 385.15 in all."""
    found = owed_of(ground(ACCEPTED, CHANGE), PRICED)
    change = found.changes[0]
    assert (change.amount, change.number, change.signed) == ("385.15", 1, True)
    assert change.words == "6.5 h at 50.00 an hour, materials 40.10 and 50 % on them"
    assert found.changed == "385.15"
    assert {one.name: (one.rank, one.source) for one in found.figures}["change_per_h"] == (
        "common practice", "finishers-pages",
    )  # fmt: skip


def test_the_whole_job_by_hand():
    """6,100.00 + 385.15 + 1.5 h of standby at 100.00 is 6,635.15; 8.25 % of it 547.399875."""
    found = owed_of(ground(ACCEPTED, CHANGE, WAITED), PRICED)
    assert (found.without_tax, found.tax, found.with_tax) == ("6635.15", "547.40", "7182.55")
    assert found.standby == "150.00"


def test_parts_by_hand():
    """The deposit is half of 6,100.00 with tax: 3,050.00 + 251.63 (251.625); the rest 3,880.92."""
    paid = ("paid", "06-09", {"amount": "3301.63", "part": "deposit"})
    found = owed_of(ground(ACCEPTED, CHANGE, WAITED, paid, ("handed-over", "06-12", {})), PRICED)
    deposit, rest = found.parts
    assert (deposit.amount, deposit.due_on, deposit.open) == ("3301.63", "2026-06-05", "0.00")
    assert (deposit.late_days, deposit.paid_on, deposit.planned) == (4, "2026-06-09", True)
    assert (rest.amount, rest.due_on, rest.open) == ("3880.92", "2026-06-12", "3880.92")
    assert (rest.late_days, rest.planned) == (8, False)
    assert found.open == "3880.92"


def test_nothing_is_late_of_a_price_that_nobody_agreed_to():
    """Nor is what was never asked for; once a deposit was invoiced, it is late alone."""
    late = [one.late_days for one in owed_of(ground(ACCEPTED), PRICED).parts]
    assert all(late)
    assert [one.late_days for one in owed_of(ground(), PRICED).parts] == [0, 0]
    asked = ("invoiced", "06-05", {"number": "2026-17", "part": "deposit"})
    found = owed_of(ground(asked), PRICED)
    assert [bool(one.late_days) for one in found.parts] == [True, False]


def test_own_rates_and_terms_go_before_the_usual():
    made = ground(
        ACCEPTED, CHANGE, WAITED,
        rates=Rates(change_per_h="60", change_material_percent=0, standby_per_h="90"),
        terms=Terms(deposit_percent=20, progress_percent=30, pay_days=14),
    )  # fmt: skip
    found = owed_of(made, PRICED)
    assert (found.changed, found.standby) == ("430.10", "135.00")
    assert [one.part for one in found.parts] == ["deposit", "progress", "final"]
    assert found.parts[1].due_on == "2026-06-23"
    assert all(
        one.rank == "measured here" for one in found.figures if one.name != "area_tolerance_percent"
    )


def test_in_another_currency_no_dollars_are_taken():
    found = owed_of(currency(ground(ACCEPTED, CHANGE, WAITED), "EUR"), PRICED)
    assert found.changes[0].amount == "60.15"
    assert "Change order 1 has no price: enter one." in found.warnings
    assert "Waiting has no price: enter a rate of standby." in found.warnings


def test_an_agreed_amount_goes_before_the_rates_and_may_be_less_work():
    less = ("change", "06-09", {"what": "leave the closet", "agreed_by": "R.", "amount": "-200.00",
                                "hours": 3})  # fmt: skip
    assert owed_of(ground(ACCEPTED, less), PRICED).without_tax == "5900.00"


def test_what_was_struck_is_left_out():
    struck = ("struck", "06-10", {"entry": "id-2"})
    assert owed_of(ground(ACCEPTED, CHANGE, struck), PRICED).without_tax == "6100.00"


def test_nobody_agreed_says_so_and_no_tax_says_so():
    found = owed_of(ground(taxes=()), PRICED)
    assert found.agreed == "6100.00"
    assert found.warnings == (
        (
            "Nobody has agreed to a price yet: what is asked for it stands here. Enter in the "
            "log that the price was agreed."
        ),
        "No tax was told: none is reckoned.",
    )
    assert owed_of(replace(ground(), story=None), PRICED).agreed_by == ""


@pytest.mark.parametrize(("area_m2", "off"), [(1.0, True), (0.97, False), (1.04, False)])
def test_the_price_is_adjusted_by_area_only_beyond_the_tolerance(area_m2, off):
    net = ground().measured.net_m2
    agreed = net / 1.1 if off else net * area_m2
    told = ("accepted", "05-20", {"amount": "1000.00", "agreed_by": "R.", "area_m2": agreed})
    found = owed_of(ground(told), PRICED)
    assert found.without_tax == ("1100.00" if off else "1000.00")


def test_tax_on_materials_alone_splits_the_price_by_cost():
    """1,290 of 6,100 are materials: 8.25 % of 1,290.00 is 106.425, half away from zero 106.43."""
    taxes = (Tax("sales tax", 8.25, on="materials"),
             Tax(on="labour", kind="not subject", reason="labour"))  # fmt: skip
    found = owed_of(ground(ACCEPTED, taxes=taxes), PRICED)
    assert (found.without_tax, found.tax) == ("6100.00", "106.43")


def test_state_and_county_rates_are_one_rate_of_the_line():
    taxing = taxing_of(ground(taxes=(SALES, Tax("county", 1.25))).job)
    assert taxing.alike
    assert (taxing.labour.percent, taxing.labour.name) == (Decimal("9.5"), "sales tax + county")


def test_kinds_that_cannot_meet_are_told():
    taxing = taxing_of(ground(taxes=(SALES, Tax(kind="exempt", reason="x"))).job)
    assert taxing.labour.kind == "standard"
    assert len(taxing.warnings) == 2
    only = taxing_of(ground(taxes=(Tax("sales tax", 8, on="materials"),)).job)
    assert only.labour == UNTOLD
    assert only.warnings == ("No tax was told for labour: none is reckoned there.",)


def test_the_terminal_tells_parts_and_what_is_not_signed():
    told = owed_said(
        owed_of(
            ground(ACCEPTED, ("change", "06-09", {"what": "x", "agreed_by": "y", "amount": "1"})),
            PRICED,
        )
    )
    assert any("no signed paper" in one for one in told)
    assert any(one.startswith("deposit: 3,301.63, due planned for 2026-06-05") for one in told)


AMOUNTS = st.integers(-(10**6), 10**7).map(lambda n: f"{n / 100:.2f}")


@given(AMOUNTS, st.lists(AMOUNTS, max_size=4), st.lists(AMOUNTS, max_size=4),
       st.integers(0, 60), st.integers(0, 40))  # fmt: skip
def test_whatever_is_entered_the_parts_add_up_to_the_whole(agreed, changes, paid, first, second):
    entries = [("accepted", "05-20", {"amount": agreed, "agreed_by": "R."})]
    entries += [
        ("change", "06-09", {"what": "x", "agreed_by": "y", "amount": one}) for one in changes
    ]
    entries += [("paid", "06-10", {"amount": one}) for one in paid]
    made = ground(*entries, terms=Terms(deposit_percent=first, progress_percent=second))
    found = owed_of(made, PRICED)
    whole = whole_of(made, PRICED, told_of(made))
    assert Decimal(found.with_tax) - Decimal(found.paid) == Decimal(found.open)
    assert added(Decimal(one.open) for one in found.parts) == Decimal(found.open)
    assert Decimal(found.without_tax) == added(one.net for one in whole.lines)
