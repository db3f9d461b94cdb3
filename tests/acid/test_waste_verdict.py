"""What may be said of a tested water beside named limits: never that it may go."""

from dataclasses import replace
from datetime import date
from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.waste_verdict import VerdictWord, compared, faults_of, hazards_of
from farwall.facts.discharge import OfficialWord, SewerLimits, WaterTest

DAY = date(2027, 5, 4)
LIMITS = SewerLimits(least_ph=5.5, most_ph=10, copper_mg_l=1.0)
WORD = OfficialWord("sewer", "Ana Poole", "Sewer district", "2027-04-02", True, limits=LIMITS)
CLEAN = WaterTest(drum="1", found_ph=8.2, copper_mg_l=0.4)


def test_below_every_limit_that_was_named():
    assert compared(CLEAN, WORD, DAY).word == "below every limit that was named"


def test_above_names_both_figures():
    found = compared(replace(CLEAN, copper_mg_l=12), WORD, DAY)
    assert (found.word, found.why) == ("above", ("Copper 12 against 1.",))


@pytest.mark.parametrize(
    ("test", "why"),
    [
        (replace(CLEAN, copper_mg_l=None), "Copper was not tested."),
        (replace(CLEAN, found_ph=None), "Its pH was not tested."),
    ],
)
def test_what_was_not_tested_is_not_said(test, why):
    found = compared(test, WORD, DAY)
    assert found.word == "not allowed to say"
    assert why in found.why


@pytest.mark.parametrize(
    ("word", "why"),
    [
        (replace(WORD, who=" "), "Nobody is named who said it."),
        (replace(WORD, office=""), "No office is named."),
        (replace(WORD, on=""), "No day is named on which it was said."),
        (replace(WORD, on="soon"), "No day is named on which it was said."),
        (replace(WORD, in_writing=False), "It is not in writing."),
        (replace(WORD, until="2027-05-03"), "It ran out on 2027-05-03."),
        (replace(WORD, on="2026-05-03"), "It is of 2026-05-03, more than a year old: ask again."),
        (replace(WORD, limits=SewerLimits()), "No limit was named."),
        (replace(WORD, way="not allowed"), "It was not allowed."),
    ],
)
def test_a_word_that_cannot_be_leaned_on(word, why):
    found = compared(CLEAN, word, DAY)
    assert found.word == "not allowed to say"
    assert why in found.why


def test_on_its_last_day_a_word_holds():
    assert faults_of(replace(WORD, until="2027-05-04"), DAY) == ()
    assert faults_of(replace(WORD, on="2020-01-01", until="2030-01-01"), DAY) == ()
    assert faults_of(replace(WORD, on="2020-01-01")) == ()


def test_no_word_for_a_sewer_goes_below_the_federal_floor():
    lax = replace(WORD, limits=SewerLimits(least_ph=4.0))
    assert compared(replace(CLEAN, found_ph=4.5), lax, DAY).why == (
        "Its pH is 4.5, and at least 5 is asked.",
    )
    assert compared(replace(CLEAN, found_ph=4.5), replace(lax, way="hauled"), DAY).word == (
        "below every limit that was named"
    )


def test_at_its_limit_is_not_below_it():
    assert compared(replace(CLEAN, copper_mg_l=1.0), WORD, DAY).word == "above"


@pytest.mark.parametrize(
    ("found_ph", "why"),
    [
        (5.5, ("Its pH is 5.5, and at least 5.5 is asked.",)),
        (5.6, ()),
        (9.9, ()),
        (10.0, ("Its pH is 10, and at most 10 is asked.",)),
        (11.0, ("Its pH is 11, and at most 10 is asked.",)),
    ],
)
def test_a_ph_has_to_lie_between_the_two_that_were_named(found_ph, why):
    assert compared(replace(CLEAN, found_ph=found_ph), WORD, DAY).why == why


METALS = ("copper_mg_l", "chromium_mg_l", "chromium_vi_mg_l", "manganese_mg_l", "iron_mg_l",
          "zinc_mg_l", "solids_mg_l")  # fmt: skip


@pytest.mark.parametrize("key", METALS)
def test_each_thing_that_was_named_is_compared_and_has_to_be_tested(key):
    word = replace(WORD, limits=replace(LIMITS, **{key: 2.0}))
    known = replace(CLEAN, copper_mg_l=0.4)
    assert (
        compared(replace(known, **{key: 1.9}), word, DAY).word == "below every limit that was named"
    )
    assert compared(replace(known, **{key: 2.0}), word, DAY).word == "above"
    assert compared(replace(known, **{key: None}), word, DAY).word == "not allowed to say"


def test_a_hauler_who_names_only_the_highest_ph_has_named_a_limit():
    hauled = replace(WORD, way="hauled", limits=SewerLimits(most_ph=10))
    assert compared(CLEAN, hauled, DAY).word == "below every limit that was named"
    untested = compared(WaterTest(copper_mg_l=0.4), hauled, DAY)
    assert untested.why == ("Its pH was not tested.",)


def test_a_word_without_a_last_day_holds_for_365_days():
    assert faults_of(replace(WORD, on="2026-05-04"), DAY) == ()


def test_one_limit_broken_wins_over_what_is_missing():
    test = WaterTest(copper_mg_l=3)
    assert compared(test, replace(WORD, who=""), DAY).word == "above"


def test_hazards_by_the_federal_tests():
    assert hazards_of(WaterTest(found_ph=1.5))[0].endswith("D002.")
    assert hazards_of(WaterTest(found_ph=12.5))
    assert hazards_of(WaterTest(chromium_vi_mg_l=5.0))[0].endswith("D007.")
    assert hazards_of(WaterTest(found_ph=7, chromium_mg_l=4.9)) == ()
    assert len(hazards_of(WaterTest(chromium_mg_l=4.9, chromium_vi_mg_l=5.1))) == 1
    assert len(hazards_of(WaterTest(chromium_mg_l=5.1, chromium_vi_mg_l=0.1))) == 1
    assert len(hazards_of(WaterTest(found_ph=2.0, chromium_mg_l=5.0))) == 2


some = st.none() | st.floats(0, 100)


@given(st.builds(SewerLimits, copper_mg_l=some, chromium_mg_l=some, iron_mg_l=some),
       st.builds(WaterTest, found_ph=st.none() | st.floats(0, 14), copper_mg_l=some,
                 chromium_mg_l=some, iron_mg_l=some))  # fmt: skip
def test_below_is_said_only_of_what_was_tested_and_is_below(limits, test):
    found = compared(test, replace(WORD, limits=limits), DAY)
    assert found.word in get_args(VerdictWord)
    if found.word == "below every limit that was named":
        assert test.found_ph is not None
        assert test.found_ph > 5
        for key in ("copper_mg_l", "chromium_mg_l", "iron_mg_l"):
            limit = getattr(limits, key)
            assert limit is None or getattr(test, key) < limit


def test_only_a_sewer_needs_its_word_in_writing_and_without_a_day_no_word_has_run_out():
    hauled = replace(WORD, way="hauled", in_writing=None)
    assert faults_of(hauled, DAY) == ()
    ended = replace(WORD, until="2020-01-01")
    assert faults_of(ended, None) == ()
    assert faults_of(ended, DAY) == ("It ran out on 2020-01-01.",)
