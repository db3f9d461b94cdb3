"""Chances of whole plans: closed forms, convergence, laws, and that the same job tells the same."""

from __future__ import annotations

import math
from dataclasses import replace
from statistics import NormalDist

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.job.chances.test_replay import laid
from tests.spray.hand_floors import hall, job

from farwall.evidence import Span
from farwall.facts.defaults import settle
from farwall.facts.samples import Sample
from farwall.job.chances import Spread, Stretch, chances_of
from farwall.job.chances.spreads import Z_95
from farwall.job.plan_job import plan_job

STILL = Spread(0.0, 0.0, "learned", "a test")
NAMES = ("open time", "spray rate", "thirst", "tank pauses", "walking pace")


def played(likely, *, days=20_000, seed=5, low=0.5, high=2.0, **learned):
    """The hall of 9 m x 5 m with edges that live `likely` minutes, 5 % below `low` of that; what is
    not learned here is certain."""
    _, stretches = laid()
    still = dict.fromkeys(NAMES[1:], STILL)
    return chances_of(
        [Stretch(one.field, one.moments, one.lives) for one in stretches],
        settle(job(hall(9, 5))),
        lambda coat, entry: Span(low * likely, likely, high * likely, "guess", "a test"),
        np.random.default_rng(seed),
        seed=seed,
        tub=(-1.3, 2.5),
        days=days,
        learned={**still, **learned},
    )


def peak():
    return laid()[1][0].field.peak_age_min


@pytest.mark.parametrize("times", [1.05, 1.3, 1.8])
def test_one_log_normal_open_time_has_its_closed_form(times):
    """Closed form: P(open < age) = Φ(ln(age / likely) / σ), σ from the 5 % point at half."""
    sigma = math.log(2) / Z_95
    expected = NormalDist().cdf(-math.log(times) / sigma)
    found = played(times * peak()).any_edge_dies
    assert found == pytest.approx(expected, abs=4 * math.sqrt(expected * (1 - expected) / 20_000))


def test_one_log_normal_rate_has_its_closed_form():
    """Closed form: in a hall without fillings minutes go as 1/rate but for the walks, which take
    a part of them; twice as slow is between once and twice as old, and so is the chance."""
    rate = Spread(0.4, 0.4, "learned", "a test")
    found = played(2 * peak(), low=0.999999, high=1.000001, **{"spray rate": rate}).any_edge_dies
    most = NormalDist().cdf(-math.log(2) / 0.4)
    assert 0.8 * most < found < most + 4 * math.sqrt(most / 20_000)


def test_more_days_come_nearer_to_the_closed_form():
    """The standard error falls with the root of the days; what is told keeps within 4 of it."""
    sigma = math.log(2) / Z_95
    expected = NormalDist().cdf(-math.log(1.3) / sigma)
    errors = []
    for days in (1000, 16_000):
        one = played(1.3 * peak(), days=days).edge_dies[0]
        errors.append(one.error)
        assert abs(one.chance - expected) < 4 * one.error
    assert errors[1] == pytest.approx(errors[0] / 4, rel=0.2)


@settings(max_examples=25)
@given(st.floats(1.01, 3), st.floats(0.3, 0.95), st.floats(0.3, 0.95))
def test_a_larger_spread_never_lowers_the_chance_when_edges_likely_live(times, one, other):
    """On common draws: a day on which the edge dies stays one when the open time strays farther."""
    wide, narrow = sorted((one, other))
    few, many = (
        played(times * peak(), days=400, low=low, high=1 / low).any_edge_dies
        for low in (narrow, wide)
    )
    assert few <= many


@settings(max_examples=25)
@given(st.floats(1.01, 3), st.floats(0, 0.5), st.floats(0, 0.5))
def test_a_less_certain_arm_never_lowers_the_chance_when_edges_likely_live(times, one, other):
    low, high = sorted((one, other))
    few, many = (
        played(
            times * peak(), days=400, low=0.999999, high=1.000001,
            **{"spray rate": Spread(width, width, "learned", "a test")},
        ).any_edge_dies
        for width in (low, high)
    )  # fmt: skip
    assert few <= many


@settings(max_examples=10)
@given(st.floats(0.5, 3), st.floats(1.0, 2))
def test_longer_open_time_never_raises_the_chance(times, more):
    short, long = (played(t * peak(), days=400).any_edge_dies for t in (times, times * more))
    assert long <= short


def test_when_nothing_strays_edges_die_on_all_days_or_on_none():
    sure = {"low": 0.999999, "high": 1.000001}
    assert played(1.01 * peak(), days=200, **sure).any_edge_dies == 0.0
    assert played(0.99 * peak(), days=200, **sure).any_edge_dies == 1.0


def test_the_input_that_alone_strays_has_all_of_the_share():
    found = {one.input: one for one in played(1.5 * peak()).matters_most}
    assert found["open time"].share > 0.7  # the rest is the field's own draw
    assert all(found[name].share == pytest.approx(0.0, abs=0.02) for name in NAMES[1:])


def timed(minutes):
    samples = (Sample("board", coat="one", sheen_loss_min=minutes),) if minutes else ()
    return plan_job(job(hall(9, 5), samples=samples)).chances


def test_the_same_job_tells_the_same_figures_and_another_seed_other_ones():
    plan, again = (plan_job(job(hall(9, 5))) for _ in range(2))
    assert plan.chances == again.chances
    assert plan.chances.seed == int(plan.inputs_hash[:12], 16)
    two = [played(1.5 * peak(), days=500, seed=seed).any_edge_dies for seed in (1, 2)]
    assert two[0] != two[1]


def test_an_untimed_sheen_is_asked_for_and_a_timed_one_is_not():
    asked = {one.input: one for one in timed(None).matters_most}["open time"]
    assert asked.what_to_do.startswith("Time the sheen loss on your sample")
    assert asked.any_edge_dies <= timed(None).any_edge_dies
    assert {one.input: one for one in timed(6.0).matters_most}["open time"].what_to_do == ""


def test_what_measuring_would_do_is_reckoned_for_the_job_at_hand():
    """A rate known to a hair leaves all of the range to the open time: halved at least."""
    known = Spread(1e-6, 1e-6, "learned", "a test")
    both = [
        next(one for one in found.matters_most if one.input == "open time").what_to_do
        for found in (
            played(1.5 * peak(), low=0.5, high=1.5),
            played(
                1.5 * peak(),
                low=0.5,
                high=1.5,
                **{"spray rate": replace(known, below=0.8, above=0.8)},
            ),
        )
    ]
    assert "take most off" in both[0] or "halve" in both[0]
    assert both[0] != both[1]


def test_a_learned_open_time_replaces_the_clocks_own():
    learned = Spread(1e-9, 1e-9, "learned", "eleven closed jobs")
    assert played(1.2 * peak(), days=500, **{"open time": learned}).any_edge_dies == 0.0
    assert played(1.2 * peak(), days=500).any_edge_dies > 0.1


def test_inputs_tell_their_rank_and_source_and_the_weightiest_comes_first():
    found = timed(None).matters_most
    assert {one.input for one in found} == set(NAMES)
    assert all(one.rank and one.source for one in found)
    shares = [one.share for one in found]
    assert shares == sorted(shares, reverse=True)
