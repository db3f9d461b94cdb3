"""Figures that others published, beside ours, in the units of the job. Hand-worked."""

from decimal import Decimal

import pytest

from farwall.job.office.priced.sanity import _per_area, floor_words


@pytest.mark.parametrize(
    ("us", "said"),
    [
        (True, "9.64 USD a ft², above the 4 to 7 that"),
        (False, "104 USD a m², above the 43 to 75 that"),
    ],
)
def test_a_price_by_area_is_told_beside_the_pages_of_finishers(us, said):
    """By hand: 3,730 USD on 387 ft² are 9.64 a ft², by 0.0929 m² 103.7 a m²; 4 and 7 are 43, 75."""
    found = _per_area(Decimal(3730), 387.0, us=us)
    assert found.said.startswith(said)
    assert found.inside is False


def test_a_floor_is_told_in_the_units_of_the_job():
    assert floor_words(36.0, us=False) == "36 m²"
    assert floor_words(36.0, us=True) == "388 ft²"
