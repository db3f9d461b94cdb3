"""Unit factors against NIST Handbook 44 appendix C and SP 811 appendix B."""

import pytest
from tests.published.tables import table

from farwall.job.sums.arguments import given
from farwall.job.sums.registry import find

ROWS = table("unit_factors")


def convert(value, source, target):
    asked = find("convert")
    return asked.reckon(given(asked, {"value": value, "from": source, "to": target}))


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['from']}-{row['to']}")
def test_nist_unit_factors(row):
    """Exact factors to the last bit of a float; the rounded ones to their printed figures:
    133.322 has six, 4.88242763638 has twelve."""
    found = convert(1, row["from"], row["to"])
    printed = float(row["factor"])
    if row["exact"] == "yes":
        assert found["value"] == printed
        assert found["exact_factor"] is True
    else:
        figures = len(row["factor"].replace(".", ""))
        assert found["value"] == pytest.approx(printed, rel=10.0 ** (1 - figures))


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['to']}-{row['from']}")
def test_nist_unit_factors_backwards(row):
    """The inverse of a factor, to the figures it is printed with."""
    there = convert(1, row["from"], row["to"])["value"]
    back = convert(there, row["to"], row["from"])["value"]
    assert back == pytest.approx(1, rel=1e-15)
