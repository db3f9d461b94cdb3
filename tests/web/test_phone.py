"""A phone's queue: nothing leaves it unacknowledged, and a month of it can be offered again."""

from __future__ import annotations

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from farwall.facts.log import Entry
from farwall.web.phone import (
    Phone,
    answered,
    forgetting,
    lost,
    tapped,
    to_ask,
    to_offer,
    told,
)

DAY = "2026-06-08"


def entry(number):
    return Entry(f"id-{number}", "quince", "note", f"{DAY}T08:00:00+00:00", about={"text": "x"})


def with_entries(count):
    phone = Phone("phone-a")
    for number in range(count):
        phone = tapped(phone, entry(number))
    return phone


def ids(entries):
    return [one.id for one in entries]


def test_what_is_tapped_twice_is_one_entry():
    phone = with_entries(2)
    assert tapped(phone, entry(1)) == phone
    kept = answered(phone, taken=["id-1"], turned={}, places=1, today=DAY)
    assert tapped(kept, entry(1)) == kept


def test_nothing_leaves_before_it_is_acknowledged_and_then_it_is_kept():
    phone = with_entries(3)
    assert ids(to_offer(phone, most=2)) == ["id-0", "id-1"]
    then = answered(phone, taken=["id-0"], turned={}, places=1, today=DAY)
    assert ids(to_offer(then)) == ["id-1", "id-2"]
    assert list(then.kept) == ["id-0"]


def test_what_was_turned_away_stays_to_be_seen_and_is_offered_last():
    why = ("no job of that id",)
    phone = answered(with_entries(3), taken=[], turned={"id-0": why}, places=0, today=DAY)
    assert phone.turned == {"id-0": why}
    assert ids(to_offer(phone)) == ["id-1", "id-2", "id-0"]
    then = answered(phone, taken=["id-0"], turned={}, places=1, today=DAY)
    assert then.turned == {}


def test_a_book_that_went_back_is_offered_all_again_before_what_is_new():
    phone = answered(with_entries(2), taken=["id-0", "id-1"], turned={}, places=7, today=DAY)
    phone = tapped(phone, entry(5))
    back = answered(phone, taken=["id-5"], turned={}, places=6, today=DAY)
    assert sorted(back.waiting) == ["id-0", "id-1", "id-5"]
    assert back.kept == {}


def test_once_a_day_the_book_is_asked_for_all_that_it_acknowledged():
    phone = answered(with_entries(2), taken=["id-0", "id-1"], turned={}, places=2, today=DAY)
    assert to_ask(phone, DAY) == ("id-0", "id-1")
    asked = told(phone, missing=["id-1"], today=DAY)
    assert ids(to_offer(asked)) == ["id-1"]
    assert to_ask(asked, DAY) == ()
    assert to_ask(asked, "2026-06-09") == ("id-0",)


def test_thirty_days_by_hand():
    """By hand: acknowledged on 8 June, kept on 8 July, the 30th day after, not on the 9th."""
    phone = answered(with_entries(1), taken=["id-0"], turned={}, places=1, today=DAY)
    assert forgetting(phone, "2026-07-08").kept == phone.kept
    assert forgetting(phone, "2026-07-09").kept == {}
    assert forgetting(with_entries(1), "2027-01-01").waiting == with_entries(1).waiting


@given(st.lists(st.tuples(st.sampled_from(["taken", "lost", "turned", "day"]), st.integers(0, 5)),
                max_size=30))  # fmt: skip
def test_no_step_ever_drops_what_was_not_acknowledged(steps):
    phone, today, days = with_entries(6), date(2026, 6, 8), {}
    for what, number in steps:
        name, before = f"id-{number}", set(phone.waiting) | set(phone.kept)
        if what == "taken" and name in phone.waiting:
            phone = answered(phone, taken=[name], turned={}, places=9, today=today.isoformat())
            days[name] = today
        elif what == "turned":
            phone = answered(phone, taken=[], turned={name: ("so",)}, places=9, today=str(today))
        elif what == "lost":
            phone = lost(phone, [name])
        else:
            today += timedelta(days=8)
        gone = before - set(phone.waiting) - set(phone.kept)
        assert all((today - days[one]).days > 30 for one in gone)
        assert not set(phone.waiting) & set(phone.kept)
        assert set(phone.turned) <= set(phone.waiting)
