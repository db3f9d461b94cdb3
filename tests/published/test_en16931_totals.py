"""Totals of the ten example invoices of the EN 16931 artefacts, and its rules of rounding.

No tolerance: cents are counted. Sources in the rows; examples under the EUPL 1.2.
"""

from decimal import Decimal

import pytest
from tests.job.sums.sums import reckon
from tests.published.tables import table

from farwall.price.money import rounded, written
from farwall.price.totals import tax_groups, totals

ROWS = table("invoice_totals_en16931")
RULES = {row["id"]: row for row in table("money_rounding_rules")}
NAMES = [row["example_file"] for row in ROWS]


def two(text):
    return written(Decimal(text or "0"))


def asked(row):
    bases, percents = row["tax_bases"].split("|"), row["tax_percents"].split("|")
    taxes = [f"{base}@{rate}" for base, rate in zip(bases, percents, strict=True)]
    told = {"lines": row["line_net_amounts"].split("|"), "tax": taxes}
    told |= {key: row[key].split("|") for key in ("allowances", "charges") if row[key]}
    told |= {"prepaid": row["prepaid"]} if row["prepaid"] else {}
    return told | ({"rounding": row["payable_rounding"]} if row["payable_rounding"] else {})


def test_all_ten_examples_are_here():
    assert len(ROWS) == 10


@pytest.mark.parametrize("row", ROWS, ids=NAMES)
@pytest.mark.parametrize("joined", [False, True], ids=["arrays", "commas"])
def test_en16931_example_totals(row, joined):
    told = asked(row)
    if joined:
        told = {key: ",".join(v) if isinstance(v, list) else v for key, v in told.items()}
    found = reckon("sum", **told)
    for ours, theirs in (
        ("sum_of_lines", "sum_of_lines"), ("total_without_tax", "total_without_tax"),
        ("total_with_tax", "total_with_tax"), ("payable", "payable"),
    ):  # fmt: skip
        assert found[ours] == two(row[theirs]), ours
    assert found["tax_amounts"] == [two(one) for one in row["tax_amounts"].split("|")]
    assert found["warnings"] == []


def test_en16931_rules_r1_r2_lines_are_rounded_before_they_are_added():
    """Three lines of 0.005: 0.03 rounded first, 0.02 rounded last."""
    assert RULES["R2"]["rule"].startswith(
        "sum of lines (BT-106) equals the sum of the line amounts"
    )
    found = reckon("sum", lines=["0.005", "0.005", "0.005"])
    assert found["sum_of_lines"] == "0.03"
    assert len(found["warnings"]) == 1


def test_en16931_rule_r3_tax_by_category_once():
    """Two lines of 0.10 at 25 %: 0.05 of the whole, 0.06 of each by itself."""
    groups = tax_groups([("standard", Decimal(25), Decimal("0.10"))] * 2)
    assert [one.amount for one in groups] == [Decimal("0.05")]


def test_en16931_rule_r4_half_goes_away_from_zero_below_nothing_too():
    assert "-1710.50 x 19 % = -324.995" in RULES["R4"]["rule"]
    assert reckon("sum", lines=["-1710.50"], tax=["-1710.50@19"])["tax_amounts"] == ["-325.00"]


def test_en16931_rule_r5_payable_is_exact():
    found = totals(
        [Decimal("100.10")], taxes=tax_groups([("standard", Decimal(7), Decimal("100.10"))]),
        prepaid=Decimal("50.05"), rounding=Decimal("-0.06"),
    )  # fmt: skip
    assert found.tax == Decimal("7.01")
    assert found.payable == Decimal("57.00")


def test_en16931_rule_r6_half_is_not_taken_to_even():
    assert rounded(Decimal("0.125")) == Decimal("0.13")
    assert rounded(Decimal("0.135")) == Decimal("0.14")
