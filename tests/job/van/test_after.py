"""What a job used is taken off, once, and what does not add up is told."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.facts.van import Flow, Stock, UsedUp, Van, VanSprayer
from farwall.job.van.after import after

VAN = Van(
    (VanSprayer("blue", "acid-proof", 7.6, uses=3), VanSprayer("green", "acid-proof", 7.6)),
    (
        Stock("a", "stain", 4.0, "l", "walnut", "7", opened="2026-05-01"),
        Stock("b", "stain", 8.0, "l", "walnut", "8"),
        Stock("tape", "tape", 100.0, "m"),
    ),
)
DAY = "2026-06-08"


def test_uses_flow_and_shelf_by_hand():
    """By hand: the opened 4 L go first, 2 of 6 L from the other, which is then opened."""
    used = UsedUp(DAY, ("blue",), (("blue", 0.7),), (("walnut", "", 6.0),), (("tape", 30.0),))
    van, odd = after(VAN, used)
    assert odd == ()
    assert [one.uses for one in van.sprayers] == [4, 0]
    assert van.sprayers[0].flows == (Flow(DAY, 0.7, 4),)
    assert [one.amount for one in van.stock] == [0.0, 6.0, 70.0]
    assert van.stock[1].opened == DAY


def test_more_than_there_was_is_told():
    van, odd = after(VAN, UsedUp(DAY, stains=(("walnut", "7", 5.5),), things=(("tape", 101.0),)))
    assert [one.amount for one in van.stock] == [0.0, 8.0, 0.0]
    assert len(odd) == 2
    assert "0.40 gal (1.5 L) of walnut of lot 7 more" in odd[1]


def test_names_that_are_not_there_are_refused_all_at_once():
    with pytest.raises(Refused) as caught:
        after(VAN, UsedUp(DAY, ("bleu",), things=(("tap", 1.0),)))
    assert [one.where for one in caught.value.mistakes] == ["bleu", "tap"]


@given(st.lists(st.floats(0, 5), max_size=6))
def test_stain_is_neither_lost_nor_made(litres):
    van, odd = after(VAN, UsedUp(DAY, stains=tuple(("walnut", "", one) for one in litres)))
    left = sum(one.amount for one in van.stock if one.kind == "stain")
    assert left == pytest.approx(max(12.0 - sum(litres), 0.0), abs=1e-3 * (1 + len(litres)))
    assert bool(odd) == (sum(litres) > 12.0 + 1e-3) or abs(sum(litres) - 12.0) < 0.02
