"""Laws of what is due, and cases by hand."""

from datetime import date, timedelta
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from farwall.price.due import PARTS, Payment, dues, parts_due
from farwall.price.money import added

CENTS = st.integers(0, 10**8).map(lambda n: Decimal(n) / 100)
DAY = date(2026, 6, 8)
PAYMENTS = st.lists(
    st.builds(
        Payment, st.integers(-9, 60).map(lambda n: DAY + timedelta(n)), CENTS,
        st.sampled_from(["", *PARTS]),
    ),
    max_size=6,
)  # fmt: skip


@given(CENTS, st.lists(CENTS, max_size=2))
def test_never_more_in_sum_than_the_whole(whole, before):
    parts = parts_due(whole, before)
    assert added(parts) == whole
    assert all(one >= 0 for one in parts)


@given(CENTS, CENTS, CENTS, PAYMENTS)
def test_no_money_is_lost(deposit, progress, whole, payments):
    found = dues(parts_due(whole, [deposit, progress]), {}, payments)
    assert added(one.paid for one in found) == added(one.amount for one in payments)
    assert all(0 <= one.paid <= one.amount for one in found[:-1])


def test_a_job_by_hand():
    """1,000.00: 500.00 paid four days late, 100.00 of 250.00 come, the rest not due yet."""
    days = dict(zip(PARTS, (DAY, DAY + timedelta(5), DAY + timedelta(9)), strict=True))
    amounts = parts_due(Decimal(1000), [Decimal(500), Decimal(250)])
    paid = [Payment(DAY + timedelta(4), Decimal(500)), Payment(DAY + timedelta(6), Decimal(100))]
    first, second, last = dues(amounts, days, paid)
    on = DAY + timedelta(8)
    assert (first.open, first.paid_on, first.late_days(on)) == (0, DAY + timedelta(4), 4)
    assert (second.open, second.late_days(on)) == (Decimal(150), 3)
    assert (last.open, last.late_days(on)) == (Decimal(250), 0)


def test_money_for_a_part_goes_to_it_first_and_what_is_over_to_the_earliest():
    amounts = parts_due(Decimal(1000), [Decimal(500), Decimal(250)])
    found = dues(amounts, {}, [Payment(DAY, Decimal(300), "final")])
    assert [one.paid for one in found] == [50, 0, 250]


def test_too_much_stays_with_the_last_and_is_told_as_less_than_nothing():
    amounts = (Decimal(50), Decimal(0), Decimal(50))
    found = dues(amounts, {}, [Payment(DAY, Decimal(120))])
    assert [one.open for one in found] == [0, 0, -20]


def test_a_part_of_nothing_is_never_late():
    found = dues((Decimal(0), Decimal(0), Decimal(9)), {"deposit": DAY}, [])
    assert found[0].late_days(DAY + timedelta(9)) == 0
