"""What the morning's check changed of the plan, in words."""

from __future__ import annotations

from dataclasses import replace

from tests.job.go.jobs import GOOD, with_parts

from farwall.facts.checks import Morning
from farwall.job.plan_job import plan_job
from farwall.job.replanned import before_morning, what_changed


def test_a_check_that_changes_no_fact_asks_for_no_second_plan():
    assert before_morning(GOOD) is None
    assert before_morning(with_parts(morning=Morning(eyewash=True, fan=True))) is None
    assert before_morning(with_parts(morning=Morning(tip_l_min=0.4))) == GOOD


def test_a_weak_tip_is_told_with_what_it_does_by_hand():
    """By hand: 24 m² at 3 m² a minute take 8 min of spraying, at 2 m² a minute 12: 4 min later."""
    before = with_parts(tools=replace(GOOD.tools, overlap_m=0.0))
    job = replace(before, morning=Morning(tip_l_min=0.4))
    said = what_changed(plan_job(before), plan_job(job))
    assert said[0] == "Spray rate 2.00 m²/min, before 3.00."
    assert "Coat 1 ends 4 min later." in said
    assert any(one.startswith("Coat 1's tightest edge:") for one in said)


def test_the_same_plan_stays():
    assert what_changed(plan_job(GOOD), plan_job(GOOD)) == ("The plan stays as it was.",)
