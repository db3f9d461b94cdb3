"""Call-backs: the firm's own figure, else what jobs taught, else the guess of practice."""

from decimal import Decimal

import pytest

from farwall.bench.learn_firms import closed_jobs, firm
from farwall.facts.prices import CallBacks
from farwall.learn.lessons import lessons_of
from farwall.price.chances import call_backs


@pytest.mark.common_practice
def test_the_guess_of_practice():
    """No source: 4 % of jobs each, 300, 900 and 6,000."""
    found = call_backs(CallBacks())
    assert [one.what for one in found] == ["residue", "moisture", "colour"]
    assert {(one.percent, one.cost_low, one.cost, one.cost_high) for one in found} == {
        (4, "300.00", "900.00", "6000.00")
    }


def test_what_a_rule_found_raises_one_kind_and_says_why():
    found = {one.what: one for one in call_backs(CallBacks(), raised={"colour": "No sample."})}
    assert found["colour"].percent == 10
    assert found["colour"].why == "No sample."
    assert found["residue"].percent == 4


def test_the_firms_own_figures_win():
    told = CallBacks(residue_percent=2, cost="500")
    found = {one.what: one for one in call_backs(told)}
    assert (found["residue"].percent, found["residue"].cost) == (2, "500")
    assert found["residue"].rank == "measured here"
    assert found["colour"].rank == "guess"


def test_a_told_cost_beyond_the_usual_ends_keeps_the_order():
    """Only the likely figure told: it may lie outside the guessed ends."""
    found = call_backs(CallBacks(cost="8000"))[0]
    assert found.cost == "8000"
    assert Decimal(found.cost_low) <= Decimal(found.cost) <= Decimal(found.cost_high)


def test_closed_jobs_teach_the_sum_of_the_three():
    lessons = lessons_of([one.job for one in closed_jobs(firm(3), count=30)])
    found = call_backs(CallBacks(), lessons)
    likely = lessons.find("call-backs").likely
    assert sum(one.percent for one in found) == pytest.approx(likely, abs=0.02)
    assert found[0].rank == "learned"
