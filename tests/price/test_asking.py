"""What is asked: shares added, the least job, the step, and a price parted by floor to the cent."""

from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from farwall.price.asking import Shares, area_shares, asked, per_area

SHARES = Shares(Decimal(20), Decimal(15), step=Decimal(10))


def test_shares_are_of_cost_and_added_by_hand():
    found = asked(Decimal(1000), Decimal(60), SHARES, added=Decimal(90))
    assert (found.overhead, found.profit, found.price) == (Decimal(200), Decimal(150), 1500)
    assert not found.least_job


def test_the_least_job_wins_over_a_small_sum_and_says_so():
    least = Shares(Decimal(20), Decimal(15), least=Decimal(1800), step=Decimal(10))
    found = asked(Decimal(1000), Decimal(0), least)
    assert found.price == 1800
    assert found.least_job


def test_nothing_is_asked_for_no_floor():
    assert per_area(Decimal(100), Decimal(0)) == 0


@given(
    st.decimals(0, 10**6, places=2, allow_nan=False),
    st.lists(st.floats(0.01, 1e4), min_size=1, max_size=30),
)
def test_a_price_parted_by_floor_adds_up_to_the_cent(price, areas):
    parts = area_shares(price, tuple(areas))
    assert sum(parts) == price
    exact = [float(price) * one / sum(areas) for one in areas]
    assert all(abs(float(p) - e) < 0.02 for p, e in zip(parts, exact, strict=True))
