"""What each duty asks, looked at one by one: in order, missing, or told by nobody."""

from dataclasses import replace
from datetime import date, timedelta
from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.may import word_of
from farwall.acid.worn import ASKED, Needs, asked_of, checked, held_until
from farwall.facts.workers import Cartridge, Duty, Respirator, Worker

DAY = date(2026, 5, 14)
PAIR = Cartridge("", acid_gas=True, p100=True, opened="2026-05-13", change_after_min=240)
ADA = Worker(
    "ada", "Ada", tuple(get_args(Duty)), "half face", fit_tested="2025-06-01", cleared="2024-02-01",
    clean_shaven=True, cartridge=PAIR, gloves="nitrile", goggles=True, apron=True, boots=True,
    trained="2026-05-01",
)  # fmt: skip
DUTIES = list(get_args(Duty))


def states(worker, duty="sprays", needs=None, day=DAY):
    return {one.item: one.state for one in checked(worker, duty, day, needs or Needs())}


def word(worker, duty="sprays", needs=None):
    return word_of(checked(worker, duty, DAY, needs or Needs()))[0]


@pytest.mark.parametrize("duty", DUTIES)
def test_who_has_everything_may(duty):
    assert word(ADA, duty) == "may"


@pytest.mark.parametrize("duty", DUTIES)
def test_of_whom_nobody_told_is_told_to_be_untold_and_never_in_order(duty):
    assert set(states(Worker("bo"), duty).values()) == {"not told"}
    assert word(Worker("bo"), duty) == "nobody told"


@pytest.mark.parametrize(
    ("changed", "item", "state"),
    [
        ({"fit_tested": "2025-05-13"}, "fit test", "missing"),
        ({"fit_tested": "2025-05-14"}, "fit test", "in order"),
        ({"fit_tested": "2026-05-15"}, "fit test", "missing"),
        ({"cleared": "2026-05-15"}, "medical word", "missing"),
        ({"clean_shaven": False}, "clean-shaven", "missing"),
        ({"cartridge": replace(PAIR, acid_gas=False)}, "cartridges", "missing"),
        ({"cartridge": replace(PAIR, p100=False)}, "cartridges", "missing"),
        ({"cartridge": replace(PAIR, p100=None)}, "cartridges", "not told"),
        ({"cartridge": replace(PAIR, opened="")}, "cartridges", "not told"),
        ({"cartridge": replace(PAIR, opened="2026-05-15")}, "cartridges", "missing"),
        ({"cartridge": replace(PAIR, used_min=240)}, "change schedule", "missing"),
        ({"cartridge": replace(PAIR, used_min=239)}, "change schedule", "in order"),
        ({"cartridge": replace(PAIR, change_after_min=None)}, "change schedule", "not told"),
        ({"gloves": ""}, "gloves", "not told"),
        ({"goggles": False}, "eyes", "missing"),
        ({"goggles": False, "respirator": "full face"}, "eyes", "in order"),
        ({"apron": False}, "apron", "missing"),
        ({"boots": False}, "boots", "missing"),
        ({"trained": "2026-06-01"}, "training", "missing"),
    ],
)
def test_one_thing_that_is_not_so_by_hand(changed, item, state):
    """29 CFR 1910.134(f)(2): a test of 14 May 2025 holds to 14 May 2026, of the 13th no more."""
    found = states(replace(ADA, **changed))
    assert found[item] == state
    assert {one for name, one in found.items() if name != item} == {"in order"}


def test_a_loose_hood_asks_for_no_fit_test_and_no_razor_and_covers_the_face():
    hood = replace(ADA, respirator="powered hood", fit_tested="", clean_shaven=False, goggles=None)
    assert word(hood) == "may"
    assert word(replace(hood, respirator="powered")) == "not yet"


def test_chromate_asks_for_a_hygienist_and_makes_scrubbing_a_matter_of_breathing():
    chromate = Needs(chromate=True)
    assert states(ADA, needs=chromate)["exposure settled"] == "not told"
    assert word(replace(ADA, exposure_settled="2026-05-10"), needs=chromate) == "may"
    bare = replace(ADA, respirator=None, cartridge=None)
    assert word(bare, "scrubs") == "may"
    assert word(replace(bare, exposure_settled="2026-05-10"), "scrubs", chromate) == "nobody told"
    assert "exposure settled" not in asked_of("stands by", chromate)


def test_scrubbing_with_ammonia_asks_for_cartridges_marked_for_it():
    ammonia = Needs(ammonia=True)
    assert states(ADA, "scrubs", ammonia)["cartridges"] == "not told"
    marked = replace(ADA, cartridge=replace(PAIR, ammonia=True, acid_gas=False))
    assert states(marked, "scrubs", ammonia)["cartridges"] == "in order"
    assert states(marked, "sprays", ammonia)["cartridges"] == "missing"


def test_who_sprays_is_asked_no_less_than_anybody_else():
    most = set(ASKED["sprays"])
    assert all(set(items) <= most for items in ASKED.values())


@given(st.dates(date(1990, 1, 1), date(2200, 12, 31)))
def test_a_fit_test_holds_a_year_and_never_longer(told):
    last = held_until(told)
    assert timedelta(364) <= last - told <= timedelta(366)
    worker = replace(ADA, fit_tested=told.isoformat())
    assert states(worker, day=last)["fit test"] == "in order"
    assert states(worker, day=last + timedelta(1))["fit test"] == "missing"


_MAYBE = st.sampled_from([None, True, False])


@given(
    st.sampled_from(DUTIES), st.builds(Needs, st.booleans(), st.booleans()),
    st.sampled_from([None, *get_args(Respirator)]), _MAYBE, _MAYBE, _MAYBE, _MAYBE,
    st.sampled_from(["", "2020-01-01", "2026-01-01", "2027-01-01"]),
)  # fmt: skip
def test_telling_more_that_is_right_never_takes_a_may_away(
    duty, needs, kind, shaven, goggles, apron, boots, day
):
    """What is in order stays so whatever else is told; a may means that nothing asked is open."""
    worker = replace(ADA, respirator=kind, clean_shaven=shaven, goggles=goggles, apron=apron,
                     boots=boots, fit_tested=day, exposure_settled=day)  # fmt: skip
    checks = checked(worker, duty, DAY, needs)
    said, why = word_of(checks)
    assert (said == "may") == all(one.state == "in order" for one in checks)
    assert (said == "may") == (why == ())
    assert [one.item for one in checks] == list(asked_of(duty, needs))
