"""The belief that mid-day begins with: the plan's own, learned where the plan was."""

from dataclasses import replace

import pytest
from tests.job.test_lessons import LESSONS, bare
from tests.midday import after, day_of

from farwall.evidence import Rank
from farwall.facts.defaults import settle
from farwall.facts.plan import Ground
from farwall.job.first_thirst import first_thirst
from farwall.job.lessons import with_lessons
from farwall.job.live.thirst import belief_of
from farwall.job.plan_job import plan_job
from farwall.job.replan import replan
from farwall.mix.thirst import FIELD_SHARE, first_belief

__all__ = ["bare"]


def with_grounds(plan, *grounds):
    names = {one.name for one in grounds}
    kept = (one for one in plan.grounds if one.name not in names)
    return replace(plan, grounds=(*kept, *grounds))


def test_without_lessons_it_is_the_spread_that_the_plan_tells():
    plan = day_of("quince-street")
    told = next(float(one.value) for one in plan.grounds if one.name == "wishes.spread_percent")
    for coat in plan.inputs.coats:
        assert first_thirst(plan, coat.id) == first_belief(told)
        assert belief_of(plan, coat.id, None) == first_belief(told)
    assert first_thirst(replace(plan, grounds=()), "first") == first_belief(20.0)


def test_a_plan_with_lessons_goes_on_with_what_they_taught_of_each_coat(bare):
    settled = with_lessons(settle(bare), LESSONS)
    plan = plan_job(bare, lessons=LESSONS)
    first, second = settled.coats
    assert (first.field_share, second.field_share) != (None, FIELD_SHARE)
    found, due = first_thirst(plan, first.id), first_belief(
        first.spread_percent, field_share=first.field_share
    )  # fmt: skip
    assert found.variance == pytest.approx(due.variance, rel=5e-3)  # printed to three digits
    assert found.field_variance == pytest.approx(due.field_variance, rel=5e-3)
    # No job told of a second coat: the widest spread of the floor holds for it.
    assert first_thirst(plan, second.id) == first_belief(round(settled.spread_percent, 2))


def test_replan_mixes_by_the_learned_spread():
    plan = day_of("quince-street")
    told = after(plan, plan.fields[2].bands[-1].id, tub_l=4.0, tank_l=0.0, mixed_l=12.0)
    learned = Rank.LEARNED.value
    sure = with_grounds(
        plan,
        Ground("coats.first.spread_percent", "2", "%", learned, "learned from 9 jobs"),
        Ground("share of the spread that is the field's own, first", "50", "%", learned, ""),
    )
    less, more = replan(sure, told).more_mix, replan(plan, told).more_mix
    assert 0 < less.litres < more.litres


def test_a_spread_that_was_told_is_not_taken_for_a_learned_one():
    plan = day_of("quince-street")
    told = Ground("coats.first.spread_percent", "2", "%", Rank.MEASURED.value, "")
    assert first_thirst(with_grounds(plan, told), "first") == first_thirst(plan, "first")
    share = first_thirst(plan, "first")
    assert share.field_variance / (share.variance + share.field_variance) == pytest.approx(
        FIELD_SHARE
    )
