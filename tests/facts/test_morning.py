"""What the morning's check changes of a job, and what the plan then takes."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.job.go.jobs import GOOD, with_parts

from farwall.facts.checks import Morning
from farwall.facts.defaults import settle
from farwall.facts.morning import by_morning


def test_no_check_changes_nothing():
    assert by_morning(GOOD) == (GOOD, ())
    assert settle(GOOD).warnings == ()


def test_a_weak_tip_slows_the_plan_by_hand():
    """By hand: 0.4 L a minute at 5 m²/L cover 2 m² a minute, and the job says 3."""
    settled = settle(with_parts(morning=Morning(tip_l_min=0.4)))
    assert settled.tools.spray_m2_min == pytest.approx(2.0)
    assert any("this morning" in one for one in settled.warnings)
    grounds = [one for one in settled.grounds if one.name == "tools.spray_m2_min"]
    assert [one.rank for one in grounds] == ["measured here"]


def test_a_generous_tip_makes_nobody_faster():
    assert settle(with_parts(morning=Morning(tip_l_min=0.9))).tools.spray_m2_min == 3.0


def test_the_measured_flow_stands_for_the_tips_own():
    job = replace(GOOD, tools=replace(GOOD.tools, tip_l_min=0.8), morning=Morning(tip_l_min=0.7))
    changed, said = by_morning(job)
    assert changed.tools.tip_l_min == 0.7
    assert "0.70 L/min, not 0.80" in said[0]


@pytest.mark.parametrize("leaking", ["spare_tight", "sprayer_tight"])
def test_one_sprayer_of_two_that_leaks_leaves_no_spare(leaking):
    changed, said = by_morning(with_parts(morning=Morning(**{leaking: False})))
    assert not changed.tools.spare_sprayer
    assert changed.tools.swap_min == changed.tools.refill_min == 3.0
    assert "filled, not swapped" in said[0]


def test_the_warmest_spot_stands_for_the_slab():
    changed, said = by_morning(with_parts(morning=Morning(slab_low_c=18.0, slab_high_c=24.0)))
    assert changed.survey.slab_c == 24.0
    assert "24.0 °C, not 20.0" in said[0]
