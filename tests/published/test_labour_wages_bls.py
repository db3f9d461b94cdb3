"""Published wages, as copied from the statistics: the row that is shown, and its ends."""

from decimal import Decimal

import pytest
from tests.published.tables import table

from farwall.price.wages import FINISHERS_US, loaded_over_wage

ROWS = {row["reference_month"]: row for row in table("labour_wages_bls") if row["area"] == "US"}


def test_bls_oews_47_2051_may_2019_national():
    """Printed figures, no tolerance; the newest national row of the table."""
    row = ROWS["2019-05"]
    assert max(ROWS) == "2019-05"
    shown = FINISHERS_US
    assert (shown.low, shown.median, shown.high) == tuple(
        Decimal(row[key]) for key in ("p10_hourly_USD", "median_hourly_USD", "p90_hourly_USD")
    )
    assert shown.month == "May 2019"


def test_an_hour_over_the_wage_by_hand():
    """55 / 21.54 = 2.553."""
    assert float(loaded_over_wage(Decimal(55))) == pytest.approx(2.553, abs=5e-4)
