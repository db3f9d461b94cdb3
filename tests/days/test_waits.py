"""The calendar's waits: the floor's own clocks, put before the steps that they hold back."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies import air

from farwall.air import waits as floor
from farwall.air.learned import Factor, factor
from farwall.air.sealers import BY_TYPE, limits_of
from farwall.days.practice import chain
from farwall.days.waits import LABEL, spanned, usual_waits, waits_of
from farwall.evidence import Rank
from farwall.facts.sealer import Sealer


def test_the_usual_minutes_are_those_of_the_clocks():
    told = {one.name: one.minutes.likely for step in chain(2) for one in step.waits}
    for wait in (floor.CLEANED, *floor.WAITS.values(), floor.FINISHED):
        assert told[wait.name] == wait.usual_min
    assert told["dwell"] == floor.DWELL.usual_min


def test_the_range_of_a_wait_is_that_of_its_spread_by_hand():
    """Four in five of a log-normal: 1.2816 standard deviations to each side, 0.444 both added."""
    span = spanned(floor.RECOAT)
    wide = 1.2816 * math.hypot(0.41, 0.17)
    assert span.low == pytest.approx(120 * math.exp(-wide), rel=0.01)
    assert span.high == pytest.approx(120 * math.exp(wide), rel=0.01)


def test_what_a_floor_taught_scales_the_wait_and_says_so():
    learned = spanned(floor.RECOAT, Factor(0.8, 1.5, 2.0, seen=2))
    assert (learned.low, learned.likely, learned.high) == pytest.approx((96, 180, 240))
    assert learned.rank is Rank.LEARNED
    assert learned.source.endswith("watched 2 times on this floor")


@given(air.m2_per_l, air.m2_per_l)
def test_a_thicker_coat_waits_longer_and_the_slab_does_not_mind(one, other):
    thin, thick = max(one, other), min(one, other)
    usual = factor(floor.RECOAT.spread)
    worths = [spanned(floor.RECOAT, usual, m2_per_l=each).likely for each in (thin, thick)]
    assert worths[0] <= worths[1] + 1e-9
    assert spanned(floor.DRY_DOWN, m2_per_l=thin) == spanned(floor.DRY_DOWN, m2_per_l=thick)


@given(st.integers(1, 4), st.integers(1, 3))
def test_every_wait_is_before_a_step_of_the_chain_and_no_other_step_waits(coats, seal_coats):
    steps = chain(coats, seal_coats=seal_coats)
    waiting = {step.id for step in steps if step.waits}
    assert waiting == set(usual_waits(coats, seal_coats))
    assert {step.id for step in steps} - waiting == {"clean", "coat-1"}


def test_the_sealers_label_holds_back_its_next_coat_and_sets_its_end():
    epoxy = limits_of(Sealer(type="epoxy", coats=2, recoat_from_h=10, recoat_to_h=30))
    found = waits_of(1, 2, lambda wait, _: spanned(wait), epoxy)
    label = next(one for one in found["seal-2"] if one.name == LABEL)
    assert (label.minutes.likely, label.longest_min, label.pace) == (600, 1800, "clock")
    finish = next(one for one in found["finish"] if one.name == LABEL)
    assert (finish.minutes.likely, finish.longest_min) == (600, None)


def test_a_house_that_names_no_sealer_has_the_least_wait_of_a_water_acrylic():
    label = next(one for one in usual_waits(2)["seal-2"] if one.name == LABEL)
    assert label.minutes.likely == BY_TYPE["water acrylic"].recoat_from_h * 60
