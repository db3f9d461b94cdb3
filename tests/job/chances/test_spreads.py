"""Spreads: their ranges by hand, what a told or a measured value does to them."""

from __future__ import annotations

import math

import pytest
from tests.spray.hand_floors import hall, job

from farwall.facts.defaults import settle
from farwall.facts.job import Crew, Tools
from farwall.facts.samples import Sample
from farwall.job.chances.spreads import Spread, spreads_of, width


def found(**facts):
    return spreads_of(settle(job(hall(9, 5), **facts)))


def test_the_ends_of_a_range_are_its_5_and_95_percent_points_by_hand():
    """By hand: 1.645 widths below 10 lie 5, above it 15."""
    below, above = width(5.0, 10.0, 15.0)
    assert 10 * math.exp(-1.645 * below) == pytest.approx(5.0, rel=1e-3)
    assert 10 * math.exp(1.645 * above) == pytest.approx(15.0, rel=1e-3)


@pytest.mark.common_practice
def test_an_untold_spray_rate_has_the_range_of_practice():
    """No source: 20 to 45 ft² a minute about 30."""
    rate = found(tools=Tools())["spray rate"]
    assert (rate.below, rate.above) == pytest.approx(width(20, 30, 45), rel=1e-6)
    assert rate.rank == "common practice"
    assert "measured floor" in rate.what_to_do


def test_a_told_rate_strays_less_and_asks_for_nothing():
    told, untold = found(tools=Tools(spray_m2_min=2.5))["spray rate"], found(tools=Tools())
    assert told.below < untold["spray rate"].below
    assert (told.rank, told.what_to_do) == ("guess", "")
    assert told.cut() is told


def test_with_a_helper_the_pause_is_a_swap():
    assert "swaps" in found(crew=Crew(helper=True), tools=Tools())["tank pauses"].what_to_do
    assert "fillings" in found(tools=Tools())["tank pauses"].what_to_do


def test_a_timed_and_measured_sample_leaves_nothing_to_do():
    board = (Sample("board", coat="one", sheen_loss_min=6.0, m2_per_l=5.0),)
    assert found(samples=board)["open time"].what_to_do == ""
    assert found(samples=board)["thirst"].what_to_do == ""
    assert found()["open time"].what_to_do
    assert found()["thirst"].what_to_do


def test_a_learned_spread_replaces_the_guess():
    learned = Spread(0.1, 0.2, "learned", "nine closed jobs")
    job_ = settle(job(hall(9, 5)))
    assert spreads_of(job_, {"walking pace": learned})["walking pace"] is learned
    assert learned.widths(0.5, 0.5) == (0.1, 0.2)
    assert Spread(0.1, 0.2, "guess", "").widths(0.05, 0.5) == (0.05, 0.2)
