"""What is there for a need and what is bought: nothing twice, no lot against another unseen."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.facts.van import Need, Stock, Van
from farwall.job.van.shopping import shopping

WALNUT = Need("stain", 10.0, "l", "walnut")


def shelf(*things):
    return Van(stock=tuple(things))


def stain(name, litres, lot="", **more):
    return Stock(name, "stain", litres, "l", "walnut", lot, **more)


def only(van, need, on="2026-06-08"):
    return shopping(van, [need], on=on)[0]


def test_one_lot_that_does_it_is_taken_alone_the_oldest_first_by_hand():
    van = shelf(stain("a", 4, "7"), stain("b", 12, "8", opened="2026-05-01"),
                stain("c", 11, "9", opened="2026-03-01"))  # fmt: skip
    found = only(van, WALNUT)
    assert (found.from_stock, found.buy, found.mind) == (("c",), 0.0, "")


def test_several_lots_are_boxed_and_what_is_short_is_bought_by_hand():
    found = only(shelf(stain("a", 4, "7"), stain("b", 3, "8")), WALNUT)
    assert (found.there, found.buy) == (7.0, 3.0)
    assert "box them" in found.mind


def test_another_lot_than_the_samples_does_not_count():
    need = Need("stain", 10.0, "l", "walnut", lots=("7",))
    found = only(shelf(stain("a", 4, "7"), stain("b", 30, "8")), need)
    assert (found.from_stock, found.there, found.buy) == (("a",), 4.0, 6.0)
    assert "b is of lot 8" in found.mind


def test_what_is_past_its_day_does_not_count_on_that_day_and_does_before():
    van = shelf(stain("a", 12, "7", good_until="2026-06-01"))
    assert only(van, WALNUT).buy == 10.0
    assert only(van, WALNUT, on="2026-06-01").buy == 0.0


@given(
    held=st.lists(
        st.tuples(st.floats(0, 30), st.sampled_from(["", "7", "8", "9"])), max_size=6
    ),
    needed=st.floats(0.1, 60),
)  # fmt: skip
def test_what_is_there_and_what_is_bought_make_up_the_need(held, needed):
    van = shelf(*(stain(f"s{n}", litres, lot) for n, (litres, lot) in enumerate(held)))
    found = only(van, Need("stain", needed, "l", "walnut"))
    assert found.there + found.buy == pytest.approx(needed, abs=2e-3)
    assert found.buy == pytest.approx(
        max(0.0, needed - sum(litres for litres, _ in held)), abs=2e-3
    )
