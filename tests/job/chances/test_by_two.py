"""A field that two spray on many days: by hand, and against the plan's own figures."""

from functools import cache

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.job.chances.test_replay import NO_PAUSE, days
from tests.spray.hand_floors import ROOMY_TANK, hall, job

import farwall.job.day_drawn as drawing
from farwall.facts.job import Crew
from farwall.facts.samples import Sample
from farwall.job.chances.by_two import TwoCourse, course_of_two, left_of_two, stretched_by_two
from farwall.job.chances.drawn_days import drawn_days
from farwall.job.chances.replay import edges_of
from farwall.job.chances.spreads import Spread
from farwall.job.chances.stretched import Pause, worst
from farwall.job.plan_job import plan_job
from farwall.mix.thirst import FIELD_SHARE

TUB = (-1.3, 2.5)


@cache
def laid(tank_l=40.0, helper=False):
    """A hall of 9 m x 5 m planned for two, with the moments of its edges."""
    from dataclasses import replace

    kept = []
    told = drawing.chances_of
    try:
        drawing.chances_of = lambda stretches, *args, **more: kept.extend(stretches)
        facts = job(
            hall(9, 5),
            samples=(Sample("board", coat="one", sheen_loss_min=20.0),),
            tools=replace(ROOMY_TANK, tank_l=tank_l),
            crew=Crew(sprayers=2, helper=helper),
        )
        plan = plan_job(facts)
    finally:
        drawing.chances_of = told
    return plan, tuple(kept)


def oldest(stretch, plan, factors, second=1.0, pause=NO_PAUSE):
    """The oldest edge of a field under these factors. [min]"""
    course = course_of_two(stretch.field, plan.inputs.tools, 0.2, (0.0, 0.0), TUB)
    on = stretched_by_two(course, factors, np.array([second]), np.zeros((2, 1)), pause, swaps=False)
    edges = edges_of(stretch.moments, stretch.lives, stretch.field)
    return float(worst(edges, on, np.ones((len(stretch.lives.open_times), 1)))[0][0])


@pytest.mark.parametrize(("tank_l", "helper"), [(40.0, False), (2.0, False), (2.0, True)])
def test_a_day_as_planned_has_the_edges_of_the_plan(tank_l, helper):
    plan, stretches = laid(tank_l, helper)
    assert any(band.sprayer == 2 for one in stretches for band in one.field.bands)
    for one in stretches:
        assert oldest(one, plan, days()) == pytest.approx(one.field.peak_age_min, abs=0.01)


def two_turns(filled=np.nan):
    """Two turns of 1 min each for both, a minute's walk between; then one more for the second."""
    return TwoCourse(
        turns=((0, 1), (2, 3), (4,)),
        spray=np.ones(5),
        along=np.full(5, 0.1),
        litres=np.ones(5),
        who=(0, 1, 0, 1, 1),
        away_m=np.full(5, 10.0),
        walk=np.array([0.0, 1.0, 1.0]),
        fill=np.zeros(3),
        filled_l=np.full((3, 2), filled),
    )


def starts(course, factors, second=1.0, tanks=(9.0, 9.0), *, swaps=False):
    pause = Pause(3.0, 0.05, 9.0)
    held = np.array(tanks)[:, None]
    return stretched_by_two(course, factors, np.array([second]), held, pause, swaps=swaps)


def test_the_slower_one_holds_both_up():
    """By hand: 1 and 1.5 min for the first turn; the next begins a minute after the slower."""
    on = starts(two_turns(), days(), second=1.5)
    assert on.start[:, 0].tolist() == [0.0, 0.0, 2.5, 2.5, 5.0]
    assert on.minutes[:, 0].tolist() == [1.0, 1.5, 1.0, 1.5, 1.5]


def test_a_tank_that_runs_dry_is_filled_while_the_other_waits():
    """By hand: the second has 1.5 L: before his second band 3 min and 10 m at 0.05 min a metre."""
    on = starts(two_turns(), days(), tanks=(9.0, 1.5))
    assert on.start[:, 0].tolist() == [0.0, 0.0, 5.5, 5.5, 7.5]
    assert on.left_l[:, 0].tolist() == [7.0, 7.0]


def test_both_tanks_dry_at_once_wait_once_and_with_a_helper_twice():
    alone = starts(two_turns(), days(), tanks=(1.5, 1.5))
    helped = starts(two_turns(), days(), tanks=(1.5, 1.5), swaps=True)
    assert alone.start[2, 0] == 5.5
    assert helped.start[2, 0] == 9.0


@given(second=st.floats(0.5, 2.0), spraying=st.floats(0.5, 2.0))
def test_the_edge_is_never_younger_for_one_who_is_slower(second, spraying):
    plan, stretches = laid()
    one = stretches[0]
    slow = oldest(one, plan, days(spraying=max(spraying, 1.0)), max(second, 1.0))
    assert slow >= oldest(one, plan, days()) - 1e-9
    quick = oldest(one, plan, days(spraying=min(spraying, 1.0)), min(second, 1.0))
    assert quick <= oldest(one, plan, days()) + 1e-9


def test_both_rates_share_the_days_factor_and_have_one_of_their_own():
    """Correlation of the logarithms: 1 less the field's share of the variance."""
    drawn = drawn_days(
        np.random.default_rng(3), ("spray rate",), days=200_000, fields=1, coats=1, two=True
    )
    spread = Spread(0.2, 0.2, "guess", "")
    one = np.log(drawn.factor("spray rate", spread, 0, 0))
    two = np.log(drawn.factor_of_second(spread, 0))
    assert np.corrcoef(one, two)[0, 1] == pytest.approx(1 - FIELD_SHARE, abs=0.01)
    assert two.std() == pytest.approx(0.2, abs=0.003)


def test_the_days_of_one_are_drawn_as_before():
    one, two = (
        drawn_days(
            np.random.default_rng(3), ("spray rate", "thirst"), days=9, fields=2, coats=1, two=both
        )
        for both in (False, True)
    )
    assert one.second is None
    assert all((one.own[name] == two.own[name]).all() for name in one.own)


def test_what_is_left_in_both_tanks():
    _, stretches = laid(2.0)
    field = stretches[0].field
    left = left_of_two(field, (0.0, 0.0))
    filled = sum(r.litres for r in field.refills)
    assert sum(left) == pytest.approx(filled - sum(b.litres for b in field.bands))
    assert all(0 <= litres <= 2.0 for litres in left)


def test_the_plan_of_two_tells_its_chances():
    plan = plan_job(
        job(
            hall(9, 5),
            crew=Crew(sprayers=2),
            samples=(Sample("b", coat="one", sheen_loss_min=8.0),),
        )
    )
    assert plan.chances is not None
    assert 0 <= plan.chances.any_edge_dies < 1
    again = plan_job(
        job(
            hall(9, 5),
            crew=Crew(sprayers=2),
            samples=(Sample("b", coat="one", sheen_loss_min=8.0),),
        )
    )
    assert again.chances == plan.chances
